//! The ways in which a stiff tube can be brought into two sockets.
//!
//! While a straight length of tube is in a socket it can only slide along the socket's line and turn about it. Held in
//! two sockets a tube moves only as both allow. Turning counts for nothing: turns about two lines are one motion only
//! if the lines are the same. Sliding counts where both lines run the same way. So a tube draws from both sockets at
//! once if its ends leave them in the same direction, within the play of a socket; and from no two others. There
//! one end is pushed home first, and the part at the other end must stand back until it is.

use crate::check::OneRun;
use crate::layout::Vec3;

/// Ends that leave their sockets this nearly the same way, degrees, draw from both at once.
pub(super) const PLAY: f64 = crate::check::play::ANGLE;

/// One way of bringing a tube in.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Way {
    /// The end that is pushed home first, true for the start; none where both go home at once.
    pub first: Option<bool>,
    /// Unit direction in which the tube stands off before it is pushed home.
    pub along: Vec3,
    /// How far it is pushed, mm.
    pub slide: f64,
    /// How far the part at the other end stands back meanwhile, along the line of the tube's end there, mm.
    pub back: f64,
    /// Angle between the directions in which the ends leave their sockets, degrees.
    pub apart: f64,
}

impl Way {
    /// The travel that the builder must find room for: of the part that moves, or of the tube where none does, mm.
    pub(super) fn travel(&self) -> f64 {
        if self.first.is_some() { self.back } else { self.slide }
    }
}

/// The ways in, the one of least travel first. Trim is cut off by then.
pub(super) fn ways(run: &OneRun<'_>) -> Vec<Way> {
    let depth = |at_start: bool| run.fitting(at_start).map_or(0.0, |fitting| fitting.socket_depth);
    ways_of([run.pose(true).out, run.pose(false).out], [depth(true), depth(false)])
}

fn ways_of([a, b]: [Vec3; 2], [depth_a, depth_b]: [f64; 2]) -> Vec<Way> {
    // By the tangent of the half angle, which loses no digits near 0 or 180 degrees.
    let apart = (2.0 * libm::atan2((a - b).norm(), (a + b).norm())).to_degrees();
    if apart <= PLAY {
        let along = crate::layout::unit(&(a + b));
        return vec![Way { first: None, along, slide: depth_a.max(depth_b), back: 0.0, apart }];
    }
    // While end A is still outside by its depth, end B is off its place by that much along A's line; where the ends
    // face each other that is partly towards its own fitting, which must be that much further back.
    let cos = a.dot(&b);
    let towards = if cos < -1e-9 { -cos } else { 0.0 };
    let start = Way { first: Some(true), along: a, slide: depth_a, back: depth_b + depth_a * towards, apart };
    let end = Way { first: Some(false), along: b, slide: depth_b, back: depth_a + depth_b * towards, apart };
    if end.back < start.back { vec![end, start] } else { vec![start, end] }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The motions that two sockets leave a tube, as the null space of what each forbids, found by brute force: twists
    /// of the tube (velocity of a point and angular velocity) of which both sockets' points stay on their lines.
    fn is_free(a: Vec3, at_a: Vec3, b: Vec3, at_b: Vec3, twist: [Vec3; 2]) -> bool {
        let [velocity, turning] = twist;
        let stays = |line: Vec3, at: Vec3| {
            [0.0, 10.0].iter().all(|deep| {
                let moves = velocity + turning.cross(&(at - line * *deep));
                moves.cross(&line).norm() < 1e-9
            })
        };
        stays(a, at_a) && stays(b, at_b)
    }

    #[test]
    fn only_ends_that_leave_the_same_way_have_a_common_motion() {
        let (at_a, at_b) = (Vec3::zeros(), Vec3::new(80.0, 30.0, 10.0));
        let a = Vec3::z();
        for step in 0..=36 {
            let (sin, cos) = crate::layout::turn(f64::from(step) * core::f64::consts::PI / 36.0);
            let b = Vec3::new(sin * 0.6, sin * 0.8, cos);
            let mut free = false;
            // The only candidates: slides along either line, and turns about either.
            for direction in [a, b] {
                for at in [at_a, at_b] {
                    free |= is_free(a, at_a, b, at_b, [direction, Vec3::zeros()]);
                    free |= is_free(a, at_a, b, at_b, [at.cross(&direction), direction]);
                }
            }
            let together = ways_of([a, b], [10.0, 10.0])[0].first.is_none();
            // Opposed sockets share the line of a slide too, but it pushes one end further in.
            assert_eq!(free, step == 0 || step == 36, "{step}");
            assert_eq!(together, step == 0, "{step}");
        }
    }

    #[test]
    fn of_two_ways_the_shorter_comes_first() {
        let ways = ways_of([Vec3::z(), Vec3::x()], [12.0, 8.0]);
        assert_eq!((ways[0].first, ways[0].back, ways[1].back), (Some(true), 8.0, 12.0));
        let ways = ways_of([Vec3::z(), Vec3::x()], [8.0, 12.0]);
        assert_eq!((ways[0].first, ways[0].back), (Some(false), 8.0));
        let ways = ways_of([Vec3::z(), -Vec3::z()], [8.0, 12.0]);
        assert_eq!((ways[0].back, ways[1].back), (20.0, 20.0));
    }
}
