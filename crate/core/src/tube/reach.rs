//! How far the outer skin reaches: its box along any axes, lobes and keys as they stand.

use super::{Lobes, Profile, Section};
use crate::centreline::{Bounds, Centreline, Frames, bounds};
use crate::golden::highest;
use crate::layout::{Vec3, reference_perpendicular};
use core::f64::consts::PI;

/// What a lobed skin reaches is found to this, mm: a tenth of the least deviation of a mesh.
const WITHIN: f64 = 1e-4;
/// Between two looks the tube turns by at most so much, and the lobes' wave, radians.
const TURN: f64 = PI / 60.0;
const WAVE: f64 = 0.25;
/// Looks along a stretch of a body at most: one whose lobes turn on more often is their crests' circle nearly everywhere.
const MOST_LOOKS: f64 = 4_000.0;
/// Golden sections between looks, and round a section.
const SECTIONS: u32 = 30;
/// Looks round a section, from the direction to the nearest crest.
const ROUND: u32 = 12;

impl Profile {
    /// The least box round the outer skin of a tube along `line`, its sides along the unit directions `axes`, mm along them;
    /// lobes are taken as they stand, to a tenth of a thousandth of a millimetre.
    pub fn outer_box(&self, line: &Centreline, axes: &[Vec3; 3]) -> Bounds {
        let seen = line.turned(axes);
        let outer = &self.outer;
        let breaks = Section::breaks_of([outer]);
        let crests = bounds(&seen, &breaks, |s| outer.radius(s));
        let Some((lobes, [from, to])) = self.lobes.as_ref().and_then(|lobes| Some((lobes, lobes.span()?))) else {
            return crests;
        };
        // What is round, and beyond it what is not.
        let round = [[0.0, from], [to, line.length]].into_iter().filter(|[from, to]| to > from);
        let round = round.map(|span| {
            let breaks: Vec<f64> = breaks.iter().map(|s| s - span[0]).collect();
            bounds(&seen.part(span), &breaks, |s| outer.radius(s + span[0]))
        });
        let body = Body { line, frames: Frames::of(line), outer, lobes, span: [from, to] };
        let mut low = Vec3::repeat(f64::INFINITY);
        let mut high = -low;
        for axis in 0..3 {
            high[axis] = body.reach(&axes[axis], crests.max[axis]);
            low[axis] = -body.reach(&-axes[axis], -crests.min[axis]);
        }
        round.fold(Bounds { min: low, max: high }, |all, part| all.with(&part))
    }

    /// The same along a part of the run's `line`, from where it begins there: arc lengths count from its own beginning, angles
    /// from the untwisted frame of that part alone.
    pub fn along_its_part(&self, line: &Centreline) -> Self {
        let mut part = self.from_its_start();
        let [from, _] = self.span();
        let last = line.pieces.len().saturating_sub(1);
        let piece = line.pieces.partition_point(|piece| piece.to() <= from).min(last);
        let Some(on) = line.pieces.get(piece) else { return part };
        let there = on.at(from - on.from);
        let [first, second] = Frames::of(line).at(piece, from - on.from, &there);
        let own = reference_perpendicular(&there.tangent);
        let turned = libm::atan2(own.dot(&second), own.dot(&first));
        [&mut part.lobes, &mut part.bore_lobes].into_iter().flatten().for_each(|lobes| lobes.start -= turned);
        part
    }
}

/// The lobed part of a tube.
struct Body<'a> {
    line: &'a Centreline,
    frames: Frames<'a>,
    outer: &'a Section,
    lobes: &'a Lobes,
    span: [f64; 2],
}

/// A section as a direction sees it.
struct Seen {
    /// How far the centreline reaches, mm.
    axis: f64,
    /// Share of what lies towards the direction that reaches along it.
    across: f64,
    crest: f64,
    half: f64,
    /// Phase of the wave at the direction.
    phase: f64,
}

impl Body<'_> {
    /// How far it reaches along a unit direction, mm; `most` is how far its crests would all round.
    fn reach(&self, direction: &Vec3, most: f64) -> f64 {
        let mut best = f64::NEG_INFINITY;
        for (piece, [from, to]) in self.parts() {
            let on = &self.line.pieces[piece];
            let count = f64::from(self.lobes.count);
            let bend = on.turned() / on.length;
            let turns = bend * (1.0 / TURN).max(count / WAVE) + self.lobes.twist.abs() * count / WAVE;
            let looks = ((to - from) * turns).ceil().clamp(1.0, MOST_LOOKS);
            let place = |look: f64| from + (to - from) * look.clamp(0.0, looks) / looks;
            let seen: Vec<Seen> =
                (0..=looks as u32).map(|look| self.seen(piece, place(f64::from(look)), direction)).collect();
            // What a look finds; where not even the crest reaches as far as what is found, that of the crest.
            let reaches: Vec<f64> = seen
                .iter()
                .map(|seen| {
                    let crest = seen.axis + seen.across * seen.crest;
                    let reach = if crest > best { seen.reach(self.lobes.count) } else { crest };
                    best = best.max(reach);
                    reach
                })
                .collect();
            for (look, reach) in reaches.iter().enumerate() {
                if best >= most - WITHIN {
                    return best.min(most);
                }
                // More than this no place between two looks reaches beyond them.
                let wave = seen[look].half * (1.0 - libm::cos(2.0 * WAVE));
                let outer = if bend > 0.0 { 1.0 / bend + seen[look].crest } else { 0.0 };
                let bent = outer * (1.0 - libm::cos(TURN));
                let mut beside =
                    [look.checked_sub(1), Some(look + 1)].into_iter().flatten().filter_map(|at| reaches.get(at));
                if reach + wave + bent <= best || beside.any(|other| other > reach) {
                    continue;
                }
                let of = |look: f64| self.seen(piece, place(look), direction).reach(self.lobes.count);
                best = best.max(highest([look as f64 - 1.0, look as f64 + 1.0], SECTIONS, of).1);
            }
        }
        best.min(most)
    }

    /// Parts between joints and breaks: the piece, and the arc lengths.
    fn parts(&self) -> Vec<(usize, [f64; 2])> {
        let breaks = Section::breaks_of([self.outer, &self.lobes.half]);
        let mut parts = Vec::new();
        for (piece, on) in self.line.pieces.iter().enumerate() {
            let [from, to] = [on.from.max(self.span[0]), on.to().min(self.span[1])];
            let inside = breaks.iter().copied().filter(|s| *s > from && *s < to);
            let places: Vec<f64> = std::iter::once(from).chain(inside).chain([to]).collect();
            parts.extend(places.windows(2).filter(|pair| pair[1] > pair[0]).map(|pair| (piece, [pair[0], pair[1]])));
        }
        parts
    }

    fn seen(&self, piece: usize, s: f64, direction: &Vec3) -> Seen {
        let on = &self.line.pieces[piece];
        let there = on.at(s - on.from);
        let [first, second] = self.frames.at(piece, s - on.from, &there);
        let [x, y] = [first.dot(direction), second.dot(direction)];
        let (half, phase) = self.lobes.wave(s);
        Seen {
            axis: there.point.dot(direction),
            across: libm::hypot(x, y),
            crest: self.outer.radius(s),
            half,
            phase: phase - f64::from(self.lobes.count) * libm::atan2(y, x),
        }
    }
}

impl Seen {
    /// How far the section reaches, mm: at an angle d from the direction that is (m + e cos(n d - phase)) cos d, which is
    /// largest between 0 and the nearest crest, since both factors rise on the way there from anywhere else.
    fn reach(&self, count: u32) -> f64 {
        let count = f64::from(count);
        let whole = 2.0 * PI;
        let phase = self.phase - whole * libm::round(self.phase / whole);
        let crest = phase / count;
        let mean = self.crest - self.half;
        let of = |share: f64| {
            let angle = crest * share.clamp(0.0, 1.0);
            (mean + self.half * libm::cos(count * angle - phase)) * libm::cos(angle)
        };
        let looks = (0..=ROUND).map(|look| f64::from(look) / f64::from(ROUND));
        let (near, _) = looks
            .map(|share| (share, of(share)))
            .fold((0.0, f64::NEG_INFINITY), |best, look| if look.1 > best.1 { look } else { best });
        let step = 1.0 / f64::from(ROUND);
        self.axis + self.across * highest([near - step, near + step], SECTIONS, of).1
    }
}
