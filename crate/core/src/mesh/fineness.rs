//! How many corners a ring needs, and how many rings each arc.
//!
//! An inscribed polygon of n corners on radius r cuts off the sagitta r (1 - cos(pi / n)). With corners pushed out to
//! keep the area, two thirds of it stick out and one third is cut off; the same holds along an arc. Both add up at the
//! outside of a bend, so the allowance is shared out between them where that takes the fewest triangles.

use crate::centreline::{Centreline, Shape};
use crate::tube::Section;
use core::f64::consts::PI;

/// Fewest corners of a ring, and the widest step along an arc: coarser looks broken, whatever the deviation.
const FEWEST_AROUND: usize = 16;
const WIDEST_STEP: f64 = PI / 8.0;
/// An arc that turns less is one step: its volume is out by under one millionth of itself.
const ONE_STEP: f64 = 2.4e-3;

/// Coarsest deviation of a skin that grazes a bend's axis, as a share of its radius: the corners that are held back
/// there cost volume, which at this fineness stays under 0.02 % of the material of walls from 0.4 mm.
const MOST_GRAZING: f64 = 0.001;

/// The fineness of one skin.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Fineness {
    /// Corners of a ring.
    pub around: usize,
    /// Factor from a circle's radius to its corners' radius.
    pub push: f64,
    /// Steps of each piece of the centreline: 1 for a straight.
    pub steps: Vec<usize>,
}

/// The fineness with the fewest triangles that stays within `allowed` mm of the exact skin.
pub(super) fn choose(line: &Centreline, section: &Section, allowed: f64) -> Fineness {
    let radius = section.largest();
    let allowed = if grazes(line, radius) { allowed.min(MOST_GRAZING * radius) } else { allowed };
    let bends = line.pieces.iter().any(|piece| piece.radius().is_some());
    if !bends {
        return at(line, radius, allowed, around_for(radius, allowed));
    }
    let least = around_for(radius, 0.9 * allowed);
    let most = around_for(radius, 0.1 * allowed).max(least);
    let stride = ((most - least) / 24).max(1);
    let cost = |around: usize| {
        let steps: usize = line.pieces.iter().map(|piece| steps_of(&piece.shape, radius, allowed, around)).sum();
        (around * (steps + section.breaks.len()), around)
    };
    let (_, around) = (least..=most).step_by(stride).map(cost).min().unwrap_or((0, most));
    at(line, radius, allowed, around)
}

/// Whether the skin comes so near to a bend's axis that corners pushed out must be held back there.
fn grazes(line: &Centreline, radius: f64) -> bool {
    let near = 4.0 * (push(FEWEST_AROUND) - 1.0) * radius;
    line.pieces.iter().filter_map(crate::centreline::Piece::radius).any(|bend| bend - radius < near)
}

fn at(line: &Centreline, radius: f64, allowed: f64, around: usize) -> Fineness {
    let steps = line.pieces.iter().map(|piece| steps_of(&piece.shape, radius, allowed, around)).collect();
    Fineness { around, push: push(around), steps }
}

/// Fewest corners that stick out by at most `out`; they always cut off less than they stick out.
fn around_for(radius: f64, out: f64) -> usize {
    // Two thirds of the sagitta, r (pi / n)^2 / 3, is a little less than what sticks out, so counting up from it ends.
    let guess = PI * (radius / (3.0 * out)).sqrt();
    let mut around = (libm::floor(guess) as usize).max(FEWEST_AROUND);
    while radius * (push(around) - 1.0) > out {
        around += 1;
    }
    around
}

/// Corner radius over circle radius at which a regular polygon has the circle's area.
fn push(around: usize) -> f64 {
    let step = 2.0 * PI / around as f64;
    (step / libm::sin(step)).sqrt()
}

/// Fewest steps of an arc that keep corners and middles within the allowance, given the corners of its rings.
fn steps_of(shape: &Shape, radius: f64, allowed: f64, around: usize) -> usize {
    let Shape::Arc { radius: bend, angle, .. } = shape else { return 1 };
    let push = push(around);
    let out = radius * (push - 1.0);
    let cut = radius * (1.0 - push * libm::cos(PI / around as f64));
    let outside = bend + radius;
    let inside = bend - radius;
    let left = allowed - out;
    let floor = if *angle < ONE_STEP { 1 } else { 2 };
    let guess = angle * (outside / (12.0 * left.max(1e-9))).sqrt();
    let mut steps = (libm::floor(guess) as usize).max(floor).max(libm::ceil(angle / WIDEST_STEP) as usize);
    loop {
        let step = angle / steps as f64;
        let stretch = stretch(steps, step);
        let corner = out + (outside + out) * (stretch - 1.0);
        let first = 1.0 - 0.5 * (1.0 + stretch * stretch + 2.0 * stretch * libm::cos(step)).sqrt();
        let cut_in_bend = cut + outside * first;
        let bulge_inside = out + inside * first.max(0.0);
        if corner <= allowed && cut_in_bend <= allowed && bulge_inside <= allowed {
            return steps;
        }
        steps += 1 + steps / 64;
    }
}

/// How far rings inside an arc of `steps` steps are stretched away from the bend's axis, as a factor, so that the arc
/// keeps its exact volume although its two outermost rings stay in place.
///
/// A slice between planes `step` apart through the axis, from factor a to factor b, holds a b sin(step) / step of the
/// exact slice; two slices have one outermost ring, the others none.
pub(super) fn stretch(steps: usize, step: f64) -> f64 {
    let lack = step / libm::sin(step);
    match steps {
        0 | 1 => 1.0,
        2 => lack,
        _ => {
            let inner = steps as f64 - 2.0;
            ((1.0 + inner * steps as f64 * lack).sqrt() - 1.0) / inner
        }
    }
}
