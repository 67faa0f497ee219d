//! From tube to triangles: two skins of rings along the centreline and two flat ends.
//!
//! Every ring's corners stand a little outside its circle, and every ring inside a bend a little outside its place, so
//! that the polyhedron holds the tube's exact volume; what sticks out and what is cut off both stay within the
//! deviation asked for.

mod cap;
mod fineness;
mod refusal;
mod rings;
mod skin;
mod solidity;
mod stretches;
mod volume;

pub use refusal::{Fault, fault};
pub use solidity::{Flaw, is_solid, signed_volume, solidity};

use crate::centreline::{Centreline, Frames};
use crate::design::Run;
use crate::tube::{Profile, rounding};
use fineness::{Fineness, Skin};
use stretches::{Part, stretches};

/// A triangle mesh, mm, outward normals by the right-hand rule, closed.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Mesh {
    /// x, y, z of each vertex; a shared corner is stored once.
    pub positions: Vec<f32>,
    /// Three vertex indices a triangle, counter-clockwise seen from outside.
    pub indices: Vec<u32>,
}

impl Mesh {
    /// The mesh with every coordinate multiplied by `times`.
    pub fn scaled(mut self, times: f64) -> Self {
        if times != 1.0 {
            self.positions.iter_mut().for_each(|x| *x = (f64::from(*x) * times) as f32);
        }
        self
    }

    /// The mesh moved by so much along x, y and z, mm.
    pub fn moved(mut self, by: [f64; 3]) -> Self {
        for point in self.positions.as_chunks_mut::<3>().0 {
            *point = [0, 1, 2].map(|axis| (f64::from(point[axis]) + by[axis]) as f32);
        }
        self
    }

    /// The lowest and the highest of each coordinate, mm; infinite, and low above high, for a mesh without corners.
    pub fn extremes(&self) -> [[f64; 3]; 2] {
        let ends = [[f64::INFINITY; 3], [f64::NEG_INFINITY; 3]];
        self.positions.as_chunks::<3>().0.iter().fold(ends, |[low, high], point| {
            let point = point.map(f64::from);
            [
                core::array::from_fn(|axis| low[axis].min(point[axis])),
                core::array::from_fn(|axis| high[axis].max(point[axis])),
            ]
        })
    }
}

/// Most triangles of one run's mesh: above it, the deviation asked for is too fine for the tube's length.
const MOST_TRIANGLES: usize = 8_000_000;

/// Share of what is allowed that a wavy skin may use by the formulas, which hold to the second order: the rest is for the
/// third, and for flanks that lean.
const WAVY: f64 = 0.95;

/// The mesh of a run, or of a piece of it, of that profile along the run's centreline, as far as the profile goes. No point of it is farther than `deviation` mm (0.001 to 1)
/// from the exact skin, nor the skin from it.
///
/// # Errors
/// A [`Fault`] where the tube would cross itself inside a bend, has no wall somewhere, lies so far from the datum
/// that 32-bit coordinates cannot hold the deviation, or would take over eight million triangles.
pub fn run_mesh(run: &Run, profile: &Profile, line: &Centreline, deviation: f64) -> Result<Mesh, Fault> {
    if let Some(fault) = fault(run, profile, line) {
        return Err(fault);
    }
    let reach = line.reach() + profile.largest_outer();
    // A coarse mesh must not let the skins touch, so a thin wall bounds the deviation as well.
    let asked = deviation.min(profile.tip_wall() / 4.0).min(profile.least_wall().wall / 4.0);
    let allowed = asked * 0.99 - 0.9 * f64::from(rounding(reach));
    if allowed < asked / 2.0 {
        return Err(Fault::far(reach, asked));
    }
    let frames = Frames::of(line);
    let outer = Plan::of(line, Skin::of(&profile.outer, profile.lobes.as_ref()), allowed);
    let bore = Plan::of(line, Skin::of(&profile.bore, profile.bore_lobes.as_ref()), allowed);
    let triangles = outer.triangles() + bore.triangles();
    if triangles > MOST_TRIANGLES {
        return Err(Fault::fine(deviation, triangles));
    }
    let mut mesh =
        Mesh { positions: Vec::with_capacity(3 * triangles / 2 + 3), indices: Vec::with_capacity(3 * triangles) };
    let outer = outer.sew(&mut mesh, line, &frames, reach, skin::Side::Outer);
    let bore = bore.sew(&mut mesh, line, &frames, reach, skin::Side::Bore);
    cap::close(&mut mesh, [outer[0], bore[0]], cap::Faces::Back);
    cap::close(&mut mesh, [outer[1], bore[1]], cap::Faces::Forward);
    Ok(mesh)
}

/// A skin, cut into stretches, and how fine it is to be.
struct Plan<'a> {
    skin: Skin<'a>,
    stretches: Vec<Vec<Part>>,
    fineness: Fineness,
}

impl<'a> Plan<'a> {
    fn of(line: &Centreline, skin: Skin<'a>, allowed: f64) -> Self {
        let allowed = allowed * if skin.lobes.is_some() { WAVY } else { 1.0 };
        let stretches = stretches(line, &skin);
        let fineness = fineness::choose(line, &skin, &stretches, allowed);
        Self { skin, stretches, fineness }
    }

    /// At most how many triangles it takes with its part of the end faces.
    fn triangles(&self) -> usize {
        2 * self.fineness.around * (self.fineness.steps.iter().sum::<usize>() + 1)
    }

    /// Adds the skin, and gives first index and number of corners of its first and of its last edge.
    fn sew(
        &self,
        mesh: &mut Mesh,
        line: &Centreline,
        frames: &Frames<'_>,
        reach: f64,
        side: skin::Side,
    ) -> [(u32, usize); 2] {
        let rings = rings::along(line, frames, &self.skin, &self.stretches, &self.fineness, reach);
        let around = self.fineness.around;
        let lobes = self.skin.lobes;
        let seam = skin::Seam {
            around,
            count: lobes.map_or(0, |lobes| lobes.count),
            turned: lobes.is_some_and(|lobes| lobes.twist < 0.0),
            side,
        };
        let first = skin::sew(mesh, &rings, &seam);
        [(first, around), (first + (around * (rings.len() - 1)) as u32, around)]
    }
}
