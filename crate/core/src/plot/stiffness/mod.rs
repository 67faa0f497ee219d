//! Temperature against stiffness: up to where a material is stiff, and how warm it gets.

mod draw;
mod flags;
mod tell;

use super::fault::{at_most, number};
use super::{Frame, PlotError};
use crate::tongue::Tongue;

/// The most materials and temperatures in one picture, and marks of one material.
const MOST_MATERIALS: usize = 40;
const MOST_TEMPERATURES: usize = 6;
const MOST_MARKS: usize = 8;

/// What is drawn. Temperatures are degrees Celsius.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct StiffnessPlot {
    /// The heading.
    pub title: String,
    /// The design's material first, others to compare after it; at most 40.
    pub materials: Vec<MaterialRow>,
    /// What the tube meets, such as when fitted, working, at fault; at most six.
    pub temperatures: Vec<Temperature>,
}

/// One material.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct MaterialRow {
    /// Its name.
    pub label: String,
    /// Up to where it is taken as stiff; `None` where that is not known.
    pub allowed: Option<f64>,
    /// What is known of its softening, at most eight.
    pub marks: Vec<Mark>,
}

/// A temperature at which a material softens.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mark {
    /// Which.
    pub kind: MarkKind,
    /// °C.
    pub temperature: f64,
}

/// Which softening.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum MarkKind {
    /// Deflection under 0.45 MPa in bending (ISO 75-2, method B).
    DeflectionLow,
    /// Deflection under 1.80 MPa in bending (ISO 75-2, method A).
    DeflectionHigh,
    /// Glass transition.
    Glass,
}

/// A temperature that the tube meets.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Temperature {
    /// When, such as "fault".
    pub label: String,
    /// °C.
    pub celsius: f64,
}

impl StiffnessPlot {
    /// The picture.
    ///
    /// # Errors
    /// A temperature that no axis can place, too many of anything, or a prefix that is none.
    pub fn svg(&self, frame: &Frame<'_>) -> Result<String, PlotError> {
        self.svg_in(frame, &Tongue::english())
    }

    /// The picture in another language; its labels are told as they are.
    ///
    /// # Errors
    /// As [`StiffnessPlot::svg`].
    pub fn svg_in(&self, frame: &Frame<'_>, tongue: &Tongue) -> Result<String, PlotError> {
        frame.check()?;
        at_most("materials", MOST_MATERIALS, self.materials.len())?;
        at_most("temperatures", MOST_TEMPERATURES, self.temperatures.len())?;
        for material in &self.materials {
            at_most("marks of a material", MOST_MARKS, material.marks.len())?;
            material.allowed.map_or(Ok(()), |allowed| number("an allowed temperature", allowed))?;
            material.marks.iter().try_for_each(|mark| number("a mark's temperature", mark.temperature))?;
        }
        self.temperatures.iter().try_for_each(|one| number("a temperature", one.celsius))?;
        draw::draw(self, frame, tongue)
    }

    /// The same in words, with the numbers.
    pub fn text_alternative(&self) -> String {
        tell::tell(self, &Tongue::english())
    }
}
