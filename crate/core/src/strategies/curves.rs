//! Smooth curves through points, between ports, corners and coils.

use super::Chance;
use super::coils::outwards;
use super::sheet::{Sheet, Stock, corners_of};
use super::turns::Turns;
use super::walk::{Bend, way};
use crate::layout::{Vec3, reference_perpendicular, rotate, unit};
use core::f64::consts::TAU;
use serde_json::{Value, json};

/// Points far apart that turn mildly from one to the next.
pub(super) fn between_ports(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let count = chance.whole(1, 6);
    curve(chance, &stock, count, 0.6)
}

/// Points on a line, or off it by next to nothing, some near each other.
pub(super) fn nearly_straight(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let (start, heading) = (chance.point(100.0), chance.direction());
    let side = rotate(&reference_perpendicular(&heading), &heading, chance.roll());
    let (count, exact) = (chance.whole(1, 6), chance.once_in(3));
    let (mut along, mut points) = (stock.straight(), Vec::new());
    for _ in 0..count {
        along += chance.scale(0.5, 60.0);
        let off = if exact { 0.0 } else { chance.scale(1e-9, 1e-3) };
        points.push(start + heading * along + side * off);
    }
    along += chance.scale(0.5, 60.0) + stock.straight();
    let mut sheet = Sheet::routed(&stock, [(start, heading), (start + heading * along, -heading)], passed(&points));
    if exact {
        sheet.lengths = vec![Some(along)];
    }
    sheet
}

/// Points between the bends of a route.
pub(super) fn between_corners(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let (start, heading) = (chance.point(100.0), chance.direction());
    let mild = |chance: &mut Chance| [Bend::of(chance.from(5.0, 70.0), chance.roll())];
    let first = mild(chance);
    let free = chance.from(0.0, 20.0);
    let in_way = way(start, heading, stock.bend, (&first, &[free, 0.0]), [stock.straight(), 0.0]);
    let mut at = in_way.end + in_way.heading * chance.from(6.0, 12.0) * stock.outer;
    let count = chance.whole(1, 4);
    let (points, ahead) = wander(chance, &stock, (at, in_way.heading), count, 0.5);
    at = points[points.len() - 1];
    // The last straight towards the corner is what the curve ends on.
    let last = mild(chance);
    let far = chance.from(6.0, 12.0) * stock.outer;
    let out_way = way(at, ahead, stock.bend, (&last, &[far, free]), [0.0, stock.straight()]);
    let mut route = corners_of(&in_way.corners);
    route.extend(passed(&points));
    route.extend(corners_of(&out_way.corners));
    let mut sheet = Sheet::routed(&stock, [(start, heading), (out_way.end, -out_way.heading)], route);
    sheet.turns(0.5 * count as f64, 12.0 * stock.outer);
    sheet
}

/// Points that lead smoothly from a port into a coil.
pub(super) fn into_a_coil(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let turns = chance.from(0.2, 2.0);
    let coil = Turns::of(chance, &stock, turns).starting_at(chance.point(50.0));
    let out_way = outwards(&coil, true, &stock, (&[], &[chance.from(0.0, 20.0)]));
    let (at, heading) = coil.pose(false);
    let count = chance.whole(1, 3);
    let first = at - heading * chance.from(6.0, 12.0) * stock.outer;
    let (points, back) = wander(chance, &stock, (first, -heading), count, 0.4);
    let last = points[points.len() - 1] + back * chance.from(6.0, 12.0) * stock.outer;
    let mut route: Vec<Value> = passed(&points).into_iter().rev().collect();
    route.push(coil.station(chance));
    let start = last + back * stock.straight();
    let mut sheet = Sheet::routed(&stock, [(start, -back), (out_way.end, -out_way.heading)], route);
    sheet.turns(TAU * turns + count as f64, coil.radius.max(6.0 * stock.outer));
    sheet
}

/// A smooth curve through `count` points between two ports.
pub(super) fn curve(chance: &mut Chance, stock: &Stock, count: usize, most: f64) -> Sheet {
    let (start, heading) = (chance.point(100.0), chance.direction());
    let first = start + heading * (stock.straight() + chance.from(6.0, 12.0) * stock.outer);
    let (points, ahead) = wander(chance, stock, (first, heading), count, most);
    let end = points[count - 1] + ahead * (chance.from(6.0, 12.0) * stock.outer + stock.straight());
    let mut sheet = Sheet::routed(stock, [(start, heading), (end, -ahead)], passed(&points));
    sheet.turns(most * count as f64, 12.0 * stock.outer);
    sheet
}

/// `count` points, the first at `at`, each reached by turning up to `most` radians; and the heading out of the last.
fn wander(
    chance: &mut Chance,
    stock: &Stock,
    (at, heading): (Vec3, Vec3),
    count: usize,
    most: f64,
) -> (Vec<Vec3>, Vec3) {
    let (mut points, mut ahead) = (vec![at], heading);
    for place in 1..=count {
        let side = rotate(&reference_perpendicular(&ahead), &ahead, chance.roll());
        ahead = unit(&rotate(&ahead, &side, chance.from(0.0, most)));
        if place < count {
            points.push(points[place - 1] + ahead * chance.from(6.0, 12.0) * stock.outer);
        }
    }
    (points, ahead)
}

fn passed(points: &[Vec3]) -> Vec<Value> {
    points.iter().map(|at| json!({ "through": [at.x, at.y, at.z] })).collect()
}
