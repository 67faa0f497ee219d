//! Curves that are neither straight nor circular: a stretch of a helix or of a cubic, measured by arc length.
//!
//! Arc lengths are integrals of the speed by Gauss and Legendre's rule of sixteen points. A stretch is short, so that
//! the speed's nearest singularity lies far outside it: for a helix, cylindrical or conical, over a quarter turn the
//! rule is good to 1e-14 of the length (its error falls with (1.27 + sqrt(1 + 1.27^2))^-32); a cubic is cut until rule
//! and halved rule agree to 1e-13.

use super::Sample;
use crate::layout::{PlacedCoil, Vec3, unit};

/// The formula of a curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Form {
    /// A coil; the parameter is the angle turned since its start, radians.
    Helix(PlacedCoil),
    /// A cubic by its coefficients, constant first; the parameter runs from 0 to 1.
    Cubic([Vec3; 4]),
}

/// A stretch of a curve, and what is known of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curve {
    /// Its formula.
    pub form: Form,
    /// Parameters of its first and its last point.
    pub span: [f64; 2],
    /// The least radius of curvature on it, mm; infinite where it is straight.
    pub tightest: f64,
    /// Angle turned by its tangent, radians.
    pub turned: f64,
    /// Index of the station that it belongs to: the coil, or the nearest point passed through.
    pub station: usize,
    /// Index of the first station of the coil or of the smooth curve that it is part of.
    pub whole: usize,
}

/// Point and first two derivatives by the parameter.
pub(super) struct Jet {
    pub point: Vec3,
    pub first: Vec3,
    pub second: Vec3,
}

impl Form {
    pub(super) fn jet(&self, u: f64) -> Jet {
        match self {
            Self::Helix(coil) => {
                let (sin, cos) = libm::sincos(coil.start + coil.sign * u);
                let [e, f] = coil.across;
                let (out, around) = (e * cos + f * sin, (f * cos - e * sin) * coil.sign);
                let r = coil.radius + coil.widening * u;
                Jet {
                    point: coil.centre + out * r + coil.axis * (coil.climb * u),
                    first: out * coil.widening + around * r + coil.axis * coil.climb,
                    second: around * (2.0 * coil.widening) - out * r,
                }
            }
            Self::Cubic([c0, c1, c2, c3]) => Jet {
                point: c0 + (c1 + (c2 + c3 * u) * u) * u,
                first: c1 + (c2 * 2.0 + c3 * (3.0 * u)) * u,
                second: c2 * 2.0 + c3 * (6.0 * u),
            },
        }
    }

    pub(super) fn speed(&self, u: f64) -> f64 {
        match self {
            Self::Helix(coil) => {
                let r = coil.radius + coil.widening * u;
                (coil.widening * coil.widening + coil.climb * coil.climb + r * r).sqrt()
            }
            Self::Cubic([_, c1, c2, c3]) => (c1 + (c2 * 2.0 + c3 * (3.0 * u)) * u).norm(),
        }
    }

    /// Arc length between two parameters, mm.
    pub(super) fn length(&self, [from, to]: [f64; 2]) -> f64 {
        integral([from, to], |u| self.speed(u))
    }

    /// Curvature, 1/mm; infinite at a cusp.
    pub(super) fn bend(&self, u: f64) -> f64 {
        let jet = self.jet(u);
        let speed = jet.first.norm();
        let cross = jet.first.cross(&jet.second).norm();
        if cross == 0.0 && speed > 0.0 { 0.0 } else { cross / (speed * speed * speed) }
    }
}

impl Curve {
    /// A stretch with its tightest place looked for on it.
    pub(super) fn of(form: Form, span: [f64; 2], station: usize, whole: usize) -> Self {
        let turned = refined(span, FOLDS, &|u| {
            let speed = form.speed(u);
            if speed > 0.0 { form.bend(u) * speed } else { 0.0 }
        });
        let most = form.bend(sharpest(&form, span));
        Self { form, span, tightest: 1.0 / most, turned, station, whole }
    }

    /// Its length, mm.
    pub(super) fn length(&self) -> f64 {
        self.form.length(self.span)
    }

    /// Point, unit tangent and curvature `s` mm from its first point; `length` is its own.
    pub(super) fn at(&self, s: f64, length: f64) -> Sample {
        sample(&self.form, self.parameter(s, length))
    }

    /// The parameter at an arc length from its first point.
    pub fn parameter(&self, s: f64, length: f64) -> f64 {
        let [from, to] = self.span;
        if s <= 0.0 || length <= 0.0 {
            return from;
        }
        if s >= length {
            return to;
        }
        let mut u = from + (to - from) * (s / length);
        if let Form::Helix(coil) = &self.form
            && coil.widening == 0.0
        {
            return u;
        }
        // Newton's steps kept inside a bracket that always holds the answer.
        let (mut low, mut high) = (from, to);
        for _ in 0..60 {
            let miss = self.form.length([from, u]) - s;
            if miss > 0.0 {
                high = u
            } else {
                low = u
            }
            let next = u - miss / self.form.speed(u);
            let next = if next > low && next < high { next } else { (low + high) / 2.0 };
            if (next - u).abs() <= 1e-14 * (to - from).abs() {
                return next;
            }
            u = next;
        }
        u
    }

    /// Arc length from its first point to the place of a parameter, mm.
    pub fn arc_length(&self, u: f64) -> f64 {
        self.form.length([self.span[0], u])
    }

    /// Parameters where it runs level in a coordinate.
    pub(super) fn level(&self, axis: usize) -> Vec<f64> {
        const LOOKS: u32 = 12;
        let [from, to] = self.span;
        let rise = |u: f64| self.form.jet(u).first[axis];
        let place = |look: u32| from + (to - from) * f64::from(look) / f64::from(LOOKS);
        (0..LOOKS)
            .filter_map(|look| {
                let (mut low, mut high) = (place(look), place(look + 1));
                let falls = rise(low) > 0.0;
                if falls == (rise(high) > 0.0) {
                    return None;
                }
                for _ in 0..52 {
                    let middle = (low + high) / 2.0;
                    if (rise(middle) > 0.0) == falls { low = middle } else { high = middle }
                }
                Some((low + high) / 2.0)
            })
            .collect()
    }
}

/// Point, unit tangent and curvature vector at a parameter.
pub(super) fn sample(form: &Form, u: f64) -> Sample {
    let Jet { point, first, second } = form.jet(u);
    let speed = first.norm();
    if speed == 0.0 {
        // A cusp: it turns about on the spot; the way out of it is the second derivative's.
        return Sample { point, tangent: unit(&second), curvature: Vec3::zeros() };
    }
    let tangent = first / speed;
    let curvature = (second - tangent * second.dot(&tangent)) / (speed * speed);
    Sample { point, tangent, curvature }
}

/// The parameter of the tightest place.
pub(super) fn sharpest(form: &Form, [from, to]: [f64; 2]) -> f64 {
    const LOOKS: u32 = 16;
    if let Form::Helix(coil) = form
        && coil.widening == 0.0
    {
        return from;
    }
    let place = |look: u32| from + (to - from) * f64::from(look) / f64::from(LOOKS);
    let best = (0..=LOOKS).max_by(|a, b| form.bend(place(*a)).total_cmp(&form.bend(place(*b)))).unwrap_or_default();
    let (mut low, mut high) = (place(best.saturating_sub(1)), place((best + 1).min(LOOKS)));
    let golden = (5f64.sqrt() - 1.0) / 2.0;
    for _ in 0..40 {
        let (a, b) = (high - golden * (high - low), low + golden * (high - low));
        if form.bend(a) >= form.bend(b) { high = b } else { low = a }
    }
    let inside = (low + high) / 2.0;
    if form.bend(inside) >= form.bend(place(best)) { inside } else { place(best) }
}

/// Half of the sixteen nodes and weights of Gauss and Legendre's rule on [-1, 1]; the other half mirrors them.
/// Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4.
const NODES: [[f64; 2]; 8] = [
    [0.095_012_509_837_637_44, 0.189_450_610_455_068_5],
    [0.281_603_550_779_258_9, 0.182_603_415_044_923_58],
    [0.458_016_777_657_227_4, 0.169_156_519_395_002_54],
    [0.617_876_244_402_643_7, 0.149_595_988_816_576_73],
    [0.755_404_408_355_003, 0.124_628_971_255_533_87],
    [0.865_631_202_387_831_7, 0.095_158_511_682_492_78],
    [0.944_575_023_073_232_6, 0.062_253_523_938_647_89],
    [0.989_400_934_991_649_9, 0.027_152_459_411_754_095],
];

/// Integral of a smooth function by the rule of sixteen points.
pub(super) fn integral([from, to]: [f64; 2], f: impl Fn(f64) -> f64) -> f64 {
    let (middle, half) = ((from + to) / 2.0, (to - from) / 2.0);
    NODES.iter().map(|[node, weight]| weight * (f(middle - half * node) + f(middle + half * node))).sum::<f64>() * half
}

/// How often a stretch is halved at most: what is left of a kink's error falls to a quarter each time.
const FOLDS: u32 = 18;
/// Angle that a rule and its two halves may differ by, radians: far below what a table shows.
const AGREE: f64 = 1e-12;

/// Integral of a function that may have a kink, as a bend has where a curve goes over from one side to the other:
/// halved until the rule and its halves agree.
fn refined([from, to]: [f64; 2], folds: u32, f: &impl Fn(f64) -> f64) -> f64 {
    let middle = (from + to) / 2.0;
    let (whole, halves) = (integral([from, to], f), integral([from, middle], f) + integral([middle, to], f));
    if folds == 0 || (whole - halves).abs() <= AGREE {
        return halves;
    }
    refined([from, middle], folds - 1, f) + refined([middle, to], folds - 1, f)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The rule is exact for polynomials up to degree 31.
    #[test]
    fn integrates_high_powers_exactly() {
        for power in 0..=31 {
            let found = integral([0.0, 1.0], |u| libm::pow(u, f64::from(power)));
            assert!((found * f64::from(power + 1) - 1.0).abs() < 1e-13, "{power}: {found}");
        }
    }

    /// Over to the other side and back: y = u (u - a) (u - b) has its one inflection at (a + b) / 3, and its tangent
    /// turns by the differences of atan(y') between there and the ends.
    #[test]
    fn the_angle_of_a_curve_that_goes_over_to_the_other_side() {
        for (a, b) in [(0.3, 0.8), (0.5, 1.0), (0.11, 1.7), (0.0, 1.0)] {
            let form = Form::Cubic([
                Vec3::zeros(),
                Vec3::new(1.0, a * b, 0.0),
                Vec3::new(0.0, -a - b, 0.0),
                Vec3::new(0.0, 1.0, 0.0),
            ]);
            let heading = |u: f64| libm::atan(3.0 * u * u - 2.0 * (a + b) * u + a * b);
            let over = (a + b) / 3.0;
            let expected = (heading(over) - heading(0.0)).abs() + (heading(1.0) - heading(over)).abs();
            let found = Curve::of(form, [0.0, 1.0], 0, 0).turned;
            assert!((found - expected).abs() < 1e-10, "{a}, {b}: {found} {expected}");
        }
    }
}
