//! Findings about tube ends, walls, ports, alignment and the datum. Expected values are plane geometry and the number
//! format's own (IEEE 754 binary32).

use crate::check_support::{all, codes, design, fitting, mends, one, port, run, single};
use serde_json::{Value, json};
use tubewright_core::check::Severity;

fn square() -> Value {
    single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, 60.0]])
}

fn parsed(text: &str) -> Value {
    serde_json::from_str(text).unwrap()
}

#[test]
fn a_tube_of_another_diameter_than_its_fitting() {
    let with = |outer: f64, bore: f64| {
        let mut design = square();
        design["runs"][0]["tube"] = json!({ "outer_diameter": outer, "bore": bore });
        design
    };
    for (outer, severity) in [(12.7, Severity::Stop), (11.85, Severity::Stop), (12.09, Severity::Care)] {
        let bad = with(outer, 8.0);
        let finding = one(&bad, "tube_diameter");
        assert_eq!((finding.severity, finding.value, finding.limit), (severity, Some(outer), Some(12.0)));
        let after = parsed(&mends(&bad.to_string(), &finding));
        assert_eq!(after["runs"][0]["tube"], json!({ "outer_diameter": 12, "bore": 8 }));
    }
    for outer in [12.0, 12.05, 11.95] {
        assert_eq!(all(&with(outer, 8.0), "tube_diameter"), []);
    }
    // A bore that would leave too little of the new diameter goes with it: the wall of 2 is kept.
    let bad = with(16.0, 12.0);
    let after = parsed(&mends(&bad.to_string(), &one(&bad, "tube_diameter")));
    assert_eq!(after["runs"][0]["tube"], json!({ "outer_diameter": 12, "bore": 8 }));
}

#[test]
fn fittings_that_take_different_tubes_have_no_fix() {
    let mut bad = square();
    let mut other = fitting("C14");
    other["tube_diameter"] = json!(14);
    bad["fittings"].as_array_mut().unwrap().push(other);
    bad["ports"][1]["fitting"] = json!("C14");
    let finding = one(&bad, "tube_diameter");
    assert_eq!((finding.limit, finding.fix), (Some(14.0), None));
}

#[test]
fn a_thin_wall_stops_below_the_printers_and_is_noted_below_the_usual_least() {
    let with = |bore: f64, least: f64| {
        let mut design = square();
        design["runs"][0]["tube"]["bore"] = json!(bore);
        let printer = json!({ "name": "p", "build_volume": [200, 125, 220], "least_wall": least, "source": "test" });
        design["process"] = json!({ "printer": printer });
        design
    };
    let stop = with(10.5, 1.0);
    let finding = one(&stop, "thin_wall");
    assert_eq!((finding.severity, finding.value, finding.limit), (Severity::Stop, Some(0.75), Some(1.0)));
    // The usual least of 1.5 is proposed where it is more than the printer's: 12 - 3.
    assert_eq!(parsed(&mends(&stop.to_string(), &finding))["runs"][0]["tube"]["bore"].as_f64(), Some(9.0));
    let care = with(9.4, 1.0);
    let finding = one(&care, "thin_wall");
    assert_eq!((finding.severity, finding.limit), (Severity::Care, Some(1.5)));
    assert_eq!(finding.source, "common practice, no source");
    mends(&care.to_string(), &finding);
    let rough = with(8.8, 2.5);
    let finding = one(&rough, "thin_wall");
    assert_eq!((finding.severity, finding.limit), (Severity::Stop, Some(2.5)));
    assert_eq!(parsed(&mends(&rough.to_string(), &finding))["runs"][0]["tube"]["bore"].as_f64(), Some(7.0));
    assert_eq!(all(&with(9.0, 1.0), "thin_wall"), []);
}

#[test]
fn a_chamfer_must_leave_wall_at_the_tip() {
    let with = |degrees: f64, length: f64| {
        let mut design = square();
        design["runs"][0]["ends"] = json!({ "chamfer_deg": degrees, "chamfer_length": length, "edge_break": 0.2 });
        design
    };
    // The wall of 2 less 0.2 less the length times the tangent: 45 degrees and 1.76 leave 0.04.
    let stop = with(45.0, 1.76);
    let finding = one(&stop, "thin_tip");
    assert_eq!((finding.severity, finding.limit), (Severity::Stop, Some(0.05)));
    assert!(finding.value.is_some_and(|tip| (tip - 0.04).abs() < 1e-9));
    // 0.8 leaves the usual 1.0.
    assert_eq!(parsed(&mends(&stop.to_string(), &finding))["runs"][0]["ends"]["chamfer_length"].as_f64(), Some(0.8));
    let care = with(45.0, 0.9);
    let finding = one(&care, "thin_tip");
    assert_eq!((finding.severity, finding.limit), (Severity::Care, Some(1.0)));
    mends(&care.to_string(), &finding);
    // 20 degrees: 0.8 / tan 20 = 2.19798..., rounded down.
    let care = with(20.0, 3.0);
    let after = parsed(&mends(&care.to_string(), &one(&care, "thin_tip")));
    assert_eq!(after["runs"][0]["ends"]["chamfer_length"].as_f64(), Some(2.197));
    assert_eq!(all(&with(15.0, 2.0), "thin_tip"), []);
}

#[test]
fn a_chamfer_as_long_as_the_socket_stops() {
    let mut bad = square();
    bad["runs"][0]["ends"] = json!({ "chamfer_deg": 2.0, "chamfer_length": 10.0 });
    let finding = one(&bad, "chamfer_long");
    assert_eq!((finding.severity, finding.value, finding.limit), (Severity::Stop, Some(10.0), Some(10.0)));
    assert_eq!(parsed(&mends(&bad.to_string(), &finding))["runs"][0]["ends"]["chamfer_length"].as_f64(), Some(2.0));
    bad["runs"][0]["ends"]["chamfer_length"] = json!(9.9);
    assert_eq!(all(&bad, "chamfer_long"), []);
}

#[test]
fn ports_and_fittings_that_nothing_uses_are_noted() {
    let mut design = square();
    design["ports"].as_array_mut().unwrap().push(port("spare", [300.0, 0.0, 0.0], [0.0, 0.0, 1.0]));
    design["fittings"].as_array_mut().unwrap().push(fitting("C99"));
    assert_eq!(codes(&design), [("port_unused", Severity::Note), ("fitting_unused", Severity::Note)]);
    assert_eq!(one(&design, "port_unused").place, "/ports/2");
    assert_eq!(one(&design, "fitting_unused").place, "/fittings/1");
}

#[test]
fn a_port_used_twice_stops_but_is_not_told_as_tubes_meeting() {
    let ports = [
        port("a", [0.0; 3], [0.0, 0.0, 1.0]),
        port("b", [100.0, 0.0, 60.0], [-1.0, 0.0, 0.0]),
        port("c", [0.0, 100.0, 60.0], [0.0, -1.0, 0.0]),
    ];
    let runs = [run("one", "a", "b", 16.0, &[[0.0, 0.0, 60.0]]), run("two", "c", "a", 16.0, &[[0.0, 0.0, 60.0]])];
    let bad = design(&ports, &runs);
    let finding = one(&bad, "port_used_twice");
    assert_eq!((finding.severity, finding.place.as_str()), (Severity::Stop, "/runs/1/to"));
    assert_eq!(codes(&bad), [("port_used_twice", Severity::Stop)]);
}

#[test]
fn a_corner_just_off_its_ports_line_is_put_onto_it() {
    let bad = single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.3, 0.4, 60.0]]);
    let finding = &all(&bad, "misaligned")[0];
    assert_eq!(finding.severity, Severity::Care);
    assert!(finding.value.is_some_and(|aside| (aside - 0.5).abs() < 1e-12));
    let after = parsed(&mends(&bad.to_string(), finding));
    // Tied, so that a new measurement of the port carries it along.
    assert_eq!(after["runs"][0]["route"][0]["corner"][0], json!({ "of": "a", "plus": 0 }));
    assert_eq!(after["runs"][0]["route"][0]["corner"][1], json!({ "of": "a", "plus": 0 }));
    // Both ends of one corner are told.
    assert_eq!(all(&bad, "misaligned").len(), 2);
    let far = single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, 90.0], [40.0, 0.0, 61.0]]);
    assert_eq!(all(&far, "misaligned"), []);
}

#[test]
fn a_corner_off_an_oblique_line_goes_to_its_nearest_point() {
    // Out of the origin along (1, 1, 1): the corner (60, 60, 60.3) is 0.3 sqrt(2 / 3) off.
    let ports = [port("a", [0.0; 3], [1.0, 1.0, 1.0]), port("b", [160.0, 60.1, 60.1], [-1.0, 0.0, 0.0])];
    let bad = design(&ports, &[run("r", "a", "b", 24.0, &[[60.0, 60.0, 60.3]])]);
    let finding = all(&bad, "misaligned").into_iter().find(|f| f.words.contains(&("port", "“a”".into()))).unwrap();
    assert!(finding.value.is_some_and(|aside| (aside - 0.3 * (2.0_f64 / 3.0).sqrt()).abs() < 1e-12));
    let after = parsed(&mends(&bad.to_string(), &finding));
    for axis in 0..3 {
        let at = after["runs"][0]["route"][0]["corner"][axis].as_f64().unwrap();
        assert!((at - 60.1).abs() < 1e-8, "{at}");
    }
}

#[test]
fn rough_measurements_are_noted_where_they_matter() {
    let mut design = square();
    design["ports"][0]["measured_to"] = json!(0.6);
    let finding = one(&design, "play_offset");
    assert_eq!((finding.severity, finding.value, finding.limit), (Severity::Note, Some(0.6), Some(0.5)));
    // Ends (0, 0, 8) and (92, 0, 60): 105.68 mm apart. Off by 2 in all: atan(2 / 105.68) = 1.0842 degrees.
    design["ports"][0]["measured_to"] = json!(1.0);
    design["ports"][1]["measured_to"] = json!(1.0);
    let finding = one(&design, "play_angle");
    let expected = libm::atan(2.0 / libm::hypot(92.0, 52.0)).to_degrees();
    assert!(finding.value.is_some_and(|angle| (angle - expected).abs() < 1e-9));
    assert_eq!(finding.limit, Some(1.0));
    design["ports"][1]["measured_to"] = json!(0.84);
    assert_eq!(all(&design, "play_angle"), []);
}

#[test]
fn far_from_the_datum_the_files_lose_digits() {
    let at = |z: f64| single([100.0, 0.0, z + 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, z + 60.0]]);
    let shifted = |z: f64| {
        let mut design = at(z);
        design["ports"][0]["at"][2] = json!(z);
        design
    };
    assert_eq!(codes(&shifted(8_000.0)), []);
    let finding = one(&shifted(9_000.0), "far_from_datum");
    assert_eq!((finding.severity, finding.limit), (Severity::Care, Some(8_192.0)));
    // Of 32-bit floats, neighbours at 9,066 are 2^-10 apart: sqrt(3) / 2 / 1024 = 0.00084573.
    let message = tubewright_core::check::words::message(&finding);
    assert!(message.contains("up to 0.846 µm"), "{message}");
    assert_eq!(one(&shifted(-40_000.0), "far_from_datum").severity, Severity::Stop);
}
