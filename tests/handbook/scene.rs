//! Designs for the checks: bare tubes between two ports whose fittings put the tube's end on the port itself.

use serde_json::{Value, json};
use tubewright_core::engine;

/// How deep the tubes sit in their fittings, mm.
pub const SOCKET: f64 = 3.0;

/// A design with one run from the first point to the last, ends square to the first and last leg, no end finish.
/// The mouth stands on the seat's far side by the socket's depth, so that tube ends and ports coincide.
pub fn through(points: &[[f64; 3]], outer: f64, bore: f64, radius: f64) -> Value {
    let last = points.len() - 1;
    let route = points[1..last].iter().map(|point| json!({ "corner": point })).collect::<Vec<_>>();
    bare(points[0], toward(points[0], points[1]), points[last], toward(points[last], points[last - 1]))
        .with(outer, bore, radius, route)
}

/// Two ports that face the given ways.
pub fn bare(from: [f64; 3], facing: [f64; 3], to: [f64; 3], to_facing: [f64; 3]) -> Ports {
    Ports { from, facing, to, to_facing }
}

/// Two ports, to be joined.
pub struct Ports {
    from: [f64; 3],
    facing: [f64; 3],
    to: [f64; 3],
    to_facing: [f64; 3],
}

impl Ports {
    /// The design that joins them.
    pub fn with(&self, outer: f64, bore: f64, radius: f64, route: Vec<Value>) -> Value {
        json!({
            "format": "tubewright-design", "version": 1,
            "fittings": [{ "name": "F", "tube_diameter": outer, "height": SOCKET, "socket_depth": SOCKET,
                "collar_diameter": outer + 1.0, "lead": 0 }],
            "ports": [
                { "name": "a", "at": self.from, "facing": self.facing, "fitting": "F" },
                { "name": "b", "at": self.to, "facing": self.to_facing, "fitting": "F" }],
            "runs": [{ "name": "r", "from": "a", "to": "b", "tube": { "outer_diameter": outer, "bore": bore },
                "bend_radius": radius, "route": route,
                "ends": { "chamfer_length": 0, "edge_break": 0, "seat_mark": false } }]
        })
    }
}

/// The first run of the design's report.
pub fn run(design: &Value) -> Value {
    let report = engine::report(&design.to_string()).expect("a report");
    let report: Value = serde_json::from_str(&report).expect("JSON");
    report["runs"][0].clone()
}

/// A number of the report.
pub fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("a number, not {value}"))
}

/// The run's bend table: straight, rotation, angle, radius a row.
pub fn table(run: &Value) -> Vec<[f64; 4]> {
    let rows = run["bend_table"].as_array().expect("a table");
    rows.iter()
        .map(|row| ["straight_mm", "rotation_deg", "angle_deg", "radius_mm"].map(|key| number(&row[key])))
        .collect()
}

/// Asserts that two values agree to `within`, absolute.
pub fn close(found: f64, expected: f64, within: f64) {
    assert!((found - expected).abs() <= within, "{found} instead of {expected}");
}

fn toward(from: [f64; 3], to: [f64; 3]) -> [f64; 3] {
    [to[0] - from[0], to[1] - from[1], to[2] - from[2]]
}
