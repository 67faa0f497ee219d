//! Stiffness and temperatures in words.

use super::super::figures::figure;
use super::super::letters::{quoted, tamed};
use super::super::words;
use super::{Mark, MarkKind, MaterialRow, StiffnessPlot, Temperature};
use crate::tongue::Tongue;

pub(super) fn tell(plot: &StiffnessPlot, tongue: &Tongue) -> String {
    let mut told = vec![tongue.say(words::STIFFNESS_IS, &[&tamed(&plot.title)])];
    let temperatures = plot.temperatures.iter().take(super::MOST_TEMPERATURES);
    for one in temperatures.clone() {
        told.push(format!("{}: {} °C.", quoted(&one.label, tongue), figure(one.celsius, tongue)));
    }
    for (place, material) in plot.materials.iter().take(super::MOST_MATERIALS).enumerate() {
        let (name, limits) = (quoted(&material.label, tongue), limits(material, tongue));
        told.push(if place == 0 { tongue.say(words::OWN, &[&name, &limits]) } else { format!("{name}: {limits}.") });
        if let Some(allowed) = material.allowed {
            told.extend(temperatures.clone().map(|one| at(one, allowed, tongue) + "."));
        }
    }
    if plot.materials.is_empty() && plot.temperatures.is_empty() {
        told.push(format!("{}.", tongue.word(words::NOTHING)));
    }
    told.join(" ")
}

fn at(one: &Temperature, allowed: f64, tongue: &Tongue) -> String {
    let (name, margin) = (quoted(&one.label, tongue), allowed - one.celsius);
    let words = if margin < 0.0 { words::AT_OVER } else { words::AT_WITHIN };
    tongue.say(words, &[&name, &figure(margin.abs(), tongue)])
}

/// What is known of a material's softening.
pub(super) fn limits(material: &MaterialRow, tongue: &Tongue) -> String {
    let allowed = match material.allowed {
        Some(allowed) => tongue.say(words::ALLOWED, &[&figure(allowed, tongue)]),
        None => tongue.word(words::ALLOWED_UNKNOWN).into(),
    };
    let mut marks: Vec<&Mark> = material.marks.iter().take(super::MOST_MARKS).collect();
    marks.sort_by_key(|mark| mark.kind);
    marks.iter().fold(allowed, |told, mark| {
        let mark = tongue.say(words::MARK_AT, &[tongue.word(kind(mark.kind)), &figure(mark.temperature, tongue)]);
        format!("{told}; {mark}")
    })
}

/// What a mark is called.
pub(super) fn kind(kind: MarkKind) -> &'static str {
    match kind {
        MarkKind::DeflectionLow => words::DEFLECTS_LOW,
        MarkKind::DeflectionHigh => words::DEFLECTS_HIGH,
        MarkKind::Glass => words::GLASS,
    }
}

/// How a material stands in one sentence: every temperature that is over, or what is left at the warmest.
pub(super) fn verdict(material: &MaterialRow, temperatures: &[Temperature], tongue: &Tongue) -> Option<String> {
    let allowed = material.allowed?;
    let over: Vec<String> = temperatures
        .iter()
        .filter(|one| one.celsius > allowed)
        .map(|one| tongue.say(words::OVER_AT, &[&tamed(&one.label), &figure(one.celsius - allowed, tongue)]))
        .collect();
    if !over.is_empty() {
        return Some(format!("{} {}", tongue.word(words::OVER), over.join(", ")));
    }
    let warmest = temperatures.iter().max_by(|a, b| a.celsius.total_cmp(&b.celsius))?;
    let left = figure(allowed - warmest.celsius, tongue);
    Some(tongue.say(words::RESERVE_AT, &[&left, &tamed(&warmest.label)]))
}
