//! Places on the centreline, against the plane geometry of straights and a quarter circle.

use std::f64::consts::FRAC_PI_2;

use tubewright_core::layout::Vec3;

use crate::view::guide::Guide;

const RADIUS: f64 = 20.0;

/// 50 mm up, a quarter circle of 20 mm to x, 50 mm along x; chords within 0.05 mm as the engine's scene draws them.
fn bend() -> Guide {
    let mut points = vec![[0.0, 0.0, 0.0]];
    points.extend((0..=12).map(|step| {
        let (sin, cos) = libm::sincos(FRAC_PI_2 * f64::from(step) / 12.0);
        [RADIUS - RADIUS * cos, 0.0, 50.0 + RADIUS * sin]
    }));
    points.push([70.0, 0.0, 70.0]);
    Guide::new(&points, 12.0).unwrap()
}

#[test]
fn a_skin_point_knows_its_way_out_in_a_bend() {
    let guide = bend();
    let mut hint = 0;
    for step in 0..=90 {
        let (sin, cos) = libm::sincos(f64::from(step).to_radians());
        let centre = Vec3::new(RADIUS - RADIUS * cos, 0.0, 50.0 + RADIUS * sin);
        let away = Vec3::new(-cos, 0.0, sin);
        for turn in 0..24 {
            let (up, across) = libm::sincos(f64::from(turn) * 15f64.to_radians());
            let radial = away * across + Vec3::y() * up;
            for radius in [6.0, 4.0] {
                let place = guide.nearest(&(centre + radial * radius), hint);
                hint = place.segment;
                let off = libm::acos(place.radial.dot(&radial).min(1.0)).to_degrees();
                assert!(off < 1.5, "{off} degrees off at {step}, {turn}, where chords turn by 7.5");
                assert!((place.along - 50.0 - RADIUS * f64::from(step).to_radians()).abs() < 1.0);
                assert!((place.distance - radius).abs() < 0.06);
                assert!(place.tangent.dot(&Vec3::new(sin, 0.0, cos)) > 0.999);
            }
        }
    }
}

#[test]
fn straights_stay_straight_to_their_ends() {
    let guide = bend();
    for along in [0.0, 1.0, 25.0, 48.0] {
        let place = guide.nearest(&Vec3::new(0.0, 6.0, along), 9);
        assert!((place.radial - Vec3::y()).norm() < 1e-12 && (place.tangent - Vec3::z()).norm() < 1e-12);
        assert!((place.along - along).abs() < 1e-12);
    }
}

#[test]
fn the_strand_that_a_point_is_on_is_found_beside_another() {
    let mut points: Vec<[f64; 3]> = vec![[0.0, 0.0, 0.0]];
    points.extend((0..=24).map(|step| {
        let (sin, cos) = libm::sincos(std::f64::consts::PI * f64::from(step) / 24.0);
        [7.0 - 7.0 * cos, 0.0, 100.0 + 7.0 * sin]
    }));
    points.push([14.0, 0.0, 0.0]);
    let guide = Guide::new(&points, 12.0).unwrap();
    for height in [5.0, 40.0, 90.0] {
        for hint in [0, 5, 30, usize::MAX] {
            let left = guide.nearest(&Vec3::new(6.0, 0.0, height), hint);
            let right = guide.nearest(&Vec3::new(8.0, 0.0, height), hint);
            assert!(left.along < 100.0 && left.radial.x > 0.9, "hint {hint}");
            assert!(right.along > 120.0 && right.radial.x < -0.9, "hint {hint}");
        }
    }
}

#[test]
fn no_line_is_no_guide() {
    assert!(Guide::new(&[], 12.0).is_none());
    assert!(Guide::new(&[[1.0, 2.0, 3.0], [1.0, 2.0, 3.0]], 12.0).is_none());
    let folded = Guide::new(&[[0.0; 3], [10.0, 0.0, 0.0], [0.0; 3]], 12.0).unwrap();
    let place = folded.nearest(&Vec3::new(10.0, 0.0, 0.0), 0);
    assert!(place.tangent.iter().chain(place.radial.iter()).all(|value| value.is_finite()));
}
