//! Does the lead-in chamfer end before the fitting's mouth?

use super::round::down;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::distance::Budget;

/// Chamfer to propose where it fits, mm; common practice, no source.
const USUAL: f64 = 2.0;

/// `chamfer_long` (stop): the chamfer is as long as all the tube inside a fitting, so nothing round is left to seal on.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().filter_map(|run| of_run(&run)).collect()
}

fn of_run(run: &OneRun<'_>) -> Option<Finding> {
    let shallow = run.placed.start.inside <= run.placed.end.inside;
    let inside = run.pose(shallow).inside;
    let ends = &run.run.ends;
    if ends.chamfer_length <= 0.0 || ends.chamfer_length < inside {
        return None;
    }
    let proposed = down(USUAL.min(inside / 2.0));
    let way = vec![PatchStep::set(run.at("/ends/chamfer_length"), proposed)];
    let finding = run
        .finding("chamfer_long", Severity::Stop, run.at("/ends/chamfer_length"))
        .at(&run.pose(shallow).mouth)
        .value(ends.chamfer_length, "mm")
        .limit(inside, super::finding::GEOMETRY)
        .word("port", run.port_name(shallow))
        .word("usual", words::number(USUAL, "mm"))
        .ways([way]);
    Some(finding)
}
