//! What is told of the loop as a whole. What does not follow from what is stated is null.

use serde::Serialize;

use super::service::Band;
use crate::engine::Stages;
use crate::flow::{Fluid, NoOperatingPoint};
use crate::service::{Circuit, Cost, Item, LeakFound, coolant_volume};

/// The loop: pump, tubes and parts.
#[derive(Serialize)]
pub(super) struct LoopReport<'a> {
    /// Coolant in the tubes and the stated parts.
    coolant_ml: f64,
    fluid: Option<FluidReport>,
    /// At the flow that the design states.
    stated: Option<StatedReport>,
    /// Where pump and loop agree.
    operating: Option<OperatingReport>,
    /// Why they do not.
    no_operating: Option<String>,
    /// What each tube and each part takes of the loss, at the operating point, or at the stated flow where there is none.
    shares: Vec<ShareReport<'a>>,
    leak_test: Option<LeakReport>,
}

#[derive(Serialize)]
struct LeakReport {
    volume_ml: f64,
    fall_kpa: f64,
    by_temperature_kpa: f64,
    by_leak_kpa: f64,
    in_limit_time_kpa: f64,
    rate_mbar_l_per_s: f64,
    rate_sccm: f64,
    per_kelvin_kpa: f64,
    energy_j: [f64; 2],
    passes: bool,
}

#[derive(Serialize)]
struct FluidReport {
    density_kg_per_m3: f64,
    viscosity_mpa_s: f64,
    specific_heat_j_per_kg_k: f64,
}

#[derive(Serialize)]
struct StatedReport {
    flow_l_per_h: f64,
    loss_kpa: Band,
    /// None beyond the pump's last flow.
    head_kpa: Option<f64>,
    /// The pump's head less the loss.
    reserve_kpa: Option<f64>,
    rise_k: Option<f64>,
}

#[derive(Serialize)]
struct OperatingReport {
    flow_l_per_h: Band,
    pressure_kpa: f64,
    rise_k: Option<f64>,
}

#[derive(Serialize)]
struct ShareReport<'a> {
    name: &'a str,
    kind: &'static str,
    loss_kpa: f64,
    share_percent: f64,
}

impl<'a> LoopReport<'a> {
    /// `bores` is the volume of all tubes' bores, mm3.
    pub(super) fn of(stages: &'a Stages<'_>, bores: f64) -> Self {
        let design = &stages.design;
        let coolant_ml = coolant_volume(design, bores);
        let readings = design.working.leak_test.as_ref();
        let nothing = Self {
            coolant_ml,
            leak_test: readings
                .and_then(|readings| LeakFound::of(readings, coolant_ml).ok().flatten())
                .map(LeakReport::of),
            fluid: None,
            stated: None,
            operating: None,
            no_operating: None,
            shares: Vec::new(),
        };
        let Ok(Some(circuit)) = Circuit::of(design, &stages.lines) else { return nothing };
        let heat = design.working.heat_w;
        let agreed = circuit.agreed();
        let at = agreed.as_ref().map_or(design.working.flow_l_per_h, |agreed| agreed.nominal.flow);
        let costs = circuit.costs(at).unwrap_or_default();
        let total: f64 = costs.iter().map(|cost| cost.loss.nominal).sum();
        Self {
            fluid: Some(FluidReport::of(&circuit.fluid)),
            stated: StatedReport::of(&circuit, design.working.flow_l_per_h, heat),
            operating: agreed.as_ref().ok().map(|agreed| OperatingReport {
                flow_l_per_h: Band { nominal: agreed.nominal.flow, low: agreed.flows[0], high: agreed.flows[1] },
                pressure_kpa: agreed.nominal.pressure * 1e-3,
                rise_k: circuit.rise(agreed.nominal.flow, heat),
            }),
            no_operating: agreed.err().as_ref().map(NoOperatingPoint::to_string),
            shares: costs.iter().map(|cost| ShareReport::of(stages, cost, total)).collect(),
            ..nothing
        }
    }
}

impl LeakReport {
    fn of(found: LeakFound) -> Self {
        Self {
            volume_ml: found.volume * 1e3,
            fall_kpa: found.fall,
            by_temperature_kpa: found.by_temperature,
            by_leak_kpa: found.by_leak,
            in_limit_time_kpa: found.in_limit_time,
            rate_mbar_l_per_s: found.rate,
            rate_sccm: found.rate_sccm,
            per_kelvin_kpa: found.per_kelvin,
            energy_j: found.energy,
            passes: found.passes,
        }
    }
}

impl FluidReport {
    fn of(fluid: &Fluid) -> Self {
        Self {
            density_kg_per_m3: fluid.density,
            viscosity_mpa_s: fluid.viscosity * 1e3,
            specific_heat_j_per_kg_k: fluid.specific_heat,
        }
    }
}

impl StatedReport {
    fn of(circuit: &Circuit<'_>, flow: f64, heat: f64) -> Option<Self> {
        let loss = circuit.loss(flow).ok()?;
        let head = circuit.pump.head(flow);
        Some(Self {
            flow_l_per_h: flow,
            loss_kpa: Band::of(loss),
            head_kpa: head.map(|head| head * 1e-3),
            reserve_kpa: head.map(|head| (head - loss.nominal) * 1e-3),
            rise_k: circuit.rise(flow, heat),
        })
    }
}

impl<'a> ShareReport<'a> {
    fn of(stages: &'a Stages<'_>, cost: &Cost, total: f64) -> Self {
        let design = &stages.design;
        let (name, kind) = match cost.of {
            Item::Tube(index) => (&design.runs[index].name, "tube"),
            Item::Part(index) => (&design.working.parts[index].name, "part"),
        };
        let share = if total > 0.0 { cost.loss.nominal / total } else { 0.0 };
        Self { name, kind, loss_kpa: cost.loss.nominal * 1e-3, share_percent: share * 100.0 }
    }
}
