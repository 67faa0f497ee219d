//! Coils: cylindrical and conical, of either hand and any axis, joined to ports, corners and each other.

use super::Chance;
use super::sheet::{Sheet, Stock, corners_of};
use super::turns::Turns;
use super::walk::{Bend, Way, gaps, some_bends, way};
use crate::layout::{Vec3, reference_perpendicular, rotate};
use core::f64::consts::TAU;
use serde_json::Value;

/// A cylindrical coil whose ports look along its ends' tangents: its length is known.
pub(super) fn in_line(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let turns = whole_or_not(chance);
    let coil = Turns::of(chance, &stock, turns).starting_at(chance.point(50.0));
    between(chance, &stock, &coil, [&[], &[]])
}

/// A cylindrical coil whose ports stand aside and askew of its ends: the engine finds the links.
pub(super) fn linked(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let turns = whole_or_not(chance);
    let coil = Turns::of(chance, &stock, turns).starting_at(chance.point(50.0));
    let ends = [askew(chance, &stock, &coil, false), askew(chance, &stock, &coil, true)];
    let route = vec![coil.station(chance)];
    turned(Sheet::routed(&stock, ends, route), &[&coil])
}

/// A coil that opens or closes, its ports in line.
pub(super) fn conical(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let turns = whole_or_not(chance);
    let coil = cone(chance, &stock, turns).starting_at(chance.point(50.0));
    between(chance, &stock, &coil, [&[], &[]])
}

/// A hundredth of a turn to three quarters, flat or steep.
pub(super) fn part(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let turns = if chance.once_in(3) { chance.pick(&[0.01, 0.25, 0.5, 0.75]) } else { chance.from(0.01, 0.75) };
    let mut coil = Turns::of(chance, &stock, turns).starting_at(chance.point(50.0));
    if turns <= 0.5 {
        coil.pitch = if chance.once_in(2) { 0.0 } else { chance.scale(0.001, 500.0) };
    }
    between(chance, &stock, &coil, [&[], &[]])
}

/// A coil after a bend or two, and before some.
pub(super) fn between_corners(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let turns = whole_or_not(chance);
    let coil = if chance.once_in(2) { cone(chance, &stock, turns) } else { Turns::of(chance, &stock, turns) };
    let coil = coil.starting_at(chance.point(50.0));
    let (before, after) = (some_bends(chance, [0, 2], [5.0, 60.0]), some_bends(chance, [0, 2], [5.0, 60.0]));
    between(chance, &stock, &coil, [&before, &after])
}

/// Two coils of their own axes, hands and sizes, one far along the other's last tangent.
pub(super) fn two(chance: &mut Chance) -> Sheet {
    let stock = Stock::usual(chance);
    let turns = [chance.from(0.3, 2.0), chance.from(0.3, 2.0)];
    let first = Turns::of(chance, &stock, turns[0]).starting_at(chance.point(50.0));
    let second = Turns::of(chance, &stock, turns[1]);
    let (at, heading) = first.pose(true);
    let apart = 2.0 * (first.radius + second.radius) + chance.from(6.0, 10.0) * stock.bend;
    let second = second.starting_at(at + heading * apart);
    let ends = [askew(chance, &stock, &first, false), askew(chance, &stock, &second, true)];
    let route = vec![first.station(chance), second.station(chance)];
    turned(Sheet::routed(&stock, ends, route), &[&first, &second])
}

/// A coil between ports that are reached over bends, all of it exactly tangent: its length is known.
pub(super) fn between(chance: &mut Chance, stock: &Stock, coil: &Turns, bends: [&[Bend]; 2]) -> Sheet {
    let ways = [false, true].map(|end| {
        let bends = bends[usize::from(end)];
        let gaps = gaps(chance, bends.len(), 20.0);
        outwards(coil, end, stock, (bends, &gaps))
    });
    let mut route: Vec<Value> = corners_of(&ways[0].corners).into_iter().rev().collect();
    route.push(coil.station(chance));
    route.extend(corners_of(&ways[1].corners));
    let ends = [0, 1].map(|end| (ways[end].end, -ways[end].heading));
    let mut sheet = turned(Sheet::routed(stock, ends, route), &[coil]);
    sheet.lengths = vec![Some(ways[0].length + coil.length() + ways[1].length)];
    sheet
}

/// The way out of a coil's start or end to a port.
pub(super) fn outwards(coil: &Turns, end: bool, stock: &Stock, walk: (&[Bend], &[f64])) -> Way {
    let (at, heading) = coil.pose(end);
    way(at, if end { heading } else { -heading }, stock.bend, walk, [0.0, stock.straight()])
}

/// A port some way out of a coil's start or end, a little aside, that looks back at an angle: tube end and way out of it.
fn askew(chance: &mut Chance, stock: &Stock, coil: &Turns, end: bool) -> (Vec3, Vec3) {
    let (at, heading) = coil.pose(end);
    let out = if end { heading } else { -heading };
    let side = rotate(&reference_perpendicular(&out), &out, chance.roll());
    let far = stock.straight() + chance.from(5.0, 10.0) * stock.bend;
    let aside = chance.from(0.0, 1.0) * stock.bend;
    let tilt = if chance.once_in(4) { 0.0 } else { chance.from(0.0, 1.0) };
    let back = rotate(&-out, &out.cross(&rotate(&side, &out, chance.roll())), tilt);
    (at + out * far + side * aside, back)
}

/// A cone whose narrow end has room inside it.
fn cone(chance: &mut Chance, stock: &Stock, turns: f64) -> Turns {
    let mut coil = Turns::of(chance, stock, turns);
    coil.radius = coil.radius.max(stock.outer);
    coil.end_radius = coil.radius * chance.from(1.05, 2.5);
    if chance.once_in(2) {
        (coil.radius, coil.end_radius) = (coil.end_radius, coil.radius);
    }
    coil
}

fn whole_or_not(chance: &mut Chance) -> f64 {
    if chance.once_in(2) { chance.pick(&[1.0, 1.25, 2.0, 3.0]) } else { chance.from(0.1, 3.5) }
}

fn turned(mut sheet: Sheet, coils: &[&Turns]) -> Sheet {
    for coil in coils {
        sheet.turns(TAU * coil.turns, coil.widest());
    }
    sheet
}
