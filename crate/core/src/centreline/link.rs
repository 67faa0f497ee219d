//! The shortest arc-straight-arc link between two poses in space.
//!
//! An arc that leaves a pose is written as the plane vector `k` across its heading: its direction is the way to the
//! centre, its length the angle turned. With the whole length as the fifth unknown, all is smooth in `k` up to a whole
//! turn, a turn of nothing and a half turn among them. Two arcs and a straight make six equations in five unknowns
//! that damped Gauss-Newton steps solve from starts spread over every way of turning; the shortest solution wins.

use super::corners::angle_between;
use super::pen::{Bend, Pen};
use super::{Centreline, Obstacle};
use crate::layout::{PlacedRun, Vec3, perpendicular, reference_perpendicular};
use core::f64::consts::PI;
use nalgebra::{SMatrix, SVector};

/// A point and the unit direction of travel through it.
#[derive(Debug, Clone, PartialEq)]
pub struct Pose {
    /// The point, mm.
    pub at: Vec3,
    /// Unit direction of travel.
    pub heading: Vec3,
}

/// Arc, straight, arc; either arc and the straight may be of no length.
#[derive(Debug, Clone, PartialEq)]
pub struct Link {
    /// Angles turned by the two arcs, radians, [0, 2 pi).
    pub angles: [f64; 2],
    /// Unit directions to the arcs' centres: from the first pose, and from the last pose.
    pub normals: [Vec3; 2],
    /// Direction of the straight.
    pub direction: Vec3,
    /// Length of the straight, mm.
    pub straight: f64,
    /// Whole length, mm.
    pub length: f64,
}

/// Two poses on one line and heading closer than this are joined by a straight, mm.
const IN_LINE: f64 = 1e-9;
/// A link this much shorter than another, relative, is the shorter one; nearer than that the first found stays.
const SHORTER: f64 = 1e-9;

/// The shortest link of arcs of `radius` (above 0) from one pose to the other; none where no start led to one.
pub fn shortest_link(from: &Pose, to: &Pose, radius: f64) -> Option<Link> {
    if let Some(link) = in_line(from, to) {
        return Some(link);
    }
    let problem = Problem::new(from, to, radius);
    let mut best: Option<Link> = None;
    for start in problem.starts() {
        if let Some(link) = problem.solve(start, best.as_ref().map(|link| link.length))
            && best.as_ref().is_none_or(|other| link.length < other.length * (1.0 - SHORTER))
        {
            best = Some(link);
        }
    }
    best
}

/// How much more a link turns than the straight chord between the poses asks for, radians.
pub fn extra_turn(from: &Pose, to: &Pose, link: &Link) -> f64 {
    let chord = to.at - from.at;
    if chord.norm() == 0.0 {
        return link.angles[0] + link.angles[1] - PI;
    }
    let chord = crate::layout::unit(&chord);
    link.angles[0] + link.angles[1] - angle_between(&from.heading, &chord) - angle_between(&chord, &to.heading)
}

/// The whole run: its start's straight, the link, its end's straight. A link that turns at least half a turn more
/// than its ends ask for is drawn, with the obstacle that names the radius which does not.
pub(super) fn link_line(
    run: &PlacedRun,
    from: &Pose,
    to: &Pose,
    radius: f64,
) -> (Option<Centreline>, Vec<Obstacle>) {
    let Some(link) = shortest_link(from, to, radius) else {
        return (None, vec![Obstacle::LinkTooTight { largest_radius: 0.0 }]);
    };
    let mut obstacles = Vec::new();
    if extra_turn(from, to, &link) >= PI - 1e-6 {
        obstacles.push(Obstacle::LinkTooTight { largest_radius: 0.0 });
    }
    let mut pen = Pen::default();
    pen.straight(run.start.end, run.start.out, run.start.straight);
    let bend = |which: usize, normal: Vec3| Bend { radius, angle: link.angles[which], normal, station: None };
    pen.arc(from.at, from.heading, bend(0, link.normals[0]));
    // The last arc is placed from the last pose, so that the run ends exactly where it must.
    let (sin, cos) = crate::layout::turn(link.angles[1]);
    let centre = to.at + link.normals[1] * radius;
    let last_start = to.at + (-to.heading * sin + link.normals[1] * (1.0 - cos)) * radius;
    let last_heading = to.heading * cos - link.normals[1] * sin;
    pen.straight(last_start - last_heading * link.straight, last_heading, link.straight);
    pen.arc(last_start, last_heading, bend(1, perpendicular(&last_heading, &(centre - last_start))));
    pen.straight(to.at, to.heading, run.end.straight);
    (Some(pen.finish()), obstacles)
}

fn in_line(from: &Pose, to: &Pose) -> Option<Link> {
    let chord = to.at - from.at;
    let ahead = chord.dot(&from.heading);
    let aside = (chord - from.heading * ahead).norm();
    let turned = angle_between(&from.heading, &to.heading);
    (ahead > 0.0 && aside <= IN_LINE && turned * ahead <= IN_LINE).then(|| {
        let normal = reference_perpendicular(&from.heading);
        Link { angles: [0.0; 2], normals: [normal, normal], direction: from.heading, straight: ahead, length: ahead }
    })
}

/// Unknowns: the two arcs' plane vectors and the whole length, in radii.
type Unknowns = SVector<f64, 5>;
type Residual = SVector<f64, 6>;

/// The equations, with lengths in radii and the first pose at the origin.
struct Problem {
    radius: f64,
    gap: Vec3,
    /// Heading out of the first pose, and backwards out of the last.
    out: [Vec3; 2],
    /// Two unit directions across each heading.
    across: [[Vec3; 2]; 2],
}

/// End of an arc: its heading, the point its own length back along that heading from its end (which is smooth where
/// the end itself is not), and both derivatives by the two components of `k`.
struct ArcEnd {
    angle: f64,
    foot: Vec3,
    heading: Vec3,
    d_foot: [Vec3; 2],
    d_heading: [Vec3; 2],
}

impl Problem {
    fn new(from: &Pose, to: &Pose, radius: f64) -> Self {
        let gap = (to.at - from.at) / radius;
        let out = [from.heading, -to.heading];
        // The plane of the poses comes first, so that links that can lie in it do.
        let across = [0, 1].map(|end| {
            let towards = if end == 0 { gap } else { -gap };
            let lateral = towards - out[end] * out[end].dot(&towards);
            let other = out[1 - end] - out[end] * out[end].dot(&out[1 - end]);
            let first = if lateral.norm() > 1e-9 * gap.norm().max(1e-300) {
                perpendicular(&out[end], &lateral)
            } else if other.norm() > 1e-9 {
                perpendicular(&out[end], &other)
            } else {
                reference_perpendicular(&out[end])
            };
            [first, out[end].cross(&first)]
        });
        Self { radius, gap, out, across }
    }

    /// First guesses: straights in directions all round, each reached the short and the long way at both ends.
    fn starts(&self) -> impl Iterator<Item = Unknowns> + '_ {
        let chord = crate::layout::unit(&self.gap);
        let chord = if chord.norm() > 0.0 { chord } else { self.across[0][0] };
        let rings = [(0.35, 4), (0.8, 6), (1.3, 8), (1.85, 8), (2.35, 6), (2.8, 4)];
        let around = perpendicular(&chord, &self.across[0][0]);
        let side = chord.cross(&around);
        let spread = rings.into_iter().flat_map(move |(tilt, count)| {
            (0..count).map(move |step| {
                let (sin_t, cos_t) = libm::sincos(tilt);
                let (sin, cos) = libm::sincos(2.0 * PI * f64::from(step) / f64::from(count));
                chord * cos_t + (around * cos + side * sin) * sin_t
            })
        });
        std::iter::once(chord).chain(spread).flat_map(move |direction| {
            [[false, false], [true, false], [false, true], [true, true]]
                .map(|long| self.guess(&direction, long))
        })
    }

    fn guess(&self, direction: &Vec3, long: [bool; 2]) -> Unknowns {
        let mut x = Unknowns::zeros();
        for end in [0, 1] {
            let target = if end == 0 { *direction } else { -direction };
            let [a, b] = &self.across[end];
            let (u, v) = (target.dot(a), target.dot(b));
            let size = libm::hypot(u, v);
            let (u, v) = if size > 1e-9 { (u / size, v / size) } else { (1.0, 0.0) };
            let short = libm::atan2(size, target.dot(&self.out[end]));
            let angle = if long[end] { short - 2.0 * PI } else { short };
            x[2 * end] = u * angle;
            x[2 * end + 1] = v * angle;
        }
        let ends = [self.arc(0, &x), self.arc(1, &x)];
        let turned = ends[0].angle + ends[1].angle;
        x[4] = (self.gap + ends[1].foot - ends[0].foot).dot(direction).max(turned);
        x
    }

    /// Damped Gauss-Newton; stops early where the length is already beyond `shortest` and still growing no shorter.
    fn solve(&self, mut x: Unknowns, shortest: Option<f64>) -> Option<Link> {
        let scale = 1.0 + self.gap.norm();
        let mut damping = 1e-3;
        let (mut residual, mut jacobian) = self.equations(&x);
        let mut size = residual.norm_squared();
        for _ in 0..40 {
            let normal = jacobian.transpose() * jacobian;
            let slope = jacobian.transpose() * residual;
            let mut system = normal;
            for i in 0..5 {
                system[(i, i)] += damping * (1e-3 + normal[(i, i)]);
            }
            let step = system.cholesky()?.solve(&slope);
            let next = x - step;
            let (next_residual, next_jacobian) = self.equations(&next);
            let next_size = next_residual.norm_squared();
            if next_size < size {
                let settled = step.norm() < 1e-15 * scale;
                (x, residual, jacobian, size) = (next, next_residual, next_jacobian, next_size);
                damping = (damping * 0.05).max(1e-15);
                if settled {
                    break;
                }
            } else {
                if size < 1e-24 * scale * scale {
                    break;
                }
                damping *= 10.0;
                if damping > 1e6 {
                    return None;
                }
            }
        }
        (size < 1e-22 * scale * scale).then(|| self.link(&x)).flatten().filter(|link| {
            shortest.is_none_or(|length| link.length < length)
        })
    }

    fn link(&self, x: &Unknowns) -> Option<Link> {
        let mut angles = [0.0; 2];
        let mut normals = [Vec3::zeros(); 2];
        for end in [0, 1] {
            let (u, v) = (x[2 * end], x[2 * end + 1]);
            let size = libm::hypot(u, v);
            let turned = libm::fmod(size, 2.0 * PI);
            let [a, b] = &self.across[end];
            normals[end] = if size > 0.0 { crate::layout::unit(&((a * u + b * v) / size)) } else { *a };
            angles[end] = turned;
            // A turn the other way round is the long way to the opposite side.
            if 2.0 * PI - turned < 1e-9 {
                angles[end] = 0.0;
            }
        }
        let straight = x[4] - angles[0] - angles[1];
        if straight < -1e-9 {
            return None;
        }
        let straight = straight.max(0.0) * self.radius;
        let direction = self.arc(0, x).heading;
        let length = (angles[0] + angles[1]) * self.radius + straight;
        Some(Link { angles, normals, direction, straight, length })
    }

    fn equations(&self, x: &Unknowns) -> (Residual, SMatrix<f64, 6, 5>) {
        let first = self.arc(0, x);
        let last = self.arc(1, x);
        let meet = first.heading + last.heading;
        let reach = first.foot + first.heading * x[4] - self.gap - last.foot;
        let mut residual = Residual::zeros();
        let mut jacobian = SMatrix::<f64, 6, 5>::zeros();
        residual.fixed_rows_mut::<3>(0).copy_from(&meet);
        residual.fixed_rows_mut::<3>(3).copy_from(&reach);
        for i in [0, 1] {
            jacobian.fixed_view_mut::<3, 1>(0, i).copy_from(&first.d_heading[i]);
            jacobian.fixed_view_mut::<3, 1>(3, i).copy_from(&(first.d_foot[i] + first.d_heading[i] * x[4]));
            jacobian.fixed_view_mut::<3, 1>(0, 2 + i).copy_from(&last.d_heading[i]);
            jacobian.fixed_view_mut::<3, 1>(3, 2 + i).copy_from(&-last.d_foot[i]);
        }
        jacobian.fixed_view_mut::<3, 1>(3, 4).copy_from(&first.heading);
        (residual, jacobian)
    }

    /// The unit arc that leaves `end` by its `k`.
    fn arc(&self, end: usize, x: &Unknowns) -> ArcEnd {
        let k = [x[2 * end], x[2 * end + 1]];
        let out = &self.out[end];
        let [a, b] = &self.across[end];
        let angle = libm::hypot(k[0], k[1]);
        let (sin, cos) = libm::sincos(angle);
        // Series where the quotients lose digits: sin t / t, its rate over t, (1 - cos t) / t - sin t, and its rate.
        let q = angle * angle;
        let (s, ds, b_of, db) = if angle < 1e-3 {
            (1.0 - q / 6.0, -1.0 / 3.0 + q / 30.0, angle * (-0.5 + q / 8.0), -0.5 + 0.375 * q)
        } else {
            let s = sin / angle;
            let c = (1.0 - cos) / angle;
            (s, (cos - s) / q, c - sin, s - c / angle - cos)
        };
        let inward = a * k[0] + b * k[1];
        let normal = if angle > 0.0 { inward / angle } else { Vec3::zeros() };
        let foot = out * (sin - angle * cos) + inward * b_of;
        let heading = out * cos + inward * s;
        let side = [a, b];
        let d_foot = [0, 1].map(|i| out * (sin * k[i]) + side[i] * b_of + normal * (db * k[i]));
        let d_heading = [0, 1].map(|i| out * (-s * k[i]) + side[i] * s + inward * (ds * k[i]));
        ArcEnd { angle, foot, heading, d_foot, d_heading }
    }
}
