//! The plot of pressure loss in words.

use super::super::figures::figure;
use super::super::letters::{quoted, tamed};
use super::super::words;
use super::LossPlot;
use crate::tongue::Tongue;

/// The most points of a curve that are told; a long curve is told at that many, evenly picked.
const TOLD: usize = 12;

pub(super) fn tell(plot: &LossPlot, tongue: &Tongue) -> String {
    let mut told = vec![tongue.say(words::LOSS_IS, &[&tamed(&plot.title)])];
    let figure = |value: &f64| figure(*value, tongue);
    let along = |points: &[[f64; 2]]| {
        course(points, tongue, |[flow, pressure]| tongue.say(words::PRESSURE_AT, &[&figure(pressure), &figure(flow)]))
    };
    for curve in plot.loops.iter().take(super::MOST_LOOPS) {
        told.push(tongue.say(words::LOOP, &[&quoted(&curve.label, tongue), &along(&curve.points)]));
        if !curve.band.is_empty() {
            let band = course(&curve.band, tongue, |[flow, low, high]| {
                tongue.say(words::PRESSURES_AT, &[&figure(low), &figure(high), &figure(flow)])
            });
            told.push(tongue.say(words::RANGE, &[&band]));
        }
    }
    if let Some(pump) = &plot.pump {
        told.push(tongue.say(words::PUMP, &[&quoted(&pump.label, tongue), &along(&pump.points)]));
    }
    told.extend([operating(plot, tongue), stated(plot, tongue)].into_iter().flatten().map(|words| words + "."));
    if plot.is_empty() {
        told.push(format!("{}.", tongue.word(words::NOTHING)));
    }
    told.join(" ")
}

/// The operating point as its key entry says it.
pub(super) fn operating(plot: &LossPlot, tongue: &Tongue) -> Option<String> {
    let point = plot.operating?;
    let say = |template: &str, numbers: [f64; 2]| {
        let [one, other] = numbers.map(|number| figure(number, tongue));
        tongue.say(template, &[&one, &other])
    };
    let flows = point.flow_range.map(|flows| say(words::OPERATING_FLOWS, flows));
    let pressures = point.pressure_range.map(|pressures| say(words::OPERATING_PRESSURES, pressures));
    let ranges = flows.into_iter().chain(pressures);
    Some(ranges.fold(say(words::OPERATING, [point.flow, point.pressure]), |told, range| told + &range))
}

/// The stated flow as its key entry says it.
pub(super) fn stated(plot: &LossPlot, tongue: &Tongue) -> Option<String> {
    plot.stated_flow.map(|flow| tongue.say(words::STATED_FLOW, &[&figure(flow, tongue)]))
}

fn course<P>(points: &[P], tongue: &Tongue, tell: impl Fn(&P) -> String) -> String {
    if points.is_empty() {
        return tongue.word(words::NO_POINTS).into();
    }
    if points.len() <= TOLD {
        return points.iter().map(tell).collect::<Vec<_>>().join(", ");
    }
    let last = points.len() - 1;
    let picked: Vec<_> = (0..TOLD).map(|place| tell(&points[(place * last + (TOLD - 1) / 2) / (TOLD - 1)])).collect();
    tongue.say(words::PICKED, &[&picked.join(", "), &TOLD.to_string(), &points.len().to_string()])
}
