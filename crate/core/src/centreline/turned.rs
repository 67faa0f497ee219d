//! A centreline seen along other axes.

use super::curve::Form;
use super::{Centreline, Curve, Piece, Shape};
use crate::layout::{PlacedCoil, Vec3};

impl Centreline {
    /// The same curve in the coordinates along three unit directions that make a right-handed frame.
    pub fn turned(&self, rows: &[Vec3; 3]) -> Self {
        let seen = |v: &Vec3| Vec3::new(rows[0].dot(v), rows[1].dot(v), rows[2].dot(v));
        let pieces = self.pieces.iter().map(|piece| Piece {
            start: seen(&piece.start),
            direction: seen(&piece.direction),
            shape: match &piece.shape {
                Shape::Straight => Shape::Straight,
                Shape::Arc { radius, angle, normal, station } => {
                    Shape::Arc { radius: *radius, angle: *angle, normal: seen(normal), station: *station }
                }
                Shape::Curve(curve) => Shape::Curve(Curve { form: turned(&curve.form, &seen), ..*curve }),
            },
            ..*piece
        });
        Self { pieces: pieces.collect(), length: self.length }
    }
}

fn turned(form: &Form, seen: &impl Fn(&Vec3) -> Vec3) -> Form {
    match form {
        Form::Helix(coil) => Form::Helix(PlacedCoil {
            centre: seen(&coil.centre),
            axis: seen(&coil.axis),
            across: [seen(&coil.across[0]), seen(&coil.across[1])],
            ..*coil
        }),
        Form::Cubic(coefficients) => Form::Cubic(coefficients.map(|c| seen(&c))),
    }
}
