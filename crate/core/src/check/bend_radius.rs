//! Does every bend leave the tube room to turn?

use super::finding::{GEOMETRY, PRACTICE};
use super::round::{down, up};
use super::{Finding, MOST_OF_A_KIND, OneRun, PatchStep, Severity, Subject, words};
use crate::centreline::{Piece, Shape};
use crate::distance::Budget;
use crate::layout::Vec3;
use crate::tube::least_inner_radius;

/// Bend radius over outer diameter that printed tube may go down to; common practice, no source.
const TIGHT: f64 = 1.0;
/// Bend radii over outer diameter to propose, the most usual first; common practice, no source.
const USUAL: [f64; 3] = [2.0, 1.5, 1.0];

/// `bend_radius` (stop): a radius at which the inside of the bend folds over itself. `bend_tight` (note): one that can
/// be made but is below the outer diameter.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().flat_map(|run| of_run(&run)).collect()
}

fn of_run(run: &OneRun<'_>) -> Vec<Finding> {
    let exact = exact_least(run);
    let own = (0..run.run.route.len()).filter_map(|station| {
        let radius = run.corner(station)?.bend_radius?;
        let at = run.station_at(station);
        let finding = judge(run, exact, radius, run.station(station, "/bend_radius"), at);
        finding.filter(|_| turns(run, station))
    });
    let of_the_run =
        bend_of_the_run(run).and_then(|at| judge(run, exact, run.run.bend_radius, run.at("/bend_radius"), at));
    of_the_run.into_iter().chain(own).take(MOST_OF_A_KIND).collect()
}

/// The least radius that the run's bends may have, rounded up.
pub(super) fn least_radius(run: &OneRun<'_>) -> f64 {
    up(exact_least(run))
}

pub(super) fn exact_least(run: &OneRun<'_>) -> f64 {
    run.run.largest_radius() + least_inner_radius(run.reach())
}

fn judge(run: &OneRun<'_>, exact: f64, radius: f64, place: String, at: Vec3) -> Option<Finding> {
    let diameter = run.run.tube.outer_diameter;
    let least = up(exact);
    let (code, severity, limit, source) = if radius < exact {
        ("bend_radius", Severity::Stop, least, GEOMETRY)
    } else if radius < TIGHT * diameter {
        ("bend_tight", Severity::Note, TIGHT * diameter, PRACTICE)
    } else {
        return None;
    };
    let usual = USUAL.map(|times| down(times * diameter)).into_iter().chain([least]);
    let ways = usual.filter(|value| *value >= limit).map(|value| vec![PatchStep::set(place.clone(), value)]);
    let finding = run
        .finding(code, severity, place.clone())
        .at(&at)
        .value(radius, "mm")
        .limit(limit, source)
        .word("diameter", words::number(diameter, "mm"))
        .word("usual", words::number(USUAL[0] * diameter, "mm"))
        .ways(ways);
    Some(finding)
}

/// Whether the run turns at a station at all; a corner in line with its neighbours has no bend.
fn turns(run: &OneRun<'_>, station: usize) -> bool {
    if run.drawn.line.is_some() {
        return run.pieces().iter().any(|piece| piece.station() == Some(station));
    }
    // The skeleton begins with the end face and the lead's end.
    turns_at(&run.drawn.skeleton, station + 2)
}

fn turns_at(nodes: &[Vec3], node: usize) -> bool {
    let (before, after) = (nodes[node] - nodes[node - 1], nodes[node + 1] - nodes[node]);
    before.dot(&after) < 0.0 || before.cross(&after).norm() > 1e-9 * before.norm() * after.norm()
}

/// Where a bend of the run's own radius is: at a corner without one of its own, or joining an end.
fn bend_of_the_run(run: &OneRun<'_>) -> Option<Vec3> {
    if run.drawn.line.is_some() {
        let own = |station: usize| run.corner(station).is_some_and(|corner| corner.bend_radius.is_some());
        let of_the_run = |piece: &&Piece| matches!(piece.shape, Shape::Arc { station, .. } if station.is_none_or(|station| !own(station)));
        return run.pieces().iter().find(of_the_run).map(|piece| piece.at(piece.length / 2.0).point);
    }
    let nodes = &run.drawn.skeleton;
    if run.run.route.is_empty() {
        return [1, 2].into_iter().find(|node| turns_at(nodes, *node)).map(|node| nodes[node]);
    }
    let corner = (0..run.run.route.len())
        .find(|station| run.corner(*station).is_some_and(|corner| corner.bend_radius.is_none()) && turns(run, *station))
        .map(|station| run.station_at(station));
    let joined = [true, false].into_iter().find(|at_start| !run.is_on_axis(*at_start));
    corner.or(joined.map(|at_start| run.pose(at_start).lead_end))
}
