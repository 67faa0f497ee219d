//! The exact box round a tube: extremes of discs carried along the centreline.

use super::{Centreline, Piece, Shape};
use crate::layout::Vec3;

/// An axis-aligned box, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    /// Lowest corner.
    pub min: Vec3,
    /// Highest corner.
    pub max: Vec3,
}

impl Bounds {
    /// The least box round both.
    pub fn with(&self, other: &Self) -> Self {
        Self { min: self.min.inf(&other.min), max: self.max.sup(&other.max) }
    }
}

/// The exact box of the skin: discs across the centreline of the radius that `outer_radius` gives at each arc length.
/// `breaks` are the arc lengths where that radius changes its course; between two of them it runs straight.
pub fn bounds(line: &Centreline, breaks: &[f64], outer_radius: impl Fn(f64) -> f64) -> Bounds {
    let mut span = Bounds { min: Vec3::repeat(f64::INFINITY), max: Vec3::repeat(f64::NEG_INFINITY) };
    for piece in &line.pieces {
        let disc = |s: f64| disc(piece, s, outer_radius(s));
        let inner = breaks.iter().copied().filter(|s| *s > piece.from && *s < piece.to());
        let cuts: Vec<f64> = [piece.from].into_iter().chain(inner).chain([piece.to()]).collect();
        for s in &cuts {
            span = span.with(&disc(*s));
        }
        for axis in 0..3 {
            for s in turning_points(piece, axis) {
                let there = disc(piece.from + s);
                span.min[axis] = span.min[axis].min(there.min[axis]);
                span.max[axis] = span.max[axis].max(there.max[axis]);
            }
        }
        if piece.radius().is_some() {
            for part in cuts.windows(2).filter(|part| outer_radius(part[0]) != outer_radius(part[1])) {
                span = span.with(&slanted(part[0], part[1], &disc));
            }
        }
    }
    span
}

/// The box of the disc across a piece at arc length `s` of the centreline.
fn disc(piece: &Piece, s: f64, radius: f64) -> Bounds {
    let sample = piece.at(s - piece.from);
    // A disc reaches radius * sqrt(1 - t^2) along an axis to which its normal has the component t.
    let reach = sample.tangent.map(|t| radius * (1.0 - t * t).max(0.0).sqrt());
    Bounds { min: sample.point - reach, max: sample.point + reach }
}

/// The box of discs whose radius changes along an arc, where extremes need not be level: each is closed in on by golden
/// sections in parts that are short enough to have one extreme each.
fn slanted(from: f64, to: f64, disc: &impl Fn(f64) -> Bounds) -> Bounds {
    const PARTS: u32 = 8;
    const SECTIONS: u32 = 48;
    let golden = (5f64.sqrt() - 1.0) / 2.0;
    let mut span = disc(from).with(&disc(to));
    let reaches: [fn(&Bounds, usize) -> f64; 2] = [|of, axis| of.max[axis], |of, axis| -of.min[axis]];
    for part in 0..PARTS {
        let place = |step: u32| from + (to - from) * f64::from(step) / f64::from(PARTS);
        for axis in 0..3 {
            for reach in reaches {
                let (mut low, mut high) = (place(part), place(part + 1));
                for _ in 0..SECTIONS {
                    let (a, b) = (high - golden * (high - low), low + golden * (high - low));
                    if reach(&disc(a), axis) >= reach(&disc(b), axis) { high = b } else { low = a }
                }
                span = span.with(&disc((low + high) / 2.0));
            }
        }
    }
    span
}

/// Where a piece runs level in a coordinate, as arc lengths on it. With a bend radius above the tube's and a
/// steady outer radius, the skin's extremes lie there or at the piece's ends.
fn turning_points(piece: &Piece, axis: usize) -> Vec<f64> {
    let (radius, angle, normal) = match &piece.shape {
        Shape::Straight => return Vec::new(),
        Shape::Arc { radius, angle, normal, .. } => (radius, angle, normal),
        Shape::Curve(curve) => return curve.level(axis).into_iter().map(|u| curve.arc_length(u)).collect(),
    };
    let (along, inward) = (piece.direction[axis], normal[axis]);
    if along == 0.0 && inward == 0.0 {
        return Vec::new();
    }
    // The tangent's component along cos(a) + inward sin(a) vanishes at two opposite angles.
    let first = libm::atan2(-along, inward);
    (-2..=4)
        .map(|half_turns| first + f64::from(half_turns) * core::f64::consts::PI)
        .filter(|turned| *turned > 0.0 && turned < angle)
        .map(|turned| turned * radius)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::centreline::Piece;

    #[test]
    fn a_taper_on_an_arc_is_boxed_where_it_reaches_farthest() {
        let piece = Piece {
            from: 0.0,
            length: 15.0,
            start: Vec3::zeros(),
            direction: Vec3::x(),
            shape: Shape::Arc { radius: 10.0, angle: 1.5, normal: Vec3::new(0.6, 0.0, 0.8), station: None },
        };
        // A direction across the arc's start, so that the arc is a true one.
        let piece = Piece { direction: Vec3::new(0.8, 0.0, -0.6), ..piece };
        let line = Centreline { pieces: vec![piece.clone()], length: 15.0 };
        let radius = |s: f64| 2.0 + 0.2 * s;
        let found = bounds(&line, &[], radius);
        // Twenty thousand discs: never beyond the box, and within their own spacing's square of it.
        let mut judged = disc(&piece, 0.0, radius(0.0));
        for step in 0..=20_000 {
            let s = 15.0 * f64::from(step) / 20_000.0;
            judged = judged.with(&disc(&piece, s, radius(s)));
        }
        for axis in 0..3 {
            for (ours, theirs) in [(found.min[axis], judged.min[axis]), (-found.max[axis], -judged.max[axis])] {
                assert!(ours <= theirs + 1e-12 && ours > theirs - 1e-6, "axis {axis}: {ours} {theirs}");
            }
        }
    }
}
