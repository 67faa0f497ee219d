//! Draws a centreline piece after piece.

use super::curve::{Curve, sample};
use super::{Centreline, Piece, Shape};
use crate::layout::Vec3;

/// Shorter straights are dropped: they are what rounding leaves between arcs that just meet, mm.
const SHORTEST_STRAIGHT: f64 = 1e-9;

/// Radius that a sharp corner is drawn with, mm, so that it is there to be found bad.
const SHARPEST: f64 = 1e-9;

/// Curves that turn less are straight, radians.
const NO_TURN: f64 = 1e-9;

/// Collects pieces; straights in one line become one.
#[derive(Debug, Default)]
pub(super) struct Pen {
    pieces: Vec<Piece>,
    length: f64,
}

/// A bend as the route states it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Bend {
    pub radius: f64,
    pub angle: f64,
    /// Unit direction to the centre, across the direction it starts in.
    pub normal: Vec3,
    pub station: Option<usize>,
}

impl Pen {
    /// A straight from `start` along `direction`.
    pub fn straight(&mut self, start: Vec3, direction: Vec3, length: f64) {
        if length <= SHORTEST_STRAIGHT {
            return;
        }
        if let Some(last) = self.pieces.last_mut()
            && last.shape == Shape::Straight
        {
            last.length += length;
            self.length += length;
            return;
        }
        self.push(start, direction, length, Shape::Straight);
    }

    /// An arc from `start` along `direction`; an arc of no angle draws nothing.
    pub fn arc(&mut self, start: Vec3, direction: Vec3, bend: Bend) {
        let Bend { angle, normal, station, .. } = bend;
        let radius = bend.radius.max(SHARPEST);
        let length = radius * angle;
        if length > 0.0 {
            self.push(start, direction, length, Shape::Arc { radius, angle, normal, station });
        }
    }

    /// A stretch of a curve; one that turns by nothing is a straight.
    pub fn curve(&mut self, curve: Curve) {
        let length = curve.length();
        let first = sample(&curve.form, curve.span[0]);
        if curve.turned < NO_TURN {
            return self.straight(first.point, first.tangent, length);
        }
        if length > 0.0 {
            self.push(first.point, first.tangent, length, Shape::Curve(curve));
        }
    }

    /// All pieces of another centreline after those drawn so far.
    pub fn append(&mut self, other: Centreline) {
        for piece in other.pieces {
            match piece.shape {
                Shape::Straight => self.straight(piece.start, piece.direction, piece.length),
                shape => self.push(piece.start, piece.direction, piece.length, shape),
            }
        }
    }

    pub fn finish(self) -> Centreline {
        Centreline { pieces: self.pieces, length: self.length }
    }

    fn push(&mut self, start: Vec3, direction: Vec3, length: f64, shape: Shape) {
        self.pieces.push(Piece { from: self.length, length, start, direction, shape });
        self.length += length;
    }
}
