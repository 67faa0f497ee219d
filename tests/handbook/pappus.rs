//! Volumes of bent tubes. Source: the second theorem of Pappus and Guldin, V = A R angle, as handbooks of solid geometry
//! state it; the rows were computed from it by hand calculation.

use crate::scene::{SOCKET, bare, close, number, run};
use core::f64::consts::PI;
use serde_json::json;
use tubewright_core::engine;
use tubewright_core::mesh::signed_volume;

/// OD, bore, bend radius, angle in degrees, then arc length and volumes of material and bore.
const ROWS: [[f64; 7]; 4] = [
    [16.0, 12.0, 32.0, 90.0, 50.265_482, 4421.5828, 5684.8921],
    [14.0, 10.0, 28.0, 90.0, 43.982_297, 3316.1871, 3454.3615],
    [12.0, 8.0, 24.0, 45.0, 18.849_556, 1184.3525, 947.4820],
    [12.7, 9.525, 25.4, 180.0, 79.796_453, 4422.4097, 5685.9553],
];

#[test]
fn bends_hold_what_pappus_says() {
    for [outer, bore, radius, degrees, arc, material, hollow] in ROWS {
        let straight = if degrees < 179.0 { 50.0 } else { SOCKET };
        let design = bent(outer, bore, radius, degrees, straight);
        let run = run(&design);
        let area = PI / 4.0 * (outer * outer - bore * bore);
        close(number(&run["length_mm"]) - 2.0 * straight, arc, 1e-6);
        close(number(&run["material_mm3"]) - 2.0 * straight * area, material, 1e-4);
        close(number(&run["bore_mm3"]) - 2.0 * straight * PI / 4.0 * bore * bore, hollow, 1e-4);
        for deviation in [0.05, 0.01] {
            let mesh = engine::tube_mesh(&design.to_string(), "r", deviation).expect("a mesh");
            let exact = number(&run["material_mm3"]);
            assert!((signed_volume(&mesh) / exact - 1.0).abs() < 1e-5);
        }
    }
}

/// Two straights joined by one bend; a half turn has no apex and is a link from socket to socket.
fn bent(outer: f64, bore: f64, radius: f64, degrees: f64, straight: f64) -> serde_json::Value {
    let (sin, cos) = libm::sincos(degrees.to_radians());
    let end = [straight + radius * sin + straight * cos, radius * (1.0 - cos) + straight * sin, 0.0];
    let tangent = radius * libm::tan(degrees.to_radians() / 2.0);
    let apex = [straight + tangent, 0.0, 0.0];
    let route = if degrees < 179.0 { vec![json!({ "corner": apex })] } else { Vec::new() };
    bare([0.0; 3], [1.0, 0.0, 0.0], end, [-cos, -sin, 0.0]).with(outer, bore, radius, route)
}
