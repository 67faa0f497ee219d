//! What a run costs the pump.

use crate::centreline::{Centreline, RunLine};
use crate::design::{Base, Design, Loop, Run};
use crate::flow::{Conditions, Coolant, Course, Estimate, Fluid, Glycol, RunLoss, Stretch, head_in_pascals, run_loss};
use crate::out_of_range::OutOfRange;

/// Specific heat that is taken for a coolant of which only the viscosity is known, J/(kg K): water's, from which glycol
/// takes up to a tenth (IAPWS-95 at 40 degrees C).
const SPECIFIC_HEAT: f64 = 4179.4;

/// A run's loss at the loop's flow and working temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flow {
    /// The coolant at that temperature.
    pub fluid: Fluid,
    /// The loss, with its parts and its band.
    pub loss: RunLoss,
}

impl Flow {
    /// The loss of a run whose centreline has that course; none where the coolant's viscosity is not known.
    ///
    /// # Errors
    /// [`OutOfRange`] for a temperature at which the coolant freezes or boils, and what no formula takes.
    pub fn of(design: &Design, run: &Run, course: &Course) -> Result<Option<Self>, OutOfRange> {
        let Some(fluid) = coolant(&design.working)? else { return Ok(None) };
        let loss = run_loss(course, &conditions(design, run, fluid, design.working.flow_l_per_h))?;
        Ok(Some(Self { fluid, loss }))
    }
}

/// Share of a usual pump's head that one tube may take; common practice, no source.
const SHARE: f64 = 0.1;
/// Head of a usual pump, m; common practice, no source.
const USUAL_HEAD: f64 = 3.0;

/// What one tube may cost of a usual pump's head, Pa.
pub fn usual_share(fluid: &Fluid) -> f64 {
    SHARE * head_in_pascals(USUAL_HEAD, fluid.density)
}

/// Shares of the stated flow that a run's loss is told at.
const SWEEP: [f64; 8] = [0.25, 0.5, 0.75, 1.0, 1.25, 1.5, 1.75, 2.0];

/// A run's loss over a sweep of flows about the stated one: flow, L/h, and loss, Pa. Nothing where the coolant is not known.
pub fn sweep(design: &Design, run: &Run, course: &Course) -> Vec<(f64, Estimate)> {
    let Ok(Some(fluid)) = coolant(&design.working) else { return Vec::new() };
    let stated = design.working.flow_l_per_h;
    let at = |share: &f64| {
        let flow = stated * share;
        Some((flow, run_loss(course, &conditions(design, run, fluid, flow)).ok()?.total))
    };
    SWEEP.iter().filter_map(at).collect()
}

/// How far a printed bore is taken to be off where the printer does not say, plus or minus mm; common practice, no source.
const USUAL_OFF: f64 = 0.1;

/// What the coolant meets along a run: its centreline, and a joint at each of its cuts.
pub fn course(design: &Design, run: &Run, line: &Centreline) -> Course {
    let mut course = Course::of(line);
    let off = design.process.printer.tolerance.unwrap_or(USUAL_OFF);
    course.stretches.extend(run.cuts.iter().map(|_| Stretch::Joint { off }));
    course
}

/// The courses of all runs; none of one without a centreline.
pub fn courses(design: &Design, lines: &[RunLine]) -> Vec<Option<Course>> {
    let drawn = design.runs.iter().zip(lines);
    drawn.map(|(run, line)| Some(course(design, run, line.line.as_ref()?))).collect()
}

/// Under what a run's loss is reckoned at a flow, L/h. Where a fitting's way through is narrower or wider than the bore, the
/// coolant changes speed at that end.
pub fn conditions(design: &Design, run: &Run, fluid: Fluid, flow: f64) -> Conditions {
    let bore_of = |port: &str| design.fitting_at(port)?.bore;
    Conditions {
        fluid,
        flow,
        bore: run.tube.bore,
        roughness: design.process.material.roughness_um.unwrap_or(0.0) * 1e-3,
        bore_before: bore_of(&run.from),
        bore_after: bore_of(&run.to),
    }
}

/// The loop's coolant at its working temperature; none where its viscosity is not known.
///
/// # Errors
/// [`OutOfRange`] for a temperature at which it freezes or boils.
pub fn coolant(working: &Loop) -> Result<Option<Fluid>, OutOfRange> {
    let coolant = &working.coolant;
    let mass_fraction = coolant.glycol_percent / 100.0;
    let kind = coolant.base.map(|base| match base {
        Base::Water => Coolant::Water,
        Base::EthyleneGlycol => Coolant::Mixture { glycol: Glycol::Ethylene, mass_fraction },
        Base::PropyleneGlycol => Coolant::Mixture { glycol: Glycol::Propylene, mass_fraction },
    });
    let by_base = kind.map(|kind| kind.at(working.working_c)).transpose()?;
    Ok(match (coolant.viscosity_mpa_s, by_base) {
        (Some(viscosity), by_base) => Some(Fluid {
            density: coolant.density_g_per_cm3 * 1e3,
            viscosity: viscosity * 1e-3,
            specific_heat: by_base.map_or(SPECIFIC_HEAT, |fluid| fluid.specific_heat),
        }),
        (None, by_base) => by_base,
    })
}
