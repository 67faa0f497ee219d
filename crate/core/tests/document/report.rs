//! The report and the scene against values worked out apart from the engine: bend-table examples from their points,
//! volumes by Pappus's theorem and frusta, computed with Python from the formulas named beside them.

use serde_json::{Value, json};
use tubewright_core::engine;

/// A run whose tube ends lie on the ports' seats (socket as deep as the fitting is high), through `points`.
fn through(points: &[[f64; 3]], radius: f64) -> Value {
    let direction = |from: [f64; 3], to: [f64; 3]| [0, 1, 2].map(|axis| to[axis] - from[axis]);
    let last = points.len() - 1;
    let corners: Vec<Value> = points[1..last].iter().map(|point| json!({"corner": point})).collect();
    json!({"format": "tubewright-design", "version": 1, "name": "table",
        "fittings": [{"name": "f", "tube_diameter": 12, "height": 10, "socket_depth": 10, "lead": 0}],
        "ports": [{"name": "a", "at": points[0], "facing": direction(points[0], points[1]), "fitting": "f"},
                  {"name": "b", "at": points[last], "facing": direction(points[last], points[last - 1]), "fitting": "f"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": radius,
                  "route": corners, "ends": {"chamfer_length": 0, "edge_break": 0, "seat_mark": false}}],
        "process": {"material": "PLA"}})
}

const A: [[f64; 3]; 4] = [[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [100.0, 80.0, 0.0], [100.0, 80.0, 60.0]];

fn report(design: &Value) -> Value {
    serde_json::from_str(&engine::report(&design.to_string()).unwrap()).unwrap()
}

#[track_caller]
fn close(found: &Value, expected: f64, within: f64) {
    let found = found.as_f64().unwrap_or(f64::NAN);
    assert!((found - expected).abs() <= within, "{found} is not {expected}");
}

/// Rows as (straight, rotation, angle, radius), the last one the straight alone.
#[track_caller]
fn table(design: &Value, rows: &[[f64; 4]], developed: f64) {
    let report = report(design);
    let found = report["runs"][0]["bend_table"].as_array().unwrap();
    assert_eq!(found.len(), rows.len());
    for (found, expected) in found.iter().zip(rows) {
        for (key, expected) in ["straight_mm", "rotation_deg", "angle_deg", "radius_mm"].iter().zip(expected) {
            close(&found[key], *expected, 1e-6);
        }
    }
    close(&report["runs"][0]["length_mm"], developed, 1e-6);
}

#[test]
fn bend_tables_by_hand() {
    table(&through(&A, 24.0), &[[76.0, 0.0, 90.0, 24.0], [32.0, 90.0, 90.0, 24.0], [36.0, 0.0, 0.0, 0.0]], 219.398224);
    let b = [[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [100.0, 80.0, 0.0], [160.0, 80.0, 60.0], [160.0, 140.0, 60.0]];
    let rows =
        [[76.0, 0.0, 90.0, 24.0], [32.0, 135.0, 90.0, 24.0], [36.852814, 180.0, 90.0, 24.0], [36.0, 0.0, 0.0, 0.0]];
    table(&through(&b, 24.0), &rows, 293.950149);
    let c = [[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [160.0, 80.0, 0.0], [160.0, 80.0, 100.0], [200.0, 80.0, 130.0]];
    let rows = [
        [90.0, 0.0, 53.130102, 20.0],
        [70.0, 90.0, 90.0, 20.0],
        [70.0, 126.869898, 53.130102, 20.0],
        [40.0, 0.0, 0.0, 0.0],
    ];
    table(&through(&c, 20.0), &rows, 338.507735);
}

#[test]
fn right_angles_are_told_as_ninety_exactly() {
    let report = report(&through(&A, 24.0));
    for row in 0..2 {
        assert_eq!(report["runs"][0]["bend_table"][row]["angle_deg"], json!(90.0));
    }
    assert_eq!(report["runs"][0]["bend_table"][1]["rotation_deg"], json!(90.0));
    assert_eq!(
        report["runs"][0]["points_mm"],
        json!([[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [100.0, 80.0, 0.0], [100.0, 80.0, 60.0]])
    );
}

#[test]
fn volumes_masses_and_bounds() {
    let plain = report(&through(&A, 24.0));
    let run = &plain["runs"][0];
    // Pappus: pi/4 (12^2 - 8^2) L and pi/4 8^2 L with L = 76 + 32 + 36 + 24 pi.
    close(&run["material_mm3"], 13785.196954861496, 1e-8);
    close(&run["bore_mm3"], 11028.157563889197, 1e-8);
    // PLA 1.24 g/cm3; water at 40 degrees C 0.992216 g/cm3 (IAPWS R6-95).
    close(&run["mass_g"], 13.785196954861496 * 1.24, 1e-11);
    close(&run["coolant_g"], 11.028157563889197 * 0.992216, 1e-11);
    assert_eq!(run["bounds_mm"], json!({"min": [0.0, -6.0, -6.0], "max": [106.0, 86.0, 60.0]}));
    assert_eq!(plain["totals"]["material_mm3"], run["material_mm3"]);

    let mut chamfered = through(&A, 24.0);
    chamfered["runs"][0]["ends"] = json!({ "seat_mark": false });
    let run = &report(&chamfered)["runs"][0];
    // Less two rings between a cylinder and a frustum: 15 degrees over 2 mm outside, 45 degrees over 0.2 mm inside.
    close(&run["material_mm3"], 13744.972070179665, 1e-8);
    close(&run["bore_mm3"], 11029.179628699165, 1e-8);
    close(&run["length_mm"], 219.39822368615503, 1e-10);
}

#[test]
fn keys_stand_in_the_contracts_order() {
    let mut bad = through(&A, 24.0);
    bad["runs"][0]["tube"]["bore"] = json!(11.5);
    let text = engine::report(&bad.to_string()).unwrap();
    let order = [
        "name",
        "runs",
        "name",
        "made",
        "length_mm",
        "material_mm3",
        "bore_mm3",
        "mass_g",
        "coolant_g",
        "bounds_mm",
        "min",
        "max",
        "bend_table",
        "straight_mm",
        "rotation_deg",
        "angle_deg",
        "radius_mm",
        "points_mm",
        "totals",
        "length_mm",
        "material_mm3",
        "bore_mm3",
        "mass_g",
        "coolant_g",
        "findings",
        "code",
        "severity",
        "run",
        "where",
        "at_mm",
        "message",
        "value",
        "limit",
        "unit",
        "source",
        "fix",
        "op",
        "path",
        "value",
    ];
    let mut rest = text.as_str();
    for key in order {
        let quoted = format!("\"{key}\":");
        let at = rest.find(&quoted).unwrap_or_else(|| panic!("{key} is not in its place in {text}"));
        rest = &rest[at + quoted.len()..];
    }
}

#[test]
fn a_run_that_cannot_be_made_has_no_numbers_and_says_why() {
    let mut bad = through(&A, 24.0);
    bad["runs"][0]["bend_radius"] = json!(50);
    let report = report(&bad);
    let run = &report["runs"][0];
    assert_eq!(run["made"], json!(false));
    for key in ["length_mm", "material_mm3", "bore_mm3", "mass_g", "coolant_g", "bounds_mm"] {
        assert_eq!(run[key], Value::Null, "{key}");
    }
    assert_eq!(run["bend_table"], json!([]));
    assert_eq!(report["totals"]["length_mm"], json!(0.0));
    let finding = &report["findings"][0];
    assert_eq!((finding["code"].as_str(), finding["severity"].as_str()), (Some("corners_too_close"), Some("stop")));
    assert_eq!(finding["run"], json!("r"));
    assert!(finding["message"].as_str().unwrap().starts_with("r: "));
    // Asked for its mesh, it gives that same message.
    let refusal = engine::tube_mesh(&bad.to_string(), "r", 0.01).unwrap_err();
    assert_eq!(json!(refusal.message), finding["message"]);
    assert_eq!(json!(refusal.path), finding["where"]);
}

#[test]
fn the_same_text_gives_the_same_bytes() {
    let text = through(&A, 24.0).to_string();
    assert_eq!(engine::report(&text), engine::report(&text));
    assert_eq!(engine::scene(&text), engine::scene(&text));
}

#[test]
fn a_fix_can_be_applied_to_the_text_it_was_found_in() {
    // Bad designs that leave out what they can: the keys that a fix sets are not there to be replaced.
    let bare = json!({"format": "tubewright-design", "version": 1,
        "fittings": [{"name": "f", "tube_diameter": 12}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "f"},
                  {"name": "b", "at": [90, 0, 60], "facing": [-1, 0, 0], "fitting": "f"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8},
                  "route": [{"corner": [0, 0, 60]}]}]});
    let change = |pointer: &str, value: Value| {
        let mut design = bare.clone();
        *design.pointer_mut(pointer).unwrap() = value;
        design
    };
    let mut tried = Vec::new();
    for design in [
        change("/runs/0/tube", json!({"outer_diameter": 12, "bore": 11})),
        change("/runs/0/tube", json!({"outer_diameter": 12, "bore": 10.2})),
        change("/runs/0/tube", json!({"outer_diameter": 14, "bore": 10})),
        change("/runs/0/tube", json!({"outer_diameter": 40, "bore": 36})),
        change("/ports/1/at", json!([40, 0, 44])),
        change("/runs/0/route/0/corner", json!([0.2, 0, 60])),
        change("/runs/0/route", json!([{"corner": [0, 0, 60]}, {"corner": [0, 0, 60]}])),
        change("/runs/0/route", json!([])),
    ] {
        let text = design.to_string();
        for finding in report(&design)["findings"].as_array().unwrap() {
            let Value::Array(fix) = &finding["fix"] else { continue };
            let mended = engine::apply(&text, &Value::from(fix.clone()).to_string())
                .unwrap_or_else(|refusal| panic!("{refusal} for {finding} of {text}"));
            let after: Value = serde_json::from_str(&engine::report(&mended).unwrap()).unwrap();
            // A corner between two fittings can be too close to both; each fix is for its own.
            let same = |other: &&Value| ["code", "where", "at_mm"].iter().all(|key| other[key] == finding[key]);
            assert_eq!(after["findings"].as_array().unwrap().iter().find(same), None, "{finding} stays in {mended}");
            tried.push(finding["code"].as_str().unwrap().to_owned());
        }
    }
    tried.sort();
    tried.dedup();
    assert!(tried.len() >= 4, "only {tried:?} had a fix");
}

#[test]
fn the_scene_follows_the_curve() {
    let design = through(&A, 24.0);
    let scene: Value = serde_json::from_str(&engine::scene(&design.to_string()).unwrap()).unwrap();
    let run = &scene["runs"][0];
    assert_eq!(run["corners"], json!([[100.0, 0.0, 0.0], [100.0, 80.0, 0.0]]));
    assert_eq!((&run["outer_diameter"], &run["bore"], &run["made"]), (&json!(12.0), &json!(8.0), &json!(true)));
    let points: Vec<[f64; 3]> = serde_json::from_value(run["centreline"].clone()).unwrap();
    assert_eq!(points.first(), Some(&[0.0, 0.0, 0.0]));
    assert_eq!(points.last(), Some(&[100.0, 80.0, 60.0]));
    // The first bend's circle: centre (76, 24, 0), radius 24. Its corners lie on it, chords at most 0.05 inside.
    let from_centre = |p: &[f64; 3]| libm::hypot(p[0] - 76.0, p[1] - 24.0);
    let on_bend: Vec<&[f64; 3]> = points.iter().filter(|p| p[0] > 76.0 - 1e-9 && p[1] < 24.0 + 1e-9).collect();
    assert!(on_bend.len() > 6, "{on_bend:?}");
    for pair in on_bend.windows(2) {
        let middle = [0, 1, 2].map(|axis| (pair[0][axis] + pair[1][axis]) / 2.0);
        assert!((from_centre(pair[0]) - 24.0).abs() < 1e-9);
        assert!(from_centre(&middle) > 24.0 - 0.05);
    }
    // Collars of 19 mm stand on the ports: 9.5 mm round the tube's axis, 10 mm out of the seat.
    assert_eq!(
        scene["collars"][0],
        json!({"port": "a", "from": [0.0, 0.0, 0.0], "to": [10.0, 0.0, 0.0], "radius": 9.5})
    );
    assert_eq!(scene["ports"][1]["facing"], json!([0.0, 0.0, -1.0]));
    assert_eq!(scene["ports"][1]["mouth"], json!([100.0, 80.0, 50.0]));
    assert_eq!(scene["bounds"], json!({"min": [0.0, -9.5, -9.5], "max": [109.5, 89.5, 60.0]}));
}

/// A right angle of 24 mm at (100, 0, 0) begins and ends 24 mm from there; its middle is 24 (1 - sqrt(1/2)) from both
/// legs, and its centre lies the other way.
#[test]
fn the_scene_tells_where_each_bend_is_and_whose() {
    let design = through(&A, 24.0);
    let scene: Value = serde_json::from_str(&engine::scene(&design.to_string()).unwrap()).unwrap();
    let run = &scene["runs"][0];
    assert_eq!(run["stations"], json!([0, 1]));
    assert_eq!(run["turns"].as_array().unwrap().len(), 2);
    let turn = &run["turns"][0];
    assert_eq!((&turn["kind"], &turn["stations"]), (&json!("bend"), &json!([0, 0])));
    let number = |value: &Value| value.as_f64().unwrap();
    let near = |value: &Value, expected: f64| assert!((number(value) - expected).abs() < 1e-9, "{value} is {expected}");
    let end = |which: usize| &run["centreline"][turn["points"][which].as_u64().unwrap() as usize];
    for (which, expected) in [[76.0, 0.0, 0.0], [100.0, 24.0, 0.0]].into_iter().enumerate() {
        (0..3).for_each(|axis| near(&end(which)[axis], expected[axis]));
    }
    near(&turn["bend"]["radius"], 24.0);
    near(&turn["bend"]["angle_deg"], 90.0);
    let inside = 24.0 * (1.0 - std::f64::consts::FRAC_1_SQRT_2);
    for (axis, expected) in [100.0 - inside, inside, 0.0].into_iter().enumerate() {
        near(&turn["bend"]["middle"][axis], expected);
    }
    for (axis, sign) in [-1.0, 1.0, 0.0].into_iter().enumerate() {
        near(&turn["bend"]["inward"][axis], sign * std::f64::consts::FRAC_1_SQRT_2);
    }
    assert_eq!(run["turns"][1]["stations"], json!([1, 1]));
}

#[test]
fn the_scene_holds_keep_outs_and_what_cannot_be_made() {
    let mut design = through(&A, 50.0);
    design["keep_outs"] = json!([{"name": "bay", "box": {"min": [-50, -60, -70], "max": [0, 0, 0]}},
        {"name": "can", "cylinder": {"from": [0, 0, 300], "to": [0, 0, 400], "radius": 25}}]);
    let scene: Value = serde_json::from_str(&engine::scene(&design.to_string()).unwrap()).unwrap();
    assert_eq!(
        scene["keep_outs"][0],
        json!({"name": "bay", "box": {"min": [-50.0, -60.0, -70.0], "max": [0.0, 0.0, 0.0]}})
    );
    let can = json!({"name": "can", "cylinder": {"from": [0.0, 0.0, 300.0], "to": [0.0, 0.0, 400.0], "radius": 25.0}});
    assert_eq!(scene["keep_outs"][1], can);
    assert_eq!(scene["runs"][0]["made"], json!(false));
    assert!(scene["runs"][0]["centreline"].as_array().unwrap().len() >= 4);
    assert_eq!(scene["bounds"]["max"][2], json!(400.0));
    assert_eq!(scene["bounds"]["min"], json!([-50.0, -60.0, -70.0]));
    let empty: Value =
        serde_json::from_str(&engine::scene(r#"{"format":"tubewright-design","version":1}"#).unwrap()).unwrap();
    assert_eq!(empty["bounds"], json!({"min": [0.0, 0.0, 0.0], "max": [100.0, 100.0, 100.0]}));
}

#[test]
fn no_more_than_a_hundred_metres_of_tube() {
    let far = |x: f64| through(&[[0.0, 0.0, 0.0], [x, 0.0, 0.0], [x, 100.0, 0.0]], 24.0);
    // 100 m less what the corner saves (24 (2 - pi/2) = 10.3 mm), and a little more than 100 m.
    assert!(engine::report(&far(99_900.0).to_string()).is_ok());
    let text = far(99_920.0).to_string();
    let refusal = engine::report(&text).unwrap_err();
    assert_eq!(refusal.path, "/runs/0");
    assert!(refusal.message.contains("100.01 m of tube; 100 m is the most"), "{}", refusal.message);
    assert_eq!(engine::tube_mesh(&text, "r", 1.0).unwrap_err(), refusal);
    assert_eq!(engine::scene(&text).unwrap_err(), refusal);
    assert_eq!(engine::export_file(&text, r#"{"kind":"design"}"#).unwrap_err(), refusal);
    // It can still be kept and changed.
    assert!(engine::normalise(&text).is_ok());
}

#[test]
fn of_too_many_findings_the_worst_are_told() {
    // 998 ports carry no tube and 900 fittings are in no port, notes or cares each; one run that cannot be made stops.
    let mut design = through(&A, 50.0);
    let ports = design["ports"].as_array_mut().unwrap();
    ports.extend(
        (0..998).map(
            |i| json!({"name": format!("p{i}"), "at": [5_000 + 100 * i, 0, 0], "facing": [0, 0, 1], "fitting": "f"}),
        ),
    );
    let fittings = design["fittings"].as_array_mut().unwrap();
    fittings.extend((0..900).map(|i| json!({"name": format!("g{i}"), "tube_diameter": 12})));
    let report = report(&design);
    let findings = report["findings"].as_array().unwrap();
    assert_eq!(findings.len(), 1_000);
    assert_eq!(findings[0]["severity"], json!("stop"));
    let last = &findings[999];
    assert_eq!(last["code"], json!("more_findings"));
    let rest: f64 = last["value"].as_f64().unwrap();
    assert!(rest >= 898.0, "{last}");
    assert!(last["message"].as_str().unwrap().starts_with(&format!("{rest} more findings")), "{last}");
}
