//! Where the bore holds liquid, as rain water lies between hills.

/// A part of the bore that holds liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Pool {
    /// Arc lengths between which the axis lies below the level, mm.
    pub span: [f64; 2],
    /// Arc length of the lowest place, mm.
    pub at: f64,
    /// Level above it, mm; the highest place above it where both ends are closed, so that nothing runs out.
    pub depth: f64,
    /// Length of bore that it would fill, mm.
    pub filled: f64,
}

/// The levels to which liquid stands between neighbouring places, from their heights: the lower of the highest places on
/// the two ways out. A closed end is a wall.
pub(super) fn levels(heights: &[f64], closed: [bool; 2]) -> Vec<f64> {
    let wall = |closed: bool| if closed { f64::INFINITY } else { f64::NEG_INFINITY };
    let stretches = heights.len().saturating_sub(1);
    let mut levels = vec![0.0; stretches];
    let mut high = wall(closed[1]);
    for i in (0..stretches).rev() {
        high = high.max(heights[i + 1]);
        levels[i] = high;
    }
    let mut high = wall(closed[0]);
    for i in 0..stretches {
        high = high.max(heights[i]);
        levels[i] = high.min(levels[i]);
    }
    levels
}

/// Length of bore that all of it would fill, mm.
pub(super) fn filled(places: &[f64], heights: &[f64], closed: [bool; 2], bore: f64) -> f64 {
    let levels = levels(heights, closed);
    (0..levels.len()).map(|i| share(heights, &levels, i, bore) * (places[i + 1] - places[i])).sum()
}

/// The parts that hold liquid, in order.
pub(super) fn pools(places: &[f64], heights: &[f64], closed: [bool; 2], bore: f64) -> Vec<Pool> {
    let levels = levels(heights, closed);
    let highest = heights.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let mut pools: Vec<Pool> = Vec::new();
    let mut open = false;
    for i in 0..levels.len() {
        let (level, [h0, h1], [s0, s1]) = (levels[i], [heights[i], heights[i + 1]], [places[i], places[i + 1]]);
        let (d0, d1) = (level - h0, level - h1);
        if d0.max(d1) <= LEAST_DEPTH {
            open = false;
            continue;
        }
        let crossing = |outside: f64, inside: f64| outside / (outside - inside);
        let from = if d0 < 0.0 { s0 + (s1 - s0) * crossing(d0, d1) } else { s0 };
        let to = if d1 < 0.0 { s1 + (s0 - s1) * crossing(d1, d0) } else { s1 };
        if !open || d0 <= 0.0 {
            pools.push(Pool { span: [from, to], at: from, depth: 0.0, filled: 0.0 });
        }
        open = d1 > 0.0;
        if let Some(pool) = pools.last_mut() {
            pool.span[1] = to;
            let (low, at) = if h0 <= h1 { (h0, s0) } else { (h1, s1) };
            let depth = level.min(highest) - low;
            if depth > pool.depth {
                (pool.depth, pool.at) = (depth, at);
            }
            pool.filled += share(heights, &levels, i, bore) * (s1 - s0);
        }
    }
    pools
}

/// Shallower than this nothing is held, mm: far above what rounding does, far below what tilts.
const LEAST_DEPTH: f64 = 1e-6;

/// Share of a stretch's bore that is filled: the mean of the depth over the bore, no less than 0 and no more than 1, while
/// the depth changes evenly.
fn share(heights: &[f64], levels: &[f64], i: usize, bore: f64) -> f64 {
    let [a, b] = [heights[i], heights[i + 1]].map(|height| (levels[i] - height) / bore);
    if !(a > 0.0 || b > 0.0) {
        return 0.0;
    }
    let area = |x: f64| {
        if x <= 0.0 {
            0.0
        } else if x < 1.0 {
            x * x / 2.0
        } else {
            x - 0.5
        }
    };
    if (b - a).abs() < 1e-6 || !a.is_finite() || !b.is_finite() {
        return f64::midpoint(a, b).clamp(0.0, 1.0);
    }
    (area(b) - area(a)) / (b - a)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A trough 30 deep between sills at 40 and 60, of straight flanks: the level is 40; the bore of 10 is full from
    /// 10 below it, so that of the flanks' lengths 5 each on the ramp's 10 mm of height count half.
    #[test]
    fn a_trough_fills_to_its_lower_sill() {
        let (places, heights) = ([0.0, 30.0, 80.0], [40.0, 10.0, 60.0]);
        let found = pools(&places, &heights, [false, false], 10.0);
        assert_eq!(found.len(), 1);
        let pool = found[0];
        assert_eq!((pool.span, pool.at, pool.depth), ([0.0, 60.0], 30.0, 30.0));
        // Both flanks fall 1 in 1: full from 10 below the level, half on average above: 60 - 2 * 5.
        assert!((pool.filled - 50.0).abs() < 1e-12, "{}", pool.filled);
        assert!((filled(&places, &heights, [false, false], 10.0) - 50.0).abs() < 1e-12);
    }

    #[test]
    fn slopes_hold_nothing_and_closed_ends_hold_all() {
        let (places, heights) = ([0.0, 50.0], [0.0, 50.0]);
        assert_eq!(pools(&places, &heights, [false, false], 8.0), []);
        let closed = pools(&places, &heights, [true, false], 8.0);
        assert_eq!((closed[0].span, closed[0].depth), ([0.0, 50.0], 50.0));
        assert_eq!(pools(&places, &[5.0, 5.0], [false, false], 8.0), []);
    }

    /// An arch on both its feet is sealed: it holds all of its bore, and is as deep as it is high.
    #[test]
    fn both_ends_closed_hold_all_to_the_top() {
        let sealed = pools(&[0.0, 40.0, 70.0], &[0.0, 40.0, 10.0], [true, true], 8.0);
        assert_eq!(sealed, [Pool { span: [0.0, 70.0], at: 0.0, depth: 40.0, filled: 70.0 }]);
    }
}
