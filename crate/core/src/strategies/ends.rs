//! Finishes of the tube's ends.

use super::Chance;
use super::sheet::{Sheet, Stock};
use super::walk::any_walk;

/// Trims, chamfers of every angle from blunt to beyond the first bend, edge breaks, and none of them.
pub(super) fn any_finish(chance: &mut Chance) -> Sheet {
    let mut stock = Stock::usual(chance);
    let wall = (stock.outer - stock.bore) / 2.0;
    stock.trim = if chance.once_in(2) { chance.from(0.0, 20.0) } else { 0.0 };
    stock.chamfer_deg = chance.pick(&[0.05, 0.5, 5.0, 15.0, 20.0, 45.0, 75.0, 89.0, 89.95]);
    // What chamfer and edge break may take off together, and leave a wall at the tip.
    let room = wall - 0.06;
    let slope = libm::tan(stock.chamfer_deg.to_radians());
    let share = chance.from(0.1, 0.9);
    stock.chamfer_length = if chance.once_in(5) { 0.0 } else { (share * room / slope).min(300.0) };
    stock.edge_break = if chance.once_in(4) { 0.0 } else { chance.from(0.05, 0.95) * (1.0 - share) * room };
    if chance.once_in(4) {
        stock.lead = 0.0;
    }
    any_walk(chance, &stock, [0, 3], [1.0, 120.0], 15.0)
}

/// Trims with their rings and seating marks, in deep and in shallow sockets, on thick walls and on thin ones.
pub(super) fn marked(chance: &mut Chance) -> Sheet {
    let mut stock = Stock::usual(chance);
    stock.trim = if chance.once_in(4) { 0.0 } else { chance.from(0.5, 15.0) };
    stock.seat_mark = !chance.once_in(4);
    if chance.once_in(3) {
        stock.bore = stock.outer - 2.0 * chance.from(1.0, 1.4);
    }
    if chance.once_in(3) {
        stock.chamfer_length = 0.0;
    }
    any_walk(chance, &stock, [0, 3], [1.0, 120.0], 15.0)
}
