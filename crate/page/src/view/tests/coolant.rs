//! The coolant as a solid, held against the engine's own exact bore.

use tubewright_core::engine;
use tubewright_core::layout::Vec3;

use super::real::demos;
use crate::view::coolant::{coolant, girths};
use crate::view::guide::Guide;
use crate::view::lathe::Body;
use crate::view::scene::Scene;
use crate::view::skin::skin;

/// What faces enclose, by the divergence theorem: a sixth of the sum of each triangle's triple product; mm3.
fn volume(body: &Body) -> f64 {
    let at = |vertex: u32| Vec3::from(body.points[vertex as usize].map(f64::from));
    let faces = body.indices.as_chunks::<3>().0.iter();
    faces.map(|[a, b, c]| at(*a).dot(&at(*b).cross(&at(*c))) / 6.0).sum()
}

#[test]
fn it_fills_the_bore_and_looks_outward() {
    for (label, design) in demos() {
        let scene = Scene::read(&engine::scene(&design).unwrap()).unwrap();
        let report: serde_json::Value = serde_json::from_str(&engine::report(&design).unwrap()).unwrap();
        for (place, run) in scene.runs.iter().enumerate().filter(|(_, run)| run.made) {
            let guide = Guide::of(run).unwrap();
            // As fine as a file: the faces over its ends are rounder than a coarse bore.
            let mesh = engine::tube_mesh(&design, &run.name, 0.01).unwrap();
            let skin = skin(&mesh.positions, &mesh.indices, Some(&guide));
            let body = coolant(&skin, &guide);
            let (found, exact) = (volume(&body), report["runs"][place]["bore_mm3"].as_f64().unwrap());
            assert!((found / exact - 1.0).abs() < 0.001, "{label}, {}: {found} of {exact} mm3", run.name);
            for (point, normal) in body.points.iter().zip(&body.normals) {
                let place = guide.nearest(&Vec3::from(point.map(f64::from)), 0);
                // At its ends the bore's edge is broken, no more than a chamfer of the wall.
                assert!(place.distance < 0.5 * run.outer_diameter - 0.2, "{label}: {point:?}");
                let outward = place.radial.dot(&Vec3::from(normal.map(f64::from)));
                assert!(outward > -1e-3, "{label}: {point:?} looks inward by {outward}");
            }
        }
    }
}

#[test]
fn a_wall_knows_how_far_its_skin_is_from_the_axis() {
    let (label, design) = demos().swap_remove(0);
    let scene = Scene::read(&engine::scene(&design).unwrap()).unwrap();
    let run = &scene.runs[0];
    let guide = Guide::of(run).unwrap();
    let mesh = engine::tube_mesh(&design, &run.name, 0.05).unwrap();
    let skin = skin(&mesh.positions, &mesh.indices, Some(&guide));
    let girths = girths(&skin, &guide);
    assert_eq!(girths.len(), skin.points.len(), "{label}");
    for (girth, station) in girths.iter().zip(&skin.profile) {
        let size = girth.iter().map(|part| part * part).sum::<f32>().sqrt();
        assert!((size - station.radius).abs() < 1e-3, "{size} where the skin is {} off", station.radius);
    }
}
