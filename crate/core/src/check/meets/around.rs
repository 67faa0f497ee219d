//! Have the fittings room to be turned?

use super::SAME;
use super::keep_outs::{is_in_part, solid_of};
use crate::check::finding::{PRACTICE, STATED};
use crate::check::{Finding, Severity, Subject};
use crate::design::wording;
use crate::distance::{Budget, Solid, SolidGap, apart, box_gap};

/// Gap between collars for fingers or a wrench, mm; common practice, no source.
const FINGERS: f64 = 1.0;
/// What a look at two solids that may be close costs of the budget: some tens of steps.
const COST: u64 = 50;

/// `fittings_close`: collars of two ports; `fitting_meets_keep_out`: a collar and a keep-out that is not the part its
/// port is in. Both care: whether a fitting can be turned is for the builder to try.
pub(super) fn findings(subject: Subject<'_>, budget: &mut Budget) -> Vec<Finding> {
    let fittings: Vec<Vec<Solid>> = subject
        .layout
        .ports
        .iter()
        .map(|port| port.collars.iter().map(|c| Solid::cylinder(&c.from, &c.to, c.radius)).collect())
        .collect();
    let keep_outs: Vec<Solid> = subject.design.keep_outs.iter().map(solid_of).collect();
    let clearance = subject.design.clearance;
    let mut found = Vec::new();
    for (port, fitting) in fittings.iter().enumerate() {
        for (other, others) in fittings.iter().enumerate().skip(port + 1) {
            if let Some(gap) = nearest(fitting, others, FINGERS, budget) {
                found.push(fittings_close(subject, [port, other], &gap));
            }
        }
        for (index, keep_out) in keep_outs.iter().enumerate() {
            if is_in_part(subject, port, keep_out) {
                continue;
            }
            if let Some(gap) = nearest(fitting, std::slice::from_ref(keep_out), clearance, budget) {
                found.push(meets_keep_out(subject, port, index, &gap));
            }
        }
    }
    found
}

/// The least gap between any two of the solids, if below `within`.
fn nearest(solids: &[Solid], others: &[Solid], within: f64, budget: &mut Budget) -> Option<SolidGap> {
    let pairs = solids.iter().flat_map(|solid| others.iter().map(move |other| (solid, other)));
    pairs
        .filter_map(|(solid, other)| {
            let near = budget.spend(1) && box_gap(&solid.bounds(), &other.bounds()) < within;
            (near && budget.spend(COST)).then(|| apart(solid, other, within - SAME))?
        })
        .min_by(|a, b| a.distance.total_cmp(&b.distance))
}

fn fittings_close(subject: Subject<'_>, [port, other]: [usize; 2], gap: &SolidGap) -> Finding {
    let name = |port: usize| wording::quoted(&subject.design.ports[port].name);
    Finding::new("fittings_close", Severity::Care, format!("/ports/{other}"))
        .at(&((gap.points[0] + gap.points[1]) / 2.0))
        .value(gap.distance, "mm")
        .limit(FINGERS, PRACTICE)
        .word("port", name(other))
        .word("other", name(port))
}

fn meets_keep_out(subject: Subject<'_>, port: usize, keep_out: usize, gap: &SolidGap) -> Finding {
    Finding::new("fitting_meets_keep_out", Severity::Care, format!("/ports/{port}"))
        .at(&gap.points[0])
        .value(gap.distance, "mm")
        .limit(subject.design.clearance, STATED)
        .word("port", wording::quoted(&subject.design.ports[port].name))
        .word("keep_out", wording::quoted(&subject.design.keep_outs[keep_out].name))
}
