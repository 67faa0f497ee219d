//! Cuts and joints in the document: what is read, written and refused.

use serde_json::{Value, json};
use tubewright_core::design::problems;
use tubewright_core::engine;

/// A straight tube of 200 mm and what it says of cuts and of the joint.
fn with(cuts: Value, joint: Value) -> String {
    json!({"format": "tubewright-design", "version": 1,
        "fittings": [{"name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [1, 0, 0], "fitting": "F"},
                  {"name": "b", "at": [216, 0, 0], "facing": [-1, 0, 0], "fitting": "F"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "cuts": cuts}],
        "process": {"joint": joint}})
    .to_string()
}

fn normal(text: &str) -> Value {
    serde_json::from_str(&engine::normalise(text).unwrap()).unwrap()
}

#[track_caller]
fn refused(cuts: Value, joint: Value, path: &str, words: &[&str]) {
    let found = problems(&with(cuts, joint));
    let Some(refusal) = found.iter().find(|refusal| refusal.path == path) else { panic!("{path}: {found:?}") };
    for word in words {
        assert!(refusal.message.contains(word), "{word}: {}", refusal.message);
    }
}

#[test]
fn a_design_without_cuts_is_in_one_piece_and_has_the_usual_joint() {
    let mut text: Value = serde_json::from_str(&with(json!([]), json!({}))).unwrap();
    text["runs"][0].as_object_mut().unwrap().remove("cuts");
    text["process"].as_object_mut().unwrap().remove("joint");
    let normal = normal(&text.to_string());
    assert_eq!(normal["runs"][0]["cuts"], json!([]));
    let joint = json!({"length": 8, "clearance": 0.1, "wall": 1.5, "key_depth": 0.5, "bond_mpa": 5});
    assert_eq!(normal["process"]["joint"], joint);
}

#[test]
fn cuts_are_kept_as_they_were_stated() {
    let cuts = json!([{"at": 80, "stance": null}, {"at": 130.5, "stance": {"up": [0, 1, 0], "turn_deg": 30}}]);
    assert_eq!(normal(&with(cuts.clone(), json!({})))["runs"][0]["cuts"], cuts);
    assert_eq!(normal(&with(json!([{"at": 80}]), json!({})))["runs"][0]["cuts"], json!([{"at": 80, "stance": null}]));
}

#[test]
fn what_cannot_be_a_cut_is_refused_in_its_place() {
    let at = |places: &[Value]| Value::from(places.iter().map(|at| json!({"at": at})).collect::<Vec<_>>());
    let of = |cuts, path, words: &[&str]| refused(cuts, json!({}), path, words);
    of(at(&[json!("far")]), "/runs/0/cuts/0/at", &["no number", "150"]);
    of(at(&[json!(0)]), "/runs/0/cuts/0/at", &["out of range", "above 0"]);
    of(at(&[json!(-3)]), "/runs/0/cuts/0/at", &["out of range"]);
    of(at(&[json!(90), json!(80)]), "/runs/0/cuts/1/at", &["80 mm", "90 mm", "in order"]);
    of(at(&[json!(90), json!(90)]), "/runs/0/cuts/1/at", &["in order"]);
    of(json!([{}]), "/runs/0/cuts/0/at", &["Cut at is missing"]);
    of(json!([{"at": 90, "where": 3}]), "/runs/0/cuts/0/where", &["where"]);
    of(json!([{"at": 90, "stance": {"up": [0, 0, 0]}}]), "/runs/0/cuts/0/stance/up", &["points nowhere"]);
    of(json!({"at": 90}), "/runs/0/cuts", &["list"]);
    of(at(&(1..=21).map(|place| json!(place)).collect::<Vec<_>>()), "/runs/0/cuts", &["21", "20"]);
}

#[test]
fn a_joint_out_of_range_is_refused_with_what_would_work() {
    for (key, bad) in
        [("length", 1.0), ("clearance", 0.0), ("wall", 0.0), ("key_depth", -0.1), ("key_depth", 6.0), ("bond_mpa", 0.0)]
    {
        refused(json!([]), json!({ key: bad }), &format!("/process/joint/{key}"), &["out of range", "Give a number"]);
    }
    refused(json!([]), json!({"depth": 1}), "/process/joint/depth", &["depth"]);
}

#[test]
fn a_cut_run_turned_round_is_cut_at_the_same_joints() {
    let stance = json!({"up": [0, 1, 0], "turn_deg": 30});
    let text = with(json!([{"at": 80}, {"at": 130, "stance": stance}]), json!({}));
    let request = json!({"edit": "reverse", "run": "r"}).to_string();
    let turned = engine::edit(&text, &request).unwrap();
    // The run is 200 mm long: a joint from 72 to 80 is one from 120 to 128 from its other end.
    let run = &serde_json::from_str::<Value>(&turned).unwrap()["runs"][0];
    assert_eq!(run["stance"], stance);
    assert_eq!(run["cuts"], json!([{"at": 78, "stance": null}, {"at": 128, "stance": null}]));
    assert_eq!(engine::edit(&turned, &request).unwrap(), engine::normalise(&text).unwrap());
}

#[test]
fn a_mirrored_run_is_cut_at_the_same_places_and_stands_as_is_best() {
    let text = with(json!([{"at": 80, "stance": {"up": [0, 1, 0]}}]), json!({}));
    let request = json!({"edit": "mirror", "run": "r", "across": "y", "at": 50}).to_string();
    let twin = &serde_json::from_str::<Value>(&engine::edit(&text, &request).unwrap()).unwrap()["runs"][1];
    assert_eq!(twin["cuts"], json!([{"at": 80, "stance": null}]));
}
