//! A tube walked along: straights and bends told by length, angle and roll, from which its apexes follow.

use super::Chance;
use super::sheet::{Sheet, Stock};
use crate::layout::{Vec3, perpendicular, reference_perpendicular, rotate, unit};

/// A bend of a walk.
#[derive(Debug, Clone, Copy)]
pub struct Bend {
    /// Angle turned, radians, below a half turn.
    pub angle: f64,
    /// Turn of its plane about the heading since the last bend, radians.
    pub roll: f64,
    /// Own radius, mm; none for the run's.
    pub radius: Option<f64>,
    /// Whether its apex is written down; the first and last bend may be left for the engine to find.
    pub told: bool,
}

impl Bend {
    /// A bend of the run's radius, written down.
    pub fn of(angle_deg: f64, roll: f64) -> Self {
        Self { angle: angle_deg.to_radians(), roll, radius: None, told: true }
    }
}

/// The design of one run that walks from `start` along `heading`: `gaps[i]` mm of straight, then `bends[i]`, and a last
/// gap. The gaps at the ends come on top of the straights that socket, trim and lead need. Its length is known.
pub fn walk(stock: &Stock, start: Vec3, heading: Vec3, bends: &[Bend], gaps: &[f64]) -> Sheet {
    let mut side = reference_perpendicular(&heading);
    let (mut at, mut ahead) = (start, heading);
    let mut corners = Vec::new();
    let mut length = 2.0 * stock.straight() + gaps.iter().sum::<f64>();
    let mut tangent = stock.straight();
    for (bend, gap) in bends.iter().zip(gaps) {
        let radius = bend.radius.unwrap_or(stock.bend);
        let next = radius * libm::tan(bend.angle / 2.0);
        at += ahead * (tangent + gap + next);
        if bend.told {
            corners.push((at, bend.radius));
        }
        side = perpendicular(&ahead, &rotate(&side, &ahead, bend.roll));
        let axis = ahead.cross(&side);
        // Made unit and square again at each bend, or rounding grows from bend to bend.
        ahead = unit(&rotate(&ahead, &axis, bend.angle));
        side = axis.cross(&ahead);
        length += radius * bend.angle;
        tangent = next;
    }
    let end = at + ahead * (tangent + gaps[bends.len()] + stock.straight());
    let mut sheet = Sheet::single(stock, [(start, heading), (end, -ahead)], &corners);
    let widest = bends.iter().filter_map(|bend| bend.radius).fold(stock.bend, f64::max);
    sheet.turns(bends.iter().map(|bend| bend.angle).sum(), widest);
    sheet.lengths = vec![Some(length)];
    sheet
}

/// A walk that starts somewhere near the datum in some direction.
pub fn walk_anywhere(chance: &mut Chance, stock: &Stock, bends: &[Bend], gaps: &[f64]) -> Sheet {
    let (start, heading) = (chance.point(100.0), chance.direction());
    walk(stock, start, heading, bends, gaps)
}

/// As many gaps as `bends` bends need, each up to `most` mm.
pub fn gaps(chance: &mut Chance, bends: usize, most: f64) -> Vec<f64> {
    (0..=bends).map(|_| chance.from(0.0, most)).collect()
}
