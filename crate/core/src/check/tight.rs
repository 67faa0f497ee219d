//! Does the wall let coolant through?

use super::finding::PRACTICE;
use super::round::down;
use super::{Finding, OneRun, PatchStep, Severity, Subject};
use crate::design::{Way, wording};
use crate::distance::Budget;
use crate::service::thinnest_outer;

/// What decimal fractions leave is no difference, mm.
const SAME: f64 = 1e-9;

/// `tight` (care): no wall of the material is known to be tight as printed, or this one is thinner than the least that is.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let material = &subject.design.process.material;
    let Some(least) = material.tight_from_mm else {
        return weeping(subject).into_iter().collect();
    };
    subject.runs().filter_map(|run| thin(&run, least)).collect()
}

fn weeping(subject: Subject<'_>) -> Option<Finding> {
    let material = &subject.design.process.material;
    if subject.design.runs.is_empty() {
        return None;
    }
    let remedy = match material.way {
        Some(Way::Filament) => {
            "Seal it inside and out with a lacquer that stands the coolant, or choose another process"
        }
        Some(Way::Powder) => "Have it smoothed by vapour or sealed, or choose another process",
        _ => "Seal it, or choose another material",
    };
    Some(
        Finding::new("tight", Severity::Care, "/process/material")
            .source("as the material's figures state it")
            .word("material", wording::quoted(&material.name))
            .word("remedy", remedy),
    )
}

fn thin(run: &OneRun<'_>, least: f64) -> Option<Finding> {
    let wall = (thinnest_outer(run.run) - run.run.tube.bore) / 2.0;
    if wall >= least - SAME {
        return None;
    }
    let bore = down(run.run.tube.outer_diameter - 2.0 * least);
    let way = (bore > 0.0).then(|| vec![PatchStep::set(run.at("/tube/bore"), bore)]);
    Some(run.finding("tight", Severity::Care, run.at("/tube/bore")).value(wall, "mm").limit(least, PRACTICE).ways(way))
}
