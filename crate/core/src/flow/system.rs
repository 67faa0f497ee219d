//! The loop: a pump, and all that it drives its flow through, one after the other.

use super::coolant::Fluid;
use super::pump::Pump;
use crate::out_of_range::{OutOfRange, positive, within};
use core::fmt;

/// Where a pump and a loop agree.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OperatingPoint {
    /// Flow, l/h.
    pub flow: f64,
    /// Pressure that the pump keeps up and the loop costs, Pa.
    pub pressure: f64,
}

/// Why they do not. Flows l/h, pressures Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoOperatingPoint {
    /// At the least flow of the pump's curve the loop already costs more than the pump keeps up.
    TooWeak {
        /// That flow.
        flow: f64,
        /// What the pump keeps up there.
        head: f64,
        /// What the loop costs there.
        loss: f64,
    },
    /// The pump's curve ends while it still keeps up more than the loop costs: the flow is more than its last.
    CurveEnds {
        /// The curve's last flow.
        flow: f64,
        /// What the pump keeps up there.
        head: f64,
        /// What the loop costs there.
        loss: f64,
    },
    /// The loop's cost could not be reckoned.
    Loss(OutOfRange),
}

impl fmt::Display for NoOperatingPoint {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooWeak { flow, head, loss } => write!(
                f,
                "at {flow} l/h, the least flow of its curve, the pump keeps up {head} Pa and the loop costs {loss} Pa"
            ),
            Self::CurveEnds { flow, head, loss } => write!(
                f,
                "at {flow} l/h, where its curve ends, the pump keeps up {head} Pa and the loop costs only {loss} Pa"
            ),
            Self::Loss(fault) => fault.fmt(f),
        }
    }
}

impl std::error::Error for NoOperatingPoint {}

impl From<OutOfRange> for NoOperatingPoint {
    fn from(fault: OutOfRange) -> Self {
        Self::Loss(fault)
    }
}

/// The flow at which a pump keeps up just what a loop costs. `loss` is the loop's cost, Pa, at a flow, l/h, and must not
/// fall as the flow grows; the pump's curve never rises, so there is at most one such flow. Found to 1e-12 of the curve's
/// last flow, between a flow where the pump is above and one where it is below, by Chandrupatla's method, Adv. Eng. Softw.
/// 28 (1997) 145 (from memory): inverse parabolas where they are safe, and halving where they are not.
///
/// # Errors
/// [`NoOperatingPoint`] with what both are at the end of the curve that they do not meet at.
pub fn operating_point(
    pump: &Pump,
    loss: impl Fn(f64) -> Result<f64, OutOfRange>,
) -> Result<OperatingPoint, NoOperatingPoint> {
    let head = |flow: f64| pump.head(flow).unwrap_or_default();
    let left = |flow: f64| Ok::<f64, OutOfRange>(head(flow) - loss(flow)?);
    let [first, last] = pump.range();
    // Places and what the pump has left there: the newest, the other side of the bracket, and the one before.
    let (mut new, mut far) = ([last, left(last)?], [first, left(first)?]);
    if far[1] < 0.0 {
        return Err(NoOperatingPoint::TooWeak { flow: first, head: head(first), loss: head(first) - far[1] });
    }
    if new[1] > 0.0 {
        return Err(NoOperatingPoint::CurveEnds { flow: last, head: head(last), loss: head(last) - new[1] });
    }
    let mut share = 0.5;
    for _ in 0..200 {
        let flow = new[0] + share * (far[0] - new[0]);
        let next = [flow, left(flow)?];
        let old = if (next[1] > 0.0) == (new[1] > 0.0) { new } else { core::mem::replace(&mut far, new) };
        new = next;
        let least = 1e-12 * last / (far[0] - new[0]).abs();
        if new[1] == 0.0 || least.is_nan() || least >= 0.5 {
            break;
        }
        share = parabola(new, far, old).unwrap_or(0.5).clamp(least, 1.0 - least);
    }
    let met = if new[1].abs() <= far[1].abs() { new[0] } else { far[0] };
    Ok(OperatingPoint { flow: met, pressure: head(met) })
}

/// Where the parabola through three places crosses zero, as a share of the way from the newest to the far one; none where
/// it is not sure to cross between them.
fn parabola([x1, f1]: [f64; 2], [x2, f2]: [f64; 2], [x3, f3]: [f64; 2]) -> Option<f64> {
    let (xi, phi) = ((x1 - x2) / (x3 - x2), (f1 - f2) / (f3 - f2));
    let safe = phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi;
    safe.then(|| f1 / (f2 - f1) * f3 / (f2 - f3) + (x3 - x1) / (x2 - x1) * f1 / (f3 - f1) * f2 / (f3 - f2))
}

/// What a part costs, Pa, at a flow, l/h, that costs `drop` Pa at `stated` l/h: with the flow's square, as parts that are
/// all narrow passages do; a part that is a long fine channel costs more than that at small flows. Common practice, no
/// source.
///
/// # Errors
/// [`OutOfRange`] for a negative number or a stated flow of nothing.
pub fn quadratic_drop(drop: f64, stated: f64, flow: f64) -> Result<f64, OutOfRange> {
    within("pressure drop", drop, [0.0, 1e9], "Pa")?;
    positive("flow that a drop is stated at", stated, "l/h")?;
    let share = within("flow", flow, [0.0, 1e6], "l/h")? / stated;
    Ok(drop * share * share)
}

/// How much warmer the coolant leaves the heat than it comes to it, K: heat over the heat capacity that flows by. Heat in
/// W, flow in l/h.
///
/// # Errors
/// [`OutOfRange`] for a flow of nothing or heat that is negative.
pub fn coolant_rise(fluid: &Fluid, flow: f64, heat: f64) -> Result<f64, OutOfRange> {
    within("heat", heat, [0.0, 1e9], "W")?;
    let litres = positive("flow", flow, "l/h")?;
    Ok(heat / (fluid.density * fluid.specific_heat * litres / 3.6e6))
}
