//! Facts of common practice, no source, that a whole set of tubes must agree with.

use serde_json::{Value, json};
use tubewright_core::engine;

use crate::scene::through;

fn report(design: &Value) -> Value {
    serde_json::from_str(&engine::report(&design.to_string()).expect("a design")).expect("JSON")
}

/// A small case takes five tubes of 16/12 mm, each about a hand and a half long with a bend or two, together about 1 m: some
/// 90 mL of resin.
#[test]
fn a_small_case_s_tubes_take_about_90_ml() {
    let ways: [&[[f64; 3]]; 5] = [
        &[[0.0, 0.0, 0.0], [0.0, 0.0, 110.0], [0.0, 120.0, 110.0]],
        &[[0.0, 0.0, 0.0], [130.0, 0.0, 0.0], [130.0, 0.0, 90.0]],
        &[[0.0, 0.0, 0.0], [0.0, 80.0, 0.0], [90.0, 80.0, 0.0], [90.0, 80.0, 90.0]],
        &[[0.0, 0.0, 0.0], [0.0, 0.0, 180.0]],
        &[[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [100.0, 100.0, 0.0]],
    ];
    let volumes = ways.map(|way| {
        let run = &report(&through(way, 16.0, 12.0, 32.0))["runs"][0];
        run["material_mm3"].as_f64().expect("a number") / 1e3
    });
    let whole: f64 = volumes.iter().sum();
    assert!((80.0..100.0).contains(&whole), "{whole} mL");
}

/// At 80 a litre, what such a set is said to take in resin comes to about 7: 90 mL are 7.2.
#[test]
fn a_small_case_s_tubes_cost_about_7_at_80_a_litre() {
    let mut design = through(&[[0.0, 0.0, 0.0], [0.0, 0.0, 500.0], [0.0, 500.0, 500.0]], 16.0, 12.0, 32.0);
    design["process"] = json!({"material": {"name": "resin", "density_g_per_cm3": 1.1, "price_per_l": 80}});
    let told = report(&design);
    let litres = |of: &Value| of["material_mm3"].as_f64().expect("a number") / 1e6;
    let (whole, run) = (&told["totals"], &told["runs"][0]);
    assert!((0.080..0.100).contains(&litres(whole)), "{whole}");
    for of in [whole, run] {
        let cost = of["cost"].as_f64().expect("a number");
        assert!((cost / litres(of) - 80.0).abs() < 1e-9 && (6.4..8.0).contains(&cost), "{cost}");
    }
    design["process"]["material"].as_object_mut().expect("an object").remove("price_per_l");
    let untold = report(&design);
    assert!(untold["totals"]["cost"].is_null() && untold["runs"][0]["cost"].is_null(), "{}", untold["totals"]);
}

/// PLA gives way at the temperature of a loop whose pump has stopped: it is a stop, whatever else the tube is.
#[test]
fn pla_does_not_stand_sixty_degrees() {
    let mut design = through(&[[0.0, 0.0, 0.0], [0.0, 0.0, 110.0], [0.0, 120.0, 110.0]], 12.0, 8.0, 24.0);
    design["process"] = json!({"material": "PLA"});
    design["loop"] = json!({"working_c": 35, "fault_c": 60});
    let report = report(&design);
    let heat = report["findings"].as_array().expect("a list").iter().find(|finding| finding["code"] == "heat");
    let heat = heat.unwrap_or_else(|| panic!("{report}"));
    assert_eq!((&heat["severity"], &heat["value"]), (&json!("stop"), &json!(60.0)));
    assert!(heat["message"].as_str().is_some_and(|words| words.contains("a stopped pump")), "{heat}");
}
