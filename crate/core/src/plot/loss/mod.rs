//! Pressure loss against flow: what the loop asks for, what the pump gives, and where they meet.

mod callout;
mod draw;
mod tell;

use super::fault::{at_most, not_negative, number, range};
use super::{Frame, PlotError};
use crate::tongue::Tongue;

/// The most loop curves in one picture: as many as are told apart by dash and mark.
const MOST_LOOPS: usize = 10;
/// The most points of a curve.
const MOST_POINTS: usize = 2_000;

/// What is drawn. Flows are litres an hour and not below zero, pressures kilopascals.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LossPlot {
    /// The heading.
    pub title: String,
    /// What loops ask for, at most ten; the first is the one that counts.
    pub loops: Vec<LoopCurve>,
    /// What the pump gives.
    pub pump: Option<PumpCurve>,
    /// Where pump and loop meet.
    pub operating: Option<OperatingPoint>,
    /// The flow that the design states, L/h.
    pub stated_flow: Option<f64>,
}

/// One loop's loss against flow.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct LoopCurve {
    /// What it is called in the key.
    pub label: String,
    /// Flow and pressure, in the order in which they are joined; at most 2,000.
    pub points: Vec<[f64; 2]>,
    /// Flow, lowest and highest pressure of its uncertainty, in order of flow; empty for none; at most 2,000.
    pub band: Vec<[f64; 3]>,
}

/// A pump's pressure against flow.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PumpCurve {
    /// What it is called in the key.
    pub label: String,
    /// Flow and pressure, in the order in which they are joined; at most 2,000.
    pub points: Vec<[f64; 2]>,
}

/// Where pump and loop meet.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct OperatingPoint {
    /// L/h.
    pub flow: f64,
    /// kPa.
    pub pressure: f64,
    /// Lowest and highest flow of its uncertainty.
    pub flow_range: Option<[f64; 2]>,
    /// Lowest and highest pressure of its uncertainty.
    pub pressure_range: Option<[f64; 2]>,
}

impl LossPlot {
    /// The picture.
    ///
    /// # Errors
    /// A number that no axis can place, a flow below zero, a range the wrong way round, too many curves or points, or a
    /// prefix that is none.
    pub fn svg(&self, frame: &Frame<'_>) -> Result<String, PlotError> {
        self.svg_in(frame, &Tongue::english())
    }

    /// The picture in another language; its labels are told as they are.
    ///
    /// # Errors
    /// As [`LossPlot::svg`].
    pub fn svg_in(&self, frame: &Frame<'_>, tongue: &Tongue) -> Result<String, PlotError> {
        frame.check()?;
        self.check()?;
        draw::draw(self, frame, tongue)
    }

    /// The same in words, with the numbers; of a long curve, twelve of its points.
    pub fn text_alternative(&self) -> String {
        tell::tell(self, &Tongue::english())
    }

    fn check(&self) -> Result<(), PlotError> {
        at_most("loop curves", MOST_LOOPS, self.loops.len())?;
        for curve in &self.loops {
            points("a point of a loop curve", &curve.points)?;
            at_most("points of a band", MOST_POINTS, curve.band.len())?;
            for &[flow, low, high] in &curve.band {
                not_negative("a flow of a band", flow)?;
                range("a band of a loop curve", [low, high])?;
            }
        }
        if let Some(pump) = &self.pump {
            points("a point of the pump's curve", &pump.points)?;
        }
        if let Some(point) = &self.operating {
            not_negative("the operating point's flow", point.flow)?;
            number("the operating point's pressure", point.pressure)?;
            if let Some(flows) = point.flow_range {
                range("the operating point's range of flow", flows)?;
                not_negative("the operating point's range of flow", flows[0])?;
            }
            if let Some(pressures) = point.pressure_range {
                range("the operating point's range of pressure", pressures)?;
            }
        }
        self.stated_flow.map_or(Ok(()), |flow| not_negative("the stated flow", flow))
    }

    /// Every flow and pressure that has to be on the axes.
    fn extent(&self) -> [[f64; 2]; 2] {
        let mut flows = [0.0_f64; 2];
        let mut pressures = [0.0_f64; 2];
        let mut take = |flow: f64, pressure: f64| {
            flows = [flows[0].min(flow), flows[1].max(flow)];
            pressures = [pressures[0].min(pressure), pressures[1].max(pressure)];
        };
        for curve in &self.loops {
            curve.points.iter().for_each(|&[flow, pressure]| take(flow, pressure));
            curve.band.iter().for_each(|&[flow, low, high]| {
                take(flow, low);
                take(flow, high);
            });
        }
        self.pump.iter().flat_map(|pump| &pump.points).for_each(|&[flow, pressure]| take(flow, pressure));
        if let Some(point) = self.operating {
            take(point.flow, point.pressure);
            point.flow_range.iter().flatten().for_each(|&flow| take(flow, point.pressure));
            point.pressure_range.iter().flatten().for_each(|&pressure| take(point.flow, pressure));
        }
        self.stated_flow.iter().for_each(|&flow| take(flow, 0.0));
        [flows, pressures]
    }

    fn is_empty(&self) -> bool {
        self.loops.iter().all(|curve| curve.points.is_empty() && curve.band.is_empty())
            && self.pump.as_ref().is_none_or(|pump| pump.points.is_empty())
            && self.operating.is_none()
            && self.stated_flow.is_none()
    }
}

fn points(what: &'static str, points: &[[f64; 2]]) -> Result<(), PlotError> {
    at_most("points of a curve", MOST_POINTS, points.len())?;
    points.iter().try_for_each(|&[flow, pressure]| {
        not_negative(what, flow)?;
        number(what, pressure)
    })
}
