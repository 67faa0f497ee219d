//! Points, tangents and curvature by arc length.

use super::{Centreline, Piece, Sample, Shape};
use crate::layout::Vec3;

impl Centreline {
    /// Point, tangent and curvature at arc length `s`, clamped to `[0, length]`. At a joint, the later piece's.
    pub fn at(&self, s: f64) -> Sample {
        let next = self.pieces.partition_point(|piece| piece.from <= s);
        match self.pieces.get(next.saturating_sub(1)) {
            Some(piece) => piece.at(s - piece.from),
            None => Sample { point: Vec3::zeros(), tangent: Vec3::x(), curvature: Vec3::zeros() },
        }
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
        }
    }

    /// Its bend radius, mm; none for a straight.
    pub fn radius(&self) -> Option<f64> {
        match self.shape {
            Shape::Straight => None,
            Shape::Arc { radius, .. } => Some(radius),
        }
    }

    /// Arc length at which it ends, mm.
    pub fn to(&self) -> f64 {
        self.from + self.length
    }

    /// The unit axis that an arc turns about, by the right-hand rule; none for a straight.
    pub fn axis(&self) -> Option<Vec3> {
        match &self.shape {
            Shape::Straight => None,
            Shape::Arc { normal, .. } => Some(self.direction.cross(normal)),
        }
    }
}
