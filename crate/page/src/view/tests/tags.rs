//! The numbers beside the tubes.

use crate::view::camera::{Camera, Side};
use crate::view::scene::Scene;
use crate::view::stroke::Ink;
use crate::view::tags::tags;

/// Uprights side by side, 40 mm apart.
fn scene(count: usize) -> Scene {
    let runs: Vec<String> = (0..count)
        .map(|index| {
            let x = 40 * index;
            format!(
                r#"{{ "name": "run {index}", "made": true, "outer_diameter": 12, "bore": 8,
                "centreline": [[{x}, 0, 0], [{x}, 0, 90], [{x}, 30, 120]] }}"#
            )
        })
        .collect();
    Scene::read(&format!(r#"{{ "runs": [{}] }}"#, runs.join(","))).unwrap()
}

fn camera(scene: &Scene, side: Side) -> Camera {
    let mut camera = Camera::new();
    camera.resize(900.0, 600.0);
    camera.look(side);
    camera.fit(&scene.balls());
    camera
}

/// Where the rings are: CSS pixels from the picture's top left, and across.
fn rings(scene: &Scene, camera: &Camera) -> Vec<[f64; 3]> {
    let strokes = tags(scene, camera);
    let paper = |style: &[f32; 4]| style[0] == f32::from(Ink::Paper as u8);
    (0..strokes.count())
        .filter(|line| paper(&strokes.style[*line]))
        .map(|line| {
            let [x, y, z, _] = strokes.from[line].map(f64::from);
            let (left, top) = camera.project(&tubewright_core::layout::Vec3::new(x, y, z));
            let [left_by, up_by, right_by, _] = strokes.shift[line].map(f64::from);
            [left + (left_by + right_by) / 2.0, top - up_by, f64::from(strokes.style[line][1])]
        })
        .collect()
}

#[test]
fn each_of_several_tubes_has_one_and_a_lone_one_none() {
    for count in [0, 1, 2, 4, 11] {
        let scene = scene(count);
        let found = rings(&scene, &camera(&scene, Side::Corner)).len();
        assert_eq!(found, if count > 1 { count } else { 0 });
    }
}

#[test]
fn a_ring_stands_clear_of_its_own_tube_whatever_side_is_looked_from() {
    let scene = scene(3);
    for side in [Side::Front, Side::Corner, Side::Left, Side::Back] {
        let camera = camera(&scene, side);
        for (ring, run) in rings(&scene, &camera).iter().zip(&scene.runs) {
            let ends = [0, 1].map(|point| camera.project(&run.centreline[point].into()));
            let [(ax, ay), (bx, by)] = ends;
            let long = libm::hypot(bx - ax, by - ay);
            let off = ((bx - ax) * (ring[1] - ay) - (by - ay) * (ring[0] - ax)).abs() / long;
            let flank = 0.5 * run.outer_diameter * camera.scale();
            assert!(off > flank + 0.5 * ring[2], "{side:?}: {off} from the axis, flank at {flank}");
        }
    }
}

#[test]
fn a_hidden_straight_gives_way_to_one_in_sight() {
    // From above, the upright of the second run is hidden by the first, which bridges it; its upper leg is not.
    let scene = Scene::read(
        r#"{ "runs": [ { "name": "bridge", "made": true, "outer_diameter": 20, "bore": 8, "centreline": [[0, -60, 90], [0, 60, 90]] },
        { "name": "under", "made": true, "outer_diameter": 6, "bore": 4, "centreline": [[0, -40, 0], [0, 40, 0], [30, 40, 0]] } ] }"#,
    )
    .unwrap();
    let camera = camera(&scene, Side::Top);
    let strokes = tags(&scene, &camera);
    let second =
        (0..strokes.count()).filter(|line| strokes.style[*line][0] == f32::from(Ink::Paper as u8)).nth(1).unwrap();
    assert_eq!(strokes.from[second][..3], [15.0, 40.0, 0.0]);
}

#[test]
fn numbers_differ() {
    let scene = scene(11);
    let strokes = tags(&scene, &camera(&scene, Side::Front));
    // The lines of each number, from its paper to the next dot.
    let mut drawn: Vec<Vec<[i32; 4]>> = Vec::new();
    let mut centre = [0.0f32; 2];
    for line in 0..strokes.count() {
        let (style, shift) = (strokes.style[line], strokes.shift[line]);
        if style[0] == f32::from(Ink::Paper as u8) {
            centre = [(shift[0] + shift[2]) / 2.0, shift[1]];
            drawn.push(Vec::new());
        } else if style[1] == 1.5 {
            let off = |part: usize| ((shift[part] - centre[part % 2]) * 10.0).round() as i32;
            drawn.last_mut().unwrap().push([off(0), off(1), off(2), off(3)]);
        }
    }
    assert_eq!(drawn.len(), 11);
    assert!(drawn.iter().all(|lines| lines.len() >= 2));
    drawn.sort();
    drawn.dedup();
    assert_eq!(drawn.len(), 11, "two numbers look the same");
}
