//! The exact box round a tube: extremes of discs carried along straights and arcs.

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
/// `breaks` are the arc lengths where that radius changes its course; between two of them it is constant on arcs.
pub fn bounds(line: &Centreline, breaks: &[f64], outer_radius: impl Fn(f64) -> f64) -> Bounds {
    let mut span = Bounds { min: Vec3::repeat(f64::INFINITY), max: Vec3::repeat(f64::NEG_INFINITY) };
    for piece in &line.pieces {
        let inner = breaks.iter().copied().filter(|s| *s > piece.from && *s < piece.to());
        for s in [piece.from, piece.to()].into_iter().chain(inner) {
            let sample = piece.at(s - piece.from);
            let radius = outer_radius(s);
            // A disc reaches radius * sqrt(1 - t^2) along an axis to which its normal has the component t.
            let reach = sample.tangent.map(|t| radius * (1.0 - t * t).max(0.0).sqrt());
            span = span.with(&Bounds { min: sample.point - reach, max: sample.point + reach });
        }
        for axis in 0..3 {
            for (s, point) in turning_points(piece, axis) {
                let radius = outer_radius(piece.from + s);
                span.min[axis] = span.min[axis].min(point - radius);
                span.max[axis] = span.max[axis].max(point + radius);
            }
        }
    }
    span
}

/// Where an arc runs level in a coordinate: its arc length on the piece and the coordinate there. With a bend radius
/// above the tube's, the skin's extremes lie there or at the arc's ends.
fn turning_points(piece: &Piece, axis: usize) -> Vec<(f64, f64)> {
    let Shape::Arc { radius, angle, normal, .. } = &piece.shape else { return Vec::new() };
    let (along, inward) = (piece.direction[axis], normal[axis]);
    if along == 0.0 && inward == 0.0 {
        return Vec::new();
    }
    // The tangent's component along cos(a) + inward sin(a) vanishes at two opposite angles.
    let first = libm::atan2(-along, inward);
    (-2..=4)
        .map(|half_turns| first + f64::from(half_turns) * core::f64::consts::PI)
        .filter(|turned| *turned > 0.0 && turned < angle)
        .map(|turned| (turned * radius, piece.at(turned * radius).point[axis]))
        .collect()
}
