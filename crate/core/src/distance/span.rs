//! A stretch of one piece of a centreline, with its chord and how far the curve may stray from it.

use super::segment::on_segment;
use crate::centreline::{Piece, Shape};
use crate::layout::Vec3;
use core::f64::consts::PI;

/// A stretch of one piece.
#[derive(Debug, Clone, Copy)]
pub(super) struct Span<'c> {
    pub piece: &'c Piece,
    /// Arc lengths on the whole centreline.
    pub from: f64,
    pub to: f64,
    /// The chord.
    pub start: Vec3,
    pub end: Vec3,
    /// No point of the stretch is farther from the chord than this.
    pub stray: f64,
}

impl<'c> Span<'c> {
    /// The part of `piece` between two arc lengths of the whole centreline; none where it has no part there.
    pub fn of(piece: &'c Piece, from: f64, to: f64) -> Option<Self> {
        let (from, to) = (from.max(piece.from), to.min(piece.to()));
        if from > to {
            return None;
        }
        let end = |s: f64| piece.at(s - piece.from).point;
        Some(Self::between(piece, (from, end(from)), (to, end(to))))
    }

    fn between(piece: &'c Piece, (from, start): (f64, Vec3), (to, end): (f64, Vec3)) -> Self {
        let stray = match (piece.radius(), &piece.shape) {
            (None, _) => 0.0,
            (Some(radius), Shape::Curve(_)) => {
                // No curve leaves its chord farther than the ellipse that a string of its length draws round it, and
                // none of this curvature by more than L^2 / (8 R).
                let (length, chord) = (to - from, (end - start).norm());
                let string = (length * length - chord * chord).max(0.0).sqrt() / 2.0;
                if length < 0.5 * radius { string.min(length * length / (8.0 * radius)) } else { string }
            }
            (Some(radius), _) => {
                let turned = (to - from) / radius;
                // R (1 - cos(t / 2)) <= R t^2 / 8 up to half a turn; beyond, all is within the circle.
                if turned <= PI { radius * turned * turned / 8.0 } else { 2.0 * radius }
            }
        };
        Self { piece, from, to, start, end, stray }
    }

    pub fn length(&self) -> f64 {
        self.to - self.from
    }

    /// The curve's own point at an arc length of the whole centreline.
    pub fn point(&self, s: f64) -> Vec3 {
        self.piece.at(s - self.piece.from).point
    }

    /// Arc length at a fraction of the stretch.
    pub fn at_fraction(&self, fraction: f64) -> f64 {
        self.from + (self.to - self.from) * fraction
    }

    pub fn halves(&self) -> [Self; 2] {
        let middle = self.at_fraction(0.5);
        let point = self.point(middle);
        [
            Self::between(self.piece, (self.from, self.start), (middle, point)),
            Self::between(self.piece, (middle, point), (self.to, self.end)),
        ]
    }

    /// Arc length of a curve's point near `p` that no small step brings nearer: Newton's steps on the way along the
    /// tangent, from the nearest of a few.
    fn nearest_by_steps(&self, p: &Vec3) -> f64 {
        const LOOKS: u32 = 8;
        let distance = |s: f64| (self.point(s) - p).norm_squared();
        let looks = (0..=LOOKS).map(|look| self.at_fraction(f64::from(look) / f64::from(LOOKS)));
        let mut s = looks.min_by(|a, b| distance(*a).total_cmp(&distance(*b))).unwrap_or(self.from);
        for _ in 0..20 {
            let there = self.piece.at(s - self.piece.from);
            let away = there.point - p;
            let rate = 1.0 + away.dot(&there.curvature);
            let next = (s - away.dot(&there.tangent) / rate.max(0.1)).clamp(self.from, self.to);
            if (next - s).abs() < 1e-12 || distance(next) > distance(s) {
                break;
            }
            s = next;
        }
        s
    }

    /// Arc length of the stretch's nearest point to `p`, in closed form but for curves.
    pub fn nearest(&self, p: &Vec3) -> f64 {
        let (radius, normal) = match &self.piece.shape {
            Shape::Straight => return self.at_fraction(on_segment(p, &self.start, &self.end)),
            Shape::Arc { radius, normal, .. } => (radius, normal),
            Shape::Curve(_) => return self.nearest_by_steps(p),
        };
        let to_point = p - (self.piece.start + normal * *radius);
        let turned = libm::atan2(to_point.dot(&self.piece.direction), -to_point.dot(normal));
        let s = self.piece.from + if turned < 0.0 { turned + 2.0 * PI } else { turned } * radius;
        if (self.from..=self.to).contains(&s) {
            s
        } else if (p - self.start).norm_squared() <= (p - self.end).norm_squared() {
            self.from
        } else {
            self.to
        }
    }
}
