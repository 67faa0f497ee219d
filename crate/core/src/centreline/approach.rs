//! The bend that joins a port's axis to a corner that does not lie on it.

use super::pen::Bend;
use crate::layout::{Vec3, perpendicular, reference_perpendicular};
use core::f64::consts::{FRAC_PI_2, PI};

/// A bend that starts at a point along a direction and ends heading straight for a target.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Approach {
    /// Angle turned through, radians, [0, 2 pi).
    pub angle: f64,
    /// Unit direction from the start to the bend's centre.
    pub normal: Vec3,
    /// Where the bend ends.
    pub point: Vec3,
    /// Unit direction from there to the target.
    pub direction: Vec3,
    /// Distance from there to the target, mm.
    pub distance: f64,
}

impl Approach {
    /// The bend of `radius` that leaves `start` along the unit direction `out` and then heads for `target`. Where the
    /// target lies inside the bend's circle, the largest radius that still reaches it.
    pub fn towards(start: &Vec3, out: &Vec3, radius: f64, target: &Vec3) -> Result<Self, f64> {
        let offset = target - start;
        let ahead = offset.dot(out);
        let lateral = offset - out * ahead;
        let aside = lateral.norm();
        // A target straight behind leaves the plane open; the reference perpendicular settles it.
        let normal = if aside > 0.0 { perpendicular(out, &lateral) } else { reference_perpendicular(out) };
        // From the centre of the bend to the target, in the plane (out, normal).
        let (x, y) = (ahead, aside - radius);
        let squared = x * x + y * y - radius * radius;
        if squared < 0.0 {
            return Err((ahead * ahead + aside * aside) / (2.0 * aside));
        }
        let distance = squared.sqrt();
        // The target seen from the centre lies atan(distance / radius) past the bend's end.
        let turned = libm::atan2(y, x) + FRAC_PI_2 - libm::atan2(distance, radius);
        let mut angle = if turned < 0.0 { turned + 2.0 * PI } else { turned };
        if angle >= 2.0 * PI {
            angle = 0.0;
        }
        let (sin, cos) = crate::layout::turn(angle);
        let point = start + (out * sin + normal * (1.0 - cos)) * radius;
        Ok(Self { angle, normal, point, direction: out * cos + normal * sin, distance })
    }

    /// It as a bend of `radius` from its start.
    pub fn bend(&self, radius: f64) -> Bend {
        Bend { radius, angle: self.angle, normal: self.normal, station: None }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reaches_the_target_tangentially_all_round() {
        let start = Vec3::new(3.0, -2.0, 7.0);
        for k in 0..48 {
            let around = f64::from(k) * PI / 24.0 + 0.01;
            let (s, c) = libm::sincos(around);
            let target = start + Vec3::new(40.0 * c, 0.0, 40.0 * s);
            let a = Approach::towards(&start, &Vec3::z(), 10.0, &target).unwrap();
            assert!((a.point + a.direction * a.distance - target).norm() < 1e-12, "{k}");
            assert!((a.direction.norm() - 1.0).abs() < 1e-14 && a.angle < 2.0 * PI);
        }
    }

    #[test]
    fn names_the_largest_radius_for_a_target_inside_the_circle() {
        let target = Vec3::new(6.0, 0.0, 2.0);
        let largest = Approach::towards(&Vec3::zeros(), &Vec3::z(), 10.0, &target).unwrap_err();
        // The circle through the origin, tangent to z, that passes through (6, 2): r = (36 + 4) / 12.
        assert!((largest - 40.0 / 12.0).abs() < 1e-14);
        assert!(Approach::towards(&Vec3::zeros(), &Vec3::z(), largest * 0.999_999, &target).is_ok());
        assert!(Approach::towards(&Vec3::zeros(), &Vec3::z(), largest * 1.000_001, &target).is_err());
    }
}
