//! How closely a file follows the exact tube: as stated, or as closely as the printer's limits allow.

use serde_json::Value;

use super::stages::{Stages, checked_deviation};
use crate::coupon::Compensation;
use crate::design::Refusal;
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

/// Deviations that are tried for a file to stay within the printer's limits, the finest first, mm.
const LADDER: [f64; 7] = [USUAL_DEVIATION, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0];
/// Bytes of a binary STL beside its triangles, and of each.
const STL_HEAD: f64 = 84.0;
const STL_TRIANGLE: f64 = 50.0;

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

/// The mesh of a run's file with its deviation, mm, corrected by what a coupon said. Where no deviation stays within the printer's limits it is the coarsest, and
/// an inspection says so.
///
/// # Errors
/// A run that cannot be made: what is found about it.
pub(super) fn meshed(
    stages: &Stages<'_>,
    run: usize,
    deviation: Deviation,
    correction: Option<&Compensation>,
) -> Result<(f64, Mesh), Refusal> {
    let printer = &stages.design.process.printer;
    let most = printer.most_triangles.unwrap_or(f64::INFINITY);
    let most = printer.most_mb.map_or(most, |mb| most.min((mb * 1e6 - STL_HEAD) / STL_TRIANGLE));
    let (ladder, most) = match deviation {
        Deviation::Of(deviation) => (vec![deviation], f64::INFINITY),
        Deviation::Fit => (LADDER.to_vec(), most),
    };
    let coarsest = ladder[ladder.len() - 1];
    for deviation in ladder {
        let mesh = match correction {
            Some(by) => stages.corrected_mesh(run, deviation, by)?,
            None => stages.mesh(run, deviation)?,
        };
        if deviation >= coarsest || (mesh.indices.len() / 3) as f64 <= most {
            return Ok((deviation, mesh));
        }
    }
    Err(stages.not_made(run))
}
