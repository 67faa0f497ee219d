//! Changes as JSON Patch: what is done, what is refused, and that a patch cannot blow up. Expected results are those
//! of RFC 6902's own description of each operation.

use serde_json::{Value, json};
use tubewright_core::engine::{apply, normalise};

const DESIGN: &str = r#"{"format":"tubewright-design","version":1,"fittings":[{"name":"F12","tube_diameter":12}],
  "ports":[{"name":"a","at":[0,0,0],"facing":[0,0,1],"fitting":"F12"},{"name":"b","at":[90,0,90],"facing":[-1,0,0],"fitting":"F12"}],
  "runs":[{"name":"r","from":"a","to":"b","tube":{"outer_diameter":12,"bore":8},"route":[{"corner":[0,0,90]}]}]}"#;

fn applied(patch: Value) -> Value {
    match apply(DESIGN, &patch.to_string()) {
        Ok(text) => {
            assert_eq!(normalise(&text).as_deref(), Ok(text.as_str()), "the answer is canonical");
            serde_json::from_str(&text).unwrap()
        }
        Err(refusal) => panic!("{refusal}"),
    }
}

#[track_caller]
fn refused(text: &str, patch: &str, path: &str, words: &[&str]) {
    let refusal = apply(text, patch).expect_err("it is refused");
    assert_eq!(refusal.path, path, "{}", refusal.message);
    for word in words {
        assert!(refusal.message.contains(word), "{word:?} is not in: {}", refusal.message);
    }
}

#[test]
fn each_operation_does_what_the_standard_says() {
    let replaced = applied(json!([{"op": "replace", "path": "/runs/0/tube/bore", "value": 6}]));
    assert_eq!(replaced["runs"][0]["tube"]["bore"], 6);
    let added = applied(json!([{"op": "add", "path": "/runs/0/route/0/bend_radius", "value": 30},
        {"op": "add", "path": "/runs/0/route/-", "value": {"corner": [50, 0, 90]}}]));
    assert_eq!(added["runs"][0]["route"], json!([{"corner": [0, 0, 90], "bend_radius": 30}, {"corner": [50, 0, 90]}]));
    let removed = applied(json!([{"op": "remove", "path": "/runs/0/route/0"}]));
    assert_eq!(removed["runs"][0]["route"], json!([]));
    let moved = applied(json!([{"op": "move", "from": "/ports/1", "path": "/ports/0"}]));
    assert_eq!([&moved["ports"][0]["name"], &moved["ports"][1]["name"]], ["b", "a"]);
    let copied = applied(json!([{"op": "copy", "from": "/ports/0", "path": "/ports/-"},
        {"op": "replace", "path": "/ports/2/name", "value": "c"}]));
    assert_eq!(copied["ports"][2]["at"], copied["ports"][0]["at"]);
    let tested = applied(json!([{"op": "test", "path": "/runs/0/tube/bore", "value": 8.0},
        {"op": "replace", "path": "/runs/0/tube/bore", "value": 7.5}]));
    assert_eq!(tested["runs"][0]["tube"]["bore"], 7.5);
}

#[test]
fn a_patch_may_mend_what_is_refused() {
    let broken = DESIGN.replace("\"bore\":8", "\"bore\":\"\"");
    let mended = apply(&broken, r#"[{"op":"replace","path":"/runs/0/tube/bore","value":8}]"#).unwrap();
    assert_eq!(mended, normalise(DESIGN).unwrap());
}

#[test]
fn a_patch_that_does_not_fit_is_refused_at_its_place() {
    refused(DESIGN, "{}", "", &["no JSON Patch"]);
    refused(DESIGN, "", "", &["no JSON Patch"]);
    refused(DESIGN, r#"[{"op":"paint","path":"/name"}]"#, "", &["no JSON Patch"]);
    refused(DESIGN, r#"[{"op":"remove","path":"name"}]"#, "", &["no JSON Patch"]);
    refused(DESIGN, r#"[{"op":"remove","path":"/runs/5"}]"#, "/runs/5", &["Step 1", "no such place"]);
    refused(DESIGN, r#"[{"op":"replace","path":"/ports/-","value":1}]"#, "/ports/-", &["no such place"]);
    refused(DESIGN, r#"[{"op":"test","path":"/version","value":2}]"#, "/version", &["another value"]);
    refused(DESIGN, r#"[{"op":"copy","from":"/x","path":"/name"}]"#, "/name", &["takes from"]);
    refused(DESIGN, r#"[{"op":"move","from":"/runs","path":"/runs/0"}]"#, "/runs/0", &["into itself"]);
    refused(DESIGN, r#"[{"op":"replace","path":"/runs/0/to","value":"a"}]"#, "/runs/0/to", &["cannot end"]);
    refused(DESIGN, r#"[{"op":"remove","path":"/ports/0"}]"#, "/runs/0/from", &["no port named “a”"]);
    refused("", "[]", "", &["empty"]);
    refused("{", "[]", "", &["ends too early"]);
}

#[test]
fn a_patch_cannot_blow_up() {
    // Each step would double the design; forty of them would make a million million values.
    let doubling: Vec<Value> =
        (0..40).map(|step| json!({"op": "copy", "from": "", "path": format!("/x{step}")})).collect();
    let refusal = apply(DESIGN, &Value::from(doubling).to_string()).unwrap_err();
    assert!(refusal.message.contains("too large") && refusal.path.starts_with("/x1"), "{refusal}");
    // Copying the whole below its own deepest place doubles the depth; a value much deeper could not even be dropped.
    let nested = (0..60).fold(json!(0), |inner, _| json!({"d": inner}));
    let into = |depth: usize| json!({"op": "copy", "from": "", "path": "/d".repeat(depth)});
    let twice = json!([{"op": "add", "path": "/d", "value": nested}, into(60), into(100)]);
    let refusal = apply(DESIGN, &twice.to_string()).unwrap_err();
    assert!(refusal.message.contains("Step 3") && refusal.message.contains("too large"), "{refusal}");
    let long = format!("[{}]", vec![r#"{"op":"test","path":"/version","value":1}"#; 1_001].join(","));
    refused(DESIGN, &long, "", &["1001 steps"]);
    refused(DESIGN, &" ".repeat(2 * 1024 * 1024), "", &["too long"]);
}
