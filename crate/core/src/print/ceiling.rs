//! The bore's ceiling: how wide it is printed over nothing.
//!
//! Round a bore of diameter d whose axis leans from level by an angle of cosine c, the skin at an angle a from straight up
//! faces the plate and leans from level by the angle of cosine c cos a. What is flatter than the printer's overhang, of
//! cosine k, is printed over nothing: the arc |a| < A with cos A = k / c. From side to side that is a bridge of d sin A.

/// Width of the bridge over a bore, mm: the bore's diameter `bore`, mm, and the cosines of its axis's angle from level, `level`,
/// and of the least angle from level that needs no support, `overhang`. 0 where nothing of the ceiling is so flat.
pub(super) fn width(bore: f64, level: f64, overhang: f64) -> f64 {
    if level <= overhang {
        return 0.0;
    }
    let share = overhang / level;
    bore * (1.0 - share * share).max(0.0).sqrt()
}

/// Sine of the least angle from level of a bore's axis at which its ceiling is no wider than `bridge`, mm; none where it never
/// is wider. Of `width`: the cosine is k / sqrt(1 - (bridge / d)^2).
pub(super) fn least_slope(bore: f64, bridge: f64, overhang: f64) -> Option<f64> {
    let share = (bridge / bore).min(1.0);
    let cosine = overhang / (1.0 - share * share).sqrt();
    (cosine < 1.0).then(|| (1.0 - cosine * cosine).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A level bore of 8 under an overhang of 45 degrees: 8 sin 45. Where it leans by 45 degrees nothing is flatter.
    #[test]
    fn a_level_bore_is_bridged_by_its_diameter_times_the_overhangs_sine() {
        let overhang = libm::cos(f64::to_radians(45.0));
        assert!((width(8.0, 1.0, overhang) - 8.0 * libm::sin(f64::to_radians(45.0))).abs() < 1e-12);
        assert_eq!(width(8.0, overhang, overhang), 0.0);
        assert_eq!(width(8.0, 1.0, 0.0), 8.0);
    }

    #[test]
    fn at_the_least_slope_the_ceiling_is_just_as_wide_as_the_bridge() {
        for (bore, bridge, deg) in [(8.0, 5.0, 45.0), (12.0, 1.0, 19.0), (10.0, 9.0, 80.0), (10.0, 0.0, 45.0)] {
            let overhang = libm::cos(f64::to_radians(deg));
            let sine = least_slope(bore, bridge, overhang).unwrap();
            assert!((width(bore, (1.0 - sine * sine).sqrt(), overhang) - bridge).abs() < 1e-6, "{bore} {bridge} {deg}");
        }
        assert_eq!(least_slope(8.0, 5.7, libm::cos(f64::to_radians(45.0))), None);
        assert_eq!(least_slope(8.0, 9.0, libm::cos(f64::to_radians(45.0))), None);
    }
}
