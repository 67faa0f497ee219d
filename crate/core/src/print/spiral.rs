//! Directions spread evenly over the sphere.

use crate::layout::Vec3;
use core::f64::consts::PI;

/// `count` directions on a spiral of the golden angle from pole to pole: each stands for the same share of the sphere.
pub(super) fn spiral(count: u32) -> impl Iterator<Item = Vec3> {
    let golden = PI * (3.0 - 5f64.sqrt());
    (0..count).map(move |i| {
        let z = 1.0 - (2.0 * f64::from(i) + 1.0) / f64::from(count);
        let (sin, cos) = libm::sincos(golden * f64::from(i));
        let r = (1.0 - z * z).max(0.0).sqrt();
        Vec3::new(r * cos, r * sin, z)
    })
}
