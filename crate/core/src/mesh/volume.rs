//! How far rings inside a bend are stretched, so that the polyhedron keeps the exact volume.

use core::f64::consts::FRAC_PI_2;

/// How far rings inside an arc of `steps` even steps are stretched away from the bend's axis, as a factor, so that the
/// arc keeps its exact volume although its two outermost rings stay in place.
///
/// A slice between planes `step` apart through the axis, from factor a to factor b, holds a b sin(step) / step of the
/// exact slice; two slices have one outermost ring, the others none.
pub(super) fn stretch(steps: usize, step: f64) -> f64 {
    let lack = step / libm::sin(step);
    match steps {
        0 | 1 => 1.0,
        _ if step < 1e-9 => 1.0,
        2 => lack,
        _ => {
            let inner = steps as f64 - 2.0;
            ((1.0 + inner * steps as f64 * lack).sqrt() - 1.0) / inner
        }
    }
}

/// The same for a stretch of uneven steps and curvature: a factor for each ring, 1 for the outermost.
///
/// Rings are given by arc length, curvature and the area of their section. A slice lacks a sixth of the square of what it
/// turns, whether the curve is flat or not; each ring makes up for its share of both slices it stands between, and one
/// common factor, from a quadratic equation, makes the sum exact.
pub(super) fn stretches(rings: &[RingPlace]) -> Vec<f64> {
    let last = rings.len() - 1;
    let mut shares = vec![0.0; last + 1];
    for i in 1..last {
        let (before, after) = (rings[i].s - rings[i - 1].s, rings[i + 1].s - rings[i].s);
        let square = before * before - before * after + after * after;
        shares[i] = rings[i].bend * rings[i].bend * square / 12.0;
    }
    let (mut second, mut first, mut none) = (0.0, 0.0, 0.0);
    for i in 0..last {
        let (here, there) = (&rings[i], &rings[i + 1]);
        let length = there.s - here.s;
        let square = (here.bend * here.bend + here.bend * there.bend + there.bend * there.bend) / 3.0;
        let turn = (square.sqrt() * length).min(FRAC_PI_2);
        let kept = if turn > 0.0 { libm::sin(turn) / turn } else { 1.0 };
        let weight = length * (here.area + there.area);
        none += weight * (kept - 1.0);
        first += weight * kept * (shares[i] + shares[i + 1]);
        second += weight * kept * shares[i] * shares[i + 1];
    }
    // The root of second c^2 + first c + none = 0 that is near one, written so that nothing cancels.
    let common =
        if first > 0.0 { -2.0 * none / (first + (first * first - 4.0 * second * none).max(0.0).sqrt()) } else { 0.0 };
    shares.iter().map(|share| 1.0 + common * share).collect()
}

/// A ring's place on a stretch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct RingPlace {
    /// Arc length, mm.
    pub s: f64,
    /// Curvature, 1/mm.
    pub bend: f64,
    /// Area of the section, or any number in proportion to it.
    pub area: f64,
}

#[cfg(test)]
mod tests {
    use super::*;

    /// On an even arc the general answer is the arc's own.
    #[test]
    fn uneven_stretches_agree_with_arcs() {
        for (steps, step) in [(2, 0.3), (3, 0.1), (7, 0.2), (400, 0.01)] {
            let rings: Vec<RingPlace> =
                (0..=steps).map(|i| RingPlace { s: 50.0 * step * i as f64, bend: 0.02, area: 3.0 }).collect();
            let found = stretches(&rings);
            assert_eq!([found[0], found[steps]], [1.0, 1.0]);
            for factor in &found[1..steps] {
                assert!((factor - stretch(steps, step)).abs() < 1e-12, "{steps} {step}: {factor}");
            }
        }
        assert_eq!(
            stretches(&[RingPlace { s: 0.0, bend: 1.0, area: 1.0 }, RingPlace { s: 0.1, bend: 1.0, area: 1.0 }]),
            [1.0, 1.0]
        );
    }
}
