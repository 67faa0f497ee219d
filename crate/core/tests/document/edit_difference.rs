//! What sets two designs apart: written down beforehand for designs made different on purpose.

use crate::edit_support::{canonical, rich};
use serde_json::{Value, json};
use tubewright_core::engine;

fn difference(before: &Value, after: &Value) -> Value {
    let told =
        engine::difference(&before.to_string(), &after.to_string()).unwrap_or_else(|refusal| panic!("{refusal}"));
    serde_json::from_str(&told).unwrap()
}

fn near(value: &Value, expected: f64) {
    assert!(value.as_f64().is_some_and(|value| (value - expected).abs() < 1e-9), "{value}, not {expected}");
}

#[test]
fn a_design_is_like_itself_however_it_is_written() {
    let design = rich();
    for (a, b) in [(&design, &canonical(&design)), (&canonical(&design), &design)] {
        let told = difference(a, b);
        assert_eq!(told["alike"], true);
        for list in ["settings", "fittings", "ports", "runs", "keep_outs"] {
            assert_eq!(told[list], json!([]), "{list}");
        }
        near(&told["totals"]["length_mm"]["change"], 0.0);
    }
}

#[test]
fn a_port_measured_again_is_told_and_what_is_tied_to_it_follows() {
    let before = rich();
    let mut after = before.clone();
    after["ports"][0]["at"] = json!([33, 16, 60]);
    after["ports"][3]["facing"] = json!([-1, 0, 1]);
    after["ports"][3]["measured_to"] = json!(1);
    let told = difference(&before, &after);
    assert_eq!(told["alike"], false);
    let ports = told["ports"].as_array().unwrap();
    assert_eq!(ports.len(), 2);
    assert_eq!([&ports[0]["name"], &ports[0]["fate"]], ["pump", "changed"]);
    assert_eq!(ports[0]["by_mm"], json!([3.0, -4.0, 0.0]));
    near(&ports[0]["moved_mm"], 5.0);
    near(&ports[0]["turned_deg"], 0.0);
    near(&ports[1]["turned_deg"], 45.0);
    near(&ports[1]["moved_mm"], 0.0);
    assert_eq!(ports[1]["changes"], json!([{ "key": "/ports/3/measured_to", "before": 0.5, "after": 1 }]));

    // The corner is tied in x and y, the coil in x; both are stated as they were.
    let run = &told["runs"][0];
    assert_eq!([&run["name"], &run["fate"]], ["pump to block", "changed"]);
    assert_eq!(run["changes"], json!([]));
    let stations = run["stations"].as_array().unwrap();
    assert_eq!(stations.len(), 2);
    assert_eq!(stations[0]["by_mm"], json!([3.0, -4.0, 0.0]));
    assert_eq!(stations[1]["by_mm"], json!([3.0, 0.0, 0.0]));
    assert!(stations.iter().all(|station| station["followed"] == true && station["fate"] == "changed"));
    assert_eq!([&stations[0]["kind"], &stations[1]["kind"]], ["corner", "coil"]);
    // Lengths are the report's.
    let report: Value = serde_json::from_str(&engine::report(&after.to_string()).unwrap()).unwrap();
    assert_eq!(run["length_mm"]["after"], report["runs"][0]["length_mm"]);
    assert_eq!(told["totals"]["mass_g"]["after"], report["totals"]["mass_g"]);
    assert!(run["length_mm"]["change"].as_f64().unwrap().abs() > 0.01);
}

#[test]
fn other_names_for_the_same_things_are_no_more_than_that() {
    let before = rich();
    let renamed: String = before
        .to_string()
        .replace("\"pump\"", "\"outlet\"")
        .replace("\"C12\"", "\"straight\"")
        .replace("pump to block", "first tube");
    let after: Value = serde_json::from_str(&renamed).unwrap();
    let told = difference(&before, &after);
    let named = |list: &str| -> Vec<[Value; 3]> {
        let all = told[list].as_array().unwrap();
        all.iter().map(|thing| ["was", "name", "fate"].map(|key| thing[key].clone())).collect()
    };
    assert_eq!(named("ports"), [["pump", "outlet", "renamed"].map(Value::from)]);
    assert_eq!(named("fittings"), [["C12", "straight", "renamed"].map(Value::from)]);
    assert_eq!(named("runs"), [["pump to block", "first tube", "renamed"].map(Value::from)]);
    assert_eq!(told["runs"][0]["stations"], json!([]), "a tie under the new name is the same tie");
}

#[test]
fn a_port_is_known_under_another_name_as_far_as_it_was_measured() {
    let before = rich();
    let at = |x: f64| {
        let text = before.to_string().replace("\"pump\"", "\"outlet\"");
        let mut after: Value = serde_json::from_str(&text).unwrap();
        after["ports"][0]["at"] = json!([x, 20, 60]);
        difference(&before, &after)
    };
    // Both are measured to half a millimetre.
    let told = at(30.9);
    assert_eq!([&told["ports"][0]["was"], &told["ports"][0]["fate"]], ["pump", "changed"]);
    near(&told["ports"][0]["moved_mm"], 0.9);
    let told = at(31.1);
    let fates: Vec<&Value> = told["ports"].as_array().unwrap().iter().map(|port| &port["fate"]).collect();
    assert_eq!(fates, ["added", "removed"]);
    // Then a run from it is a run from elsewhere.
    assert_eq!(told["runs"][0]["changes"][0], json!({ "key": "/runs/0/from", "before": "pump", "after": "outlet" }));
}

#[test]
fn values_added_and_removed_things_are_told_by_their_places() {
    let before = rich();
    let mut after = before.clone();
    after["clearance"] = json!(2);
    after["name"] = json!("other");
    after["fittings"][0]["height"] = json!(17.5);
    after["keep_outs"] = json!([{ "name": "bay", "box": { "min": [900, 0, 0], "max": [950, 60, 40] } }]);
    after["runs"][1]["bend_radius"] = json!(18);
    after["runs"][1]["tube"]["bore"] = json!(9);
    after["runs"][0]["dress"] = json!(null);
    let told = difference(&before, &after);
    let settings: Vec<&Value> = told["settings"].as_array().unwrap().iter().map(|change| &change["key"]).collect();
    assert_eq!(settings, ["/name", "/clearance"]);
    assert_eq!(told["fittings"][0]["changes"], json!([{ "key": "/fittings/0/height", "before": 18, "after": 17.5 }]));
    assert_eq!([&told["keep_outs"][0]["name"], &told["keep_outs"][0]["fate"]], ["bay", "added"]);
    let runs = told["runs"].as_array().unwrap();
    assert!(runs[0]["changes"].as_array().unwrap().iter().any(|change| change["key"] == "/runs/0/dress/lobes"
        && change["before"] == 5
        && change["after"] == Value::Null));
    let keys: Vec<&Value> = runs[1]["changes"].as_array().unwrap().iter().map(|change| &change["key"]).collect();
    assert_eq!(keys, ["/runs/1/bend_radius", "/runs/1/tube/bore"]);
    // The other way round it is taken out.
    let back = difference(&after, &before);
    assert_eq!([&back["keep_outs"][0]["name"], &back["keep_outs"][0]["fate"]], ["bay", "removed"]);
    near(&back["totals"]["length_mm"]["change"], -told["totals"]["length_mm"]["change"].as_f64().unwrap());
}

#[test]
fn a_corner_put_between_is_one_corner_added() {
    let before = rich();
    let mut after = before.clone();
    after["runs"][1]["route"].as_array_mut().unwrap().insert(1, json!({ "corner": [30, 430, 160] }));
    after["runs"][1]["route"][2] = json!({ "corner": [30, 460, 130], "bend_radius": 9 });
    let told = difference(&before, &after);
    let stations = told["runs"][0]["stations"].as_array().unwrap();
    assert_eq!(told["runs"][0]["name"], "spare");
    assert_eq!(stations.len(), 2, "{stations:#?}");
    assert_eq!([&stations[0]["fate"], &stations[0]["station"]], [&json!("added"), &json!(1)]);
    assert_eq!([&stations[1]["was"], &stations[1]["station"]], [1, 2]);
    assert_eq!(stations[1]["changes"], json!([{ "key": "/runs/1/route/2/bend_radius", "before": null, "after": 9 }]));
}

#[test]
fn a_run_that_is_made_in_one_design_only_has_one_length() {
    let before = rich();
    let mut after = before.clone();
    after["runs"][1]["bend_radius"] = json!(4);
    let told = difference(&before, &after);
    let length = &told["runs"][0]["length_mm"];
    assert!(length["before"].as_f64().is_some() && length["after"].is_null() && length["change"].is_null(), "{length}");
}

#[test]
fn a_text_that_is_no_design_is_refused_by_its_side() {
    let design = rich().to_string();
    let refusal = engine::difference("{", &design).expect_err("no design");
    assert!(refusal.message.starts_with("The design before:"), "{}", refusal.message);
    let refusal = engine::difference(&design, "[]").expect_err("no design");
    assert!(refusal.message.starts_with("The design after:"), "{}", refusal.message);
}
