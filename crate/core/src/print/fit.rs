//! The stance that leaves most room, for tubes that fit in few ways or in none.
//!
//! The room left is the least over three axes of the side less the tube's width. Each changes with a small rotation w by
//! w . (e x (q1 - q0)), where e is the plate's axis and q1, q0 are the points that reach farthest along it, both ways. The
//! steepest rise of the least is against the shortest vector in the hull of the slopes of those that are nearly least.

use super::body::Disc;
use super::frame::Frame;
use super::room::{Room, width};
use super::spiral::spiral;
use crate::layout::Vec3;

/// Steps at most from one start.
const MOST_STEPS: usize = 400;
/// Directions that are tried where the steepest leads nowhere, out of a spiral of these, another few each time.
const AROUND: u32 = 210;
const FEW: usize = 10;

/// Room left, mm.
pub(super) fn slack(rim: &[Disc], frame: &Frame, room: &Room) -> f64 {
    (0..3).map(|axis| room.size[axis] - width(rim, &frame.rows[axis])).fold(f64::INFINITY, f64::min)
}

/// From a start to where no small rotation leaves more room, by steps from the first to the last size, radians.
pub(super) fn most_room(rim: &[Disc], start: Frame, room: &Room, [first, last]: [f64; 2]) -> (Frame, f64) {
    let around: Vec<Vec3> = spiral(AROUND).collect();
    let mut step = first;
    let (mut frame, mut most) = (start, slack(rim, &start, room));
    for round in 0..MOST_STEPS {
        if step < last {
            break;
        }
        let few = (0..FEW).map(|k| around[(round * 97 + k * 21) % around.len()]);
        let better = steepest(rim, &frame, room, step).into_iter().chain(few).find_map(|direction| {
            let next = frame.tilted(&(direction * step));
            let found = slack(rim, &next, room);
            (found > most).then_some((next, found))
        });
        match better {
            Some((next, found)) => {
                (frame, most) = (next, found);
                step = (step * 1.5).min(first);
            }
            None => step *= 0.55,
        }
    }
    (frame, most)
}

/// The unit axis of the rotation that raises the least room left fastest; none where none does.
fn steepest(rim: &[Disc], frame: &Frame, room: &Room, step: f64) -> Option<Vec3> {
    let sides = [0, 1, 2].map(|axis| {
        let e = frame.rows[axis];
        let [ahead, behind] = [e, -e].map(|direction| farthest(rim, &direction));
        (room.size[axis] - (ahead - behind).dot(&e), -e.cross(&(ahead - behind)))
    });
    let least = sides.iter().map(|(left, _)| *left).fold(f64::INFINITY, f64::min);
    let size = sides.iter().map(|(_, slope)| slope.norm()).fold(0.0, f64::max);
    let near: Vec<Vec3> =
        sides.iter().filter(|(left, _)| *left <= least + 2.0 * step * size).map(|(_, slope)| *slope).collect();
    // Gilbert's way to the shortest vector of a hull: towards the corner that leans least along it, as far as it helps.
    let mut shortest = *near.first()?;
    for _ in 0..60 {
        let corner = near.iter().min_by(|a, b| a.dot(&shortest).total_cmp(&b.dot(&shortest)))?;
        let way = corner - shortest;
        let square = way.norm_squared();
        if square == 0.0 {
            break;
        }
        shortest += way * (-shortest.dot(&way) / square).clamp(0.0, 1.0);
    }
    let norm = shortest.norm();
    (norm > 1e-12 * size).then(|| shortest / norm)
}

fn farthest(rim: &[Disc], direction: &Vec3) -> Vec3 {
    let best = rim.iter().max_by(|a, b| a.reach(direction).total_cmp(&b.reach(direction)));
    best.map_or(Vec3::zeros(), |disc| disc.farthest(direction))
}
