//! A place for words beside a point, where they cover least of what is drawn.

/// Steps away from the point, px.
const STEPS: [f64; 6] = [10.0, 22.0, 40.0, 64.0, 96.0, 130.0];
/// Where a leader begins, px from the point: outside the ring that marks it.
const RING: f64 = 8.0;
/// Room around words, px.
const AROUND: f64 = 3.0;

/// The left end and base line of words of that size beside the point, inside the box from `least` to `most` and clear of
/// all `obstacles` (lines by their corners); `None` where there is no such place.
pub(super) fn place(
    point: [f64; 2],
    [wide, high]: [f64; 2],
    least: [f64; 2],
    most: [f64; 2],
    obstacles: &[[[f64; 2]; 2]],
) -> Option<[f64; 2]> {
    // Nearest first: all steps aside and up or down, by their sum.
    let mut steps: Vec<[f64; 2]> =
        STEPS.iter().flat_map(|&aside| STEPS.iter().map(move |&lift| [aside, lift])).collect();
    // A leader close to level would run along the cross-hair.
    steps.retain(|[aside, lift]| *lift >= 0.35 * aside);
    steps.sort_by(|a, b| (a[0] + a[1]).total_cmp(&(b[0] + b[1])));
    let candidates = steps.into_iter().flat_map(|[aside, lift]| {
        [(1.0, -1.0), (-1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)].map(|(side, height)| {
            let left = if side > 0.0 { point[0] + aside } else { point[0] - aside - wide };
            let top = if height > 0.0 { point[1] + lift } else { point[1] - lift - high };
            [left, top]
        })
    });
    let clear = |[left, top]: &[f64; 2]| {
        let box_from = [left - AROUND, top - AROUND];
        let box_to = [left + wide + AROUND, top + high + AROUND];
        box_from[0] >= least[0]
            && box_from[1] >= least[1]
            && box_to[0] <= most[0]
            && box_to[1] <= most[1]
            && !obstacles.iter().any(|line| crosses(*line, box_from, box_to))
    };
    candidates.into_iter().find(clear).map(|[left, top]| [left, top + high])
}

/// A line from the point to words that stand away from it; `None` where they are close enough without one.
pub(super) fn leader(point: [f64; 2], [left, base]: [f64; 2], [wide, high]: [f64; 2]) -> Option<[[f64; 2]; 2]> {
    let end = [point[0].clamp(left, left + wide), point[1].clamp(base - high - AROUND, base + AROUND)];
    let way = [end[0] - point[0], end[1] - point[1]];
    let length = libm::hypot(way[0], way[1]);
    let start = [point[0] + way[0] / length * RING, point[1] + way[1] / length * RING];
    (length > 3.0 * RING).then_some([start, end])
}

/// Whether a line from corner to corner has a part inside the box: it is cut at each side in turn (Liang and Barsky).
fn crosses([from, to]: [[f64; 2]; 2], least: [f64; 2], most: [f64; 2]) -> bool {
    let mut share = [0.0_f64, 1.0];
    for axis in 0..2 {
        let along = to[axis] - from[axis];
        for (direction, room) in [(-along, from[axis] - least[axis]), (along, most[axis] - from[axis])] {
            if direction == 0.0 {
                if room < 0.0 {
                    return false;
                }
            } else if direction < 0.0 {
                share[0] = share[0].max(room / direction);
            } else {
                share[1] = share[1].min(room / direction);
            }
        }
    }
    share[0] <= share[1]
}

#[cfg(test)]
mod tests {
    use super::crosses;

    #[test]
    fn a_line_crosses_a_box_or_passes_it() {
        let inside = |from, to| crosses([from, to], [0.0, 0.0], [10.0, 5.0]);
        assert!(inside([-5.0, 2.0], [15.0, 3.0]));
        assert!(inside([2.0, 2.0], [3.0, 3.0]));
        assert!(inside([4.0, 4.0], [4.0, 4.0]));
        assert!(!inside([-5.0, 2.0], [-1.0, 2.0]));
        assert!(!inside([-1.0, 3.0], [4.0, 20.0]));
        assert!(!inside([12.0, -5.0], [12.0, 15.0]));
    }
}
