//! Temperature against stiffness: up to where the design's material and the shipped ones are stiff.

use crate::design::{Design, Material};
use crate::plot::{Mark, MarkKind, MaterialRow, StiffnessPlot, Temperature};
use crate::presets;
use crate::service::Heat;

/// The plot: the design's material first, the others to compare.
pub fn stiffness(design: &Design) -> StiffnessPlot {
    let own = &design.process.material;
    let shipped = presets::materials();
    let others = shipped.iter().filter(|material| material.name != own.name);
    let working = &design.working;
    let temperature = |label: &str, celsius: f64| Temperature { label: label.into(), celsius };
    StiffnessPlot {
        title: "Temperature against stiffness".into(),
        materials: std::iter::once(own).chain(others).map(row).collect(),
        temperatures: vec![
            temperature("fitted", working.cold_c),
            temperature("working", working.working_c),
            temperature("fault", working.fault_c),
        ],
    }
}

fn row(material: &Material) -> MaterialRow {
    let mark = |kind, temperature: Option<f64>| temperature.map(|temperature| Mark { kind, temperature });
    let marks = [
        mark(MarkKind::DeflectionLow, material.hdt_045_c),
        mark(MarkKind::DeflectionHigh, material.hdt_180_c),
        mark(MarkKind::Glass, material.glass_c),
    ];
    MaterialRow {
        label: material.name.clone(),
        allowed: Heat::of(material).map(|heat| heat.limit.limit),
        marks: marks.into_iter().flatten().collect(),
    }
}
