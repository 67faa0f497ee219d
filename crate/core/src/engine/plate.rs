//! The file of a plate: all pieces that lie on it, in their places.

use serde_json::{Map, Value};

use super::deviation::{Deviation, meshed};
use super::files::{Watch, nothing_made, sound};
use super::stages::Stages;
use super::stance::placed;
use crate::coupon::Compensation;
use crate::design::Refusal;
use crate::export::{self, DesignTold, Kind, NamedMesh};
use crate::mesh::Mesh;
use crate::print::{Laid, Plates};

/// Where a request says which plate.
const KEY: &str = "/plate";

/// The request's `plate`, counted from 1; none for the kinds that are of no plate.
///
/// # Errors
/// A plate of another kind of file, and a file of a plate without its number.
pub(super) fn read(kind: Kind, keys: &Map<String, Value>) -> Result<Option<usize>, Refusal> {
    let value = keys.get("plate").filter(|value| !value.is_null());
    if kind != Kind::Plate {
        return match value {
            None => Ok(None),
            Some(_) => Err(Refusal::at(
                KEY,
                format!("Only a file of kind \"plate\" is of one plate; leave it out for \"{}\".", kind.word()),
            )),
        };
    }
    let number = value.and_then(Value::as_u64).filter(|number| *number > 0);
    let Some(number) = number else {
        return Err(Refusal::at(KEY, "Say which plate by its number, counted from 1, such as \"plate\": 1."));
    };
    Ok(Some(usize::try_from(number).unwrap_or(usize::MAX)))
}

/// What follows the design's name in the name of a plate's file.
pub(super) fn suffix(number: usize) -> String {
    format!("-plate-{number}")
}

/// The plate of that number, laid out anew.
///
/// # Errors
/// No such plate; a design of which no run can be made.
pub(super) fn file(
    stages: &Stages<'_>,
    number: usize,
    deviation: Deviation,
    correction: Option<&Compensation>,
    design: &DesignTold<'_>,
    watch: &mut Watch<'_>,
) -> Result<Vec<u8>, Refusal> {
    if stages.made().is_empty() {
        return Err(nothing_made());
    }
    // Looking for the stances takes about as long as the meshes.
    let Plates { plates, left_out } = Plates::of(stages, &mut |share| watch(share / 2.0));
    let Some(plate) = number.checked_sub(1).and_then(|index| plates.get(index)) else {
        let message = match (plates.len(), left_out.first()) {
            (0, Some(left)) => {
                format!("No piece fits on a plate. {}: {}", stages.design.runs[left.run].name, left.why)
            }
            (1, _) => format!("There is no plate {number}: all pieces lie on one."),
            (count, _) => format!("There is no plate {number}: the pieces lie on {count} plates, counted from 1."),
        };
        return Err(Refusal::at(KEY, message));
    };
    let mut done = 0.0;
    bytes(stages, plate, number, correction.is_some(), design, |laid| {
        let (_, mesh) = meshed(stages, &laid.piece, deviation, correction)?;
        done += 1.0;
        watch(0.5 + 0.5 * done / (plate.len() as f64 + 1.0));
        Ok(mesh)
    })
}

/// A plate as 3MF; `mesh` gives a piece's file in the datum.
///
/// # Errors
/// Those of `mesh`; a mesh with a flaw.
pub(super) fn bytes(
    stages: &Stages<'_>,
    plate: &[Laid],
    number: usize,
    corrected: bool,
    design: &DesignTold<'_>,
    mut mesh: impl FnMut(&Laid) -> Result<Mesh, Refusal>,
) -> Result<Vec<u8>, Refusal> {
    let mut solids = Vec::with_capacity(plate.len());
    for laid in plate {
        let mesh = placed(stages, &laid.piece, &laid.standing, &mesh(laid)?, corrected)?;
        let name = laid.piece.called(&stages.design.runs[laid.piece.run].name);
        solids.push((name, sound(stages, laid.piece.run, mesh)?));
    }
    let named: Vec<NamedMesh<'_>> = solids.iter().map(|(name, mesh)| NamedMesh { name, mesh }).collect();
    let title = format!("{}, plate {number}", design.title);
    Ok(export::three_mf(&named, &design.meta(&title)))
}
