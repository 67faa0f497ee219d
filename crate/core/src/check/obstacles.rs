//! What keeps a centreline of the asked radii from existing, and the largest radius that would do.

use super::bend_radius::least_radius;
use super::finding::{GEOMETRY, STATED};
use super::round::{down, up};
use super::{Finding, MOST_OF_A_KIND, OneRun, PatchStep, Severity, Subject, words};
use crate::centreline::Obstacle;
use crate::design::Coordinate;
use crate::distance::Budget;
use crate::layout::Vec3;

/// Steps in which a moved corner settles, or does not.
const SETTLING: u32 = 50;

/// `corners_too_close`, `lead_too_short`, `corner_out_of_reach`, `turns_back`, `same_point`, `link_too_tight`: all stop
/// the run, but a link that loops at any radius is one to take care over.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject
        .runs()
        .flat_map(|run| run.drawn.obstacles.iter().take(MOST_OF_A_KIND).map(move |obstacle| finding(&run, obstacle)))
        .collect()
}

fn finding(run: &OneRun<'_>, obstacle: &Obstacle) -> Finding {
    match obstacle {
        Obstacle::CornersTooClose { before, after, room, need, largest_radius } => {
            corners_too_close(run, [*before, *after], [*room, *need], *largest_radius)
        }
        Obstacle::LeadTooShort { at_start, station, left, lead, largest_radius } => {
            lead_too_short(run, *at_start, *station, [*left, *lead], *largest_radius)
        }
        Obstacle::CornerOutOfReach { at_start, from, station, largest_radius } => {
            corner_out_of_reach(run, (*at_start, *from), *station, *largest_radius)
        }
        Obstacle::TurnsBack { station } => turns_back(run, *station),
        Obstacle::SamePoint { station } => same_point(run, *station),
        Obstacle::LinkTooTight { between, .. } => link_too_tight(run, *between),
    }
}

fn corners_too_close(run: &OneRun<'_>, ends: [Option<usize>; 2], [room, need]: [f64; 2], largest: f64) -> Finding {
    let least = least_radius(run);
    // Both bends are held to one radius then, and what they need grows with it.
    let apart = if largest > 0.0 { least * room / largest } else { need };
    let largest = down(largest);
    let stations = || ends.into_iter().flatten();
    let place = ends[1].or(ends[0]).map_or(run.at("/route"), |station| run.station(station, ""));
    let name = |end: Option<usize>, at_start: bool| match end {
        Some(station) => run.station_name(station),
        None if run.is_on_axis(at_start) => format!("the end of the tube at {}", run.port_name(at_start)),
        None => format!("the bend out of the fitting at {}", run.port_name(at_start)),
    };
    let asked = stations().filter_map(|station| run.placed_corner(station)).map(|c| c.radius).fold(0.0, f64::max);
    let finding = run
        .finding("corners_too_close", Severity::Stop, place)
        .at(&middle_of(run, ends))
        .value(room, "mm")
        .limit(need, GEOMETRY)
        .word("before", name(ends[0], true))
        .word("after", name(ends[1], false))
        .word("asked", words::number(asked, "mm"));
    if largest < least {
        return finding.word("apart", words::at_least(apart, "mm"));
    }
    let own = stations()
        .filter(|station| run.placed_corner(*station).is_some_and(|corner| corner.radius > largest))
        .map(|station| PatchStep::set(run.station(station, "/bend_radius"), largest))
        .collect::<Vec<_>>();
    let own = (!own.is_empty()).then_some(own);
    finding.word("largest", words::at_most(largest, "mm")).ways(own).ways(run_radius(run))
}

/// Half way along the straight that is too short.
fn middle_of(run: &OneRun<'_>, ends: [Option<usize>; 2]) -> Vec3 {
    let point =
        |end: Option<usize>, at_start: bool| end.map_or(run.pose(at_start).lead_end, |station| run.station_at(station));
    (point(ends[0], true) + point(ends[1], false)) / 2.0
}

/// The largest run radius that clears every obstacle, if a tube can have it.
fn run_radius(run: &OneRun<'_>) -> Option<Vec<PatchStep>> {
    let radius = down(run.drawn.largest_run_radius?);
    (radius >= least_radius(run)).then(|| vec![PatchStep::set(run.at("/bend_radius"), radius)])
}

fn lead_too_short(run: &OneRun<'_>, at_start: bool, station: usize, [left, lead]: [f64; 2], largest: f64) -> Finding {
    let finding = run
        .finding("lead_too_short", Severity::Stop, run.station(station, ""))
        .at(&run.pose(at_start).lead_end)
        .value(left, "mm")
        .limit(lead, STATED)
        .word("corner", run.station_name(station))
        .word("port", run.port_name(at_start));
    let finding = if left < 0.0 {
        finding.word("inside", words::number(-left, "mm"))
    } else {
        finding.word("outside", words::number(left, "mm"))
    };
    let further = further_out(run, at_start, station).map(up);
    let finding = match further {
        Some(further) => finding.word("further", words::at_least(further, "mm")),
        None => finding,
    };
    let moved = further.and_then(|further| moved_out(run, at_start, station, further));
    let largest = down(largest);
    if largest < least_radius(run) {
        return finding.ways(moved);
    }
    let own = vec![PatchStep::set(run.station(station, "/bend_radius"), largest)];
    finding.word("largest", words::at_most(largest, "mm")).ways([own]).ways(moved)
}

/// How much further out along its port's axis a corner of the radius asked for keeps the lead, mm. The angle it turns
/// through changes as it moves, so the distance is found step by step; none where the steps do not settle.
fn further_out(run: &OneRun<'_>, at_start: bool, station: usize) -> Option<f64> {
    let pose = run.pose(at_start);
    let corner = run.placed_corner(station)?;
    let onward = if at_start { station.checked_add(1) } else { station.checked_sub(1) };
    let onward = onward
        .filter(|next| *next < run.placed.stations.len())
        .map_or(run.pose(!at_start).lead_end, |next| run.station_at(next));
    let lead = (pose.lead_end - pose.mouth).norm();
    let stands = (corner.at - pose.mouth).dot(&pose.out);
    let mut distance = stands;
    for _ in 0..SETTLING {
        let away = onward - (pose.mouth + pose.out * distance);
        let ahead = away.dot(&pose.out);
        let angle = libm::atan2((away - pose.out * ahead).norm(), ahead);
        let next = lead + corner.radius * libm::tan(angle / 2.0);
        if (next - distance).abs() <= 1e-9 * next {
            return (next > stands).then_some(next - stands);
        }
        distance = next;
    }
    None
}

/// The corner moved out along its port's axis; only where one coordinate says it, so that rounding cannot take it off
/// the axis.
fn moved_out(run: &OneRun<'_>, at_start: bool, station: usize, by: f64) -> Option<Vec<PatchStep>> {
    let axis = axis_of(&run.pose(at_start).out)?;
    let path = run.station(station, &format!("/corner/{axis}"));
    let by = by.copysign(run.pose(at_start).out[axis]);
    let value = match &run.corner(station)?.at[axis] {
        Coordinate::Fixed(value) => serde_json::Value::from(value + by),
        Coordinate::Tied { of, plus } => serde_json::json!({ "of": of, "plus": plus + by }),
    };
    Some(vec![PatchStep::replace(path, value)])
}

/// The coordinate that a unit direction runs along; none for an oblique one.
pub(super) fn axis_of(direction: &Vec3) -> Option<usize> {
    let axis = direction.iamax();
    let across = (0..3).filter(|other| *other != axis).all(|other| direction[other].abs() <= 1e-12);
    across.then_some(axis)
}

fn corner_out_of_reach(
    run: &OneRun<'_>,
    (at_start, from): (bool, Option<usize>),
    station: usize,
    largest: f64,
) -> Finding {
    let finding = run
        .finding("corner_out_of_reach", Severity::Stop, run.station(station, ""))
        .at(&run.station_at(station))
        .value(run.run.bend_radius, "mm")
        .source(GEOMETRY)
        .word("corner", run.station_name(station))
        .word("port", end_name(run, from, at_start));
    let largest = down(largest);
    if largest < least_radius(run) {
        return finding;
    }
    let direct = vec![PatchStep::set(run.at("/bend_radius"), largest)];
    finding.limit(largest, GEOMETRY).ways([direct]).ways(run_radius(run))
}

fn turns_back(run: &OneRun<'_>, station: usize) -> Finding {
    run.finding("turns_back", Severity::Stop, run.station(station, ""))
        .at(&run.station_at(station))
        .value(180.0, "°")
        .limit(180.0, GEOMETRY)
        .word("corner", run.station_name(station))
        .word("apart", words::at_least(2.0 * least_radius(run), "mm"))
        .ways([vec![PatchStep::remove(run.station(station, ""))]])
}

fn same_point(run: &OneRun<'_>, station: usize) -> Finding {
    let at = run.station_at(station);
    let other = (0..station).rev().find(|other| (run.station_at(*other) - at).norm() <= 1e-6);
    let other = match other {
        Some(other) => run.station_name(other),
        None => "the end of the tube".to_owned(),
    };
    run.finding("same_point", Severity::Stop, run.station(station, ""))
        .at(&at)
        .value(0.0, "mm")
        .word("corner", run.station_name(station))
        .word("other", other)
        .ways([vec![PatchStep::remove(run.station(station, ""))]])
}

fn link_too_tight(run: &OneRun<'_>, between: [Option<usize>; 2]) -> Finding {
    let largest = run.drawn.largest_run_radius.map(down).filter(|largest| *largest >= least_radius(run));
    let only_loops = run.drawn.line.is_some() && largest.is_none();
    let severity = if only_loops { Severity::Care } else { Severity::Stop };
    let finding = run
        .finding("link_too_tight", severity, run.at("/bend_radius"))
        .at(&between[0].map_or(run.pose(true).lead_end, |coil| run.station_at(coil)))
        .value(run.run.bend_radius, "mm")
        .source(GEOMETRY);
    let joins = between
        .iter()
        .any(Option::is_some)
        .then(|| format!("{} to {}", end_name(run, between[0], true), end_name(run, between[1], false)));
    let finding = joins.into_iter().fold(finding, |finding, joins| finding.word("joins", joins));
    match largest {
        Some(largest) => finding.limit(largest, GEOMETRY).ways(run_radius(run)),
        None => finding,
    }
}

/// What a message calls what a bend or a link joins: a coil, or a port.
fn end_name(run: &OneRun<'_>, coil: Option<usize>, at_start: bool) -> String {
    coil.map_or_else(|| format!("the fitting at {}", run.port_name(at_start)), |coil| run.station_name(coil))
}
