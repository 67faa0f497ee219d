//! Stretches of the centreline along which nothing changes at once: rings stand exactly at their ends.
//!
//! They end where the curvature jumps and where the skin's radius changes its course. Pieces of one coil or of one
//! smooth curve meet in equal curvature, so they make one stretch.

use super::fineness::Skin;
use crate::centreline::{Centreline, Piece, Shape};

/// A part of a piece, by arc lengths on the centreline.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Part {
    /// Index of the piece.
    pub piece: usize,
    /// Where it begins, mm.
    pub from: f64,
    /// Where it ends, mm.
    pub to: f64,
    /// The greatest curvature of its piece, 1/mm.
    pub bend: f64,
}

impl Part {
    /// Its length, mm.
    pub fn length(&self) -> f64 {
        self.to - self.from
    }

    /// Most that it turns, radians.
    pub fn turn(&self) -> f64 {
        self.length() * self.bend
    }
}

/// The stretches of the centreline for one skin, as far as the skin goes, each as its parts in order.
pub(super) fn stretches(line: &Centreline, skin: &Skin<'_>) -> Vec<Vec<Part>> {
    let breaks = skin.breaks();
    let [first, last] = skin.section.span();
    let mut stretches: Vec<Vec<Part>> = Vec::new();
    for (index, piece) in line.pieces.iter().enumerate() {
        // A skin as long as the centreline ends where the last piece does, whatever rounding says of their lengths.
        let from = piece.from.max(first);
        let to = if last < line.length { piece.to().min(last) } else { piece.to() };
        if to <= from {
            continue;
        }
        let goes_on = index > 0 && is_one_curve(&line.pieces[index - 1], piece) && !breaks.contains(&piece.from);
        let inside = breaks.iter().copied().filter(|s| *s > from && *s < to);
        let cuts: Vec<f64> = std::iter::once(from).chain(inside).chain([to]).collect();
        let bend = piece.radius().map_or(0.0, |radius| 1.0 / radius);
        for (place, span) in cuts.windows(2).enumerate() {
            let part = Part { piece: index, from: span[0], to: span[1], bend };
            match stretches.last_mut() {
                Some(stretch) if place == 0 && goes_on => stretch.push(part),
                _ => stretches.push(vec![part]),
            }
        }
    }
    stretches
}

fn is_one_curve(before: &Piece, after: &Piece) -> bool {
    matches!((&before.shape, &after.shape), (Shape::Curve(a), Shape::Curve(b)) if a.whole == b.whole)
}
