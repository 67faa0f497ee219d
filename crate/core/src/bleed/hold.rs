//! Where what a trap keeps goes over.

use super::{Keeps, Knot};

/// The height at which the trap at knot `i` spills, and the arc lengths between which the centreline lies beyond it.
///
/// Each way out is followed until it has gone beyond the trap itself, from where all runs off, or to the run's end; the
/// sill is the farthest that it comes back on that way. The trap spills over whichever sill it reaches first.
pub(super) fn spill(knots: &[Knot], i: usize, keeps: Keeps, height: &impl Fn(f64) -> f64) -> (f64, [f64; 2]) {
    // Coolant's heights turned over are air's, so that both are the highest point's question.
    let sign = match keeps {
        Keeps::Air => 1.0,
        Keeps::Coolant => -1.0,
    };
    let top = knots[i].height * sign;
    let sill = |way: &mut dyn Iterator<Item = &Knot>| {
        let below = way.map(|knot| knot.height * sign).take_while(|height| *height <= top);
        below.fold(top, f64::min)
    };
    let before = sill(&mut knots[..i].iter().rev());
    let after = sill(&mut knots[i + 1..].iter());
    let spill = before.max(after);
    let beyond = |s: f64| height(s) * sign > spill;
    let back = knots[..i].iter().rev().position(|knot| knot.height * sign <= spill).map(|steps| i - 1 - steps);
    let on = knots[i + 1..].iter().position(|knot| knot.height * sign <= spill).map(|steps| i + 1 + steps);
    let from = back.map_or(0.0, |k| crossing(knots[k].place[1], knots[k + 1].place[0], &beyond));
    let last = knots[knots.len() - 1].place[1];
    let to = on.map_or(last, |k| crossing(knots[k].place[0], knots[k - 1].place[1], &beyond));
    (spill * sign, [from, to])
}

/// Where between a place that is not beyond and one that is the centreline passes over: between two knots it does so once.
fn crossing(outside: f64, inside: f64, beyond: &impl Fn(f64) -> bool) -> f64 {
    let (mut out, mut within) = (outside, inside);
    for _ in 0..60 {
        let middle = (out + within) / 2.0;
        if beyond(middle) { within = middle } else { out = middle }
    }
    within
}
