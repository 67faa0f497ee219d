//! Designs of one run between two ports, and what the stages make of them.
#![allow(dead_code)]

use serde_json::{Value, json};
use tubewright_core::centreline::{self, Centreline, RunLine};
use tubewright_core::design::parse;
use tubewright_core::engine;
use tubewright_core::layout::{self, Vec3};

/// A port's position and facing.
pub type Port = ([f64; 3], [f64; 3]);

/// A design of one run of 12 mm tube, bend radius 24, from a port to another past `route`.
pub fn design(from: Port, to: Port, route: Value) -> Value {
    json!({ "format": "tubewright-design", "version": 1, "name": "shape",
        "fittings": [{ "name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "lead": 5 }],
        "ports": [{ "name": "a", "at": from.0, "facing": from.1, "fitting": "F" },
            { "name": "b", "at": to.0, "facing": to.1, "fitting": "F" }],
        "runs": [{ "name": "run", "from": "a", "to": "b", "tube": { "outer_diameter": 12, "bore": 8 },
            "bend_radius": 24, "route": route }] })
}

/// The run's centreline.
pub fn drawn(design: &Value) -> RunLine {
    let design = parse(&design.to_string()).unwrap();
    centreline::lines(&design, &layout::place(&design)).remove(0)
}

/// The curve, which must be there without an obstacle.
pub fn line(design: &Value) -> Centreline {
    let drawn = drawn(design);
    assert_eq!(drawn.obstacles, [], "{design}");
    drawn.line.unwrap()
}

/// The report.
pub fn report(design: &Value) -> Value {
    serde_json::from_str(&engine::report(&design.to_string()).unwrap()).unwrap()
}

/// The findings of that code.
pub fn found(design: &Value, code: &str) -> Vec<Value> {
    let report = report(design);
    report["findings"].as_array().unwrap().iter().filter(|finding| finding["code"] == code).cloned().collect()
}

/// The design with a finding's fix applied.
pub fn fixed(design: &Value, finding: &Value) -> Value {
    serde_json::from_str(&engine::apply(&design.to_string(), &finding["fix"].to_string()).unwrap()).unwrap()
}

/// Joints meet in point and direction, pieces are as long as they say, arc length is arc length.
pub fn check_whole(line: &Centreline) {
    let mut from = 0.0;
    for pair in line.pieces.windows(2) {
        let end = pair[0].at(pair[0].length);
        assert!((end.point - pair[1].start).norm() < 1e-8, "a gap of {}", (end.point - pair[1].start).norm());
        assert!(
            (end.tangent - pair[1].direction).norm() < 1e-8,
            "a kink of {}",
            (end.tangent - pair[1].direction).norm()
        );
    }
    for piece in &line.pieces {
        assert!((piece.from - from).abs() < 1e-9 * (1.0 + from));
        from += piece.length;
        let steps = 200;
        let points: Vec<Vec3> =
            (0..=steps).map(|step| piece.at(piece.length * f64::from(step) / f64::from(steps)).point).collect();
        let chords: f64 = points.windows(2).map(|pair| (pair[1] - pair[0]).norm()).sum();
        // A chord of step h on a curve of radius R lacks h^3 / (24 R^2).
        let h = piece.length / f64::from(steps);
        let lack = piece.radius().map_or(0.0, |radius| f64::from(steps) * h * h * h / (24.0 * radius * radius));
        assert!(chords <= piece.length * (1.0 + 1e-9) && chords >= piece.length - 1.1 * lack - 1e-9 * piece.length);
        // Even steps of arc length make even chords.
        let (least, most) = points
            .windows(2)
            .map(|pair| (pair[1] - pair[0]).norm())
            .fold((f64::INFINITY, 0f64), |(least, most), chord| (least.min(chord), most.max(chord)));
        assert!(most - least <= 2.0 * lack / f64::from(steps) + 1e-9 * piece.length + 1e-12, "{least} {most}");
    }
    assert!((line.length - from).abs() < 1e-9 * from);
}
