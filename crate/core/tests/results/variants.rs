//! The table of variants: each row must be what the report says of the design after the row's own patch.

use crate::check_support::single;
use serde_json::{Value, json};
use tubewright_core::engine;
use tubewright_core::strategies::{KINDS, designs};

fn table(text: &str, request: &Value) -> Vec<Value> {
    let table = engine::variants(text, &request.to_string()).unwrap_or_else(|refusal| panic!("{refusal}"));
    serde_json::from_str::<Value>(&table).unwrap()["rows"].as_array().unwrap().clone()
}

fn elbow() -> Value {
    single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, 60.0]])
}

fn close(found: &Value, expected: Option<f64>, what: &str) {
    match (found.as_f64(), expected) {
        (Some(found), Some(expected)) => {
            assert!((found - expected).abs() <= 1e-12 * expected.abs().max(1.0), "{what}: {found}, not {expected}");
        }
        (None, None) => {}
        _ => panic!("{what}: {found}, not {expected:?}"),
    }
}

/// Holds a row to the report of the design that it adopts.
fn held(text: &str, row: &Value) {
    let adopted = match engine::apply(text, &row["patch"].to_string()) {
        Ok(adopted) => adopted,
        Err(refusal) => {
            assert_eq!((&row["feasible"], &row["why"]), (&json!(false), &json!([refusal.message])), "{row}");
            return;
        }
    };
    let report: Value = serde_json::from_str(&engine::report(&adopted).unwrap()).unwrap();
    let findings = report["findings"].as_array().unwrap();
    for severity in ["stop", "care", "note"] {
        let count = findings.iter().filter(|finding| finding["severity"] == json!(severity)).count();
        assert_eq!(row["findings"][severity], json!(count), "{severity} of {row}");
    }
    let stops: Vec<_> = findings.iter().filter(|finding| finding["severity"] == json!("stop")).collect();
    assert_eq!(row["feasible"], json!(stops.is_empty()));
    let why: Vec<_> = stops.iter().take(5).map(|finding| finding["message"].clone()).collect();
    assert_eq!(row["why"], json!(why));
    let runs = report["runs"].as_array().unwrap();
    let all_made = runs.iter().all(|run| run["made"] == json!(true));
    let made = |value: f64| all_made.then_some(value);
    let number = |value: &Value| value.as_f64().unwrap();
    let totals = &report["totals"];
    close(&row["material_cm3"], made(number(&totals["material_mm3"]) / 1e3), "material");
    close(&row["coolant_ml"], made(number(&totals["bore_mm3"]) / 1e3), "coolant");
    close(&row["mass_g"], made(number(&totals["mass_g"])), "mass");
    let losses: Option<f64> = runs.iter().map(|run| run.pointer("/service/flow/loss_kpa/nominal")?.as_f64()).sum();
    close(&row["loss_kpa"], losses.filter(|_| all_made), "loss");
    let strength = |key: &str| {
        let all = runs.iter().filter_map(|run| run.pointer(&format!("/service/strength/{key}"))?.as_f64());
        all.collect::<Vec<f64>>()
    };
    close(&row["utilisation"], strength("utilisation").into_iter().max_by(f64::total_cmp), "utilisation");
    close(&row["allowed_kpa"], strength("allowed_kpa").into_iter().min_by(f64::total_cmp), "allowed");
    close(&row["operating_l_per_h"], report["loop"]["operating"]["flow_l_per_h"]["nominal"].as_f64(), "operating");
    let seals = runs.iter().filter_map(|run| run.pointer("/service/seals")?.as_array()).flatten();
    let squeezes: Vec<f64> = seals.filter_map(|seal| seal.pointer("/squeeze_percent/nominal")?.as_f64()).collect();
    close(&row["squeeze_percent"][0], squeezes.iter().copied().min_by(f64::total_cmp), "least squeeze");
    close(&row["squeeze_percent"][1], squeezes.iter().copied().max_by(f64::total_cmp), "most squeeze");
    let fits = !findings.iter().any(|finding| finding["code"] == json!("tube_diameter"));
    assert_eq!(row["fits"], json!(fits), "{row}");
    let limit = runs.iter().find_map(|run| run.pointer("/service/heat/limit_c")?.as_f64());
    if let Some(limit) = limit {
        let design: Value = serde_json::from_str(&adopted).unwrap();
        close(&row["heat_margin_k"], Some(limit - number(&design["loop"]["fault_c"])), "margin");
    }
}

#[test]
fn each_row_is_what_the_report_says_of_the_demos() {
    let presets: Value = serde_json::from_str(&engine::presets()).unwrap();
    let request =
        json!({"outer_diameters": [12, 12.1, 14, 14.02, 16], "bores": [8, 9.5, 12, 15], "materials": ["PLA", "PC"]});
    for demo in presets["demos"].as_array().unwrap() {
        let text = demo["design"].to_string();
        let rows = table(&text, &request);
        assert_eq!(rows.len(), 40);
        rows.iter().for_each(|row| held(&text, row));
    }
}

#[test]
fn each_row_is_what_the_report_says_of_made_up_designs() {
    let request = json!({"outer_diameters": [6, 13], "bores": [4, 7.5], "materials": ["tough resin"]});
    for made_up in designs(5, 2 * KINDS.len()) {
        table(&made_up.text, &request).iter().for_each(|row| held(&made_up.text, row));
    }
}

/// Where the bend radius is left out it would follow the diameter, and the way with it.
#[test]
fn a_text_that_leaves_much_out_keeps_its_way() {
    let mut text = elbow();
    text["runs"][0].as_object_mut().unwrap().remove("bend_radius");
    let rows = table(&text.to_string(), &json!({"outer_diameters": [12, 14], "materials": ["ABS"]}));
    for row in &rows {
        held(&text.to_string(), row);
        let adopted: Value =
            serde_json::from_str(&engine::apply(&text.to_string(), &row["patch"].to_string()).unwrap()).unwrap();
        assert_eq!(adopted["runs"][0]["bend_radius"], json!(24));
        assert_eq!(adopted["process"]["material"]["name"], json!("ABS"));
        close(&adopted["runs"][0]["tube"]["outer_diameter"], row["outer_diameter"].as_f64(), "outer diameter");
    }
}

#[test]
fn what_cannot_be_a_tube_says_why() {
    let rows = table(&elbow().to_string(), &json!({"bores": [8, 12, 13, -1]}));
    let feasible: Vec<_> = rows.iter().map(|row| row["why"][0].as_str().map(str::to_owned)).collect();
    assert!(feasible[0].as_ref().is_none_or(|why| !why.contains("bore")), "{feasible:?}");
    for (row, why) in rows.iter().zip(&feasible).skip(1) {
        assert_eq!((&row["feasible"], &row["cost"]), (&json!(false), &Value::Null));
        assert!(why.as_ref().is_some_and(|why| why.contains("ore")), "{row}");
    }
}

/// 100 mL of a material that costs 160 a litre cost 16: the price is of the printed volume.
#[test]
fn the_cost_is_the_price_of_the_material_s_volume() {
    let rows = table(&elbow().to_string(), &json!({"materials": ["high-temperature resin"]}));
    close(&rows[0]["cost"], rows[0]["material_cm3"].as_f64().map(|volume| volume / 1e3 * 160.0), "cost");
}

#[test]
fn one_run_alone_can_be_varied() {
    let presets: Value = serde_json::from_str(&engine::presets()).unwrap();
    let text = presets["demos"][1]["design"].to_string();
    let rows = table(&text, &json!({"run": "block to radiator", "bores": [8]}));
    assert_eq!(rows[0]["patch"], json!([{"op": "add", "path": "/runs/1/tube/bore", "value": 8.0}]));
    held(&text, &rows[0]);
}

#[test]
fn requests_that_cannot_be_met() {
    let text = elbow().to_string();
    for (request, path, words) in [
        (json!([]), "", "JSON object"),
        (json!({"bore": [1]}), "/bore", "not known"),
        (json!({"bores": 8}), "/bores", "numbers in mm"),
        (json!({"bores": [8, "9"]}), "/bores/1", "numbers in mm"),
        (json!({"materials": ["unobtainium"]}), "/materials/0", "“tough resin”"),
        (json!({"materials": [1]}), "/materials/0", "in quotes"),
        (json!({"run": "no such"}), "/run", "“r”"),
        (json!({"run": 1}), "/run", "by its name"),
        (json!({"bores": (0..1001).collect::<Vec<_>>()}), "", "at most 1000"),
    ] {
        let refusal = engine::variants(&text, &request.to_string()).expect_err("refused");
        assert_eq!(refusal.path, path, "{refusal}");
        assert!(refusal.message.contains(words), "{refusal}");
    }
}
