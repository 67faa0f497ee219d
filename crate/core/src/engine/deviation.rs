//! How closely a file follows the exact tube: as stated, or as closely as the printer's limits allow.

use serde_json::Value;

use super::stages::{Piece, Stages, checked_deviation};
use crate::coupon::Compensation;
use crate::design::Refusal;
use crate::export::stl_size;
use crate::mesh::Mesh;
use crate::quantity::USUAL_DEVIATION;

/// What a request says of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Deviation {
    /// Millimetres.
    Of(f64),
    /// The finest whose STL has no more triangles and bytes than the printer takes.
    Fit,
}

/// Deviations that are tried for a file to stay within the printer's limits, the finest first, and what is taken where
/// none of them does, mm.
const FINER: [f64; 6] = [USUAL_DEVIATION, 0.02, 0.05, 0.1, 0.2, 0.5];
const COARSEST: f64 = 1.0;

impl Deviation {
    /// A request's `deviation`: a number of millimetres, or the word "fit"; the usual one where it is left out.
    pub fn read(value: Option<&Value>) -> Result<Self, Refusal> {
        match value {
            None => Ok(Self::Of(USUAL_DEVIATION)),
            Some(Value::String(word)) if word == "fit" => Ok(Self::Fit),
            Some(value) => checked_deviation(value.as_f64().unwrap_or(f64::NAN), "/deviation").map(Self::Of),
        }
    }

    /// The finest that it may come to, mm.
    pub fn finest(self) -> f64 {
        match self {
            Self::Of(deviation) => deviation,
            Self::Fit => USUAL_DEVIATION,
        }
    }
}

/// The mesh of a piece's file with its deviation, mm, corrected by what a coupon said. Where no deviation stays within the
/// printer's limits it is the coarsest, and an inspection says so.
///
/// # Errors
/// A run that cannot be made: what is found about it.
pub(super) fn meshed(
    stages: &Stages<'_>,
    piece: &Piece,
    deviation: Deviation,
    correction: Option<&Compensation>,
) -> Result<(f64, Mesh), Refusal> {
    let mesh = |deviation: f64| match correction {
        Some(by) => stages.corrected_mesh(piece, deviation, by),
        None => stages.piece_mesh(piece, deviation),
    };
    let Deviation::Of(deviation) = deviation else {
        let printer = &stages.design.process.printer;
        let taken = |mesh: &Mesh| {
            let triangles = mesh.indices.len() / 3;
            printer.most_triangles.is_none_or(|most| triangles as f64 <= most)
                && printer.most_mb.is_none_or(|most| stl_size(triangles as u64) as f64 <= most * 1e6)
        };
        for deviation in FINER {
            let finer = mesh(deviation)?;
            if taken(&finer) {
                return Ok((deviation, finer));
            }
        }
        return Ok((COARSEST, mesh(COARSEST)?));
    };
    Ok((deviation, mesh(deviation)?))
}
