//! The sizes of one joint. Where the design does not state them they are common practice, no source.

use crate::design::{JointSizes, Printer};
use crate::tube::marks::ring_depth;
use crate::tube::rounding;
use crate::tube::stick::groove;

/// Length of a step in a section, mm: a cone as steep as a printed edge is sharp; longer far from the datum.
const STEP: f64 = 0.05;
/// The same in spacings of 32-bit floats, so that a mesh has room for its rings.
const STEP_SPACINGS: f64 = 128.0;
/// Lead-in at the spigot's tip and at the socket's mouth, mm, at 45 degrees.
const LEAD_IN: f64 = 0.5;
/// Depth of the ring at the spigot's tip that keeps surplus adhesive from the bore, mm; flanks at 45 degrees.
const CATCH: f64 = 0.3;
/// Plain spigot between its tip's lead-in and that ring, mm.
const BEFORE_CATCH: f64 = 0.3;
/// Narrowest such ring worth having, mm deep.
const LEAST_CATCH: f64 = 0.05;
/// Width of a narrow mark, mm; of a wide one twice that. A wide one counts five.
pub const MARK: f64 = 0.6;
/// Plain tube beside each mark, mm.
const BESIDE: f64 = 0.6;
const WIDE_COUNTS: u32 = 5;
/// A key this shallow is none, mm.
const LEAST_KEY: f64 = 0.01;
/// Length of a 45 degree corner over the wall that it leaves beside it: sqrt(2) - 1, rounded up.
const CORNER: f64 = 0.42;

/// The sizes of a joint, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointSize {
    /// Outer radius of the tube there.
    pub outer: f64,
    /// Bore radius of the tube.
    pub bore: f64,
    /// Length of the spigot.
    pub length: f64,
    /// Gap for the adhesive.
    pub clearance: f64,
    /// How far the key stands out; 0 for none.
    pub key: f64,
    /// Wall of the socket over the key, where it is thinnest.
    pub wall: f64,
    /// Length of a step in the sections.
    pub step: f64,
    /// Length, and drop, of the spigot's lead-in.
    pub tip: f64,
    /// Length, and rise, of the socket's.
    pub lead_in: f64,
    /// Depth of the ring that catches adhesive; none where the spigot is too thin or too short for it.
    pub catch: Option<f64>,
    /// Depth of the marks on the tube and on the collar; below zero where they stand out.
    pub marks: [f64; 2],
}

impl JointSize {
    /// On a tube of those radii that reaches `reach` mm from the datum.
    pub(super) fn of(stated: &JointSizes, printer: &Printer, [outer, bore]: [f64; 2], reach: f64) -> Self {
        let tube_wall = outer - bore;
        let wall = stated.wall.max(tube_wall).max(printer.least_wall);
        // More than half of the radius would leave a heart rather than a ring.
        let key = Some(stated.key_depth.min(outer / 2.0)).filter(|key| *key >= LEAST_KEY).unwrap_or(0.0);
        let length = stated.length;
        let tip = LEAD_IN.min(tube_wall / 4.0).min(length / 8.0);
        let room = length - key.min(length / 4.0) - tip - BEFORE_CATCH - LEAST_CATCH;
        let catch = ring_depth(CATCH, tube_wall, printer.least_wall).min(room / 4.0);
        Self {
            outer,
            bore,
            length,
            clearance: stated.clearance,
            key,
            wall,
            step: STEP.max(STEP_SPACINGS * f64::from(rounding(reach))),
            tip,
            lead_in: LEAD_IN.min(wall / 4.0).min(length / 8.0),
            catch: Some(catch).filter(|catch| *catch >= LEAST_CATCH),
            marks: [groove(tube_wall, printer.least_wall), groove(wall, printer.least_wall)],
        }
    }

    /// Length over which the key rises, mm.
    pub fn ramp(&self) -> f64 {
        self.key.min(self.length / 4.0)
    }

    /// Radius inside the socket, over the key's crest, mm.
    pub fn socket(&self) -> f64 {
        self.outer + self.key + self.clearance
    }

    /// Outer radius of the collar, mm.
    pub fn collar(&self) -> f64 {
        self.socket() + self.wall
    }

    /// From the seam to where the socket's floor is over, mm.
    pub fn floor(&self) -> f64 {
        self.clearance + self.step
    }

    /// From the seam back to the first mark on the tube before it, mm.
    pub fn before(&self, number: u32) -> f64 {
        self.length + self.step + BESIDE + marks_length(number)
    }

    /// From the seam on to where the collar's cone ends, mm.
    pub fn after(&self, number: u32) -> f64 {
        self.collar_end(number) + self.collar() - self.outer
    }

    /// From the seam to where the collar's cone begins, mm: far enough that the floor's corner has the whole wall about
    /// it, and that the marks have room.
    pub(super) fn collar_end(&self, number: u32) -> f64 {
        (self.floor() + CORNER * self.wall).max(2.0 * BESIDE + marks_length(number) - self.length)
    }

    /// The ring that catches adhesive: how far back from the seam it begins, is deepest and ends, and its depth, mm.
    pub(super) fn catch_ring(&self) -> Option<([f64; 3], f64)> {
        let depth = self.catch?;
        let end = self.tip + BEFORE_CATCH;
        Some(([end + 2.0 * depth, end + depth, end], depth))
    }

    /// Where the collar's marks begin, from the mouth on, mm.
    pub(super) fn first_mark(&self) -> f64 {
        BESIDE
    }
}

/// The marks of a joint: where each begins, from the first, and its width, mm. Wide ones first.
pub(super) fn marks(number: u32) -> Vec<[f64; 2]> {
    let (wide, narrow) = (number / WIDE_COUNTS, number % WIDE_COUNTS);
    let widths = (0..wide).map(|_| 2.0 * MARK).chain((0..narrow).map(|_| MARK));
    let mut from = 0.0;
    widths
        .map(|width| {
            let mark = [from, width];
            from += width + BESIDE;
            mark
        })
        .collect()
}

fn marks_length(number: u32) -> f64 {
    marks(number).iter().map(|[_, width]| width + BESIDE).sum()
}
