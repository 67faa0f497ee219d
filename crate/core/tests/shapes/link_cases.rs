//! Links of every named kind, against plane trigonometry worked out by hand.

use core::f64::consts::PI;
use tubewright_core::centreline::{Obstacle, Pose, RunLine, lines, shortest_link};
use tubewright_core::design::parse;
use tubewright_core::layout::{Vec3, place};

/// From the tube's end to where a bend may start, mm.
const STRAIGHT: f64 = 15.0;

/// A run with an empty route; lead ends at the two points, facing the given ways.
fn link(to: [f64; 3], to_facing: [f64; 3], radius: f64) -> RunLine {
    // Height 18, socket 10, lead 5: the lead ends 23 mm in front of the seat.
    let seat = |at: [f64; 3], facing: [f64; 3]| [0, 1, 2].map(|i| at[i] - 23.0 * facing[i]);
    let text = format!(
        r#"{{ "format": "tubewright-design", "version": 1,
        "fittings": [ {{ "name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "lead": 5 }} ],
        "ports": [ {{ "name": "a", "at": [0, 0, -23], "facing": [0, 0, 1], "fitting": "F" }},
                   {{ "name": "b", "at": {:?}, "facing": {to_facing:?}, "fitting": "F" }} ],
        "runs": [ {{ "name": "r", "from": "a", "to": "b", "tube": {{ "outer_diameter": 12, "bore": 8 }},
                     "bend_radius": {radius}, "route": [] }} ] }}"#,
        seat(to, to_facing)
    );
    let design = parse(&text).expect("a design");
    lines(&design, &place(&design)).remove(0)
}

/// Length between the lead ends.
fn length(line: &RunLine) -> f64 {
    line.line.as_ref().expect("a centreline").length - 2.0 * STRAIGHT
}

fn clear(line: &RunLine, expected: f64) {
    assert_eq!(line.obstacles, []);
    assert!((length(line) - expected).abs() < 1e-9, "{} instead of {expected}", length(line));
}

fn too_tight(line: &RunLine, largest: f64) {
    assert!(matches!(line.obstacles[..], [Obstacle::LinkTooTight { .. }]), "{:?}", line.obstacles);
    let found = line.largest_run_radius.expect("a radius that fits");
    assert!((found - largest).abs() < 1e-5, "{found} instead of {largest}");
}

/// Two arcs of angle a and a straight s: h = 2 R (1 - cos a) + s sin a, w = 2 R sin a + s cos a, solved for both.
fn s_length(h: f64, w: f64, r: f64) -> f64 {
    let straight = (w * w + h * h - 4.0 * r * h).sqrt();
    2.0 * r * 2.0 * libm::atan(h / (w + straight)) + straight
}

#[test]
fn in_line() {
    let line = link([0.0, 0.0, 80.0], [0.0, 0.0, -1.0], 16.0);
    clear(&line, 80.0);
    assert_eq!(line.line.unwrap().pieces.len(), 1);
}

#[test]
fn nearly_in_line() {
    clear(&link([0.001, 0.0, 80.0], [0.0, 0.0, -1.0], 16.0), s_length(0.001, 80.0, 16.0));
}

#[test]
fn side_by_side() {
    clear(&link([50.0, 0.0, 0.0], [0.0, 0.0, 1.0], 16.0), PI * 16.0 + 18.0);
    // As close as the radius allows: one half turn.
    clear(&link([32.0, 0.0, 0.0], [0.0, 0.0, 1.0], 16.0), PI * 16.0);
}

#[test]
fn side_by_side_closer_than_the_radius_allows() {
    too_tight(&link([20.0, 0.0, 0.0], [0.0, 0.0, 1.0], 16.0), 10.0);
}

#[test]
fn facing_with_an_offset_closer_than_the_radius_allows() {
    // Two arcs with no straight between reach h aside in w: R = (w^2 + h^2) / (4 h).
    let (h, w): (f64, f64) = (30.0, 20.0);
    let largest = (w * w + h * h) / (4.0 * h);
    let fitting = largest * 0.99;
    clear(&link([h, 0.0, w], [0.0, 0.0, -1.0], fitting), s_length(h, w, fitting));
    too_tight(&link([h, 0.0, w], [0.0, 0.0, -1.0], 16.0), largest);
}

#[test]
fn back_to_back_on_one_axis() {
    // Out, round by half a turn, back past the start, round by half a turn.
    clear(&link([0.0, 0.0, -60.0], [0.0, 0.0, -1.0], 16.0), 2.0 * PI * 16.0 + 60.0);
}

#[test]
fn back_to_back_with_an_offset() {
    // Half turns in two planes: the straight runs back along the axis, so the offset costs nothing up to four radii.
    clear(&link([30.0, 0.0, -60.0], [0.0, 0.0, -1.0], 16.0), 2.0 * PI * 16.0 + 60.0);
}

#[test]
fn at_right_angles_in_one_plane() {
    // Just room for the bend: one quarter turn. With more room, turning towards the far port at once is shorter.
    clear(&link([16.0, 0.0, 16.0], [-1.0, 0.0, 0.0], 16.0), PI / 2.0 * 16.0);
    assert!(length(&link([40.0, 0.0, 50.0], [-1.0, 0.0, 0.0], 16.0)) < 40.0 + 50.0 - 32.0 + PI / 2.0 * 16.0);
}

#[test]
fn at_right_angles_in_space() {
    // Out along z, in along -x, 60 mm aside in y: in its own mirror (x and z swapped) the link is itself backwards, so
    // that both arcs turn alike and the straight's direction has equal parts along z and -x.
    let line = link([-60.0, 60.0, 60.0], [1.0, 0.0, 0.0], 16.0);
    assert_eq!(line.obstacles, []);
    let pieces = line.line.expect("a centreline").pieces;
    let angles: Vec<f64> = pieces.iter().filter_map(|piece| piece.radius().map(|r| piece.length / r)).collect();
    assert_eq!(angles.len(), 2);
    assert!((angles[0] - angles[1]).abs() < 1e-9, "{angles:?}");
    let straight = &pieces[2].direction;
    assert!((straight.z + straight.x).abs() < 1e-9, "{straight:?}");
}

#[test]
fn square_to_each_other_closer_than_the_radius_allows() {
    // The far lead end lies 13 mm to the wrong side: at this radius the tube would go nearly all the way round.
    let line = link([-13.0, 0.0, 17.0], [-1.0, 0.0, 0.0], 24.0);
    assert!(matches!(line.obstacles[..], [Obstacle::LinkTooTight { .. }]), "{:?}", line.obstacles);
    let largest = line.largest_run_radius.expect("a radius that fits");
    assert_eq!(link([-13.0, 0.0, 17.0], [-1.0, 0.0, 0.0], largest * 0.999).obstacles, []);
}

#[test]
fn no_radius_is_a_bad_radius_and_not_a_bad_link() {
    assert_eq!(link([60.0, 0.0, 0.0], [0.0, 0.0, 1.0], 0.0).obstacles, []);
}

/// The shortest link out along z from the origin, by the poses alone.
fn bare(to: [f64; 3], heading: [f64; 3], radius: f64) -> f64 {
    let from = Pose { at: Vec3::zeros(), heading: Vec3::z() };
    let to = Pose { at: Vec3::from(to), heading: Vec3::from(heading) };
    shortest_link(&from, &to, radius).expect("a link").length
}

fn same(found: f64, expected: f64) {
    assert!((found - expected).abs() < 1e-9 * expected, "{found} instead of {expected}");
}

#[test]
fn one_bend_and_a_straight() {
    // Turned by 1 towards x, then 30 mm on; and the same link walked from its other end.
    let (sin, cos) = libm::sincos(1.0);
    let corner = [16.0 * (1.0 - cos), 0.0, 16.0 * sin];
    same(bare([corner[0] + 30.0 * sin, 0.0, corner[2] + 30.0 * cos], [sin, 0.0, cos], 16.0), 16.0 + 30.0);
    same(bare([corner[0], 0.0, corner[2] + 30.0], [sin, 0.0, cos], 16.0), 16.0 + 30.0);
}

#[test]
fn side_by_side_closer_than_two_radii_goes_all_but_round_twice() {
    // The circles, both to the same hand, have centres 2 R - h apart: three quarters, straight across, three quarters.
    same(bare([20.0, 0.0, 0.0], [0.0, 0.0, -1.0], 16.0), 3.0 * PI * 16.0 + 32.0 - 20.0);
}

#[test]
fn back_to_back_four_radii_and_more_aside() {
    // The straight runs back and across: the S of two equal arcs, each of more than a quarter turn.
    for (h, w) in [(64.0, -60.0), (100.0, -60.0), (100.0, 0.0)] {
        let straight = f64::sqrt(w * w + h * h - 64.0 * h);
        same(bare([h, 0.0, w], [0.0, 0.0, 1.0], 16.0), 64.0 * libm::atan2(h, w + straight) + straight);
    }
}

#[test]
fn level_and_the_same_way_within_four_radii() {
    // Two half turns whose planes lean towards each other until they bridge the offset; nothing is left to go straight.
    same(bare([30.0, 0.0, 0.0], [0.0, 0.0, 1.0], 16.0), 2.0 * PI * 16.0);
}

#[test]
fn at_one_point() {
    // Turned by b on the spot: circles to the same hand have centres 2 R sin(b / 2) apart; round by 2 pi + b in all.
    assert_eq!(bare([0.0; 3], [0.0, 0.0, 1.0], 16.0), 0.0, "there already");
    for b in [1e-4, 0.4, PI / 2.0, 3.0, PI] {
        let (sin, cos) = libm::sincos(b);
        same(bare([0.0; 3], [sin, 0.0, cos], 16.0), 16.0 * (2.0 * PI + b + 2.0 * libm::sin(b / 2.0)));
    }
    // All ways round are as good as each other there, but for the rounding of what a link may miss by.
    let found = bare([0.0; 3], [1e-6, 0.0, 1.0], 16.0);
    assert!((found - 32.0 * PI).abs() < 1e-6 * 32.0 * PI, "{found}");
}

#[test]
fn square_in_space_like_its_own_mirror() {
    // Both arcs turn by the same angle a, so one unknown is left: the straight between the tangents' corners, each
    // R tan(a / 2) from its end, makes the angle a with either heading.
    let corners = |a: f64| {
        let ahead = 60.0 - 16.0 * libm::tan(a / 2.0);
        (ahead, libm::sqrt(2.0 * ahead * ahead + 3600.0))
    };
    let (mut low, mut high) = (0.0, PI / 2.0);
    for _ in 0..60 {
        let a = (low + high) / 2.0;
        let (ahead, apart) = corners(a);
        if libm::cos(a) > ahead / apart { low = a } else { high = a }
    }
    let expected = 32.0 * low + corners(low).1 - 32.0 * libm::tan(low / 2.0);
    same(bare([-60.0, 60.0, 60.0], [-1.0, 0.0, 0.0], 16.0), expected);
}

#[test]
fn far_apart_is_hardly_more_than_the_way() {
    // Ten kilometres: two quarter turns save nothing and cost (pi - 2) R, at right angles to the way.
    same(bare([1e7, 0.0, 0.0], [0.0, 0.0, -1.0], 16.0), 1e7 - 32.0 + PI * 16.0);
}

#[test]
fn the_same_way_too_close_for_an_s_goes_round() {
    // The circles, both to the same hand, have centres as far apart as the ends: a whole turn, and that far straight.
    same(bare([30.0, 0.0, 20.0], [0.0, 0.0, 1.0], 16.0), 2.0 * PI * 16.0 + 1300f64.sqrt());
}
