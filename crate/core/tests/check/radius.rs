//! Findings about bend radii and room for bends. Expected values are closed forms of plane geometry: a corner of angle
//! t takes R tan(t / 2) of both its straights (the trade's tangent length).

use crate::check_support::{all, codes, design, mends, one, port, run, single};
use serde_json::{Value, json};
use tubewright_core::check::Severity;

/// Up, across, and into a port that faces back: two right angles, 60 mm apart.
fn square(radius: f64) -> Value {
    single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], radius, &[[0.0, 0.0, 60.0]])
}

#[test]
fn a_good_run_has_no_findings() {
    assert_eq!(codes(&square(24.0)), []);
}

#[test]
fn a_radius_of_half_the_diameter_or_less_stops_and_names_the_least() {
    for radius in [0.0, 3.0, 6.0] {
        let bad = square(radius);
        let finding = one(&bad, "bend_radius");
        assert_eq!((finding.severity, finding.place.as_str()), (Severity::Stop, "/runs/0/bend_radius"));
        assert_eq!((finding.value, finding.limit), (Some(radius), Some(6.001)));
        let after = mends(&bad.to_string(), &finding);
        // Twice the outer diameter is usual and fits here.
        assert_eq!(serde_json::from_str::<Value>(&after).unwrap()["runs"][0]["bend_radius"].as_f64(), Some(24.0));
    }
    assert_eq!(codes(&square(6.001)), [("bend_tight", Severity::Note)]);
}

#[test]
fn each_corner_is_held_against_its_own_radius() {
    let mut bad = single([100.0, 80.0, 60.0], [0.0, -1.0, 0.0], 24.0, &[[0.0, 0.0, 60.0], [100.0, 0.0, 60.0]]);
    bad["runs"][0]["route"][1]["bend_radius"] = json!(5);
    let finding = one(&bad, "bend_radius");
    assert_eq!(finding.place, "/runs/0/route/1/bend_radius");
    mends(&bad.to_string(), &finding);
    bad["runs"][0]["bend_radius"] = json!(4);
    assert_eq!(all(&bad, "bend_radius").len(), 2);
    bad["runs"][0]["route"][0]["bend_radius"] = json!(20);
    // Now no bend has the run's own radius, so it does no harm.
    assert_eq!(all(&bad, "bend_radius").len(), 1);
}

#[test]
fn a_tight_radius_is_noted_with_the_trades_source() {
    let finding = one(&square(11.0), "bend_tight");
    assert_eq!((finding.severity, finding.limit), (Severity::Note, Some(12.0)));
    assert_eq!(finding.source, "common practice, no source");
    mends(&square(11.0).to_string(), &finding);
}

#[test]
fn corners_too_close_name_the_largest_radius() {
    // Two right angles 40 mm apart: 2 R <= 40.
    let bad = single([200.0, 0.0, 60.0], [0.0, 0.0, 1.0], 24.0, &[[0.0, 0.0, 140.0], [200.0, 0.0, 140.0]]);
    assert_eq!(codes(&bad), []);
    let bad = single([40.0, 0.0, 60.0], [0.0, 0.0, 1.0], 24.0, &[[0.0, 0.0, 140.0], [40.0, 0.0, 140.0]]);
    let finding = one(&bad, "corners_too_close");
    assert_eq!((finding.severity, finding.value), (Severity::Stop, Some(40.0)));
    assert!(finding.limit.is_some_and(|need| (need - 48.0).abs() < 1e-9));
    let after: Value = serde_json::from_str(&mends(&bad.to_string(), &finding)).unwrap();
    assert_eq!(after["runs"][0]["route"][0]["bend_radius"].as_f64(), Some(20.0));
    assert_eq!(after["runs"][0]["route"][1]["bend_radius"].as_f64(), Some(20.0));
}

#[test]
fn the_proposed_radius_is_rounded_down() {
    // Two corners of 60 degrees, 31 mm apart: R = 31 / (2 tan 30) = 26.8467..., rounded down to 26.846.
    let (c, s) = (31.0 * 0.5, 31.0 * 3.0_f64.sqrt() / 2.0);
    let corners = [[0.0, 0.0, 100.0], [s, 0.0, 100.0 + c]];
    let bad = single([s + 80.0 * s / 31.0, 0.0, 100.0 + c - 80.0 * c / 31.0], [-s, 0.0, c], 60.0, &corners);
    let finding = one(&bad, "corners_too_close");
    let after: Value = serde_json::from_str(&mends(&bad.to_string(), &finding)).unwrap();
    assert_eq!(after["runs"][0]["route"][0]["bend_radius"].as_f64(), Some(26.846));
}

#[test]
fn where_no_radius_fits_the_distance_to_move_is_named() {
    // Two right angles 10 mm apart would need R = 5; the least is 6.001, which wants 12.002 mm.
    let bad = single([10.0, 0.0, -10.0], [0.0, 0.0, 1.0], 12.0, &[[0.0, 0.0, 60.0], [10.0, 0.0, 60.0]]);
    let finding = one(&bad, "corners_too_close");
    assert_eq!(finding.fix, None);
    let message = tubewright_core::check::words::message(&finding);
    assert!(message.contains("at least 12.002 mm apart"), "{message}");
}

#[test]
fn a_short_lead_names_the_radius_that_keeps_it() {
    // The corner is 42 above the seat, mouth at 18, lead 5: 19 mm are left for the right angle.
    let bad = single([100.0, 0.0, 42.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, 42.0]]);
    let finding = one(&bad, "lead_too_short");
    assert_eq!((finding.severity, finding.limit), (Severity::Stop, Some(5.0)));
    assert!(finding.value.is_some_and(|left| left.abs() < 1e-9));
    let after: Value = serde_json::from_str(&mends(&bad.to_string(), &finding)).unwrap();
    assert_eq!(after["runs"][0]["route"][0]["bend_radius"].as_f64(), Some(19.0));
}

#[test]
fn a_short_lead_with_room_for_no_radius_moves_the_corner_out() {
    let mut bad = single([100.0, 0.0, 28.0], [-1.0, 0.0, 0.0], 8.0, &[[0.0, 0.0, 28.0], [40.0, 0.0, 28.0]]);
    bad["runs"][0]["route"][0]["corner"][2] = json!({ "of": "a", "plus": 28 });
    let finding = one(&bad, "lead_too_short");
    let after: Value = serde_json::from_str(&mends(&bad.to_string(), &finding)).unwrap();
    // Left 2 of 5. Moved out by d, the way on to (40, 28) falls by d: 8 tan((90 + atan(d / 40)) / 2) + 23 = 28 + d.
    let plus = after["runs"][0]["route"][0]["corner"][2]["plus"].as_f64().unwrap();
    let d = plus - 28.0;
    let t = 8.0 * libm::tan((core::f64::consts::FRAC_PI_2 + libm::atan2(d, 40.0)) / 2.0);
    assert!((t + 23.0 - plus).abs() < 2e-3 && t + 23.0 <= plus, "{plus}");
    // The tie to the port is kept.
    assert_eq!(after["runs"][0]["route"][0]["corner"][2]["of"], json!("a"));
}

#[test]
fn a_corner_inside_the_joining_bend_names_the_radius_that_reaches_it() {
    // Beside the lead's end (0, 0, 23) by 20 and up by 2: R = (400 + 4) / 40 = 10.1.
    let bad = single([120.0, 0.0, 90.0], [-1.0, 0.0, 0.0], 24.0, &[[20.0, 0.0, 25.0], [70.0, 0.0, 90.0]]);
    let finding = one(&bad, "corner_out_of_reach");
    assert_eq!((finding.severity, finding.value, finding.limit), (Severity::Stop, Some(24.0), Some(10.1)));
    mends(&bad.to_string(), &finding);
}

#[test]
fn a_station_that_repeats_is_taken_out() {
    let bad = single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, 60.0], [0.0, 0.0, 60.0]]);
    let finding = one(&bad, "same_point");
    assert_eq!((finding.severity, finding.place.as_str()), (Severity::Stop, "/runs/0/route/1"));
    let after: Value = serde_json::from_str(&mends(&bad.to_string(), &finding)).unwrap();
    assert_eq!(after["runs"][0]["route"].as_array().unwrap().len(), 1);
}

#[test]
fn a_corner_that_turns_back_is_taken_out() {
    let corners = [[0.0, 0.0, 60.0], [60.0, 0.0, 60.0], [30.0, 0.0, 60.0], [30.0, 80.0, 60.0]];
    let bad = single([100.0, 80.0, 60.0], [-1.0, 0.0, 0.0], 12.0, &corners);
    let finding = one(&bad, "turns_back");
    assert_eq!((finding.severity, finding.place.as_str()), (Severity::Stop, "/runs/0/route/1"));
    mends(&bad.to_string(), &finding);
}

#[test]
fn a_link_that_must_loop_names_the_radius_that_need_not() {
    // Two ports side by side, 30 apart, both up: half a turn of R = 15 joins them.
    let bad = single([30.0, 0.0, 0.0], [0.0, 0.0, 1.0], 16.0, &[]);
    let finding = one(&bad, "link_too_tight");
    assert!(finding.limit.is_some_and(|limit| (14.9..=15.0).contains(&limit)), "{finding:?}");
    mends(&bad.to_string(), &finding);
    // 11 apart no tube of 12 goes from one to the other by half a turn.
    let hopeless = single([11.0, 0.0, 0.0], [0.0, 0.0, 1.0], 16.0, &[]);
    assert_eq!(one(&hopeless, "link_too_tight").fix, None);
}

#[test]
fn a_joining_bend_of_more_than_half_a_turn_is_told_once() {
    // The corner is below the lead's end and 40 beside it: up to R = 20 half a turn reaches it.
    let bad = single([150.0, 0.0, -80.0], [-1.0, 0.0, 0.0], 24.0, &[[40.0, 0.0, -80.0]]);
    let finding = one(&bad, "loops");
    assert_eq!(finding.severity, Severity::Care);
    assert!(finding.value.is_some_and(|angle| angle > 180.0 && angle < 220.0));
    let after: Value = serde_json::from_str(&mends(&bad.to_string(), &finding)).unwrap();
    assert_eq!(after["runs"][0]["bend_radius"].as_f64(), Some(20.0));
}

#[test]
fn a_fix_that_would_bring_another_stop_is_not_offered() {
    // The usual radius of 24 has no room before the next port; the least one has.
    let bad = single([30.0, 0.0, 40.0], [-1.0, 0.0, 0.0], 3.0, &[[0.0, 0.0, 40.0]]);
    let finding = all(&bad, "bend_radius").remove(0);
    let fixed = finding.fix.unwrap();
    let radius = fixed[0].value.as_ref().and_then(Value::as_f64).unwrap();
    // The port's mouth is at x = 12 and its lead ends at 7.
    assert!((6.001..=7.0).contains(&radius), "{radius}");
}

#[test]
fn two_runs_are_judged_each_for_itself() {
    let ports = [
        port("a", [0.0; 3], [0.0, 0.0, 1.0]),
        port("b", [100.0, 0.0, 60.0], [-1.0, 0.0, 0.0]),
        port("c", [0.0, 80.0, 0.0], [0.0, 0.0, 1.0]),
        port("d", [100.0, 80.0, 60.0], [-1.0, 0.0, 0.0]),
    ];
    let runs = [run("one", "a", "b", 5.0, &[[0.0, 0.0, 60.0]]), run("two", "c", "d", 24.0, &[[0.0, 80.0, 60.0]])];
    let finding = one(&design(&ports, &runs), "bend_radius");
    assert_eq!(finding.run.as_deref(), Some("one"));
}
