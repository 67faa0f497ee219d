//! Routes through corners.

use super::Chance;
use super::sheet::{Sheet, Stock};
use super::walk::{Bend, any_walk, gaps, walk, walk_anywhere};
use crate::layout::Vec3;

/// Corners that hardly turn, from a millionth of a degree, among some that do.
pub(super) fn near_straight(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let bends: Vec<Bend> = (0..chance.whole(1, 5))
        .map(|_| {
            let angle = if chance.once_in(4) { chance.from(5.0, 120.0) } else { chance.scale(1e-6, 0.1) };
            Bend::of(angle, chance.roll())
        })
        .collect();
    let gaps = gaps(chance, bends.len(), 40.0);
    walk_anywhere(chance, &stock, &bends, &gaps)
}

/// Turns of 170 to 179.5 degrees, whose apexes are far away.
pub(super) fn hairpins(chance: &mut Chance) -> Sheet {
    let mut stock = Stock::usual(chance);
    stock.bend = chance.from(0.7, 1.2) * stock.outer;
    let bends: Vec<Bend> =
        (0..chance.whole(1, 2)).map(|_| Bend::of(180.0 - chance.scale(0.5, 10.0), chance.roll())).collect();
    let gaps = gaps(chance, bends.len(), 40.0);
    walk_anywhere(chance, &stock, &bends, &gaps)
}

/// Bends whose inside nearly reaches their axis.
pub(super) fn tight(chance: &mut Chance) -> Sheet {
    let outer = chance.pick(&[4.0, 8.0, 10.0, 12.7, 16.0, 30.0]);
    let bore = outer - 2.0 * chance.scale(0.4, 0.4 * outer);
    let mut stock = Stock::of(chance, outer, bore, outer);
    let half = outer / 2.0;
    stock.bend = chance.pick(&[half + 0.01, half * 1.001, half * 1.05]).max(half + 0.003);
    let bends: Vec<Bend> = (0..chance.whole(1, 3))
        .map(|_| {
            let angle = if chance.once_in(4) { chance.scale(1e-5, 1.0) } else { chance.from(5.0, 150.0) };
            Bend::of(angle, chance.roll())
        })
        .collect();
    let gaps = gaps(chance, bends.len(), 10.0);
    // Near the datum, since 32-bit coordinates must tell the skin inside the bend from its axis.
    walk(&stock, chance.point(10.0), chance.direction(), &bends, &gaps)
}

/// Consecutive arcs whose legs are just the sums of their tangent lengths, also across planes.
pub(super) fn touching(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let bends: Vec<Bend> = (0..chance.whole(2, 6))
        .map(|_| {
            let angle = chance.pick(&[30.0, 45.0, 90.0, 120.0]);
            let radius = chance.once_in(3).then(|| chance.from(0.7, 3.0) * stock.outer);
            Bend { radius, ..Bend::of(angle, chance.roll()) }
        })
        .collect();
    let mut gaps = vec![0.0; bends.len() + 1];
    if chance.once_in(2) {
        let last = bends.len();
        (gaps[0], gaps[last]) = (20.0, 20.0);
    }
    walk_anywhere(chance, &stock, &bends, &gaps)
}

/// Two metres of tube.
pub(super) fn long(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let count = chance.whole(1, 8);
    let bends: Vec<Bend> = (0..count).map(|_| Bend::of(chance.from(10.0, 100.0), chance.roll())).collect();
    let gaps = vec![2000.0 / (count + 1) as f64; count + 1];
    walk_anywhere(chance, &stock, &bends, &gaps)
}

/// Tens to hundreds of corners.
pub(super) fn many(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let most = chance.pick(&[5.0, 20.0, 90.0]);
    any_walk(chance, &stock, [20, 200], [0.5, most], 10.0)
}

/// A first, a last, or both end corners that are not on their port's axis: the engine must find the bend that joins.
pub(super) fn off_axis(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let count = chance.whole(2, 4);
    let mut bends: Vec<Bend> = (0..count).map(|_| Bend::of(chance.from(5.0, 110.0), chance.roll())).collect();
    let mut gaps: Vec<f64> = (0..=count).map(|_| chance.from(1.0, 40.0)).collect();
    let sides = if count == 2 { chance.whole(1, 2) } else { chance.whole(1, 3) };
    if sides & 1 == 1 {
        (bends[0].told, gaps[0]) = (false, 0.0);
    }
    if sides & 2 == 2 {
        (bends[count - 1].told, gaps[count]) = (false, 0.0);
    }
    let start = Vec3::new(chance.from(-50.0, 50.0), chance.from(-50.0, 50.0), 0.0);
    let heading = chance.direction();
    walk(&stock, start, heading, &bends, &gaps)
}
