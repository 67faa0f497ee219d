//! Every call of the engine on one text: each must end in a value or a refusal, and the values must agree. Shared by
//! the fuzz targets, the replay of the corpus and the spoiled designs of the property tests.

use serde_json::{Value, json};
use tubewright_core::design::Refusal;
use tubewright_core::engine;
use tubewright_core::mesh::{signed_volume, solidity};

/// Coarse, so that the mesh of a long tube is quickly made.
const DEVIATION: f64 = 0.3;
/// Runs of a design that are meshed.
const MOST_MESHED: usize = 2;
/// Tube of a run that is meshed, mm.
const MOST_LENGTH: f64 = 5_000.0;
/// Tube of a run that is stood on the plate, mm: the search takes a quarter of a second where tests are built.
const MOST_STOOD: f64 = 150.0;
/// Of so many texts one is stood, by its length.
const ONE_IN: usize = 8;

/// Makes every call on `text`.
///
/// # Panics
/// Where a call panics, or its answer contradicts itself or another's: that is what is looked for.
pub fn every_call(text: &str) {
    document_calls(text);
    let Some(report) = told(engine::report(text)) else {
        assert!(told(engine::scene(text)).is_none(), "a scene of what has no report");
        return;
    };
    let report: Value = serde_json::from_str(&report).expect("the report is JSON");
    let scene = told(engine::scene(text)).expect("what has a report has a scene");
    serde_json::from_str::<Value>(&scene).expect("the scene is JSON");
    let runs = report["runs"].as_array().expect("the report lists runs");
    for run in runs.iter().take(MOST_MESHED) {
        one_run(text, run);
    }
    if runs.iter().all(|run| run["length_mm"].as_f64().unwrap_or(0.0) < MOST_LENGTH / runs.len() as f64) {
        let stand = text.len().is_multiple_of(ONE_IN)
            && runs.iter().all(|run| run["length_mm"].as_f64().unwrap_or(0.0) <= MOST_STOOD);
        if stand {
            let plates = told(engine::plates(text));
            let made = runs.iter().any(|run| run["made"] == true);
            assert_eq!(plates.is_some(), made, "plates of the runs that are made");
        }
        for kind in ["3mf", "all", "pack"].into_iter().filter(|kind| *kind != "pack" || stand) {
            let request = json!({ "kind": kind, "deviation": DEVIATION }).to_string();
            let bytes = told(engine::export_file(text, &request));
            let made = runs.iter().any(|run| run["made"] == true);
            assert_eq!(bytes.is_some(), made, "a {kind} of the runs that are made");
            assert!(bytes.is_none_or(|bytes| bytes.starts_with(b"PK")), "a {kind} is an archive");
        }
    }
    for finding in report["findings"].as_array().expect("the report lists findings").iter().take(4) {
        if !finding["fix"].is_null() {
            let mended = told(engine::apply(text, &finding["fix"].to_string())).expect("a fix leaves a design");
            told(engine::report(&mended)).expect("a fix leaves a design of bounded size");
        }
    }
    let design = json!({ "kind": "design" }).to_string();
    let design = told(engine::export_file(text, &design)).expect("a design can be kept");
    assert_eq!(String::from_utf8(design).ok(), engine::normalise(text).ok(), "the kept design is the canonical one");
}

/// The calls that read the text as a document and no more.
pub fn document_calls(text: &str) {
    let problems: Value = serde_json::from_str(&engine::problems(text)).expect("the problems are JSON");
    let problems = problems.as_array().expect("the problems are a list").clone();
    match engine::normalise(text) {
        Ok(normal) => {
            assert!(problems.is_empty(), "a design without problems");
            assert_eq!(engine::normalise(&normal).as_ref(), Ok(&normal), "canonical text is canonical");
        }
        Err(refusal) => {
            let first = problems.first();
            // What is a design but too long when written out has no problem to list.
            assert!(first.is_none_or(|first| first["path"] == refusal.path && first["message"] == refusal.message));
            told(Err::<(), _>(refusal));
        }
    }
    told(engine::apply(text, text));
    told(engine::apply(text, r#"[{"op":"test","path":"/version","value":1}]"#));
    for request in [text, "{}", r#"{"kind":"stl"}"#, r#"{"kind":"design","run":3}"#] {
        told(engine::file_name(text, request));
    }
}

fn one_run(text: &str, run: &Value) {
    let name = run["name"].as_str().expect("a run has a name");
    let Some(length) = run["length_mm"].as_f64() else {
        assert!(run["made"] == false && told(engine::tube_mesh(text, name, DEVIATION)).is_none(), "not made, no mesh");
        return;
    };
    if length > MOST_LENGTH {
        return;
    }
    let mesh = told(engine::tube_mesh(text, name, DEVIATION));
    let request = json!({ "kind": "stl", "run": name, "deviation": DEVIATION }).to_string();
    let stl = told(engine::export_file(text, &request));
    assert_eq!(mesh.is_some(), stl.is_some(), "a mesh and a file, or neither");
    // A run may be too far from the datum for 32-bit coordinates even at this deviation.
    let (Some(mesh), Some(stl)) = (mesh, stl) else { return };
    assert_eq!(stl.len(), 84 + 50 * mesh.indices.len() / 3);
    assert_eq!(solidity(&mesh), [], "a made run is a solid");
    let (volume, exact) = (signed_volume(&mesh), run["material_mm3"].as_f64().expect("a made run has a volume"));
    assert!((volume / exact - 1.0).abs() < 0.0005, "{volume} mm3 for {exact}");
    for kind in ["bend-table", "points", "drawing"] {
        let request = json!({ "kind": kind, "run": name }).to_string();
        let bytes = told(engine::export_file(text, &request)).expect("a made run has its papers");
        let paper = String::from_utf8(bytes).expect("papers are text");
        for none in ["\"NaN\"", "\"inf\"", "\"-inf\"", ",NaN", ",inf", ",-inf"] {
            assert!(!paper.contains(none), "a {kind} with {none} in it");
        }
    }
    stands(text, name, length);
    let file = told(engine::file_name(text, &request)).expect("what has a file has a name");
    assert!(file.ends_with(".stl") && !file.contains(['/', '\\', '\0']), "{file}");
}

/// A made run has stances, whose figures are numbers, and a file of it is made or refused in words.
fn stands(text: &str, name: &str, length: f64) {
    if length > MOST_STOOD || !text.len().is_multiple_of(ONE_IN) {
        return;
    }
    let stances = told(engine::stances(text, name)).expect("a made run can stand");
    let stances: Value = serde_json::from_str(&stances).expect("the stances are JSON");
    let list = stances["stances"].as_array().expect("the stances are a list");
    assert!((1..=5).contains(&list.len()), "one to five stances");
    for stance in list {
        let numbers = ["turn_deg", "slack_mm", "height_mm", "support_mm2", "cups_mm3", "pools_mm3", "flat_mm"];
        assert!(numbers.iter().all(|key| stance[key].is_number()), "a stance without a figure: {stance}");
        assert!(stance["cost"]["total"].as_f64().is_some_and(|cost| cost >= 0.0), "what it costs: {stance}");
    }
    // The best as it is told, so that it is not searched for again.
    let stance = json!({ "up": list[0]["up"], "turn_deg": list[0]["turn_deg"] });
    let request = json!({ "kind": "stl", "run": name, "deviation": DEVIATION, "stance": stance }).to_string();
    told(engine::export_file(text, &request));
}

/// The value; nothing where it was refused, once the refusal is seen to have words and a place.
fn told<T>(answer: Result<T, Refusal>) -> Option<T> {
    answer
        .map_err(|refusal| {
            assert!(refusal.path.is_empty() || refusal.path.starts_with('/'), "no JSON Pointer: {refusal:?}");
            assert!(!refusal.message.trim().is_empty(), "no words: {refusal:?}");
            assert!(refusal.message.len() < 2_000, "too many words: {refusal:?}");
        })
        .ok()
}
