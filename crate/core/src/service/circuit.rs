//! The loop as a whole: every tube and every part one after the other, and the pump that drives coolant through them.

use super::flow::{conditions, coolant, courses};
use crate::centreline::RunLine;
use crate::design::{Design, LoopPart};
use crate::flow::{
    Conditions, Course, Estimate, Fluid, NoOperatingPoint, OperatingPoint, Pump, coolant_rise, operating_point,
    quadratic_drop, run_loss,
};
use crate::out_of_range::OutOfRange;

/// Cubic millimetres in a millilitre.
const MM3_IN_ML: f64 = 1e3;

/// A loop whose coolant is known. A tube that cannot be made, or whose loss no formula takes, is left out.
#[derive(Debug, Clone)]
pub struct Circuit<'d> {
    /// The coolant at the working temperature.
    pub fluid: Fluid,
    /// The pump.
    pub pump: Pump,
    tubes: Vec<(usize, Course, Conditions)>,
    parts: &'d [LoopPart],
}

/// What one tube or one part costs, Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cost {
    /// Which it is.
    pub of: Item,
    /// What it costs.
    pub loss: Estimate,
}

/// A tube or a part, by its place in the design's list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Item {
    /// A run.
    Tube(usize),
    /// A part of the loop.
    Part(usize),
}

/// Where pump and loop agree. Flows L/h, pressures Pa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Agreed {
    /// With every loss as its formula gives it.
    pub nominal: OperatingPoint,
    /// The least flow and the most that the losses' bands allow; as nominal where the curve ends before.
    pub flows: [f64; 2],
}

impl<'d> Circuit<'d> {
    /// The loop of a design whose runs are drawn as `lines`; nothing where the coolant's
    /// viscosity is not known.
    ///
    /// # Errors
    /// [`OutOfRange`] for a temperature at which the coolant freezes or boils.
    pub fn of(design: &'d Design, lines: &[RunLine]) -> Result<Option<Self>, OutOfRange> {
        Self::along(design, &courses(design, lines))
    }

    /// The loop of a design whose runs' centrelines have those courses, none where there is no centreline.
    ///
    /// # Errors
    /// As [`Circuit::of`].
    pub fn along(design: &'d Design, courses: &[Option<Course>]) -> Result<Option<Self>, OutOfRange> {
        let Some(fluid) = coolant(&design.working)? else { return Ok(None) };
        let Ok(pump) = Pump::of_heads(&design.working.pump.heads(), fluid.density) else { return Ok(None) };
        let drawn = design.runs.iter().zip(courses).enumerate();
        let tubes = drawn
            .filter_map(|(index, (run, course))| {
                let (course, conditions) = (course.as_ref()?, conditions(design, run, fluid, 1.0));
                run_loss(course, &conditions).is_ok().then(|| (index, course.clone(), conditions))
            })
            .collect();
        Ok(Some(Self { fluid, pump, tubes, parts: &design.working.parts }))
    }

    /// What each tube and each part costs at a flow, L/h.
    ///
    /// # Errors
    /// [`OutOfRange`] for a flow that no formula takes.
    pub fn costs(&self, flow: f64) -> Result<Vec<Cost>, OutOfRange> {
        let tubes = self.tubes.iter().map(|(index, course, conditions)| {
            let loss = run_loss(course, &Conditions { flow, ..*conditions })?.total;
            Ok(Cost { of: Item::Tube(*index), loss })
        });
        let parts = self.parts.iter().enumerate().map(|(index, part)| {
            let drop = quadratic_drop(part.drop_kpa * 1e3, part.at_l_per_h, flow)?;
            Ok(Cost { of: Item::Part(index), loss: Estimate::exact(drop) })
        });
        tubes.chain(parts).collect()
    }

    /// What the whole loop costs at a flow, Pa.
    ///
    /// # Errors
    /// As [`Circuit::costs`].
    pub fn loss(&self, flow: f64) -> Result<Estimate, OutOfRange> {
        Ok(self.costs(flow)?.into_iter().map(|cost| cost.loss).sum())
    }

    /// Where the pump keeps up just what the loop costs.
    ///
    /// # Errors
    /// [`NoOperatingPoint`] where they never agree.
    pub fn met(&self) -> Result<OperatingPoint, NoOperatingPoint> {
        self.met_by(|loss| loss.nominal)
    }

    fn met_by(&self, pick: fn(Estimate) -> f64) -> Result<OperatingPoint, NoOperatingPoint> {
        operating_point(&self.pump, |flow| self.loss(flow).map(pick))
    }

    /// The same, and between what flows it may lie.
    ///
    /// # Errors
    /// As [`Circuit::met`].
    pub fn agreed(&self) -> Result<Agreed, NoOperatingPoint> {
        let at = |pick| self.met_by(pick);
        let nominal = self.met()?;
        let most = at(|loss| loss.low).map_or(nominal.flow, |point| point.flow);
        let least = at(|loss| loss.high).map_or(nominal.flow, |point| point.flow);
        Ok(Agreed { nominal, flows: [least, most] })
    }

    /// How much warmer the coolant gets on its way round at a flow, K; none without flow.
    pub fn rise(&self, flow: f64, heat: f64) -> Option<f64> {
        coolant_rise(&self.fluid, flow, heat).ok()
    }
}

/// Coolant in the parts of the loop and in tubes whose bores hold `tubes` mm3 together, mL.
pub fn coolant_volume(design: &Design, tubes: f64) -> f64 {
    design.working.parts.iter().fold(tubes / MM3_IN_ML, |sum, part| sum + part.volume_ml)
}
