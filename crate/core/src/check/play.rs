//! Are the ports measured well enough for the tube between them?

use super::finding::PRACTICE;
use super::{Finding, OneRun, Severity, Subject, words};
use crate::design::wording;
use crate::distance::Budget;
use crate::layout::Vec3;

/// Angle that a tube may lean in its socket, degrees; common practice, no source.
pub(super) const ANGLE: f64 = 1.0;
/// How far a port may be off without loading the ring from one side, mm; common practice, no source.
const OFFSET: f64 = 0.5;

/// `play_angle` (note): both ports may be off by so much, for the length between them, that the tube would lean.
/// `play_offset` (note): a port that carries a tube may be off by more than its ring takes.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let mut used = vec![false; subject.design.ports.len()];
    for placed in &subject.layout.runs {
        used[placed.from] = true;
        used[placed.to] = true;
    }
    let angles = subject.runs().filter_map(|run| angle(&run));
    let offsets = (0..used.len()).filter(|port| used[*port]).filter_map(|port| offset(subject, port));
    angles.chain(offsets).collect()
}

fn angle(run: &OneRun<'_>) -> Option<Finding> {
    let [start, end] = [true, false].map(|at_start| run.pose(at_start).end);
    let off = run.port(true).measured_to + run.port(false).measured_to;
    // Both off in opposite directions across the tube, as far apart as its ends are.
    let leans = libm::atan2(off, (end - start).norm()).to_degrees();
    (off > 0.0 && leans > ANGLE).then(|| {
        run.finding("play_angle", Severity::Note, run.at(""))
            .at(&((start + end) / 2.0))
            .value(leans, "°")
            .limit(ANGLE, PRACTICE)
            .word("aside", words::number(off, "mm"))
    })
}

fn offset(subject: Subject<'_>, index: usize) -> Option<Finding> {
    let port = &subject.design.ports[index];
    (port.measured_to > OFFSET + 1e-9).then(|| {
        Finding::new("play_offset", Severity::Note, format!("/ports/{index}/measured_to"))
            .at(&Vec3::from(port.at))
            .value(port.measured_to, "mm")
            .limit(OFFSET, PRACTICE)
            .word("port", wording::quoted(&port.name))
    })
}
