//! Proposed values are rounded to a thousandth of a millimetre, always to the side that works.

/// The largest thousandth that is not above `value`; what is a whole number of thousandths but for its last bits stays.
pub(super) fn down(value: f64) -> f64 {
    thousandths(value, libm::floor)
}

/// The least thousandth that is not below `value`.
pub(super) fn up(value: f64) -> f64 {
    thousandths(value, libm::ceil)
}

fn thousandths(value: f64, way: fn(f64) -> f64) -> f64 {
    let nearest = libm::round(value * 1e3);
    let exact = (nearest / 1e3 - value).abs() <= 1e-12 * value.abs();
    (if exact { nearest } else { way(value * 1e3) }) / 1e3
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounds_to_its_side_and_leaves_thousandths_alone() {
        assert_eq!((down(12.3459), up(12.3451)), (12.345, 12.346));
        assert_eq!((down(6.351), up(6.351)), (6.351, 6.351));
        assert_eq!((down(-0.0004), up(-0.0004)), (-0.001, 0.0));
        assert_eq!(down(0.1 + 0.2), 0.3);
    }
}
