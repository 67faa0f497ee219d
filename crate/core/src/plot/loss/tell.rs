//! The plot of pressure loss in words.

use super::super::figures::figure;
use super::super::letters::{quoted, tamed};
use super::LossPlot;
use std::fmt::Write;

/// The most points of a curve that are told; a long curve is told at that many, evenly picked.
const TOLD: usize = 12;

pub(super) fn tell(plot: &LossPlot) -> String {
    let mut words = format!("{}: pressure in kPa against flow in L/h.", tamed(&plot.title));
    // Writing into a string has no way to fail.
    for curve in plot.loops.iter().take(super::MOST_LOOPS) {
        let _ = write!(
            words,
            " Loop {}: {}.",
            quoted(&curve.label),
            course(&curve.points, |[flow, pressure]| { format!("{} kPa at {} L/h", figure(*pressure), figure(*flow)) })
        );
        if !curve.band.is_empty() {
            let _ = write!(
                words,
                " Its range: {}.",
                course(&curve.band, |[flow, low, high]| {
                    format!("{} to {} kPa at {} L/h", figure(*low), figure(*high), figure(*flow))
                })
            );
        }
    }
    if let Some(pump) = &plot.pump {
        let _ = write!(
            words,
            " Pump {}: {}.",
            quoted(&pump.label),
            course(&pump.points, |[flow, pressure]| { format!("{} kPa at {} L/h", figure(*pressure), figure(*flow)) })
        );
    }
    if let Some(words_of_point) = operating(plot) {
        let _ = write!(words, " {words_of_point}.");
    }
    if let Some(words_of_flow) = stated(plot) {
        let _ = write!(words, " {words_of_flow}.");
    }
    if plot.is_empty() {
        let _ = write!(words, " {}.", super::super::words::NOTHING);
    }
    words
}

/// The operating point as its key entry says it.
pub(super) fn operating(plot: &LossPlot) -> Option<String> {
    let point = plot.operating?;
    let mut words = format!("Operating point: {} L/h at {} kPa", figure(point.flow), figure(point.pressure));
    if let Some([low, high]) = point.flow_range {
        let _ = write!(words, "; flow {} to {} L/h", figure(low), figure(high));
    }
    if let Some([low, high]) = point.pressure_range {
        let _ = write!(words, "; pressure {} to {} kPa", figure(low), figure(high));
    }
    Some(words)
}

/// The stated flow as its key entry says it.
pub(super) fn stated(plot: &LossPlot) -> Option<String> {
    plot.stated_flow.map(|flow| format!("Stated flow: {} L/h", figure(flow)))
}

fn course<P>(points: &[P], tell: impl Fn(&P) -> String) -> String {
    if points.is_empty() {
        return "no points".into();
    }
    if points.len() <= TOLD {
        return points.iter().map(tell).collect::<Vec<_>>().join(", ");
    }
    let last = points.len() - 1;
    let picked: Vec<_> = (0..TOLD).map(|place| tell(&points[(place * last + (TOLD - 1) / 2) / (TOLD - 1)])).collect();
    format!("{} ({TOLD} of {} points)", picked.join(", "), points.len())
}
