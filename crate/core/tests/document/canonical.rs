//! The canonical text of a design: the contract's own example, defaults, number forms, and that it is a fixed point.

use tubewright_core::design::{canonical, parse, problems};

/// The example of the document, as a builder would keep it.
const EXAMPLE: &str = include_str!("example.json");
/// What it must become, written by hand from the document's description.
const EXAMPLE_CANONICAL: &str = include_str!("example-canonical.json");

fn normalised(text: &str) -> String {
    match parse(text) {
        Ok(design) => canonical(&design),
        Err(refusal) => panic!("{refusal}"),
    }
}

#[test]
fn the_example_has_its_defaults_filled_in_and_its_keys_in_order() {
    assert_eq!(normalised(EXAMPLE), EXAMPLE_CANONICAL);
    assert_eq!(normalised(EXAMPLE_CANONICAL), EXAMPLE_CANONICAL);
    assert!(problems(EXAMPLE).is_empty());
}

#[test]
fn the_smallest_design_takes_every_default() {
    let text = normalised(r#"{"format":"tubewright-design","version":1}"#);
    let value: serde_json::Value = serde_json::from_str(&text).unwrap();
    assert_eq!(value["clearance"], 1);
    assert_eq!(value["name"], "");
    assert_eq!(value["notes"], "");
    assert_eq!(value["process"]["material"]["name"], "high-temperature resin");
    assert_eq!(value["process"]["printer"]["name"], "medium resin");
    assert_eq!(value["loop"]["coolant"]["name"], "water");
    assert_eq!(value["loop"]["flow_l_per_h"], 120);
    assert_eq!(value["loop"]["working_c"], 40);
    assert_eq!(value["loop"]["fault_c"], 60);
    assert_eq!(value["loop"]["pressure_kpa"], 50);
    for list in ["fittings", "ports", "runs", "keep_outs"] {
        assert!(text.contains(&format!("\"{list}\": []")), "{text}");
    }
    assert!(text.ends_with("}\n"));
}

#[test]
fn a_run_and_a_fitting_take_their_defaults() {
    let text = normalised(
        r#"{"format":"tubewright-design","version":1,
        "fittings":[{"name":"f","tube_diameter":16}],
        "ports":[{"name":"a","at":[0,0,0],"facing":[0,0,2],"fitting":"f"},{"name":"b","at":[90,0,0],"facing":[0,0,1e-9],"fitting":"f"}],
        "runs":[{"name":"r","from":"a","to":"b","tube":{"outer_diameter":16,"bore":12}}]}"#,
    );
    let value: serde_json::Value = serde_json::from_str(&text).unwrap();
    let fitting = serde_json::json!({"name": "f", "tube_diameter": 16, "height": 18, "socket_depth": 10,
        "collar_diameter": 23, "lead": 5, "bore": null, "elbow": null, "seal": null});
    assert_eq!(value["fittings"][0], fitting);
    assert_eq!(value["ports"][0]["measured_to"], 0.5);
    assert_eq!(value["ports"][1]["facing"], serde_json::json!([0, 0, 1e-9]));
    assert_eq!(value["runs"][0]["bend_radius"], 32);
    assert_eq!(value["runs"][0]["route"], serde_json::json!([]));
    let ends =
        serde_json::json!({"chamfer_deg": 15, "chamfer_length": 2, "edge_break": 0.2, "trim": 0, "seat_mark": true});
    assert_eq!(value["runs"][0]["ends"], ends);
}

#[test]
fn numbers_are_written_as_short_as_they_read_back() {
    let with = |x: &str| {
        let text = format!(
            r#"{{"format":"tubewright-design","version":1,"fittings":[{{"name":"f","tube_diameter":12}}],
            "ports":[{{"name":"a","at":[{x},-0,-0.0],"facing":[0,0,1],"fitting":"f"}}]}}"#
        );
        let text = normalised(&text);
        let line = text.lines().find(|line| line.contains("\"at\"")).unwrap().trim().to_owned();
        line.strip_prefix("\"at\": [").unwrap().strip_suffix(", 0, 0],").unwrap().to_owned()
    };
    // Left as typed, right as a person would write it; the last three are the classical hard cases of reading decimals.
    for (typed, written) in [
        ("12.0", "12"),
        ("-0", "0"),
        ("0.1", "0.1"),
        ("0.30000000000000004", "0.30000000000000004"),
        ("1e3", "1000"),
        ("1E-7", "1e-7"),
        ("123456.7890", "123456.789"),
        ("-1000000", "-1000000"),
        ("2.2250738585072011e-308", "2.225073858507201e-308"),
        ("5e-324", "5e-324"),
        ("0.500000000000000166533453693773481063544750213623046875", "0.5000000000000002"),
    ] {
        assert_eq!(with(typed), written, "typed {typed}");
    }
}

#[test]
fn minus_zero_goes_no_further_than_the_text() {
    let text = EXAMPLE.replace("\"at\": [30, 20, 60]", "\"at\": [-0, -0.0, 60]");
    let design = parse(&text).unwrap();
    for axis in 0..2 {
        assert!(design.ports[0].at[axis].is_sign_positive());
    }
}
