//! The skins of a short straight tube whose two ends differ: a stick of the fit coupon.

use super::marks::ring_depth;
use super::{LEAST_END, Marks, Profile, Section};
use crate::design::Ends;

/// One end of a stick.
#[derive(Debug, Clone, PartialEq)]
pub struct StickEnd {
    /// Outer radius, mm.
    pub outer: f64,
    /// Bore radius, mm.
    pub bore: f64,
    /// Where each of its rings begins, from its end face, mm; ascending.
    pub rings: Vec<f64>,
    /// Width of a ring, mm.
    pub ring_width: f64,
    /// Depth of a ring, mm; negative for one that stands out.
    pub ring_depth: f64,
}

/// Depth of a ring where the wall allows it, mm; common practice, no source.
const DEPTH: f64 = 0.25;
/// A ring shallower than this is not felt, mm; it stands out instead.
const FELT: f64 = 0.1;

/// How deep a ring is scribed into a wall, mm. Negative: too thin a wall, so that the ring must stand out by as much.
pub fn groove(wall: f64, least_wall: f64) -> f64 {
    let depth = ring_depth(DEPTH, wall, least_wall);
    if depth >= FELT { depth } else { -DEPTH }
}

impl Profile {
    /// The profile of a stick of `length` mm, finished as a run's ends are. Between the rings of both ends, outer radius and
    /// bore run straight from the one size to the other.
    pub fn of_stick(ends: &Ends, stick: [StickEnd; 2], length: f64) -> Self {
        let finished = |end: f64| if end >= LEAST_END { end } else { 0.0 };
        let (chamfer, edge_break) = (finished(ends.chamfer_length), finished(ends.edge_break));
        let drop = libm::tan(ends.chamfer_deg.to_radians()) * chamfer;
        let outer = stick.each_ref().map(|end| {
            let rings = end.rings.iter().flat_map(|from| {
                [0.0, 0.5, 1.0].map(|share| {
                    let depth = if share == 0.5 { end.ring_depth } else { 0.0 };
                    [from + share * end.ring_width, end.outer - depth]
                })
            });
            tip(chamfer, end.outer, -drop).into_iter().chain(rings).collect::<Vec<_>>()
        });
        let bore = stick.each_ref().map(|end| tip(edge_break, end.bore, edge_break));
        Self {
            outer: joined(outer, length),
            bore: joined(bore, length),
            lobes: None,
            bore_lobes: None,
            socket: None,
            marks: Marks::default(),
            dressed: false,
            finish: [chamfer.max(edge_break); 2],
        }
    }
}

/// The breaks at an end face: `change` is what the radius differs by at the very tip.
fn tip(length: f64, radius: f64, change: f64) -> Vec<[f64; 2]> {
    let tip = [0.0, radius + change];
    if length > 0.0 { vec![tip, [length, radius]] } else { vec![tip] }
}

/// Two ends' breaks, each from its own end face, as one section.
fn joined([first, last]: [Vec<[f64; 2]>; 2], length: f64) -> Section {
    let far = last.into_iter().rev().map(|[from, radius]| [length - from, radius]);
    Section { breaks: first.into_iter().chain(far).collect() }
}
