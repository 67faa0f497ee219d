//! What a coolant meets along a centreline: straights, bends, and places of a curvature.
//!
//! It knows nothing of the bore, so one course serves every bore and flow that is tried.

use super::bend::Bend;
use crate::centreline::{Centreline, Form, Piece, Shape};

/// A stretch of a centreline as the coolant meets it. Lengths mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stretch {
    /// Straight tube.
    Straight {
        /// Its length, mm.
        length: f64,
    },
    /// A circular bend.
    Bend(Bend),
    /// A length of a coil at the curvature that it has there.
    Coil {
        /// Its length, mm.
        length: f64,
        /// Its curvature, 1/mm.
        curvature: f64,
    },
    /// A bonded joint of two pieces whose bores may be off either way.
    Joint {
        /// How far each diameter may be off, plus or minus mm.
        off: f64,
    },
    /// A length of a smooth curve at the curvature that it has there.
    Curve {
        /// Its length, mm.
        length: f64,
        /// Its curvature, 1/mm.
        curvature: f64,
    },
}

/// A whole centreline as the coolant meets it.
#[derive(Debug, Clone, PartialEq)]
pub struct Course {
    /// Its stretches in order.
    pub stretches: Vec<Stretch>,
}

/// Nodes and weights of Gauss and Legendre's rule of six points on [0, 1]. Abramowitz and Stegun, Handbook of Mathematical
/// Functions, table 25.4.
const PLACES: [[f64; 2]; 6] = [
    [0.033_765_242_898_423_99, 0.085_662_246_189_585_17],
    [0.169_395_306_766_867_74, 0.180_380_786_524_069_3],
    [0.380_690_406_958_401_56, 0.233_956_967_286_345_52],
    [0.619_309_593_041_598_4, 0.233_956_967_286_345_52],
    [0.830_604_693_233_132_3, 0.180_380_786_524_069_3],
    [0.966_234_757_101_576, 0.085_662_246_189_585_17],
];

impl Course {
    /// The course of a centreline. A coil of steady radius has one curvature; any other curve has six places on each of
    /// its pieces, by which an integral over its arc length is taken.
    pub fn of(line: &Centreline) -> Self {
        Self { stretches: line.pieces.iter().flat_map(stretches).collect() }
    }
}

fn stretches(piece: &Piece) -> Vec<Stretch> {
    let length = piece.length;
    match &piece.shape {
        Shape::Straight => vec![Stretch::Straight { length }],
        Shape::Arc { radius, angle, .. } => vec![Stretch::Bend(Bend { radius: *radius, angle: *angle })],
        Shape::Curve(curve) => match &curve.form {
            Form::Helix(coil) if coil.widening == 0.0 => {
                vec![Stretch::Coil { length, curvature: piece.at(0.0).curvature.norm() }]
            }
            form => {
                let place = |[at, weight]: [f64; 2]| {
                    let (length, curvature) = (length * weight, piece.at(length * at).curvature.norm());
                    match form {
                        Form::Helix(_) => Stretch::Coil { length, curvature },
                        Form::Cubic(_) => Stretch::Curve { length, curvature },
                    }
                };
                PLACES.map(place).to_vec()
            }
        },
    }
}
