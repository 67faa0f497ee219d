//! How stiff tubes go into their sockets. Expected values are plane geometry: a tube in a socket slides along its line.

use crate::check_support::{Random, all, design, fitting, mends, one, port, run};
use nalgebra::Vector3;
use serde_json::{Value, json};
use tubewright_core::check::{Finding, Severity};

fn word<'f>(finding: &'f Finding, name: &str) -> &'f str {
    finding.words.iter().find(|(key, _)| *key == name).map_or("", |(_, word)| word)
}

/// Sockets 10 deep at the start, `depth` deep at the end.
fn with_depth(mut design: Value, depth: f64) -> Value {
    let mut deep = fitting("deep");
    deep["socket_depth"] = json!(depth);
    design["fittings"].as_array_mut().unwrap().push(deep);
    design["ports"][1]["fitting"] = json!("deep");
    design
}

/// A tube up out of one port, across and down into another, `lower` mm lower.
fn bridge(lower: f64) -> Value {
    let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [120.0, 0.0, -lower], [0.0, 0.0, 1.0])];
    design(&ports, &[run("r", "a", "b", 24.0, &[[0.0, 0.0, 70.0], [120.0, 0.0, 70.0]])])
}

/// A link between two ports that face any way.
fn linked(end: [f64; 3], facings: [[f64; 3]; 2]) -> Value {
    let ports = [port("a", [0.0; 3], facings[0]), port("b", end, facings[1])];
    design(&ports, &[run("r", "a", "b", 24.0, &[])])
}

#[test]
fn ends_that_leave_the_same_way_go_in_at_once_by_the_deeper_socket() {
    for (lower, depth, travel) in [(0.0, 10.0, 10.0), (0.0, 14.0, 14.0), (33.0, 6.0, 10.0)] {
        let finding = one(&with_depth(bridge(lower), depth), "goes_straight_in");
        assert_eq!((finding.severity, finding.value), (Severity::Note, Some(travel)));
    }
    // Trim is cut off before the tube goes in.
    let mut trimmed = bridge(0.0);
    trimmed["runs"][0]["ends"] = json!({ "trim": 4 });
    assert_eq!(one(&trimmed, "goes_straight_in").value, Some(10.0));
}

#[test]
fn within_a_degree_is_the_same_way() {
    let tilted = |degrees: f64| {
        let mut design = bridge(0.0);
        let (sin, cos) = libm::sincos(degrees.to_radians());
        design["ports"][1]["facing"] = json!([0.0, sin, cos]);
        design
    };
    assert_eq!(all(&tilted(0.99), "goes_straight_in").len(), 1);
    assert_eq!(all(&tilted(1.01), "part_stands_back").len(), 1);
}

#[test]
fn at_right_angles_the_part_with_the_shallower_socket_comes_last() {
    let square = |depth: f64| {
        let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [100.0, 0.0, 60.0], [-1.0, 0.0, 0.0])];
        with_depth(design(&ports, &[run("r", "a", "b", 24.0, &[[0.0, 0.0, 60.0]])]), depth)
    };
    let finding = one(&square(8.0), "part_stands_back");
    assert_eq!((finding.severity, finding.value), (Severity::Note, Some(8.0)));
    assert_eq!(["first", "last", "instead"].map(|name| word(&finding, name)), ["“a”", "“b”", "10 mm"]);
    let finding = one(&square(13.0), "part_stands_back");
    assert_eq!(finding.value, Some(10.0));
    assert_eq!(["first", "last", "instead"].map(|name| word(&finding, name)), ["“b”", "“a”", "13 mm"]);
    assert!(word(&finding, "relation").contains("90°"));
    let finding = one(&square(10.0), "part_stands_back");
    assert_eq!((word(&finding, "either"), finding.value), ("either of “a” and “b”", Some(10.0)));
}

#[test]
fn facing_each_other_the_part_stands_back_by_both_sockets() {
    // In line, and side by side: either way the tube comes in through where the other fitting stands.
    for aside in [0.0, 60.0] {
        let design = with_depth(linked([aside, 0.0, 220.0], [[0.0, 0.0, 1.0], [0.0, 0.0, -1.0]]), 7.0);
        let finding = one(&design, "part_stands_back");
        assert_eq!((finding.severity, finding.value), (Severity::Note, Some(17.0)));
        assert!(word(&finding, "relation").contains("opposite"));
    }
}

#[test]
fn any_two_ends_stand_back_by_what_following_the_tube_says() {
    let mut random = Random(0xa55e);
    let mut seen = 0;
    while seen < 40 {
        let mut direction = || Vector3::from([0; 3].map(|_| random.in_range(-1.0, 1.0))).normalize();
        let [a, b] = [direction(), direction()];
        let depths = [10.0, random.in_range(4.0, 16.0)];
        let design = with_depth(linked([160.0, 90.0, 130.0], [a.into(), b.into()]), depths[1]);
        let Some(finding) = all(&design, "part_stands_back").pop() else { continue };
        seen += 1;
        // The tube comes home along the first end's line; at every moment the face of its other end must be outside
        // the rim of the fitting there, which stands back from its mouth.
        let back = |[first, last]: [Vector3<f64>; 2], [deep, other]: [f64; 2]| {
            (0..=1000)
                .map(|step| {
                    let face = -last * other + first * (deep * f64::from(step) / 1000.0);
                    -face.dot(&last)
                })
                .fold(f64::NEG_INFINITY, f64::max)
        };
        let least = back([a, b], depths).min(back([b, a], [depths[1], depths[0]]));
        assert!(finding.value.is_some_and(|value| (value - least).abs() < 1e-9), "{finding:?}, not {least}");
    }
}

#[test]
fn what_stands_over_a_tube_is_struck_on_the_way_in() {
    // The bridge's top is at 70 + 6; 5 mm above it hangs a bar. The tube stands off by 10.
    let hung = |gap: f64| {
        let mut design = bridge(0.0);
        design["keep_outs"] = json!([{ "name": "bar", "box": { "min": [50, -40, 76.0 + gap], "max": [70, 40, 120] } }]);
        design
    };
    let finding = one(&hung(5.0), "strikes_going_in");
    assert_eq!((finding.severity, word(&finding, "what")), (Severity::Care, "“bar”"));
    assert!(finding.value.is_some_and(|depth| (depth - 5.0).abs() < 1e-6), "{finding:?}");
    assert_eq!(all(&hung(10.0), "strikes_going_in"), []);
    assert_eq!(all(&hung(-1.0), "strikes_going_in"), [], "what the tube meets when home is another finding");
    // Something beside its way is not struck.
    let mut design = hung(5.0);
    design["keep_outs"][0]["box"] = json!({ "min": [50, 8, 60], "max": [70, 40, 120] });
    assert_eq!(all(&design, "strikes_going_in"), []);
}

#[test]
fn of_two_ways_the_one_with_nothing_in_it_is_taken() {
    let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [120.0, 0.0, 70.0], [-1.0, 0.0, 0.0])];
    let free = with_depth(design(&ports, &[run("r", "a", "b", 24.0, &[[0.0, 0.0, 70.0]])]), 9.0);
    assert_eq!(word(&one(&free, "part_stands_back"), "first"), "“a”");
    let mut low = free.clone();
    // Above the level leg: pushed home at a, the tube comes down through it.
    low["keep_outs"] = json!([{ "name": "shelf", "box": { "min": [40, -40, 79], "max": [60, 40, 90] } }]);
    let finding = one(&low, "part_stands_back");
    assert_eq!((word(&finding, "first"), finding.value), ("“b”", Some(10.0)));
    assert_eq!(
        [word(&finding, "instead"), word(&finding, "either")],
        ["", ""],
        "the way that is not free is not offered"
    );
    assert_eq!(all(&low, "strikes_going_in"), []);
    // And beside the standing leg, where it comes from when b is first: now neither way is free.
    low["keep_outs"]
        .as_array_mut()
        .unwrap()
        .push(json!({ "name": "post", "box": { "min": [-30, -40, 35], "max": [-9, 40, 45] } }));
    assert_eq!(all(&low, "strikes_going_in").len(), 1);
}

#[test]
fn ports_on_one_part_cannot_stand_back_from_each_other() {
    let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [100.0, 0.0, 60.0], [-1.0, 0.0, 0.0])];
    let mut one_part = design(&ports, &[run("r", "a", "b", 24.0, &[[0.0, 0.0, 60.0]])]);
    one_part["keep_outs"] = json!([
        { "name": "floor", "box": { "min": [-30, -30, -20], "max": [130, 30, 0] } },
        { "name": "body", "box": { "min": [-30, -30, -20], "max": [0, 30, 0] } },
    ]);
    assert_eq!(all(&one_part, "both_on_one_part"), []);
    one_part["ports"][1]["at"] = json!([100, 0, 0]);
    one_part["ports"][1]["facing"] = json!([-1, 0, 1]);
    one_part["runs"][0]["route"] = json!([]);
    let finding = one(&one_part, "both_on_one_part");
    assert_eq!((finding.severity, word(&finding, "keep_out")), (Severity::Care, "“floor”"));
    assert_eq!(all(&one_part, "part_stands_back"), []);
}

#[test]
fn a_tube_under_another_goes_in_before_it_and_straight_ones_last() {
    // An outer bridge over an inner one, 5 mm between their skins, listed first; and a tube at right angles.
    let ports = [
        port("a", [0.0; 3], [0.0, 0.0, 1.0]),
        port("b", [160.0, 0.0, 0.0], [0.0, 0.0, 1.0]),
        port("c", [40.0, 0.0, 0.0], [0.0, 0.0, 1.0]),
        port("d", [120.0, 0.0, 0.0], [0.0, 0.0, 1.0]),
        port("e", [0.0, 200.0, 0.0], [0.0, 0.0, 1.0]),
        port("f", [100.0, 200.0, 60.0], [-1.0, 0.0, 0.0]),
    ];
    let over = |height: f64| run("outer", "a", "b", 24.0, &[[0.0, 0.0, height], [160.0, 0.0, height]]);
    let inner = run("inner", "c", "d", 24.0, &[[40.0, 0.0, 60.0], [120.0, 0.0, 60.0]]);
    let square = run("square", "e", "f", 24.0, &[[0.0, 200.0, 60.0]]);
    let order = |height: f64| one(&design(&ports, &[over(height), inner.clone(), square.clone()]), "order_of_assembly");
    let finding = order(77.0);
    assert_eq!(word(&finding, "order"), "“square”, “inner”, then “outer”");
    assert_eq!(word(&finding, "dropping"), "“inner” and “outer” go");
    // With more room than the inner one stands off, the list's order holds.
    assert_eq!(word(&order(84.0), "order"), "“square”, “outer”, then “inner”");
    // One tube has no order.
    assert_eq!(all(&bridge(0.0), "order_of_assembly"), []);
}

#[test]
fn tubes_in_each_others_way_have_no_order() {
    // A bridge standing and one hanging across it, their tops 4 mm apart: each comes in through the other.
    let ports = [
        port("a", [0.0; 3], [0.0, 0.0, 1.0]),
        port("b", [120.0, 0.0, 0.0], [0.0, 0.0, 1.0]),
        port("c", [60.0, -60.0, 156.0], [0.0, 0.0, -1.0]),
        port("d", [60.0, 60.0, 156.0], [0.0, 0.0, -1.0]),
    ];
    let runs = |low: f64| {
        let standing = run("standing", "a", "b", 24.0, &[[0.0, 0.0, 70.0], [120.0, 0.0, 70.0]]);
        let hanging = run("hanging", "c", "d", 24.0, &[[60.0, -60.0, low], [60.0, 60.0, low]]);
        design(&ports, &[standing, hanging])
    };
    let finding = one(&runs(86.0), "no_order");
    assert_eq!((finding.severity, word(&finding, "runs")), (Severity::Care, "“standing” and “hanging”"));
    assert_eq!(all(&runs(94.0), "no_order"), []);
    assert_eq!(all(&runs(94.0), "order_of_assembly").len(), 1);
}

#[test]
fn trim_covers_what_the_ports_may_be_off_by_or_does_not() {
    let with = |mut design: Value, measured: [f64; 2], trim: f64| {
        design["ports"][0]["measured_to"] = json!(measured[0]);
        design["ports"][1]["measured_to"] = json!(measured[1]);
        design["runs"][0]["ends"] = json!({ "trim": trim });
        design
    };
    let square = || {
        let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", [100.0, 0.0, 60.0], [-1.0, 0.0, 0.0])];
        design(&ports, &[run("r", "a", "b", 24.0, &[[0.0, 0.0, 60.0]])])
    };
    // At right angles each end takes all of its own line's error: 0.8 + 0.7.
    let short = with(square(), [0.8, 0.7], 0.0);
    let finding = one(&short, "trim_short");
    assert_eq!((finding.severity, finding.value, finding.limit), (Severity::Note, Some(0.0), Some(1.5)));
    let after: Value = serde_json::from_str(&mends(&short.to_string(), &finding)).unwrap();
    assert_eq!(after["runs"][0]["ends"]["trim"], 1.5);
    assert_eq!(one(&after, "trim_covers").value, Some(1.5));
    assert_eq!(one(&with(square(), [0.8, 0.7], 1.0), "trim_short").limit, Some(1.5));
    // A millimetre short of the stop is no matter where no trim is wanted.
    assert_eq!(all(&with(square(), [0.5, 0.5], 0.0), "trim_short"), []);
    assert_eq!(one(&with(square(), [0.5, 0.5], 0.9), "trim_short").limit, Some(1.0));

    // In line both ends share it; leaving the same way, cutting the other end does it.
    let opposed = || linked([0.0, 0.0, 220.0], [[0.0, 0.0, 1.0], [0.0, 0.0, -1.0]]);
    assert_eq!(one(&with(opposed(), [1.5, 1.5], 0.0), "trim_short").limit, Some(1.5));
    assert_eq!(all(&with(opposed(), [1.0, 1.0], 0.0), "trim_short"), []);
    assert_eq!(all(&with(bridge(0.0), [3.0, 3.0], 0.0), "trim_short"), []);
}
