//! The tube round a centreline: outer radius and bore as functions of arc length, and the volumes they enclose.

use crate::design::Run;
use core::f64::consts::PI;

/// A mesh keeps at least this much between a bend's centre and the skin inside it, mm; see [`least_inner_radius`].
pub const LEAST_INNER_RADIUS: f64 = 0.001;
/// Least wall at the tip that still makes a tube, mm: chamfer and edge break must leave it.
pub const LEAST_TIP_WALL: f64 = 0.05;

/// Shortest chamfer or edge break that is made, mm: a mesh has no rings nearer to each other than about half of it.
pub const LEAST_END: f64 = 0.002;

/// What a bend radius must exceed half the outer diameter by, so that the skin inside the bend stays in order when
/// its coordinates, up to `reach` mm from the datum, are rounded to 32 bits.
pub fn least_inner_radius(reach: f64) -> f64 {
    LEAST_INNER_RADIUS.max(128.0 * f64::from(rounding(reach)))
}

/// Spacing of 32-bit floats at `reach` mm.
pub fn rounding(reach: f64) -> f32 {
    let near = (reach.abs() as f32).max(f32::MIN_POSITIVE);
    f32::from_bits(near.to_bits() + 1) - near
}

/// A radius along the tube: straight between breaks.
#[derive(Debug, Clone, PartialEq)]
pub struct Section {
    /// Arc length and radius at each break, mm; arc lengths strictly ascending, from 0 to the tube's length.
    pub breaks: Vec<[f64; 2]>,
}

/// The tube's two skins.
#[derive(Debug, Clone, PartialEq)]
pub struct Profile {
    /// Outer radius.
    pub outer: Section,
    /// Bore radius.
    pub bore: Section,
}

impl Profile {
    /// The profile of a run whose centreline has `length` mm: outer lead-in chamfers and inner edge breaks at both
    /// ends. Ends longer than half the tube are cut short there; those shorter than [`LEAST_END`] are left off.
    pub fn of(run: &Run, length: f64) -> Self {
        let ends = &run.ends;
        let slope = libm::tan(ends.chamfer_deg.to_radians());
        let outer = Section::with_ends(run.outer_radius(), ends.chamfer_length, -slope, length);
        let bore = Section::with_ends(run.tube.bore / 2.0, ends.edge_break, 1.0, length);
        Self { outer, bore }
    }

    /// Wall left at the end face, mm; negative where chamfer and edge break meet before it.
    pub fn tip_wall(&self) -> f64 {
        self.outer.breaks[0][1] - self.bore.breaks[0][1]
    }

    /// Material between the skins, mm3: exact, since a section's centroid runs on the centreline (Pappus).
    pub fn material_volume(&self) -> f64 {
        self.outer.volume() - self.bore.volume()
    }

    /// What the bore holds, mm3.
    pub fn bore_volume(&self) -> f64 {
        self.bore.volume()
    }
}

impl Section {
    fn with_ends(radius: f64, end: f64, slope: f64, length: f64) -> Self {
        let end = end.min(length / 2.0);
        if end < LEAST_END {
            return Self { breaks: vec![[0.0, radius], [length, radius]] };
        }
        let tip = radius + slope * end;
        let mut breaks = vec![[0.0, tip], [end, radius]];
        if length - end > end {
            breaks.push([length - end, radius]);
        }
        breaks.push([length, tip]);
        Self { breaks }
    }

    /// The radius at arc length `s`, mm; the ends' beyond them.
    pub fn radius(&self, s: f64) -> f64 {
        let next = self.breaks.partition_point(|[at, _]| *at <= s).clamp(1, self.breaks.len() - 1);
        let [[s0, r0], [s1, r1]] = [self.breaks[next - 1], self.breaks[next]];
        r0 + (r1 - r0) * ((s - s0) / (s1 - s0)).clamp(0.0, 1.0)
    }

    /// Volume enclosed, mm3: frusta carried along the centreline.
    pub fn volume(&self) -> f64 {
        self.breaks
            .windows(2)
            .map(|pair| {
                let [[s0, r0], [s1, r1]] = [pair[0], pair[1]];
                PI / 3.0 * (r0 * r0 + r0 * r1 + r1 * r1) * (s1 - s0)
            })
            .sum()
    }

    /// The largest radius anywhere, mm.
    pub fn largest(&self) -> f64 {
        self.breaks.iter().map(|[_, radius]| *radius).fold(0.0, f64::max)
    }
}
