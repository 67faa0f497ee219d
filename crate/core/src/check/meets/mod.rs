//! What comes too close to what: tubes to themselves, to one another, to fittings and keep-outs, and fittings to their
//! surroundings. All look off one budget; where it runs out a note says so.

mod around;
mod fittings;
mod itself;
pub(super) mod keep_outs;
mod runs;
pub(super) mod tube;

use super::finding::STATED;
use super::{Finding, OneRun, Severity, Subject, words};
use crate::distance::Budget;
use crate::layout::Vec3;
use tube::Tube;

/// Gaps that differ by less are the same, mm: parallel tubes set exactly a clearance apart keep it.
const SAME: f64 = 1e-6;

/// `meets_itself`, `meets_run`, `meets_fitting`, `meets_keep_out` (stop where skins touch, care below the clearance),
/// `fittings_close`, `fitting_meets_keep_out` (care), `not_all_checked` (note).
pub(super) fn findings(subject: Subject<'_>, budget: &mut Budget) -> Vec<Finding> {
    let tubes: Vec<Tube<'_>> = subject.runs().filter_map(|run| Tube::of(run, subject.design.clearance)).collect();
    let mut found = itself::findings(&tubes, budget);
    found.extend(runs::findings(&tubes, budget));
    found.extend(fittings::findings(subject, &tubes, budget));
    found.extend(keep_outs::findings(subject, &tubes, budget));
    found.extend(around::findings(subject, budget));
    if budget.is_spent() {
        found.push(Finding::new("not_all_checked", Severity::Note, ""));
    }
    found
}

/// How bad a gap between skins is, if it is.
fn severity(gap: f64, clearance: f64) -> Option<Severity> {
    if gap <= SAME {
        Some(Severity::Stop)
    } else if gap < clearance - SAME {
        Some(Severity::Care)
    } else {
        None
    }
}

/// Centrelines farther apart than the radii and this cannot be too close.
fn search_width(clearance: f64) -> f64 {
    clearance.max(2.0 * SAME)
}

/// A finding of a tube too close to something: the gap between skins, where, and how far along the run.
fn too_close(
    code: &'static str,
    run: &OneRun<'_>,
    clearance: f64,
    (gap, at, along): (f64, &Vec3, f64),
) -> Option<Finding> {
    let severity = severity(gap, clearance)?;
    let finding = run
        .finding(code, severity, run.at(""))
        .at(at)
        .value(gap, "mm")
        .limit(clearance, STATED)
        .word("along", place_along(along))
        .word("from", run.port_name(true));
    Some(match severity {
        Severity::Stop => finding.word("overlap", words::number(gap.min(0.0).abs(), "mm")),
        _ => finding,
    })
}

/// How far along a tube, as a message shows it: to a tenth, which is what a thumb on the tube can tell.
fn place_along(along: f64) -> String {
    words::number(libm::round(along * 10.0) / 10.0, "mm")
}
