//! How many corners a ring needs, and how many steps each part of the centreline.
//!
//! An inscribed polygon of n corners on radius r cuts off the sagitta r (1 - cos(pi / n)). With corners pushed out to
//! keep the area, two thirds of it stick out and one third is cut off; the same holds along an arc. Both add up at the
//! outside of a bend, so the allowance is shared out between them where that takes the fewest triangles. A wave of half
//! depth e, of which a triangle spans the phase m, is cut off by e m^2 / 8, and by a quarter of m times what e grows.

use super::stretches::Part;
use super::volume::stretch;
use crate::centreline::Centreline;
use crate::tube::{Lobes, Section};
use core::f64::consts::PI;

/// Fewest corners of a ring, and the widest step along an arc: coarser looks broken, whatever the deviation.
const FEWEST_AROUND: usize = 16;
const WIDEST_STEP: f64 = PI / 8.0;
/// Widest phase of a wave that a triangle spans.
const WIDEST_PHASE: f64 = PI / 4.0;
/// An arc that turns less is one step: its volume is out by under one millionth of itself.
const ONE_STEP: f64 = 2.4e-3;

/// Coarsest deviation of a skin that grazes a bend's axis, as a share of its radius: the corners that are held back
/// there cost volume, which at this fineness stays under 0.02 % of the material of walls from 0.4 mm.
const MOST_GRAZING: f64 = 0.001;

/// One skin: its radius along the tube, and what waves run round it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Skin<'a> {
    pub section: &'a Section,
    pub lobes: Option<&'a Lobes>,
}

impl Skin<'_> {
    /// Arc lengths where its shape changes its course.
    pub fn breaks(&self) -> Vec<f64> {
        let waves = self.lobes.iter().flat_map(|lobes| &lobes.half.breaks);
        let mut breaks: Vec<f64> = self.section.breaks.iter().chain(waves).map(|[at, _]| *at).collect();
        breaks.sort_by(f64::total_cmp);
        breaks.dedup();
        breaks
    }
}

/// The fineness of one skin.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Fineness {
    /// Corners of a ring.
    pub around: usize,
    /// Steps of each part, in the order of the stretches' parts: 1 for a straight.
    pub steps: Vec<usize>,
}

/// The fineness with the fewest triangles that stays within `allowed` mm of the exact skin.
pub(super) fn choose(line: &Centreline, skin: &Skin<'_>, stretches: &[Vec<Part>], allowed: f64) -> Fineness {
    let radius = skin.section.largest();
    let allowed = if grazes(line, radius) { allowed.min(MOST_GRAZING * radius) } else { allowed };
    let deepest = skin.lobes.map_or((0.0, 0), |lobes| (lobes.half.largest(), lobes.count));
    let bends = line.pieces.iter().any(|piece| piece.radius().is_some());
    let at = |around: usize| Fineness { around, steps: steps(stretches, skin, allowed, around) };
    if !bends && deepest.1 == 0 {
        return at(around_for(radius, deepest, allowed));
    }
    let least = around_for(radius, deepest, 0.9 * allowed);
    let most = around_for(radius, deepest, 0.1 * allowed).max(least);
    let stride = ((most - least) / 24).max(1);
    let cost =
        |fine: &Fineness| (fine.around * (fine.steps.iter().sum::<usize>() + skin.section.breaks.len()), fine.around);
    (least..=most).step_by(stride).map(at).min_by_key(cost).unwrap_or_else(|| at(most))
}

/// Whether the skin comes so near to a bend's axis that corners pushed out must be held back there.
fn grazes(line: &Centreline, radius: f64) -> bool {
    let near = 4.0 * (push(FEWEST_AROUND) - 1.0) * radius;
    line.pieces.iter().filter_map(crate::centreline::Piece::radius).any(|bend| bend - radius < near)
}

/// Fewest corners that stick out, and cut off from the deepest wave, at most `out`; of a circle they always cut off less
/// than they stick out.
fn around_for(radius: f64, (half, count): (f64, u32), out: f64) -> usize {
    // Two thirds of the sagitta, r (pi / n)^2 / 3, is a little less than what sticks out, so counting up from it ends.
    let round = PI * (radius / (3.0 * out)).sqrt();
    let wavy = 2.0 * PI * f64::from(count) * (half / (8.0 * out)).sqrt().max(1.0 / WIDEST_PHASE);
    let mut around = (libm::floor(round.max(wavy)) as usize).max(FEWEST_AROUND);
    loop {
        let ring = RingError::of(radius, half, count, around);
        if ring.out <= out && ring.cut + ring.wave(half, 0.0) <= out {
            return around;
        }
        around += 1 + around / 256;
    }
}

/// Corner radius over circle radius at which a regular polygon has the circle's area.
pub(super) fn push(around: usize) -> f64 {
    let step = 2.0 * PI / around as f64;
    (step / libm::sin(step)).sqrt()
}

/// Factor on a wave's half depth at corners that `phase` parts, at which sides cut off as much as they stick out.
pub(super) fn push_of_wave(phase: f64) -> f64 {
    let half = phase / 2.0;
    if half == 0.0 { 1.0 } else { (half / libm::sin(half)) * (half / libm::sin(half)) }
}

/// What a ring's corners stick out and its sides cut off, mm.
struct RingError {
    out: f64,
    cut: f64,
    /// Phase of the wave between two corners.
    phase: f64,
}

impl RingError {
    fn of(radius: f64, half: f64, count: u32, around: usize) -> Self {
        let phase = 2.0 * PI * f64::from(count) / around as f64;
        let push = push(around);
        let out = radius * (push - 1.0) + half * (push_of_wave(phase) - 1.0);
        Self { out, cut: radius * (1.0 - push * libm::cos(PI / around as f64)), phase }
    }

    /// What triangles of the wave may be off, mm, where it turns by `turned` along them.
    fn wave(&self, half: f64, turned: f64) -> f64 {
        let spanned = self.phase.max(turned);
        half * push_of_wave(self.phase) * spanned * spanned / 8.0
    }
}

/// Fewest steps of each part that keep corners and middles within the allowance, given the corners of a ring.
fn steps(stretches: &[Vec<Part>], skin: &Skin<'_>, allowed: f64, around: usize) -> Vec<usize> {
    let mut steps = Vec::with_capacity(stretches.len());
    for stretch in stretches {
        let parts: Vec<PartSteps> = stretch.iter().map(|part| PartSteps::of(part, skin, allowed, around)).collect();
        let fewest: usize = parts.iter().map(|part| part.guess).sum();
        let turn: f64 = stretch.iter().map(Part::turn).sum();
        let first = steps.len();
        steps.extend(parts.iter().map(|part| part.fewest(fewest)));
        // Rings at the ends stay in place, so the volume is kept by one between them.
        if turn >= ONE_STEP && steps[first..].iter().sum::<usize>() == 1 {
            steps[first] = 2;
        }
    }
    steps
}

/// A part, and what its steps must keep to.
struct PartSteps<'a> {
    part: &'a Part,
    ring: RingError,
    radius: f64,
    /// Half depth of its wave at most, mm, what that changes by along the part, and the wave's whole turn.
    wave: (f64, f64, f64),
    allowed: f64,
    /// A number of steps that is not too large.
    guess: usize,
}

impl<'a> PartSteps<'a> {
    fn of(part: &'a Part, skin: &Skin<'_>, allowed: f64, around: usize) -> Self {
        let radius = skin.section.largest_between(part.from, part.to);
        let wave = skin.lobes.map_or((0.0, 0.0, 0.0), |lobes| {
            let [from, to] = [part.from, part.to].map(|s| lobes.half.radius(s));
            let turn = f64::from(lobes.count) * lobes.twist.abs() * part.length();
            (lobes.half.largest_between(part.from, part.to), (to - from).abs(), turn)
        });
        let count = if wave.0 > 0.0 { skin.lobes.map_or(0, |lobes| lobes.count) } else { 0 };
        let ring = RingError::of(radius, wave.0, count, around);
        let left = (allowed - ring.out).max(1e-9);
        let bent =
            if part.bend > 0.0 { part.turn() * ((1.0 / part.bend + radius) / (12.0 * left)).sqrt() } else { 0.0 };
        let twisted =
            if wave.0 > 0.0 { wave.2 * (wave.0 / (8.0 * allowed)).sqrt().max(1.0 / WIDEST_PHASE) } else { 0.0 };
        let guess =
            (libm::floor(bent.max(twisted)) as usize).max(libm::ceil(part.turn() / WIDEST_STEP) as usize).max(1);
        Self { part, ring, radius, wave, allowed, guess }
    }

    /// The fewest steps, where its whole stretch has at least `fewest`.
    fn fewest(&self, fewest: usize) -> usize {
        let mut steps = self.guess;
        while !self.holds(steps, fewest.max(steps)) {
            steps += 1 + steps / 64;
        }
        steps
    }

    fn holds(&self, steps: usize, in_stretch: usize) -> bool {
        let (half, change, turn) = self.wave;
        let turned = turn / steps as f64;
        let grown = change / steps as f64 * self.ring.phase.max(turned) / 4.0;
        let wave = self.ring.wave(half, turned) + grown;
        let cut = self.ring.cut + wave;
        if self.part.bend == 0.0 {
            return steps > 10_000_000 || (cut <= self.allowed && (half == 0.0 || turned <= WIDEST_PHASE));
        }
        let bend = 1.0 / self.part.bend;
        let out = self.ring.out;
        let (outside, inside) = (bend + self.radius, bend - self.radius);
        let step = self.part.turn() / steps as f64;
        let stretch = stretch(in_stretch, step);
        let corner = out + (outside + out) * (stretch - 1.0);
        let first = 1.0 - 0.5 * (1.0 + stretch * stretch + 2.0 * stretch * libm::cos(step)).sqrt();
        let cut_in_bend = cut + outside * first;
        let bulge_inside = out.max(wave) + inside * first.max(0.0);
        corner <= self.allowed && cut_in_bend <= self.allowed && bulge_inside <= self.allowed
    }
}
