//! Points, tangents and curvature by arc length.

use super::curve::sharpest;
use super::{Centreline, Piece, Sample, Shape};
use crate::layout::{Vec3, perpendicular};

impl Centreline {
    /// Point, tangent and curvature at arc length `s`, clamped to `[0, length]`. At a joint, the later piece's.
    pub fn at(&self, s: f64) -> Sample {
        let next = self.pieces.partition_point(|piece| piece.from <= s);
        match self.pieces.get(next.saturating_sub(1)) {
            Some(piece) => piece.at(s - piece.from),
            None => Sample { point: Vec3::zeros(), tangent: Vec3::x(), curvature: Vec3::zeros() },
        }
    }

    /// Largest coordinate of its pieces' ends, and of a bend's far side, mm.
    pub fn reach(&self) -> f64 {
        self.pieces
            .iter()
            .flat_map(|piece| {
                let end = piece.at(piece.length).point;
                let bulge = piece.radius().map_or(0.0, |radius| piece.length.min(2.0 * radius));
                [piece.start.amax() + bulge, end.amax()]
            })
            .fold(0.0, f64::max)
    }

    /// The least bend radius on it, mm; infinite where nothing bends.
    pub fn tightest_radius(&self) -> f64 {
        self.pieces.iter().filter_map(Piece::radius).fold(f64::INFINITY, f64::min)
    }
}

impl Piece {
    /// Point, tangent and curvature at `s` mm from the piece's start, clamped to `[0, length]`.
    pub fn at(&self, s: f64) -> Sample {
        let s = s.clamp(0.0, self.length);
        match &self.shape {
            Shape::Straight => {
                Sample { point: self.start + self.direction * s, tangent: self.direction, curvature: Vec3::zeros() }
            }
            Shape::Arc { radius, angle, normal, .. } => {
                // The whole angle is used at the very end, so that a quarter turn ends exactly square.
                let turned = if s == self.length { *angle } else { s / radius };
                let (sin, cos) = crate::layout::turn(turned);
                let tangent = self.direction * cos + normal * sin;
                let inward = normal * cos - self.direction * sin;
                Sample {
                    point: self.start + (self.direction * sin + normal * (1.0 - cos)) * *radius,
                    tangent,
                    curvature: inward / *radius,
                }
            }
            Shape::Curve(curve) => curve.at(s, self.length),
        }
    }

    /// Its least radius of curvature, mm; none for a straight.
    pub fn radius(&self) -> Option<f64> {
        match self.shape {
            Shape::Straight => None,
            Shape::Arc { radius, .. } => Some(radius),
            Shape::Curve(curve) => Some(curve.tightest),
        }
    }

    /// Angle that its tangent turns through, radians.
    pub fn turned(&self) -> f64 {
        match self.shape {
            Shape::Straight => 0.0,
            Shape::Arc { angle, .. } => angle,
            Shape::Curve(curve) => curve.turned,
        }
    }

    /// Index of the station that it belongs to; none for straights and for bends of the run's own radius that join
    /// what a port, a corner or a coil asks for.
    pub fn station(&self) -> Option<usize> {
        match self.shape {
            Shape::Straight => None,
            Shape::Arc { station, .. } => station,
            Shape::Curve(curve) => Some(curve.station),
        }
    }

    /// Arc length on the piece, mm, of its tightest place.
    pub fn tightest_at(&self) -> f64 {
        match &self.shape {
            Shape::Curve(curve) => curve.arc_length(sharpest(&curve.form, curve.span)),
            _ => self.length / 2.0,
        }
    }

    /// Arc length at which it ends, mm.
    pub fn to(&self) -> f64 {
        self.from + self.length
    }

    /// The unit axis that it turns about at its start and at its end, by the right-hand rule; none for a straight.
    pub fn axes(&self) -> Option<[Vec3; 2]> {
        match &self.shape {
            Shape::Straight => None,
            Shape::Arc { normal, .. } => {
                let axis = self.direction.cross(normal);
                Some([axis, axis])
            }
            Shape::Curve(_) => Some([0.0, self.length].map(|s| {
                let there = self.at(s);
                // Where a curve runs straight for a moment it has no axis; any across it will do.
                perpendicular(&there.tangent, &there.tangent.cross(&there.curvature))
            })),
        }
    }
}
