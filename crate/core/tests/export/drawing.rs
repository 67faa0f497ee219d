//! Drawings: well-formed pictures for every kind of design in the danger zone, the same each time, whatever runs are
//! called. Read by a general-purpose XML reader. What is on them is held to the report in `tests/page`.

use roxmltree::{Document, Node};
use serde_json::{Value, json};
use tubewright_core::engine;
use tubewright_core::strategies::{KINDS, designs};

fn drawn(text: &str, run: &Value) -> String {
    let request = json!({ "kind": "drawing", "run": run }).to_string();
    String::from_utf8(engine::export_file(text, &request).expect("a made run is drawn")).expect("UTF-8")
}

fn report(text: &str) -> Option<Value> {
    engine::report(text).ok().map(|report| serde_json::from_str(&report).expect("JSON"))
}

/// The root's attribute as a number, and the unit behind it.
fn sized<'a>(root: &Node<'a, 'a>, name: &str) -> (f64, &'a str) {
    let told = root.attribute(name).expect("a size");
    let end = told.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(told.len());
    (told[..end].parse().expect("a number"), &told[end..])
}

#[test]
fn every_kind_of_design_is_drawn_well_formed_and_within_its_sheet() {
    let mut count = 0;
    for made_up in designs(17, 3 * KINDS.len()) {
        let Some(report) = report(&made_up.text) else { continue };
        for run in report["runs"].as_array().expect("runs").iter().filter(|run| run["made"] == true) {
            let text = drawn(&made_up.text, &run["name"]);
            assert_eq!(text, drawn(&made_up.text, &run["name"]), "the same bytes each time");
            let document = Document::parse(&text).expect("well-formed XML");
            let root = document.root_element();
            let ((width, unit), (height, _)) = (sized(&root, "width"), sized(&root, "height"));
            assert_eq!((unit, root.attribute("viewBox")), ("mm", Some(format!("0 0 {width} {height}").as_str())));
            let told = root.descendants().filter_map(|node| node.attribute("data-value"));
            assert!(told.map(|value| value.parse::<f64>().expect("a number")).all(f64::is_finite));
            for path in root.descendants().filter_map(|node| node.attribute("d")) {
                let numbers: Vec<f64> = path
                    .split(['M', 'L', 'Z', ' '])
                    .filter(|part| !part.is_empty())
                    .map(|part| part.parse().unwrap())
                    .collect();
                let inside = |[x, y]: [f64; 2]| (0.0..=width).contains(&x) && (0.0..=height).contains(&y);
                assert!(numbers.as_chunks::<2>().0.iter().all(|at| inside(*at)), "{}: {path}", made_up.kind);
            }
            count += 1;
        }
    }
    assert!(count > KINDS.len(), "{count} drawings");
}

#[test]
fn names_are_words_and_never_markup() {
    let name = "</text><script>alert(1)</script> \" ' & ]]>";
    let design = json!({
        "format": "tubewright-design", "version": 1, "name": name,
        "fittings": [{ "name": "F", "tube_diameter": 12 }],
        "ports": [
            { "name": name, "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "F" },
            { "name": "b", "at": [80, 0, 90], "facing": [-1, 0, 0], "fitting": "F" }],
        "runs": [{ "name": name, "from": name, "to": "b", "tube": { "outer_diameter": 12, "bore": 8 }, "bend_radius": 20,
            "route": [{ "corner": [0, 0, 90] }] }]
    });
    let text = drawn(&design.to_string(), &design["runs"][0]["name"]);
    let document = Document::parse(&text).expect("well-formed XML");
    assert!(document.descendants().all(|node| node.tag_name().name() != "script"));
    let title = document.descendants().find(|node| node.has_tag_name(("http://www.w3.org/2000/svg", "title")));
    assert!(
        title.and_then(|node| node.text()).expect("a title").starts_with(name),
        "the name comes back as it went in"
    );
}
