//! The shortest link against an independent search: every direction of the straight on a grid over the sphere, both
//! arcs the short and the long way, each near miss polished by a pattern search on the miss alone. The search knows
//! nothing of the solver's unknowns; its formulas are the plane geometry of one circle.

use core::f64::consts::PI;
use tubewright_core::centreline::{Link, Pose, shortest_link};
use tubewright_core::layout::{Vec3, perpendicular, unit};

struct Random(u64);

impl Random {
    /// Splitmix64 (Steele, Lea, Flood 2014), to [0, 1).
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    fn direction(&mut self) -> Vec3 {
        let z = 2.0 * self.next() - 1.0;
        let (s, c) = libm::sincos(2.0 * PI * self.next());
        let r = (1.0 - z * z).sqrt();
        Vec3::new(r * c, r * s, z)
    }
}

/// Displacement of an arc from heading `a` to heading `u` the short or long way, and its angle; radius 1.
fn arc(a: &Vec3, u: &Vec3, long: bool) -> (Vec3, f64) {
    let short = libm::atan2(a.cross(u).norm(), a.dot(u));
    let side = perpendicular(a, u);
    let (angle, side) = if long { (2.0 * PI - short, -side) } else { (short, side) };
    let (s, c) = libm::sincos(angle);
    (a * s + side * (1.0 - c), angle)
}

/// Lateral miss and length of the link whose straight runs along `u`.
fn miss(from: &Pose, to: &Pose, u: &Vec3, long: [bool; 2]) -> (f64, f64) {
    let (d0, t0) = arc(&from.heading, u, long[0]);
    let (d1, t1) = arc(&-to.heading, &-u, long[1]);
    let gap = to.at + d1 - from.at - d0;
    let s = gap.dot(u);
    let lateral = (gap - u * s).norm();
    (if s < 0.0 { lateral.max(gap.norm()) } else { lateral }, t0 + t1 + s.max(0.0))
}

/// Length of the shortest link found on a grid of about `count` directions; radius 1.
fn brute_force(from: &Pose, to: &Pose, count: usize) -> f64 {
    let golden = PI * (3.0 - 5f64.sqrt());
    let spacing = (4.0 * PI / count as f64).sqrt();
    let mut best = f64::INFINITY;
    for long in [[false, false], [true, false], [false, true], [true, true]] {
        for i in 0..count {
            let z = 1.0 - 2.0 * (i as f64 + 0.5) / count as f64;
            let r = (1.0 - z * z).sqrt();
            let (s, c) = libm::sincos(golden * i as f64);
            let mut u = Vec3::new(r * c, r * s, z);
            let (mut m, mut length) = miss(from, to, &u, long);
            if m > 3.0 * spacing * (2.0 + length) || length > best + 3.0 * spacing * (2.0 + length) {
                continue;
            }
            let mut step = spacing;
            for _ in 0..400 {
                if step < 1e-12 || m < 1e-10 {
                    break;
                }
                let a = perpendicular(&u, &Vec3::new(0.3, -0.5, 0.8));
                let b = u.cross(&a);
                let better = (0..8)
                    .map(|k| {
                        let (s, c) = libm::sincos(PI / 4.0 * f64::from(k));
                        unit(&(u + (a * c + b * s) * step))
                    })
                    .map(|v| (miss(from, to, &v, long), v))
                    .min_by(|x, y| x.0.0.total_cmp(&y.0.0))
                    .unwrap();
                if better.0.0 < m {
                    ((m, length), u) = better;
                } else {
                    step *= 0.5;
                }
            }
            if m < 1e-9 {
                best = best.min(length);
            }
        }
    }
    best
}

#[test]
fn no_search_finds_a_shorter_link() {
    let mut random = Random(7);
    for pair in 0..12 {
        let reach = 0.3 + 8.0 * random.next() * random.next();
        let from = Pose { at: Vec3::zeros(), heading: random.direction() };
        let to = Pose { at: random.direction() * reach, heading: random.direction() };
        let found = shortest_link(&from, &to, 1.0).expect("a link exists");
        assert!(closes(&from, &to, &found), "pair {pair}: {found:?}");
        let judged = brute_force(&from, &to, 800);
        assert!(found.length <= judged * (1.0 + 1e-6), "pair {pair}: {} but {judged}: {from:?} {to:?}", found.length);
    }
}

#[test]
fn every_link_reaches_its_far_pose() {
    let mut random = Random(11);
    for pair in 0..300 {
        let reach = 0.3 + 12.0 * random.next() * random.next();
        let from = Pose { at: random.direction(), heading: random.direction() };
        let to = Pose { at: from.at + random.direction() * reach, heading: random.direction() };
        let found = shortest_link(&from, &to, 1.0).expect("a link exists");
        assert!(closes(&from, &to, &found), "pair {pair}: {found:?} {from:?} {to:?}");
    }
}

/// A link walked arc by arc from its first pose: the straight runs forward and the walk ends at the far pose.
fn closes(from: &Pose, to: &Pose, link: &Link) -> bool {
    let walk = |at: Vec3, heading: Vec3, side: Vec3, angle: f64| {
        let (s, c) = libm::sincos(angle);
        (at + heading * s + side * (1.0 - c), heading * c + side * s)
    };
    let (near, out) = walk(from.at, from.heading, link.normals[0], link.angles[0]);
    let (far, back) = walk(to.at, -to.heading, link.normals[1], link.angles[1]);
    let length = link.angles[0] + link.angles[1] + link.straight;
    link.straight >= 0.0
        && (near + out * link.straight - far).norm() < 1e-9
        && (out + back).norm() < 1e-9
        && (length - link.length).abs() < 1e-12
}
