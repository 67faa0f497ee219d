//! Nearest points of a centreline and a solid.

use super::body::{Node, box_gap};
use super::span::Span;
use super::{Body, Budget, SETTLED, Solid};
use crate::layout::Vec3;

/// A centreline's point near a solid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NearSolid {
    /// From the point to the solid's surface, mm; below zero inside.
    pub distance: f64,
    /// Arc length of the point, mm.
    pub along: f64,
    /// The point.
    pub point: Vec3,
    /// Unit direction from the solid's nearest surface to the point; zero on the axis of a cylinder.
    pub outward: Vec3,
}

/// Halvings along a straight: from metres to under a nanometre.
const HALVINGS: u32 = 44;
/// Ratio of a golden-section search (Kiefer 1953, Proc. AMS 4, 502).
const GOLDEN: f64 = 0.618_033_988_749_895;

/// The point of `body` between the arc lengths `on` nearest to (or deepest in) `solid`, if nearer than `within` mm. When
/// the budget runs out, the nearest seen until then.
pub fn to_solid(body: &Body<'_>, on: [f64; 2], solid: &Solid, within: f64, budget: &mut Budget) -> Option<NearSolid> {
    let mut search = Search { body, on, solid, within, best: None, budget };
    search.node(body.root()?);
    search.polished()
}

struct Search<'s, 'c> {
    body: &'s Body<'c>,
    on: [f64; 2],
    solid: &'s Solid,
    within: f64,
    best: Option<(f64, f64, Span<'c>)>,
    budget: &'s mut Budget,
}

impl<'c> Search<'_, 'c> {
    fn limit(&self) -> f64 {
        self.best.as_ref().map_or(self.within, |best| best.0)
    }

    fn node(&mut self, node: Node) {
        let (from, to) = self.body.range_of(node);
        if from > self.on[1] || to < self.on[0] || !self.budget.spend(1) {
            return;
        }
        let gap = box_gap(self.body.bounds_of(node), &self.solid.bounds());
        // Boxes that meet say nothing of how deep a curve may be inside.
        if gap > 0.0 && gap >= self.limit() {
            return;
        }
        if !node.is_leaf() {
            return node.halves().into_iter().for_each(|half| self.node(half));
        }
        if let Some(span) = Span::of(&self.body.line.pieces[node.first], self.on[0], self.on[1]) {
            self.span(span);
        }
    }

    fn span(&mut self, span: Span<'c>) {
        if !self.budget.spend(1) {
            return;
        }
        // Nothing changes faster than distance itself: half the chord away it is at most that much less.
        let middle = (span.start + span.end) / 2.0;
        let reach = (span.end - span.start).norm() / 2.0 + span.stray;
        if self.solid.signed_distance(&middle) - reach >= self.limit() {
            return;
        }
        let fraction = deepest(self.solid, &span.start, &span.end);
        let on_chord = span.start + (span.end - span.start) * fraction;
        if self.solid.signed_distance(&on_chord) - span.stray >= self.limit() {
            return;
        }
        let s = span.at_fraction(fraction);
        let distance = self.solid.signed_distance(&span.point(s));
        if distance < self.limit() {
            self.best = Some((distance, s, span));
        }
        if span.stray > SETTLED {
            let mut halves = span.halves();
            if fraction > 0.5 {
                halves.reverse();
            }
            halves.into_iter().for_each(|half| self.span(half));
        }
    }

    /// The best point, followed on its exact piece to the bottom of the dip by a golden-section search.
    fn polished(self) -> Option<NearSolid> {
        let (mut distance, mut along, span) = self.best?;
        let around = span.length().max(1e-3);
        if span.stray > 0.0
            && let Some(wide) = Span::of(span.piece, (along - around).max(self.on[0]), (along + around).min(self.on[1]))
        {
            let at = |s: f64| self.solid.signed_distance(&wide.point(s));
            let (mut low, mut high) = (wide.from, wide.to);
            for _ in 0..HALVINGS {
                let step = (high - low) * GOLDEN;
                if at(high - step) <= at(low + step) { high = low + step } else { low = high - step }
            }
            let middle = (low + high) / 2.0;
            if at(middle) < distance {
                (distance, along) = (at(middle), middle);
            }
        }
        let point = span.point(along);
        Some(NearSolid { distance, along, point, outward: self.solid.outward(&point) })
    }
}

/// Fraction of the segment at which it is nearest to or deepest in a solid. Distance to a convex solid, counted below
/// zero inside, is convex along a line, so its slope changes sign but once.
fn deepest(solid: &Solid, from: &Vec3, to: &Vec3) -> f64 {
    let along = to - from;
    let rises = |fraction: f64| solid.outward(&(from + along * fraction)).dot(&along) >= 0.0;
    if rises(0.0) {
        return 0.0;
    }
    if !rises(1.0) {
        return 1.0;
    }
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..HALVINGS {
        let middle = (low + high) / 2.0;
        if rises(middle) { high = middle } else { low = middle }
    }
    high
}
