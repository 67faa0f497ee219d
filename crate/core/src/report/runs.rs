//! The numbers of each run, and their totals.

use serde::Serialize;

use super::numbers::{BoundsMm, degrees, point, unsigned_zero};
use super::pieces::PieceReport;
use super::service::ServiceReport;
use crate::centreline::{self, BendRow, Bounds, Centreline, apexes, bend_table};
use crate::design::Process;
use crate::engine::Stages;
use crate::service::{material_cost, order_price};
use crate::tube::Profile;

/// Cubic millimetres in a cubic centimetre, which densities are told by.
const MM3_IN_CM3: f64 = 1e3;

/// A run's numbers; null where it cannot be made.
#[derive(Serialize)]
pub(super) struct RunReport<'a> {
    name: &'a str,
    made: bool,
    length_mm: Option<f64>,
    material_mm3: Option<f64>,
    bore_mm3: Option<f64>,
    mass_g: Option<f64>,
    /// Of the material, in the money of its price; null too where it has none.
    cost: Option<f64>,
    coolant_g: Option<f64>,
    bounds_mm: Option<BoundsMm>,
    bend_table: Vec<Row>,
    /// End, apexes, end.
    points_mm: Vec<[f64; 3]>,
    service: Option<ServiceReport>,
    /// What is printed of it, in order along it.
    pieces: Vec<PieceReport>,
}

/// Sums over the runs that are made.
#[derive(Serialize)]
pub(super) struct Totals {
    length_mm: f64,
    material_mm3: f64,
    pub(super) bore_mm3: f64,
    mass_g: f64,
    /// Null where the material has no price.
    cost: Option<f64>,
    /// What the print service asks for all pieces in one order; null where that is not known.
    service_price: Option<f64>,
    coolant_g: f64,
}

#[derive(Serialize)]
struct Row {
    kind: &'static str,
    straight_mm: f64,
    rotation_deg: f64,
    angle_deg: f64,
    radius_mm: f64,
    /// Along the bend, coil or curve.
    length_mm: f64,
    /// Index of the station that it belongs to; null for a joining bend.
    station: Option<usize>,
}

impl<'a> RunReport<'a> {
    pub(super) fn of(stages: &'a Stages<'_>, run: usize) -> Self {
        let stated = &stages.design.runs[run];
        let (Some(line), true) = (&stages.lines[run].line, stages.is_made(run)) else {
            return Self::not_made(&stated.name);
        };
        let profile = stages.profile(run, line.length);
        let (material, bore) = (profile.material_volume(), profile.bore_volume());
        let density = stages.design.process.material.density_g_per_cm3;
        let coolant = stages.design.working.coolant.density_g_per_cm3;
        let bounds = skin_bounds(line, &profile);
        Self {
            name: &stated.name,
            made: true,
            length_mm: Some(line.length),
            material_mm3: Some(material),
            bore_mm3: Some(bore),
            mass_g: Some(material / MM3_IN_CM3 * density),
            cost: material_cost(&stages.design.process.material, material),
            coolant_g: Some(bore / MM3_IN_CM3 * coolant),
            bounds_mm: Some(BoundsMm::of(&bounds)),
            bend_table: bend_table(line).iter().map(Row::of).collect(),
            points_mm: apexes(line).iter().map(point).collect(),
            service: Some(ServiceReport::of(stages, run, line)),
            pieces: PieceReport::all(stages, run, line, &bounds),
        }
    }

    fn not_made(name: &'a str) -> Self {
        Self {
            name,
            made: false,
            length_mm: None,
            material_mm3: None,
            bore_mm3: None,
            mass_g: None,
            cost: None,
            coolant_g: None,
            bounds_mm: None,
            bend_table: Vec::new(),
            points_mm: Vec::new(),
            service: None,
            pieces: Vec::new(),
        }
    }
}

impl Totals {
    pub(super) fn of(runs: &[RunReport<'_>], process: &Process) -> Self {
        let sum = |number: fn(&RunReport<'_>) -> Option<f64>| runs.iter().filter_map(number).fold(0.0, |a, b| a + b);
        let volume = sum(|run| run.material_mm3);
        let pieces = || runs.iter().flat_map(|run| &run.pieces).map(|piece| piece.service_price);
        Self {
            length_mm: sum(|run| run.length_mm),
            material_mm3: volume,
            bore_mm3: sum(|run| run.bore_mm3),
            mass_g: sum(|run| run.mass_g),
            cost: material_cost(&process.material, volume),
            service_price: process.service.as_ref().and_then(|prices| order_price(prices, pieces())),
            coolant_g: sum(|run| run.coolant_g),
        }
    }
}

impl Row {
    fn of(row: &BendRow) -> Self {
        Self {
            kind: row.kind.word(),
            straight_mm: unsigned_zero(row.straight),
            rotation_deg: degrees(row.rotation),
            angle_deg: degrees(row.angle),
            radius_mm: row.radius,
            length_mm: row.length,
            station: row.station,
        }
    }
}

/// The exact box of a tube's skin.
pub(super) fn skin_bounds(line: &Centreline, profile: &Profile) -> Bounds {
    let breaks: Vec<f64> = profile.outer.breaks.iter().map(|[at, _]| *at).collect();
    centreline::bounds(line, &breaks, |s| profile.outer.radius(s))
}
