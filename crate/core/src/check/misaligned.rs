//! Is the corner next to a fitting meant to be in line with it?

use super::finding::GEOMETRY;
use super::obstacles::axis_of;
use super::{Finding, OneRun, PatchStep, Severity, Subject};
use crate::distance::Budget;
use crate::layout::Vec3;
use serde_json::json;

/// A corner in front of its port and nearer to its axis than this is meant to lie on it, mm; from judgement: it is more
/// than calipers are off by and less than anyone bends a tube for.
const MEANT_IN_LINE: f64 = 1.0;

/// `misaligned` (care): the corner is off the axis by so little that the tube gets an extra bend nobody meant.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().flat_map(|run| [true, false].map(|at_start| judge(&run, at_start))).flatten().collect()
}

fn judge(run: &OneRun<'_>, at_start: bool) -> Option<Finding> {
    let (station, corner) = run.end_corner(at_start)?;
    let corner = corner.at;
    let (ahead, aside) = run.beside_axis(at_start, &corner);
    if run.is_on_axis(at_start) || ahead <= run.pose(at_start).inside || aside >= MEANT_IN_LINE {
        return None;
    }
    let finding = run
        .finding("misaligned", Severity::Care, run.station(station, ""))
        .at(&corner)
        .value(aside, "mm")
        .limit(0.0, GEOMETRY)
        .word("corner", run.station_name(station))
        .word("port", run.port_name(at_start))
        .ways([onto_axis(run, at_start, station, ahead)]);
    Some(finding)
}

/// Moves the corner onto the axis. Along a coordinate axis it is tied to the port, so that it stays there when the port
/// is measured again; otherwise it goes to the nearest point of the axis.
fn onto_axis(run: &OneRun<'_>, at_start: bool, station: usize, ahead: f64) -> Vec<PatchStep> {
    let pose = run.pose(at_start);
    let path = |axis: usize| run.station(station, &format!("/corner/{axis}"));
    let port = run.port(at_start);
    match axis_of(&pose.out) {
        Some(along) => (0..3)
            .filter(|axis| *axis != along)
            .map(|axis| {
                let plus = pose.mouth[axis] - port.at[axis];
                let plus = if plus.abs() < 1e-9 { 0.0 } else { plus };
                PatchStep::replace(path(axis), json!({ "of": port.name, "plus": plus }))
            })
            .collect(),
        None => {
            let target: Vec3 = pose.end + pose.out * ahead;
            (0..3).map(|axis| PatchStep::replace(path(axis), libm::round(target[axis] * 1e9) / 1e9)).collect()
        }
    }
}
