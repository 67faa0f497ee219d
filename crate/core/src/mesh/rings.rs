//! Where the rings of a skin stand: at joints, at breaks of the section, and at even steps along arcs.

use super::fineness::{Fineness, stretch};
use crate::centreline::{Centreline, Piece, Shape};
use crate::layout::{Vec3, reference_perpendicular, turn};
use crate::tube::{Section, rounding};

/// Rings nearer to each other than this are one ring, mm: what an arc turns over it is beyond any deviation.
const NEAREST: f64 = 1e-3;

/// Least way between rings at the inside of a bend, in spacings of 32-bit floats.
const LEAST_STEP: f64 = 2.0;

/// A circle across the centreline, to be drawn as a polygon.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Ring {
    /// Its centre on the centreline.
    pub centre: Vec3,
    /// Two unit directions across the centreline; with the direction of travel they make a right-handed frame that
    /// does not twist along the tube.
    pub across: [Vec3; 2],
    /// Radius of its corners, mm.
    pub radius: f64,
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

/// A place for a ring: arc length on a piece, and the stretch there.
struct Stand {
    piece: usize,
    s: f64,
    stretch: f64,
}

/// The rings of one skin in order, the first and the last on the end faces.
pub(super) fn along(line: &Centreline, section: &Section, fineness: &Fineness, reach: f64) -> Vec<Ring> {
    let nearest = NEAREST.max(32.0 * f64::from(rounding(reach)));
    let stands = stands(line, section, fineness, nearest, LEAST_STEP * f64::from(rounding(reach)));
    let frames = frames(line);
    stands
        .iter()
        .map(|stand| {
            let piece = &line.pieces[stand.piece];
            let local = stand.s - piece.from;
            let circle = section.radius(stand.s);
            let mut bends = [in_bend(piece, local, circle, stand.stretch, fineness.push), None];
            if local <= 0.0 && stand.piece > 0 {
                let before = &line.pieces[stand.piece - 1];
                bends[1] = in_bend(before, before.length, circle, 1.0, fineness.push);
            }
            Ring {
                centre: piece.at(local).point,
                across: carried(&frames[stand.piece], piece, local),
                radius: circle * fineness.push,
                bends,
            }
        })
        .collect()
}

fn stands(line: &Centreline, section: &Section, fineness: &Fineness, nearest: f64, least_step: f64) -> Vec<Stand> {
    let mut stands: Vec<Stand> = Vec::with_capacity(fineness.steps.iter().sum::<usize>() + section.breaks.len() + 1);
    let mut put = |stand: Stand| {
        if stands.last().is_none_or(|last| stand.s - last.s >= nearest) {
            stands.push(stand);
        }
    };
    for (index, piece) in line.pieces.iter().enumerate() {
        // A break of the section inside an arc parts it into arcs of their own, each with exact rings at both ends.
        let cuts: Vec<f64> = std::iter::once(piece.from)
            .chain(section.breaks.iter().map(|[s, _]| *s).filter(|s| *s > piece.from && *s < piece.to()))
            .chain([piece.to()])
            .collect();
        for span in cuts.windows(2) {
            let share = (span[1] - span[0]) / piece.length;
            let (steps, stretched) = match &piece.shape {
                Shape::Straight => (1, 1.0),
                Shape::Arc { radius, angle, .. } => {
                    let whole = fineness.steps[index] as f64;
                    let steps = (libm::ceil(whole * share - 1e-9) as usize).max(1);
                    // Short parts of an arc take one more step, as their outermost rings weigh more.
                    let steps = if share < 1.0 { steps + 1 } else { steps };
                    // A bend that grazes its axis and hardly turns has less inside it than its coordinates can tell.
                    let room = (radius - section.largest()) * angle * share / least_step;
                    let steps = steps.min(room as usize);
                    (steps, stretch(steps, angle * share / steps.max(1) as f64))
                }
            };
            for step in 0..steps {
                let s = span[0] + (span[1] - span[0]) * (step as f64 / steps as f64);
                put(Stand { piece: index, s, stretch: if step == 0 { 1.0 } else { stretched } });
            }
        }
    }
    // The end face stays; a ring too near before it makes way.
    let last = line.pieces.len() - 1;
    while stands.len() > 1 && line.length - stands[stands.len() - 1].s < nearest {
        stands.pop();
    }
    stands.push(Stand { piece: last, s: line.length, stretch: 1.0 });
    stands
}

fn in_bend(piece: &Piece, local: f64, circle: f64, stretch: f64, push: f64) -> Option<InBend> {
    let Shape::Arc { radius, normal, angle, .. } = &piece.shape else { return None };
    let turned = if local >= piece.length { *angle } else { local / radius };
    let (sin, cos) = turn(turned);
    let outward = piece.direction * sin - normal * cos;
    let inner = radius - circle;
    // Pushed-out corners are held back only where they could come near the bend's axis.
    let floor = if inner < 4.0 * circle * (push - 1.0) { inner } else { 0.0 };
    Some(InBend { outward, radius: *radius, stretch, floor })
}

/// The untwisted frame at the start of each piece.
fn frames(line: &Centreline) -> Vec<[Vec3; 2]> {
    let mut frames = Vec::with_capacity(line.pieces.len());
    let mut frame = line.pieces.first().map_or([Vec3::x(), Vec3::y()], |piece| {
        let first = reference_perpendicular(&piece.direction);
        [first, piece.direction.cross(&first)]
    });
    for piece in &line.pieces {
        // What rounding leaves along the direction is taken out piece by piece, so that it never adds up.
        let first = crate::layout::perpendicular(&piece.direction, &frame[0]);
        frame = [first, piece.direction.cross(&first)];
        frames.push(frame);
        frame = carried(&frame, piece, piece.length);
    }
    frames
}

/// The frame carried along a piece: turned with it about the bend's axis, which is what does not twist.
fn carried(frame: &[Vec3; 2], piece: &Piece, local: f64) -> [Vec3; 2] {
    let Shape::Arc { radius, angle, .. } = &piece.shape else { return *frame };
    let Some(axis) = piece.axis() else { return *frame };
    let turned = if local >= piece.length { *angle } else { local / radius };
    frame.map(|direction| crate::layout::rotate(&direction, &axis, turned))
}
