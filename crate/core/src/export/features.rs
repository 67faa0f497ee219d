//! What a run is made of, as tables and drawings tell it: its bends, and the points between which it goes.

use crate::centreline::{BendKind, BendRow, Centreline, Curve, Form, Piece, Shape, apexes, bend_table};
use crate::layout::Vec3;
use core::f64::consts::PI;

const APEX: &str = "apex";
const END: &str = "end";
const MIDDLE: &str = "middle of bend";
/// Places on a coil, and the same on a smooth curve: its start, its end, on the way.
const STARTS: [&str; 2] = ["coil start", "curve start"];
const ENDS: [&str; 2] = ["coil end", "curve end"];
const ON: [&str; 2] = ["on coil", "on curve"];
const PASSED: &str = "point passed";
/// Everything that a point can be, in words.
pub(super) const POINT_KINDS: [&str; 10] =
    [APEX, END, MIDDLE, STARTS[0], STARTS[1], ENDS[0], ENDS[1], ON[0], ON[1], PASSED];

/// The apex of a bend of more than this lies far outside it, radians: 120 degrees, 1.7 radii.
const FAR: f64 = 2.0 * PI / 3.0 + 1e-9;

/// A bend, a coil or a smooth curve with its place on the tube.
#[derive(Debug, Clone)]
pub(super) struct Feature {
    /// Its row of the bend table, from 0.
    pub row: usize,
    /// Its numbers.
    pub told: BendRow,
    /// Arc length where it starts, mm.
    pub from: f64,
    /// Arc length where it ends, mm.
    pub to: f64,
}

/// A point of a run's list.
#[derive(Debug, Clone)]
pub(super) struct Point {
    /// Where it is, mm.
    pub at: Vec3,
    /// What it is, in words.
    pub what: &'static str,
    /// The row of the bend table that it belongs to, from 0; none for an end.
    pub row: Option<usize>,
    /// Whether a straight line leads to it and from it along the tube or to an apex.
    straight: [bool; 2],
    /// Whether it lies on the tube or near it; the apex of a bend that turns far back does not.
    pub is_near: bool,
}

impl Point {
    /// Whether the way to the next point is a leg: a straight line between points near the tube.
    pub fn leads_straight_to(&self, next: &Self) -> bool {
        self.straight[1] && next.straight[0] && self.is_near && next.is_near
    }
}

/// The bends of a run, first to last.
pub(super) fn features(line: &Centreline) -> Vec<Feature> {
    let mut at = 0.0;
    let bends = bend_table(line).into_iter().filter(|row| row.kind != BendKind::End);
    bends
        .enumerate()
        .map(|(row, told)| {
            let from = at + told.straight;
            at = from + told.length;
            Feature { row, told, from, to: at.min(line.length) }
        })
        .collect()
}

/// The points of the report, each with what it is: first end, apexes and points of coils and curves, last end.
pub(super) fn points(line: &Centreline, features: &[Feature]) -> Vec<Point> {
    let mut known = vec![(END, None, [false, true])];
    for (index, piece) in line.pieces.iter().enumerate() {
        let row = row_of(piece, features);
        let before = index.checked_sub(1).map(|before| &line.pieces[before]);
        match &piece.shape {
            Shape::Straight => {}
            Shape::Arc { angle, .. } if *angle < PI - 1e-6 => known.push((APEX, row, [true, true])),
            // A bend of half a turn or more has no apex; its middle stands in, and no leg leads there.
            Shape::Arc { .. } => known.push((MIDDLE, row, [false, false])),
            Shape::Curve(curve) => {
                if index > 0 && !matches!(before.map(|piece| &piece.shape), Some(Shape::Curve(_))) {
                    known.push((named(curve, STARTS), row, [true, false]));
                }
                if let Some(next) = line.pieces.get(index + 1) {
                    known.push(end_of(curve, next, row));
                }
            }
        }
    }
    known.push((END, None, [true, false]));
    let apexes = apexes(line);
    let turn = |row: Option<usize>| row.and_then(|row| features.get(row)).map_or(0.0, |feature| feature.told.angle);
    apexes
        .into_iter()
        .zip(known)
        .map(|(at, (what, row, straight))| Point { at, what, row, straight, is_near: what != APEX || turn(row) <= FAR })
        .collect()
}

/// What the end of a piece of a coil or a curve is, whose next piece is `next`.
fn end_of(curve: &Curve, next: &Piece, row: Option<usize>) -> (&'static str, Option<usize>, [bool; 2]) {
    match &next.shape {
        Shape::Curve(next) if next.whole == curve.whole => {
            // A span of a spline ends at a point that the builder stated.
            let passed = matches!(curve.form, Form::Cubic(_)) && curve.span[1] == 1.0;
            (if passed { PASSED } else { named(curve, ON) }, row, [false, false])
        }
        Shape::Curve(_) => (named(curve, ENDS), row, [false, false]),
        _ => (named(curve, ENDS), row, [false, true]),
    }
}

fn named(curve: &Curve, [coil, smooth]: [&'static str; 2]) -> &'static str {
    match curve.form {
        Form::Helix(_) => coil,
        Form::Cubic(_) => smooth,
    }
}

/// The row that a piece is part of.
fn row_of(piece: &Piece, features: &[Feature]) -> Option<usize> {
    let middle = piece.from + piece.length / 2.0;
    features.iter().position(|feature| (feature.from..=feature.to).contains(&middle))
}
