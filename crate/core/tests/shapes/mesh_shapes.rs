//! Coils, smooth curves, dressed bodies and scribed ends: their meshes are solids, hold the exact volume, and stay within
//! the deviation asked for everywhere, measured by dense sampling against the exact skin.

use crate::mesh_judge::{Case, design, plain};
use tubewright_core::mesh::{signed_volume, solidity};

/// Volume error of round bodies, as a share.
const ROUND: f64 = 1e-5;
/// Volume error of bodies with lobes, as a share.
const WAVY: f64 = 5e-4;

/// Five turns 60 mm across, pitch 20: few triangles, and its volume.
#[test]
fn spiral_is_small_and_exact() {
    let route = r#"{ "coil": { "centre": [0, 0, 0], "axis": [0, 0, 1], "radius": 30, "pitch": 20, "turns": 5 } }"#;
    let text =
        design("[30, -60, -10]", "[0, 1, 0]", "[30, 60, 110]", "[0, -1, 0]", &plain(12.0, 10.0, 24.0, route, ""));
    let case = Case::of(&text);
    let mesh = case.mesh(0.01);
    let error = signed_volume(&mesh) / case.profile.material_volume() - 1.0;
    println!("{} triangles, volume {error:e}, length {}", mesh.indices.len() / 3, case.line.length);
    assert_eq!(solidity(&mesh), []);
    assert!(case.line.length > 1_000.0, "{}", case.line.length);
    assert!(mesh.indices.len() / 3 <= 215_000, "{}", mesh.indices.len() / 3);
    assert!(error.abs() < ROUND, "{error:e}");
}

fn coil(radius: f64, end: f64, pitch: f64, turns: f64, hand: &str) -> String {
    format!(
        r#"{{ "coil": {{ "centre": [0, 0, 0], "axis": [0, 0, 1], "radius": {radius}, "end_radius": {end}, "pitch": {pitch},
        "turns": {turns}, "hand": "{hand}", "start_deg": 0 }} }}"#
    )
}

#[test]
fn coils_of_both_hands_stay_within_the_deviation() {
    for (radius, end, pitch, turns) in
        [(30.0, 30.0, 20.0, 1.25), (20.0, 45.0, 30.0, 1.5), (24.0, 24.0, 150.0, 0.7), (40.0, 22.0, 16.0, 1.0)]
    {
        for hand in ["right", "left"] {
            let (x, way) = (radius, if hand == "right" { 1.0 } else { -1.0 });
            let from = format!("[{x}, {}, -60]", -90.0 * way);
            let route = coil(radius, end, pitch, turns, hand);
            let text = design(
                &from,
                &format!("[0, {way}, 0.1]"),
                "[0, 30, 260]",
                "[0, 0, -1]",
                &plain(12.0, 9.0, 20.0, &route, ""),
            );
            let case = Case::of(&text);
            for deviation in [0.5, 0.05, 0.01] {
                case.holds(
                    &format!("coil {radius} {end} {pitch} {turns} {hand}"),
                    deviation,
                    if deviation > 0.1 { WAVY } else { ROUND },
                );
            }
        }
    }
}

#[test]
fn smooth_curves_stay_within_the_deviation() {
    let route = r#"{ "through": [40, 10, 60] }, { "through": [80, 70, 50] }, { "through": [130, 60, 110] }"#;
    let text = design("[0, 0, 0]", "[0, 0, 1]", "[190, 40, 90]", "[-1, 0, 0]", &plain(12.0, 9.0, 20.0, route, ""));
    let case = Case::of(&text);
    println!("tightest {}", case.line.tightest_radius());
    for deviation in [0.5, 0.05, 0.01] {
        case.holds("points", deviation, if deviation > 0.1 { WAVY } else { ROUND });
    }
}

/// Bodies thicker, tapered and lobed, on straights, bends and coils, twisted either way.
#[test]
fn dressed_bodies_stay_within_the_deviation() {
    let corners = r#"{ "corner": [0, 0, 90] }, { "corner": [70, 20, 90] }"#;
    let coils = coil(34.0, 34.0, 26.0, 1.25, "right");
    let dresses = [
        r#""diameter": 16"#,
        r#""diameter": 13, "end_diameter": 18, "blend": 12"#,
        r#""diameter": 15, "lobes": 6, "depth": 0.8"#,
        r#""diameter": 15, "lobes": 6, "depth": 0.8, "twist_deg_per_mm": 2"#,
        r#""diameter": 15, "end_diameter": 17, "lobes": 5, "depth": 1.2, "twist_deg_per_mm": -2.5, "blend": 3"#,
        r#""lobes": 2, "depth": 1, "twist_deg_per_mm": 1"#,
        r#""diameter": 18, "lobes": 24, "depth": 0.5, "twist_deg_per_mm": 0.5"#,
    ];
    for dress in dresses {
        let more = format!(r#""dress": {{ {dress} }},"#);
        for route in [corners, &coils] {
            let (from, out) =
                if route == corners { ("[0, 0, 0]", "[0, 0, 1]") } else { ("[34, -90, -60]", "[0, 1, 0.1]") };
            let (to, back) =
                if route == corners { ("[80, 120, 60]", "[0, -1, 0]") } else { ("[0, 30, 160]", "[0, 0, -1]") };
            let case = Case::of(&design(from, out, to, back, &plain(12.0, 8.0, 16.0, route, &more)));
            for deviation in [0.2, 0.02] {
                case.holds(dress, deviation, WAVY);
            }
        }
    }
}

/// A tapered body with few lobes, found by a sweep: its grooves once stood 5 % beyond the deviation.
#[test]
fn lobed_straight_body_stays_within_the_deviation() {
    let dress = r#""diameter": 13.76, "lobes": 3, "depth": 0.225, "twist_deg_per_mm": -2.516, "blend": 13.15"#;
    let more = format!(r#""dress": {{ {dress} }},"#);
    let text = design("[0, 0, 0]", "[0, 0, 1]", "[0, 0, 104]", "[0, 0, -1]", &plain(12.0, 8.0, 27.0, "", &more));
    let case = Case::of(&text);
    for deviation in [0.1, 0.01, 0.003] {
        case.holds(dress, deviation, WAVY);
    }
}
