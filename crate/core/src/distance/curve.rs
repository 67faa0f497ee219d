//! Nearest points of two centrelines, and of a centreline and itself.

use super::body::{Node, box_gap};
use super::segment::segments;
use super::span::Span;
use super::{Body, Budget, SETTLED};
use crate::layout::Vec3;

/// Two near points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Near {
    /// Between the two points, mm.
    pub distance: f64,
    /// Arc lengths on the first and on the second centreline, mm.
    pub along: [f64; 2],
    /// The points.
    pub points: [Vec3; 2],
}

/// Stretches of one curve shorter than this that lie across the limit of [`within_itself`] are not halved further, mm.
const FINEST: f64 = 1e-2;
/// Points nearer than this are one point: no pair is looked for that is nearer still, mm.
const TOUCHING: f64 = 1e-9;
/// Steps from one curve to the other and back that polish an answer; each gains at least a digit where curves cross.
const POLISH: usize = 40;

/// The nearest points of `a` between the arc lengths `on_a` and `b` between `on_b`, if nearer than `within` mm. When the
/// budget runs out, the nearest seen until then.
pub fn between(
    (a, on_a): (&Body<'_>, [f64; 2]),
    (b, on_b): (&Body<'_>, [f64; 2]),
    within: f64,
    budget: &mut Budget,
) -> Option<Near> {
    let (Some(root_a), Some(root_b)) = (a.root(), b.root()) else { return None };
    let mut search = Search { bodies: [a, b], on: [on_a, on_b], apart: None, within, best: None, budget };
    search.nodes(root_a, root_b);
    search.polished()
}

/// The nearest two points of `body` between the arc lengths `on` that are at least `apart` mm of arc length from each
/// other, if nearer than `within` mm. When the budget runs out, the nearest seen until then.
pub fn within_itself(body: &Body<'_>, on: [f64; 2], apart: f64, within: f64, budget: &mut Budget) -> Option<Near> {
    let root = body.root()?;
    let mut search = Search { bodies: [body, body], on: [on, on], apart: Some(apart), within, best: None, budget };
    search.nodes(root, root);
    search.polished()
}

struct Search<'s, 'c> {
    bodies: [&'s Body<'c>; 2],
    on: [[f64; 2]; 2],
    /// Least arc length between the two points, on one curve; the second point is the later one.
    apart: Option<f64>,
    within: f64,
    best: Option<(Near, [Span<'c>; 2])>,
    budget: &'s mut Budget,
}

impl<'c> Search<'_, 'c> {
    /// What another pair must beat.
    fn limit(&self) -> f64 {
        self.best.as_ref().map_or(self.within, |(near, _)| near.distance)
    }

    fn gap(&self, a: Node, b: Node) -> f64 {
        box_gap(self.bodies[0].bounds_of(a), self.bodies[1].bounds_of(b))
    }

    fn nodes(&mut self, a: Node, b: Node) {
        let [range_a, range_b] = [self.bodies[0].range_of(a), self.bodies[1].range_of(b)];
        let outside = |(from, to): (f64, f64), [low, high]: [f64; 2]| from > high || to < low;
        let near_on_curve = self.apart.is_some_and(|apart| range_b.1 - range_a.0 < apart);
        if outside(range_a, self.on[0]) || outside(range_b, self.on[1]) || near_on_curve {
            return;
        }
        if self.limit() <= TOUCHING || !self.budget.spend(1) || self.gap(a, b) >= self.limit() {
            return;
        }
        if a.is_leaf() && b.is_leaf() {
            return self.pieces(a.first, b.first);
        }
        let mut pairs: Vec<(Node, Node)> = Vec::with_capacity(4);
        if self.apart.is_some() && a == b {
            let [left, right] = a.halves();
            pairs.extend([(left, left), (left, right), (right, right)]);
        } else if b.is_leaf() || (!a.is_leaf() && a.count >= b.count) {
            pairs.extend(a.halves().map(|half| (half, b)));
        } else {
            pairs.extend(b.halves().map(|half| (a, half)));
        }
        // The nearer boxes first: a good pair early spares the others.
        pairs.sort_by(|x, y| self.gap(x.0, x.1).total_cmp(&self.gap(y.0, y.1)));
        for (a, b) in pairs {
            self.nodes(a, b);
        }
    }

    fn pieces(&mut self, a: usize, b: usize) {
        let span = |which: usize, piece: usize| {
            let [low, high] = self.on[which];
            Span::of(&self.bodies[which].line.pieces[piece], low, high)
        };
        if let (Some(a), Some(b)) = (span(0, a), span(1, b)) {
            self.spans(a, b);
        }
    }

    fn spans(&mut self, a: Span<'c>, b: Span<'c>) {
        let Some((a, b, across)) = self.allowed(a, b) else { return };
        if self.limit() <= TOUCHING || !self.budget.spend(1) {
            return;
        }
        let (s, t, chords) = segments([&a.start, &a.end], [&b.start, &b.end]);
        let stray = a.stray + b.stray;
        if chords - stray >= self.limit() {
            return;
        }
        self.offer(&a, &b, [a.at_fraction(s), b.at_fraction(t)]);
        let settled = if across { a.length().max(b.length()) <= FINEST } else { stray <= SETTLED };
        if settled {
            if across {
                self.offer(&a, &b, [a.from, b.to]);
            }
            return;
        }
        // The curve that strays more has more to gain; across the limit of arc length, the longer one.
        let halve_a = if across { a.length() >= b.length() } else { a.stray >= b.stray };
        let mut pairs = if halve_a { a.halves().map(|half| (half, b)) } else { b.halves().map(|half| (a, half)) };
        if (if halve_a { s } else { t }) > 0.5 {
            pairs.reverse();
        }
        for (a, b) in pairs {
            self.spans(a, b);
        }
    }

    /// The parts of two stretches that can hold a pair far enough apart along the curve, and whether they also hold
    /// pairs that are not.
    fn allowed(&self, a: Span<'c>, b: Span<'c>) -> Option<(Span<'c>, Span<'c>, bool)> {
        let Some(apart) = self.apart else { return Some((a, b, false)) };
        let shorter = |span: Span<'c>, from: f64, to: f64| {
            if from <= span.from && to >= span.to {
                return Some(span);
            }
            let (from, to) = (from.max(span.from), to.min(span.to));
            (from <= to).then(|| Span::of(span.piece, from, to)).flatten()
        };
        let (low, high) = (a.from + apart, b.to - apart);
        let a = shorter(a, a.from, high)?;
        let b = shorter(b, low, b.to)?;
        Some((a, b, b.from - a.to < apart))
    }

    /// Takes the pair of curve points at two arc lengths, if it is allowed and nearer than the best.
    fn offer(&mut self, a: &Span<'c>, b: &Span<'c>, along: [f64; 2]) -> bool {
        if self.apart.is_some_and(|apart| along[1] - along[0] < apart - 1e-9) {
            return false;
        }
        let points = [a.point(along[0]), b.point(along[1])];
        let distance = (points[0] - points[1]).norm();
        if distance >= self.limit() {
            return false;
        }
        self.best = Some((Near { distance, along, points }, [*a, *b]));
        true
    }

    /// The best pair, followed on the exact curves by nearest points in closed form, to and fro, while that gains.
    fn polished(mut self) -> Option<Near> {
        let (_, [a, b]) = self.best?;
        let whole =
            |which: usize, span: &Span<'c>| Span::of(span.piece, self.on[which][0], self.on[which][1]).unwrap_or(*span);
        let (a, b) = (whole(0, &a), whole(1, &b));
        for step in 0..POLISH {
            let Some((near, _)) = self.best else { break };
            let along = if step % 2 == 0 {
                [near.along[0], b.nearest(&near.points[0])]
            } else {
                [a.nearest(&near.points[1]), near.along[1]]
            };
            if !self.offer(&a, &b, along) && step > 0 {
                break;
            }
        }
        self.best.map(|(near, _)| near)
    }
}
