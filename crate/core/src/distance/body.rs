//! A centreline in nested boxes. Neighbours on the curve are neighbours in space, so halving the list of pieces makes
//! a good tree without any sorting, and a node is also a range of arc length.

use crate::centreline::{Bounds, Centreline, Piece, Shape};
use crate::layout::Vec3;

/// A centreline, ready for queries.
#[derive(Debug, Clone)]
pub struct Body<'c> {
    pub(super) line: &'c Centreline,
    /// Node, then the whole left half, then the whole right half.
    boxes: Vec<Bounds>,
}

/// A range of pieces, and where its box is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Node {
    index: usize,
    pub first: usize,
    pub count: usize,
}

impl<'c> Body<'c> {
    /// Boxes round every piece and every half of them. `line` has at least one piece.
    pub fn new(line: &'c Centreline) -> Self {
        let mut boxes = Vec::with_capacity((2 * line.pieces.len()).saturating_sub(1));
        if !line.pieces.is_empty() {
            build(&line.pieces, &mut boxes);
        }
        Self { line, boxes }
    }

    /// The box round the whole centreline; none if it has no pieces.
    pub fn bounds(&self) -> Option<&Bounds> {
        self.boxes.first()
    }

    pub(super) fn root(&self) -> Option<Node> {
        (!self.boxes.is_empty()).then_some(Node { index: 0, first: 0, count: self.line.pieces.len() })
    }

    pub(super) fn bounds_of(&self, node: Node) -> &Bounds {
        &self.boxes[node.index]
    }

    /// Arc lengths at the node's ends.
    pub(super) fn range_of(&self, node: Node) -> (f64, f64) {
        (self.line.pieces[node.first].from, self.line.pieces[node.first + node.count - 1].to())
    }
}

impl Node {
    pub fn is_leaf(self) -> bool {
        self.count == 1
    }

    /// Both halves of a node that is no leaf.
    pub fn halves(self) -> [Self; 2] {
        let left = self.count / 2;
        [
            Self { index: self.index + 1, first: self.first, count: left },
            Self { index: self.index + 2 * left, first: self.first + left, count: self.count - left },
        ]
    }
}

fn build(pieces: &[Piece], boxes: &mut Vec<Bounds>) -> Bounds {
    if let [piece] = pieces {
        let bounds = piece_box(piece);
        boxes.push(bounds);
        return bounds;
    }
    let index = boxes.len();
    boxes.push(Bounds { min: Vec3::zeros(), max: Vec3::zeros() });
    let (left, right) = pieces.split_at(pieces.len() / 2);
    let bounds = build(left, boxes).with(&build(right, boxes));
    boxes[index] = bounds;
    bounds
}

/// The box round a piece, exact for straights; round an arc the box of its chord's two ends, widened by how far the
/// arc strays from the chord, within the box of the whole circle.
fn piece_box(piece: &Piece) -> Bounds {
    let end = piece.at(piece.length).point;
    let chord = Bounds { min: piece.start.inf(&end), max: piece.start.sup(&end) };
    let Shape::Arc { radius, angle, normal, .. } = &piece.shape else { return chord };
    let centre = piece.start + normal * *radius;
    let reach = piece.direction.zip_map(normal, |along, inward| radius * libm::hypot(along, inward));
    let stray = Vec3::repeat(radius * (angle * angle / 8.0).min(2.0));
    let (min, max) = (chord.min - stray, chord.max + stray);
    Bounds { min: min.sup(&(centre - reach)), max: max.inf(&(centre + reach)) }
}

/// Distance between two boxes; 0 where they meet.
pub fn box_gap(a: &Bounds, b: &Bounds) -> f64 {
    (a.min - b.max).sup(&(b.min - a.max)).sup(&Vec3::zeros()).norm()
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::PI;

    #[test]
    fn every_node_holds_its_pieces() {
        let mut pieces = Vec::new();
        let (mut from, mut start) = (0.0, Vec3::zeros());
        for k in 0..13 {
            let (direction, normal) = if k % 2 == 0 { (Vec3::x(), Vec3::z()) } else { (Vec3::z(), -Vec3::y()) };
            let angle = 0.4 + 0.4 * f64::from(k);
            let shape = Shape::Arc { radius: 5.0, angle, normal, station: None };
            let piece = Piece { from, length: 5.0 * angle, start, direction, shape };
            (from, start) = (piece.to(), piece.at(piece.length).point);
            pieces.push(piece);
        }
        let line = Centreline { length: from, pieces };
        let body = Body::new(&line);
        let mut open = vec![body.root().unwrap()];
        let mut leaves = Vec::new();
        while let Some(node) = open.pop() {
            for piece in &line.pieces[node.first..node.first + node.count] {
                for step in 0..=64 {
                    let p = piece.at(piece.length * f64::from(step) / 64.0).point;
                    let bounds = body.bounds_of(node);
                    assert!((0..3).all(|k| p[k] >= bounds.min[k] - 1e-12 && p[k] <= bounds.max[k] + 1e-12));
                }
            }
            if node.is_leaf() { leaves.push(node.first) } else { open.extend(node.halves()) }
        }
        leaves.sort_unstable();
        assert_eq!(leaves, (0..13).collect::<Vec<_>>());
        assert!(line.pieces.iter().any(|piece| piece.length > 5.0 * PI));
    }
}
