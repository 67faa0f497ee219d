//! Golden sections: the top of a function that has one, without its slope.

/// The largest value of a function with one top between two places, and where it is: the nearer of the last two looks. `steps`
/// sections leave 0.618 to their power of what lies between.
pub(crate) fn highest([mut low, mut high]: [f64; 2], steps: u32, of: impl Fn(f64) -> f64) -> (f64, f64) {
    let golden = (5f64.sqrt() - 1.0) / 2.0;
    let (mut a, mut b) = (high - golden * (high - low), low + golden * (high - low));
    let (mut fa, mut fb) = (of(a), of(b));
    for _ in 0..steps {
        if fa >= fb {
            (high, b, fb) = (b, a, fa);
            a = high - golden * (high - low);
            fa = of(a);
        } else {
            (low, a, fa) = (a, b, fb);
            b = low + golden * (high - low);
            fb = of(b);
        }
    }
    if fa >= fb { (a, fa) } else { (b, fb) }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The top of 3 - (x - 1.3)^2, from either side and at an end.
    #[test]
    fn the_top_of_a_parabola_is_where_its_slope_is_none() {
        let parabola = |x: f64| 3.0 - (x - 1.3) * (x - 1.3);
        for ends in [[0.0, 2.0], [1.0, 9.0], [-4.0, 1.4]] {
            let (at, value) = highest(ends, 40, parabola);
            assert!((at - 1.3).abs() < 1e-6 && (value - 3.0).abs() < 1e-12, "{ends:?}: {at}, {value}");
        }
        let (at, value) = highest([2.0, 3.0], 60, parabola);
        assert!((at - 2.0).abs() < 1e-9 && (value - 2.51).abs() < 1e-9, "{at}, {value}");
    }
}
