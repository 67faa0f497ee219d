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
    /// Curvature of the centreline just before it and just after; none beyond the tube's ends.
    pub bends: [Vec3; 2],
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

    /// How fast its reach changes along the tube, on the side of a bend, per mm.
    fn reach_changes(&self, direction: &Vec3, bend: &Vec3) -> f64 {
        let along = self.tangent.dot(direction);
        let across = (1.0 - along * along).max(0.0).sqrt();
        if across > 0.0 { along * (1.0 - self.radius * bend.dot(direction) / across) } else { along }
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
        let (mut discs, mut stretches): (Vec<Disc>, _) = (Vec::new(), Vec::new());
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
            if let Some(before) = discs.last_mut() {
                before.bends[1] = piece.at(0.0).curvature;
            }
            for (index, s) in cuts.iter().enumerate() {
                if index > 0 || discs.is_empty() {
                    let there = piece.at(s - piece.from);
                    let [radius, bore] = [&profile.outer, &profile.bore].map(|section| section.radius(*s));
                    let bends = [there.curvature; 2];
                    discs.push(Disc { s: *s, point: there.point, tangent: there.tangent, radius, bore, bends });
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
        if let [first, .., last] = &mut discs[..] {
            (first.bends[0], last.bends[1]) = (Vec3::zeros(), Vec3::zeros());
        }
        let skin = stretches.iter().map(|stretch| 2.0 * PI * stretch.radius * stretch.length).sum();
        let rim = rim(&discs, fineness.rim_looks);
        Self { discs, stretches, rim, length, bore, skin, bands }
    }

    /// How far it reaches along a unit direction, mm.
    pub fn reach(&self, direction: &Vec3) -> f64 {
        extent(&self.rim, direction)[1]
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

/// From where to where a tube of these discs, in order, reaches along a unit direction, mm. Between two discs of a bend that
/// lean to the two sides of the direction it bulges beyond both: as far as the cubic with their reaches and slopes does,
/// which is within theta^4 / 384 of the bend's radius where they are theta apart.
pub(super) fn extent(discs: &[Disc], direction: &Vec3) -> [f64; 2] {
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    let mut before: Option<(&Disc, f64)> = None;
    for disc in discs {
        let along = disc.tangent.dot(direction);
        let (middle, half) = (disc.point.dot(direction), disc.radius * (1.0 - along * along).max(0.0).sqrt());
        low = low.min(middle - half);
        high = high.max(middle + half);
        match before {
            Some((other, leant)) if leant > 0.0 && along < 0.0 => high = high.max(bulge(other, disc, direction)),
            Some((other, leant)) if leant < 0.0 && along > 0.0 => low = low.min(-bulge(other, disc, &-direction)),
            _ => {}
        }
        before = Some((disc, along));
    }
    [low, high]
}

/// Discs of a rim that are farther apart than this on their bend are not of one bend, radians.
const OF_ONE_BEND: f64 = 0.8;

/// How far a bend reaches between two discs of it that lean to the two sides of a direction, mm; not at all for discs that
/// are not of one bend.
fn bulge(from: &Disc, to: &Disc, direction: &Vec3) -> f64 {
    let (long, bends) = (to.s - from.s, [&from.bends[1], &to.bends[0]]);
    let turned = long * bends[0].norm().max(bends[1].norm());
    if turned == 0.0 || turned > OF_ONE_BEND {
        return f64::NEG_INFINITY;
    }
    let start = from.reach(direction);
    let rise = to.reach(direction) - start;
    let [first, last] = [from.reach_changes(direction, bends[0]), to.reach_changes(direction, bends[1])];
    // Of start + a u + b u^2 + c u^3 with u from 0 to 1; a is above zero, and the slope at 1 below.
    let (a, z) = (first * long, last * long);
    let (b, c) = (3.0 * rise - 2.0 * a - z, a + z - 2.0 * rise);
    let top = (a / ((b * b - 3.0 * a * c).max(0.0).sqrt() - b)).clamp(0.0, 1.0);
    start + top * (a + top * (b + top * c))
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

#[cfg(test)]
mod tests {
    use super::super::room::width;
    use super::*;
    use crate::engine::Stages;
    use crate::print::{Frame, Subject};

    /// Against the exact box, in frames all round: bends, a smooth curve, and a coil that opens.
    #[test]
    fn a_tube_is_as_wide_as_its_exact_box() {
        for demo in ["lazy-curve", "loop", "spiral", "right-angle"] {
            let path = format!("{}/../../presets/demos/{demo}.json", env!("CARGO_MANIFEST_DIR"));
            let demo_file: serde_json::Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
            let text = demo_file["design"].to_string();
            let stages = Stages::of(&text).unwrap();
            for run in 0..stages.design.runs.len() {
                let subject = Subject::of(&stages, run).unwrap();
                for (index, up) in spiral(300).enumerate() {
                    let frame = Frame::of(&up, index as f64);
                    let exact = subject.standing(frame).bounds;
                    for (axis, row) in frame.rows.iter().enumerate() {
                        let [sides, found] = [exact.max[axis] - exact.min[axis], width(&subject.judge.body.discs, row)];
                        assert!((found - sides).abs() < 1e-3, "{demo} {run} along {row}: {found}, not {sides}");
                    }
                }
            }
        }
    }
}
