//! Numbers on their way out: degrees that are whole stay whole, and zero has no sign.

use serde::Serialize;

use crate::centreline::Bounds;
use crate::layout::Vec3;

/// How far, relative to its size, an angle may be from a whole number of degrees to be told as that number. Four
/// roundings lie between the builder's 90 and here (radians, a sine and a cosine, their arc, degrees), each of at most
/// 1.2e-16; ten thousand times less than anyone can state.
const WHOLE: f64 = 1e-12;

/// Radians in degrees. What is a whole number of degrees but for rounding is that number, so that a right angle is
/// told as 90 and not as 90.00000000000001.
pub(crate) fn degrees(radians: f64) -> f64 {
    let degrees = radians.to_degrees();
    let whole = degrees.round();
    unsigned_zero(if (degrees - whole).abs() <= WHOLE * whole.abs() { whole } else { degrees })
}

/// Minus zero as zero.
pub(super) fn unsigned_zero(value: f64) -> f64 {
    value + 0.0
}

/// A point as its three coordinates.
pub(crate) fn point(v: &Vec3) -> [f64; 3] {
    [v.x, v.y, v.z].map(unsigned_zero)
}

/// A box as its lowest and its highest corner.
#[derive(Serialize)]
pub(crate) struct BoundsMm {
    min: [f64; 3],
    max: [f64; 3],
}

impl BoundsMm {
    pub(crate) fn of(bounds: &Bounds) -> Self {
        Self { min: point(&bounds.min), max: point(&bounds.max) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use core::f64::consts::PI;

    #[test]
    fn right_angles_stay_right_and_others_stay_as_they_are() {
        assert_eq!(degrees(PI / 2.0), 90.0);
        assert_eq!(degrees(PI / 3.0), 60.0);
        assert_eq!(degrees(-PI), -180.0);
        assert_eq!(degrees(PI / 2.0 + 1e-11), (PI / 2.0 + 1e-11).to_degrees());
        assert_eq!(degrees(-0.0).to_bits(), 0.0_f64.to_bits());
        // A corner of 1e-6 degrees is no straight.
        assert!((degrees(1e-6_f64.to_radians()) - 1e-6).abs() < 1e-20);
        // The angle of the 3-4-5 triangle, 53.130102354155978703... by a series in 40-digit decimals.
        assert_eq!(degrees(libm::atan2(4.0, 3.0)), 53.13010235415598);
    }
}
