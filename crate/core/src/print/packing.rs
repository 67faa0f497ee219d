//! Boxes laid side by side on as few plates as a skyline finds.
//!
//! A plate's skyline is how far up its y is taken at each x. A box goes where its far edge comes lowest, then farthest
//! left, turned by a right angle where that is lower; on the first plate that has room. Large ones go first, and what is
//! large is asked in several ways: the one with fewest plates is kept. This is a heuristic: fewer plates may do. Lengths
//! are whole micrometres, so that there is nothing to round.

use core::cmp::Reverse;

/// Where a box lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Spot {
    /// Its index among the boxes.
    pub item: usize,
    /// Its corner nearest the room's, micrometres.
    pub at: [i64; 2],
    /// Whether it is turned by a right angle, its sides exchanged.
    pub turned: bool,
}

/// The boxes plate by plate, each plate in the order of the boxes and in the middle of the room, `gap` between any two. A box
/// that the room does not hold is on none. `sides`, `room` and `gap` are micrometres and not negative.
pub fn packed(sides: &[[i64; 2]], room: [i64; 2], gap: i64) -> Vec<Vec<Spot>> {
    let orders: [fn([i64; 2]) -> [i64; 2]; 4] = [
        |[x, y]| [x.max(y), x.min(y)],
        |[x, y]| [x.saturating_mul(y), x.max(y)],
        |[x, y]| [x.min(y), x.max(y)],
        |[x, y]| [x + y, x.max(y)],
    ];
    let one = |large: fn([i64; 2]) -> [i64; 2]| {
        let mut order: Vec<usize> = (0..sides.len()).collect();
        order.sort_by_key(|item| Reverse(large(sides[*item])));
        first_fit(sides, &order, room, gap)
    };
    let mut best = orders.into_iter().map(one).min_by_key(Vec::len).unwrap_or_default();
    for plate in &mut best {
        plate.sort_by_key(|spot| spot.item);
        in_the_middle(plate, sides, room);
    }
    best
}

/// The sides of a box as it lies.
pub fn lying([x, y]: [i64; 2], turned: bool) -> [i64; 2] {
    if turned { [y, x] } else { [x, y] }
}

fn first_fit(sides: &[[i64; 2]], order: &[usize], room: [i64; 2], gap: i64) -> Vec<Vec<Spot>> {
    // Each box takes a gap to its right and behind it; the last ones may have theirs outside.
    let wider = |sides: [i64; 2]| sides.map(|side| side + gap);
    let room = wider(room);
    let mut plates: Vec<(Skyline, Vec<Spot>)> = Vec::new();
    for &item in order {
        let taken = wider(sides[item]);
        let found = plates.iter().position(|(skyline, _)| skyline.place(taken).is_some());
        let index = found.unwrap_or(plates.len());
        if found.is_none() {
            plates.push((Skyline::of(room), Vec::new()));
        }
        let (skyline, spots) = &mut plates[index];
        match skyline.place(taken) {
            Some((at, turned)) => {
                skyline.take(at, lying(taken, turned));
                spots.push(Spot { item, at, turned });
            }
            None => {
                plates.pop();
            }
        }
    }
    plates.into_iter().map(|(_, spots)| spots).collect()
}

fn in_the_middle(plate: &mut [Spot], sides: &[[i64; 2]], room: [i64; 2]) {
    for (axis, side) in room.into_iter().enumerate() {
        let far = plate.iter().map(|spot| spot.at[axis] + lying(sides[spot.item], spot.turned)[axis]).max();
        let by = (side - far.unwrap_or_default()) / 2;
        plate.iter_mut().for_each(|spot| spot.at[axis] += by);
    }
}

/// How far up y is taken, step by step along x.
struct Skyline {
    room: [i64; 2],
    /// Where each step begins, and its height; the first begins at 0, the last ends at the room's side.
    steps: Vec<[i64; 2]>,
}

impl Skyline {
    fn of(room: [i64; 2]) -> Self {
        Self { room, steps: vec![[0, 0]] }
    }

    /// The best place for a box, and whether it is turned there; none where it has no room.
    fn place(&self, sides: [i64; 2]) -> Option<([i64; 2], bool)> {
        let ways = [false, true].into_iter().filter(|turned| !turned || sides[0] != sides[1]);
        let found = ways.filter_map(|turned| {
            let [wide, deep] = lying(sides, turned);
            let fits = (0..self.steps.len()).filter_map(|step| {
                let [x, y] = [self.steps[step][0], self.height(step, wide)];
                (x + wide <= self.room[0] && y + deep <= self.room[1]).then_some([x, y])
            });
            let at = fits.min_by_key(|[x, y]| [*y, *x])?;
            Some((at, turned, at[1] + deep))
        });
        found.min_by_key(|(at, turned, top)| (*top, at[0], *turned)).map(|(at, turned, _)| (at, turned))
    }

    /// The highest step under a box of that width which begins with `step`.
    fn height(&self, step: usize, wide: i64) -> i64 {
        let end = self.steps[step][0] + wide;
        self.steps[step..].iter().take_while(|[x, _]| *x < end).map(|[_, y]| *y).max().unwrap_or_default()
    }

    /// Takes the place of a box that begins with a step.
    fn take(&mut self, [x, y]: [i64; 2], [wide, deep]: [i64; 2]) {
        let end = x + wide;
        // What is behind the box at its far side goes on there.
        let under = self.steps.iter().rev().find(|[begins, _]| *begins <= end).map(|[_, height]| *height);
        let goes_on = end < self.room[0] && !self.steps.iter().any(|[begins, _]| *begins == end);
        let after = under.filter(|_| goes_on).map(|height| [end, height]);
        self.steps.retain(|[begins, _]| *begins < x || *begins >= end);
        self.steps.push([x, y + deep]);
        self.steps.extend(after);
        self.steps.sort_unstable();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn equal_squares_lie_in_rows_and_columns() {
        for (side, gap, room) in [(20, 3, [100, 60]), (10, 0, [100, 100]), (7, 2, [61, 90]), (33, 3, [33, 70])] {
            let most = room.map(|edge: i64| (edge + gap) / (side + gap)).iter().product::<i64>() as usize;
            for plates in 1..4 {
                assert_eq!(packed(&vec![[side; 2]; plates * most], room, gap).len(), plates);
                assert_eq!(packed(&vec![[side; 2]; plates * most + 1], room, gap).len(), plates + 1);
            }
        }
    }

    #[test]
    fn a_box_is_turned_where_only_that_has_room_and_what_has_none_is_on_no_plate() {
        let plates = packed(&[[10, 90], [101, 1], [90, 10], [51, 51]], [100, 50], 5);
        assert_eq!(plates.len(), 1);
        let told: Vec<(usize, bool)> = plates[0].iter().map(|spot| (spot.item, spot.turned)).collect();
        assert_eq!(told, [(0, true), (2, false)]);
        assert!(packed(&[[1, 1]], [0, 0], 3).is_empty() && packed(&[], [9, 9], 3).is_empty());
    }

    #[test]
    fn one_box_lies_in_the_middle() {
        assert_eq!(packed(&[[20, 10]], [100, 50], 3), [[Spot { item: 0, at: [40, 20], turned: false }]]);
    }
}
