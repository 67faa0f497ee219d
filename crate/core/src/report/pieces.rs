//! What is told of the pieces that are printed of a run, and of the joints between them.

use serde::Serialize;

use super::numbers::BoundsMm;
use super::runs::skin_bounds;
use crate::centreline::{Bounds, Centreline};
use crate::engine::{Piece, Stages};
use crate::service::{JointLoad, piece_price};
use crate::tube::Joint;

/// A piece; a run that is not cut has one.
#[derive(Serialize)]
pub(super) struct PieceReport {
    /// Arc lengths of the run, spigot and socket included.
    from_mm: f64,
    to_mm: f64,
    material_mm3: f64,
    mass_g: f64,
    /// What the print service asks for it, before its least order; null where that is not known.
    pub(super) service_price: Option<f64>,
    bounds_mm: BoundsMm,
    /// The joint at its end; null for the last.
    joint: Option<JointReport>,
}

#[derive(Serialize)]
struct JointReport {
    /// How many it is counted by its marks; a wide ring counts five.
    number: u32,
    /// Arc length of the seam.
    seam_mm: f64,
    length_mm: f64,
    clearance_mm: f64,
    collar_diameter_mm: f64,
    /// Shear in its bond by pressure and a crooked fit, and what is allowed.
    shear_mpa: Option<f64>,
    shear_allowed_mpa: Option<f64>,
    /// Stress round the socket, should coolant get there.
    hoop_mpa: Option<f64>,
}

impl PieceReport {
    /// Of each piece of a made run, which has those bounds.
    pub(super) fn all(stages: &Stages<'_>, run: usize, line: &Centreline, bounds: &Bounds) -> Vec<Self> {
        let joints = stages.cutting(run).joints;
        let of = |piece: Piece| Self::of(stages, line, bounds, &piece, joints.get(piece.index));
        stages.pieces(run).into_iter().map(of).collect()
    }

    fn of(stages: &Stages<'_>, line: &Centreline, run: &Bounds, piece: &Piece, joint: Option<&Joint>) -> Self {
        let profile = &piece.profile;
        let [from_mm, to_mm] = profile.span();
        let material = profile.material_volume();
        let bounds =
            if piece.of == 1 { *run } else { skin_bounds(&line.part([from_mm, to_mm]), &profile.from_its_start()) };
        let process = &stages.design.process;
        Self {
            from_mm,
            to_mm,
            material_mm3: material,
            mass_g: material / 1e3 * process.material.density_g_per_cm3,
            service_price: process.service.as_ref().and_then(|prices| piece_price(prices, material)),
            bounds_mm: BoundsMm::of(&bounds),
            joint: joint.map(|joint| JointReport::of(stages, piece.run, joint)),
        }
    }
}

impl JointReport {
    fn of(stages: &Stages<'_>, run: usize, joint: &Joint) -> Self {
        let load = JointLoad::of(&stages.design, &stages.design.runs[run], &stages.layout.runs[run], joint);
        Self {
            number: joint.number,
            seam_mm: joint.at,
            length_mm: joint.size.length,
            clearance_mm: joint.size.clearance,
            collar_diameter_mm: 2.0 * joint.size.collar(),
            shear_mpa: load.map(|load| load.shear()),
            shear_allowed_mpa: load.map(|load| load.allowed),
            hoop_mpa: load.map(|load| load.hoop),
        }
    }
}
