//! Bodies that are not the plain tube: thicker, tapered, lobed, twisted.

use super::Chance;
use super::sheet::{Sheet, Stock};
use super::turns::Turns;
use super::walk::{any_walk, walk_anywhere};
use super::{coils, curves};
use serde_json::json;

/// Round bodies that are thicker or thinner than the tube, or taper, on straights and bends.
pub(super) fn round(chance: &mut Chance) -> Sheet {
    let mut stock = Stock::usual(chance);
    let diameter = |chance: &mut Chance| stock.bore + 2.2 + chance.from(0.0, 1.0) * stock.outer;
    let (first, last) = (diameter(chance), diameter(chance));
    let mut dress = json!({ "diameter": first, "blend": chance.scale(0.5, 40.0) });
    let widest = if chance.once_in(3) {
        first
    } else {
        dress["end_diameter"] = last.into();
        first.max(last)
    };
    stock.bend = stock.bend.max(0.6 * widest);
    stock.seat_mark = chance.once_in(2);
    stock.dress = Some((dress, widest));
    any_walk(chance, &stock, [0, 3], [5.0, 110.0], 60.0)
}

/// Lobes along a straight body, twisted or not.
pub(super) fn straight_lobes(chance: &mut Chance) -> Sheet {
    let stock = lobed(chance);
    let gap = chance.from(10.0, 120.0);
    walk_anywhere(chance, &stock, &[], &[gap])
}

/// Lobes round bends.
pub(super) fn lobes_on_bends(chance: &mut Chance) -> Sheet {
    let stock = lobed(chance);
    any_walk(chance, &stock, [1, 3], [5.0, 110.0], 40.0)
}

/// Lobes along coils and smooth curves.
pub(super) fn lobes_on_curves(chance: &mut Chance) -> Sheet {
    let mut stock = lobed(chance);
    if chance.once_in(2) {
        let count = chance.whole(1, 3);
        return curves::curve(chance, &stock, count, 0.5);
    }
    let turns = chance.from(0.3, 1.5);
    // Turns that clear each other by the body's size, not the tube's.
    let plain = stock.outer;
    stock.outer = stock.dress.as_ref().map_or(plain, |(_, widest)| plain.max(*widest));
    let coil = Turns::of(chance, &stock, turns).starting_at(chance.point(50.0));
    stock.outer = plain;
    coils::between(chance, &stock, &coil, [&[], &[]])
}

/// A tube with a lobed body that keeps a wall.
fn lobed(chance: &mut Chance) -> Stock {
    let mut stock = Stock::usual(chance);
    stock.bore = stock.bore.min(stock.outer - 2.6);
    let diameter = |chance: &mut Chance| stock.outer * chance.from(1.0, 1.5);
    let (first, last) = (diameter(chance), diameter(chance));
    let tapers = chance.once_in(3);
    let widest = if tapers { first.max(last) } else { first };
    let wall = (if tapers { first.min(last) } else { first } - stock.bore) / 2.0;
    let twist = if chance.once_in(3) { 0.0 } else { chance.from(-4.0, 4.0) };
    let mut dress = json!({ "diameter": first, "blend": chance.scale(2.0, 30.0), "lobes": chance.whole(2, 24),
        "depth": chance.scale(0.05, 1.0) * (wall - 1.05), "twist_deg_per_mm": twist });
    if tapers {
        dress["end_diameter"] = last.into();
    }
    stock.bend = stock.bend.max(0.6 * widest);
    stock.seat_mark = chance.once_in(2);
    stock.dress = Some((dress, widest));
    stock
}
