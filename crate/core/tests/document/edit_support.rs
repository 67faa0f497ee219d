//! Designs with every kind of station, as texts, and what the engine makes of them.

use nalgebra::Vector3;
use serde_json::{Value, json};
use tubewright_core::centreline::{self, Centreline};
use tubewright_core::{design, engine, layout};

pub fn fitting(name: &str) -> Value {
    json!({ "name": name, "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5,
        "elbow": null, "seal": null })
}

pub fn port(name: &str, at: [f64; 3], facing: [f64; 3], fitting: &str) -> Value {
    json!({ "name": name, "at": at, "facing": facing, "fitting": fitting, "measured_to": 0.5 })
}

pub fn run(name: &str, from: &str, to: &str, route: Value) -> Value {
    json!({ "name": name, "from": from, "to": to, "tube": { "outer_diameter": 12, "bore": 8 }, "bend_radius": 16,
        "route": route })
}

pub fn design(fittings: &[Value], ports: &[Value], runs: &[Value]) -> Value {
    json!({ "format": "tubewright-design", "version": 1, "name": "test", "fittings": fittings, "ports": ports,
        "runs": runs, "clearance": 1 })
}

/// A run through a corner of its own radius, tied to its ports, a conical left-hand coil about an oblique axis, two
/// points passed smoothly, and out by a right-angled elbow; a second run beside it.
pub fn rich() -> Value {
    let mut elbow = fitting("E12");
    elbow["elbow"] = json!({ "angle_deg": 75, "rise": 14, "reach": 12, "turn_deg": 40 });
    let ports = [
        port("pump", [30.0, 20.0, 60.0], [0.0, 0.0, 1.0], "C12"),
        port("block", [330.0, 180.0, 40.0], [0.3, 0.0, 1.0], "E12"),
        port("spare a", [30.0, 400.0, 60.0], [0.0, 0.0, 1.0], "C12"),
        port("spare b", [150.0, 460.0, 130.0], [-1.0, 0.0, 0.0], "C12"),
    ];
    let route = json!([
        { "corner": [{ "of": "pump", "plus": 0 }, { "of": "pump", "plus": 0 }, 130], "bend_radius": 20 },
        { "coil": { "centre": [{ "of": "pump", "plus": 130.25 }, 90, 180], "axis": [0.2, 0.1, 2], "radius": 40,
            "end_radius": 55, "pitch": 22, "turns": 2.3, "hand": "left", "start_deg": -160 } },
        { "through": [250, { "of": "block", "plus": 20 }, 300] },
        { "through": [310, 230, { "of": "block", "plus": 170 }] },
    ]);
    let mut coiled = run("pump to block", "pump", "block", route);
    coiled["dress"] =
        json!({ "diameter": 15, "end_diameter": 18, "blend": 8, "lobes": 5, "depth": 0.8, "twist_deg_per_mm": 1.5 });
    let square =
        run("spare", "spare a", "spare b", json!([{ "corner": [30, 400, 130] }, { "corner": [30, 460, 130] }]));
    design(&[fitting("C12"), elbow], &ports, &[coiled, square])
}

pub fn parsed(text: &str) -> Value {
    serde_json::from_str(text).unwrap()
}

/// The design after an edit, as the engine writes it.
pub fn edited(design: &Value, request: Value) -> Value {
    let text = engine::edit(&design.to_string(), &request.to_string()).unwrap_or_else(|refusal| panic!("{refusal}"));
    assert_eq!(engine::normalise(&text).as_deref(), Ok(text.as_str()), "the answer is canonical");
    parsed(&text)
}

/// The design as the engine writes it.
pub fn canonical(design: &Value) -> Value {
    parsed(&engine::normalise(&design.to_string()).unwrap_or_else(|refusal| panic!("{refusal}")))
}

/// The centrelines of all runs; none for one that is not made.
pub fn lines(text: &str) -> Vec<Option<Centreline>> {
    let design = design::parse(text).unwrap_or_else(|refusal| panic!("{refusal}"));
    centreline::lines(&design, &layout::place(&design)).into_iter().map(|run| run.line).collect()
}

pub fn line(design: &Value, run: usize) -> Centreline {
    lines(&design.to_string()).swap_remove(run).unwrap_or_else(|| panic!("run {run} is not made"))
}

/// Points at equal steps of arc length.
pub fn points(line: &Centreline, count: usize) -> Vec<Vector3<f64>> {
    (0..=count).map(|k| line.at(line.length * (k as f64 / count as f64)).point).collect()
}

/// The largest distance between two rows of points.
pub fn apart<'a>(a: impl IntoIterator<Item = &'a Vector3<f64>>, b: impl IntoIterator<Item = &'a Vector3<f64>>) -> f64 {
    a.into_iter().zip(b).map(|(a, b)| (a - b).norm()).fold(0.0, f64::max)
}

/// Whether two documents say the same with every number within `within`.
pub fn alike(a: &Value, b: &Value, within: f64) -> bool {
    match (a, b) {
        (Value::Array(a), Value::Array(b)) => a.len() == b.len() && a.iter().zip(b).all(|(a, b)| alike(a, b, within)),
        (Value::Object(a), Value::Object(b)) => {
            a.len() == b.len() && a.iter().all(|(key, a)| b.get(key).is_some_and(|b| alike(a, b, within)))
        }
        _ => match (a.as_f64(), b.as_f64()) {
            (Some(a), Some(b)) => (a - b).abs() <= within,
            _ => a == b,
        },
    }
}
