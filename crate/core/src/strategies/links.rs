//! Empty routes: the engine finds the shortest arc-straight-arc link.

use super::Chance;
use super::sheet::{Sheet, Stock};
use crate::layout::{Vec3, reference_perpendicular, rotate};
use core::f64::consts::PI;
use serde_json::json;

/// Ports that look at each other along one axis: a straight tube.
pub(super) fn facing(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let gap = chance.scale(0.5, 300.0);
    let length = 2.0 * stock.straight() + gap;
    let (start, out) = (chance.point(100.0), chance.direction());
    linked(&stock, [(start, out), (start + out * length, -out)], Some(length))
}

/// Ports that look at each other past a hair's breadth, or at a hair's angle.
pub(super) fn nearly_in_line(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let (start, out) = (chance.point(100.0), chance.direction());
    let side = rotate(&reference_perpendicular(&out), &out, chance.roll());
    let offset = if chance.once_in(4) { 0.0 } else { chance.scale(1e-9, 1.0) };
    let tilt = if chance.once_in(2) { 0.0 } else { chance.scale(1e-8, 1e-2) };
    let length = 2.0 * stock.straight() + chance.from(2.0, 8.0) * stock.bend;
    let back = rotate(&-out, &out.cross(&rotate(&side, &out, chance.roll())), tilt);
    linked(&stock, [(start, out), (start + out * length + side * offset, back)], None)
}

/// Ports that look the same way: a U.
pub(super) fn side_by_side(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let (start, out) = (chance.point(100.0), chance.direction());
    let side = rotate(&reference_perpendicular(&out), &out, chance.roll());
    let between = if chance.once_in(3) { 0.0 } else { chance.from(0.0, 150.0) };
    let length = 2.0 * stock.straight() + PI * stock.bend + between;
    linked(&stock, [(start, out), (start + side * (2.0 * stock.bend + between), out)], Some(length))
}

/// Ports that look away from each other.
pub(super) fn back_to_back(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let (start, out) = (chance.point(100.0), chance.direction());
    let side = rotate(&reference_perpendicular(&out), &out, chance.roll());
    let apart = if chance.once_in(3) { 0.0 } else { chance.from(0.0, 100.0) };
    let aside = chance.from(4.5, 12.0) * stock.bend;
    linked(&stock, [(start, out), (start - out * apart + side * aside, -out)], None)
}

/// Ports anywhere, far enough apart for any two directions.
pub(super) fn anywhere(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let start = chance.point(100.0);
    let far = 2.0 * stock.straight() + chance.from(5.0, 15.0) * stock.bend;
    let end = start + chance.direction() * far;
    let outs = [chance.direction(), chance.direction()];
    linked(&stock, [(start, outs[0]), (end, outs[1])], None)
}

/// Elbows of every angle and turn on both ports.
pub(super) fn elbows(chance: &mut Chance) -> Sheet {
    let mut stock = Stock::usual(chance);
    let angle = if chance.once_in(3) { 90.0 } else { chance.from(1.0, 179.0) };
    let turn = if chance.once_in(2) {
        chance.pick(&[-180.0, -90.0, 0.0, 45.0, 90.0, 360.0])
    } else {
        chance.from(-360.0, 360.0)
    };
    let (rise, reach) = (chance.from(8.0, 20.0), chance.from(8.0, 20.0));
    stock.elbow = Some(json!({ "angle_deg": angle, "rise": rise, "reach": reach, "turn_deg": turn }));
    let far = 2.0 * (stock.straight() + stock.height + rise + reach) + chance.from(6.0, 15.0) * stock.bend;
    let start = chance.point(100.0);
    let end = start + chance.direction() * far;
    let outs = [chance.direction(), chance.direction()];
    linked(&stock, [(start, outs[0]), (end, outs[1])], None)
}

/// Ports closer than their bend radius likes.
pub(super) fn close(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let start = chance.point(100.0);
    let end = start + chance.direction() * chance.from(0.1, 4.0) * stock.bend;
    let outs = [chance.direction(), chance.direction()];
    linked(&stock, [(start, outs[0]), (end, outs[1])], None)
}

fn linked(stock: &Stock, ends: [(Vec3, Vec3); 2], length: Option<f64>) -> Sheet {
    let mut sheet = Sheet::single(stock, ends, &[]);
    sheet.lengths = vec![length];
    sheet
}
