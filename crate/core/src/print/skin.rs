//! How much of the outer skin needs support.

use super::body::Stretch;
use crate::layout::Vec3;

/// Area of a stretch's skin, mm2, that faces the plate more level than an angle from level of which `cosine` is the
/// cosine.
///
/// Round a circle of radius r across the tangent, the outward normal at an angle a from the steepest way down has the
/// component -c cos a along `up`, c being the sine of the angle between tangent and `up`; the skin there leans from level
/// by the angle of that cosine. So the arc |a| < A needs support, where cos A = cosine / c, and in a bend of curvature k,
/// where an element's length is 1 - r k.n, its area is r (2 A + 2 r (k.e) sin A), e being the unit direction up the
/// section. Shadows that parts of the tube throw on each other are left out, and the bore's own ceiling is another part's.
pub(super) fn support(stretch: &Stretch, up: &Vec3, cosine: f64) -> f64 {
    let along = stretch.tangent.dot(up);
    let across = (1.0 - along * along).max(0.0).sqrt();
    if across <= cosine {
        return 0.0;
    }
    let share = cosine / across;
    let half = libm::acos(share);
    let uphill = stretch.curvature.dot(up) / across;
    let bent = 2.0 * stretch.radius * uphill * (1.0 - share * share).max(0.0).sqrt();
    stretch.length * stretch.radius * (2.0 * half + bent).max(0.0)
}

/// How far the skin that needs support lies below the axis of its stretch on the mean, mm: the mean of r c cos a over
/// |a| < A, which is r c sin A / A. 0 where none needs it.
pub(super) fn sunk(stretch: &Stretch, up: &Vec3, cosine: f64) -> f64 {
    let along = stretch.tangent.dot(up);
    let across = (1.0 - along * along).max(0.0).sqrt();
    if across <= cosine {
        return 0.0;
    }
    let half = libm::acos(cosine / across);
    stretch.radius * across * libm::sin(half) / half
}
