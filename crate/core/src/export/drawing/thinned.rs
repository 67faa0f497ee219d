//! Lines without the points that say nothing.

use super::view::Flat;
use core::f64::consts::TAU;

/// A line without the points that lie within `tolerance` of the straight between their neighbours: from each point kept,
/// the cone of directions that stay near all points passed narrows until one falls outside; the work grows with the
/// points alone.
pub(super) fn simplified(points: &[Flat], tolerance: f64) -> Vec<Flat> {
    let mut kept: Vec<Flat> = points.first().copied().into_iter().collect();
    let mut at = 0;
    while at + 1 < points.len() {
        at = last_in_cone(points, at, tolerance);
        kept.push(points[at]);
    }
    kept
}

/// The last point that a straight from the point `from` reaches without leaving those between.
fn last_in_cone(points: &[Flat], from: usize, tolerance: f64) -> usize {
    let mut base: Option<f64> = None;
    let (mut least, mut most, mut furthest) = (f64::NEG_INFINITY, f64::INFINITY, 0.0_f64);
    for (index, point) in points.iter().enumerate().skip(from + 1) {
        let [x, y] = [point[0] - points[from][0], point[1] - points[from][1]];
        let far = libm::hypot(x, y);
        if far < furthest - tolerance {
            return index - 1;
        }
        if far <= tolerance {
            continue;
        }
        let angle = libm::atan2(y, x);
        let turn = angle - *base.get_or_insert(angle);
        let turn = turn - TAU * libm::round(turn / TAU);
        if turn < least || turn > most {
            return index - 1;
        }
        let half = libm::asin(tolerance / far);
        (least, most, furthest) = (least.max(turn - half), most.min(turn + half), furthest.max(far));
    }
    points.len() - 1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_left_of_a_line_stays_near_all_of_it() {
        let wave: Vec<Flat> = (0..2000).map(|i| [f64::from(i) * 0.05, 5.0 * libm::sin(f64::from(i) * 0.01)]).collect();
        let there_and_back: Vec<Flat> = (0..50).map(|i| [f64::from(if i < 25 { i } else { 50 - i }), 0.0]).collect();
        for points in [&wave, &there_and_back] {
            let kept = simplified(points, 0.01);
            assert!(kept.len() < points.len() / 5 && kept.first() == points.first() && kept.last() == points.last());
            for point in points {
                let near = kept.windows(2).map(|pair| aside(*point, pair[0], pair[1])).fold(f64::INFINITY, f64::min);
                assert!(near <= 0.0100001, "{point:?} is {near} away");
            }
        }
    }

    /// Distance of a point from the stretch between two others.
    fn aside(point: Flat, from: Flat, to: Flat) -> f64 {
        let (way, arm) = ([to[0] - from[0], to[1] - from[1]], [point[0] - from[0], point[1] - from[1]]);
        let share = ((arm[0] * way[0] + arm[1] * way[1]) / (way[0] * way[0] + way[1] * way[1])).clamp(0.0, 1.0);
        libm::hypot(arm[0] - share * way[0], arm[1] - share * way[1])
    }
}
