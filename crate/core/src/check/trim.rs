//! Does the trim at a tube's ends take up how far off the ports may be along it?

use super::finding::{PRACTICE, STATED};
use super::round::up;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::distance::Budget;

/// How far short of its stop a tube may sit without any trim being wanted, mm; common practice, no source.
const SHORT: f64 = 1.0;
/// Lengths that differ by less are the same, mm.
const SAME: f64 = 1e-9;

/// `trim_short` (note): the ports may be further off along the tube's ends than its trim, or a socket, takes.
/// `trim_covers` (note): there is trim, and it is enough.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().filter_map(|run| of_run(&run)).collect()
}

fn of_run(run: &OneRun<'_>) -> Option<Finding> {
    run.drawn.line.as_ref()?;
    // Both off in opposite directions along an end: the tube must be that much longer there.
    let off = run.port(true).measured_to + run.port(false).measured_to;
    let needed = off * share(run);
    let trim = run.run.ends.trim;
    let place = run.at("/ends/trim");
    if needed <= trim + SAME {
        let covers = trim > 0.0 && off > 0.0;
        return covers.then(|| {
            run.finding("trim_covers", Severity::Note, place)
                .value(trim, "mm")
                .limit(needed, STATED)
                .word("off", words::number(off, "mm"))
        });
    }
    if trim == 0.0 && needed <= SHORT + SAME {
        return None;
    }
    let finding = run
        .finding("trim_short", Severity::Note, place.clone())
        .at(&run.pose(false).end)
        .value(trim, "mm")
        .limit(needed, if trim > 0.0 { STATED } else { PRACTICE })
        .word("off", words::number(off, "mm"))
        .ways([vec![PatchStep::set(place, up(needed))]]);
    Some(if trim > 0.0 { finding } else { finding.word("none", "no trim") })
}

/// How much of an error along its ends each end must take up. In line and facing each other, both ends share it.
/// Leaving the same way, an end that turns out too short is mended by shortening the other. Else each takes its own.
fn share(run: &OneRun<'_>) -> f64 {
    let [a, b] = [run.pose(true).out, run.pose(false).out];
    let within_play = |sum: f64| libm::asin((sum / 2.0).min(1.0)).to_degrees() * 2.0 <= super::play::ANGLE;
    if within_play((a + b).norm()) {
        0.5
    } else if within_play((a - b).norm()) {
        0.0
    } else {
        1.0
    }
}
