//! The engine's own scenes and tubes, as the page hands them over.

use tubewright_core::engine;

use crate::view::furniture::Furniture;
use crate::view::guide::Guide;
use crate::view::model::Model;
use crate::view::outline::outline;
use crate::view::scene::Scene;
use crate::view::skin::{fault, skin};

/// The shipped demo designs: name and text.
pub fn demos() -> Vec<(String, String)> {
    let presets: serde_json::Value = serde_json::from_str(&engine::presets()).unwrap();
    let demos = presets["demos"].as_array().unwrap();
    demos.iter().map(|demo| (demo["label"].to_string(), demo["design"].to_string())).collect()
}

#[test]
fn demo_scenes_are_read_whole() {
    for (label, design) in demos() {
        let scene = Scene::read(&engine::scene(&design).unwrap()).unwrap();
        assert!(!scene.ports.is_empty() && !scene.collars.is_empty() && !scene.runs.is_empty(), "{label}");
        let furniture = Furniture::of(&scene);
        let lists = [&furniture.fittings, &furniture.seats, &furniture.keep_outs];
        for body in lists {
            let flat: Vec<f32> = body.points.iter().flatten().copied().collect();
            assert_eq!(fault(&flat, &body.indices), None, "{label}");
            assert!(body.normals.len() == body.points.len() && body.radials.len() == body.points.len());
        }
    }
}

#[test]
fn demo_tubes_are_round_with_their_rims_and_nothing_else_drawn() {
    for (label, design) in demos() {
        let scene = Scene::read(&engine::scene(&design).unwrap()).unwrap();
        for run in scene.runs.iter().filter(|run| run.made) {
            let guide = Guide::of(run).unwrap();
            for deviation in [0.01, 0.02, 0.05, 0.2] {
                let mesh = engine::tube_mesh(&design, &run.name, deviation).unwrap();
                assert_eq!(fault(&mesh.positions, &mesh.indices), None);
                let skin = skin(&mesh.positions, &mesh.indices, Some(&guide));
                // The lead-in, the trim's line and the seating mark are within the sockets and just above them.
                let zone = 20.0;
                let far = |vertex: &u32| {
                    let along = f64::from(skin.profile[*vertex as usize].along);
                    along > zone && along < guide.length() - zone
                };
                let stray = skin.creases.iter().flatten().filter(|vertex| far(vertex)).count();
                assert_eq!(stray, 0, "{label}, {}, {deviation}: rims belong at the ends", run.name);
                for (station, normal) in skin.profile.iter().zip(&skin.normals) {
                    let size = normal.iter().map(|value| value * value).sum::<f32>();
                    assert!((size - 1.0).abs() < 1e-4);
                    let along = f64::from(station.along);
                    if along > zone && along < guide.length() - zone && !(skin.lobed && station.outward > 0.0) {
                        assert!(station.outward.abs() > 0.999, "{label}, {}: {}", run.name, station.outward);
                    }
                }
                let lines = outline(&skin, Some(&guide));
                assert!(lines.body.count() > 100 && lines.opened.count() > 10);
            }
        }
    }
}

#[test]
fn the_outline_starts_at_the_lead_in_and_runs_at_the_skin() {
    for (label, design) in demos() {
        let told: serde_json::Value = serde_json::from_str(&engine::normalise(&design).unwrap()).unwrap();
        let scene = Scene::read(&engine::scene(&design).unwrap()).unwrap();
        for (place, run) in scene.runs.iter().enumerate().filter(|(_, run)| run.made) {
            let ends = &told["runs"][place]["ends"];
            let number = |key: &str| ends[key].as_f64().unwrap();
            let inset = number("chamfer_length") * libm::tan(number("chamfer_deg").to_radians());
            let guide = Guide::of(run).unwrap();
            let mesh = engine::tube_mesh(&design, &run.name, 0.02).unwrap();
            let skin = skin(&mesh.positions, &mesh.indices, Some(&guide));
            let lobes = told["runs"][place]["dress"]["lobes"].as_f64().unwrap_or_default();
            assert_eq!(skin.lobed, lobes > 0.0, "{label}, {}", run.name);
            let lines = outline(&skin, Some(&guide)).body;
            if skin.lobed {
                continue;
            }
            let flanks: Vec<[f32; 4]> = lines.from.iter().copied().filter(|end| end[3] > 0.0).collect();
            let first = f64::from(flanks[0][3]);
            assert!((first - (0.5 * run.outer_diameter - inset)).abs() < 0.03, "{label}, {}: {first}", run.name);
            let widest = flanks.iter().map(|end| f64::from(end[3])).fold(0.0, f64::max);
            assert!((widest - 0.5 * run.outer_diameter).abs() < 0.03, "{label}, {}: {widest}", run.name);
        }
    }
}

#[test]
fn a_model_takes_a_whole_demo() {
    for (_, design) in demos() {
        let mut model = Model::new();
        model.resize(800.0, 600.0, 2.0);
        model.set_scene(&engine::scene(&design).unwrap()).unwrap();
        let names: Vec<String> = model.scene.runs.iter().map(|run| run.name.clone()).collect();
        for name in &names {
            let mesh = engine::tube_mesh(&design, name, 0.05).unwrap();
            model.set_tube(name, mesh.positions, mesh.indices).unwrap();
        }
        assert_eq!(model.drawn().count(), names.len());
        assert_eq!(model.traced().count(), 0);
    }
}
