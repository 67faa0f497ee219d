//! The shortest link against an independent search: every direction of the straight on a grid over the sphere, both
//! arcs the short and the long way, each least miss polished by Newton's method on the miss alone. The search knows
//! nothing of the solver's unknowns; its formulas are the plane geometry of one circle.

use core::f64::consts::PI;
use tubewright_core::centreline::{Link, Pose, shortest_link};
use tubewright_core::layout::{Vec3, perpendicular, unit};

/// Pairs of poses that are tried.
const PAIRS: usize = 10_000;

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

/// A way to run the straight: its direction, and which arcs go the long way round.
struct Search<'a> {
    from: &'a Pose,
    to: &'a Pose,
    long: [bool; 2],
}

/// How far the straight along a direction passes beside the far arc, and the length of arcs and straight.
struct Miss {
    aside: Vec3,
    straight: f64,
    length: f64,
}

impl Search<'_> {
    fn miss(&self, u: &Vec3) -> Miss {
        let (near, first) = arc(&self.from.heading, u, self.long[0]);
        let (far, last) = arc(&-self.to.heading, &-u, self.long[1]);
        let gap = self.to.at + far - self.from.at - near;
        let straight = gap.dot(u);
        Miss { aside: gap - u * straight, straight, length: first + last + straight }
    }

    /// Newton's method on the miss, its slopes by differences, from a direction to one that misses by nothing.
    fn polished(&self, mut u: Vec3) -> Option<f64> {
        let mut here = self.miss(&u);
        for _ in 0..30 {
            let size = here.aside.norm();
            if size < 1e-10 {
                return (here.straight > -1e-10).then_some(here.length);
            }
            let a = perpendicular(&u, &Vec3::new(0.3, -0.5, 0.8));
            let axes = [a, u.cross(&a)];
            let slopes = axes.map(|axis| (self.miss(&unit(&(u + axis * 1e-7))).aside - here.aside) / 1e-7);
            let seen = |v: &Vec3| axes.map(|axis| v.dot(&axis));
            let ([p, q], [r, s], [m, n]) = (seen(&slopes[0]), seen(&slopes[1]), seen(&here.aside));
            let whole = p * s - q * r;
            let step = (axes[0] * (r * n - s * m) + axes[1] * (q * m - p * n)) / whole;
            if !step.norm().is_finite() {
                return None;
            }
            let mut share = 1.0 / (step.norm() / 0.3).max(1.0);
            loop {
                let next = unit(&(u + step * share));
                let there = self.miss(&next);
                if there.aside.norm() < size {
                    (u, here) = (next, there);
                    break;
                }
                share /= 4.0;
                if share < 1e-6 {
                    return None;
                }
            }
        }
        None
    }
}

/// Directions over each side of a cube, `SIDE` by `SIDE`.
const SIDE: usize = 12;

fn grid() -> Vec<Vec3> {
    let place = |k: usize| libm::tan((k as f64 + 0.5) / SIDE as f64 * PI / 2.0 - PI / 4.0);
    let side = |face: usize, i: usize, j: usize| {
        let mut u = Vec3::zeros();
        u[face % 3] = if face < 3 { 1.0 } else { -1.0 };
        (u[(face + 1) % 3], u[(face + 2) % 3]) = (place(i), place(j));
        unit(&u)
    };
    (0..6).flat_map(|face| (0..SIDE * SIDE).map(move |k| side(face, k / SIDE, k % SIDE))).collect()
}

/// Length of the shortest link found from every place of the grid where the miss is less than beside it; radius 1.
fn brute_force(from: &Pose, to: &Pose, grid: &[Vec3]) -> f64 {
    let mut best = f64::INFINITY;
    for long in [[false, false], [true, false], [false, true], [true, true]] {
        let search = Search { from, to, long };
        let misses: Vec<f64> = grid.iter().map(|u| search.miss(u).aside.norm_squared()).collect();
        for (index, miss) in misses.iter().enumerate() {
            let (face, i, j) = (index / (SIDE * SIDE), index / SIDE % SIDE, index % SIDE);
            let beside = |i: usize, j: usize| misses[(face * SIDE + i) * SIDE + j] >= *miss;
            let least = (i == 0 || beside(i - 1, j))
                && (i + 1 == SIDE || beside(i + 1, j))
                && (j == 0 || beside(i, j - 1))
                && (j + 1 == SIDE || beside(i, j + 1));
            if least && let Some(length) = search.polished(grid[index]) {
                best = best.min(length);
            }
        }
    }
    best
}

#[test]
fn no_search_finds_a_shorter_link() {
    let grid = grid();
    let mut random = Random(7);
    let (mut unfound, mut worst) = (0, 0.0f64);
    for pair in 0..PAIRS {
        let reach = 0.3 + 8.0 * random.next() * random.next();
        let from = Pose { at: Vec3::zeros(), heading: random.direction() };
        let to = Pose { at: random.direction() * reach, heading: random.direction() };
        let found = shortest_link(&from, &to, 1.0).expect("a link exists");
        assert!(closes(&from, &to, &found), "pair {pair}: {found:?}");
        let judged = brute_force(&from, &to, &grid);
        assert!(found.length <= judged * (1.0 + 1e-6), "pair {pair}: {} but {judged}: {from:?} {to:?}", found.length);
        worst = worst.max(found.length / judged - 1.0);
        unfound += usize::from(judged > found.length * (1.0 + 1e-6));
    }
    println!("{unfound} of {PAIRS} searches found only longer ones; the solver's longest is {worst:e} longer");
    // A search that finds nothing would prove nothing.
    assert!(unfound < PAIRS / 100, "{unfound}");
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
