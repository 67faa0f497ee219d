//! Does the material stay stiff in warm coolant, also when the pump has stopped?

use super::finding::PRACTICE;
use super::{Finding, PatchStep, Severity, Subject, words};
use crate::design::{Material, wording};
use crate::distance::Budget;
use crate::presets;
use crate::service::{CARE_MARGIN, Heat, STOP_MARGIN, growth};
use serde_json::Value;

/// What two sockets take up of a tube that grows, mm: half a millimetre each; common practice, no source.
const TAKEN_UP: f64 = 1.0;
const MATERIAL: &str = "/process/material";

/// `heat` (stop): the material's limit is below the working temperature or that of a fault; (care) it is above, but by
/// less than the larger margin. `heat_growth` (note): a run grows by more than its sockets take up. `material_unknown`
/// (note): figures are missing, so that nothing can be told.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    // A design without a tube asks nothing of its material.
    if subject.design.runs.is_empty() {
        return Vec::new();
    }
    [unknown(subject), soft(subject)].into_iter().flatten().chain(grown(subject)).collect()
}

fn soft(subject: Subject<'_>) -> Option<Finding> {
    let (material, working) = (&subject.design.process.material, &subject.design.working);
    let heat = Heat::of(material)?;
    let (limit, hottest) = (heat.limit.limit, working.hottest_c());
    let severity = if hottest > limit {
        Severity::Stop
    } else if hottest > heat.easy {
        Severity::Care
    } else {
        return None;
    };
    let kept = if severity == Severity::Stop { STOP_MARGIN } else { CARE_MARGIN };
    // The limit that this severity is about: the warmest that leaves its margin.
    let limit = if severity == Severity::Stop { limit } else { heat.easy };
    let state = if working.working_c > limit { "the working temperature" } else { "a stopped pump" };
    let temperature = if working.working_c > limit { working.working_c } else { hottest };
    Some(
        Finding::new("heat", severity, MATERIAL)
            .value(temperature, "°C")
            .limit(limit, PRACTICE)
            .word("material", wording::quoted(&material.name))
            .word("state", state)
            .word("margin", words::number(kept, "K"))
            .word("softens", words::number(limit + kept, "°C"))
            .ways(stiffer(material, hottest)),
    )
}

/// Shipped materials that stay stiff, those that are printed in the same way first.
fn stiffer(material: &Material, hottest: f64) -> Vec<Vec<PatchStep>> {
    let mut fit: Vec<Material> = presets::materials();
    fit.retain(|other| Heat::of(other).is_some_and(|heat| heat.easy >= hottest));
    fit.sort_by_key(|other| other.way != material.way);
    fit.into_iter().map(|other| vec![PatchStep::set(MATERIAL, Value::from(other.name))]).collect()
}

fn unknown(subject: Subject<'_>) -> Option<Finding> {
    let material = &subject.design.process.material;
    let missing: Vec<&str> = [
        (Heat::of(material).is_none(), "its heat deflection"),
        (material.strength_mpa.is_none() || material.across_layers.is_none(), "its strength along and across layers"),
    ]
    .into_iter()
    .filter_map(|(missing, what)| missing.then_some(what))
    .collect();
    (!missing.is_empty()).then(|| {
        Finding::new("material_unknown", Severity::Note, MATERIAL)
            .word("material", wording::quoted(&material.name))
            .word("missing", missing.join(" and "))
    })
}

fn grown(subject: Subject<'_>) -> Vec<Finding> {
    let (material, working) = (&subject.design.process.material, &subject.design.working);
    let longer = |run: &super::OneRun<'_>| {
        let by = growth(run.drawn.line.as_ref()?.length, material, working)?;
        (by > TAKEN_UP).then(|| {
            run.finding("heat_growth", Severity::Note, run.at(""))
                .value(by, "mm")
                .limit(TAKEN_UP, PRACTICE)
                .word("cold", words::number(working.cold_c, "°C"))
                .word("hot", words::number(working.fault_c, "°C"))
        })
    };
    subject.runs().filter_map(|run| longer(&run)).collect()
}
