//! Do coils and smooth curves leave the tube room to turn?

use super::bend_radius::{exact_least, least_radius};
use super::finding::{GEOMETRY, PRACTICE};
use super::round::up;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::centreline::{Curve, Form, Piece, Shape, line_of};
use crate::design::{Coordinate, Station};
use crate::distance::Budget;
use crate::layout::{PlacedRun, PlacedStation, Vec3};
use serde_json::json;

/// Radius over outer diameter that printed tube may go down to; common practice, no source.
const TIGHT: f64 = 1.0;
/// Steps in which a point is moved towards its neighbours to see from where on the curve is wide enough.
const LOOKS: u32 = 10;
/// Halvings between the last step that does not do and the first that does.
const HALVINGS: u32 = 12;
/// Smooth curves whose points are moved to find a way out; a design with more is wrong as a whole.
const MOST_MOVED: usize = 4;

/// `coil_tight`, `curve_tight` (stop): the inside would fold over itself. `curve_below_diameter` (note): either is bent to
/// less than the outer diameter.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let mut moves = MOST_MOVED;
    let clearance = subject.design.clearance;
    let of_run = |run: OneRun<'_>| {
        let tightest = tightest_of_each(run.pieces());
        tightest
            .into_iter()
            .filter_map(|(piece, curve)| judge(&run, (piece, curve), clearance, &mut moves))
            .collect::<Vec<_>>()
    };
    subject.runs().flat_map(of_run).collect()
}

/// The tightest piece of each coil and of each smooth curve, in order.
fn tightest_of_each(pieces: &[Piece]) -> Vec<(&Piece, &Curve)> {
    let mut tightest: Vec<(&Piece, &Curve)> = Vec::new();
    for piece in pieces {
        let Shape::Curve(curve) = &piece.shape else { continue };
        match tightest.last_mut() {
            Some((worst, of)) if of.whole == curve.whole => {
                if curve.tightest < of.tightest {
                    (*worst, *of) = (piece, curve);
                }
            }
            _ => tightest.push((piece, curve)),
        }
    }
    tightest
}

fn judge(run: &OneRun<'_>, (piece, curve): (&Piece, &Curve), clearance: f64, moves: &mut usize) -> Option<Finding> {
    let (least, diameter) = (exact_least(run), run.run.tube.outer_diameter);
    let (severity, limit, source) = if curve.tightest < least {
        (Severity::Stop, least_radius(run), GEOMETRY)
    } else if curve.tightest < TIGHT * diameter {
        (Severity::Note, TIGHT * diameter, PRACTICE)
    } else {
        return None;
    };
    let (code, place) = match curve.form {
        Form::Helix(_) => ("coil_tight", run.station(curve.whole, "/coil/radius")),
        Form::Cubic(_) => ("curve_tight", run.station(curve.station, "/through")),
    };
    let code = if severity == Severity::Stop { code } else { "curve_below_diameter" };
    let finding = run
        .finding(code, severity, place)
        .at(&piece.at(piece.tightest_at()).point)
        .value(curve.tightest, "mm")
        .limit(limit, source)
        .word("station", run.station_name(curve.station))
        .word("diameter", words::number(diameter, "mm"));
    match curve.form {
        Form::Helix(_) => Some(finding.ways(wider(run, curve, limit, clearance))),
        Form::Cubic(_) if severity == Severity::Stop && *moves > 0 => {
            *moves -= 1;
            Some(moved(run, curve, limit, finding))
        }
        Form::Cubic(_) => Some(finding),
    }
}

/// The coil with its tight end opened until its centreline is wide enough. A coil that widens is bent a little more
/// than its radius says, so a little more is tried as well.
fn wider(run: &OneRun<'_>, curve: &Curve, limit: f64, clearance: f64) -> Vec<Vec<PatchStep>> {
    let Station::Coil(coil) = &run.run.route[curve.whole] else { return Vec::new() };
    // Beyond half a turn the far side of the coil must clear it as well.
    let across = if coil.turns > 0.5 { run.run.largest_radius() + clearance / 2.0 } else { 0.0 };
    let widths = [1.0, 1.02, 1.1, 1.3].map(|times| up(limit.max(across) * times));
    let at = |key: &str| run.station(curve.whole, &format!("/coil/{key}"));
    widths
        .map(|width| {
            let start = (coil.radius < width).then(|| PatchStep::set(at("radius"), width));
            let end = coil.end_radius.filter(|end| *end < width).map(|_| PatchStep::set(at("end_radius"), width));
            start.into_iter().chain(end).collect::<Vec<_>>()
        })
        .into_iter()
        .filter(|way| !way.is_empty())
        .collect()
}

/// The finding with the point to move, and how far, so that the curve is wide enough.
fn moved(run: &OneRun<'_>, curve: &Curve, limit: f64, finding: Finding) -> Finding {
    let points: Vec<usize> = (curve.whole..run.placed.stations.len())
        .take_while(|station| matches!(run.placed.stations[*station], PlacedStation::Through(_)))
        .collect();
    let mut candidates = points.clone();
    candidates.sort_by_key(|station| station.abs_diff(curve.station));
    for station in candidates.into_iter().take(3) {
        let PlacedStation::Through(at) = run.placed.stations[station] else { continue };
        let Some(target) = middle_of_neighbours(run, station, &at) else { continue };
        let wide = |share: f64| is_wide(run, station, at + (target - at) * share, curve.whole, limit);
        let Some(look) = (1..=LOOKS).find(|look| wide(f64::from(*look) / f64::from(LOOKS))) else { continue };
        let (mut bad, mut good) = (f64::from(look - 1) / f64::from(LOOKS), f64::from(look) / f64::from(LOOKS));
        for _ in 0..HALVINGS {
            let middle = (bad + good) / 2.0;
            if wide(middle) { good = middle } else { bad = middle }
        }
        // A little further, so that a rounded coordinate still does.
        let to = (at + (target - at) * (good + 0.002).min(1.0)).map(|x| libm::round(x * 100.0) / 100.0);
        let steps = (0..3).map(|axis| set_coordinate(run, station, axis, to[axis])).collect::<Option<Vec<_>>>();
        return finding
            .word("point", run.station_name(station))
            .word("by", words::at_least((to - at).norm(), "mm"))
            .word("to", format!("{}, {}, {}", to.x, to.y, to.z))
            .ways(steps);
    }
    finding
}

/// The point of the way past a station that is nearest to it: on the line between its neighbours.
fn middle_of_neighbours(run: &OneRun<'_>, station: usize, at: &Vec3) -> Option<Vec3> {
    // The skeleton begins with the end face and the lead's end.
    let nodes = &run.drawn.skeleton;
    let (before, after) = (nodes.get(station + 1)?, nodes.get(station + 3)?);
    let way = after - before;
    let along = ((at - before).dot(&way) / way.norm_squared().max(1e-12)).clamp(0.2, 0.8);
    Some(before + way * along)
}

fn is_wide(run: &OneRun<'_>, station: usize, to: Vec3, whole: usize, limit: f64) -> bool {
    let mut placed: PlacedRun = run.placed.clone();
    placed.stations[station] = PlacedStation::Through(to);
    let drawn = line_of(run.run, &placed);
    let Some(line) = drawn.line.filter(|_| drawn.obstacles.is_empty()) else { return false };
    let tightest = tightest_of_each(&line.pieces).into_iter().find(|(_, curve)| curve.whole == whole);
    tightest.is_none_or(|(_, curve)| curve.tightest >= limit)
}

fn set_coordinate(run: &OneRun<'_>, station: usize, axis: usize, value: f64) -> Option<PatchStep> {
    let path = run.station(station, &format!("/through/{axis}"));
    let Station::Through(through) = &run.run.route[station] else { return None };
    let value = match &through.at[axis] {
        Coordinate::Fixed(_) => json!(value),
        Coordinate::Tied { of, plus } => {
            let moved = value - run.station_at(station)[axis];
            json!({ "of": of, "plus": libm::round((plus + moved) * 1e9) / 1e9 })
        }
    };
    Some(PatchStep::replace(path, value))
}
