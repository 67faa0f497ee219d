//! Tubes to be stood on plates.
#![allow(dead_code, reason = "each test binary uses its own part")]

use serde_json::{Value, json};

/// The design printed in another way, on a printer of that way.
pub fn judged(text: &str, way: &str) -> String {
    let mut design: Value = serde_json::from_str(text).unwrap();
    let (material, printer) = match way {
        "resin" => ("tough resin", "large resin"),
        "filament" => ("PETG", "filament"),
        _ => ("PA12, jet-fused", "jet-fusion powder"),
    };
    design["process"] = json!({"material": material, "printer": printer});
    design.to_string()
}

/// A run of a straight tube along x, ends of no finish; the length is from end face to end face.
pub fn straight(length: f64, outer: f64, bore: f64) -> Value {
    json!({"ports": [[0, 0, 0], [1, 0, 0], [length, 0, 0], [-1, 0, 0]], "route": [], "tube": {"outer_diameter": outer, "bore": bore}})
}

/// A design of one run on a resin printer of that build volume; fittings add nothing to the length.
pub fn design(run: Value, volume: [f64; 3]) -> String {
    let ports = &run["ports"];
    let outer = &run["tube"]["outer_diameter"];
    json!({"format": "tubewright-design", "version": 1,
        "fittings": [{"name": "f", "tube_diameter": outer, "height": 10, "socket_depth": 10, "collar_diameter": 60, "lead": 0}],
        "ports": [{"name": "a", "at": ports[0], "facing": ports[1], "fitting": "f"},
                  {"name": "b", "at": ports[2], "facing": ports[3], "fitting": "f"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": run["tube"], "bend_radius": run.get("bend_radius").unwrap_or(&json!(20)),
            "route": run["route"], "ends": {"chamfer_length": 0, "edge_break": 0, "seat_mark": false}}],
        "process": {"material": "tough resin", "printer": {"name": "p", "build_volume": volume, "least_wall": 1, "margin": 5,
            "layer_mm": 0.05, "overhang_deg": 19, "bore_deg": 30, "seconds_per_layer": 8}}})
    .to_string()
}
