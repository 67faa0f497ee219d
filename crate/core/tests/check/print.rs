//! Findings about how a tube stands: what the report tells at once, and what is told with the stances.

use crate::print_support::{design, judged, straight};
use serde_json::{Value, json};
use tubewright_core::engine::{apply, report, stances};

fn found(text: &str, code: &str) -> Option<Value> {
    let report: Value = serde_json::from_str(&report(text).unwrap()).unwrap();
    report["findings"].as_array().unwrap().iter().find(|finding| finding["code"] == json!(code)).cloned()
}

fn told(text: &str) -> Vec<Value> {
    let told: Value = serde_json::from_str(&stances(text, "r").unwrap()).unwrap();
    told["findings"].as_array().unwrap().clone()
}

fn near(found: &Value, expected: f64, within: f64) {
    assert!((found.as_f64().unwrap() - expected).abs() <= within, "{found}, not {expected}");
}

#[test]
fn a_tube_longer_than_the_rooms_diagonal_is_told_with_the_report() {
    // 190 by 115 by 210 between the margins: 305.6 from corner to corner.
    let volume = [200.0, 125.0, 220.0];
    let finding = found(&design(straight(310.0, 12.0, 8.0), volume), "print_size").unwrap();
    assert_eq!((&finding["severity"], &finding["where"]), (&json!("care"), &json!("/runs/0")));
    near(&finding["value"], 310.0, 1e-9);
    near(&finding["limit"], libm::sqrt(190.0 * 190.0 + 115.0 * 115.0 + 210.0 * 210.0), 1e-9);
    let message = finding["message"].as_str().unwrap();
    assert!(message.contains("305.655 mm from corner to corner") && message.contains("more room"), "{message}");
    // Just under the diagonal the report is silent, for it takes a search to tell; the stances say that it does not fit.
    let text = design(straight(304.0, 12.0, 8.0), volume);
    assert_eq!(found(&text, "print_size"), None);
    let finding = &told(&text)[0];
    assert_eq!(finding["code"], json!("print_size"));
    let message = finding["message"].as_str().unwrap();
    assert!(
        message.contains("sticks out of the room of “p” by") && finding["value"].as_f64().unwrap() > 0.1,
        "{message}"
    );
}

#[test]
fn a_tube_wider_than_the_room_is_told_what_would_fit() {
    let finding = found(&design(straight(60.0, 30.0, 8.0), [25.0, 25.0, 200.0]), "print_size").unwrap();
    near(&finding["value"], 30.0, 0.0);
    near(&finding["limit"], 15.0 * libm::sqrt(2.0), 1e-9);
    assert!(finding["message"].as_str().unwrap().contains("21.213 mm is the most"), "{finding}");
    // Margins that leave nothing are no room at all, and no fault.
    assert!(found(&design(straight(60.0, 30.0, 8.0), [8.0, 8.0, 8.0]), "print_size").is_some());
}

#[test]
fn powder_in_a_long_bore_is_told_with_the_report() {
    let long = judged(&design(straight(330.0, 12.0, 8.0), [1.0; 3]), "powder");
    near(&found(&long, "print_powder").unwrap()["value"], 41.25, 1e-9);
    assert_eq!(found(&judged(&design(straight(319.0, 12.0, 8.0), [1.0; 3]), "powder"), "print_powder"), None);
    assert_eq!(found(&judged(&design(straight(330.0, 12.0, 8.0), [1.0; 3]), "resin"), "print_powder"), None);
}

#[test]
fn a_stance_of_ones_own_that_is_worse_is_told_and_given_up_by_its_fix() {
    let mut value: Value = serde_json::from_str(&design(
        json!({"ports": [[0, 0, 0], [0, 0, 1], [60, 0, 0], [0, 0, 1]], "tube": {"outer_diameter": 12, "bore": 8},
            "route": [{"corner": [0, 0, 80]}, {"corner": [60, 0, 80]}]}),
        [300.0, 300.0, 300.0],
    ))
    .unwrap();
    value["runs"][0]["stance"] = json!({"up": [0, 0, -1]});
    let text = value.to_string();
    let cup = told(&text).into_iter().find(|finding| finding["code"] == json!("print_cup")).unwrap();
    near(&cup["value"], 84.0, 1e-9);
    let message = cup["message"].as_str().unwrap();
    assert!(message.contains("of resin in one cup") && message.contains("that is found has none"), "{message}");
    let mended = apply(&text, &cup["fix"].to_string()).unwrap();
    assert!(told(&mended).iter().all(|finding| finding["code"] != json!("print_cup")), "{mended}");
    // A stance in which it does not fit, while there is one in which it does.
    let long = design(straight(250.0, 12.0, 8.0), [200.0, 125.0, 300.0]);
    let mut level: Value = serde_json::from_str(&long).unwrap();
    level["runs"][0]["stance"] = json!({"up": [0, 0, 1]});
    let size = told(&level.to_string()).remove(0);
    assert!(size["message"].as_str().unwrap().contains("by 60 mm. The best stance that is found fits."), "{size}");
    // Lying on its side the bore is flat, and what is level needs support where the rings seal.
    value["runs"][0]["stance"] = json!({"up": [0, 1, 0]});
    let codes: Vec<Value> = told(&value.to_string()).iter().map(|finding| finding["code"].clone()).collect();
    assert_eq!(codes, [json!("print_bore"), json!("print_band")]);
}

/// A coil of many flat turns has some of its bore level in any stance.
#[test]
fn what_no_stance_avoids_is_told_as_such() {
    let text = design(
        json!({"ports": [[0, -60, 0], [0, 1, 0], [60, 120, 60], [0, -1, 0]], "bend_radius": 15, "tube": {"outer_diameter": 10, "bore": 6},
            "route": [{"coil": {"centre": [30, 0, 0], "axis": [0, 0, 1], "radius": 30, "pitch": 15, "turns": 4, "hand": "right", "start_deg": 0}}]}),
        [300.0, 300.0, 300.0],
    );
    let bore = told(&text).into_iter().find(|finding| finding["code"] == json!("print_bore")).unwrap();
    assert!(bore["message"].as_str().unwrap().contains("flatter than 30° even as it stands best"), "{bore}");
    assert_eq!(bore["fix"], Value::Null);
}

/// A level bore of 8 under an overhang of 45 degrees: 8 sin 45 = 5.657 wide, and 5 where it leans by 25.07 degrees.
#[test]
fn a_ceiling_wider_than_the_printer_bridges_is_told_with_what_would_do() {
    let mut value: Value = serde_json::from_str(&design(straight(150.0, 12.0, 8.0), [300.0, 300.0, 300.0])).unwrap();
    value["process"]["material"] = json!({"name": "m", "way": "filament", "density_g_per_cm3": 1.1});
    for (key, figure) in [("overhang_deg", json!(45)), ("bore_deg", Value::Null), ("bridge_mm", json!(5))] {
        value["process"]["printer"][key] = figure;
    }
    value["runs"][0]["stance"] = json!({"up": [0, 0, 1]});
    let bridge = |text: &str| told(text).into_iter().find(|finding| finding["code"] == json!("print_bridge"));
    let text = value.to_string();
    let finding = bridge(&text).unwrap();
    near(&finding["value"], 8.0 * libm::sin(f64::to_radians(45.0)), 1e-9);
    near(&finding["limit"], 5.0, 0.0);
    let message = finding["message"].as_str().unwrap();
    assert!(message.contains("bridges 5 mm. The best stance that is found has none so wide"), "{message}");
    let mended = apply(&text, &finding["fix"].to_string()).unwrap();
    assert_eq!(bridge(&mended), None);
    value["process"]["printer"]["bridge_mm"] = json!(5.66);
    assert_eq!(bridge(&value.to_string()), None);
    // Too low a room to lean in: what the best cannot avoid is told with the slope and the bore that would do.
    value["runs"][0]["stance"] = Value::Null;
    value["process"]["printer"]["bridge_mm"] = json!(5);
    value["process"]["printer"]["build_volume"] = json!([300, 300, 23]);
    let finding = bridge(&value.to_string()).unwrap();
    let message = finding["message"].as_str().unwrap();
    assert!(
        message.contains("even as it stands best")
            && message.contains("at 25.0")
            && message.contains("a bore of up to 7."),
        "{message}"
    );
    assert_eq!(finding["fix"], Value::Null);
}

/// What is two spots wide holds one wherever it lies: walls and rings are held to twice the spot, a step to the spot.
#[test]
fn what_is_finer_than_the_printer_draws_is_told_where_it_is_stated() {
    let plain: Value = serde_json::from_str(&design(straight(150.0, 12.0, 8.0), [300.0, 300.0, 300.0])).unwrap();
    let fine = |value: &Value| -> Vec<(String, String, f64)> {
        let report: Value = serde_json::from_str(&report(&value.to_string()).unwrap()).unwrap();
        let findings =
            report["findings"].as_array().unwrap().iter().filter(|finding| finding["code"] == json!("too_fine"));
        let told = |key: &str, finding: &Value| finding[key].as_str().unwrap().to_owned();
        findings
            .map(|finding| {
                (
                    told("where", finding),
                    told("severity", finding),
                    libm::round(finding["value"].as_f64().unwrap() * 1e6) / 1e6,
                )
            })
            .collect()
    };
    let with = |spot: f64, change: &dyn Fn(&mut Value)| {
        let mut value = plain.clone();
        value["process"]["printer"]["spot_mm"] = json!(spot);
        change(&mut value);
        value
    };
    let row = |place: &str, severity: &str, value: f64| (place.to_owned(), severity.to_owned(), value);
    assert_eq!(fine(&plain), []);
    let thin = |value: &mut Value| value["runs"][0]["tube"]["bore"] = json!(10);
    // A wall of 1 between spots of 0.3 and of 0.6, whose bore of 12 - 4 * 0.6 would do; the coupon's rings are 0.8.
    assert_eq!(fine(&with(0.3, &thin)), []);
    let found = fine(&with(0.6, &thin));
    assert_eq!(found, [row("/runs/0/tube/bore", "care", 1.0), row("/process/printer/spot_mm", "note", 0.8)]);
    let text = with(0.6, &thin).to_string();
    let finding = self::found(&text, "too_fine").unwrap();
    assert!(
        finding["message"]
            .as_str()
            .unwrap()
            .contains("its wall is 1 mm; the printer surely draws 1.2 mm and more. A bore of 9.6 mm or less"),
        "{finding}"
    );
    let mended: Value = serde_json::from_str(&apply(&text, &finding["fix"].to_string()).unwrap()).unwrap();
    assert_eq!(fine(&mended), [row("/process/printer/spot_mm", "note", 0.8)]);
    // Rings 0.2 deep: 0.6 and 0.4 wide.
    let ringed = |value: &mut Value| {
        value["runs"][0]["ends"] = json!({"chamfer_length": 0, "edge_break": 0, "seat_mark": true, "trim": 3})
    };
    assert_eq!(fine(&with(0.19, &ringed)), []);
    assert_eq!(fine(&with(0.25, &ringed)), [row("/runs/0/ends/trim", "note", 0.4)]);
    assert_eq!(
        fine(&with(0.35, &ringed)),
        [row("/runs/0/ends/seat_mark", "note", 0.6), row("/runs/0/ends/trim", "note", 0.4)]
    );
    // A chamfer that leaves 2 - 3 tan 15 = 1.196 of the wall.
    let cut_off = |value: &mut Value| {
        value["runs"][0]["ends"] = json!({"chamfer_deg": 15, "chamfer_length": 3, "edge_break": 0, "seat_mark": false})
    };
    let found = fine(&with(0.7, &cut_off));
    assert_eq!(found[0].0, "/runs/0/ends/chamfer_length");
    assert!((found[0].2 - (2.0 - 3.0 * libm::tan(f64::to_radians(15.0)))).abs() < 1e-6, "{found:?}");
    // A key of 0.5 is a step; a nozzle draws it all the same. The marks of a joint are 0.6 wide.
    let cut = |value: &mut Value| value["runs"][0]["cuts"] = json!([{"at": 75}]);
    assert_eq!(fine(&with(0.29, &cut)), []);
    assert_eq!(fine(&with(0.32, &cut)), [row("/runs/0/cuts/0", "note", 0.6)]);
    let key = row("/process/joint/key_depth", "care", 0.5);
    let wide = with(0.55, &cut);
    assert!(fine(&wide).contains(&key), "{:?}", fine(&wide));
    let mut nozzle = wide;
    nozzle["process"]["material"] = json!({"name": "m", "way": "filament", "density_g_per_cm3": 1.1});
    assert!(!fine(&nozzle).contains(&key), "{:?}", fine(&nozzle));
}
