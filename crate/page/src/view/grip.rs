//! What of a run can be taken hold of: the points of its route, and the middle of each bend; and where a new corner goes.

use serde::Serialize;
use tubewright_core::layout::Vec3;

use super::camera::Camera;
use super::scene::{Bend, Run};
use super::sight::Picked;

/// A handle of a run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Grip {
    /// What it changes: `point`, where a station is; `radius`, how a corner is bent.
    pub kind: &'static str,
    /// Which station of the route it is of.
    pub station: usize,
    /// Where it is, mm.
    pub at: [f64; 3],
    /// Where it is in the picture, CSS pixels from the top left.
    pub seen: [f64; 2],
    /// How a bend's middle moves with its radius; of a radius alone.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub slide: Option<Slide>,
}

/// The line on which a bend's middle moves while its corner stays where it is.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Slide {
    /// The corner's apex, where the middle of a bend of no radius is.
    pub apex: [f64; 3],
    /// Unit direction from there to the bend's centre.
    pub inward: [f64; 3],
    /// How far the middle is from the apex, mm a millimetre of radius: 1/cos(angle/2) - 1.
    pub factor: f64,
    /// The radius as it is, mm.
    pub radius: f64,
}

/// A place on a tube, and what a corner that is added there comes between.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Spot {
    /// The run's name.
    pub run: String,
    /// The point of its centreline, mm.
    pub at: [f64; 3],
    /// Where a corner that is added there stands: on the straight, for in a bend it would not be on the tube. None on a
    /// coil or a smooth curve.
    pub corner: Option<NewCorner>,
}

/// Where a corner is added.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct NewCorner {
    /// The point, mm.
    pub at: [f64; 3],
    /// Unit direction of the straight that it is on.
    pub direction: [f64; 3],
    /// How many stations of the route come before it.
    pub before: usize,
}

/// The handles of a run in the order of its route, each corner's before its bend's.
pub fn grips(run: &Run, camera: &Camera) -> Vec<Grip> {
    let seen = |at: &[f64; 3]| {
        let (left, top) = camera.project(&Vec3::from(*at));
        [left, top]
    };
    let mut grips = Vec::new();
    for (at, station) in run.corners.iter().zip(&run.stations) {
        grips.push(Grip { kind: "point", station: *station, at: *at, seen: seen(at), slide: None });
        if let Some(bend) = bend_of(run, *station) {
            let slide = Some(slide_of(bend, at));
            grips.push(Grip { kind: "radius", station: *station, at: bend.middle, seen: seen(&bend.middle), slide });
        }
    }
    grips
}

/// The middles of the bends that a run's corners ask for.
pub fn middles(run: &Run) -> impl Iterator<Item = [f64; 3]> + '_ {
    run.stations.iter().filter_map(|station| bend_of(run, *station)).map(|bend| bend.middle)
}

fn bend_of(run: &Run, station: usize) -> Option<&Bend> {
    let own = run.turns.iter().find(|turn| turn.stations == Some([station, station]))?;
    own.bend.as_ref()
}

fn slide_of(bend: &Bend, apex: &[f64; 3]) -> Slide {
    let factor = 1.0 / libm::cos(bend.angle_deg.to_radians() / 2.0) - 1.0;
    Slide { apex: *apex, inward: bend.inward, factor, radius: bend.radius }
}

/// What is known of a place that was picked.
pub fn spot(picked: &Picked<'_>) -> Spot {
    let Picked { run, place } = picked;
    Spot { run: run.name.clone(), at: point_at(run, *place).into(), corner: new_corner(run, *place) }
}

/// The middle of the straight after a station; of no station, or where none comes after, of the longest straight. None
/// for a run without a straight.
pub fn straight_after(run: &Run, station: Option<usize>) -> Option<Spot> {
    if run.centreline.len() < 2 {
        return None;
    }
    let after = station.and_then(|station| reach_of(run, station)).map(|[_, to]| to);
    let of_station = after.and_then(|from| {
        straights(run)
            .map(|[a, b]| [a.max(from), b])
            .filter(|[a, b]| a < b)
            .find(|[a, b]| (point_at(run, *b) - point_at(run, *a)).norm() > 1e-6)
    });
    let length = |ends: &[f64; 2]| (point_at(run, ends[1]) - point_at(run, ends[0])).norm();
    let [a, b] = of_station.or_else(|| straights(run).max_by(|one, other| length(one).total_cmp(&length(other))))?;
    // Between two of its points a straight may have others, where corners turn nothing.
    let middle = (point_at(run, a) + point_at(run, b)) / 2.0;
    Some(spot(&Picked { run, place: nearest(run, &middle) }))
}

/// The straights of a centreline, each by the places where it begins and ends.
fn straights(run: &Run) -> impl Iterator<Item = [f64; 2]> + '_ {
    let last = run.centreline.len().saturating_sub(1);
    let starts = std::iter::once(0).chain(run.turns.iter().map(|turn| turn.points[1]));
    let ends = run.turns.iter().map(|turn| turn.points[0]).chain([last]);
    starts.zip(ends).filter(|(from, to)| from < to).map(|(from, to)| [from as f64, to as f64])
}

/// A corner at a place of the centreline: there on a straight; from a bend it moves to the nearer of the bend's ends.
fn new_corner(run: &Run, place: f64) -> Option<NewCorner> {
    let within = run.turns.iter().find(|turn| (turn.points[0] as f64) < place && place < turn.points[1] as f64);
    let (place, beyond) = match within {
        None => (place, place.floor() as usize),
        Some(turn) if turn.bend.is_some() => {
            let [from, to] = turn.points;
            let first_half = place - (from as f64) < to as f64 - place;
            if first_half { (from as f64, from.saturating_sub(1)) } else { (to as f64, to) }
        }
        Some(_) => return None,
    };
    let segment = beyond.min(run.centreline.len().checked_sub(2)?);
    let [a, b] = [0, 1].map(|end| Vec3::from(run.centreline[segment + end]));
    let stations =
        run.stations.iter().copied().chain(run.turns.iter().filter_map(|turn| turn.stations).map(|[_, last]| last));
    let before = stations.filter(|it| reach_of(run, *it).is_some_and(|[from, to]| (from + to) / 2.0 < place));
    Some(NewCorner {
        at: point_at(run, place).into(),
        direction: (b - a).try_normalize(1e-9)?.into(),
        before: before.max().map_or(0, |station| station + 1),
    })
}

/// The places between which a station is: its bend's, coil's or curve's ends, or, where it turns nothing, its own twice.
fn reach_of(run: &Run, station: usize) -> Option<[f64; 2]> {
    let is_of = |stations: Option<[usize; 2]>| stations.is_some_and(|[first, last]| (first..=last).contains(&station));
    if let Some(turn) = run.turns.iter().find(|turn| is_of(turn.stations)) {
        return Some(turn.points.map(|point| point as f64));
    }
    let index = run.stations.iter().position(|it| *it == station)?;
    let place = nearest(run, &Vec3::from(*run.corners.get(index)?));
    Some([place, place])
}

/// The place of the centreline that is nearest to a point.
fn nearest(run: &Run, point: &Vec3) -> f64 {
    let mut best = (f64::INFINITY, 0.0);
    for (index, pair) in run.centreline.windows(2).enumerate() {
        let (a, b) = (Vec3::from(pair[0]), Vec3::from(pair[1]));
        let share = ((point - a).dot(&(b - a)) / (b - a).norm_squared().max(1e-12)).clamp(0.0, 1.0);
        let off = (point - (a + (b - a) * share)).norm();
        if off < best.0 {
            best = (off, index as f64 + share);
        }
    }
    best.1
}

/// The point at a place of the centreline; the datum's where it has none.
fn point_at(run: &Run, place: f64) -> Vec3 {
    let Some(last) = run.centreline.len().checked_sub(1) else { return Vec3::zeros() };
    let before = (place.max(0.0).floor() as usize).min(last);
    let [a, b] = [before, (before + 1).min(last)].map(|index| Vec3::from(run.centreline[index]));
    a + (b - a) * (place - before as f64).clamp(0.0, 1.0)
}
