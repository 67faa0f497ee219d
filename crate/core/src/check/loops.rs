//! Does any bend turn more than half round?

use super::bend_radius::least_radius;
use super::finding::GEOMETRY;
use super::round::down;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::centreline::{Obstacle, Piece, Shape};
use crate::distance::Budget;
use core::f64::consts::PI;

/// `loops` (care): a bend that joins an end turns more than half round. A link that loops is told as `link_too_tight`.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().flat_map(|run| of_run(&run)).collect()
}

fn of_run(run: &OneRun<'_>) -> Vec<Finding> {
    if run.drawn.obstacles.iter().any(|obstacle| matches!(obstacle, Obstacle::LinkTooTight { .. })) {
        return Vec::new();
    }
    run.pieces().iter().filter_map(|piece| judge(run, piece)).collect()
}

fn judge(run: &OneRun<'_>, piece: &Piece) -> Option<Finding> {
    let Shape::Arc { angle, .. } = piece.shape else { return None };
    if angle <= PI + 1e-9 {
        return None;
    }
    let at_start = piece.from < run.pose(true).straight + 1e-6;
    let at_end = piece.to() > run.pieces().last().map_or(0.0, Piece::to) - run.pose(false).straight - 1e-6;
    // What joins a coil may have to come round to it; that is the coil's own doing.
    if !at_start && !at_end {
        return None;
    }
    let finding = run
        .finding("loops", Severity::Care, run.at("/bend_radius"))
        .at(&piece.at(piece.length / 2.0).point)
        .value(angle.to_degrees(), "°")
        .limit(180.0, GEOMETRY)
        .word("port", run.port_name(at_start));
    // A bend along an axis turns half round when it comes back two radii beside it, so a corner behind the lead's end
    // is reached with less where it lies at least two radii off the axis.
    let Some((_, corner)) = run.end_corner(at_start) else { return Some(finding) };
    let (_, aside) = run.beside_axis(at_start, &corner.at);
    let largest = down(aside / 2.0);
    if largest < least_radius(run) {
        return Some(finding);
    }
    Some(
        finding
            .word("largest", words::at_most(largest, "mm"))
            .ways([vec![PatchStep::set(run.at("/bend_radius"), largest)]]),
    )
}
