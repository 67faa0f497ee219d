//! Where along a run a joint has room.
//!
//! Outside the sealing bands and the leads; where the skin is plain, round and of one size for as long as the joint is;
//! where no bend is so tight that the collar would cross itself; and where the spigot can slide into the socket. A straight,
//! an arc and a coil of steady radius slide along themselves. Any other curve is off itself, slid by the spigot's length, by no more than
//! its change of curvature over that length times its square over 8 (the sagitta of a chord, to the second order), which
//! may take half of the glue gap.

use super::places::Places;
use super::size::JointSize;
use super::{BEYOND_SOCKET, Joint, square_to_bend};
use crate::centreline::{Centreline, Form, Frames, Piece, Shape};
use crate::design::{Design, JointSizes, Printer};
use crate::layout::{PlacedRun, Vec3};
use crate::tube::{Profile, Section, least_inner_radius};

/// Looks along one spigot at a curve that does not slide along itself.
const LOOKS: u32 = 8;
/// Places at most that are tried along such a curve.
const MOST_TRIED: usize = 2_000;
/// Places for it within a spigot's length.
const TRIED_A_LENGTH: f64 = 8.0;

/// The room for joints along a run.
pub struct JointRoom<'a> {
    stated: &'a JointSizes,
    printer: &'a Printer,
    line: &'a Centreline,
    /// Parts with a skin of one size, by its radii.
    plain: Vec<([f64; 2], [f64; 2])>,
    /// Places of the seam where the spigot can slide home, whatever the skin.
    sliding: Places,
    reach: f64,
}

impl<'a> JointRoom<'a> {
    /// Of a run whose skins without cuts are `profile`.
    pub fn of(design: &'a Design, placed: &PlacedRun, line: &'a Centreline, profile: &Profile) -> Self {
        let stated = &design.process.joint;
        let bound = |pose: &crate::layout::EndPose| pose.straight.max(pose.inside + BEYOND_SOCKET);
        let within = [bound(&placed.start), line.length - bound(&placed.end)];
        let plain = plain_parts(profile).into_iter().filter_map(|([from, to], radii)| {
            let part = [from.max(within[0]), to.min(within[1])];
            (part[0] < part[1]).then_some((part, radii))
        });
        let reach = line.reach() + profile.largest_outer();
        let mut room = Self {
            stated,
            printer: &design.process.printer,
            line,
            plain: plain.collect(),
            sliding: Places::default(),
            reach,
        };
        room.sliding = room.sliding();
        room
    }

    /// The joint at a seam, the `number`th, beginning after `taken`; none where it has no room.
    pub fn joint(&self, cut: usize, number: u32, at: f64, taken: f64) -> Option<Joint> {
        self.parts(number).find_map(|(size, places)| {
            let from = taken + size.before(number);
            places.from(from).holds(at).then(|| Joint {
                cut,
                number,
                at,
                size,
                key_angle: square_to_bend(self.line, at - size.length / 2.0),
            })
        })
    }

    /// The place of a seam nearest to another that has room after `taken`, mm.
    pub fn nearest(&self, number: u32, at: f64, taken: f64) -> Option<f64> {
        let near = self.parts(number).filter_map(|(size, places)| places.from(taken + size.before(number)).nearest(at));
        near.min_by(|a, b| (a - at).abs().total_cmp(&(b - at).abs()))
    }

    /// The places of the seam of the `number`th joint that have room after `taken`, with its sizes there; ascending.
    pub fn places(&self, number: u32, taken: f64) -> Vec<([f64; 2], JointSize)> {
        let of = |(size, places): (JointSize, Places)| {
            places.from(taken + size.before(number)).0.into_iter().map(move |span| (span, size))
        };
        self.parts(number).flat_map(of).collect()
    }

    /// By each part of one size: the joint's sizes, and the seam's places.
    fn parts(&self, number: u32) -> impl Iterator<Item = (JointSize, Places)> + '_ {
        self.plain.iter().filter_map(move |(part, radii)| {
            let size = JointSize::of(self.stated, self.printer, *radii, self.reach);
            let fits = [part[0] + size.before(number), part[1] - size.after(number)];
            if fits[0] > fits[1] {
                return None;
            }
            let least = size.collar() + least_inner_radius(self.reach + size.collar());
            let tight = self.line.pieces.iter().filter(|piece| piece.radius().is_some_and(|radius| radius < least));
            let places = tight.fold(Places(vec![fits]).and(&self.sliding), |places, piece| {
                places.without([piece.from - size.after(number), piece.to() + size.length + size.step])
            });
            Some((size, places))
        })
    }

    /// Where the spigot slides home. It reaches back by its length, and the socket's floor on by its gap.
    fn sliding(&self) -> Places {
        let size = JointSize::of(self.stated, self.printer, [1.0, 0.5], self.reach);
        let (back, on) = (size.length, size.floor());
        let mut found = Vec::new();
        for stretch in stretches(&self.line.pieces) {
            let (Some(first), Some(last)) = (stretch.first(), stretch.last()) else { continue };
            let seam = [first.from + back, last.to() - on];
            if seam[0] > seam[1] {
                continue;
            }
            if slides(first) {
                found.push(seam);
            } else {
                found.extend(self.nearly_sliding(seam, [back, on]));
            }
        }
        Places(found).tidied()
    }

    fn nearly_sliding(&self, [from, to]: [f64; 2], [back, on]: [f64; 2]) -> Vec<[f64; 2]> {
        let frames = Frames::of(self.line);
        let steps = (((to - from) / back * TRIED_A_LENGTH).ceil() as usize).clamp(1, MOST_TRIED);
        let place = |step: usize| from + (to - from) * step as f64 / steps as f64;
        let most = self.stated.clearance / 2.0 * 8.0 / (back * back);
        let holds = |step: usize| {
            let at = place(step);
            let bends: Vec<[f64; 2]> = (0..=LOOKS)
                .map(|look| self.bend(&frames, at - back + (back + on) * f64::from(look) / f64::from(LOOKS)))
                .collect();
            let apart = |a: &[f64; 2], b: &[f64; 2]| libm::hypot(a[0] - b[0], a[1] - b[1]);
            bends.iter().all(|a| bends.iter().all(|b| apart(a, b) <= most))
        };
        let held: Vec<bool> = (0..=steps).map(holds).collect();
        (0..steps).filter(|step| held[*step] && held[step + 1]).map(|step| [place(step), place(step + 1)]).collect()
    }

    /// The curvature at an arc length, along the untwisted frame.
    fn bend(&self, frames: &Frames<'_>, s: f64) -> [f64; 2] {
        let last = self.line.pieces.len() - 1;
        let piece = self.line.pieces.partition_point(|piece| piece.to() < s).min(last);
        let on = &self.line.pieces[piece];
        let there = on.at(s - on.from);
        frames.at(piece, s - on.from, &there).map(|across: Vec3| across.dot(&there.curvature))
    }
}

/// Pieces that follow each other as one curve.
fn stretches(pieces: &[Piece]) -> Vec<&[Piece]> {
    let whole = |piece: &Piece| match &piece.shape {
        Shape::Curve(curve) => Some((curve.whole, matches!(curve.form, Form::Helix(_)))),
        _ => None,
    };
    pieces.chunk_by(|a, b| whole(a).is_some() && whole(a) == whole(b)).collect()
}

/// Whether a curve that begins with that piece slides along itself.
fn slides(piece: &Piece) -> bool {
    match &piece.shape {
        Shape::Straight | Shape::Arc { .. } => true,
        Shape::Curve(curve) => matches!(&curve.form, Form::Helix(coil) if coil.widening == 0.0),
    }
}

/// The parts of a tube along which both radii stay and there are no grooves, with those radii.
fn plain_parts(profile: &Profile) -> Vec<([f64; 2], [f64; 2])> {
    let halves = profile.lobes.iter().map(|lobes| &lobes.half);
    let breaks = Section::breaks_of([&profile.outer, &profile.bore].into_iter().chain(halves));
    let radii = |s: f64| [profile.outer.radius(s), profile.bore.radius(s)];
    let mut parts: Vec<([f64; 2], [f64; 2])> = Vec::new();
    for pair in breaks.windows(2) {
        let grooved = profile.lobes.as_ref().is_some_and(|lobes| lobes.half.largest_between(pair[0], pair[1]) > 0.0);
        if grooved || radii(pair[0]) != radii(pair[1]) {
            continue;
        }
        match parts.last_mut() {
            Some((part, same)) if part[1] == pair[0] && *same == radii(pair[0]) => part[1] = pair[1],
            _ => parts.push(([pair[0], pair[1]], radii(pair[0]))),
        }
    }
    parts
}
