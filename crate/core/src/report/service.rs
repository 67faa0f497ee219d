//! What is told of a run in service. What does not follow from what is stated is null.

use serde::Serialize;

use super::numbers::point;
use crate::bleed::{Keeps, Trap, profile};
use crate::centreline::Centreline;
use crate::engine::Stages;
use crate::flow::{Estimate, Regime};
use crate::layout::Vec3;
use crate::seal::Stack;
use crate::service::{Flow, Heat, SealAtEnd, Strength, course, growth, sweep};

/// A run in service.
#[derive(Serialize)]
pub(super) struct ServiceReport {
    heat: HeatReport,
    strength: Option<StrengthReport>,
    /// At its start and at its end.
    seals: [Option<SealReport>; 2],
    flow: Option<FlowReport>,
    high_points: Vec<TrapReport>,
    low_points: Vec<TrapReport>,
}

#[derive(Serialize)]
struct HeatReport {
    /// The warmest that the material must be under lasting pressure.
    limit_c: Option<f64>,
    growth_mm: Option<f64>,
}

#[derive(Serialize)]
struct StrengthReport {
    pressure_kpa: f64,
    hoop_mpa: f64,
    bend_factor: f64,
    allowed_mpa: f64,
    factors: Vec<FactorReport>,
    utilisation: f64,
    allowed_kpa: f64,
}

#[derive(Serialize)]
struct FactorReport {
    name: String,
    times: f64,
    source: String,
}

#[derive(Serialize)]
struct SealReport {
    squeeze_percent: Range,
    fill_percent: Option<Range>,
    /// How far the tube's chamfer draws in, and how far the ring needs it to.
    chamfer_drop_mm: Option<f64>,
    chamfer_drop_needed_mm: Option<f64>,
    best_outer_diameter: f64,
    /// How far the printed tube may be off, and whether a coupon, the printer's figures or usage says so.
    tube_tolerance_mm: f64,
    tube_tolerance_from: &'static str,
}

/// A number, and the least and the most of it.
#[derive(Serialize)]
struct Range {
    nominal: f64,
    likely: [f64; 2],
    worst: [f64; 2],
}

#[derive(Serialize)]
struct FlowReport {
    flow_l_per_h: f64,
    velocity_m_per_s: f64,
    reynolds: f64,
    regime: &'static str,
    loss_kpa: Band,
    straights_kpa: f64,
    bends_kpa: f64,
    coils_kpa: f64,
    curves_kpa: f64,
    ends_kpa: f64,
    joints_kpa: f64,
    /// The loss at other flows.
    sweep: Vec<SweepReport>,
}

#[derive(Serialize)]
pub(super) struct Band {
    pub(super) nominal: f64,
    pub(super) low: f64,
    pub(super) high: f64,
}

#[derive(Serialize)]
struct SweepReport {
    flow_l_per_h: f64,
    loss_kpa: Band,
}

#[derive(Serialize)]
struct TrapReport {
    at_mm: [f64; 3],
    depth_mm: f64,
    volume_mm3: f64,
}

impl ServiceReport {
    pub(super) fn of(stages: &Stages<'_>, run: usize, line: &Centreline) -> Self {
        let (design, stated) = (&stages.design, &stages.design.runs[run]);
        let ends = [&stated.from, &stated.to]
            .map(|name| SealAtEnd::of(stated, design.fitting_at(name)?, &design.process).ok());
        let profile = profile(line, &Vec3::from(design.working.up)).ok();
        let traps = |keeps: Keeps| {
            let all = profile.iter().flat_map(|profile| &profile.traps);
            all.filter(|trap| trap.keeps == keeps).map(|trap| TrapReport::of(trap, stated.tube.bore)).collect()
        };
        let (material, course) = (&design.process.material, course(design, stated, line));
        Self {
            heat: HeatReport {
                limit_c: Heat::of(material).map(|heat| heat.limit.limit),
                growth_mm: growth(line.length, material, &design.working),
            },
            strength: Strength::of(design, stated, line).map(StrengthReport::of),
            seals: ends.map(|end| end.map(|end| SealReport::of(&end))),
            flow: Flow::of(design, stated, &course)
                .ok()
                .flatten()
                .map(|flow| FlowReport::of(&flow, design.working.flow_l_per_h, &sweep(design, stated, &course))),
            high_points: traps(Keeps::Air),
            low_points: traps(Keeps::Coolant),
        }
    }
}

impl StrengthReport {
    fn of(strength: Strength) -> Self {
        let factor = |factor: crate::strength::Factor| FactorReport {
            name: factor.name,
            times: factor.times,
            source: factor.source,
        };
        Self {
            pressure_kpa: strength.pressure,
            hoop_mpa: strength.hoop,
            bend_factor: strength.bend,
            allowed_mpa: strength.allowed,
            factors: strength.factors.into_iter().map(factor).collect(),
            utilisation: strength.utilisation,
            allowed_kpa: strength.allowed_pressure,
        }
    }
}

impl SealReport {
    fn of(end: &SealAtEnd) -> Self {
        Self {
            squeeze_percent: Range::of(&end.squeeze),
            fill_percent: end.fill.as_ref().map(Range::of),
            chamfer_drop_mm: end.chamfer.map(|chamfer| chamfer.drop),
            chamfer_drop_needed_mm: end.chamfer.map(|chamfer| chamfer.drop_needed),
            best_outer_diameter: end.best_outer,
            tube_tolerance_mm: end.tolerances.outer_diameter,
            tube_tolerance_from: end.tube_known.word(),
        }
    }
}

impl Range {
    fn of(stack: &Stack) -> Self {
        let percent = |shares: [f64; 2]| shares.map(|share| share * 100.0);
        Self { nominal: stack.nominal * 100.0, likely: percent(stack.likely), worst: percent(stack.worst) }
    }
}

impl FlowReport {
    fn of(flow: &Flow, litres: f64, sweep: &[(f64, Estimate)]) -> Self {
        let (loss, kpa) = (&flow.loss, |estimate: Estimate| estimate.nominal * 1e-3);
        Self {
            flow_l_per_h: litres,
            velocity_m_per_s: loss.velocity,
            reynolds: loss.reynolds,
            regime: match loss.regime {
                Regime::Laminar => "laminar",
                Regime::Transition => "transitional",
                Regime::Turbulent => "turbulent",
            },
            loss_kpa: Band::of(loss.total),
            straights_kpa: kpa(loss.parts.straights),
            bends_kpa: kpa(loss.parts.bends),
            coils_kpa: kpa(loss.parts.coils),
            curves_kpa: kpa(loss.parts.curves),
            ends_kpa: kpa(loss.parts.ends),
            joints_kpa: kpa(loss.parts.joints),
            sweep: sweep
                .iter()
                .map(|(flow, loss)| SweepReport { flow_l_per_h: *flow, loss_kpa: Band::of(*loss) })
                .collect(),
        }
    }
}

impl Band {
    /// In kPa, of pressures in Pa.
    pub(super) fn of(pressure: Estimate) -> Self {
        Self { nominal: pressure.nominal * 1e-3, low: pressure.low * 1e-3, high: pressure.high * 1e-3 }
    }
}

impl TrapReport {
    fn of(trap: &Trap, bore: f64) -> Self {
        Self { at_mm: point(&trap.at), depth_mm: trap.depth, volume_mm3: trap.volume(bore) }
    }
}
