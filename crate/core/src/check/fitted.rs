//! Where bends share the room there is: what became of the radii asked for?

use super::bend_radius::{exact_least, least_radius};
use super::finding::{GEOMETRY, STATED};
use super::{Finding, OneRun, Severity, Subject, words};
use crate::centreline::{Piece, Shape};
use crate::distance::Budget;

/// Radii that differ by less are the same, mm.
const SAME: f64 = 1e-6;

/// `no_room_to_share` (stop): a bend is left less than a tube needs. `bends_fitted` (note): the smallest radius that
/// came of sharing.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().filter(|run| run.run.fit_bends).filter_map(|run| of_run(&run)).collect()
}

fn of_run(run: &OneRun<'_>) -> Option<Finding> {
    let shrunk = |piece: &Piece| {
        let Shape::Arc { radius, station: Some(station), .. } = piece.shape else { return None };
        let asked = run.placed_corner(station)?.radius;
        (radius < asked - SAME).then_some((radius, station, asked))
    };
    let bends: Vec<(f64, usize, f64)> = run.pieces().iter().filter_map(shrunk).collect();
    let (radius, station, asked) = *bends.iter().min_by(|a, b| a.0.total_cmp(&b.0))?;
    let told = |code, severity| {
        run.finding(code, severity, run.station(station, ""))
            .at(&run.station_at(station))
            .value(radius, "mm")
            .word("corner", run.station_name(station))
    };
    // Where the radius asked for is itself too small, that is a finding of its own.
    if radius < exact_least(run) && asked >= exact_least(run) {
        return Some(told("no_room_to_share", Severity::Stop).limit(least_radius(run), GEOMETRY));
    }
    let count = bends.len();
    let bends = if count == 1 { "one bend has".to_owned() } else { format!("{count} bends have") };
    Some(
        told("bends_fitted", Severity::Note)
            .limit(asked, STATED)
            .word("bends", bends)
            .word("smallest", words::at_most(radius, "mm")),
    )
}
