//! Can the files' 32-bit coordinates still hold the tube's shape?

use super::finding::GEOMETRY;
use super::{Finding, OneRun, Severity, Subject, words};
use crate::distance::Budget;
use crate::layout::Vec3;
use crate::tube::rounding;

/// From here 32-bit numbers are 2^-10 mm apart (IEEE 754 binary32: 23 fraction bits, 8192 = 2^13), mm. A point is then
/// moved by up to sqrt(3)/2 of that, 0.0008 mm: a twelfth of the usual deviation of 0.01 mm.
const NOTICEABLE: f64 = 8_192.0;
/// From here they are 2^-8 mm apart: a point moves by up to 0.0034 mm, a third of the deviation.
const TOO_FAR: f64 = 32_768.0;

/// `far_from_datum`: care from 8,192 mm, stop from 32,768 mm.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().filter_map(|run| of_run(&run)).collect()
}

fn of_run(run: &OneRun<'_>) -> Option<Finding> {
    let joints = run.pieces().iter().map(|piece| piece.start);
    let nodes = run.drawn.skeleton.iter().copied();
    let farthest = joints.chain(nodes).fold(Vec3::zeros(), |far, p| if p.amax() > far.amax() { p } else { far });
    let reach = farthest.amax() + run.run.largest_radius();
    let (severity, limit) = if reach >= TOO_FAR {
        (Severity::Stop, TOO_FAR)
    } else if reach >= NOTICEABLE {
        (Severity::Care, NOTICEABLE)
    } else {
        return None;
    };
    let moved = f64::from(rounding(reach)) * 3.0_f64.sqrt() / 2.0;
    let finding = run
        .finding("far_from_datum", severity, run.at(""))
        .at(&farthest)
        .value(reach, "mm")
        .limit(limit, GEOMETRY)
        .word("moved", words::at_least(moved * 1e3, "µm"));
    Some(finding)
}
