//! The eye: right-handed, true to length, and steady under the pointer.

use tubewright_core::layout::Vec3;

use crate::view::camera::{Ball, Camera, Side};

const SIDES: [&str; 7] = ["front", "back", "left", "right", "top", "bottom", "corner"];

fn camera(side: &str) -> Camera {
    let mut camera = Camera::new();
    camera.resize(800.0, 500.0);
    camera.look(Side::named(side).unwrap());
    camera
}

fn cloud() -> Vec<Ball> {
    let ball = |x: f64, y: f64, z: f64, radius: f64| Ball { centre: Vec3::new(x, y, z), radius };
    vec![ball(10.0, -40.0, 5.0, 6.0), ball(210.0, 35.0, 90.0, 0.0), ball(-30.0, 120.0, 140.0, 12.0)]
}

#[test]
fn frames_are_right_handed_whatever_the_turn() {
    for side in SIDES {
        let mut camera = camera(side);
        for step in 0..200 {
            camera.orbit(f64::from(step % 37) * 11.0, f64::from(step % 23) * 17.0 - 180.0);
            let frame = camera.frame();
            assert!((frame.right.cross(&frame.up) - frame.toward).norm() < 1e-12);
            assert!((frame.right.norm() - 1.0).abs() < 1e-12 && (frame.up.norm() - 1.0).abs() < 1e-12);
            assert!(frame.right.z.abs() < 1e-12, "the horizon stays level");
            assert!(frame.up.z > -1e-12, "the scene never stands on its head");
        }
    }
}

#[test]
fn standard_sides_show_the_axes_that_drawings_expect() {
    let expected = [
        ("front", Vec3::x(), Vec3::z()),
        ("back", -Vec3::x(), Vec3::z()),
        ("left", -Vec3::y(), Vec3::z()),
        ("right", Vec3::y(), Vec3::z()),
        ("top", Vec3::x(), Vec3::y()),
        ("bottom", Vec3::x(), -Vec3::y()),
    ];
    for (side, right, up) in expected {
        let frame = camera(side).frame();
        assert!((frame.right - right).norm() < 1e-12 && (frame.up - up).norm() < 1e-12, "{side}");
    }
    assert_eq!(Side::named("nowhere"), None);
}

#[test]
fn lengths_square_to_the_sight_read_true_at_any_depth() {
    let mut camera = camera("corner");
    camera.fit(&cloud());
    let frame = camera.frame();
    for depth in [-500.0, 0.0, 900.0] {
        let from = Vec3::new(4.0, 5.0, 6.0) + frame.toward * depth;
        let (x, y) = camera.project(&from);
        let (u, v) = camera.project(&(from + frame.right * 30.0 - frame.up * 40.0));
        assert!((libm::hypot(u - x, v - y) - 50.0 * camera.scale()).abs() < 1e-9);
        assert!(u > x && v > y, "right is right and down is down");
    }
}

#[test]
fn zooming_keeps_what_is_under_the_pointer() {
    let mut camera = camera("corner");
    camera.fit(&cloud());
    let point = Vec3::new(60.0, 10.0, 30.0);
    let (x, y) = camera.project(&point);
    for factor in [1.3, 7.0, 0.2, 1e9, 1e-12] {
        camera.zoom(factor, x / 800.0, y / 500.0);
        let (u, v) = camera.project(&point);
        assert!((u - x).abs() < 1e-6 && (v - y).abs() < 1e-6, "{factor}");
    }
}

#[test]
fn panning_moves_the_picture_by_as_much() {
    let mut camera = camera("corner");
    camera.fit(&cloud());
    let point = Vec3::new(60.0, 10.0, 30.0);
    let (x, y) = camera.project(&point);
    camera.pan(17.0, -9.0);
    let (u, v) = camera.project(&point);
    assert!((u - x - 17.0).abs() < 1e-9 && (v - y + 9.0).abs() < 1e-9);
}

#[test]
fn a_fit_shows_everything_and_fills_the_picture() {
    for side in SIDES {
        let mut camera = camera(side);
        let balls = cloud();
        assert!(!camera.fits(&[Ball { centre: Vec3::new(1e4, 0.0, 1e4), radius: 1.0 }]));
        camera.fit(&balls);
        assert!(camera.fits(&balls));
        let edges = balls.iter().flat_map(|ball| {
            let (x, y) = camera.project(&ball.centre);
            let radius = ball.radius * camera.scale();
            [x - radius, 800.0 - x - radius, y - radius, 500.0 - y - radius]
        });
        let closest = edges.fold(f64::INFINITY, f64::min);
        assert!((closest - 35.0).abs() < 1e-6, "{side}: {closest} pixels of margin");
        camera.zoom(1.5, 0.5, 0.5);
        assert!(!camera.fits(&balls), "{side}: too large");
        camera.zoom(0.2, 0.5, 0.5);
        assert!(!camera.fits(&balls), "{side}: lost in the picture");
    }
}

#[test]
fn nothing_to_show_and_no_picture_do_no_harm() {
    let mut camera = Camera::new();
    camera.fit(&cloud());
    camera.fit(&[]);
    camera.zoom(2.0, 0.5, 0.5);
    camera.pan(3.0, 4.0);
    assert!(!camera.has_picture());
    assert!(camera.focus().iter().all(|value| value.is_finite()) && camera.scale() > 0.0);
}

#[test]
fn a_lone_point_is_not_enlarged_without_end() {
    let mut camera = camera("front");
    camera.fit(&[Ball { centre: Vec3::new(3.0, 4.0, 5.0), radius: 0.0 }]);
    assert_eq!(camera.scale(), 100.0);
    assert_eq!(camera.project(&Vec3::new(3.0, 4.0, 5.0)), (400.0, 250.0));
}
