//! Every number of a report and of a table of variants can be asked where it comes from.

use std::collections::BTreeSet;

use serde_json::{Value, json};
use tubewright_core::engine;
use tubewright_core::origin::origins;

/// Numbers that are places, or stand in tables and drawings that say their own convention.
const PLACES: [&str; 6] = ["/bounds_mm/", "/bend_table/", "/points_mm/", "/findings/*/", "/patch/", "/at_mm/"];

fn numbers(value: &Value, path: &str, found: &mut BTreeSet<String>) {
    match value {
        Value::Number(_) => {
            found.insert(path.to_owned());
        }
        Value::Array(items) => items.iter().for_each(|item| numbers(item, &format!("{path}/*"), found)),
        Value::Object(keys) => keys.iter().for_each(|(key, item)| numbers(item, &format!("{path}/{key}"), found)),
        _ => {}
    }
}

fn demo() -> String {
    let presets: Value = serde_json::from_str(&engine::presets()).unwrap();
    let mut design = presets["demos"][1]["design"].clone();
    design["loop"]["leak_test"] = json!({"start_kpa": 40, "end_kpa": 39});
    let read = |size: f64| json!([0.02, 0.0, 0.01].map(|more| json!({"nominal": size, "measured": size + more})));
    let process = &mut design["process"];
    let name = |of: &Value| of.get("name").unwrap_or(of).clone();
    process["fit"] = json!({"material": name(&process["material"]), "printer": name(&process["printer"]),
        "outer": read(12.0), "bore": read(8.0), "length": [{"nominal": 60, "measured": 60}]});
    process["service"] = json!({"price_per_cm3": 0.5, "setup": 4, "minimum": 25});
    design["fittings"][0]["bore"] = json!(9);
    design["fittings"][0]["seal"]["gland_width"] = json!(2.7);
    // The first run in two pieces, cut where a joint has room.
    let cut = |at: u32| {
        let mut cut = design.clone();
        cut["runs"][0]["cuts"] = json!([{ "at": at }]);
        cut.to_string()
    };
    let pieces = |text: &String| {
        serde_json::from_str::<Value>(&engine::report(text).unwrap()).unwrap()["runs"][0]["pieces"].clone()
    };
    let mut tried = (20..300).step_by(4).map(cut);
    tried
        .find(|text| pieces(text).as_array().is_some_and(|pieces| pieces.len() == 2))
        .expect("a joint has room somewhere")
}

/// Whether a row says it: its own, or that of the list or range that it stands in.
fn told(path: &str, rows: &BTreeSet<&str>) -> bool {
    let parents = [
        "/nominal",
        "/low",
        "/high",
        "/likely/*",
        "/worst/*",
        "/*",
        "/*/depth_mm",
        "/*/volume_mm3",
        "/*/flow_l_per_h",
        "/*/loss_kpa/nominal",
        "/*/loss_kpa/low",
        "/*/loss_kpa/high",
    ];
    rows.contains(path) || parents.iter().any(|end| path.strip_suffix(end).is_some_and(|whole| rows.contains(whole)))
}

#[test]
fn every_number_says_where_it_comes_from() {
    let rows: BTreeSet<&str> = origins().map(|origin| origin.path).collect();
    let report: Value = serde_json::from_str(&engine::report(&demo()).unwrap()).unwrap();
    let mut found = BTreeSet::new();
    numbers(&report, "", &mut found);
    let request = json!({"bores": [8], "outer_diameters": [14]}).to_string();
    let table: Value = serde_json::from_str(&engine::variants(&demo(), &request).unwrap()).unwrap();
    numbers(&table["rows"], "/variants", &mut found);
    // Of a stance what is money, and what that comes of; what it is judged by is said beside it.
    let answer: Value = serde_json::from_str(&engine::stances(&demo(), "pump to block").unwrap()).unwrap();
    for key in ["support_mm3", "material_cost"] {
        numbers(&answer["stances"][0][key], &format!("/runs/*/stances/*/{key}"), &mut found);
    }
    found.retain(|path| {
        !PLACES.iter().any(|place| format!("{path}/").contains(place)) || path.contains("/variants/*/findings")
    });
    let unsaid: Vec<&String> = found.iter().filter(|path| !told(path, &rows)).collect();
    assert!(unsaid.is_empty(), "{unsaid:#?}");
    // And no row speaks of what is not there.
    let all = found.iter().map(String::as_str).collect::<Vec<_>>();
    let lists = ["/variants/*/fits", "/runs/*/service/high_points", "/runs/*/service/low_points"];
    let idle: Vec<&&str> =
        rows.iter().filter(|row| !lists.contains(row) && !all.iter().any(|path| path.starts_with(**row))).collect();
    assert!(idle.is_empty(), "{idle:#?}");
}

#[test]
fn every_row_is_whole_and_its_inputs_are_there() {
    let vocabulary: Value = serde_json::from_str(&engine::vocabulary()).unwrap();
    let rows: BTreeSet<&str> = origins().map(|origin| origin.path).collect();
    assert_eq!(rows.len(), origins().count(), "a place twice");
    for origin in origins() {
        for text in [origin.label, origin.formula, origin.source, origin.range] {
            assert!(!text.is_empty() && !text.contains("  "), "{origin:?}");
        }
        assert!(origin.range.ends_with('.'), "{origin:?}");
        for input in origin.inputs {
            let known = rows.contains(input) || vocabulary["quantities"].get(input).is_some();
            assert!(known, "{} names {input}", origin.path);
        }
    }
    assert_eq!(vocabulary["results"].as_array().unwrap().len(), rows.len());
}
