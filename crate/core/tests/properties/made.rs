//! Whatever run is made, its numbers and its mesh are right, however near the limits it lies.

use crate::answers::{findings, number, point, report, runs, told};
use std::io::Cursor;
use tubewright_core::mesh::{signed_volume, solidity};
use tubewright_core::strategies::{Expect, KINDS, designs};
use tubewright_core::{engine, export};

const ROUNDS: usize = 12;

#[test]
fn every_kind_is_made_or_stopped_as_it_must_be() {
    for design in designs(0x7ab, ROUNDS * KINDS.len()) {
        let told = told(&design);
        let report = report(&design.text, &told);
        for run in runs(&report) {
            let made = run["made"] == true;
            let stops = findings(&report).iter().filter(|f| f["run"] == run["name"] && f["severity"] == "stop").count();
            assert!(made || stops > 0, "{told}: not made, and no finding says why");
            match design.expect {
                Expect::Made => assert!(made, "{told}: not made: {:#?}", report["findings"]),
                Expect::Stopped => assert!(!made, "{told}: made"),
                Expect::Either => {}
            }
        }
    }
}

#[test]
fn lengths_known_in_closed_form_are_found() {
    let mut known = 0;
    for design in designs(0x1e9, ROUNDS * KINDS.len()).iter().filter(|design| design.expect == Expect::Made) {
        let report = report(&design.text, &told(design));
        for (run, length) in runs(&report).iter().zip(&design.lengths) {
            let Some(length) = length else { continue };
            known += 1;
            let found = number(run, "length_mm");
            // The corners' apexes are rounded where they stand, and far ones bend the tangents the more.
            let slack = 1e-9 * length.max(1e3) * if design.kind == "hairpins" { 100.0 } else { 1.0 };
            assert!((found - length).abs() < slack, "{}: {found}, not {length}", told(design));
        }
    }
    assert!(known > 8 * ROUNDS, "{known}");
}

#[test]
fn every_made_run_is_a_solid_of_the_exact_volume_in_its_box() {
    for design in designs(0x501, ROUNDS * KINDS.len()) {
        let told = told(&design);
        let report = report(&design.text, &told);
        for run in runs(&report).iter().filter(|run| run["made"] == true) {
            let name = run["name"].as_str().expect("a name");
            let mesh = engine::tube_mesh(&design.text, name, design.deviation)
                .unwrap_or_else(|refusal| panic!("{told}, {}: {refusal}", design.deviation));
            assert_eq!(solidity(&mesh), [], "{told}, {} mm", design.deviation);
            let (volume, exact) = (signed_volume(&mesh), number(run, "material_mm3"));
            assert!((volume / exact - 1.0).abs() < 0.0005, "{told}, {} mm: {volume} for {exact}", design.deviation);
            let [low, high] = ["min", "max"].map(|end| point(&run["bounds_mm"][end]));
            for axis in 0..3 {
                let reach = mesh.positions.iter().skip(axis).step_by(3).map(|x| f64::from(*x));
                let (least, most) = reach.fold((f64::MAX, f64::MIN), |(a, b), x| (a.min(x), b.max(x)));
                // The box of a lobed body is that of its crests, which need not stand where it reaches farthest.
                let slack = design.deviation + groove(&design.text);
                for gap in [least - low[axis], high[axis] - most] {
                    assert!(
                        (-design.deviation..=slack).contains(&gap),
                        "{told}: axis {axis} is out by {gap}, {}",
                        design.deviation
                    );
                }
            }
        }
    }
}

/// Depth of the grooves of the design's first run, mm.
fn groove(text: &str) -> f64 {
    let design: serde_json::Value = serde_json::from_str(text).expect("JSON");
    design["runs"][0]["dress"]["depth"].as_f64().unwrap_or(0.0)
}

#[test]
fn every_stl_reads_back_as_its_mesh() {
    for design in designs(0x571, 2 * KINDS.len()) {
        let told = told(&design);
        for run in runs(&report(&design.text, &told)).iter().filter(|run| run["made"] == true) {
            let name = run["name"].as_str().expect("a name");
            let mesh = engine::tube_mesh(&design.text, name, 0.1).expect(&told);
            let request = serde_json::json!({ "kind": "stl", "run": name, "deviation": 0.1 }).to_string();
            let bytes = engine::export_file(&design.text, &request).expect(&told);
            assert_eq!(bytes, export::stl(&mesh, name), "{told}");
            let read = stl_io::read_stl(&mut Cursor::new(&bytes)).expect(&told);
            // stl_io joins corners that are equal to the bit: as many as the mesh has, so none is there twice.
            assert_eq!(read.vertices.len(), mesh.positions.len() / 3, "{told}");
            let corners = read.faces.iter().flat_map(|face| face.vertices).map(|index| read.vertices[index].0);
            let sent =
                mesh.indices.iter().map(|index| [0, 1, 2].map(|axis| mesh.positions[*index as usize * 3 + axis]));
            assert!(corners.eq(sent), "{told}");
        }
    }
}
