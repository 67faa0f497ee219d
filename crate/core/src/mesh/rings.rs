//! Where the rings of a skin stand: at joints, at breaks of the section, and at even steps along what bends or turns.

use super::fineness::{Fineness, Skin, push, push_of_wave};
use super::stretches::Part;
use super::volume::{RingPlace, stretches as volume_stretches};
use crate::centreline::{Centreline, Frame, Frames, Sample};
use crate::layout::Vec3;
use crate::tube::rounding;
use core::f64::consts::PI;

/// Rings nearer to each other than this are one ring, mm: what an arc turns over it is beyond any deviation.
const NEAREST: f64 = 1e-3;

/// Least way between rings at the inside of a bend, in spacings of 32-bit floats.
const LEAST_STEP: f64 = 2.0;

/// An outline across the centreline, to be drawn as a polygon.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Ring {
    /// Its centre on the centreline.
    pub centre: Vec3,
    /// Two unit directions across the centreline; with the direction of travel they make a right-handed frame that
    /// does not twist along the tube.
    pub across: Frame,
    /// Mean radius of its corners, mm.
    pub radius: f64,
    /// Half the height of the wave of its corners, mm, and the wave's phase.
    pub wave: [f64; 2],
    /// The bends it stands in: at most one on each side.
    pub bends: [Option<InBend>; 2],
}

/// A ring's place in a bend.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct InBend {
    /// Unit direction from the bend's axis to the ring's centre.
    pub outward: Vec3,
    /// Bend radius, mm.
    pub radius: f64,
    /// Factor on distances from the bend's axis.
    pub stretch: f64,
    /// No corner may come nearer to the bend's axis than this, mm.
    pub floor: f64,
}

/// A place for a ring: arc length on a piece, what the centreline does there, and the stretch.
struct Stand {
    piece: usize,
    s: f64,
    sample: Sample,
    stretch: f64,
}

/// The rings of one skin in order, the first and the last on the end faces.
pub(super) fn along(
    line: &Centreline,
    frames: &Frames<'_>,
    skin: &Skin<'_>,
    stretches: &[Vec<Part>],
    fineness: &Fineness,
    reach: f64,
) -> Vec<Ring> {
    let stands = stands(line, skin, stretches, fineness, f64::from(rounding(reach)));
    let outline = Outline::of(skin, fineness.around);
    let mut rings = Vec::with_capacity(stands.len());
    for (index, stand) in stands.iter().enumerate() {
        let piece = &line.pieces[stand.piece];
        let local = stand.s - piece.from;
        let circle = skin.section.radius(stand.s);
        let mut bends = [in_bend(&stand.sample, circle, stand.stretch, outline.push), None];
        if local <= 0.0 && stand.piece > 0 && stand.stretch == 1.0 {
            let before = &line.pieces[stand.piece - 1];
            bends[1] = in_bend(&before.at(before.length), circle, 1.0, outline.push);
        }
        let near = [index.saturating_sub(1), (index + 1).min(stands.len() - 1)].map(|near| stands[near].s);
        let (radius, wave) = outline.at(stand.s, near);
        rings.push(Ring {
            centre: stand.sample.point,
            across: frames.at(stand.piece, local, &stand.sample),
            radius,
            wave,
            bends,
        });
    }
    rings
}

fn stands(
    line: &Centreline,
    skin: &Skin<'_>,
    stretches: &[Vec<Part>],
    fineness: &Fineness,
    rounding: f64,
) -> Vec<Stand> {
    let nearest = NEAREST.max(32.0 * rounding);
    let mut stands: Vec<Stand> = Vec::with_capacity(fineness.steps.iter().sum::<usize>() + 1);
    let mut steps = fineness.steps.iter();
    for stretch in stretches {
        let mut places: Vec<Stand> = Vec::new();
        let stand = |piece: usize, s: f64| {
            let on = &line.pieces[piece];
            Stand { piece, s, sample: on.at(s - on.from), stretch: 1.0 }
        };
        for (part, steps) in stretch.iter().zip(&mut steps) {
            let mut steps = *steps;
            if part.bend > 0.0 {
                // A bend that grazes its axis and hardly turns has less inside it than its coordinates can tell.
                let outermost = skin.section.largest_between(part.from, part.to);
                let room = (1.0 / part.bend - outermost) * part.turn() / (LEAST_STEP * rounding);
                steps = steps.min(room as usize);
            }
            for step in 0..steps {
                places.push(stand(part.piece, part.from + part.length() * (step as f64 / steps as f64)));
            }
        }
        let Some(last) = stretch.last() else { continue };
        if last.bend > 0.0 && places.len() > 1 {
            places.push(stand(last.piece, last.to));
            let rings: Vec<RingPlace> = places.iter().map(|stand| place(stand, skin)).collect();
            for (stand, factor) in places.iter_mut().zip(volume_stretches(&rings)) {
                stand.stretch = factor;
            }
            places.pop();
        }
        for stand in places {
            if stands.last().is_none_or(|last| stand.s - last.s >= nearest) {
                stands.push(stand);
            }
        }
    }
    // The end face stays; a ring too near before it makes way.
    let [_, end] = skin.section.span();
    while stands.len() > 1 && end - stands[stands.len() - 1].s < nearest {
        stands.pop();
    }
    let last = line.pieces.len() - 1;
    let piece = line.pieces.partition_point(|piece| piece.to() < end).min(last);
    let on = &line.pieces[piece];
    let local = if end >= line.length { on.length } else { end - on.from };
    stands.push(Stand { piece, s: end, sample: on.at(local), stretch: 1.0 });
    stands
}

fn place(stand: &Stand, skin: &Skin<'_>) -> RingPlace {
    let half = skin.lobes.map_or(0.0, |lobes| lobes.half.radius(stand.s));
    let mean = skin.section.radius(stand.s) - half;
    RingPlace { s: stand.s, bend: stand.sample.curvature.norm(), area: mean * mean + half * half / 2.0 }
}

fn in_bend(sample: &Sample, circle: f64, stretch: f64, push: f64) -> Option<InBend> {
    let bend = sample.curvature.norm();
    if bend < 1e-12 {
        return None;
    }
    let (radius, outward) = (1.0 / bend, -sample.curvature / bend);
    let inner = radius - circle;
    // Pushed-out corners are held back only where they could come near the bend's axis.
    let floor = if inner < 4.0 * circle * (push - 1.0) { inner } else { 0.0 };
    Some(InBend { outward, radius, stretch, floor })
}

/// Sizes of a skin's polygons that keep its volume.
struct Outline<'a> {
    skin: &'a Skin<'a>,
    /// Angle between corners.
    step: f64,
    push: f64,
}

impl<'a> Outline<'a> {
    fn of(skin: &'a Skin<'a>, around: usize) -> Self {
        Self { skin, step: 2.0 * PI / around as f64, push: push(around) }
    }

    /// Mean radius and wave of the corners at `s`, between rings at the arc lengths `near`.
    ///
    /// Corners at radii m + e cos(count a - phase) enclose sin(step) / step of pi (m^2 + e^2 k / 2), where k is the cosine
    /// of what the wave turns from corner to corner; between two rings, cut along the diagonals that the wave follows, k
    /// is two thirds of that and a third of the cosine along the diagonal. So m makes up for what e lacks.
    fn at(&self, s: f64, near: [f64; 2]) -> (f64, [f64; 2]) {
        let circle = self.skin.section.radius(s);
        let Some((lobes, half)) =
            self.skin.lobes.map(|lobes| (lobes, lobes.half.radius(s))).filter(|(_, half)| *half > 0.0)
        else {
            return (circle * self.push, [0.0, 0.0]);
        };
        let (_, phase) = lobes.wave(s);
        let across = f64::from(lobes.count) * self.step;
        let along = f64::from(lobes.count) * lobes.twist.abs();
        let diagonals = near.map(|near| libm::cos(across - along * (near - s).abs()));
        let kept = (2.0 * libm::cos(across) + (diagonals[0] + diagonals[1]) / 2.0) / 3.0;
        let (mean, wave) = (circle - half, half * push_of_wave(across));
        let square = self.push * self.push * (mean * mean + half * half / 2.0) - wave * wave * kept / 2.0;
        (square.max(0.0).sqrt(), [wave, phase])
    }
}
