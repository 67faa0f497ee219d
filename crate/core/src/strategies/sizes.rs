//! Tubes of every size, and tubes far away.

use super::Chance;
use super::sheet::{Sheet, Stock};
use super::walk::{any_walk, gaps, some_bends, walk};

/// Outer diameters of 4 to 60 mm, walls of 0.4 mm to nearly solid.
pub(super) fn any_size(chance: &mut Chance) -> Sheet {
    let outer = chance.scale(4.0, 60.0);
    let wall = chance.scale(0.4, 0.48 * outer);
    let times = chance.from(0.55, 4.0);
    let stock = Stock::of(chance, outer, outer - 2.0 * wall, times * outer);
    any_walk(chance, &stock, [0, 4], [1.0, 150.0], 5.0 * outer)
}

/// Ten to fifty metres from the datum, where 32-bit coordinates are coarse.
pub(super) fn far(chance: &mut Chance) -> Sheet {
    let mut stock = Stock::usual(chance);
    stock.bend = stock.bend.max(stock.outer);
    let bends = some_bends(chance, [1, 3], [5.0, 120.0]);
    let gaps = gaps(chance, bends.len(), 40.0);
    let start = chance.direction() * chance.from(1e4, 5e4);
    let heading = chance.direction();
    let mut sheet = walk(&stock, start, heading, &bends, &gaps);
    sheet.finest = 0.02;
    sheet
}
