//! Stiffness and temperatures in words.

use super::super::figures::figure;
use super::super::letters::{quoted, tamed};
use super::super::words;
use super::{Mark, MarkKind, MaterialRow, StiffnessPlot, Temperature};
use std::fmt::Write;

pub(super) fn tell(plot: &StiffnessPlot) -> String {
    let mut told = format!("{}: temperatures in °C.", tamed(&plot.title));
    // Writing into a string has no way to fail.
    for one in plot.temperatures.iter().take(super::MOST_TEMPERATURES) {
        let _ = write!(told, " {}: {} °C.", quoted(&one.label), figure(one.celsius));
    }
    for (place, material) in plot.materials.iter().take(super::MOST_MATERIALS).enumerate() {
        let role = if place == 0 { ", the design's material" } else { "" };
        let _ = write!(told, " {}{role}: {}.", quoted(&material.label), limits(material));
        for one in plot.temperatures.iter().take(super::MOST_TEMPERATURES) {
            if let Some(allowed) = material.allowed {
                let _ = write!(told, " {}.", at(one, allowed, &quoted(&one.label)));
            }
        }
    }
    if plot.materials.is_empty() && plot.temperatures.is_empty() {
        let _ = write!(told, " {}.", words::NOTHING);
    }
    told
}

fn at(one: &Temperature, allowed: f64, name: &str) -> String {
    let margin = allowed - one.celsius;
    if margin < 0.0 {
        format!("At {name} {} by {} °C", words::OVER, figure(-margin))
    } else {
        format!("At {name} {} °C in reserve", figure(margin))
    }
}

/// What is known of a material's softening.
pub(super) fn limits(material: &MaterialRow) -> String {
    let allowed = match material.allowed {
        Some(allowed) => format!("allowed up to {} °C", figure(allowed)),
        None => "no allowed temperature known".into(),
    };
    let mut marks: Vec<&Mark> = material.marks.iter().take(super::MOST_MARKS).collect();
    marks.sort_by_key(|mark| mark.kind);
    marks.iter().fold(allowed, |told, mark| format!("{told}; {} at {} °C", kind(mark.kind), figure(mark.temperature)))
}

/// What a mark is called.
pub(super) fn kind(kind: MarkKind) -> &'static str {
    match kind {
        MarkKind::DeflectionLow => "deflects under 0.45 MPa",
        MarkKind::DeflectionHigh => "deflects under 1.80 MPa",
        MarkKind::Glass => "glass transition",
    }
}

/// How a material stands in one sentence: every temperature that is over, or what is left at the warmest.
pub(super) fn verdict(material: &MaterialRow, temperatures: &[Temperature]) -> Option<String> {
    let allowed = material.allowed?;
    let over: Vec<String> = temperatures
        .iter()
        .filter(|one| one.celsius > allowed)
        .map(|one| format!("at {} by {} °C", tamed(&one.label), figure(one.celsius - allowed)))
        .collect();
    if !over.is_empty() {
        return Some(format!("{} {}", words::OVER, over.join(", ")));
    }
    let warmest = temperatures.iter().max_by(|a, b| a.celsius.total_cmp(&b.celsius))?;
    Some(format!("{} °C in reserve at {}", figure(allowed - warmest.celsius), tamed(&warmest.label)))
}
