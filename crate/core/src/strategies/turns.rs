//! A coil of a made-up design: its formula, its ends and its length.

use super::Chance;
use super::sheet::Stock;
use crate::layout::{Vec3, reference_perpendicular};
use core::f64::consts::TAU;
use serde_json::{Value, json};

/// A coil, as the document states it.
#[derive(Debug, Clone)]
pub struct Turns {
    pub centre: Vec3,
    /// Unit direction of the axis.
    pub axis: Vec3,
    pub radius: f64,
    pub end_radius: f64,
    pub pitch: f64,
    pub turns: f64,
    pub left: bool,
    pub start_deg: f64,
}

impl Turns {
    /// A cylindrical coil about the datum of any axis, hand and start, whose neighbouring turns clear each other.
    pub fn of(chance: &mut Chance, stock: &Stock, turns: f64) -> Self {
        let outer = stock.outer;
        let radius = chance.scale(if turns > 0.5 { 0.8 } else { 0.56 } * outer, 6.0 * outer);
        let pitch = outer * chance.from(1.3, 2.5) + 1.0;
        let start_deg = if chance.once_in(2) {
            chance.pick(&[-360.0, -90.0, 0.0, 45.0, 90.0, 180.0, 270.0, 360.0])
        } else {
            chance.from(-360.0, 360.0)
        };
        let axis = chance.direction();
        let left = chance.once_in(2);
        Self { centre: Vec3::zeros(), axis, radius, end_radius: radius, pitch, turns, left, start_deg }
    }

    /// The coil, moved so that its first point lies at `at`.
    pub fn starting_at(mut self, at: Vec3) -> Self {
        self.centre += at - self.pose(false).0;
        self
    }

    /// Point and direction of travel at its start or its end.
    pub fn pose(&self, end: bool) -> (Vec3, Vec3) {
        let angle = TAU * self.turns;
        let turned = if end { angle } else { 0.0 };
        let sign = if self.left { -1.0 } else { 1.0 };
        let e = reference_perpendicular(&self.axis);
        let f = self.axis.cross(&e);
        let (sin, cos) = libm::sincos(self.start_deg.to_radians() + sign * turned);
        let (out, around) = (e * cos + f * sin, (f * cos - e * sin) * sign);
        let radius = if end { self.end_radius } else { self.radius };
        let [widening, climb] = [(self.end_radius - self.radius) / angle, self.pitch / TAU];
        let at = self.centre + out * radius + self.axis * (climb * turned);
        (at, (out * widening + around * radius + self.axis * climb).normalize())
    }

    /// Its length in closed form, mm.
    pub fn length(&self) -> f64 {
        let angle = TAU * self.turns;
        let [widening, climb] = [(self.end_radius - self.radius) / angle, self.pitch / TAU];
        if widening == 0.0 {
            return angle * libm::hypot(self.radius, climb);
        }
        // The integral of sqrt(k^2 + r^2) dr / widening, with k^2 = widening^2 + climb^2.
        let k = libm::hypot(widening, climb);
        let upto = |r: f64| (r * libm::hypot(k, r) + k * k * libm::asinh(r / k)) / 2.0;
        (upto(self.end_radius) - upto(self.radius)) / widening
    }

    /// Its widest radius, mm.
    pub fn widest(&self) -> f64 {
        self.radius.max(self.end_radius)
    }

    /// The station, its axis written at any length above zero.
    pub fn station(&self, chance: &mut Chance) -> Value {
        let [c, axis] = [self.centre, self.axis * chance.pick(&[1.0, 0.01, 7.0])];
        let mut coil = json!({ "centre": [c.x, c.y, c.z], "axis": [axis.x, axis.y, axis.z], "radius": self.radius,
            "pitch": self.pitch, "turns": self.turns, "hand": if self.left { "left" } else { "right" },
            "start_deg": self.start_deg });
        if self.end_radius != self.radius {
            coil["end_radius"] = self.end_radius.into();
        }
        json!({ "coil": coil })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_are_those_of_many_chords() {
        let mut chance = Chance::of(5);
        let stock = Stock::usual(&mut chance);
        for _ in 0..20 {
            let turns = chance.from(0.2, 2.0);
            let mut coil = Turns::of(&mut chance, &stock, turns);
            coil.end_radius *= chance.from(1.0, 2.0);
            let at = |part: f64| {
                let radius = coil.radius + (coil.end_radius - coil.radius) * part;
                Turns { turns: turns * part, end_radius: radius, ..coil.clone() }.pose(true).0
            };
            let count = 20_000;
            let chords: f64 =
                (0..count).map(|i| (at((i + 1) as f64 / count as f64) - at(i as f64 / count as f64)).norm()).sum();
            assert!((chords / coil.length() - 1.0).abs() < 1e-7, "{coil:?}: {chords} {}", coil.length());
        }
    }
}
