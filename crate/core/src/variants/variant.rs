//! One combination of sizes and material.

use serde_json::Value;

use super::shared::Place;
use crate::check::PatchStep;
use crate::design::Design;
use crate::presets;
use crate::report::fix::{Source, on_text};

/// One combination; what is none is as the design has it.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Variant {
    /// Outer diameter, mm.
    pub outer_diameter: Option<f64>,
    /// Bore, mm.
    pub bore: Option<f64>,
    /// Name of a shipped material.
    pub material: Option<String>,
    /// Where they stand in what was asked for.
    pub place: Place,
}

impl Variant {
    /// The design with these runs so.
    pub fn made(&self, design: &Design, runs: &[usize]) -> Design {
        let mut design = design.clone();
        for run in runs {
            let tube = &mut design.runs[*run].tube;
            tube.outer_diameter = self.outer_diameter.unwrap_or(tube.outer_diameter);
            tube.bore = self.bore.unwrap_or(tube.bore);
        }
        let shipped = |name: &String| presets::materials().into_iter().find(|material| material.name == *name);
        if let Some(material) = self.material.as_ref().and_then(shipped) {
            design.process.material = material;
        }
        design
    }

    /// What adopts it, on the text as it is. A bend radius that was left out would follow the diameter, and the way with
    /// it: it stays as it was.
    pub fn patch(&self, design: &Design, runs: &[usize], source: &Source<'_>) -> Value {
        let mut steps = Vec::new();
        for run in runs {
            let at = |key: &str| format!("/runs/{run}/{key}");
            if let Some(outer) = self.outer_diameter {
                steps.push(PatchStep::set(at("tube/outer_diameter"), outer));
                if !source.has(&at("bend_radius")) {
                    steps.push(PatchStep::set(at("bend_radius"), design.runs[*run].bend_radius));
                }
            }
            steps.extend(self.bore.map(|bore| PatchStep::set(at("tube/bore"), bore)));
        }
        steps.extend(self.material.as_ref().map(|name| PatchStep::set("/process/material", name.as_str())));
        serde_json::to_value(on_text(&steps, source)).unwrap_or_default()
    }
}
