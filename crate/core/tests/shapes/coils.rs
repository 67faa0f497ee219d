//! Coils against closed forms and an independent quadrature, over radius, pitch, turns, hand and angle.
//!
//! Of a cylindrical helix of radius r and pitch p, with b = p / 2 pi: length 2 pi sqrt(r^2 + b^2) a turn, curvature
//! r / (r^2 + b^2), torsion b / (r^2 + b^2) (do Carmo, Differential Geometry of Curves and Surfaces, section 1-5; from memory).

use crate::shapes_support::{check_whole, design, drawn, fixed, found, line, report};
use core::f64::consts::PI;
use serde_json::{Value, json};
use tubewright_core::centreline::{Centreline, Piece, Shape};
use tubewright_core::layout::{Vec3, reference_perpendicular, unit};

fn coil_of(line: &Centreline) -> Vec<&Piece> {
    line.pieces.iter().filter(|piece| matches!(piece.shape, Shape::Curve(_))).collect()
}

fn with_coil(coil: Value) -> Value {
    design(([0.0, 0.0, 0.0], [1.0, 0.0, 0.0]), ([400.0, 150.0, 120.0], [0.0, 0.0, 1.0]), json!([{ "coil": coil }]))
}

/// Torsion by differences of the unit binormal along the curve.
fn torsion(piece: &Piece, s: f64) -> f64 {
    let binormal = |s: f64| {
        let there = piece.at(s);
        unit(&there.tangent.cross(&there.curvature))
    };
    let h = 1e-3;
    let rate = (binormal(s + h) - binormal(s - h)) / (2.0 * h);
    -rate.dot(&unit(&piece.at(s).curvature))
}

#[test]
fn cylindrical_coils_have_their_closed_forms() {
    for (radius, pitch, turns, start) in [
        (30.0, 20.0, 3.0, 0.0),
        (25.0, 14.0, 2.0, 90.0),
        (40.0, 10.0 * PI, 1.5, -45.0),
        (60.0, 20.0, 0.2, 200.0),
        (18.0, 90.0, 2.25, 10.0),
    ] {
        for (hand, sign) in [("right", 1.0), ("left", -1.0)] {
            let axis = [0.3, -0.2, 1.0];
            let coil = json!({ "centre": [150, 100, 40], "axis": axis, "radius": radius, "pitch": pitch, "turns": turns,
                "hand": hand, "start_deg": start });
            let line = line(&with_coil(coil));
            check_whole(&line);
            let pieces = coil_of(&line);
            let b = pitch / (2.0 * PI);
            let squared = radius * radius + b * b;
            let length: f64 = pieces.iter().map(|piece| piece.length).sum();
            assert!((length / (2.0 * PI * turns * squared.sqrt()) - 1.0).abs() < 1e-13);
            let unit_axis = unit(&Vec3::from(axis));
            let reference = reference_perpendicular(&unit_axis);
            for piece in &pieces {
                for share in [0.0, 0.31, 1.0] {
                    let there = piece.at(piece.length * share);
                    assert!((there.curvature.norm() * squared / radius - 1.0).abs() < 1e-12);
                    assert!((there.tangent.dot(&unit_axis) * squared.sqrt() / b - 1.0).abs() < 1e-11);
                }
                assert!((torsion(piece, piece.length / 2.0) * squared / b - sign).abs() < 1e-5, "{hand}");
                assert!((piece.radius().unwrap() * radius / squared - 1.0).abs() < 1e-12);
            }
            let (sin, cos) = libm::sincos(f64::to_radians(start));
            let first = Vec3::new(150.0, 100.0, 40.0) + (reference * cos + unit_axis.cross(&reference) * sin) * radius;
            assert!((pieces[0].start - first).norm() < 1e-10);
            let angle = sign * 2.0 * PI * turns + f64::to_radians(start);
            let (sin, cos) = libm::sincos(angle);
            let last = Vec3::new(150.0, 100.0, 40.0)
                + (reference * cos + unit_axis.cross(&reference) * sin) * radius
                + unit_axis * (pitch * turns);
            let piece = pieces[pieces.len() - 1];
            assert!((piece.at(piece.length).point - last).norm() < 1e-9);
        }
    }
}

/// Simpson's rule on the speed of the formula, in steps of a thousandth of a turn: nothing of the engine's.
fn conical_length(r0: f64, r1: f64, pitch: f64, turns: f64) -> f64 {
    let angle = 2.0 * PI * turns;
    let (k, b) = ((r1 - r0) / angle, pitch / (2.0 * PI));
    let speed = |phi: f64| {
        let r = r0 + k * phi;
        (k * k + b * b + r * r).sqrt()
    };
    let steps = 2 * (turns * 1000.0).ceil() as usize;
    let h = angle / steps as f64;
    let inner: f64 = (1..steps).map(|i| if i % 2 == 1 { 4.0 } else { 2.0 } * speed(i as f64 * h)).sum();
    (speed(0.0) + speed(angle) + inner) * h / 3.0
}

#[test]
fn conical_coils_agree_with_an_independent_quadrature() {
    for (r0, r1, pitch, turns) in [
        (30.0, 80.0, 16.0, 3.0),
        (80.0, 30.0, 16.0, 3.0),
        (20.0, 90.0, 0.0, 4.0),
        (15.0, 15.001, 18.0, 2.0),
        (10.0, 200.0, 5.0, 0.75),
    ] {
        let coil = json!({ "centre": [150, 100, 40], "axis": [0, 1, 0.2], "radius": r0, "end_radius": r1, "pitch": pitch,
            "turns": turns, "hand": "left", "start_deg": 33 });
        let line = line(&with_coil(coil));
        check_whole(&line);
        let pieces = coil_of(&line);
        let length: f64 = pieces.iter().map(|piece| piece.length).sum();
        assert!((length / conical_length(r0, r1, pitch, turns) - 1.0).abs() < 1e-11, "{r0} {r1}");
        // Nowhere tighter than each piece says, and somewhere so.
        for piece in pieces {
            let sampled = (0..=500)
                .map(|step| piece.at(piece.length * f64::from(step) / 500.0).curvature.norm())
                .fold(0f64, f64::max);
            let told = 1.0 / piece.radius().unwrap();
            assert!(sampled <= told * (1.0 + 1e-12) && sampled >= told * (1.0 - 1e-5));
        }
    }
}

#[test]
fn a_coil_is_one_row_of_the_bend_table() {
    let coil = json!({ "centre": [150, 100, 40], "axis": [0, 0, 1], "radius": 30, "pitch": 20, "turns": 3 });
    let report = report(&with_coil(coil));
    let rows: Vec<&Value> =
        report["runs"][0]["bend_table"].as_array().unwrap().iter().filter(|row| row["kind"] == "coil").collect();
    // Helix R 30, p 20, N 3: worked with the closed forms above.
    assert_eq!(rows.len(), 1);
    assert!((rows[0]["length_mm"].as_f64().unwrap() - 568.660_868).abs() < 1e-5);
    assert!((rows[0]["radius_mm"].as_f64().unwrap() - 30.337_737).abs() < 1e-5);
    let turned = 568.660_868 * 0.032_962_25 * 180.0 / PI;
    assert!((rows[0]["angle_deg"].as_f64().unwrap() - turned).abs() < 1e-3);
}

#[test]
fn coils_too_tight_or_too_close_name_what_would_work() {
    let tight = with_coil(json!({ "centre": [150, 100, 40], "axis": [0, 0, 1], "radius": 5, "pitch": 14, "turns": 2 }));
    let finding = &found(&tight, "coil_tight")[0];
    assert_eq!(finding["severity"], "stop");
    assert_eq!(finding["where"], "/runs/0/route/0/coil/radius");
    let b = 14.0 / (2.0 * PI);
    assert!((finding["value"].as_f64().unwrap() - (25.0 + b * b) / 5.0).abs() < 1e-9);
    assert_eq!(found(&fixed(&tight, finding), "coil_tight"), Vec::<Value>::new(), "{finding}");

    // No pitch: every turn is in the last one's place.
    let flat = with_coil(json!({ "centre": [150, 100, 40], "axis": [0, 0, 1], "radius": 40, "pitch": 0, "turns": 2 }));
    let finding = &found(&flat, "meets_itself")[0];
    assert_eq!(finding["severity"], "stop");
    assert!((finding["value"].as_f64().unwrap() + 12.0).abs() < 1e-6);
    assert_eq!(found(&fixed(&flat, finding), "meets_itself"), Vec::<Value>::new());

    let close =
        with_coil(json!({ "centre": [150, 100, 40], "axis": [0, 0, 1], "radius": 40, "pitch": 10, "turns": 3 }));
    let finding = &found(&close, "meets_itself")[0];
    assert_eq!(finding["severity"], "stop");
    // Neighbouring turns of a helix this flat are apart by nearly the pitch times the cosine of the lead angle.
    let apart = 10.0 * libm::cos(libm::atan(10.0 / (2.0 * PI * 40.0)));
    assert!((finding["value"].as_f64().unwrap() + 12.0 - apart).abs() < 2e-3);
    assert_eq!(found(&fixed(&close, finding), "meets_itself"), Vec::<Value>::new());
}

#[test]
fn many_turns_are_answered_at_once() {
    let wound =
        with_coil(json!({ "centre": [150, 100, 40], "axis": [0, 0, 1], "radius": 15, "pitch": 0, "turns": 900 }));
    assert_eq!(found(&wound, "meets_itself")[0]["severity"], "stop");
    let long =
        with_coil(json!({ "centre": [150, 100, 40], "axis": [0, 0, 1], "radius": 40, "pitch": 13.5, "turns": 300 }));
    let mut long = long;
    long["ports"][1]["at"] = json!([300, 100, 4200]);
    assert!((drawn(&long).line.unwrap().length / 75_450.0 - 1.0).abs() < 0.1);
    assert!(found(&long, "meets_itself").iter().all(|finding| finding["severity"] != "stop"));
}

#[test]
fn a_coil_between_corners_is_joined_by_one_bend_each() {
    let route = json!([{ "corner": [80, 0, 0] },
        { "coil": { "centre": [200, 100, 40], "axis": [0, 0, 1], "radius": 40, "pitch": 20, "turns": 2.25 } },
        { "corner": [300, 150, 90] }]);
    let line = line(&design(([0.0, 0.0, 0.0], [1.0, 0.0, 0.0]), ([400.0, 150.0, 120.0], [0.0, 0.0, 1.0]), route));
    check_whole(&line);
    let joining = line.pieces.iter().filter(|piece| matches!(piece.shape, Shape::Arc { station: None, .. })).count();
    // Into the coil, out of it, and into the last port, which the last corner is not in front of.
    assert_eq!(joining, 3);
    assert_eq!(line.pieces.iter().filter(|piece| piece.station() == Some(0)).count(), 1);
}

#[test]
fn a_corner_too_close_beside_a_coil_names_the_radius_that_reaches_it() {
    let coil =
        json!({ "coil": { "centre": [200, 100, 0], "axis": [0, 0, 1], "radius": 40, "pitch": 0, "turns": 0.5 } });
    // The flat half turn starts at 240, 100 heading in y. A corner (x, y) ahead and beside is reached by radii up to
    // (x^2 + y^2) / (2 x): here behind the start, at 10 beside and 5 back.
    let route = json!([{ "corner": [250, 95, 0] }, coil]);
    let run = design(([0.0, 0.0, 100.0], [0.0, 0.0, 1.0]), ([0.0, 200.0, 100.0], [0.0, 0.0, 1.0]), route);
    let finding = &found(&run, "corner_out_of_reach")[0];
    assert!((finding["limit"].as_f64().unwrap() - 6.25).abs() < 1e-9 || finding["limit"].is_null(), "{finding}");
    assert!(finding["message"].as_str().unwrap().contains("coil 2"), "{finding}");
}
