//! The best stances: directions all over the sphere, then about the best of them, ever nearer.

use super::fit::{most_room, slack};
use super::frame::Frame;
use super::judge::{Figures, Judge};
use super::room::{FITS_WITHIN, best_turn};
use super::spiral::spiral;
use crate::layout::{Vec3, perpendicular, rotate, unit};
use core::f64::consts::PI;

/// A stance that was found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Found {
    /// How it stands.
    pub frame: Frame,
    /// What it comes to.
    pub figures: Figures,
}

/// Steps of the search for room, radians: from the first to the last with the tube cut roughly, and the same with it cut
/// finely; the last moves a tube of a metre by a millionth of a millimetre.
const STEPS: [f64; 2] = [0.1, 1e-3];
const FINE_STEP: f64 = 1e-2;
const LAST_STEP: f64 = 1e-9;
/// Ends of the rough search for room that are followed finely.
const ROOM_ENDS: usize = 6;

/// Stances that are told at most.
const MOST: usize = 5;
/// They differ by at least this angle of their up directions, radians: 20 degrees.
const APART: f64 = PI / 9.0;
/// Ways that are each other's mirror image, or the tube turned end for end, are one: the same heights along it, or in the other
/// order, within this share of how far it is across, and what is held against them within this.
const ALIKE: f64 = 0.02;
const ALIKE_COST: f64 = 0.05;
/// Stretches that may be gone through in the looks all over the sphere, some 20 nanoseconds each: it bounds the work.
const BUDGET: usize = 2_000_000;
/// Looks all over the sphere: as many as the budget allows between these.
const LOOKS: [usize; 2] = [200, 1_500];
/// Places that are approached with the tube cut roughly, and of these the best with it cut finely.
const PLACES: [usize; 2] = [40, 10];
/// How far apart they are at least, radians.
const PLACES_APART: f64 = PI / 30.0;
/// Where the rough and the fine approach end, radians: half a degree and 0.02 degrees.
const NEAR: [f64; 2] = [0.5 * PI / 180.0, 0.02 * PI / 180.0];
/// The first and last step, radians, by which a stance that a look sees fit is moved to fit.
const NUDGES: [f64; 2] = [1e-3, 1e-6];
/// Frames from which the most room is looked for, and its slack's looks about the plate's sides.
const ROOM_STARTS: usize = 16;

/// The best stances, the best first, up to five that differ; those that stick out of the room only if all do. The same
/// tube gives the same stances.
pub fn search(judge: &Judge) -> Vec<Found> {
    let rough = judge.rough();
    let looks = (BUDGET / rough.stretches().max(1)).clamp(LOOKS[0], LOOKS[1]);
    let seeds = seeds(judge);
    let seen = seeds.iter().copied().chain(spiral(looks as u32)).map(|up| (up, rough.look(&up)));
    let seen = sorted(seen.collect());
    // A step of the spiral covers this angle about itself.
    let spacing = (4.0 * PI / looks as f64).sqrt();
    let places = apart(&seen, PLACES[0], PLACES_APART);
    let nearer = places.into_iter().map(|(up, _)| near(rough, up, [spacing, NEAR[0]]));
    let best = apart(&sorted(nearer.collect()), PLACES[1], PLACES_APART);
    let mut found: Vec<Found> =
        best.into_iter().map(|(up, _)| of(judge, &near(judge, up, [2.0 * NEAR[0], NEAR[1]]).0)).collect();
    // What is exact, such as an end standing square on the plate, no approach from aside comes upon.
    let exact = sorted(seeds.into_iter().map(|up| (up, judge.look(&up))).collect());
    found.extend(exact.first().map(|(up, _)| of(judge, up)));
    if found.iter().all(|found| !found.figures.fits()) {
        found.extend(with_most_room(judge, &seen));
    }
    found.sort_by(|a, b| a.figures.cost.total().total_cmp(&b.figures.cost.total()));
    if found.first().is_some_and(|best| best.figures.fits()) {
        found.retain(|found| found.figures.fits());
    }
    let mut told: Vec<Found> = Vec::new();
    for one in found {
        let apart = |other: &Found| angle(&other.frame.up(), &one.frame.up()) >= APART && !alike(judge, other, &one);
        if told.len() < MOST && told.iter().all(apart) {
            told.push(one);
        }
    }
    told
}

/// Whether two ways of a symmetric tube are one: as good, and as high all along it, from one end or from the other.
fn alike(judge: &Judge, one: &Found, other: &Found) -> bool {
    let [a, b] = [one, other].map(|found| found.figures.cost.total());
    if (a - b).abs() > ALIKE_COST {
        return false;
    }
    let [a, b] = [one, other].map(|found| judge.heights(&found.frame.up()));
    let within = ALIKE * judge.across();
    let near = |(a, b): (&f64, &f64)| (a - b).abs() <= within;
    a.iter().zip(&b).all(near) || a.iter().zip(b.iter().rev()).all(near)
}

/// Looks all over the sphere for room alone, and the stances that are followed from them.
const ROOM_LOOKS: u32 = 200;
const ROOM_FOLLOWED: usize = 8;
/// Of those cut roughly, so many are followed finely.
const ROOM_FINE: usize = 3;
/// Where that ends, radians: a metre of tube moves by a thousandth of a millimetre.
const ROOM_LAST: f64 = 1e-6;

/// A stance that leaves `spare` mm of room and more, whatever else speaks against it; none where none is found. `hint` is
/// tried first.
pub(super) fn fitting(judge: &Judge, hint: Option<Frame>, spare: f64) -> Option<Frame> {
    let (room, rim, rough) = (&judge.room, &judge.body.rim, judge.rough());
    let fits = |frame: &Frame| slack(rim, frame, room) >= spare;
    if let Some(frame) = hint.filter(fits) {
        return Some(frame);
    }
    let look = |up: Vec3| {
        let (turned, left) = best_turn(&rough.body.rim, &up, room, rough.body.across(), false);
        (Frame::of(&up, turned), left)
    };
    let mut seen: Vec<(Frame, f64)> = seeds(judge).into_iter().chain(spiral(ROOM_LOOKS)).map(look).collect();
    seen.sort_by(|a, b| b.1.total_cmp(&a.1));
    if let Some((frame, _)) = seen.first().filter(|(frame, _)| fits(frame)) {
        return Some(*frame);
    }
    let mut starts: Vec<Frame> = Vec::new();
    for (frame, _) in seen {
        if starts.len() < ROOM_FOLLOWED && starts.iter().all(|other| angle(&other.up(), &frame.up()) >= APART / 2.0) {
            starts.push(frame);
        }
    }
    starts.extend(along_the_diagonals(judge));
    let ends = starts.into_iter().map(|start| most_room(&rough.body.rim, start, room, STEPS));
    let mut ends: Vec<(Frame, f64)> = ends.collect();
    ends.sort_by(|a, b| b.1.total_cmp(&a.1));
    ends.truncate(ROOM_FINE);
    ends.into_iter().map(|(end, _)| most_room(rim, end, room, [FINE_STEP, ROOM_LAST]).0).find(fits)
}

/// Directions that are worth a look besides: along the straights and the axes of the bends, and across them.
fn seeds(judge: &Judge) -> Vec<Vec3> {
    const MOST_SEEDS: usize = 60;
    let mut seeds: Vec<Vec3> = Vec::new();
    let mut add = |up: Vec3| {
        let up = unit(&up);
        if up.norm() > 0.5 && seeds.len() < MOST_SEEDS && seeds.iter().all(|seed| angle(seed, &up) > 1e-3) {
            seeds.push(up);
        }
    };
    let discs = &judge.body.discs;
    for end in [discs.first(), discs.last()].into_iter().flatten() {
        add(end.tangent);
        add(-end.tangent);
    }
    for axis in [Vec3::x(), Vec3::y(), Vec3::z()] {
        add(axis);
        add(-axis);
    }
    let stride = (judge.body.stretches.len() / MOST_SEEDS).max(1);
    for stretch in judge.body.stretches.iter().step_by(stride) {
        let bends = stretch.curvature.norm() > 0.0;
        let directions =
            if bends { [stretch.curvature, stretch.tangent.cross(&stretch.curvature)] } else { [stretch.tangent; 2] };
        for direction in directions {
            add(direction);
            add(-direction);
        }
    }
    seeds
}

/// A stance with its turn looked for closely. The rim of a look leaves out discs, so that it may see a little more room than
/// there is: what then does not fit is moved until it does, where that is near.
fn of(judge: &Judge, up: &Vec3) -> Found {
    let (discs, room) = (&judge.body.discs, &judge.room);
    let (turned, seen) = judge.turned_closely(up);
    let frame = Frame::of(up, turned);
    let left = slack(discs, &frame, room);
    let too_soon = seen >= -FITS_WITHIN && left < -FITS_WITHIN;
    let (frame, left) = if too_soon { most_room(discs, frame, room, NUDGES) } else { (frame, left) };
    Found { frame, figures: judge.figures(&frame.up(), (frame.turned(), left)) }
}

fn sorted(mut seen: Vec<(Vec3, Figures)>) -> Vec<(Vec3, Figures)> {
    seen.sort_by(|a, b| a.1.cost.total().total_cmp(&b.1.cost.total()));
    seen
}

/// The first of a sorted list that lie apart.
fn apart(seen: &[(Vec3, Figures)], most: usize, by: f64) -> Vec<(Vec3, Figures)> {
    let mut kept: Vec<(Vec3, Figures)> = Vec::new();
    for one in seen {
        if kept.len() == most {
            break;
        }
        if kept.iter().all(|other| angle(&other.0, &one.0) >= by) {
            kept.push(*one);
        }
    }
    kept
}

/// From a direction to the best about it, by looks round it ever nearer.
fn near(judge: &Judge, up: Vec3, [first, last]: [f64; 2]) -> (Vec3, Figures) {
    const ROUND: u32 = 8;
    let (mut up, mut step) = (up, first);
    let mut least = judge.look(&up);
    let mut round = 0;
    while step > last && round < 40 {
        round += 1;
        let x = perpendicular(&up, &Vec3::new(0.31, 0.54, 0.78));
        let better = (0..ROUND)
            .map(|k| {
                // Every second round looks between the directions of the one before.
                let turned = (2.0 * f64::from(k) + f64::from(round % 2)) * PI / f64::from(ROUND);
                let axis = rotate(&x, &up, turned);
                unit(&rotate(&up, &axis, step))
            })
            .map(|next| (next, judge.look(&next)))
            .min_by(|a, b| a.1.cost.total().total_cmp(&b.1.cost.total()));
        match better {
            Some((next, found)) if found.cost.total() < least.cost.total() => (up, least) = (next, found),
            _ => step *= 0.5,
        }
    }
    (up, least)
}

/// Stances that leave most room, for a tube that no look fits.
fn with_most_room(judge: &Judge, seen: &[(Vec3, Figures)]) -> Vec<Found> {
    let (rim, rough) = (&judge.body.rim, &judge.rough().body.rim);
    let mut starts: Vec<Frame> =
        apart(seen, ROOM_STARTS, APART / 2.0).into_iter().map(|(up, figures)| Frame::of(&up, figures.turned)).collect();
    starts.extend(along_the_diagonals(judge));
    let ends = starts.into_iter().map(|start| most_room(rough, start, &judge.room, STEPS));
    let mut ends: Vec<(Frame, f64)> = ends.collect();
    ends.sort_by(|a, b| b.1.total_cmp(&a.1));
    ends.truncate(ROOM_ENDS);
    let fine = ends.into_iter().map(|(end, _)| most_room(rim, end, &judge.room, [FINE_STEP, LAST_STEP]));
    let ends: Vec<(Frame, f64)> = fine.collect();
    ends.into_iter()
        .map(|(frame, _)| {
            let left = slack(&judge.body.discs, &frame, &judge.room);
            Found { frame, figures: judge.figures(&frame.up(), (frame.turned(), left)) }
        })
        .collect()
}

/// The tube's longest way laid along the room's diagonals, turned about it in steps.
fn along_the_diagonals(judge: &Judge) -> Vec<Frame> {
    const TURNS: u32 = 4;
    let rim = &judge.body.rim;
    let pairs = rim.iter().enumerate().flat_map(|(i, a)| rim[i + 1..].iter().map(move |b| b.point - a.point));
    let Some(longest) = pairs.max_by(|a, b| a.norm_squared().total_cmp(&b.norm_squared())) else { return Vec::new() };
    let longest = unit(&longest);
    let [x, y, z] = judge.room.size.map(|side| side.max(1.0));
    let mut frames = Vec::new();
    for diagonal in [[x, y, z], [-x, y, z], [x, -y, z], [x, y, -z]] {
        let diagonal = unit(&Vec3::from(diagonal));
        let (aside, other) = (perpendicular(&diagonal, &Vec3::z()), perpendicular(&longest, &Vec3::new(0.2, 0.5, 0.8)));
        for k in 0..TURNS {
            let across = rotate(&other, &longest, PI * f64::from(k) / f64::from(TURNS) * 2.0);
            // The rotation that takes (longest, across) to (diagonal, aside): its rows are the plate's axes in the datum.
            let (third, fourth) = (longest.cross(&across), diagonal.cross(&aside));
            let row = |axis: usize| longest * diagonal[axis] + across * aside[axis] + third * fourth[axis];
            frames.push(Frame { rows: [row(0), row(1), row(2)] });
        }
    }
    frames
}

/// Angle between two unit directions, radians.
fn angle(a: &Vec3, b: &Vec3) -> f64 {
    libm::atan2(a.cross(b).norm(), a.dot(b))
}
