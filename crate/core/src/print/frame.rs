//! A rotation from the datum to the plate.

use crate::design::Stance;
use crate::layout::{Vec3, perpendicular, reference_perpendicular, turn, unit};

/// The plate's axes in the datum.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Frame {
    /// Unit directions of the plate's x, y and z; z points away from the plate.
    pub rows: [Vec3; 3],
}

impl Frame {
    /// The unit direction `up` stands on the plate; its reference perpendicular comes to lie `turned` radians from the
    /// plate's x, by the right-hand rule.
    pub fn of(up: &Vec3, turned: f64) -> Self {
        let reference = reference_perpendicular(up);
        let aside = up.cross(&reference);
        let (sin, cos) = turn(turned);
        Self { rows: [reference * cos - aside * sin, reference * sin + aside * cos, *up] }
    }

    /// A stance as stated.
    pub fn stated(stance: &Stance) -> Self {
        Self::of(&unit(&Vec3::from(stance.up)), stance.turn_deg.to_radians())
    }

    /// The direction that points away from the plate.
    pub fn up(&self) -> Vec3 {
        self.rows[2]
    }

    /// The turn about it, radians, (-pi, pi].
    pub fn turned(&self) -> f64 {
        let reference = reference_perpendicular(&self.rows[2]);
        libm::atan2(self.rows[1].dot(&reference), self.rows[0].dot(&reference))
    }

    /// A direction or point of the datum in the plate's axes.
    pub fn seen(&self, v: &Vec3) -> Vec3 {
        Vec3::new(self.rows[0].dot(v), self.rows[1].dot(v), self.rows[2].dot(v))
    }

    /// The frame turned by the small rotation `by` (its axis times radians, in the datum), made square again.
    pub(super) fn tilted(&self, by: &Vec3) -> Self {
        let angle = by.norm();
        if angle == 0.0 {
            return *self;
        }
        let axis = by / angle;
        let [x, _, z] = self.rows.map(|row| crate::layout::rotate(&row, &axis, angle));
        let z = unit(&z);
        let x = perpendicular(&z, &x);
        Self { rows: [x, z.cross(&x), z] }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_turn_is_told_as_it_was_given_and_axes_are_square() {
        for (up, turned) in [([0.0, 0.0, 1.0], 0.5), ([0.0, 1.0, 0.0], -2.0), ([1.0, 2.0, -2.0], 3.0)] {
            let frame = Frame::of(&unit(&Vec3::from(up)), turned);
            assert!((frame.turned() - turned).abs() < 1e-14);
            let [x, y, z] = frame.rows;
            assert!((x.cross(&y) - z).norm() < 1e-15);
        }
        // The datum's z up and no turn: coordinates stay.
        let same = Frame::of(&Vec3::z(), 0.0);
        assert_eq!(same.seen(&Vec3::new(1.0, 2.0, 3.0)), Vec3::new(1.0, 2.0, 3.0));
        // A quarter turn against the clock brings x to y.
        let quarter = Frame::of(&Vec3::z(), core::f64::consts::FRAC_PI_2);
        assert_eq!(quarter.seen(&Vec3::x()), Vec3::y());
    }
}
