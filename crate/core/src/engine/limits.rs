//! What the file of a piece is held against.

use super::stages::{Piece, Stages};
use crate::accept::Limits;
use crate::coupon::Compensation;
use crate::design::{Refusal, Way};
use crate::print::Room;

/// The limits of a piece's file; `fits` says whether it fits the printer in some stance.
///
/// # Errors
/// A run that the correction leaves without a wall.
pub(super) fn limits<'s>(
    stages: &'s Stages<'_>,
    piece: &Piece,
    correction: Option<&Compensation>,
    fits: bool,
) -> Result<Limits<'s>, Refusal> {
    let (profile, scale) = match correction {
        Some(by) => (stages.corrected(piece, by)?.profile, by.scale()),
        None => (piece.profile.clone(), 1.0),
    };
    let process = &stages.design.process;
    let printer = &process.printer;
    Ok(Limits {
        material: profile.material_volume() * scale * scale * scale,
        wall: profile.least_wall().wall * scale,
        least_wall: printer.least_wall,
        resin: process.material.way == Some(Way::Resin),
        room: Room::of(printer, process.material.way).size,
        fits,
        most_triangles: printer.most_triangles,
        most_mb: printer.most_mb,
        printer: &printer.name,
    })
}
