//! Bends that are closer than their straights: how they share the room.

use super::corners::{Leg, Turn};

/// Lets all radii grow together from nothing until a leg is full or a radius is what was asked for; what is held by
/// that stays, the others grow on. So no radius could be larger without taking from one that is smaller (the max-min
/// fair share). The first and the last leg keep `kept` mm straight at their outer ends.
pub(super) fn share_room(turns: &mut [Turn], legs: &[Leg], kept: [f64; 2]) {
    let mut grows = vec![true; turns.len()];
    // A corner that turns by nothing takes no room.
    for (grows, turn) in grows.iter_mut().zip(turns.iter()) {
        *grows = turn.reach() > 0.0;
    }
    let last = legs.len() - 1;
    let ends = |leg: usize| [leg.checked_sub(1), (leg < last).then_some(leg)];
    while grows.contains(&true) {
        let fill = |leg: usize| {
            let room =
                legs[leg].length - if leg == 0 { kept[0] } else { 0.0 } - if leg == last { kept[1] } else { 0.0 };
            let (mut held, mut growing) = (0.0, 0.0);
            for turn in ends(leg).into_iter().flatten() {
                if grows[turn] {
                    growing += turns[turn].reach()
                } else {
                    held += turns[turn].reach() * turns[turn].radius
                }
            }
            if growing > 0.0 { ((room - held) / growing).max(0.0) } else { f64::INFINITY }
        };
        let levels: Vec<f64> = (0..legs.len()).map(fill).collect();
        let full = levels.iter().copied().fold(f64::INFINITY, f64::min);
        let asked = turns
            .iter()
            .zip(&grows)
            .filter(|(_, grows)| **grows)
            .map(|(turn, _)| turn.radius)
            .fold(f64::INFINITY, f64::min);
        if asked <= full {
            for (turn, grows) in turns.iter().zip(grows.iter_mut()) {
                *grows &= turn.radius > asked;
            }
            continue;
        }
        for (leg, level) in levels.iter().enumerate() {
            if *level > full {
                continue;
            }
            for turn in ends(leg).into_iter().flatten().filter(|turn| grows[*turn]).collect::<Vec<_>>() {
                turns[turn].set(full);
                grows[turn] = false;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::corners::{Leg, Turn};
    use super::*;
    use core::f64::consts::FRAC_PI_2;

    fn shared(asked: &[f64], legs: &[f64], kept: [f64; 2]) -> Vec<f64> {
        let mut turns: Vec<Turn> = asked.iter().map(|radius| Turn::of(FRAC_PI_2, *radius)).collect();
        let legs: Vec<Leg> =
            legs.iter().map(|length| Leg { direction: crate::layout::Vec3::x(), length: *length }).collect();
        share_room(&mut turns, &legs, kept);
        turns.iter().map(|turn| turn.radius).collect()
    }

    /// Right angles reach as far as their radius, so the shares are plain arithmetic.
    #[test]
    fn shares_are_max_min_fair() {
        let near = |found: Vec<f64>, wanted: &[f64]| {
            assert!(found.iter().zip(wanted).all(|(a, b)| (a - b).abs() < 1e-12), "{found:?} {wanted:?}");
        };
        near(shared(&[10.0, 10.0], &[50.0, 30.0, 50.0], [0.0, 0.0]), &[10.0, 10.0]);
        near(shared(&[20.0, 20.0], &[50.0, 30.0, 50.0], [0.0, 0.0]), &[15.0, 15.0]);
        // One asks for less than its share: the other has the rest.
        near(shared(&[5.0, 40.0], &[50.0, 30.0, 50.0], [0.0, 0.0]), &[5.0, 25.0]);
        // The lead takes its part of the first leg before anything is shared.
        near(shared(&[40.0, 40.0], &[30.0, 60.0, 90.0], [22.0, 0.0]), &[8.0, 40.0]);
        // A tight middle holds its own two, and what they leave goes to their neighbours.
        near(shared(&[30.0, 30.0, 30.0], &[90.0, 32.0, 12.0, 90.0], [0.0, 0.0]), &[26.0, 6.0, 6.0]);
    }
}
