//! The handles of a run, and where a new corner goes, against the geometry of a right angle.

use std::f64::consts::{FRAC_1_SQRT_2, FRAC_PI_2};

use crate::view::camera::Camera;
use crate::view::grip::{Spot, grips, spot, straight_after};
use crate::view::scene::{Bend, Run, Turn};
use crate::view::sight::Picked;

const RADIUS: f64 = 20.0;
const STEPS: usize = 12;

/// 50 mm up, a quarter circle to x about the corner (0, 0, 70), 50 mm along x; then a corner at x 70 that turns nothing,
/// 30 mm on, a coil of which two chords are drawn, 30 mm on.
fn bend() -> Run {
    let mut centreline = vec![[0.0, 0.0, 0.0]];
    centreline.extend((0..=STEPS).map(|step| {
        let (sin, cos) = libm::sincos(FRAC_PI_2 * step as f64 / STEPS as f64);
        [RADIUS - RADIUS * cos, 0.0, 50.0 + RADIUS * sin]
    }));
    centreline.extend([
        [70.0, 0.0, 70.0],
        [100.0, 0.0, 70.0],
        [110.0, 8.0, 70.0],
        [120.0, 0.0, 70.0],
        [150.0, 0.0, 70.0],
    ]);
    let inside = RADIUS * (1.0 - FRAC_1_SQRT_2);
    let middle = [inside, 0.0, 70.0 - inside];
    let own = Bend { radius: RADIUS, angle_deg: 90.0, middle, inward: [FRAC_1_SQRT_2, 0.0, -FRAC_1_SQRT_2] };
    Run {
        name: "r".to_string(),
        made: true,
        outer_diameter: 12.0,
        bore: 8.0,
        lobed: None,
        centreline,
        corners: vec![[0.0, 0.0, 70.0], [70.0, 0.0, 70.0]],
        stations: vec![0, 1],
        turns: vec![
            Turn { stations: Some([0, 0]), points: [1, 1 + STEPS], bend: Some(own) },
            Turn { stations: Some([2, 2]), points: [3 + STEPS, 5 + STEPS], bend: None },
        ],
    }
}

fn spot_at(run: &Run, place: f64) -> Spot {
    spot(&Picked { run, place })
}

#[test]
fn corners_and_middles_of_bends_are_handles_in_the_order_of_the_route() {
    let run = bend();
    let mut camera = Camera::new();
    camera.resize(800.0, 500.0);
    let grips = grips(&run, &camera);
    let told: Vec<(&str, usize)> = grips.iter().map(|grip| (grip.kind, grip.station)).collect();
    assert_eq!(told, [("point", 0), ("radius", 0), ("point", 1)]);
    for grip in &grips {
        assert_eq!(camera.project(&grip.at.into()), (grip.seen[0], grip.seen[1]));
    }
    // The middle is apex + inward * factor * radius: at a right angle the factor is the square root of two, less one.
    let slide = grips[1].slide.as_ref().unwrap();
    assert!((slide.factor - (2f64.sqrt() - 1.0)).abs() < 1e-12);
    for axis in 0..3 {
        let reached = slide.apex[axis] + slide.inward[axis] * slide.factor * slide.radius;
        assert!((reached - grips[1].at[axis]).abs() < 1e-9);
    }
}

#[test]
fn a_new_corner_stands_on_the_straight_and_comes_in_its_order() {
    let run = bend();
    let end = STEPS as f64 + 1.0;
    // Half way up the first straight; half way along the second; past the corner that turns nothing; past the coil.
    let expected = [
        (0.5, [0.0, 0.0, 25.0], [0.0, 0.0, 1.0], 0),
        (end + 0.5, [45.0, 0.0, 70.0], [1.0, 0.0, 0.0], 1),
        (end + 1.5, [85.0, 0.0, 70.0], [1.0, 0.0, 0.0], 2),
        (end + 4.5, [135.0, 0.0, 70.0], [1.0, 0.0, 0.0], 3),
    ];
    for (place, at, direction, before) in expected {
        let spot = spot_at(&run, place);
        let corner = spot.corner.unwrap();
        assert_eq!((corner.before, spot.at), (before, corner.at), "at {place}");
        for axis in 0..3 {
            assert!(
                (corner.at[axis] - at[axis]).abs() < 1e-9 && (corner.direction[axis] - direction[axis]).abs() < 1e-9
            );
        }
    }
}

#[test]
fn from_a_bend_a_new_corner_moves_to_its_nearer_end_and_a_coil_takes_none() {
    let run = bend();
    let near = |place: f64| spot_at(&run, place).corner.unwrap();
    let (before, after) = (near(3.2), near(11.0));
    assert_eq!((before.before, before.at, before.direction), (0, [0.0, 0.0, 50.0], [0.0, 0.0, 1.0]));
    assert_eq!((after.before, after.direction), (1, [1.0, 0.0, 0.0]));
    assert!((after.at[0] - 20.0).abs() < 1e-9 && (after.at[2] - 70.0).abs() < 1e-9);
    assert_eq!(spot_at(&run, STEPS as f64 + 4.0).corner, None);
}

#[test]
fn the_straight_after_a_station_is_halved() {
    let run = bend();
    let at = |station: Option<usize>| straight_after(&run, station).unwrap().corner.unwrap();
    let expected = [(Some(0), 60.0, 1), (Some(1), 85.0, 2), (Some(2), 135.0, 3), (None, 60.0, 1)];
    for (station, x, before) in expected {
        let corner = at(station);
        assert!((corner.at[0] - x).abs() < 1e-9, "after {station:?} at {}", corner.at[0]);
        assert_eq!(corner.before, before, "after {station:?}");
    }
    assert_eq!(straight_after(&Run { centreline: Vec::new(), ..bend() }, None), None);
}
