//! Temperature against stiffness: up to where the design's material and the shipped ones are stiff.

use super::words;
use crate::design::{Design, Material};
use crate::plot::{Mark, MarkKind, MaterialRow, StiffnessPlot, Temperature};
use crate::presets;
use crate::service::Heat;
use crate::tongue::Tongue;

/// The plot, its labels in a language: the design's material first, the others to compare.
pub fn stiffness(design: &Design, tongue: &Tongue) -> StiffnessPlot {
    let own = &design.process.material;
    let shipped = presets::materials();
    let others = shipped.iter().filter(|material| material.name != own.name);
    let working = &design.working;
    let temperature = |label: &str, celsius: f64| Temperature { label: tongue.word(label).into(), celsius };
    StiffnessPlot {
        title: tongue.word(words::STIFFNESS).into(),
        materials: std::iter::once(own).chain(others).map(|material| row(material, tongue)).collect(),
        temperatures: vec![
            temperature(words::FITTED, working.cold_c),
            temperature(words::WORKING, working.working_c),
            temperature(words::FAULT, working.fault_c),
        ],
    }
}

fn row(material: &Material, tongue: &Tongue) -> MaterialRow {
    let mark = |kind, temperature: Option<f64>| temperature.map(|temperature| Mark { kind, temperature });
    let marks = [
        mark(MarkKind::DeflectionLow, material.hdt_045_c),
        mark(MarkKind::DeflectionHigh, material.hdt_180_c),
        mark(MarkKind::Glass, material.glass_c),
    ];
    MaterialRow {
        label: tongue.word(&material.name).into(),
        allowed: Heat::of(material).map(|heat| heat.limit.limit),
        marks: marks.into_iter().flatten().collect(),
    }
}
