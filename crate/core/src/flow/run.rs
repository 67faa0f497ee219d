//! What one run costs: the sum over all that the coolant meets on its way.

use super::area::{contraction, expansion};
use super::coil::curved_friction;
use super::coolant::Fluid;
use super::course::{Course, Stretch};
use super::estimate::Estimate;
use super::straight::{Regime, straight_friction};
use crate::out_of_range::{OutOfRange, positive, within};

/// Under what a run's loss is reckoned.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// The coolant at its temperature.
    pub fluid: Fluid,
    /// Flow, l/h; not negative.
    pub flow: f64,
    /// Bore of the tube, mm.
    pub bore: f64,
    /// Height of the bore's roughness, mm; 0 for a smooth one.
    pub roughness: f64,
    /// Bore that the coolant comes out of, before the run, mm; none where it is the tube's.
    pub bore_before: Option<f64>,
    /// Bore that it goes into, after the run, mm; none where it is the tube's.
    pub bore_after: Option<f64>,
}

/// A run's loss by what causes it, Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Parts {
    /// Straight tube.
    pub straights: Estimate,
    /// Circular bends, their friction included.
    pub bends: Estimate,
    /// Coils.
    pub coils: Estimate,
    /// Smooth curves.
    pub curves: Estimate,
    /// Changes of bore at the run's ends.
    pub ends: Estimate,
    /// Bonded joints, at each of which one bore may come out wider than the other.
    pub joints: Estimate,
}

/// What a run costs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RunLoss {
    /// Speed of the coolant in the tube, m/s.
    pub velocity: f64,
    /// Reynolds number in the tube.
    pub reynolds: f64,
    /// How the coolant runs in its straights.
    pub regime: Regime,
    /// The loss by its causes, Pa.
    pub parts: Parts,
    /// The whole loss, Pa.
    pub total: Estimate,
}

/// The pressure that a run costs. Losses add up as though each bend had straight tube about it, which two bends close
/// together do not have: usual practice, and within the bends' band.
///
/// # Errors
/// [`OutOfRange`] for a negative flow, a bore or another number of the conditions that is none, and as
/// [`straight_friction`], [`curved_friction`] and [`super::Bend::factor`].
pub fn run_loss(course: &Course, conditions: &Conditions) -> Result<RunLoss, OutOfRange> {
    let Conditions { fluid, flow, bore, roughness, bore_before, bore_after } = *conditions;
    within("flow", flow, [0.0, 1e6], "l/h")?;
    positive("bore", bore, "mm")?;
    positive("coolant density", fluid.density, "kg/m3")?;
    positive("coolant viscosity", fluid.viscosity, "Pa s")?;
    let mut parts = Parts::NONE;
    let reynolds = fluid.reynolds(flow, bore);
    let loss = |parts: Parts| RunLoss {
        velocity: super::velocity(flow, bore),
        reynolds,
        regime: Regime::of(reynolds),
        parts,
        total: parts.total(),
    };
    if flow == 0.0 {
        return Ok(loss(parts));
    }
    let (pressure, rough) = (fluid.dynamic_pressure(flow, bore), roughness / bore);
    // A straight's factor is the same all along.
    let straight = straight_friction(reynolds, rough)?;
    let curved = |length: f64, curvature: f64| {
        Ok(curved_friction(reynolds, bore * curvature / 2.0, rough)? * (pressure * length / bore))
    };
    for stretch in &course.stretches {
        match *stretch {
            Stretch::Straight { length } => {
                parts.straights = parts.straights + straight * (pressure * length / bore);
            }
            Stretch::Bend(bend) => parts.bends = parts.bends + bend.factor(bore, reynolds, rough)? * pressure,
            Stretch::Joint { off } => parts.joints = parts.joints + joint(&fluid, flow, bore, off)?,
            Stretch::Coil { length, curvature } => parts.coils = parts.coils + curved(length, curvature)?,
            Stretch::Curve { length, curvature } => parts.curves = parts.curves + curved(length, curvature)?,
        }
    }
    if let Some(before) = bore_before {
        parts.ends = parts.ends + step(&fluid, flow, before, bore)?;
    }
    if let Some(after) = bore_after {
        parts.ends = parts.ends + step(&fluid, flow, bore, after)?;
    }
    Ok(loss(parts))
}

/// The loss, Pa, of a joint at its worst: a bore that came out as narrow as it may opens into one that came out as wide. Not
/// more than half of the bore is taken to be off.
fn joint(fluid: &Fluid, flow: f64, bore: f64, off: f64) -> Result<Estimate, OutOfRange> {
    let off = within("printer's tolerance", off, [0.0, f64::INFINITY], "mm")?.min(bore / 2.0);
    step(fluid, flow, bore - off, bore + off)
}

/// The loss, Pa, of a sudden change from one bore to another.
fn step(fluid: &Fluid, flow: f64, from: f64, to: f64) -> Result<Estimate, OutOfRange> {
    for bore in [from, to] {
        positive("bore that the run joins", bore, "mm")?;
    }
    let smaller = from.min(to);
    let (pressure, reynolds) = (fluid.dynamic_pressure(flow, smaller), fluid.reynolds(flow, smaller));
    Ok(match from.total_cmp(&to) {
        core::cmp::Ordering::Equal => Estimate::ZERO,
        core::cmp::Ordering::Less => expansion(from, to, reynolds) * pressure,
        core::cmp::Ordering::Greater => contraction(to, from, reynolds) * pressure,
    })
}

impl Parts {
    const NONE: Self = Self {
        straights: Estimate::ZERO,
        bends: Estimate::ZERO,
        coils: Estimate::ZERO,
        curves: Estimate::ZERO,
        ends: Estimate::ZERO,
        joints: Estimate::ZERO,
    };

    fn total(&self) -> Estimate {
        self.straights + self.bends + self.coils + self.curves + self.ends + self.joints
    }
}
