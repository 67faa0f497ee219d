//! From the picture back into the scene, against plane geometry.

use std::f64::consts::FRAC_PI_6;

use tubewright_core::layout::Vec3;

use crate::view::camera::{Camera, Side};
use crate::view::scene::{Run, Scene};
use crate::view::sight::{Picked, picked};

/// CSS pixels by which a drag turns the scene by 30 degrees: 0.4 degrees a pixel.
const THIRTY_DEGREES: f64 = 75.0;

fn camera(side: &str) -> Camera {
    let mut camera = Camera::new();
    camera.resize(800.0, 500.0);
    camera.look(Side::named(side).unwrap());
    camera
}

fn run(name: &str, centreline: &[[f64; 3]]) -> Run {
    Run {
        name: name.to_string(),
        made: true,
        outer_diameter: 12.0,
        bore: 8.0,
        lobed: None,
        centreline: centreline.to_vec(),
        corners: Vec::new(),
        stations: Vec::new(),
        turns: Vec::new(),
    }
}

fn scene(runs: Vec<Run>) -> Scene {
    Scene { runs, ..Scene::default() }
}

/// What is picked where a point is seen.
fn at<'a>(camera: &Camera, scene: &'a Scene, point: [f64; 3]) -> Option<Picked<'a>> {
    picked(camera, scene, camera.project(&Vec3::from(point)))
}

#[test]
fn what_is_projected_comes_back_onto_its_plane_and_its_line() {
    for step in 0..60 {
        let mut camera = camera("corner");
        camera.orbit(f64::from(step) * 37.0, f64::from(step % 17) * 23.0 - 200.0);
        camera.zoom(1.0 + f64::from(step) / 10.0, 0.3, 0.8);
        camera.pan(f64::from(step), -12.0);
        let toward = camera.frame().toward;
        let point = Vec3::new(3.0 * f64::from(step), -40.0, 25.5);
        let place = camera.project(&point);
        for axis in [Vec3::x(), Vec3::y(), Vec3::z(), Vec3::new(0.6, 0.0, 0.8)] {
            let off = Vec3::new(7.0, -2.0, 11.0);
            let in_plane = point + off - axis * off.dot(&axis);
            if toward.dot(&axis).abs() > 0.05 {
                let back = camera.on_plane(place, &in_plane, &axis).unwrap();
                assert!((back - point).norm() < 1e-7, "{back} is not {point}");
            }
            if toward.cross(&axis).norm() > 0.05 {
                let back = camera.on_line(place, &(point + axis * 31.0), &axis).unwrap();
                assert!((back - point).norm() < 1e-7, "{back} is not {point}");
            }
        }
    }
}

#[test]
fn a_place_beside_a_line_comes_to_its_foot() {
    let camera = camera("front");
    let place = camera.project(&Vec3::new(40.0, 0.0, 17.0));
    let foot = camera.on_line(place, &Vec3::new(5.0, 3.0, 2.0), &Vec3::x()).unwrap();
    assert!((foot - Vec3::new(40.0, 3.0, 2.0)).norm() < 1e-9);
}

#[test]
fn a_plane_edge_on_and_a_line_end_on_give_nothing() {
    let camera = camera("top");
    assert_eq!(camera.on_plane((10.0, 10.0), &Vec3::zeros(), &Vec3::x()), None);
    assert_eq!(camera.on_line((10.0, 10.0), &Vec3::zeros(), &Vec3::z()), None);
}

#[test]
fn a_straight_tube_is_picked_across_its_width_and_nowhere_else() {
    let camera = camera("front");
    let scene = scene(vec![run("r", &[[0.0, 0.0, 0.0], [100.0, 0.0, 0.0]])]);
    for (aside, along) in [(0.0, 12.5), (5.9, 40.0), (-5.9, 99.0)] {
        let hit = at(&camera, &scene, [along, 0.0, aside]).unwrap();
        assert_eq!(hit.run.name, "r");
        assert!((hit.place - along / 100.0).abs() < 1e-9);
    }
    for miss in [[40.0, 0.0, 6.1], [-0.1, 0.0, 0.0], [100.1, 0.0, 3.0]] {
        assert_eq!(at(&camera, &scene, miss), None, "{miss:?}");
    }
}

/// Seen 30 degrees from square, the line of sight through the axis leaves a tube of radius 6 by 6 tan(30) further along.
#[test]
fn a_tube_seen_aslant_is_picked_where_its_near_side_is() {
    let mut camera = camera("front");
    camera.orbit(-THIRTY_DEGREES, 0.0);
    let scene = scene(vec![run("r", &[[0.0, 0.0, 0.0], [100.0, 0.0, 0.0]])]);
    let expected = 40.0 + 6.0 * libm::tan(FRAC_PI_6);
    let hit = at(&camera, &scene, [40.0, 0.0, 0.0]).unwrap();
    assert!((hit.place - expected / 100.0).abs() < 1e-9, "{} is {expected}", hit.place);
}

#[test]
fn the_nearer_of_two_tubes_is_picked_and_end_on_the_near_end() {
    let (near, far) = ([[50.0, -40.0, -50.0], [50.0, -40.0, 50.0]], [[0.0, 30.0, 0.0], [100.0, 30.0, 0.0]]);
    let scene = scene(vec![run("far", &far), run("near", &near)]);
    assert_eq!(at(&camera("front"), &scene, [50.0, 0.0, 0.0]).unwrap().run.name, "near");
    assert_eq!(at(&camera("back"), &scene, [50.0, 0.0, 0.0]).unwrap().run.name, "far");
    let end = at(&camera("right"), &scene, [0.0, 30.0, 1.0]).unwrap();
    assert_eq!((end.run.name.as_str(), end.place), ("far", 1.0));
}

/// The outside of a sharp corner is a ball's: 45 degrees outward by less than the radius hits, by more misses.
#[test]
fn the_outside_of_a_joint_is_closed() {
    let camera = camera("front");
    let scene = scene(vec![run("r", &[[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [100.0, 0.0, 100.0]])]);
    let out = |far: f64| [100.0 + far * 0.5f64.sqrt(), 0.0, -far * 0.5f64.sqrt()];
    assert_eq!(at(&camera, &scene, out(5.9)).unwrap().place, 1.0);
    assert_eq!(at(&camera, &scene, out(6.1)), None);
}

#[test]
fn a_thin_line_is_picked_five_pixels_beside_it() {
    let camera = camera("front");
    let scene = scene(vec![Run { made: false, ..run("r", &[[0.0, 0.0, 0.0], [100.0, 0.0, 0.0]]) }]);
    assert!(at(&camera, &scene, [50.0, 0.0, 4.9 / camera.scale()]).is_some());
    assert!(at(&camera, &scene, [50.0, 0.0, 5.1 / camera.scale()]).is_none());
}
