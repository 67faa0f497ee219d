//! Every demo that ships, held to the snapshot beside this file: its canonical text, its numbers, what is found about
//! it, and the size of its meshes.
//!
//! After a change that is meant, `UPDATE_SNAPSHOTS=1 cargo test -p tubewright-core --test demos` writes them anew; the
//! difference then says what the change did.

use std::fmt::Write;
use std::fs;
use std::path::PathBuf;

use serde_json::Value;
use tubewright_core::engine;
use tubewright_core::mesh::{is_solid, signed_volume};

/// Deviation of the meshes counted, mm.
const DEVIATION: f64 = 0.01;

#[test]
fn every_demo_is_as_its_snapshot_says() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/demos");
    let update = std::env::var_os("UPDATE_SNAPSHOTS").is_some();
    let shipped: Value = serde_json::from_str(&engine::presets()).expect("the presets are JSON");
    let mut names = Vec::new();
    let mut wrong = Vec::new();
    for demo in shipped["demos"].as_array().expect("demos are a list") {
        let text = demo["design"].to_string();
        let name = format!("{}.txt", demo["label"].as_str().unwrap().to_lowercase().replace(' ', "-"));
        let (found, path) = (told(&text), folder.join(&name));
        if update {
            fs::create_dir_all(&folder).unwrap();
            fs::write(&path, &found).unwrap();
        }
        let kept = fs::read_to_string(&path).unwrap_or_default();
        if kept != found {
            let line = kept.lines().zip(found.lines()).find(|(kept, found)| kept != found);
            let (kept, found) = line.unwrap_or(("another number of lines", ""));
            wrong.push(format!("{name}:\n  kept  {kept}\n  found {found}"));
        }
        names.push(name);
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    let mut kept: Vec<String> =
        fs::read_dir(&folder).unwrap().map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    kept.sort();
    names.sort();
    assert_eq!(kept, names, "one snapshot for each demo");
}

/// What the engine says about a design: the numbers first, the whole text after them.
fn told(text: &str) -> String {
    let report: Value = serde_json::from_str(&engine::report(text).expect("a demo is accepted")).unwrap();
    let mut out = String::new();
    for run in report["runs"].as_array().unwrap() {
        let name = run["name"].as_str().unwrap();
        let number = |key: &str| run[key].as_f64().expect(key);
        let mesh = engine::tube_mesh(text, name, DEVIATION).expect("a demo's runs are made");
        assert!(is_solid(&mesh), "{name}");
        writeln!(out, "run {name}").unwrap();
        writeln!(out, "  length    {:.6} mm", number("length_mm")).unwrap();
        writeln!(out, "  material  {:.3} mm3", number("material_mm3")).unwrap();
        writeln!(out, "  bore      {:.3} mm3", number("bore_mm3")).unwrap();
        writeln!(out, "  mass      {:.4} g", number("mass_g")).unwrap();
        writeln!(out, "  bounds    {} {}", run["bounds_mm"]["min"], run["bounds_mm"]["max"]).unwrap();
        writeln!(
            out,
            "  mesh at {DEVIATION} mm: {} triangles, {:.1} mm3",
            mesh.indices.len() / 3,
            signed_volume(&mesh)
        )
        .unwrap();
        for row in run["bend_table"].as_array().unwrap() {
            let number = |key: &str| row[key].as_f64().expect(key);
            writeln!(
                out,
                "  {:<5} after {:.4} mm, rotated {:.4}, turned {:.4}, radius {:.4} mm, {:.4} mm long",
                row["kind"].as_str().unwrap(),
                number("straight_mm"),
                number("rotation_deg"),
                number("angle_deg"),
                number("radius_mm"),
                number("length_mm")
            )
            .unwrap();
        }
    }
    for finding in report["findings"].as_array().unwrap() {
        writeln!(out, "{}: {}", finding["severity"].as_str().unwrap(), finding["message"].as_str().unwrap()).unwrap();
    }
    out + "\n" + &engine::normalise(text).expect("a demo is accepted")
}
