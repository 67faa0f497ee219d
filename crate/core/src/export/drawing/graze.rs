//! Where a line of sight grazes a tube.

use super::trace::Spot;
use super::view::View;
use crate::layout::{Vec3, unit};

/// Below this sine of the angle between tube and line of sight the tube is seen end-on.
const END_ON: f64 = 1e-3;
/// Cosine of the widest swing of the edges between two samples: 8 degrees.
const SWING: f64 = 0.990;
/// Rounds in which the place on a bend's skin settles; each narrows it by the share that the radius has of the bend's.
const ROUNDS: usize = 24;
/// From this sine on both edges are as good as together.
const TOGETHER: f64 = 0.9;

/// The two places round a tube at one arc length that the line of sight grazes, as unit directions out of the tube.
pub(super) struct Graze {
    /// Across tube and line of sight: where a tube of even thickness is grazed, on one side; the other is opposite.
    pub across: Vec3,
    /// Where this one is.
    pub sides: [Vec3; 2],
    /// Across the tube, in the plane of tube and line of sight; and how far along it, from -1 to 1, each place is.
    aside: Vec3,
    sines: [f64; 2],
}

impl Graze {
    /// None where the tube is seen end-on, or flares so much that no line of sight grazes it.
    ///
    /// The skin's normal in a direction `out` of the tube is out (1 - r k.out) - r' t (t the tangent, k the centreline's
    /// curvature, r the radius); it is grazed where that is square to the line of sight.
    pub fn of(spot: &Spot, view: &View) -> Option<Self> {
        if is_end_on(spot, view) {
            return None;
        }
        let tangent = &spot.sample.tangent;
        let across = unit(&tangent.cross(&view.toward));
        let aside = across.cross(tangent);
        let flare = spot.slope * tangent.dot(&view.toward) / aside.dot(&view.toward);
        let place = |side: f64| {
            let mut sine = 0.0_f64;
            for _ in 0..if flare == 0.0 { 0 } else { ROUNDS } {
                let out = across * (side * (1.0 - sine * sine).max(0.0).sqrt()) + aside * sine;
                let stretch = 1.0 - spot.radius * spot.sample.curvature.dot(&out);
                sine = (flare / stretch.max(1e-3)).clamp(-1.0, 1.0);
            }
            (sine.abs() < 1.0).then(|| (sine, across * (side * (1.0 - sine * sine).sqrt()) + aside * sine))
        };
        let ((first, one), (second, other)) = (place(1.0)?, place(-1.0)?);
        Some(Self { across, sides: [one, other], aside, sines: [first, second] })
    }

    /// The direction of the place where both edges meet, if that is close by.
    pub fn tip(&self) -> Option<Vec3> {
        let [one, other] = self.sines;
        (one.abs().min(other.abs()) > TOGETHER).then(|| self.aside * one.signum())
    }

    /// Whether the edges from one sample to another may be drawn straight.
    pub fn swings_little(from: &Spot, to: &Spot, view: &View) -> bool {
        match (Self::of(from, view), Self::of(to, view)) {
            (Some(a), Some(b)) => a.sides.iter().zip(&b.sides).all(|(one, other)| one.dot(other) >= SWING),
            (None, None) => true,
            _ => false,
        }
    }
}

/// Whether a tube is seen end-on there.
pub(super) fn is_end_on(spot: &Spot, view: &View) -> bool {
    spot.sample.tangent.cross(&view.toward).norm() < END_ON
}

#[cfg(test)]
mod tests {
    use super::super::view::front;
    use super::*;
    use crate::centreline::Sample;

    /// A cone's picture is bounded by the tangents to all its circles' pictures, which are as far from the point of the
    /// one whose radius is nothing as a circle's tangents: sin(place) = tan(half the cone's angle) / tan(angle of sight).
    #[test]
    fn a_cone_is_grazed_where_its_plane_tangents_say() {
        for (slope, sight) in [(0.2, 0.9), (0.2, 0.25), (-0.4, 1.2), (0.0, 0.5), (0.3, 0.25)] {
            let view = front();
            let (sin, cos) = libm::sincos(sight);
            let tangent = view.toward * cos + view.right * sin;
            let sample = Sample { point: Vec3::zeros(), tangent, curvature: Vec3::zeros() };
            let found = Graze::of(&Spot { s: 0.0, sample, radius: 6.0, slope }, &view);
            let expected = slope / libm::tan(sight);
            match found {
                None => assert!(expected.abs() >= 1.0, "{slope} {sight}"),
                Some(graze) => {
                    assert!(expected.abs() < 1.0, "{slope} {sight}");
                    for out in graze.sides {
                        assert!((out.dot(&graze.aside) - expected).abs() < 1e-12 && out.dot(&tangent).abs() < 1e-12);
                        assert!((out - tangent * slope).dot(&view.toward).abs() < 1e-12, "square to the skin's normal");
                    }
                }
            }
        }
    }
}
