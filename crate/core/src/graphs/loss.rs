//! Pressure loss against flow, with the pump's curve and where they meet.

use super::words;
use crate::engine::Stages;
use crate::flow::Estimate;
use crate::out_of_range::OutOfRange;
use crate::plot::{LoopCurve, LossPlot, OperatingPoint, PumpCurve};
use crate::service::{Circuit, Item};
use crate::tongue::Tongue;

/// Points of a curve.
const STEPS: u32 = 60;
/// How far beyond the flows of interest the curves are drawn.
const BEYOND: f64 = 1.3;
const KPA: f64 = 1e-3;

/// The plot, its labels in a language; none where the coolant's viscosity is not known.
///
/// # Errors
/// [`OutOfRange`] for a temperature at which the coolant freezes or boils.
pub fn loss(stages: &Stages<'_>, tongue: &Tongue) -> Result<Option<LossPlot>, OutOfRange> {
    let design = &stages.design;
    let Some(circuit) = Circuit::of(design, &stages.lines)? else { return Ok(None) };
    let stated = design.working.flow_l_per_h;
    let agreed = circuit.agreed().ok();
    let most = agreed.map_or(0.0, |agreed| agreed.flows[1]).max(stated) * BEYOND;
    let last = circuit.pump.range()[1];
    let furthest = if agreed.is_some() { most } else { most.max(last) };
    let flows = || (0..=STEPS).map(move |step| furthest * f64::from(step) / f64::from(STEPS));
    let curve = |label: &str, of: &dyn Fn(f64) -> Option<Estimate>| {
        let known: Vec<(f64, Estimate)> = flows().filter_map(|flow| Some((flow, of(flow)?))).collect();
        LoopCurve {
            label: tongue.word(label).into(),
            points: known.iter().map(|(flow, loss)| [*flow, loss.nominal * KPA]).collect(),
            band: known.iter().map(|(flow, loss)| [*flow, loss.low * KPA, loss.high * KPA]).collect(),
        }
    };
    let tubes = |flow: f64| {
        let costs = circuit.costs(flow).ok()?;
        Some(costs.iter().filter(|cost| matches!(cost.of, Item::Tube(_))).map(|cost| cost.loss).sum())
    };
    let whole = curve(words::TUBES_AND_PARTS, &|flow| circuit.loss(flow).ok());
    let mut loops = vec![curve(words::TUBES, &tubes)];
    if !design.working.parts.is_empty() {
        loops.insert(0, whole);
    }
    let heads = flows().filter_map(|flow| Some([flow, circuit.pump.head(flow)? * KPA])).collect();
    Ok(Some(LossPlot {
        title: tongue.word(words::LOSS).into(),
        loops,
        pump: Some(PumpCurve { label: tongue.word(&design.working.pump.name).into(), points: heads }),
        operating: agreed.map(|agreed| OperatingPoint {
            flow: agreed.nominal.flow,
            pressure: agreed.nominal.pressure * KPA,
            flow_range: Some(agreed.flows),
            pressure_range: None,
        }),
        stated_flow: Some(stated),
    }))
}
