//! The sticks of a coupon: which end has which size, how long they are, and their skins.

use crate::centreline::{Centreline, Piece, Shape};
use crate::design::{Ends, Run};
use crate::layout::Vec3;
use crate::mesh::{Fault, Mesh, run_mesh};
use crate::tube::{LEAST_TIP_WALL, Profile, StickEnd, groove};

/// Fewest and most sizes of a ladder.
pub const COUNT: [u32; 2] = [3, 15];
/// Least and most step of a ladder, mm.
pub const STEP: [f64; 2] = [0.01, 0.25];

/// Width of a ring, and of the plain tube between two, mm: apart enough for a fingernail.
pub const RING: f64 = 0.8;
/// Rings stand in groups of so many, with room for one more ring between groups.
const GROUP: u32 = 5;
/// Plain tube between the fitting's mouth and the first ring, mm.
const CLEAR: f64 = 2.0;
/// Least plain tube in the middle of a stick, mm.
const GRIP: f64 = 10.0;
/// Sticks are so many whole mm long, so that their length is easy to remember.
const WHOLE: f64 = 5.0;
/// Room between sticks as they stand, mm.
const APART: f64 = 6.0;

/// The sizes of a coupon: an odd number of them, so that the stated size is in the middle.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ladder {
    /// How many sizes, odd, 3 to 15.
    pub count: u32,
    /// From one to the next, mm on the diameter, 0.01 to 0.25.
    pub step: f64,
}

/// A coupon.
#[derive(Debug, Clone, PartialEq)]
pub struct Coupon {
    /// Its sticks, the thinnest first.
    pub sticks: Vec<Stick>,
    /// Length of every stick, mm.
    pub length: f64,
    /// Where the first ring begins, from an end, mm.
    rings_from: f64,
    /// How deep rings are scribed, mm; negative where they stand out.
    depth: f64,
    /// How the ends are finished.
    ends: Ends,
}

/// A short straight tube with two ends of different sizes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stick {
    /// Its ends: the one at the bottom as it stands, and the other.
    pub ends: [CouponEnd; 2],
}

/// One end of a stick.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CouponEnd {
    /// How many rings it has; also its place in the ladder, from 1.
    pub rings: u32,
    /// Outer diameter, mm.
    pub outer: f64,
    /// Bore, mm.
    pub bore: f64,
}

/// Why there is no coupon.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CouponFault {
    /// The thinnest bore of the ladder would not be above zero, mm.
    NoBore {
        /// What it would be.
        bore: f64,
    },
    /// Chamfer and edge break leave no wall at the tip, mm.
    NoWall {
        /// What they leave.
        wall: f64,
    },
}

impl Default for Ladder {
    fn default() -> Self {
        Self { count: 7, step: 0.05 }
    }
}

impl Coupon {
    /// The coupon of a run's tube for a socket that takes `inside` mm of it. An even number of ends is needed and the ladder
    /// is odd: the last stick's far end is one more of the stated size.
    ///
    /// # Errors
    /// [`CouponFault`].
    pub fn of(run: &Run, inside: f64, least_wall: f64, ladder: Ladder) -> Result<Self, CouponFault> {
        let (outer, bore) = (run.tube.outer_diameter, run.tube.bore);
        let middle = ladder.count.div_ceil(2);
        let end = |rings: u32| {
            let off = (f64::from(rings) - f64::from(middle)) * ladder.step;
            // Sizes are told: no digits beyond a millionth of a millimetre.
            let told = |size: f64| libm::round((size + off) * 1e6) / 1e6;
            CouponEnd { rings, outer: told(outer), bore: told(bore) }
        };
        let least = end(1).bore;
        if least < 4.0 * LEAST_TIP_WALL {
            return Err(CouponFault::NoBore { bore: least });
        }
        let all: Vec<CouponEnd> = (1..=ladder.count).chain([middle]).map(end).collect();
        let sticks = all.as_chunks::<2>().0.iter().map(|ends| Stick { ends: *ends }).collect();
        let rings_from = inside.max(run.ends.chamfer_length).max(run.ends.edge_break) + CLEAR;
        let length = 2.0 * (rings_from + ring_places(ladder.count).last().map_or(0.0, |last| last + RING)) + GRIP;
        let length = libm::ceil(length / WHOLE) * WHOLE;
        let depth = groove((outer - bore) / 2.0, least_wall);
        let coupon = Self { sticks, length, rings_from, depth, ends: run.ends.clone() };
        let tip = coupon.profile(&coupon.sticks[0]).tip_wall();
        if tip < LEAST_TIP_WALL {
            return Err(CouponFault::NoWall { wall: tip });
        }
        Ok(coupon)
    }

    /// The skins of a stick.
    pub fn profile(&self, stick: &Stick) -> Profile {
        let end = |end: &CouponEnd| StickEnd {
            outer: end.outer / 2.0,
            bore: end.bore / 2.0,
            rings: ring_places(end.rings).into_iter().map(|at| self.rings_from + at).collect(),
            ring_width: RING,
            ring_depth: self.depth,
        };
        Profile::of_stick(&self.ends, stick.ends.each_ref().map(end), self.length)
    }

    /// The solid of each stick, standing in a row with its axis along z.
    ///
    /// # Errors
    /// As [`run_mesh`].
    pub fn meshes(&self, run: &Run, deviation: f64) -> Result<Vec<Mesh>, Fault> {
        let widest = self.sticks.iter().flat_map(|stick| stick.ends).map(|end| end.outer).fold(0.0, f64::max) + RING;
        let stand = |(index, stick): (usize, &Stick)| {
            let start = Vec3::new(widest / 2.0 + index as f64 * (widest + APART), widest / 2.0, 0.0);
            let piece = Piece { from: 0.0, length: self.length, start, direction: Vec3::z(), shape: Shape::Straight };
            let line = Centreline { pieces: vec![piece], length: self.length };
            run_mesh(run, &self.profile(stick), &line, deviation)
        };
        self.sticks.iter().enumerate().map(stand).collect()
    }
}

/// Where each of `count` rings begins, from the first, mm.
fn ring_places(count: u32) -> Vec<f64> {
    (0..count).map(|ring| f64::from(ring + ring / GROUP) * 2.0 * RING).collect()
}
