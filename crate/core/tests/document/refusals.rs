//! Every class of refusal: its JSON Pointer, and words that say what would work. The base design is accepted; each row
//! changes one thing in it.

use serde_json::{Value, json};
use tubewright_core::design::{Refusal, parse, problems};

fn base() -> Value {
    json!({
        "format": "tubewright-design", "version": 1,
        "fittings": [{"name": "F12", "tube_diameter": 12}, {"name": "E12", "tube_diameter": 12, "elbow": {}, "seal":
            {"section": 2, "gland_diameter": 15.2}}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "F12"},
                  {"name": "b", "at": [100, 0, 100], "facing": [-1, 0, 0], "fitting": "E12"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8},
                  "route": [{"corner": [0, {"of": "a", "plus": 2}, 100], "bend_radius": 20}], "ends": {}}],
        "keep_outs": [{"name": "box", "box": {"min": [0, 0, 0], "max": [1, 1, 1]}},
                      {"name": "can", "cylinder": {"from": [0, 0, 0], "to": [0, 0, 9], "radius": 3}}],
        "process": {}, "loop": {}
    })
}

/// The base with the value at `pointer` replaced, or added to its object.
fn with(pointer: &str, value: Value) -> String {
    let mut design = base();
    let (above, key) = pointer.rsplit_once('/').unwrap();
    match design.pointer_mut(above).unwrap() {
        Value::Object(object) => {
            object.insert(key.into(), value);
        }
        Value::Array(list) => list[key.parse::<usize>().unwrap()] = value,
        _ => panic!("{above} has no parts"),
    }
    design.to_string()
}

/// The base without the key at `pointer`.
fn without(pointer: &str) -> String {
    let mut design = base();
    let (above, key) = pointer.rsplit_once('/').unwrap();
    design.pointer_mut(above).unwrap().as_object_mut().unwrap().remove(key).expect("the key was there");
    design.to_string()
}

#[track_caller]
fn refused(text: &str, path: &str, words: &[&str]) {
    let Refusal { path: found, message } = parse(text).expect_err("it is refused");
    assert_eq!(found, path, "{message}");
    for word in words {
        assert!(message.contains(word), "{word:?} is not in: {message}");
    }
    // What a person reads is one or more whole sentences.
    assert!(message.ends_with(['.', '?']), "{message}");
    assert!(message.starts_with(|c: char| c.is_uppercase() || c == '“'), "{message}");
    let all = problems(text);
    assert_eq!(all.first(), Some(&Refusal { path: found, message }));
}

#[test]
fn the_base_is_accepted() {
    assert_eq!(problems(&base().to_string()), []);
}

#[test]
fn texts_that_are_no_json() {
    refused("", "", &["empty", "tubewright-design"]);
    refused(" \n\t", "", &["empty"]);
    refused("\u{feff}", "", &["empty"]);
    refused("solid tube\nfacet", "", &["not JSON", "line 1"]);
    refused("{\"format\": \"tubewright-design\",\n  \"version\": 1,\n  name: 3}", "", &["line 3", "double quotes"]);
    refused("{\"format\": \"tubewright-design\"", "", &["ends too early", "}"]);
    refused("{\"a\": [1, 2", "", &["ends too early", "]"]);
    refused("{} {}", "", &["more text after"]);
    refused("{\"a\": 1,}", "", &["comma"]);
    refused("{'a': 1}", "", &["double quotes"]);
    refused("[]", "", &["curly brackets"]);
    refused("12", "", &["curly brackets"]);
    refused("\"tubewright-design\"", "", &["curly brackets"]);
    refused(&"[".repeat(200_000), "", &["127 deep"]);
    refused(&format!("{}{}", "{\"a\":".repeat(100_000), "1"), "", &["127 deep"]);
}

#[test]
fn a_byte_order_mark_in_front_does_no_harm() {
    assert_eq!(problems(&format!("\u{feff}{}", base())), []);
}

#[test]
fn texts_that_are_too_long_or_hold_too_much() {
    let long = " ".repeat(50 * 1024 * 1024);
    refused(&long, "", &["50.0 MiB", "16 MiB"]);
    // Values, not bytes: 1,600 lists of 2,000 numbers are 3.2 million values in 6.4 MB.
    let row = format!("[{}]", vec!["0"; 2_000].join(","));
    refused(&format!("[{}]", vec![row; 1_600].join(",")), "", &["more values"]);
}

#[test]
fn numbers_that_are_none() {
    let number =
        |typed: &str| base().to_string().replace("\"gland_diameter\":15.2", &format!("\"gland_diameter\":{typed}"));
    let at = "/fittings/1/seal/gland_diameter";
    refused(&number("NaN"), at, &["“NaN”", "line 1", "12.5"]);
    refused(&number("nan"), at, &["“nan”"]);
    refused(&number("-Infinity"), at, &["“-Infinity”"]);
    refused(&number("1e999"), at, &["too large"]);
    refused(&number("-1e999"), at, &["too large"]);
    refused(&number("1e308"), at, &["Gland diameter", "out of range", "at most 600 mm"]);
    refused(&number("-0.0"), at, &["0 mm is out of range", "above 0"]);
    refused(&number("1e-400"), at, &["0 mm is out of range"]);
    refused(&number("null"), at, &["Null is no number", "such as 15.2"]);
    refused(&number("[15]"), at, &["A list is no number"]);
    refused(&number("true"), at, &["True or false is no number"]);
    refused(&number("0x10"), "", &["not JSON"]);
    refused(&number("+5"), "", &["not JSON"]);
    refused(&number(".5"), "", &["not JSON"]);
}

#[test]
fn half_typed_numbers_say_what_to_type() {
    let bore = |typed: &str| with("/runs/0/tube/bore", json!(typed));
    let at = "/runs/0/tube/bore";
    refused(&bore(""), at, &["Bore: Give a number in mm, such as 8."]);
    refused(&bore("  "), at, &["Bore: Give a number in mm, such as 8."]);
    refused(&bore("8"), at, &["without quotes, 8."]);
    refused(&bore("8,5"), at, &["write 8.5, with a point"]);
    refused(&bore("8mm"), at, &["leave the unit out", "8."]);
    refused(&bore("8.5 mm"), at, &["leave the unit out", "8.5."]);
    refused(&bore("-"), at, &["“-” is no number", "such as 8"]);
    refused(&bore("8.5.1"), at, &["“8.5.1” is no number"]);
    refused(&bore("inf"), at, &["“inf” is no number"]);
    refused(&bore("1e999"), at, &["“1e999” is no number"]);
    refused(&bore("<b>8</b>\u{202e}"), at, &["“<b>8</b>\u{fffd}” is no number"]);
    refused(&bore(&"8".repeat(5_000)), at, &["… is no number".replace("… ", "…” ").as_str()]);
    refused(&with("/ports/0/at/1", json!("")), "/ports/0/at/1", &["Position y: Give a number in mm"]);
    refused(&with("/runs/0/route/0/corner/2", json!("up")), "/runs/0/route/0/corner/2", &["Corner z", "“up”"]);
}

#[test]
fn format_and_version() {
    refused("{}", "/format", &["missing", "\"format\": \"tubewright-design\""]);
    refused(&without("/format"), "/format", &["missing"]);
    refused(&with("/format", json!("gcode")), "/format", &["“gcode”", "tubewright-design"]);
    refused(&with("/format", json!(1)), "/format", &["text"]);
    refused(&without("/version"), "/version", &["missing", "\"version\": 1"]);
    refused(&with("/version", json!(2)), "/version", &["version 2", "newer"]);
    refused(&with("/version", json!(1e300)), "/version", &["newer"]);
    refused(&with("/version", json!(0)), "/version", &["no version 0"]);
    refused(&with("/version", json!(-1)), "/version", &["no version -1"]);
    refused(&with("/version", json!(1.5)), "/version", &["no version 1.5"]);
    refused(&with("/version", json!("1")), "/version", &["number"]);
    assert_eq!(problems(&with("/version", json!(1.0))), []);
    // A newer design may have keys of its own; they are no reason to complain about anything but the version.
    let newer = with("/version", json!(7)).replace("\"process\"", "\"colour\"");
    assert_eq!(problems(&newer).len(), 1);
}

#[test]
fn unknown_keys_are_named_with_their_place_and_the_nearest_known_one() {
    refused(&with("/colour", json!(1)), "/colour", &["“colour” is not known", "\"clearance\""]);
    refused(&with("/Clearance", json!(1)), "/Clearance", &["Did you mean \"clearance\"?"]);
    refused(&with("/runs/0/bend radius", json!(1)), "/runs/0/bend radius", &["Did you mean \"bend_radius\"?"]);
    refused(&with("/runs/0/ends/chamfer_lenght", json!(1)), "/runs/0/ends/chamfer_lenght", &["\"chamfer_length\"?"]);
    refused(&with("/fittings/0/a~b", json!(1)), "/fittings/0/a~0b", &["“a~b”"]);
    let mut slashed = base();
    slashed["loop"]["flow/l"] = json!(1);
    refused(&slashed.to_string(), "/loop/flow~1l", &["“flow/l”"]);
    let deep = [
        "/ports/0/x",
        "/runs/0/x",
        "/runs/0/tube/x",
        "/runs/0/route/0/x",
        "/runs/0/route/0/corner/1/x",
        "/keep_outs/0/x",
        "/keep_outs/0/box/x",
        "/keep_outs/1/cylinder/x",
        "/process/x",
        "/loop/x",
        "/fittings/1/elbow/x",
        "/fittings/1/seal/x",
    ];
    for path in deep {
        refused(&with(path, json!(1)), path, &["“x” is not known here", "keys"]);
    }
    let many: serde_json::Map<String, Value> = (0..200).map(|i| (format!("k{i}"), json!(1))).collect();
    refused(&with("/loop", Value::Object(many)), "/loop/k0", &["not known"]);
}

#[test]
fn a_print_service_gives_nothing_away() {
    for (key, words) in [("price_per_cm3", "Price a cm³"), ("setup", "Set-up a piece"), ("minimum", "Least order")] {
        let text = with("/process/service", json!({ key: -1 }));
        refused(&text, &format!("/process/service/{key}"), &[words, "out of range", "0"]);
        assert!(parse(&with("/process/service", json!({ key: 0 }))).is_ok(), "{key}");
    }
    refused(&with("/process/service", json!({"fee": 1})), "/process/service/fee", &["“fee” is not known"]);
    refused(&with("/process/service", json!(5)), "/process/service", &["object"]);
}

#[test]
fn keys_given_twice() {
    let twice = base().to_string().replace("\"bore\":8", "\"bore\":8,\"bore\":9");
    refused(&twice, "/runs/0/tube/bore", &["“bore” is given twice"]);
    let escaped = base().to_string().replace("\"bore\":8", "\"bore\":8,\"b\\u006fre\":9");
    refused(&escaped, "/runs/0/tube/bore", &["given twice"]);
}

#[test]
fn what_must_be_there() {
    for (path, words) in [
        ("/fittings/0/name", "Fitting name is missing"),
        ("/fittings/0/tube_diameter", "such as 12"),
        ("/fittings/1/seal/section", "O-ring section is missing"),
        ("/fittings/1/seal/gland_diameter", "Gland diameter is missing"),
        ("/ports/0/name", "Port name is missing"),
        ("/ports/0/at", "[x, y, z]"),
        ("/ports/0/facing", "[x, y, z]"),
        ("/ports/0/fitting", "Give the name of a fitting"),
        ("/runs/0/name", "Run name is missing"),
        ("/runs/0/from", "Give the name of a port"),
        ("/runs/0/to", "Give the name of a port"),
        ("/runs/0/tube", "\"outer_diameter\": 12"),
        ("/runs/0/tube/outer_diameter", "such as 12"),
        ("/runs/0/tube/bore", "such as 8"),
        ("/runs/0/route/0/corner", "[x, y, z]"),
        ("/runs/0/route/0/corner/1/of", "Give the name of a port"),
        ("/keep_outs/0/name", "Keep-out name is missing"),
        ("/keep_outs/0/box/min", "[x, y, z]"),
        ("/keep_outs/1/cylinder/radius", "such as 25"),
    ] {
        refused(&without(path), path, &["missing", words]);
    }
    refused(&without("/keep_outs/0/box"), "/keep_outs/0", &["\"box\"", "\"cylinder\""]);
}

#[test]
fn what_may_be_left_out() {
    for path in [
        "/runs/0/route",
        "/runs/0/ends",
        "/keep_outs",
        "/process",
        "/loop",
        "/fittings/1/elbow",
        "/fittings/1/seal",
        "/runs",
        "/runs/0/route/0/bend_radius",
        "/runs/0/route/0/corner/1/plus",
    ] {
        assert_eq!(problems(&without(path)), [], "{path}");
    }
    assert_eq!(problems(&with("/fittings/1/elbow", Value::Null)), []);
    assert_eq!(problems(&with("/fittings/1/seal", Value::Null)), []);
}

#[test]
fn what_cannot_be_a_tube_at_all() {
    refused(&with("/runs/0/tube/bore", json!(12)), "/runs/0/tube/bore", &["no wall", "12 mm", "such as 8 mm"]);
    refused(&with("/runs/0/tube/bore", json!(12.5)), "/runs/0/tube/bore", &["no wall"]);
    refused(&with("/runs/0/tube/bore", json!(0)), "/runs/0/tube/bore", &["above 0"]);
    refused(&with("/runs/0/tube/bore", json!(-8)), "/runs/0/tube/bore", &["above 0"]);
    refused(&with("/runs/0/tube/outer_diameter", json!(0)), "/runs/0/tube/outer_diameter", &["from 0.5 to 500 mm"]);
    refused(&with("/runs/0/tube/outer_diameter", json!(500.1)), "/runs/0/tube/outer_diameter", &["from 0.5 to 500 mm"]);
    refused(&with("/ports/0/facing", json!([0, 0, 0])), "/ports/0/facing", &["points nowhere", "0, 0, 1 is up"]);
    refused(&with("/ports/0/facing", json!([0, 1e-10, 0])), "/ports/0/facing", &["points nowhere"]);
    refused(&with("/runs/0/to", json!("a")), "/runs/0/to", &["cannot end at the port it starts from"]);
    refused(&with("/runs/0/bend_radius", json!(-1)), "/runs/0/bend_radius", &["-1 mm is out of range", "from 0"]);
    refused(&with("/runs/0/route/0/bend_radius", json!(-0.001)), "/runs/0/route/0/bend_radius", &["out of range"]);
    for (path, most) in [("height", 0.0), ("socket_depth", -1.0), ("collar_diameter", 0.0)] {
        let path = format!("/fittings/0/{path}");
        refused(&with(&path, json!(most)), &path, &["above 0"]);
    }
    for path in ["angle_deg", "rise", "reach"] {
        let path = format!("/fittings/1/elbow/{path}");
        refused(&with(&path, json!(0)), &path, &["above 0"]);
    }
    refused(&with("/fittings/1/elbow/angle_deg", json!(180)), "/fittings/1/elbow/angle_deg", &["below 180°"]);
    refused(&with("/runs/0/ends/chamfer_deg", json!(90)), "/runs/0/ends/chamfer_deg", &["below 90°"]);
    refused(&with("/keep_outs/0/box/max/2", json!(0)), "/keep_outs/0/box/max/2", &["Highest corner z", "swap"]);
    refused(&with("/keep_outs/1/cylinder/to/2", json!(0)), "/keep_outs/1/cylinder/to", &["same point"]);
    refused(&with("/keep_outs/1/cylinder/radius", json!(0)), "/keep_outs/1/cylinder/radius", &["above 0"]);
    refused(&with("/keep_outs/0/cylinder", json!({})), "/keep_outs/0/cylinder", &["not both"]);
}

#[test]
fn what_could_be_a_tube_but_a_bad_one_is_accepted() {
    for (path, value) in [
        ("/runs/0/bend_radius", json!(0)),
        ("/runs/0/route/0/bend_radius", json!(0)),
        ("/ports/0/facing", json!([0, 1e-9, 0])),
        ("/ports/0/facing", json!([1e6, -1e6, 1e6])),
        ("/ports/1/at", json!([0, 0, 0])),
        ("/ports/0/at", json!([1e6, -1e6, 1e6])),
        ("/runs/0/tube/bore", json!(11.999)),
        ("/clearance", json!(0)),
        ("/loop/flow_l_per_h", json!(0)),
    ] {
        assert_eq!(problems(&with(path, value)), [], "{path}");
    }
}

#[test]
fn names_that_refer_to_nothing() {
    refused(&with("/ports/0/fitting", json!("G14")), "/ports/0/fitting", &["no fitting named “G14”", "“F12”, “E12”"]);
    refused(&with("/ports/0/fitting", json!("f12")), "/ports/0/fitting", &["no fitting named “f12”"]);
    refused(&with("/ports/0/fitting", json!("")), "/ports/0/fitting", &["no fitting is chosen", "“F12”"]);
    refused(&with("/ports/0/fitting", json!(3)), "/ports/0/fitting", &["in quotes", "a number"]);
    refused(&with("/runs/0/from", json!("c")), "/runs/0/from", &["no port named “c”", "“a”, “b”"]);
    refused(&with("/runs/0/to", json!("c")), "/runs/0/to", &["no port named “c”"]);
    let tied = "/runs/0/route/0/corner/1/of";
    refused(&with(tied, json!("c")), tied, &["Follows port", "no port named “c”"]);
    refused(&with("/process/material", json!("unobtainium")), "/process/material", &["“unobtainium”", "“tough resin”"]);
    refused(&with("/process/printer", json!("press")), "/process/printer", &["“press”", "“medium resin”"]);
    refused(&with("/loop/coolant", json!("oil")), "/loop/coolant", &["“oil”", "“water”"]);
    refused(&with("/loop/coolant", json!(5)), "/loop/coolant", &["name of a coolant"]);
    refused(&with("/fittings", json!([])), "/ports/0/fitting", &["has no fitting yet", "Add one"]);
    // The port is there, if under a bad name of its own: only that name is complained about.
    let bad_port = with("/ports/0/at/0", json!("x"));
    assert_eq!(problems(&bad_port).len(), 1);
}

#[test]
fn own_materials_printers_and_coolants() {
    let material = json!({"name": "my resin", "density_g_per_cm3": 1.3});
    let printer = json!({"name": "mine", "build_volume": [100, 100, 100], "least_wall": 0.8, "source": "tried"});
    let design = parse(&with("/process", json!({"material": material, "printer": printer}))).unwrap();
    assert_eq!(design.process.material.density_g_per_cm3, 1.3);
    assert_eq!(design.process.printer.build_volume, [100.0; 3]);
    let path = "/process/material";
    refused(&with(path, json!({"name": "x"})), "/process/material/density_g_per_cm3", &["missing", "g/cm³"]);
    refused(
        &with(path, json!({"name": "x", "density_g_per_cm3": 0})),
        "/process/material/density_g_per_cm3",
        &["above 0"],
    );
    let printer = json!({"name": "mine", "build_volume": [100, 100], "least_wall": 0.8});
    refused(&with("/process/printer", printer), "/process/printer/build_volume", &["three numbers", "there are 2"]);
}

#[test]
fn names_are_unique_not_empty_and_can_be_shown() {
    refused(&with("/ports/1/name", json!("a")), "/ports/1/name", &["“a” is taken by number 1"]);
    refused(&with("/fittings/1/name", json!("F12")), "/fittings/1/name", &["“F12” is taken"]);
    let name = "/runs/0/name";
    refused(&with(name, json!("")), name, &["empty"]);
    refused(&with(name, json!("   ")), name, &["empty"]);
    refused(&with(name, json!(7)), name, &["text in quotes"]);
    refused(&with(name, json!("x".repeat(201))), name, &["201 characters", "200"]);
    assert_eq!(problems(&with(name, json!("ü".repeat(200)))), []);
    for code in [
        '\u{0}',
        '\u{7}',
        '\n',
        '\u{7f}',
        '\u{9f}',
        '\u{61c}',
        '\u{200e}',
        '\u{200f}',
        '\u{2028}',
        '\u{2029}',
        '\u{202a}',
        '\u{202b}',
        '\u{202c}',
        '\u{202d}',
        '\u{202e}',
        '\u{2066}',
        '\u{2067}',
        '\u{2068}',
        '\u{2069}',
        '\u{feff}',
        '\u{fffe}',
        '\u{1ffff}',
        '\u{fdd0}',
    ] {
        let words = format!("U+{:04X}", code as u32);
        refused(&with(name, json!(format!("a{code}b"))), name, &["invisible character", &words]);
    }
    for good in [
        "<img src=x onerror=alert(1)>",
        "../../etc/passwd",
        "C:\\tube",
        "a/b",
        "\"quoted\"",
        "مضخة",
        "ポンプ",
        "👨‍🔧",
        "con",
        "a\u{300}",
    ] {
        assert_eq!(problems(&with(name, json!(good))), [], "{good}");
    }
    assert_eq!(problems(&with("/notes", json!("one\ntwo\tthree\r\n"))), []);
    refused(&with("/notes", json!("one\u{202e}two")), "/notes", &["U+202E"]);
    refused(&with("/notes", json!("n".repeat(100_001))), "/notes", &["100001 characters"]);
}

#[test]
fn bounds_are_checked() {
    let port =
        |index: usize| json!({"name": format!("p{index}"), "at": [index, 0, 0], "facing": [0, 0, 1], "fitting": "F12"});
    let ports = |count: usize| Value::from((0..count).map(port).collect::<Vec<_>>());
    let with_ports = |count| {
        let mut design = base();
        design["runs"] = json!([]);
        design["ports"] = ports(count);
        design.to_string()
    };
    assert_eq!(problems(&with_ports(1_000)), []);
    refused(&with_ports(1_001), "/ports", &["There are 1001 ports", "at most 1000"]);
    refused(&with_ports(20_000), "/ports", &["There are 20000 ports"]);

    let run = base()["runs"][0].clone();
    let runs = |count: usize| {
        let runs: Vec<Value> = (0..count)
            .map(|index| {
                let mut run = run.clone();
                run["name"] = json!(format!("r{index}"));
                run
            })
            .collect();
        with("/runs", Value::from(runs))
    };
    assert_eq!(problems(&runs(200)), []);
    refused(&runs(201), "/runs", &["There are 201 runs", "at most 200"]);

    let stations = |count: usize| with("/runs/0/route", Value::from(vec![json!({"corner": [1, 2, 3]}); count]));
    assert_eq!(problems(&stations(2_000)), []);
    refused(&stations(2_001), "/runs/0/route", &["There are 2001 stations", "at most 2000"]);
    refused(&stations(10_000), "/runs/0/route", &["There are 10000 stations"]);

    let fittings = |count: usize| {
        let mut all = base()["fittings"].as_array().unwrap().clone();
        all.extend((2..count).map(|index| json!({"name": format!("f{index}"), "tube_diameter": 12})));
        with("/fittings", Value::from(all))
    };
    assert_eq!(problems(&fittings(1_000)), []);
    refused(&fittings(1_001), "/fittings", &["1001 fittings"]);
    let boxes: Vec<Value> =
        (0..1_001).map(|i| json!({"name": format!("k{i}"), "box": {"min": [0, 0, 0], "max": [1, 1, 1]}})).collect();
    refused(&with("/keep_outs", Value::from(boxes)), "/keep_outs", &["1001 keep-outs"]);

    for path in ["/ports/0/at/0", "/runs/0/route/0/corner/0", "/keep_outs/0/box/max/0", "/keep_outs/1/cylinder/to/0"] {
        refused(&with(path, json!(1_000_000.1)), path, &["out of range", "from -1,000,000 to 1,000,000 mm"]);
        refused(&with(path, json!(-1e308)), path, &["out of range"]);
    }
    let mut tied = base();
    tied["ports"][0]["at"][1] = json!(999_999);
    assert_eq!(parse(&tied.to_string()).unwrap_err().path, "/runs/0/route/0/corner/1");
}

#[test]
fn kinds_that_do_not_fit() {
    refused(&with("/ports", json!({})), "/ports", &["must be a list", "an object"]);
    refused(&with("/runs/0", json!([])), "/runs/0", &["A run must be an object", "a list"]);
    refused(&with("/runs/0/tube", json!(12)), "/runs/0/tube", &["must be an object", "\"outer_diameter\""]);
    refused(&with("/ports/0/at", json!([1, 2])), "/ports/0/at", &["three numbers", "there are 2"]);
    refused(&with("/ports/0/at", json!([1])), "/ports/0/at", &["there is 1"]);
    refused(&with("/ports/0/at", json!([1, 2, 3, 4])), "/ports/0/at", &["there are 4"]);
    refused(&with("/ports/0/at", json!("1,2,3")), "/ports/0/at", &["not a text"]);
    refused(
        &with("/runs/0/ends/seat_mark", json!("yes")),
        "/runs/0/ends/seat_mark",
        &["Seating mark", "true or false"],
    );
    refused(&with("/runs/0/bend_radius", Value::Null), "/runs/0/bend_radius", &["Null is no number"]);
    refused(&with("/name", Value::Null), "/name", &["text in quotes"]);
}

#[test]
fn stations_that_are_none() {
    let route = "/runs/0/route/0";
    refused(&with(route, json!({})), route, &["\"corner\"", "\"through\"", "\"coil\""]);
    refused(&with(route, json!({"spiral": 1})), route, &["not “spiral”", "\"coil\""]);
    refused(
        &with(route, json!({"through": [1, 2]})),
        "/runs/0/route/0/through",
        &["Point: three numbers", "there are 2"],
    );
    let both = json!({"through": [1, 2, 3], "corner": [1, 2, 3]});
    refused(&with(route, both), "/runs/0/route/0/corner", &["not known here", "\"through\""]);
    let tied = json!({"through": [1, {"of": "nowhere"}, 3]});
    refused(&with(route, tied), "/runs/0/route/0/through/1/of", &["no port named"]);
}

#[test]
fn coils_that_are_none() {
    let coil = |key: &str, value: Value| {
        let mut coil = json!({"centre": [0, 0, 0], "axis": [0, 0, 1], "radius": 40, "pitch": 20, "turns": 2});
        coil[key] = value;
        with("/runs/0/route/0", json!({ "coil": coil }))
    };
    let at = |key: &str| format!("/runs/0/route/0/coil/{key}");
    refused(&coil("radius", json!(0)), &at("radius"), &["Coil radius", "out of range", "above 0"]);
    refused(&coil("radius", json!("wide")), &at("radius"), &["“wide” is no number"]);
    refused(&coil("turns", json!(1e4)), &at("turns"), &["Turns: 10000 is out of range", "to 1000"]);
    refused(&coil("turns", json!(0)), &at("turns"), &["out of range"]);
    refused(&coil("pitch", json!(-5)), &at("pitch"), &["out of range"]);
    refused(&coil("axis", json!([0, 0, 0])), &at("axis"), &["points nowhere", "0, 0, 1 is up"]);
    refused(&coil("hand", json!("up")), &at("hand"), &["“up”", "\"right\" or \"left\""]);
    refused(&coil("hand", json!(1)), &at("hand"), &["a number", "\"right\" or \"left\""]);
    refused(&coil("raduis", json!(1)), &at("raduis"), &["Did you mean \"radius\"?"]);
    refused(&coil("start_deg", json!(400)), &at("start_deg"), &["out of range"]);
    refused(&coil("centre", json!(7)), &at("centre"), &["[x, y, z]"]);
    refused(&with("/runs/0/route/0", json!({"coil": 3})), "/runs/0/route/0/coil", &["must be an object"]);
    for whole in [2.0, 0.01, 1000.0] {
        assert_eq!(problems(&coil("turns", json!(whole)).to_string()), []);
    }
}

#[test]
fn dresses_that_are_none() {
    let dress = |value: Value| with("/runs/0/dress", value);
    let at = |key: &str| format!("/runs/0/dress/{key}");
    refused(&dress(json!(1)), "/runs/0/dress", &["must be an object"]);
    refused(&dress(json!({"lobes": 1})), &at("lobes"), &["whole number from 2 to 24"]);
    refused(&dress(json!({"lobes": 2.5})), &at("lobes"), &["2.5 will not do"]);
    refused(&dress(json!({"lobes": 25})), &at("lobes"), &["out of range"]);
    // A tube of 12 over a bore of 8: grooves of 2 reach the bore.
    refused(&dress(json!({"lobes": 6, "depth": 2})), &at("depth"), &["the bore of 8 mm", "less than 2 mm"]);
    refused(&dress(json!({"diameter": 8})), &at("diameter"), &["8 mm leaves no wall", "such as 12 mm"]);
    refused(&dress(json!({"end_diameter": 7})), &at("end_diameter"), &["7 mm leaves no wall"]);
    // Without lobes there are no grooves, so their depth says nothing.
    assert_eq!(problems(&dress(json!({"depth": 3})).to_string()), []);
    assert_eq!(problems(&dress(Value::Null).to_string()), []);
}

#[test]
fn a_form_gets_every_refusal_at_once() {
    let mut bad = base();
    bad["ports"][0]["at"][0] = json!("");
    bad["ports"][1]["facing"] = json!([0, 0, 0]);
    bad["runs"][0]["tube"]["bore"] = json!("x");
    bad["runs"][0]["to"] = json!("nowhere");
    bad["clearance"] = json!(-1);
    bad["loop"]["colour"] = json!("red");
    let paths: Vec<String> = problems(&bad.to_string()).into_iter().map(|refusal| refusal.path).collect();
    assert_eq!(
        paths,
        ["/ports/0/at/0", "/ports/1/facing", "/runs/0/to", "/runs/0/tube/bore", "/clearance", "/loop/colour"]
    );
}

#[test]
fn a_text_full_of_faults_is_answered_with_a_bounded_list() {
    let bad = with("/runs/0/route", Value::from(vec![json!({"corner": ["", "", ""]}); 2_000]));
    assert_eq!(problems(&bad).len(), 200);
}

#[test]
fn stances_and_printer_figures() {
    let stance = |value: Value| with("/runs/0/stance", value);
    refused(&stance(json!({"up": [0, 0, 0]})), "/runs/0/stance/up", &["points nowhere", "[0, 0, 1]"]);
    refused(&stance(json!({"up": [0, 0]})), "/runs/0/stance/up", &["three numbers", "there are 2"]);
    refused(&stance(json!({})), "/runs/0/stance/up", &["Up is missing"]);
    refused(
        &stance(json!({"up": [0, 0, 1], "turn_deg": 361})),
        "/runs/0/stance/turn_deg",
        &["Turn: 361", "out of range"],
    );
    refused(&stance(json!({"up": [0, 0, 1], "lift": 3})), "/runs/0/stance/lift", &["lift"]);
    refused(&stance(json!(true)), "/runs/0/stance", &["stance"]);
    for whole in [json!(null), json!({"up": [0, 0, -2.5]}), json!({"up": [1, 1, 1], "turn_deg": -90})] {
        assert_eq!(problems(&stance(whole)), []);
    }
    let printer = |key: &str, value: Value| {
        let mut printer = json!({"name": "p", "build_volume": [100, 100, 100], "least_wall": 1});
        printer[key] = value;
        with("/process/printer", printer)
    };
    let keys = [("margin", -1.0), ("layer_mm", 0.0), ("spot_mm", 0.0), ("overhang_deg", 91.0), ("bore_deg", -1.0)];
    let more = [("bridge_mm", -1.0), ("seconds_per_layer", 0.0), ("most_triangles", 999.0), ("most_mb", 0.5)];
    for (key, bad) in keys.into_iter().chain(more) {
        refused(&printer(key, json!(bad)), &format!("/process/printer/{key}"), &["out of range"]);
        // Every figure but the margin may be not known.
        assert_eq!(problems(&printer(key, json!(null))).is_empty(), key != "margin", "{key}");
    }
    let whole = parse(&printer("overhang_deg", json!(40))).unwrap().process.printer;
    assert_eq!((whole.margin, whole.overhang_deg, whole.bore_deg), (5.0, Some(40.0), None));
}
