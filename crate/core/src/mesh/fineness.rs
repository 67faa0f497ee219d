//! How many corners a ring needs, and how many steps each part of the centreline.
//!
//! An inscribed polygon of n corners on radius r cuts off the sagitta r (1 - cos(pi / n)). With corners pushed out to
//! keep the area, two thirds of it stick out and one third is cut off; the same holds along an arc. Both add up at the
//! outside of a bend, so the allowance is shared out between them where that takes the fewest triangles.
//!
//! What a triangle is off is half the second derivatives times the spread of its corners about the point looked at. For a
//! wave of half depth e that spans the phase m from corner to corner and u from ring to ring, with quads cut along the
//! wave, it is at most e (m^2 + u^2) / 8: inward at a crest, but outward in a groove, where it adds to what corners stick
//! out. Where e or the radius changes from ring to ring, a quarter of the phase times that change comes on top.

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
/// A part of more steps is beyond any mesh: no number of steps makes up for so few corners round it.
const MOST_STEPS: usize = 10_000_000;
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

impl<'a> Skin<'a> {
    pub fn of(section: &'a Section, lobes: Option<&'a Lobes>) -> Self {
        Self { section, lobes }
    }

    /// Arc lengths where its shape changes its course.
    pub fn breaks(&self) -> Vec<f64> {
        Section::breaks_of([self.section].into_iter().chain(self.lobes.map(|lobes| &lobes.half)))
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
    let allowed = if grazes(line, skin.section) { allowed.min(MOST_GRAZING * radius) } else { allowed };
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
fn grazes(line: &Centreline, section: &Section) -> bool {
    let radius = section.largest();
    let near = 4.0 * (push(FEWEST_AROUND) - 1.0) * radius;
    let reach = |piece: &crate::centreline::Piece| section.largest_between(piece.from, piece.to());
    line.pieces.iter().any(|piece| piece.radius().is_some_and(|bend| bend - reach(piece) < near))
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
        if ring.worst(0.0, 0.0, [[0.0; 2]; 2]) <= out {
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

/// What a ring's corners stick out and its sides cut off.
struct RingError {
    /// What corners of the circle stick out, and what its sides cut off, mm.
    out: f64,
    cut: f64,
    /// Half depth of the wave, mm, and its factor at corners.
    half: f64,
    push: f64,
    /// Phase of the wave between two corners.
    phase: f64,
    /// Mean radius, mm.
    mean: f64,
}

impl RingError {
    fn of(radius: f64, half: f64, count: u32, around: usize) -> Self {
        let phase = 2.0 * PI * f64::from(count) / around as f64;
        let push = push(around);
        Self {
            out: radius * (push - 1.0),
            cut: radius * (1.0 - push * libm::cos(PI / around as f64)),
            half,
            push: push_of_wave(phase),
            phase,
            mean: radius - half,
        }
    }

    /// What a crest's corners stick out, mm.
    fn crest(&self) -> f64 {
        self.out + self.half * (self.push - 1.0)
    }

    /// What the mean radius makes up for, where the wave's corners enclose less than the wave; see `rings::Outline`.
    fn made_up(&self, turned: f64) -> f64 {
        if self.half == 0.0 {
            return 0.0;
        }
        let kept = (2.0 * libm::cos(self.phase) + libm::cos(self.phase.max(turned))) / 3.0;
        let lack = self.half * self.half * (1.0 - self.push * self.push * kept) / 2.0;
        (lack / (2.0 * self.mean)).max(0.0)
    }

    /// Most that the skin is off, mm, either way, where the wave turns by `turned` from ring to ring and changes by `grown`:
    /// at and between corners, at and between rings. `bend` tells for the latter two by how much the bend alone puts it
    /// off, least and most.
    fn worst(&self, turned: f64, grown: f64, bend: [[f64; 2]; 2]) -> f64 {
        let made_up = self.made_up(turned);
        let lift = self.half * (self.push - 1.0);
        let mut worst = 0.0_f64;
        for (between, around) in [(0.0, self.out), (1.0, -self.cut)] {
            for (along, [least, most]) in [0.0, 1.0].into_iter().zip(bend) {
                let square = between * self.phase * self.phase + along * turned * turned;
                let sag = self.half * self.push * square / 8.0;
                let wave = lift.max(sag - lift) + if square > 0.0 { grown } else { 0.0 };
                worst = worst.max(around + made_up + most + wave).max(wave - around - least);
            }
        }
        worst
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
    /// What changes of its wave along the part, mm, and the wave's whole turn.
    wave: [f64; 2],
    allowed: f64,
    /// A number of steps that is not too large.
    guess: usize,
}

impl<'a> PartSteps<'a> {
    fn of(part: &'a Part, skin: &Skin<'_>, allowed: f64, around: usize) -> Self {
        let radius = skin.section.largest_between(part.from, part.to);
        let half = skin.lobes.map_or(0.0, |lobes| lobes.half.largest_between(part.from, part.to));
        let wave = skin.lobes.filter(|_| half > 0.0).map_or([0.0; 2], |lobes| {
            let change = |section: &Section| (section.radius(part.to) - section.radius(part.from)).abs();
            // A corner that moves out from ring to ring moves along its ray, so a flank moves with it, though its phase stays.
            let slid = half / (radius - 2.0 * half).max(half) * change(skin.section);
            [change(&lobes.half) + slid, f64::from(lobes.count) * lobes.twist.abs() * part.length()]
        });
        let count = if half > 0.0 { skin.lobes.map_or(0, |lobes| lobes.count) } else { 0 };
        let ring = RingError::of(radius, half, count, around);
        let left = (allowed - ring.crest()).max(1e-9);
        let bent =
            if part.bend > 0.0 { part.turn() * ((1.0 / part.bend + radius) / (12.0 * left)).sqrt() } else { 0.0 };
        let twisted = if half > 0.0 { wave[1] * (half / (8.0 * allowed)).sqrt().max(1.0 / WIDEST_PHASE) } else { 0.0 };
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
        let [change, turn] = self.wave;
        let turned = turn / steps as f64;
        let grown = change / steps as f64 * self.ring.phase.max(turned) / 4.0;
        if turned > WIDEST_PHASE {
            return false;
        }
        if self.part.bend == 0.0 {
            return steps > MOST_STEPS || self.ring.worst(turned, grown, [[0.0; 2]; 2]) <= self.allowed;
        }
        let bend = 1.0 / self.part.bend;
        let (outside, inside) = (bend + self.radius + self.ring.crest(), bend - self.radius);
        let step = self.part.turn() / steps as f64;
        let stretch = stretch(in_stretch, step);
        let first = (1.0 - 0.5 * (1.0 + stretch * stretch + 2.0 * stretch * libm::cos(step)).sqrt()).max(0.0);
        let rings = [-inside * (stretch - 1.0), outside * (stretch - 1.0)];
        let middles = [-outside * first, inside * first];
        steps > MOST_STEPS || self.ring.worst(turned, grown, [rings, middles]) <= self.allowed
    }
}
