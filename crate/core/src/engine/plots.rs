//! Plots on request: which, and how wide.

use serde_json::{Map, Value};

use super::stages::Stages;
use crate::design::Refusal;
use crate::export::Kind;
use crate::graphs;
use crate::plot::{Frame, PlotError};
use crate::tongue::Tongue;

/// Width where none is asked for, CSS pixels: a page of A4.
pub(super) const USUAL_WIDTH: u32 = 760;
/// Widths that can be asked for, CSS pixels.
const WIDTHS: [f64; 2] = [280.0, 1600.0];

/// The bytes of a plot.
///
/// # Errors
/// The loss of a coolant that is not known or freezes; numbers that no axis can place.
pub(super) fn plot(stages: &Stages<'_>, kind: Kind, width: u32, tongue: &Tongue) -> Result<Vec<u8>, Refusal> {
    let frame = |prefix| Frame { prefix, width };
    let drawn = match kind {
        Kind::LossPlot => match graphs::loss(stages, tongue) {
            Err(fault) => return Err(Refusal::at("/loop/working_c", format!("No loss can be drawn: {fault}."))),
            Ok(None) => {
                let message = "No loss can be drawn: the coolant states neither what it is made of nor its viscosity.";
                return Err(Refusal::at("/loop/coolant", message));
            }
            Ok(Some(loss)) => loss.svg_in(&frame("loss"), tongue),
        },
        Kind::MarginsPlot => graphs::margins(stages, tongue).svg_in(&frame("margins"), tongue),
        _ => graphs::stiffness(&stages.design, tongue).svg_in(&frame("heat"), tongue),
    };
    let refused = |error: PlotError| Refusal::at("", format!("The plot cannot be drawn: {error}."));
    drawn.map(String::into_bytes).map_err(refused)
}

/// The width that a request asks for.
///
/// # Errors
/// A width for another kind of file, or one that no page has.
pub(super) fn width(kind: Kind, keys: &Map<String, Value>) -> Result<u32, Refusal> {
    let refused = |message: &str| Err(Refusal::at("/width", message));
    match keys.get("width") {
        None => Ok(USUAL_WIDTH),
        Some(_) if !kind.is_plot() => refused("Only a plot has a width; leave it out."),
        Some(value) => match value.as_f64() {
            Some(width) if (WIDTHS[0]..=WIDTHS[1]).contains(&width) => Ok(width as u32),
            _ => refused("A plot is from 280 to 1600 pixels wide."),
        },
    }
}
