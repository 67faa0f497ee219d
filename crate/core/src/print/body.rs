//! A tube cut into short stretches: what a stance is judged by.

use super::spiral::spiral;
use crate::centreline::Centreline;
use crate::layout::Vec3;
use crate::tube::{Profile, Section};
use core::f64::consts::PI;

/// How finely a tube is cut.
#[derive(Debug, Clone, Copy)]
pub(super) struct Fineness {
    /// Angle that a stretch turns by at most, radians.
    step: f64,
    /// Stretches that bends are cut into at most, beyond one a piece; a tube that turns further is cut more coarsely.
    most_parts: f64,
    /// Directions in which the outermost discs are looked for.
    rim_looks: u32,
}

/// What is told, and the last steps to it.
pub(super) const FINE: Fineness = Fineness { step: PI / 60.0, most_parts: 3_000.0, rim_looks: 300 };
/// The first looks: bends in steps of 10 degrees, good to 0.4 percent of their radius.
pub(super) const ROUGH: Fineness = Fineness { step: PI / 18.0, most_parts: 400.0, rim_looks: 60 };

/// A disc across the centreline.
#[derive(Debug, Clone, Copy)]
pub(super) struct Disc {
    /// Arc length, mm.
    pub s: f64,
    pub point: Vec3,
    pub tangent: Vec3,
    /// Outer radius, mm.
    pub radius: f64,
    /// Radius of the bore, mm.
    pub bore: f64,
}

/// What lies between two discs, by its middle.
#[derive(Debug, Clone, Copy)]
pub(super) struct Stretch {
    pub length: f64,
    pub tangent: Vec3,
    pub curvature: Vec3,
    pub radius: f64,
    /// Radius of the bore, mm.
    pub bore: f64,
    /// Whether it belongs to a sealing band.
    pub sealing: bool,
}

/// The tube.
#[derive(Debug, Clone)]
pub(super) struct Body {
    /// Ends of the stretches, one more than there are stretches.
    pub discs: Vec<Disc>,
    pub stretches: Vec<Stretch>,
    /// The discs that reach farthest in some direction.
    pub rim: Vec<Disc>,
    /// mm.
    pub length: f64,
    /// Bore as it is stated, a diameter, mm.
    pub bore: f64,
    /// Outer skin, mm2.
    pub skin: f64,
    /// Lengths of the sealing bands from the start and from the end, mm.
    pub bands: [f64; 2],
}

impl Disc {
    /// How far it reaches along a unit direction, mm.
    pub fn reach(&self, direction: &Vec3) -> f64 {
        let along = self.tangent.dot(direction);
        self.point.dot(direction) + self.radius * (1.0 - along * along).max(0.0).sqrt()
    }

    /// Its point that reaches farthest.
    pub fn farthest(&self, direction: &Vec3) -> Vec3 {
        let across = direction - self.tangent * self.tangent.dot(direction);
        let norm = across.norm();
        if norm > 1e-12 { self.point + across * (self.radius / norm) } else { self.point }
    }
}

impl Body {
    pub fn of(line: &Centreline, profile: &Profile, bore: f64, bands: [f64; 2], fineness: Fineness) -> Self {
        let length = line.length;
        let bands = bands.map(|band| band.clamp(0.0, length / 2.0));
        let mut breaks = Section::breaks_of([&profile.outer, &profile.bore]);
        breaks.extend([bands[0], length - bands[1]]);
        breaks.sort_by(f64::total_cmp);
        let turned: f64 = line.pieces.iter().map(|piece| piece.turned()).sum();
        let step = fineness.step.max(turned / fineness.most_parts);
        let (mut discs, mut stretches) = (Vec::new(), Vec::new());
        let mut next = 0;
        for piece in &line.pieces {
            let parts = (piece.turned() / step).ceil().max(1.0) as u32;
            let even = (0..parts).map(|part| piece.from + piece.length * f64::from(part) / f64::from(parts));
            while next < breaks.len() && breaks[next] <= piece.from {
                next += 1;
            }
            let first = next;
            while next < breaks.len() && breaks[next] < piece.to() {
                next += 1;
            }
            let mut cuts: Vec<f64> = even.chain(breaks[first..next].iter().copied()).chain([piece.to()]).collect();
            cuts.sort_by(f64::total_cmp);
            cuts.dedup();
            for (index, s) in cuts.iter().enumerate() {
                if index > 0 || discs.is_empty() {
                    let there = piece.at(s - piece.from);
                    let [radius, bore] = [&profile.outer, &profile.bore].map(|section| section.radius(*s));
                    discs.push(Disc { s: *s, point: there.point, tangent: there.tangent, radius, bore });
                }
                let Some(to) = cuts.get(index + 1) else { continue };
                let middle = (s + to) / 2.0;
                let there = piece.at(middle - piece.from);
                stretches.push(Stretch {
                    length: to - s,
                    tangent: there.tangent,
                    curvature: there.curvature,
                    radius: profile.outer.radius(middle),
                    bore: profile.bore.radius(middle),
                    sealing: middle < bands[0] || middle > length - bands[1],
                });
            }
        }
        let skin = stretches.iter().map(|stretch| 2.0 * PI * stretch.radius * stretch.length).sum();
        let rim = rim(&discs, fineness.rim_looks);
        Self { discs, stretches, rim, length, bore, skin, bands }
    }

    /// Farthest distance between two points of it, at most, mm.
    pub fn across(&self) -> f64 {
        let corners =
            self.rim.iter().fold([Vec3::repeat(f64::INFINITY), Vec3::repeat(f64::NEG_INFINITY)], |b, disc| {
                [b[0].inf(&disc.point.add_scalar(-disc.radius)), b[1].sup(&disc.point.add_scalar(disc.radius))]
            });
        (corners[1] - corners[0]).norm()
    }
}

/// The discs that reach farthest in some of many directions, the axes' among them.
fn rim(discs: &[Disc], looks: u32) -> Vec<Disc> {
    let axes = [Vec3::x(), Vec3::y(), Vec3::z()];
    let looks = spiral(looks).chain(axes).chain(axes.map(|axis| -axis));
    let mut kept: Vec<usize> = looks
        .filter_map(|direction| {
            let reaches = discs.iter().map(|disc| disc.reach(&direction)).enumerate();
            reaches.max_by(|a, b| a.1.total_cmp(&b.1)).map(|(index, _)| index)
        })
        .collect();
    kept.extend([0, discs.len().saturating_sub(1)]);
    kept.sort_unstable();
    kept.dedup();
    kept.into_iter().filter_map(|index| discs.get(index).copied()).collect()
}
