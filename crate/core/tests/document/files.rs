//! Files on request: each kind read back by a reader that had no part in writing it, names, and refused requests.

use std::io::Read;

use serde_json::{Value, json};
use tubewright_core::engine;

fn design() -> String {
    let run = |name: &str, from: &str, to: &str, radius: f64| json!({"name": name, "from": from, "to": to, "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": radius});
    let port =
        |name: &str, at: [f64; 3], facing: [f64; 3]| json!({"name": name, "at": at, "facing": facing, "fitting": "f"});
    let mut first = run("../pump: to/block", "a", "b", 24.0);
    first["route"] = json!([{"corner": [0, 0, 80]}]);
    json!({"format": "tubewright-design", "version": 1, "name": "Kittiwake",
        "fittings": [{"name": "f", "tube_diameter": 12}],
        "ports": [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [120.0, 0.0, 80.0], [-1.0, 0.0, 0.0]),
                  port("c", [0.0, 90.0, 0.0], [0.0, 0.0, 1.0]), port("d", [0.0, 90.0, 90.0], [0.0, 0.0, -1.0]),
                  port("e", [50.0, 90.0, 0.0], [0.0, 0.0, 1.0]), port("f", [50.0, 91.0, 40.0], [0.0, 0.0, 1.0])],
        "runs": [first, run("straight", "c", "d", 24.0), run("impossible", "e", "f", 4.0)]})
    .to_string()
}

fn file(request: Value) -> Vec<u8> {
    engine::export_file(&design(), &request.to_string()).unwrap_or_else(|refusal| panic!("{refusal}"))
}

#[track_caller]
fn refused(request: &str, path: &str, words: &[&str]) {
    for refusal in
        [engine::export_file(&design(), request), engine::file_name(&design(), request).map(String::into_bytes)]
            .into_iter()
            .map(|answer| answer.expect_err("it is refused"))
    {
        assert_eq!(refusal.path, path, "{}", refusal.message);
        for word in words {
            assert!(refusal.message.contains(word), "{word:?} is not in: {}", refusal.message);
        }
    }
}

#[test]
fn an_stl_is_the_runs_mesh() {
    let bytes = file(json!({"kind": "stl", "run": "../pump: to/block", "deviation": 0.05}));
    let mesh = engine::tube_mesh(&design(), "../pump: to/block", 0.05).unwrap();
    let read = stl_io::read_stl(&mut std::io::Cursor::new(&bytes)).unwrap();
    assert_eq!(read.faces.len(), mesh.indices.len() / 3);
    assert_eq!(bytes.len(), 84 + 50 * read.faces.len());
    // A finer deviation takes more triangles, and 0.01 is what is meant where none is asked for.
    let usual = file(json!({"kind": "stl", "run": "../pump: to/block"}));
    assert_eq!(usual, file(json!({"kind": "stl", "run": "../pump: to/block", "deviation": 0.01})));
    assert!(usual.len() > bytes.len());
}

#[test]
fn a_3mf_holds_one_run_or_all_that_are_made() {
    let model = |request: Value| {
        let mut archive = zip::ZipArchive::new(std::io::Cursor::new(file(request))).unwrap();
        let mut text = String::new();
        archive.by_name("3D/3dmodel.model").unwrap().read_to_string(&mut text).unwrap();
        text
    };
    let one = model(json!({"kind": "3mf", "run": "straight", "deviation": 0.1}));
    assert_eq!(one.matches("<object ").count(), 1);
    assert!(one.contains("straight") && !one.contains("pump"));
    let all = model(json!({"kind": "3mf", "deviation": 0.1}));
    assert_eq!(all.matches("<object ").count(), 2);
    assert!(all.contains("straight") && all.contains("to/block") && !all.contains("impossible"));
}

#[test]
fn the_design_is_its_canonical_text() {
    let bytes = file(json!({"kind": "design"}));
    assert_eq!(String::from_utf8(bytes).unwrap(), engine::normalise(&design()).unwrap());
}

#[test]
fn everything_is_one_archive() {
    let archive = zip::ZipArchive::new(std::io::Cursor::new(file(json!({"kind": "all", "deviation": 0.1})))).unwrap();
    let mut names: Vec<String> = archive.file_names().map(|name| name.unwrap().into_owned()).collect();
    names.sort();
    assert_eq!(names.len(), 14, "{names:?}");
    for ending in [
        "straight.stl",
        "straight.3mf",
        "straight bends.csv",
        "straight points.csv",
        "straight.svg",
        "Kittiwake.json",
        "Kittiwake loss.svg",
    ] {
        assert!(names.iter().any(|name| name.ends_with(ending)), "{ending} is not in {names:?}");
    }
    assert!(names.iter().all(|name| !name.contains(['/', '\\', ':'])), "{names:?}");
}

#[test]
fn names_are_safe_and_tell_the_kind() {
    let name = |request: Value| engine::file_name(&design(), &request.to_string()).unwrap();
    assert_eq!(name(json!({"kind": "stl", "run": "straight"})), "straight.stl");
    assert_eq!(name(json!({"kind": "bend-table", "run": "straight", "flip": true})), "straight bends.csv");
    assert_eq!(name(json!({"kind": "points", "run": "straight"})), "straight points.csv");
    assert_eq!(name(json!({"kind": "drawing", "run": "straight"})), "straight.svg");
    assert_eq!(name(json!({"kind": "3mf", "run": "straight"})), "straight.3mf");
    assert_eq!(name(json!({"kind": "3mf"})), "Kittiwake.3mf");
    assert_eq!(name(json!({"kind": "design"})), "Kittiwake.json");
    assert_eq!(name(json!({"kind": "all"})), "Kittiwake.zip");
    let odd = name(json!({"kind": "stl", "run": "../pump: to/block"}));
    assert!(!odd.contains(['/', '\\', ':']) && !odd.starts_with('.') && odd.ends_with(".stl"), "{odd}");
    let nameless = design().replace("\"name\":\"Kittiwake\"", "\"name\":\" \"");
    assert_eq!(engine::file_name(&nameless, r#"{"kind":"all"}"#).unwrap(), "tubes.zip");
}

#[test]
fn requests_that_cannot_be_met() {
    refused("", "", &["JSON object", "\"kind\""]);
    refused("[]", "", &["JSON object"]);
    refused(
        "{}",
        "/kind",
        &["\"stl\", \"3mf\", \"bend-table\", \"points\", \"drawing\"", "\"loss-plot\"", "\"design\", \"all\""],
    );
    refused(r#"{"kind":"obj"}"#, "/kind", &["\"stl\""]);
    refused(r#"{"kind":7}"#, "/kind", &["\"stl\""]);
    refused(r#"{"kind":"stl"}"#, "/run", &["one run"]);
    refused(r#"{"kind":"stl","run":"nope"}"#, "/run", &["no run named “nope”", "“straight”"]);
    refused(r#"{"kind":"stl","run":3}"#, "/run", &["in quotes"]);
    refused(r#"{"kind":"all","run":"straight"}"#, "/run", &["whole design"]);
    refused(r#"{"kind":"stl","run":"straight","colour":1}"#, "/colour", &["“colour”", "deviation"]);
    for deviation in ["0", "0.0009", "1.1", "-0.01", "1e308", "\"fine\"", "null"] {
        let request = format!(r#"{{"kind":"stl","run":"straight","deviation":{deviation}}}"#);
        refused(&request, "/deviation", &["from 0.001 to 1 mm"]);
    }
    for kind in ["bend-table", "points", "drawing"] {
        refused(&format!(r#"{{"kind":"{kind}"}}"#), "/run", &["one run", kind]);
        let refusal =
            engine::export_file(&design(), &format!(r#"{{"kind":"{kind}","run":"impossible"}}"#)).unwrap_err();
        assert!(refusal.path.starts_with("/runs/2"), "{refusal}");
    }
    refused(r#"{"kind":"bend-table","run":"straight","flip":1}"#, "/flip", &["true or false"]);
    refused(r#"{"kind":"bend-table","run":"straight","from":"pump"}"#, "/from", &["\"start\"", "\"end\""]);
    refused(r#"{"kind":"bend-table","run":"straight","from":null}"#, "/from", &["\"start\"", "\"end\""]);
    refused(r#"{"kind":"stl","run":"straight","flip":true}"#, "/flip", &["bend table"]);
    refused(r#"{"kind":"drawing","run":"straight","from":"end"}"#, "/from", &["bend table"]);
    // What the design itself keeps from being made is told at its place in the design.
    let refusal = engine::export_file(&design(), r#"{"kind":"stl","run":"impossible"}"#).unwrap_err();
    assert!(refusal.path.starts_with("/runs/2"), "{refusal}");
    let none = json!({"format": "tubewright-design", "version": 1}).to_string();
    for kind in ["3mf", "all"] {
        let refusal = engine::export_file(&none, &json!({"kind": kind}).to_string()).unwrap_err();
        assert!(refusal.message.contains("No run"), "{refusal}");
    }
    let refusal = engine::tube_mesh(&none, "r", 0.01).unwrap_err();
    assert!(refusal.message.contains("no run yet"), "{refusal}");
    for deviation in [0.0, 0.000_999, 1.001, f64::NAN, f64::INFINITY, -1.0] {
        let refusal = engine::tube_mesh(&design(), "straight", deviation).unwrap_err();
        assert!(refusal.message.contains("from 0.001 to 1 mm"), "{refusal}");
    }
    let refusal = engine::tube_mesh(&design(), "nope", 0.01).unwrap_err();
    assert!(refusal.message.contains("no run named “nope”"), "{refusal}");
}
