//! Where a tube keeps air when it is filled, and coolant when it is drained: the high and the low points of its centreline.
//!
//! Heights are along a stated up direction, mm, of the centreline: a trap that is shallower than the bore is not closed
//! off, for air passes above and coolant below. What the ports' parts do beyond a run's ends is not known here.

mod hold;
mod level;

use crate::centreline::Centreline;
use crate::layout::Vec3;
use crate::out_of_range::{OutOfRange, positive};
use core::f64::consts::FRAC_PI_4;

/// Heights that differ by no more are one height, mm: far above what rounding does to coordinates, far below what tilts.
const SAME_HEIGHT: f64 = 1e-6;

/// What a trap keeps.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Keeps {
    /// A high point: air.
    Air,
    /// A low point: coolant.
    Coolant,
}

/// A high or low point inside a run.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trap {
    /// What it keeps.
    pub keeps: Keeps,
    /// Arc lengths where it begins and ends, mm: the same, unless it is level.
    pub place: [f64; 2],
    /// Its middle.
    pub at: Vec3,
    /// Its height.
    pub height: f64,
    /// Height at which what it keeps goes over: of its two ways out the one that it meets first, which is the lower of two
    /// sills for coolant and the upper of two for air.
    pub spill: f64,
    /// Between its height and the spill's; above zero.
    pub depth: f64,
    /// Arc lengths between which the centreline lies beyond the spill's height.
    pub held: [f64; 2],
}

impl Trap {
    /// What it keeps at most, mm3, in a bore, mm: the tube between the two places where the centreline passes the spill's
    /// height. An estimate: the true surface is level across the bore, not square to it.
    pub fn volume(&self, bore: f64) -> f64 {
        FRAC_PI_4 * bore * bore * (self.held[1] - self.held[0])
    }
}

/// A stretch that runs level.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Level {
    /// Arc lengths where it begins and ends, mm.
    pub place: [f64; 2],
    /// Its height.
    pub height: f64,
}

/// A centreline's rise and fall.
#[derive(Debug, Clone, PartialEq)]
pub struct Profile {
    /// Heights of its two ends.
    pub ends: [f64; 2],
    /// Its high and low points between the ends, in order.
    pub traps: Vec<Trap>,
    /// Its level stretches, in order, whether they are traps or shelves on a slope.
    pub levels: Vec<Level>,
}

/// A place where the height turns, or a piece begins or ends; a level stretch is one such place.
#[derive(Debug, Clone, Copy)]
struct Knot {
    place: [f64; 2],
    height: f64,
}

/// The rise and fall of a centreline, exact for straights, arcs, coils and smooth curves. `up` need not be a unit.
///
/// # Errors
/// [`OutOfRange`] for an up direction of no length.
pub fn profile(line: &Centreline, up: &Vec3) -> Result<Profile, OutOfRange> {
    let up = up / positive("length of the up direction", up.norm(), "")?;
    let knots = knots(line, &up);
    let height = |s: f64| line.at(s).point.dot(&up);
    let levels = knots
        .iter()
        .filter(|knot| knot.place[1] - knot.place[0] > SAME_HEIGHT)
        .map(|knot| Level { place: knot.place, height: knot.height })
        .collect();
    let traps = (1..knots.len().saturating_sub(1))
        .filter_map(|i| {
            let keeps = turn(knots[i - 1].height, knots[i].height, knots[i + 1].height)?;
            let (spill, held) = hold::spill(&knots, i, keeps, &height);
            let Knot { place, height } = knots[i];
            let at = line.at((place[0] + place[1]) / 2.0).point;
            Some(Trap { keeps, place, at, height, spill, depth: (height - spill).abs(), held })
        })
        .collect();
    Ok(Profile { ends: [height(0.0), height(line.length)], traps, levels })
}

/// Whether a height is above or below both of its neighbours.
fn turn(before: f64, here: f64, after: f64) -> Option<Keeps> {
    if here > before && here > after {
        Some(Keeps::Air)
    } else if here < before && here < after {
        Some(Keeps::Coolant)
    } else {
        None
    }
}

/// The places where the height may turn, in order; neighbours of one height are one.
fn knots(line: &Centreline, up: &Vec3) -> Vec<Knot> {
    let mut knots: Vec<Knot> = Vec::new();
    for piece in &line.pieces {
        let turns = level::places(piece, up);
        for s in core::iter::once(0.0).chain(turns).chain([piece.length]) {
            let (s, height) = (piece.from + s, piece.at(s).point.dot(up));
            match knots.last_mut() {
                Some(last) if (last.height - height).abs() <= SAME_HEIGHT => last.place[1] = s.max(last.place[1]),
                _ => knots.push(Knot { place: [s, s], height }),
            }
        }
    }
    knots
}
