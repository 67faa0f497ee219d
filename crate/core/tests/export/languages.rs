//! Files in another language: every word of the table is used, none comes through as markup, and without a table all is as it was.

use std::io::{Cursor, Read};

use serde_json::{Map, Value, json};
use tubewright_core::engine;

const EXAMPLE: &str = include_str!("../document/example-canonical.json");

/// Every template that another language has rows for, as the vocabulary tells them.
fn templates() -> Vec<String> {
    let vocabulary: Value = serde_json::from_str(&engine::vocabulary()).unwrap();
    let texts = |value: &Value| -> Vec<String> {
        value.as_array().into_iter().flatten().filter_map(|text| text.as_str().map(str::to_owned)).collect()
    };
    let mut all = texts(&vocabulary["files"]);
    all.extend(texts(&vocabulary["cautions"]));
    all.extend(vocabulary["first_fill"].as_array().unwrap().iter().flat_map(texts));
    all.extend(vocabulary["findings"].as_object().unwrap().values().flat_map(|row| texts(&row["messages"])));
    all.retain(|text| !text.is_empty());
    all
}

/// A language of which every row is its English in other clothes.
fn made(dressed: impl Fn(&str) -> String) -> Value {
    let rows: Map<String, Value> = templates().iter().map(|text| (text.clone(), dressed(text).into())).collect();
    json!({ "language": "qaa", "decimal": ",", "words": rows })
}

fn sheet(text: &str, words: Option<&Value>) -> String {
    let mut request = json!({ "kind": "pack", "deviation": 0.2 });
    if let Some(words) = words {
        request["words"] = words.clone();
    }
    let pack = engine::export_file(text, &request.to_string()).expect("a pack");
    let mut archive = zip::ZipArchive::new(Cursor::new(pack)).unwrap();
    let mut sheet = String::new();
    archive.by_name("sheet.html").unwrap().read_to_string(&mut sheet).unwrap();
    sheet
}

/// The drawing of the first run, and the plots.
fn pictures(text: &str, words: Option<&Value>) -> Vec<String> {
    let design: Value = serde_json::from_str(text).unwrap();
    let requests = [
        json!({ "kind": "drawing", "run": design["runs"][0]["name"] }),
        json!({ "kind": "loss-plot" }),
        json!({ "kind": "margins-plot", "width": 320 }),
        json!({ "kind": "stiffness-plot" }),
    ];
    let picture = |mut request: Value| {
        if let Some(words) = words {
            request["words"] = words.clone();
        }
        String::from_utf8(engine::export_file(text, &request.to_string()).expect("a picture")).unwrap()
    };
    requests.into_iter().map(picture).collect()
}

fn refusal(words: &Value) -> (String, String) {
    let request = json!({ "kind": "pack", "deviation": 0.2, "words": words }).to_string();
    let refusal = engine::export_file(EXAMPLE, &request).expect_err("refused");
    (refusal.path, refusal.message)
}

fn rows(words: Value) -> Value {
    json!({ "language": "de", "words": words })
}

#[test]
fn a_sheet_is_told_in_the_language_asked_for() {
    let words = json!({ "language": "de", "decimal": ",", "quotes": ["„", "“"], "words": {
        "What to print": "Was zu drucken ist",
        "{0}: order and build sheet": "Begleitblatt von {0}",
        "Every edge joins two faces.": "Jede Kante verbindet zwei Flächen.",
        "The thinnest wall has {wall} mm; the printer asks for {least}.": "Verlangt {least}, hat {wall} mm.",
        "figure of the printer, {name}": "Wert des Druckers {name}",
    } });
    let told = sheet(EXAMPLE, Some(&words));
    assert!(told.contains("<html lang=\"de\">"));
    assert!(told.contains("<caption>Was zu drucken ist</caption>"), "a word of its own");
    assert!(told.contains("<title>Begleitblatt von "), "a template");
    assert!(told.contains("Jede Kante verbindet zwei Flächen."), "a sentence that comes ready made");
    assert!(told.contains("Verlangt 1, hat 1,80 mm."), "places change their order, and a comma stands before decimals");
    assert!(told.contains("Wert des Druckers „"), "names in the language's own quotes");
    assert!(told.contains("For the print service"), "what has no row stays English");
    assert_eq!(told, sheet(EXAMPLE, Some(&words)), "same design and same words, same bytes");
}

#[test]
fn without_words_and_with_none_the_sheet_is_the_same() {
    let english = sheet(EXAMPLE, None);
    assert!(english.contains("<html lang=\"en\">"));
    assert_eq!(sheet(EXAMPLE, Some(&json!({ "language": "en", "words": {} }))), english);
    let same = made(str::to_owned);
    let as_english = json!({ "language": "en", "words": same["words"] });
    assert_eq!(sheet(EXAMPLE, Some(&as_english)), english, "rows that say the same change nothing");
}

#[test]
fn drawings_and_plots_are_told_in_the_language_asked_for() {
    let words = json!({ "language": "de", "decimal": ",", "quotes": ["„", "“"], "words": {
        "{0}, drawing {1}": "Zeichnung von {0}, {1}",
        "⌀{0} × ⌀{1}, wall {2}": "Wand {2} bei ⌀{0}/⌀{1}",
        "Pressure loss against flow": "Druckverlust",
        "{0}: share of each limit that is used.": "{0}: Anteile.",
        "allowed up to {0} °C": "bis {0} °C",
    } });
    let told = pictures(EXAMPLE, Some(&words));
    let says = ["<title>Zeichnung von ", ">Druckverlust</title>", ": Anteile.", "bis "];
    for (picture, words) in told.iter().zip(says) {
        assert!(picture.contains(words), "{words}: {picture}");
    }
    assert!(told[0].contains("Wand <tspan data-dimension=\"wall\""), "places change their order");
    let values = |svg: &str| -> Vec<String> {
        let mut all: Vec<String> =
            svg.split("data-value=\"").skip(1).map(|rest| rest[..rest.find('"').unwrap()].to_owned()).collect();
        all.sort();
        all
    };
    assert_eq!(values(&told[0]), values(&pictures(EXAMPLE, None)[0]), "what programs read stays");
    assert_eq!(pictures(EXAMPLE, Some(&json!({ "language": "en", "words": {} }))), pictures(EXAMPLE, None));
}

#[test]
fn a_row_that_lost_a_place_is_left_in_english() {
    for lost in ["Blatt", "{0} {1} Blatt", "{name} Blatt", "{0} {0} Blatt"] {
        let told = sheet(EXAMPLE, Some(&rows(json!({ "{0}: order and build sheet": lost }))));
        assert!(told.contains(": order and build sheet</title>") && !told.contains("Blatt"), "{lost}");
    }
}

/// Markup, quotes, entities and the other direction of writing in every row, and rows as long as they may be.
#[test]
fn hostile_words_stay_words() {
    let sheets = [
        sheet(EXAMPLE, Some(&made(|text| format!("<script>alert(1)</script>\"'&amp;]]>{text}<!--")))),
        sheet(EXAMPLE, Some(&made(|text| format!("שלום {text} مرحبا")))),
        sheet(EXAMPLE, Some(&rows(json!({ "What to print": "w".repeat(4_000), "{a}": "{a}", "{a}{b}": "{b}{a}" })))),
    ];
    let options = || roxmltree::ParsingOptions { allow_dtd: true, ..Default::default() };
    let plain = sheet(EXAMPLE, None);
    let plain = roxmltree::Document::parse_with_options(&plain, options()).unwrap();
    let tags = |page: &roxmltree::Document<'_>| -> Vec<String> {
        page.descendants().filter(|node| node.is_element()).map(|node| node.tag_name().name().to_owned()).collect()
    };
    for told in &sheets {
        let page = roxmltree::Document::parse_with_options(told, options()).expect("well-formed XML");
        assert_eq!(tags(&page), tags(&plain), "no row adds an element");
    }
    let hostile = made(|text| format!("<script>alert(1)</script>\"'&amp;]]>{text}<!--"));
    for picture in pictures(EXAMPLE, Some(&hostile)) {
        let picture = roxmltree::Document::parse(&picture).expect("well-formed XML");
        assert!(picture.descendants().all(|node| node.tag_name().name() != "script"));
    }
    assert!(sheets[0].contains("&lt;script&gt;alert(1)&lt;/script&gt;&quot;'&amp;amp;]]&gt;What to print&lt;!--"));
}

/// Names that look like places, like templates and like numbers.
#[test]
fn names_are_never_taken_for_words() {
    let mut design: Value = serde_json::from_str(EXAMPLE).unwrap();
    design["name"] = "{0} {1} What to print".into();
    design["runs"][0]["name"] = "1.5 and {name}".into();
    let told = sheet(&design.to_string(), Some(&made(|text| format!("⟦{text}⟧"))));
    assert!(told.contains("<h1 dir=\"auto\">{0} {1} What to print</h1>"));
    assert!(told.contains("<th scope=\"row\" dir=\"auto\">1.5 and {name}</th>"));
    assert!(told.contains("<title>⟦{0} {1} What to print: order and build sheet⟧</title>"));
}

#[test]
fn no_table_makes_a_sheet_take_long_or_large() {
    // As many as there may be, each a list that could hold every other.
    let many: Map<String, Value> =
        (0..5_000).map(|n| (format!("{{a}} {n} {{b}}"), format!("{{b}} {n} {{a}}").into())).collect();
    assert!(sheet(EXAMPLE, Some(&rows(Value::Object(many)))).contains("What to print"));
    let nested = rows(json!({ "{a}.": "{a}. {a}", "a{a}": "{a}a", "e{b}": format!("{{b}}{}", "e".repeat(3_900)) }));
    assert!(sheet(EXAMPLE, Some(&nested)).len() < 4_000_000);
}

#[test]
fn a_table_that_is_none_is_refused_at_its_place() {
    let many: Map<String, Value> = (0..5_001).map(|n| (n.to_string(), "".into())).collect();
    let large: Map<String, Value> = (0..100).map(|n| (format!("row {n}"), "w".repeat(3_500).into())).collect();
    let cases = [
        (json!("de"), "/words", "must be an object"),
        (json!({ "language": "de" }), "/words/words", "from English to its words"),
        (json!({ "language": "de", "words": [] }), "/words/words", "from English to its words"),
        (json!({ "words": {} }), "/words/language", "such as \"de\""),
        (json!({ "language": "de\" onload=\"x", "words": {} }), "/words/language", "such as \"de\""),
        (json!({ "language": "de", "decimal": ";", "words": {} }), "/words/decimal", "must be \".\" or \",\""),
        (json!({ "language": "de", "quotes": "„“", "words": {} }), "/words/quotes", "two short texts"),
        (json!({ "language": "de", "rows": {}, "words": {} }), "/words/rows", "\"words\" has language"),
        (rows(json!({ "a/b": 3 })), "/words/words/a~1b", "must be text"),
        (rows(json!({ "a": "w".repeat(4_001) })), "/words/words/a", "4001 bytes; 4000 are possible"),
        (rows(json!({ "a": "\u{202e}b" })), "/words/words/a", "U+202E"),
        (rows(Value::Object(many)), "/words/words", "5001 rows of words are too many; 5000 are possible"),
        (rows(Value::Object(large)), "/words/words", "more than 300000 bytes"),
    ];
    for (words, path, says) in cases {
        let (at, message) = refusal(&words);
        assert_eq!(at, path, "{message}");
        assert!(message.contains(says), "{message}");
    }
    let request = json!({ "kind": "design", "words": { "language": "de", "words": {} } }).to_string();
    assert_eq!(engine::export_file(EXAMPLE, &request).unwrap_err().path, "/words");
}
