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

/// The same tubes ordered: at 0.5 a cubic centimetre and a set-up of 4, about 90 of them cost 45 and 4; a least order of 60 is
/// more than that, one of 20 is not. What is not known is not guessed, and whoever states no service is asked no price.
#[test]
fn a_small_case_s_tubes_cost_about_49_from_a_service_that_asks_a_half_a_cm3() {
    let mut design = through(&[[0.0, 0.0, 0.0], [0.0, 0.0, 500.0], [0.0, 500.0, 500.0]], 16.0, 12.0, 32.0);
    let mut asked = |service: Value| {
        design["process"] = json!({ "service": service });
        report(&design)
    };
    let told = asked(json!({"price_per_cm3": 0.5, "setup": 4, "minimum": 20}));
    let cm3 = told["totals"]["material_mm3"].as_f64().expect("a number") / 1e3;
    let price = |of: &Value| of["service_price"].as_f64().expect("a number");
    for of in [&told["totals"], &told["runs"][0]["pieces"][0]] {
        assert!((price(of) - (0.5 * cm3 + 4.0)).abs() < 1e-9 && (44.0..54.0).contains(&price(of)), "{of}");
    }
    let least = asked(json!({"price_per_cm3": 0.5, "setup": 4, "minimum": 60}));
    assert!(price(&least["totals"]) == 60.0 && price(&least["runs"][0]["pieces"][0]) < 54.0, "{}", least["totals"]);
    for service in [json!({"setup": 4, "minimum": 20}), json!({"price_per_cm3": null}), Value::Null] {
        let told = asked(service);
        assert!(told["totals"]["service_price"].is_null(), "{}", told["totals"]);
        assert!(told["runs"][0]["pieces"][0]["service_price"].is_null(), "{}", told["totals"]);
    }
}

/// Each piece is set up, and the order is one: three tubes of 20 cm3 or so at 0.5 and 4 each, and nothing is asked for none.
#[test]
fn every_piece_is_set_up_and_the_least_order_counts_once() {
    let mut design = through(&[[0.0, 0.0, 0.0], [0.0, 0.0, 200.0]], 16.0, 12.0, 32.0);
    let first = design["runs"][0].clone();
    for name in ["s", "t"] {
        let mut run = first.clone();
        run["name"] = json!(name);
        design["runs"].as_array_mut().expect("a list").push(run);
    }
    design["process"] = json!({"service": {"price_per_cm3": 0.5, "setup": 4, "minimum": 10}});
    let told = report(&design);
    let cm3 = told["totals"]["material_mm3"].as_f64().expect("a number") / 1e3;
    let price = told["totals"]["service_price"].as_f64().expect("a number");
    assert!((price - (0.5 * cm3 + 12.0)).abs() < 1e-9, "{price} for {cm3} cm3");
    design["runs"] = json!([]);
    assert!(report(&design)["totals"]["service_price"].is_null());
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
