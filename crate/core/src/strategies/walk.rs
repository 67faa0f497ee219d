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

/// Where a walk leads.
#[derive(Debug, Clone)]
pub struct Way {
    /// Apexes and own radii of the bends that are written down.
    pub corners: Vec<(Vec3, Option<f64>)>,
    /// Where it ends.
    pub end: Vec3,
    /// Its direction there.
    pub heading: Vec3,
    /// Its length, mm.
    pub length: f64,
}

/// Walks from `start` along `heading`: `gaps[i]` mm of straight, then `bends[i]` of their own radius or of `radius`, and
/// a last gap. `kept` mm of straight come on top of the first and of the last gap.
pub fn way(start: Vec3, heading: Vec3, radius: f64, (bends, gaps): (&[Bend], &[f64]), kept: [f64; 2]) -> Way {
    let mut side = reference_perpendicular(&heading);
    let (mut at, mut ahead) = (start, heading);
    let mut corners = Vec::new();
    let mut length = kept[0] + kept[1] + gaps.iter().sum::<f64>();
    let mut tangent = kept[0];
    for (bend, gap) in bends.iter().zip(gaps) {
        let own = bend.radius.unwrap_or(radius);
        let next = own * libm::tan(bend.angle / 2.0);
        at += ahead * (tangent + gap + next);
        if bend.told {
            corners.push((at, bend.radius));
        }
        side = perpendicular(&ahead, &rotate(&side, &ahead, bend.roll));
        let axis = ahead.cross(&side);
        // Made unit and square again at each bend, or rounding grows from bend to bend.
        ahead = unit(&rotate(&ahead, &axis, bend.angle));
        side = axis.cross(&ahead);
        length += own * bend.angle;
        tangent = next;
    }
    let end = at + ahead * (tangent + gaps[bends.len()] + kept[1]);
    Way { corners, end, heading: ahead, length }
}

/// The design of one run that walks from `start` along `heading`; see [`way`]. The gaps at the ends come on top of the
/// straights that socket, trim and lead need. Its length is known.
pub fn walk(stock: &Stock, start: Vec3, heading: Vec3, bends: &[Bend], gaps: &[f64]) -> Sheet {
    let way = way(start, heading, stock.bend, (bends, gaps), [stock.straight(); 2]);
    let mut sheet = Sheet::single(stock, [(start, heading), (way.end, -way.heading)], &way.corners);
    let widest = bends.iter().filter_map(|bend| bend.radius).fold(stock.bend, f64::max);
    sheet.turns(bends.iter().map(|bend| bend.angle).sum(), widest);
    sheet.lengths = vec![Some(way.length)];
    sheet
}

/// A walk that starts somewhere near the datum in some direction.
pub fn walk_anywhere(chance: &mut Chance, stock: &Stock, bends: &[Bend], gaps: &[f64]) -> Sheet {
    let (start, heading) = (chance.point(100.0), chance.direction());
    walk(stock, start, heading, bends, gaps)
}

/// A walk anywhere of some number of bends from `counts`, of angles from `degrees`, with gaps up to `most` mm.
pub fn any_walk(chance: &mut Chance, stock: &Stock, counts: [usize; 2], degrees: [f64; 2], most: f64) -> Sheet {
    let bends = some_bends(chance, counts, degrees);
    let gaps = gaps(chance, bends.len(), most);
    walk_anywhere(chance, stock, &bends, &gaps)
}

/// Some number of bends from `counts`, of the run's radius, of angles from `degrees` in any plane.
pub fn some_bends(chance: &mut Chance, [fewest, most]: [usize; 2], [least, widest]: [f64; 2]) -> Vec<Bend> {
    (0..chance.whole(fewest, most)).map(|_| Bend::of(chance.from(least, widest), chance.roll())).collect()
}

/// As many gaps as `bends` bends need, each up to `most` mm.
pub fn gaps(chance: &mut Chance, bends: usize, most: f64) -> Vec<f64> {
    (0..=bends).map(|_| chance.from(0.0, most)).collect()
}
