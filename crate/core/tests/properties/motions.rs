//! Moving, mirroring and turning a run round change what they must and nothing else; the bend table says the same tube
//! as the points. The invariants are those of a bend table anywhere in the trade; no source is needed but geometry.

use crate::answers::{findings, number, point, report, runs, table, told};
use crate::motion::{Motion, turned_round};
use nalgebra::{Rotation3, Unit, Vector3};
use serde_json::Value;
use tubewright_core::strategies::{Chance, Expect, Generated, KINDS, designs};

const ROUNDS: usize = 8;

/// Designs that say nothing about the axes: no elbow, whose turn is measured from z, no tie of a single coordinate, no
/// box. Those far from the datum, and those with bends that graze their axis, are left out too: what 32-bit coordinates
/// can hold depends on the place.
fn free_designs(seed: u64) -> impl Iterator<Item = (Generated, Value)> {
    let bound = ["link of elbows", "tied coordinates", "loop with keep-outs", "far from the datum"];
    let free = move |kind: &str| !bound.contains(&kind) && !kind.contains("just above");
    designs(seed, ROUNDS * KINDS.len()).into_iter().filter(move |design| free(design.kind)).map(|design| {
        let document = serde_json::from_str(&design.text).expect("JSON");
        (design, document)
    })
}

/// Asserts that two angles in degrees are the same turn, as far as bends of `weight` tell.
fn same_turn(a: f64, b: f64, weight: f64, told: &str) {
    let apart = (a - b).rem_euclid(360.0);
    let apart = apart.min(360.0 - apart);
    assert!(apart * weight < 1e-5, "{told}: turned {a}, not {b}");
}

/// Asserts that two tables are the same but for what `turn` does to rotations.
fn same_table(found: &[[f64; 4]], expected: &[[f64; 4]], turn: impl Fn(f64) -> f64, told: &str) {
    assert_eq!(found.len(), expected.len(), "{told}");
    let sine = |row: &[f64; 4]| libm::sin(row[2].to_radians()).abs();
    for (index, (a, b)) in found.iter().zip(expected).enumerate() {
        // Apexes of hairpins are metres away, and a micrometre there moves the bend by as much.
        let slack = 1e-5 * (1.0 + 1.0 / libm::sin((180.0 - b[2].min(179.9)).to_radians()).abs());
        assert!((a[0] - b[0]).abs() < slack && (a[2] - b[2]).abs() < 1e-6, "{told}: {a:?}, not {b:?}");
        // As curvatures: a curve that is straight but for rounding has any radius beyond the planets.
        let bent = |row: &[f64; 4]| if row[3] > 0.0 { 1.0 / row[3] } else { 0.0 };
        assert!((bent(a) - bent(b)).abs() <= 1e-6 * bent(b) + 1e-9, "{told}: {a:?}, not {b:?}");
        // The plane of a bend that hardly turns is hardly known, so its rotation counts as little.
        let weight = if index == 0 { 1.0 } else { sine(&expected[index - 1]).min(sine(b)) };
        same_turn(a[1], turn(b[1]), weight, told);
    }
}

fn same_numbers(found: &Value, expected: &Value, told: &str) {
    assert_eq!(found["made"], expected["made"], "{told}");
    if expected["made"] == true {
        for key in ["length_mm", "material_mm3", "bore_mm3", "mass_g"] {
            let (a, b) = (number(found, key), number(expected, key));
            assert!((a - b).abs() < 1e-6 * b.max(1.0), "{told}: {key} {a}, not {b}");
        }
    }
}

/// Code, severity and run of each finding, sorted.
fn codes(report: &Value) -> Vec<[String; 3]> {
    let mut codes: Vec<_> = findings(report)
        .iter()
        .map(|finding| ["code", "severity", "run"].map(|key| finding[key].to_string()))
        .collect();
    codes.sort();
    codes
}

#[test]
fn a_rigid_motion_changes_nothing_but_the_place() {
    let mut chance = Chance::of(0x309);
    for (design, document) in free_designs(0x309) {
        let told = told(&design);
        let rotation = Rotation3::from_axis_angle(&Unit::new_normalize(chance.point(1.0)), chance.from(0.1, 3.0));
        let shift = chance.point(20.0);
        let (at, along) = (|p| rotation * p + shift, |d| rotation * d);
        let moved = Motion { at: &at, along: &along, mirrors: false }.of(&document);
        let (here, there) = (report(&design.text, &told), report(&moved.to_string(), &told));
        for (a, b) in runs(&there).iter().zip(runs(&here)) {
            same_numbers(a, b, &told);
            // Of two links as long as each other either may be taken.
            if !design.kind.contains("link") {
                same_table(&table(a), &table(b), |turn| turn, &told);
            }
        }
        assert_eq!(codes(&there), codes(&here), "{told}");
    }
}

#[test]
fn a_mirror_turns_every_rotation_over() {
    for (design, document) in free_designs(0x312) {
        let told = told(&design);
        let flip = |v: Vector3<f64>| Vector3::new(-v.x, v.y, v.z);
        let mirrored = Motion { at: &flip, along: &flip, mirrors: true }.of(&document);
        let (here, there) = (report(&design.text, &told), report(&mirrored.to_string(), &told));
        for (a, b) in runs(&there).iter().zip(runs(&here)) {
            same_numbers(a, b, &told);
            if !design.kind.contains("link") {
                same_table(&table(a), &table(b), |turn| -turn, &told);
            }
        }
        assert_eq!(codes(&there), codes(&here), "{told}");
    }
}

#[test]
fn a_run_turned_round_is_the_same_tube() {
    for design in designs(0x4e7, ROUNDS * KINDS.len()) {
        let told = told(&design);
        let turned = turned_round(&serde_json::from_str(&design.text).expect("JSON"));
        let (here, there) = (report(&design.text, &told), report(&turned.to_string(), &told));
        for (a, b) in runs(&there).iter().zip(runs(&here)) {
            same_numbers(a, b, &told);
            if !design.kind.contains("link") && design.expect == Expect::Made {
                same_table(&table(a), &reversed(&table(b)), |turn| turn, &told);
            }
        }
    }
}

/// The table read from the other end: straights and bends in reverse; a rotation stays with the straight it is about.
fn reversed(rows: &[[f64; 4]]) -> Vec<[f64; 4]> {
    let last = rows.len() - 1;
    let rotation = |row: usize| if row == 0 || row >= last { 0.0 } else { rows[last - row][1] };
    (0..=last)
        .map(|row| {
            let bend = if row < last { rows[last - 1 - row] } else { rows[last] };
            [rows[last - row][0], rotation(row), bend[2], bend[3]]
        })
        .collect()
}

#[test]
fn the_bend_table_says_the_same_tube_as_the_points() {
    for design in designs(0x7ab1e, ROUNDS * KINDS.len()) {
        let told = told(&design);
        for run in runs(&report(&design.text, &told)).iter().filter(|run| run["made"] == true && bends_only(run)) {
            let ends = run["points_mm"].as_array().expect("points");
            let [first, last] = [&ends[0], &ends[ends.len() - 1]].map(|end| Vector3::from(point(end)));
            let (told_by_table, true_one) = (bent(&table(run)).norm(), (last - first).norm());
            // The end of a long tube swings by its length times the rounding of an angle in degrees.
            let slack = 1e-9 * number(run, "length_mm").max(100.0);
            assert!((told_by_table - true_one).abs() < slack, "{told}: {told_by_table}, not {true_one}");
        }
    }
}

/// Whether a table says all of the tube: a coil or a smooth curve is more than an angle and a radius.
fn bends_only(run: &Value) -> bool {
    run["bend_table"].as_array().expect("rows").iter().all(|row| row["kind"] == "bend" || row["kind"] == "end")
}

/// Where a tube that is bent by a table ends, from its start.
fn bent(rows: &[[f64; 4]]) -> Vector3<f64> {
    let (mut at, mut ahead, mut side) = (Vector3::zeros(), Vector3::x(), Vector3::y());
    for &[straight, rotation, angle, radius] in rows {
        at += ahead * straight;
        side = Rotation3::from_axis_angle(&Unit::new_normalize(ahead), rotation.to_radians()) * side;
        let (sin, cos) = libm::sincos(angle.to_radians());
        at += (ahead * sin + side * (1.0 - cos)) * radius;
        (ahead, side) = ((ahead * cos + side * sin).normalize(), side * cos - ahead * sin);
        side = (side - ahead * ahead.dot(&side)).normalize();
    }
    at
}
