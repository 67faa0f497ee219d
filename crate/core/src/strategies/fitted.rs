//! Bends closer than their straights, which share the room.

use super::Chance;
use super::sheet::{Sheet, Stock};
use super::walk::{Bend, way};

/// Right angles whose legs are shorter than two radii.
pub(super) fn right_angles(chance: &mut Chance) -> Sheet {
    shared(chance, &[90.0], 1.3)
}

/// Bends of many angles, some of radii of their own.
pub(super) fn any_angles(chance: &mut Chance) -> Sheet {
    shared(chance, &[2.0, 30.0, 45.0, 60.0, 90.0, 100.0], 1.7)
}

/// A staircase whose legs are at least `least` outer diameters long, so that every share leaves the tube room to turn.
fn shared(chance: &mut Chance, angles: &[f64], least: f64) -> Sheet {
    let mut stock = Stock::usual(chance);
    let count = chance.whole(2, 7);
    let mut bends: Vec<Bend> = Vec::new();
    for _ in 0..count {
        // Never back over itself: the other way round each time, or a quarter turn aside.
        let roll = chance.pick(&[180.0, 180.0, 90.0, -90.0f64]).to_radians();
        bends.push(Bend::of(chance.pick(angles), roll));
    }
    // The walk draws legs, so its bends have no size here.
    stock.bend = 0.0;
    let legs: Vec<f64> = (0..=count).map(|_| chance.from(least, 4.0) * stock.outer).collect();
    let mut walked = stock.clone();
    walked.fit_bends = true;
    walked.bend = chance.from(1.0, 8.0) * stock.outer;
    let (start, heading) = (chance.point(100.0), chance.direction());
    let steps = way(start, heading, 0.0, (&bends, &legs), [stock.straight(); 2]);
    let corners: Vec<_> = steps
        .corners
        .iter()
        .map(|(at, _)| (*at, chance.once_in(4).then(|| chance.from(1.0, 4.0) * stock.outer)))
        .collect();
    let mut sheet = Sheet::single(&walked, [(start, heading), (steps.end, -steps.heading)], &corners);
    sheet.turns(bends.iter().map(|bend| bend.angle).sum(), 4.0 * stock.outer);
    sheet
}
