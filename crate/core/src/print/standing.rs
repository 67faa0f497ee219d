//! A stance with everything that is told of it.

use super::frame::Frame;
use super::judge::{Figures, Judge, share_within};
use super::pools::Basin;
use super::supports;
use crate::centreline::{Bounds, Centreline};
use crate::design::Printer;
use crate::layout::Vec3;
use crate::mesh::Mesh;
use crate::tube::Profile;
use core::f64::consts::FRAC_PI_4;

/// A tube as it stands on the plate.
#[derive(Debug, Clone, PartialEq)]
pub struct Standing {
    /// The plate's axes in the datum.
    pub frame: Frame,
    /// What it comes to; slack and height of the exact skin, lobes as they stand.
    pub figures: Figures,
    /// Added to a point in the plate's axes, so that the tube is lifted and in the middle, mm.
    pub moved: Vec3,
    /// The exact box of its skin on the plate, mm: x and y from the build volume's corner, z from the plate.
    pub bounds: Bounds,
    /// Low points towards the plate that are deeper than the bore, so that they close it.
    pub cups: Vec<Pocket>,
    /// Low points as it hangs, deeper than the bore.
    pub pools: Vec<Pocket>,
    /// Parts of the bore that are flatter than they may be.
    pub flats: Vec<FlatSpan>,
    /// Parts of the bore whose ceiling is wider than the printer's longest bridge.
    pub bridges: Vec<FlatSpan>,
    /// Length of the sealing bands at the start and at the end that needs support, mm.
    pub bands: [f64; 2],
    /// Which ends' faces lie flat and lowest.
    pub footing: [bool; 2],
    /// Volume of its supports at least and at most, mm3; none where the printer does not say what needs support.
    pub supports: Option<[f64; 2]>,
}

/// A part of the bore that holds liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pocket {
    /// Arc lengths between which the bore's wall lies beyond the sill, mm.
    pub span: [f64; 2],
    /// The axis at its deepest place, in the datum.
    pub at: Vec3,
    /// How deep it is there from the sill to the wall, mm.
    pub depth: f64,
    /// What it holds, mm3.
    pub volume: f64,
}

/// A part of the bore that is flatter than it may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlatSpan {
    /// Arc lengths, mm.
    pub span: [f64; 2],
    /// Its flattest angle from level, radians.
    pub flattest: f64,
}

impl Standing {
    /// A stance of a tube in full; `turned` in the frame is kept.
    pub fn of(judge: &Judge, line: &Centreline, profile: &Profile, frame: Frame) -> Self {
        let skin = profile.outer_box(line, &frame.rows);
        let size = skin.max - skin.min;
        let room = &judge.room;
        let slack = room.slack([size.x, size.y, size.z]);
        let up = frame.up();
        let figures = Figures { height: size.z, ..judge.figures(&up, (frame.turned(), slack)) };
        let middle = (skin.min + skin.max) / 2.0;
        let moved = Vec3::new(room.volume[0] / 2.0 - middle.x, room.volume[1] / 2.0 - middle.y, room.lift - skin.min.z);
        let footing = judge.footing(&up);
        let basin = judge.basin(&up, footing);
        let held = |basin: &Basin<'_>| -> Vec<Pocket> {
            if !judge.rules.is_resin() {
                return Vec::new();
            }
            let bore = judge.body.bore;
            let deep = basin.pools().into_iter().filter(|pool| pool.depth > bore);
            deep.map(|pool| Pocket {
                span: pool.span,
                at: line.at(pool.at).point,
                depth: pool.depth,
                volume: FRAC_PI_4 * bore * bore * pool.filled,
            })
            .collect()
        };
        Self {
            frame,
            figures,
            moved,
            bounds: Bounds { min: skin.min + moved, max: skin.max + moved },
            cups: held(&basin),
            pools: held(&basin.turned_over()),
            flats: judge.rules.bore.map_or(Vec::new(), |sine| flats(judge, &up, sine)),
            bridges: judge.rules.least_slope(judge.body.bore).map_or(Vec::new(), |sine| flats(judge, &up, sine)),
            bands: bands(judge, &up),
            footing,
            supports: supports::volume(judge, &up, |point| frame.seen(point).z + moved.z),
        }
    }

    /// Whether it fits the room.
    pub fn fits(&self) -> bool {
        self.figures.fits()
    }

    /// Layers of its height; none where the printer states no layer.
    pub fn layers(&self, printer: &Printer) -> Option<f64> {
        printer.layer_mm.map(|layer| (self.figures.height / layer).ceil())
    }

    /// Hours that its layers take; none where the printer does not say.
    pub fn hours(&self, printer: &Printer) -> Option<f64> {
        self.layers(printer).zip(printer.seconds_per_layer).map(|(layers, seconds)| layers * seconds / 3600.0)
    }

    /// The same with the middle of its box over another place of the plate, turned by a right angle about z if asked.
    pub fn laid(mut self, middle: [f64; 2], turned: bool) -> Self {
        if turned {
            let [x, y, z] = self.frame.rows;
            self.frame = Frame { rows: [-y, x, z] };
            let around = |at: Vec3| Vec3::new(-at.y, at.x, at.z);
            self.moved = around(self.moved);
            let [a, b] = [around(self.bounds.min), around(self.bounds.max)];
            self.bounds = Bounds { min: Vec3::new(b.x, a.y, a.z), max: Vec3::new(a.x, b.y, b.z) };
            self.figures.turned = self.frame.turned();
        }
        let now = (self.bounds.min + self.bounds.max) / 2.0;
        let by = Vec3::new(middle[0] - now.x, middle[1] - now.y, 0.0);
        self.moved += by;
        self.bounds = Bounds { min: self.bounds.min + by, max: self.bounds.max + by };
        self
    }

    /// A mesh of the datum on the plate; corners that were shared stay shared.
    pub fn mesh(&self, mesh: &Mesh) -> Mesh {
        let placed = mesh.positions.chunks_exact(3).flat_map(|at| {
            let place = self.place(&Vec3::new(f64::from(at[0]), f64::from(at[1]), f64::from(at[2])));
            [place.x as f32, place.y as f32, place.z as f32]
        });
        Mesh { positions: placed.collect(), indices: mesh.indices.clone() }
    }

    /// A point of the datum on the plate.
    pub fn place(&self, point: &Vec3) -> Vec3 {
        self.frame.seen(point) + self.moved
    }
}

fn bands(judge: &Judge, up: &Vec3) -> [f64; 2] {
    let mut bands = [0.0; 2];
    let Some(cosine) = judge.rules.overhang else { return bands };
    for (disc, stretch) in judge.body.discs.iter().zip(&judge.body.stretches) {
        if stretch.sealing && super::skin::support(stretch, up, cosine) > 0.0 {
            bands[usize::from(disc.s >= judge.body.length / 2.0)] += stretch.length;
        }
    }
    bands
}

/// Spans of the bore whose angle from level has a sine below a limit, the slope taken to change evenly within a stretch.
fn flats(judge: &Judge, up: &Vec3, sine: f64) -> Vec<FlatSpan> {
    let mut spans: Vec<FlatSpan> = Vec::new();
    for pair in judge.body.discs.windows(2) {
        let slopes = [pair[0].tangent.dot(up), pair[1].tangent.dot(up)];
        let share = share_within(slopes, sine);
        if share <= 0.0 {
            continue;
        }
        let long = pair[1].s - pair[0].s;
        // What is left out lies at the steeper end; where both are too steep, the middle is flat.
        let steep = slopes.map(|slope| slope.abs() >= sine);
        let span = match steep {
            [true, false] => [pair[1].s - share * long, pair[1].s],
            [false, true] => [pair[0].s, pair[0].s + share * long],
            [false, false] => [pair[0].s, pair[1].s],
            [true, true] => [pair[0].s + (1.0 - share) / 2.0 * long, pair[1].s - (1.0 - share) / 2.0 * long],
        };
        let crosses = (slopes[0] > 0.0) != (slopes[1] > 0.0);
        let least = if crosses { 0.0 } else { slopes[0].abs().min(slopes[1].abs()) };
        let flattest = libm::asin(least.min(1.0));
        match spans.last_mut() {
            Some(last) if span[0] - last.span[1] < 1e-9 => {
                last.span[1] = span[1];
                last.flattest = last.flattest.min(flattest);
            }
            _ => spans.push(FlatSpan { span, flattest }),
        }
    }
    spans
}
