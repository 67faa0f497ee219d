//! Findings about tubes that come too close, at gaps known from plane geometry.

use crate::check_support::{all, codes, design, one, port, run, single};
use serde_json::{Value, json};
use tubewright_core::check::{Severity, words};

/// Two tubes of 12 mm that go up, over and down side by side, `pitch` apart along y.
fn side_by_side(pitch: f64) -> Value {
    let ports = [
        port("a", [0.0; 3], [0.0, 0.0, 1.0]),
        port("b", [120.0, 0.0, 0.0], [0.0, 0.0, 1.0]),
        port("c", [0.0, pitch, 0.0], [0.0, 0.0, 1.0]),
        port("d", [120.0, pitch, 0.0], [0.0, 0.0, 1.0]),
    ];
    let over = |y: f64| [[0.0, y, 70.0], [120.0, y, 70.0]];
    design(&ports, &[run("one", "a", "b", 24.0, &over(0.0)), run("two", "c", "d", 24.0, &over(pitch))])
}

#[test]
fn parallel_runs_at_known_gaps() {
    assert_eq!(codes(&side_by_side(30.0)), []);
    // Collars of 19 want 20: below that they are told as well.
    for (pitch, severity) in
        [(12.9, Severity::Care), (12.001, Severity::Care), (12.0, Severity::Stop), (9.0, Severity::Stop)]
    {
        let finding = one(&side_by_side(pitch), "meets_run");
        assert_eq!((finding.severity, finding.limit), (severity, Some(1.0)));
        assert!(finding.value.is_some_and(|gap| (gap - (pitch - 12.0)).abs() < 1e-9), "{finding:?}");
        assert_eq!(finding.run.as_deref(), Some("one"));
        let at = finding.at.unwrap();
        assert!((at[1] - pitch / 2.0).abs() < 1e-9, "{at:?}");
    }
    // Exactly the clearance is kept.
    assert_eq!(all(&side_by_side(13.0), "meets_run"), []);
    let message = words::message(&one(&side_by_side(12.5), "meets_run"));
    assert!(
        message.starts_with("one: the tube comes within 0.5 mm of “two”") && message.contains("from “c”"),
        "{message}"
    );
}

#[test]
fn skew_runs_cross_at_the_distance_of_the_formula() {
    // Straight runs along x and along y, 12.4 apart in z: a gap of 0.4, half way along both.
    let ports = [
        port("a", [-100.0, 0.0, 0.0], [1.0, 0.0, 0.0]),
        port("b", [100.0, 0.0, 0.0], [-1.0, 0.0, 0.0]),
        port("c", [0.0, -100.0, 12.4], [0.0, 1.0, 0.0]),
        port("d", [0.0, 100.0, 12.4], [0.0, -1.0, 0.0]),
    ];
    let design = design(&ports, &[run("x", "a", "b", 24.0, &[]), run("y", "c", "d", 24.0, &[])]);
    let finding = one(&design, "meets_run");
    assert!(finding.value.is_some_and(|gap| (gap - 0.4).abs() < 1e-12) && finding.severity == Severity::Care);
    let at = finding.at.unwrap();
    assert!(at[0].abs() < 1e-9 && at[1].abs() < 1e-9 && (at[2] - 6.2).abs() < 1e-9);
    // From the stop, 8 mm from the seat: 92 mm along both.
    assert!(
        finding.words.contains(&("along", "92 mm".into())) && finding.words.contains(&("along_other", "92 mm".into()))
    );
}

/// Up, over by `width`, down, away, and into a port below: the legs are `width` apart.
fn hairpin(width: f64, radius: f64) -> Value {
    let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [200.0, 0.0, 40.0], [-1.0, 0.0, 0.0])];
    let mut run = run("r", "a", "b", 24.0, &[[0.0, 0.0, 150.0], [width, 0.0, 150.0], [width, 0.0, 40.0]]);
    for corner in [0, 1] {
        run["route"][corner]["bend_radius"] = json!(radius);
    }
    design(&ports, &[run])
}

#[test]
fn legs_of_a_hairpin() {
    // Two bends of 6.2 leave legs 12.4 apart: a gap of 0.4; of 6.6 a gap of 1.2.
    let finding = one(&hairpin(12.4, 6.2), "meets_itself");
    assert_eq!(finding.severity, Severity::Care);
    assert!(finding.value.is_some_and(|gap| (gap - 0.4).abs() < 1e-9), "{finding:?}");
    assert_eq!(all(&hairpin(13.2, 6.6), "meets_itself"), []);
    // A wide bend is no meeting, however close its own points are.
    assert_eq!(all(&hairpin(60.0, 24.0), "meets_itself"), []);
}

#[test]
fn a_run_that_crosses_itself() {
    let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [-100.0, 5.0, 60.0], [1.0, 0.0, 0.0])];
    let corners = [[0.0, 0.0, 160.0], [80.0, 0.0, 160.0], [80.0, 5.0, 60.0]];
    let finding = one(&design(&ports, &[run("r", "a", "b", 24.0, &corners)]), "meets_itself");
    // The way back passes the way out at 5 mm between the middle lines: 7 mm into each other.
    assert_eq!(finding.severity, Severity::Stop);
    assert!(finding.value.is_some_and(|gap| (gap + 7.0).abs() < 1e-6), "{finding:?}");
    assert!(words::message(&finding).contains("runs into itself by 7 mm"));
}

#[test]
fn a_tube_past_another_ports_collar() {
    // A tube along x at z = 12 beside a fitting up z at y = 16.1: 16.1 - 9.5 - 6 = 0.6.
    let with = |y: f64| {
        let ports = [
            port("a", [-100.0, 0.0, 12.0], [1.0, 0.0, 0.0]),
            port("b", [100.0, 0.0, 12.0], [-1.0, 0.0, 0.0]),
            port("c", [0.0, y, 0.0], [0.0, 0.0, 1.0]),
        ];
        design(&ports, &[run("r", "a", "b", 24.0, &[])])
    };
    let finding = one(&with(16.1), "meets_fitting");
    assert!(finding.value.is_some_and(|gap| (gap - 0.6).abs() < 1e-9) && finding.severity == Severity::Care);
    let at = finding.at.unwrap();
    assert!(at[0].abs() < 1e-6 && (at[1] - 6.0).abs() < 1e-9, "{at:?}");
    assert_eq!(one(&with(15.5), "meets_fitting").severity, Severity::Stop);
    assert_eq!(all(&with(16.5), "meets_fitting"), []);
}

#[test]
fn a_tube_that_comes_back_beside_its_own_fitting() {
    // Up, over by 15 and down past the collar: 15 - 9.5 - 6 = -0.5.
    let with = |width: f64| {
        let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [width, 0.0, -100.0], [0.0, 0.0, 1.0])];
        let corners = [[0.0, 0.0, 60.0], [width, 0.0, 60.0]];
        design(&ports, &[run("r", "a", "b", width / 2.0, &corners)])
    };
    let finding = one(&with(15.0), "meets_fitting");
    assert_eq!(finding.severity, Severity::Stop);
    assert!(finding.value.is_some_and(|gap| (gap + 0.5).abs() < 1e-9), "{finding:?}");
    assert_eq!(all(&with(16.5), "meets_fitting"), []);
}

fn with_keep_out(shape: Value) -> Value {
    let mut design = single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, 60.0]]);
    shape.as_object().unwrap().iter().for_each(|(kind, solid)| {
        design["keep_outs"] = json!([{ "name": "bay", kind: solid }]);
    });
    design
}

#[test]
fn a_tube_over_the_corner_of_a_box() {
    // A box corner at (60, 4, 53): 4 beside and 7 below the middle line: sqrt(65) - 6 = 2.06.
    let bounds = |z: f64| json!({ "box": { "min": [30, 4, 20], "max": [60, 90, z] } });
    assert_eq!(all(&with_keep_out(bounds(53.0)), "meets_keep_out"), []);
    let finding = one(&with_keep_out(bounds(54.5)), "meets_keep_out");
    let gap = libm::hypot(4.0, 5.5) - 6.0;
    assert!(finding.value.is_some_and(|value| (value - gap).abs() < 1e-9) && finding.severity == Severity::Care);
    // Through it: the middle line is 4 deep at most under the top, so the skin is 10 deep.
    let finding =
        one(&with_keep_out(json!({ "box": { "min": [30, -40, 20], "max": [60, 40, 64] } })), "meets_keep_out");
    assert!(finding.value.is_some_and(|value| (value + 10.0).abs() < 1e-6) && finding.severity == Severity::Stop);
    assert!(words::message(&finding).contains("“bay” by 10 mm"));
}

#[test]
fn a_bend_round_a_cylinder() {
    // Inside the bend about (24, y, 36): a rod of radius 17.5 leaves 24 - 17.5 - 6 = 0.5, one of 17 leaves 1.
    let rod = |radius: f64| json!({ "cylinder": { "from": [24, -50, 36], "to": [24, 50, 36], "radius": radius } });
    let finding = one(&with_keep_out(rod(17.5)), "meets_keep_out");
    assert!(finding.value.is_some_and(|gap| (gap - 0.5).abs() < 1e-9), "{finding:?}");
    assert_eq!(all(&with_keep_out(rod(17.0)), "meets_keep_out"), []);
}

#[test]
fn the_part_that_a_port_is_in_is_no_obstacle_to_its_fitting() {
    // The port's own block under the seat, and the same block a little higher.
    let block = |top: f64| json!({ "box": { "min": [-30, -30, -40], "max": [30, 30, top] } });
    assert_eq!(codes(&with_keep_out(block(0.0))), []);
    // A tube that comes back to the block is told all the same.
    let mut back =
        single([100.0, 0.0, -30.0], [-1.0, 0.0, 0.0], 16.0, &[[0.0, 0.0, 60.0], [50.0, 0.0, 60.0], [50.0, 0.0, -30.0]]);
    back["keep_outs"] = json!([{ "name": "block", "box": { "min": [-30, -30, -40], "max": [45, 30, 0] } }]);
    // Down at x = 50 beside the block's side at x = 45: 5 - 6 = -1.
    let finding = one(&back, "meets_keep_out");
    assert_eq!((finding.severity, finding.value), (Severity::Stop, Some(-1.0)));
}

#[test]
fn fittings_close_together() {
    // Collars of 19 mm at 19.4 leave 0.4, at both ends; a collar into a keep-out of another part.
    let found = all(&side_by_side(19.4), "fittings_close");
    assert_eq!(found.iter().map(|f| f.place.as_str()).collect::<Vec<_>>(), ["/ports/2", "/ports/3"]);
    for finding in &found {
        assert!(finding.value.is_some_and(|gap| (gap - 0.4).abs() < 1e-5), "{finding:?}");
        assert_eq!((finding.severity, finding.limit), (Severity::Care, Some(1.0)));
    }
    assert_eq!(all(&side_by_side(20.0), "fittings_close"), []);
    let beside = with_keep_out(json!({ "box": { "min": [-40, 10, -5], "max": [40, 60, 30] } }));
    let finding = one(&beside, "fitting_meets_keep_out");
    assert!(finding.value.is_some_and(|gap| (gap - 0.5).abs() < 1e-5), "{finding:?}");
}
