//! Smooth curves: through their points, along their headings, of continuous curvature, never looping; and what is said
//! of one that is too tight.

use crate::shapes_support::{check_whole, design, drawn, fixed, found, line};
use serde_json::{Value, json};
use tubewright_core::centreline::{Centreline, Shape};
use tubewright_core::layout::Vec3;
use tubewright_core::strategies::Chance;

fn past(points: &[[f64; 3]]) -> Value {
    let route: Vec<Value> = points.iter().map(|point| json!({ "through": point })).collect();
    design(([0.0, 0.0, 0.0], [0.0, 0.0, 1.0]), ([160.0, 40.0, 20.0], [0.0, 0.0, 1.0]), route.into())
}

/// Nearest distance of a point to the curve by sampling and parabolas.
fn distance(line: &Centreline, point: &Vec3) -> f64 {
    let at = |s: f64| (line.at(s).point - point).norm_squared();
    let step = line.length / 20_000.0;
    let near = (0..=20_000).map(|i| f64::from(i) * step).min_by(|a, b| at(*a).total_cmp(&at(*b))).unwrap();
    let (mut low, mut high) = (near - step, near + step);
    for _ in 0..80 {
        let third = (high - low) / 3.0;
        if at(low + third) < at(high - third) { high -= third } else { low += third }
    }
    at((low + high) / 2.0).sqrt()
}

#[test]
fn passes_its_points_and_keeps_its_curvature() {
    for points in [
        vec![[60.0, 30.0, 90.0]],
        vec![[20.0, 50.0, 80.0], [70.0, 0.0, 110.0], [120.0, 60.0, 90.0]],
        vec![[5.0, 5.0, 60.0], [70.0, 70.0, 160.0], [75.0, 72.0, 158.0], [150.0, 40.0, 90.0]],
    ] {
        let line = line(&past(&points));
        check_whole(&line);
        for point in &points {
            assert!(distance(&line, &Vec3::from(*point)) < 1e-6, "{point:?}");
        }
        // From piece to piece of the curve the curvature vector goes on.
        for pair in line.pieces.windows(2) {
            if let [Shape::Curve(_), Shape::Curve(_)] = [&pair[0].shape, &pair[1].shape] {
                let (before, after) = (pair[0].at(pair[0].length).curvature, pair[1].at(0.0).curvature);
                assert!((before - after).norm() < 1e-8 * (1.0 + before.norm()), "{}", (before - after).norm());
            }
        }
        let sampled =
            (0..=50_000).map(|i| line.at(line.length * f64::from(i) / 50_000.0).curvature.norm()).fold(0f64, f64::max);
        let told = 1.0 / line.tightest_radius();
        assert!(sampled <= told * (1.0 + 1e-9) && sampled >= told * (1.0 - 1e-4), "{sampled} {told}");
    }
}

#[test]
fn a_straight_row_of_points_is_a_straight_tube() {
    let route = json!([{ "through": [0, 0, 60] }, { "through": [0, 0, 100] }]);
    let straight = design(([0.0, 0.0, 0.0], [0.0, 0.0, 1.0]), ([0.0, 0.0, 200.0], [0.0, 0.0, -1.0]), route);
    let line = line(&straight);
    assert_eq!(line.pieces.len(), 1);
    assert!((line.length - (200.0 - 2.0 * 8.0)).abs() < 1e-9);
}

#[test]
fn joins_corners_and_coils_tangentially() {
    let route = json!([{ "corner": [0, 0, 80] }, { "through": [70, 20, 90] }, { "corner": [120, 60, 120] },
        { "coil": { "centre": [250, 60, 120], "axis": [0, 0, 1], "radius": 40, "pitch": 20, "turns": 1, "start_deg": 180 } },
        { "through": [300, 0, 160] }, { "through": [330, 60, 150] }]);
    let line = line(&design(([0.0, 0.0, 0.0], [0.0, 0.0, 1.0]), ([400.0, 40.0, 20.0], [0.0, 0.0, 1.0]), route));
    check_whole(&line);
    for point in [[70.0, 20.0, 90.0], [300.0, 0.0, 160.0], [330.0, 60.0, 150.0]] {
        assert!(distance(&line, &Vec3::from(point)) < 1e-6);
    }
}

/// Points at random, near and far mixed: the curve turns at most half a turn more than the straights between its points
/// do, so it never loops, and is never longer than a little more than half as long again.
#[test]
fn never_loops() {
    let mut chance = Chance::of(7);
    for _ in 0..1_500 {
        let count = 1 + (chance.from(0.0, 5.0) as usize);
        let points: Vec<[f64; 3]> = (0..count)
            .map(|_| {
                let spread = chance.pick(&[20.0, 150.0, 150.0]);
                [0.0, 0.0, 40.0].map(|least| least + chance.from(0.0, spread))
            })
            .collect();
        let design = past(&points);
        let drawn = drawn(&design);
        let Some(line) = drawn.line else { continue };
        let nodes = &drawn.skeleton;
        let straights =
            |from: usize, to: usize| -> f64 { nodes[from..to].windows(2).map(|pair| (pair[1] - pair[0]).norm()).sum() };
        assert!(line.length < 1.7 * straights(0, nodes.len()), "{points:?}");
        let ways: Vec<Vec3> = nodes.windows(2).map(|pair| pair[1] - pair[0]).collect();
        let asked: f64 =
            ways.windows(2).map(|pair| libm::atan2(pair[0].cross(&pair[1]).norm(), pair[0].dot(&pair[1]))).sum();
        let turned: f64 = line.pieces.iter().map(tubewright_core::centreline::Piece::turned).sum();
        assert!(turned - asked < core::f64::consts::PI, "{points:?}");
    }
}

#[test]
fn too_tight_a_curve_names_the_point_to_move_and_how_far() {
    let sharp = past(&[[60.0, 20.0, 80.0], [66.0, 22.0, 150.0], [72.0, 24.0, 80.0]]);
    let findings = found(&sharp, "curve_tight");
    let finding = &findings[0];
    assert_eq!(finding["severity"], "stop");
    let told = line(&sharp).tightest_radius();
    assert!((finding["value"].as_f64().unwrap() - told).abs() < 1e-9 && told < 6.0, "{finding}");
    assert!(finding["message"].as_str().unwrap().contains("Move point"), "{finding}");
    let mended = fixed(&sharp, finding);
    assert_eq!(found(&mended, "curve_tight"), Vec::<Value>::new());
    assert!(line(&mended).tightest_radius() > 6.0);
}

#[test]
fn points_in_one_place_are_told() {
    let twice = past(&[[60.0, 20.0, 80.0], [60.0, 20.0, 80.0], [100.0, 24.0, 80.0]]);
    let finding = &found(&twice, "same_point")[0];
    assert_eq!(finding["where"], "/runs/0/route/1");
    assert_eq!(found(&fixed(&twice, finding), "same_point"), Vec::<Value>::new());
    // A cusp: out to a point and straight back.
    let cusp = past(&[[0.0, 0.0, 120.0], [0.0, 0.0, 60.0], [0.0, 0.0, 119.0]]);
    let report = crate::shapes_support::report(&cusp);
    assert!(report["findings"].as_array().unwrap().iter().any(|finding| finding["severity"] == "stop"), "{report}");
}

/// Corners of right angles whose arcs just meet, and closer: shares worked by hand.
#[test]
fn bends_as_large_as_fits() {
    let route = json!([{ "corner": [0, 0, 100] }, { "corner": [30, 0, 100] }, { "corner": [30, 0, 160] }]);
    let mut crowded = design(([0.0, 0.0, 0.0], [0.0, 0.0, 1.0]), ([130.0, 0.0, 160.0], [-1.0, 0.0, 0.0]), route);
    assert_eq!(found(&crowded, "corners_too_close").len(), 1);
    crowded["runs"][0]["fit_bends"] = json!(true);
    let line = line(&crowded);
    check_whole(&line);
    let radii: Vec<f64> = line.pieces.iter().filter_map(tubewright_core::centreline::Piece::radius).collect();
    assert_eq!(radii.len(), 3);
    for (radius, wanted) in radii.iter().zip([15.0, 15.0, 24.0]) {
        assert!((radius - wanted).abs() < 1e-12, "{radii:?}");
    }
    let note = &found(&crowded, "bends_fitted")[0];
    assert!(note["severity"] == "note" && (note["value"].as_f64().unwrap() - 15.0).abs() < 1e-12, "{note}");
    assert_eq!(found(&crowded, "corners_too_close"), Vec::<Value>::new());
    // Eight millimetres between corners leave four to each bend of a tube of six: it cannot be made.
    crowded["runs"][0]["route"][1]["corner"][0] = json!(8);
    crowded["runs"][0]["route"][2]["corner"][0] = json!(8);
    let stop = &found(&crowded, "no_room_to_share")[0];
    assert!(stop["severity"] == "stop" && (stop["value"].as_f64().unwrap() - 4.0).abs() < 1e-12, "{stop}");
}
