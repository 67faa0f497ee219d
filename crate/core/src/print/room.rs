//! The build volume, and how a tube is turned to fit it best.

use super::body::{Disc, extent};
use crate::design::{Printer, Way};
use crate::golden::highest;
use crate::layout::{Vec3, perpendicular, reference_perpendicular};
use core::f64::consts::PI;

/// What sticks out by no more is taken to fit, mm: far below any margin, and above what cutting a bend into stretches does.
pub(super) const FITS_WITHIN: f64 = 0.01;

/// The room of a printer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Room {
    /// The build volume, mm.
    pub volume: [f64; 3],
    /// What is left of it between the margins, mm; not above zero where they leave nothing.
    pub size: [f64; 3],
    /// Height of the tube's lowest point over the plate, mm. Resin stands on supports and powder within powder, by the
    /// margin; filament lies on the plate.
    pub lift: f64,
}

impl Room {
    /// The room of a printer that prints in that way.
    pub fn of(printer: &Printer, way: Option<Way>) -> Self {
        let volume = printer.build_volume;
        let lift = if way == Some(Way::Filament) { 0.0 } else { printer.margin };
        Self { volume, size: volume.map(|side| side - 2.0 * printer.margin), lift }
    }

    /// Least room left on any side by a box of that size, mm; negative where it sticks out.
    pub fn slack(&self, size: [f64; 3]) -> f64 {
        (0..3).map(|axis| self.size[axis] - size[axis]).fold(f64::INFINITY, f64::min)
    }

    /// Whether a disc of that diameter fits in some direction: across a unit normal n it takes d sqrt(1 - n_i^2) along
    /// each axis, and those squares add up to 2 d^2.
    pub fn holds_disc(&self, diameter: f64) -> bool {
        let share = |side: &f64| (side.max(0.0) / diameter).min(1.0);
        self.size.iter().map(|side| share(side) * share(side)).sum::<f64>() >= 2.0
    }

    /// The largest diameter that [`Self::holds_disc`], mm. With the sides a <= b <= c it is sqrt(a^2 + b^2) where that is no
    /// more than c; else all three sides bind, and it is sqrt((a^2 + b^2 + c^2) / 2).
    pub fn largest_disc(&self) -> f64 {
        let squares = self.size.map(|side| side.max(0.0) * side.max(0.0));
        let longest = squares.into_iter().fold(0.0, f64::max);
        let all: f64 = squares.iter().sum();
        (all - longest).max(0.0).min(all / 2.0).sqrt()
    }

    /// The diagonal from corner to corner, mm.
    pub fn diagonal(&self) -> f64 {
        Vec3::from(self.size.map(|side| side.max(0.0))).norm()
    }
}

/// Turns that are tried, evenly over half a turn; widths at half of them ahead are the depths.
const TURNS: usize = 24;

/// The turn about `up`, radians, that leaves most room, and how much that is over all three axes. `closely` looks for it
/// between the turns that are tried even where one of them fits.
pub(super) fn best_turn(rim: &[Disc], up: &Vec3, room: &Room, across: f64, closely: bool) -> (f64, f64) {
    let (x, y) = axes(up);
    let above = room.size[2] - width(rim, up);
    let mut widths = [0.0; TURNS];
    for (k, found) in widths.iter_mut().enumerate() {
        *found = width(rim, &along(&x, &y, PI * k as f64 / TURNS as f64));
    }
    // At a turn the plate's x is `along(turn)`, its y a quarter further.
    let slack = |k: usize| (room.size[0] - widths[k]).min(room.size[1] - widths[(k + TURNS / 2) % TURNS]);
    let best = |skip: Option<usize>| {
        let near = |k: usize| skip.is_some_and(|s| k.abs_diff(s) <= 1 || k.abs_diff(s) == TURNS - 1);
        (0..TURNS).filter(|k| !near(*k)).max_by(|a, b| slack(*a).total_cmp(&slack(*b))).unwrap_or_default()
    };
    let first = best(None);
    let spacing = PI / TURNS as f64;
    // No width changes faster than the tube is across, so that a turn too far off is not worth a closer look.
    let hopeless = slack(first) < -across * spacing || above < -across * spacing;
    let (mut turned, mut most) = (spacing * first as f64, slack(first));
    if closely || (most < 0.0 && !hopeless) {
        for k in [first, best(Some(first))] {
            let middle = spacing * k as f64;
            let steps = if closely { 30 } else { 14 };
            let (at, found) = highest([middle - spacing, middle + spacing], steps, |turned| {
                let aside = along(&x, &y, turned + PI / 2.0);
                (room.size[0] - width(rim, &along(&x, &y, turned))).min(room.size[1] - width(rim, &aside))
            });
            if found > most {
                (turned, most) = (at, found);
            }
        }
    }
    // What lies `turned` from the reference comes to lie along x, so the tube is turned back by as much.
    (-turned, most.min(above))
}

fn axes(up: &Vec3) -> (Vec3, Vec3) {
    let x = perpendicular(up, &reference_perpendicular(up));
    (x, up.cross(&x))
}

fn along(x: &Vec3, y: &Vec3, turned: f64) -> Vec3 {
    let (sin, cos) = crate::layout::turn(turned);
    x * cos + y * sin
}

/// How wide a tube of these discs is along a unit direction, mm.
pub(super) fn width(discs: &[Disc], direction: &Vec3) -> f64 {
    let [low, high] = extent(discs, direction);
    high - low
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Against the disc's own widths sqrt(1 - n_i^2), its normal tried in all directions of a fine net.
    #[test]
    fn the_largest_disc_is_what_trying_all_directions_finds() {
        for size in [[10.0, 20.0, 40.0], [40.0, 10.0, 20.0], [10.0, 11.0, 12.0], [30.0, 30.0, 30.0], [5.0, 80.0, 80.0]]
        {
            let room = Room { volume: size, size, lift: 0.0 };
            let allowed = |n: &Vec3| {
                let widths = n.map(|part| (1.0 - part * part).max(1e-18).sqrt());
                (0..3).map(|axis| size[axis] / widths[axis]).fold(f64::INFINITY, f64::min)
            };
            let tried = super::super::spiral::spiral(200_000).map(|n| allowed(&n)).fold(0.0, f64::max);
            let largest = room.largest_disc();
            assert!(tried <= largest * (1.0 + 1e-9) && tried > largest * 0.99, "{size:?}: {largest} {tried}");
            assert!(room.holds_disc(largest * 0.999) && !room.holds_disc(largest * 1.001));
        }
    }
}
