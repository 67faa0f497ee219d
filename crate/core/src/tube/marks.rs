//! Rings scribed into the outer skin: where to cut the trim off, and how deep the tube must sit.
//!
//! Sizes are common practice, no source: deep enough to see and feel on a printed tube, too shallow to weaken it.

use super::{Profile, Section, rounding};
use crate::design::{Printer, Run};
use crate::layout::EndPose;

/// Depth of a ring where the wall allows it, mm.
const DEPTH: f64 = 0.2;
/// A ring shallower than this would not show, mm; it is left out.
const LEAST_DEPTH: f64 = 0.05;
/// Share of the wall that a ring must leave.
const KEPT: f64 = 0.5;

/// How deep a ring of `usual` mm may be scribed into a wall, mm: it leaves half of it and what the printer needs. Not above
/// zero where it may not be scribed at all.
pub(super) fn ring_depth(usual: f64, wall: f64, least_wall: f64) -> f64 {
    usual.min(wall - (wall * KEPT).max(least_wall))
}
/// Width of the seating mark over its depth, and of the trim ring, whose flanks stand at 45 degrees.
const SEAT_WIDTH: f64 = 3.0;
const TRIM_WIDTH: f64 = 2.0;
/// The seating mark takes at most this share of the socket, next to the mouth, so that it stays off the seal's band.
const MOST_OF_SOCKET: f64 = 0.25;
/// Nearest that the edge of a ring comes to a break of the skin without being on it, mm.
const GAP: f64 = 0.01;

/// Which rings the outer skin has, at the start and at the end.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Marks {
    /// The ring where the trim is cut off.
    pub trim: [bool; 2],
    /// The ring that vanishes under the collar when the tube is home.
    pub seat: [bool; 2],
}

/// How wide the rings of a plain end are at the skin, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RingWidths {
    /// The seating mark.
    pub seat: f64,
    /// The ring where the trim is cut off.
    pub trim: f64,
}

impl RingWidths {
    /// In a wall of that thickness, on a printer of that least wall, mm.
    pub fn of(wall: f64, least_wall: f64) -> Self {
        let depth = ring_depth(DEPTH, wall, least_wall).max(0.0);
        Self { seat: SEAT_WIDTH * depth, trim: TRIM_WIDTH * depth }
    }
}

/// Scribes the rings that the run asks for and that fit. Each leaves half the wall and what the printer needs; one that
/// would be too shallow, or meet the other or the middle of the tube, is left out.
pub(super) fn scribe(profile: &mut Profile, run: &Run, ends: [&EndPose; 2], printer: &Printer, length: f64) {
    for (end, pose) in ends.into_iter().enumerate() {
        let scribe = Scribe {
            from_end: end == 1,
            length,
            gap: GAP.max(64.0 * f64::from(rounding(pose.end.amax()))),
            least_wall: printer.least_wall,
        };
        let trim = run.ends.trim;
        let mut taken = 0.0;
        if trim > 0.0
            && let Some(depth) = scribe.depth(profile, trim)
        {
            let half = TRIM_WIDTH * depth / 2.0;
            let ring = Ring { from: trim - half, bottom: trim, to: trim + half, depth };
            profile.marks.trim[end] = scribe.put(&mut profile.outer, &ring);
            taken = ring.to;
        }
        if run.ends.seat_mark
            && let Some(depth) = scribe.depth(profile, pose.inside - SEAT_WIDTH * DEPTH)
        {
            let width = SEAT_WIDTH * depth;
            let ring = Ring { from: pose.inside - width, bottom: pose.inside - width / 2.0, to: pose.inside, depth };
            let clear = ring.from >= taken + scribe.gap && width <= MOST_OF_SOCKET * (pose.inside - trim);
            profile.marks.seat[end] = clear && scribe.put(&mut profile.outer, &ring);
        }
    }
}

/// A V-shaped ring, by distances from the end face, mm.
struct Ring {
    from: f64,
    bottom: f64,
    to: f64,
    depth: f64,
}

/// What rings at one end have in common.
struct Scribe {
    from_end: bool,
    length: f64,
    gap: f64,
    least_wall: f64,
}

impl Scribe {
    /// The arc length at a distance from the end face.
    fn place(&self, distance: f64) -> f64 {
        if self.from_end { self.length - distance } else { distance }
    }

    /// How deep a ring may be there; none where it would not show.
    fn depth(&self, profile: &Profile, distance: f64) -> Option<f64> {
        let s = self.place(distance);
        let wall = profile.outer.radius(s) - profile.bore.radius(s);
        let depth = ring_depth(DEPTH, wall, self.least_wall);
        (depth >= LEAST_DEPTH).then_some(depth)
    }

    /// Puts the ring in, if it has room on its half of the tube. An edge that nearly meets a break of the skin is put
    /// on it, so that no sliver is left between.
    fn put(&self, outer: &mut Section, ring: &Ring) -> bool {
        let fits = ring.from >= self.gap && ring.to <= self.length / 2.0 - self.gap;
        if !fits || ring.to - ring.from < 4.0 * self.gap {
            return false;
        }
        let snapped = |s: f64| {
            let near = outer.breaks.iter().map(|[at, _]| *at).find(|at| (at - s).abs() < self.gap);
            near.unwrap_or(s)
        };
        let mut edges = [snapped(self.place(ring.from)), snapped(self.place(ring.to))];
        edges.sort_by(f64::total_cmp);
        let bottom = self.place(ring.bottom);
        let points = [
            [edges[0], outer.radius(edges[0])],
            [bottom, outer.radius(bottom) - ring.depth],
            [edges[1], outer.radius(edges[1])],
        ];
        outer.put(&points);
        true
    }
}
