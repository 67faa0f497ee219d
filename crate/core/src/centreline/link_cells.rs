//! Starts that no link escapes: excludes, cell by cell, where the first arc of a shorter link may be.
//!
//! How far the first arc turns and in which plane gives the straight's line; that the line is a tangent of a circle
//! through the last pose is two numbers that must be nothing (`Sight::fit`, `Sight::twist`). Neither has a kink or a
//! pole, half turns and turns of nothing included, so over a cell they change by no more than the cell's sides allow.
//! Cells that cannot hold a link, or only links longer than the best, are dropped; others are halved until the
//! equations can be solved from their middle. Lengths in radii.

use super::link::SHORTER;
use super::link_equations::{Problem, Unknowns};
use crate::layout::{Vec3, perpendicular};
use core::f64::consts::{FRAC_PI_2, PI};

/// Cells along the turn, and round the near axis, to begin with.
const FIRST: [u32; 2] = [6, 6];
/// A cell over which the first arc's end and direction move by less is tried, not halved.
const SMALL: f64 = 0.1;
/// More cells than any problem has been seen to need; it only keeps a search from going on for ever.
const MOST: usize = 50_000;

/// Rounds of the polish.
const ROUNDS: usize = 40;
/// Misses for each radius of reach that the equations do away with.
const NEAR: f64 = 1e-10;
/// So near to a half turn the last arc is both, more and less.
const EITHER: f64 = 1e-6;
/// Keeps the division of the polish from nothing by nothing.
const TINY: f64 = 1e-30;

/// Middle and half sides: turn, plane.
#[derive(Clone, Copy)]
struct Cell {
    middle: [f64; 2],
    half: [f64; 2],
}

/// What the straight's line sees of the last pose.
struct Sight {
    direction: Vec3,
    /// From the line to the last pose, across the line.
    aside: Vec3,
    offset: f64,
    /// From the first arc's end to the last pose: the distance, and how much of it is along the line.
    reach: f64,
    along: f64,
    /// Angle between the line and the last heading, [0, pi].
    bend: f64,
    /// The offset less the 1 - cos by which an arc leads away from its tangent.
    fit: f64,
    /// Triple product of line, last heading and what is between: nothing where all lie in one plane.
    twist: f64,
    /// Above nothing where the last arc turns less than half round.
    side: f64,
}

/// Hands every start to `solve`, which answers with the length of the best link so far; `best` is that at first.
pub(super) fn search(problem: &Problem, mut best: f64, mut solve: impl FnMut(Unknowns) -> f64) {
    let half = FIRST.map(|count| PI / f64::from(count));
    let middle = |index: u32, half: f64| half * f64::from(2 * index + 1);
    let mut open: Vec<Cell> = (0..FIRST[0])
        .rev()
        .flat_map(|turn| {
            (0..FIRST[1]).map(move |plane| Cell { middle: [middle(turn, half[0]), middle(plane, half[1])], half })
        })
        .collect();
    for _ in 0..MOST {
        let Some(cell) = open.pop() else { return };
        let sight = sight(problem, cell.middle);
        let Some(moved) = slack(&cell, &sight, best) else { continue };
        if moved < SMALL {
            if let Some(middle) = polished(problem, cell.middle, sight) {
                best = try_both(problem, middle, best, &mut solve);
            }
            continue;
        }
        // The side that moves the line more is halved.
        let axis = usize::from(moved > 2.0 * cell.half[0]);
        let mut half = cell.half;
        half[axis] /= 2.0;
        for way in [1.0, -1.0] {
            let mut middle = cell.middle;
            middle[axis] += way * half[axis];
            open.push(Cell { middle, half });
        }
    }
}

/// Solves what is left of the links that have their first arc here: those shorter than the best.
fn try_both(problem: &Problem, middle: [f64; 2], mut best: f64, solve: &mut impl FnMut(Unknowns) -> f64) -> f64 {
    let sight = sight(problem, middle);
    for long in [false, true] {
        let angle = if long { 2.0 * PI - sight.bend } else { sight.bend };
        let straight = sight.along - libm::sin(angle);
        let fits = sight.bend > PI - EITHER || long == (sight.side < 0.0);
        if fits && straight > -EITHER && middle[0] + angle + straight < best * (1.0 - SHORTER) {
            best = solve(start(problem, middle, &sight, long));
        }
    }
    best
}

/// Damped Gauss-Newton on fit and twist; none where it leads to no link.
fn polished(problem: &Problem, mut at: [f64; 2], mut here: Sight) -> Option<[f64; 2]> {
    let mut damping = 1e-6;
    let size = |sight: &Sight| sight.fit * sight.fit + sight.twist * sight.twist;
    let enough = NEAR * (1.0 + here.reach);
    for _ in 0..ROUNDS {
        let ([f, c], left) = (slopes(problem, at, &here), size(&here));
        if left < enough * enough {
            return (at[0] > -EITHER).then_some(at);
        }
        let (a, d) = (f[0] * f[0] + c[0] * c[0], f[1] * f[1] + c[1] * c[1]);
        let (a, d) = (a * (1.0 + damping) + TINY, d * (1.0 + damping) + TINY);
        let b = f[0] * f[1] + c[0] * c[1];
        let (p, q) = (f[0] * here.fit + c[0] * here.twist, f[1] * here.fit + c[1] * here.twist);
        let whole = a * d - b * b;
        let next = [at[0] - (d * p - b * q) / whole, at[1] - (a * q - b * p) / whole];
        let there = sight(problem, next);
        if size(&there) < left {
            (at, here) = (next, there);
            damping *= 0.01;
        } else {
            damping *= 10.0;
            if damping > 1e6 {
                return None;
            }
        }
    }
    None
}

/// Rates of fit and twist by turn and plane.
fn slopes(problem: &Problem, [turn, plane]: [f64; 2], sight: &Sight) -> [[f64; 2]; 2] {
    let heading = -problem.out[1];
    let (sin, cos) = libm::sincos(turn);
    let inward = inward(problem, plane);
    let round = problem.out[0].cross(&inward);
    let back = inward * cos - problem.out[0] * sin;
    let far = sight.aside + sight.direction * sight.along;
    let square = far.cross(&heading);
    let towards = if sight.offset > 0.0 { sight.aside / sight.offset } else { Vec3::zeros() };
    let swung = sight.direction.cross(&round).dot(&heading);
    [
        [
            back.dot(&heading) - sight.along * towards.dot(&back),
            towards.dot(&round) * (cos - 1.0 - sight.along * sin) + sin * round.dot(&heading),
        ],
        [back.dot(&square), sin * round.dot(&square) - (1.0 - cos) * swung],
    ]
}

fn sight(problem: &Problem, [turn, plane]: [f64; 2]) -> Sight {
    let heading = -problem.out[1];
    let (sin, cos) = libm::sincos(turn);
    let inward = inward(problem, plane);
    let direction = problem.out[0] * cos + inward * sin;
    let far = problem.gap - problem.out[0] * sin - inward * (1.0 - cos);
    let along = far.dot(&direction);
    let aside = far - direction * along;
    let offset = aside.norm();
    let bend = libm::atan2(direction.cross(&heading).norm(), direction.dot(&heading));
    Sight {
        reach: far.norm(),
        along,
        bend,
        fit: offset - 1.0 + direction.dot(&heading),
        twist: direction.dot(&far.cross(&heading)),
        side: aside.dot(&heading),
        direction,
        aside,
        offset,
    }
}

fn inward(problem: &Problem, plane: f64) -> Vec3 {
    let (sin, cos) = libm::sincos(plane);
    problem.across[0][0] * cos + problem.across[0][1] * sin
}

/// The most that the sides of a cell turn the line's direction, radians, or move the first arc's end; none where the cell
/// holds no link shorter than `best`.
fn slack(cell: &Cell, sight: &Sight, best: f64) -> Option<f64> {
    let [turn, plane] = cell.half;
    let (sin, cos) = libm::sincos(cell.middle[0]);
    // The plane's turn moves the direction by the sine of the first arc, its end by 1 - cos.
    let lift = (sin.abs() + turn).min(1.0) * plane;
    let swing = (1.0 - cos + turn).min(2.0) * plane;
    let (turned, moved) = (turn + lift, turn + swing);
    let reach = sight.reach + moved;
    // By the turn the offset changes as the direction swings: the arc's end only moves along the line.
    let along = (sight.along.abs() + moved + reach * turned).min(reach);
    let fit = (along + 1.0) * turned + swing;
    if sight.fit.abs() > fit || sight.twist.abs() > reach * turned + swing {
        return None;
    }
    let swung = (reach + 1.0) * turned + moved;
    let (long, short) = (sight.side < -swung, sight.side > swung);
    let bend = if long { 2.0 * PI - sight.bend } else { sight.bend };
    let least = (bend - turned).max(0.0);
    // Turn and way along: their rates are the offset by the turn, the reach by the plane.
    let offset = (sight.offset + swung).min(reach);
    let both = cell.middle[0] + sight.along - offset * turn - reach * lift;
    if both + least - libm::sin(least) > best {
        return None;
    }
    // The straight is the way along less the sine of the last arc; none runs backwards.
    let sine = if short { libm::sin(sight.bend) } else { -libm::sin(sight.bend) };
    (sight.along + turn + reach * turned + turned >= sine).then_some(turned.max(moved))
}

/// The unknowns of the link whose first arc is given.
fn start(problem: &Problem, [turn, plane]: [f64; 2], sight: &Sight, long: bool) -> Unknowns {
    let angle = if long { 2.0 * PI - sight.bend } else { sight.bend };
    let (sin, cos) = libm::sincos(angle);
    // Where the last arc turns much, its plane is told by where the line passes; else by both directions.
    let centre = if sight.bend > FRAC_PI_2 && sight.offset > 0.5 {
        sight.aside * (cos / sight.offset) - sight.direction * sin
    } else if long {
        sight.direction
    } else {
        -sight.direction
    };
    let centre = perpendicular(&problem.out[1], &centre);
    let first = inward(problem, plane) * turn;
    let mut x = Unknowns::zeros();
    for axis in [0, 1] {
        x[axis] = first.dot(&problem.across[0][axis]);
        x[2 + axis] = angle * centre.dot(&problem.across[1][axis]);
    }
    x[4] = turn + angle + (sight.along - sin).max(0.0);
    x
}
