//! Copies of runs and runs told from their other end. The judge is geometry: a curve is the same from either end, and a
//! screw has the same hand seen from either end.

use crate::edit_support::{alike, apart, canonical, edited, line, lines, parsed, points, rich};
use nalgebra::Vector3;
use serde_json::{Value, json};
use std::f64::consts::PI;
use tubewright_core::engine;
use tubewright_core::layout::{reference_perpendicular, rotate, unit};
use tubewright_core::strategies::{Expect, KINDS, designs};

#[test]
fn a_copy_stands_behind_its_run_under_a_new_name() {
    let before = canonical(&rich());
    let after = edited(&before, json!({ "edit": "copy", "run": "pump to block" }));
    assert_eq!(after["runs"].as_array().map(Vec::len), Some(3));
    let mut copy = after["runs"][1].clone();
    assert_eq!(copy["name"], "pump to block copy");
    copy["name"] = json!("pump to block");
    assert_eq!(copy, before["runs"][0]);
    let mut without = after.clone();
    without["runs"].as_array_mut().unwrap().remove(1);
    assert_eq!(without, before, "nothing else is touched");
    let again = edited(&after, json!({ "edit": "copy", "run": "pump to block" }));
    assert_eq!(again["runs"][1]["name"], "pump to block copy 2");
    // Two tubes on one port are for the builder to sort out, and the report says so.
    let report = parsed(&engine::report(&after.to_string()).unwrap());
    assert!(report["findings"].as_array().unwrap().iter().any(|finding| finding["code"] == "port_used_twice"));
}

#[test]
fn a_run_turned_round_is_the_same_curve_point_by_point() {
    let before = rich();
    let after = edited(&before, json!({ "edit": "reverse", "run": "pump to block" }));
    assert_eq!([&after["runs"][0]["from"], &after["runs"][0]["to"]], ["block", "pump"]);
    assert_eq!(after["runs"][0]["route"][2]["coil"]["hand"], "left");
    let (here, there) = (line(&before, 0), line(&after, 0));
    assert!((here.length - there.length).abs() < 1e-9, "{} and {}", here.length, there.length);
    let [here, there] = [points(&here, 997), points(&there, 997)];
    let off = apart(&here, there.iter().rev());
    assert!(off < 1e-9, "{off}");
    assert_eq!(after["runs"][1], canonical(&before)["runs"][1], "the other run is not touched");
}

#[test]
fn turning_round_twice_gives_the_run_again() {
    let before = canonical(&rich());
    let request = json!({ "edit": "reverse", "run": "pump to block" });
    let twice = edited(&edited(&before, request.clone()), request);
    assert!(alike(&twice, &before, 1e-9), "{twice:#}");
    // With coordinates as people type them even the digits come back.
    let mut plain = before.clone();
    plain["runs"][0]["route"][1]["coil"]["axis"] = json!([0, 0, 1]);
    let request = json!({ "edit": "reverse", "run": "pump to block" });
    assert_eq!(edited(&edited(&plain, request.clone()), request), plain);
}

/// A point of a coil by the document's own formula.
fn on_coil(coil: &Value, turned: f64) -> Vector3<f64> {
    let number = |key: &str| coil[key].as_f64().unwrap();
    let vector = |key: &str| Vector3::from([0, 1, 2].map(|k| coil[key][k].as_f64().unwrap()));
    let axis = unit(&vector("axis"));
    let sign = if coil["hand"] == "left" { -1.0 } else { 1.0 };
    let whole = 2.0 * PI * number("turns");
    let last = coil["end_radius"].as_f64().unwrap_or(number("radius"));
    let radius = number("radius") + (last - number("radius")) * turned / whole;
    let out = rotate(&reference_perpendicular(&axis), &axis, number("start_deg").to_radians() + sign * turned);
    vector("centre") + out * radius + axis * (number("pitch") * turned / (2.0 * PI))
}

#[test]
fn a_coil_turned_round_passes_the_same_points_from_the_other_end() {
    for (index, axis) in
        [[0.0, 0.0, 1.0], [0.0, 0.0, -3.0], [1.0, 0.0, 0.0], [0.01, 0.0, 1.0], [0.3, -0.5, 0.7]].into_iter().enumerate()
    {
        for (hand, turns, start) in [("right", 1.0, 0.0), ("left", 2.25, 30.0), ("right", 0.37, -300.0)] {
            let coil = json!({ "coil": { "centre": [5, -7, 300], "axis": axis, "radius": 40, "end_radius": 51, "pitch": 19,
                "turns": turns, "hand": hand, "start_deg": start } });
            let mut before = rich();
            before["runs"][0]["route"] = json!([coil]);
            let after = edited(&before, json!({ "edit": "reverse", "run": "pump to block" }));
            let (here, there) = (&before["runs"][0]["route"][0]["coil"], &after["runs"][0]["route"][0]["coil"]);
            let whole = 2.0 * PI * turns;
            for step in 0..=40 {
                let turned = whole * f64::from(step) / 40.0;
                let off = (on_coil(here, turned) - on_coil(there, whole - turned)).norm();
                assert!(off < 1e-9, "axis {index}, {hand}, {turns}, at {turned}: {off}");
            }
        }
    }
}

#[test]
fn a_dress_turned_round_keeps_its_hand_and_swaps_its_ends() {
    let before = rich();
    let after = edited(&before, json!({ "edit": "reverse", "run": "pump to block" }));
    let dress = &after["runs"][0]["dress"];
    assert_eq!([&dress["diameter"], &dress["end_diameter"]], [18, 15]);
    assert_eq!(dress["twist_deg_per_mm"], 1.5);
    let mut even = before.clone();
    even["runs"][0]["dress"] = json!({ "diameter": 15, "lobes": 5, "depth": 0.5 });
    let after = edited(&even, json!({ "edit": "reverse", "run": "pump to block" }));
    assert_eq!(after["runs"][0]["dress"], canonical(&even)["runs"][0]["dress"]);
    even["runs"][0]["dress"] = json!({ "end_diameter": 14 });
    let after = edited(&even, json!({ "edit": "reverse", "run": "pump to block" }));
    assert_eq!([&after["runs"][0]["dress"]["diameter"], &after["runs"][0]["dress"]["end_diameter"]], [14, 12]);
}

/// The design with the start of its coils as points of the unit circle, where whole turns are nothing.
fn round(mut design: Value) -> Value {
    for station in design["runs"][0]["route"].as_array_mut().unwrap() {
        if let Some(start) = station["coil"]["start_deg"].as_f64() {
            let (sin, cos) = libm::sincos(start.to_radians());
            station["coil"]["start_deg"] = json!([cos, sin]);
        }
    }
    design
}

#[test]
fn made_up_designs_turned_round_are_the_same_tubes() {
    for design in designs(0xed17, 4 * KINDS.len()).into_iter().filter(|design| design.expect == Expect::Made) {
        let told = format!("strategies::one({:?}, {})", design.kind, design.seed);
        let before = canonical(&parsed(&design.text));
        let name = &before["runs"][0]["name"];
        let request = json!({ "edit": "reverse", "run": name });
        let after = edited(&before, request.clone());
        let (here, there) = (lines(&before.to_string()), lines(&after.to_string()));
        let (Some(here), Some(there)) = (&here[0], &there[0]) else { panic!("{told}: not made") };
        // Apexes of hairpins lie metres away, and rounding there is rounding of the whole.
        assert!((here.length - there.length).abs() < 1e-6 * here.length.max(1.0), "{told}");
        let twice = edited(&after, request);
        assert!(alike(&round(twice), &round(before), 1e-9), "{told}: twice is not once");
    }
}

#[test]
fn another_ones_ports_are_taken_over_and_the_shape_follows() {
    let mine = canonical(&rich());
    let mut theirs = mine.clone();
    theirs["ports"][0]["at"] = json!([33, 18.5, 60]);
    theirs["ports"][1]["measured_to"] = json!(0.2);
    theirs["ports"][2]["name"] = json!("unknown here");
    theirs["runs"] = json!([]);
    let after = edited(&mine, json!({ "edit": "ports", "design": theirs.to_string() }));
    assert_eq!(after["ports"][0]["at"], json!([33, 18.5, 60]));
    assert_eq!(after["ports"][1]["measured_to"], 0.2);
    assert_eq!(after["ports"][2], mine["ports"][2]);
    assert_eq!(after["runs"], mine["runs"], "the shape is kept");
    // The corner is tied to the port in x and y, so the drawn tube has moved with it.
    let moved = line(&after, 0).at(0.0).point - line(&mine, 0).at(0.0).point;
    assert!((moved - Vector3::new(3.0, -1.5, 0.0)).norm() < 1e-12);
    let corner = |design: &Value| parsed(&engine::scene(&design.to_string()).unwrap())["runs"][0]["corners"][0].clone();
    assert_eq!([corner(&mine), corner(&after)], [json!([30.0, 20.0, 130.0]), json!([33.0, 18.5, 130.0])]);
}

#[test]
fn what_cannot_be_done_is_refused_at_its_place() {
    let design = rich().to_string();
    let refused = |request: &str, path: &str, word: &str| {
        let refusal = engine::edit(&design, request).expect_err(request);
        assert_eq!(refusal.path, path, "{request}: {}", refusal.message);
        assert!(refusal.message.contains(word), "{request}: {}", refusal.message);
    };
    refused("", "", "JSON object");
    refused("[]", "", "JSON object");
    refused("{}", "/edit", "copy");
    refused(r#"{"edit":"bend"}"#, "/edit", "mirror");
    refused(r#"{"edit":"copy"}"#, "/run", "by its name");
    refused(r#"{"edit":"copy","run":"x"}"#, "/run", "pump to block");
    refused(r#"{"edit":"copy","run":"spare","at":3}"#, "/at", "not known");
    refused(r#"{"edit":"copy","run":"spare","a/b":3}"#, "/a~1b", "not known");
    refused(r#"{"edit":"mirror","run":"spare","at":3}"#, "/across", "\"x\"");
    refused(r#"{"edit":"mirror","run":"spare","across":"w","at":3}"#, "/across", "\"x\"");
    refused(r#"{"edit":"mirror","run":"spare","across":"x"}"#, "/at", "120");
    refused(r#"{"edit":"mirror","run":"spare","across":"x","at":"3"}"#, "/at", "120");
    refused(r#"{"edit":"mirror","run":"spare","across":"x","at":2e6}"#, "/at", "too far");
    refused(r#"{"edit":"mirror","run":"spare","across":"x","at":9e5}"#, "/at", "nearer plane");
    refused(r#"{"edit":"ports"}"#, "/design", "text");
    refused(r#"{"edit":"ports","design":"{}"}"#, "/design", "cannot be read");
    let mut strange = rich();
    for port in strange["ports"].as_array_mut().unwrap() {
        port["name"] = json!(format!("my {}", port["name"].as_str().unwrap()));
    }
    strange["runs"] = json!([]);
    refused(&json!({ "edit": "ports", "design": strange.to_string() }).to_string(), "/design", "same name");
    assert_eq!(engine::edit("{", "{}").expect_err("no design").path, "");
}

#[test]
fn as_many_runs_as_there_may_be_leave_no_room() {
    let mut full = rich();
    let spare = full["runs"][1].clone();
    for number in 0..198 {
        let mut run = spare.clone();
        run["name"] = json!(format!("spare {number}"));
        full["runs"].as_array_mut().unwrap().push(run);
    }
    for request in
        [json!({ "edit": "copy", "run": "spare" }), json!({ "edit": "mirror", "run": "spare", "across": "x", "at": 0 })]
    {
        let refusal = engine::edit(&full.to_string(), &request.to_string()).expect_err("full");
        assert_eq!(refusal.path, "/run");
        assert!(refusal.message.contains("200 runs"), "{}", refusal.message);
    }
}
