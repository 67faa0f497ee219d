//! Designs whose run cannot be made.

use super::Chance;
use super::sheet::{Sheet, Stock};
use super::walk::{Bend, gaps, some_bends, walk_anywhere};
use crate::layout::reference_perpendicular;

/// A leg shorter than its corners' tangent lengths, by a hair or by much.
pub(super) fn crowded(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let bends = some_bends(chance, [2, 4], [30.0, 120.0]);
    let mut gaps = gaps(chance, bends.len(), 20.0);
    let tangents = 2.0 * stock.bend * libm::tan(15f64.to_radians());
    gaps[1] = -chance.scale(1e-3, 0.9 * tangents);
    let mut sheet = walk_anywhere(chance, &stock, &bends, &gaps);
    sheet.lengths = vec![None];
    sheet
}

/// A bend radius of half the outer diameter or less.
pub(super) fn too_tight(chance: &mut Chance) -> Sheet {
    let mut stock = Stock::usual(chance);
    stock.bend = stock.outer / 2.0 * chance.pick(&[0.1, 0.9, 0.999_999, 1.0]);
    let bends = [Bend::of(chance.from(10.0, 120.0), chance.roll())];
    let gaps = gaps(chance, 1, 20.0);
    let mut sheet = walk_anywhere(chance, &stock, &bends, &gaps);
    sheet.lengths = vec![None];
    sheet
}

/// A corner from which the next point lies straight back.
pub(super) fn turns_back(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let (start, out) = (chance.point(50.0), chance.direction());
    let apex = start + out * 200.0;
    let side = reference_perpendicular(&out);
    let corners = [(apex, None), (start + out * 100.0, None)];
    Sheet::single(&stock, [(start, out), (start + out * 100.0 + side * 150.0, -side)], &corners)
}

/// A corner that stands where the one before does.
pub(super) fn repeated(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let (start, out) = (chance.point(50.0), chance.direction());
    let apex = start + out * 100.0;
    let side = reference_perpendicular(&out);
    let corners = [(apex, None), (apex, None)];
    Sheet::single(&stock, [(start, out), (apex + side * 100.0, -side)], &corners)
}
