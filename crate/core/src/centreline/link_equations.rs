//! The equations of an arc-straight-arc link, solved from a start.
//!
//! An arc that leaves a pose is written as the plane vector `k` across its heading: its direction is the way to the
//! centre, its length the angle turned. With the whole length as the fifth unknown, all is smooth in `k` up to a whole
//! turn, a turn of nothing and a half turn among them. Two arcs and a straight make six equations in five unknowns.

use super::link::{Link, Pose};
use crate::layout::{Vec3, perpendicular, reference_perpendicular};
use core::f64::consts::PI;
use nalgebra::{SMatrix, SVector};

/// Unknowns: the two arcs' plane vectors and the whole length, in radii.
pub(super) type Unknowns = SVector<f64, 5>;
type Residual = SVector<f64, 6>;

/// The equations, with lengths in radii and the first pose at the origin.
pub(super) struct Problem {
    radius: f64,
    /// From the first pose to the last.
    pub gap: Vec3,
    /// Heading out of the first pose, and backwards out of the last.
    pub out: [Vec3; 2],
    /// Two unit directions across each heading.
    pub across: [[Vec3; 2]; 2],
}

/// End of an arc: its heading, the point its own length back along that heading from its end (which is smooth where
/// the end itself is not), and both derivatives by the two components of `k`.
pub(super) struct ArcEnd {
    pub angle: f64,
    pub foot: Vec3,
    pub heading: Vec3,
    d_foot: [Vec3; 2],
    d_heading: [Vec3; 2],
}

/// Steps to a link; most take six, the nearly symmetric a few dozen.
const ROUNDS: usize = 60;

impl Problem {
    pub fn new(from: &Pose, to: &Pose, radius: f64) -> Self {
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

    /// Damped Gauss-Newton from a start to a link; none where it leads to no link or to a straight run backwards.
    pub fn solve(&self, mut x: Unknowns) -> Option<Link> {
        let scale = 1.0 + self.gap.norm();
        let mut damping = 1e-3;
        let (mut residual, mut jacobian) = self.equations(&x);
        let mut size = residual.norm_squared();
        for round in 0..ROUNDS {
            if round == 12 && size > 0.1 * scale {
                return None;
            }
            let step = damped_step(&jacobian, &residual, damping)?;
            let next = x - step;
            let (next_residual, next_jacobian) = self.equations(&next);
            let next_size = next_residual.norm_squared();
            if next_size < size {
                let settled = step.norm() < 1e-15 * scale;
                (x, residual, jacobian, size) = (next, next_residual, next_jacobian, next_size);
                damping = if damping > 1e-24 { damping * 0.02 } else { 0.0 };
                if settled {
                    break;
                }
            } else {
                if size < 1e-24 * scale * scale {
                    break;
                }
                damping = (damping * 10.0).max(1e-12);
                if damping > 1e6 {
                    return None;
                }
            }
        }
        (size < 1e-20 * scale * scale).then(|| self.link(&x)).flatten()
    }

    fn link(&self, x: &Unknowns) -> Option<Link> {
        let mut angles = [0.0; 2];
        let mut normals = [Vec3::zeros(); 2];
        // The whole length counts a turn beyond a whole one in full, so the straight is found before turns are reduced.
        let straight = x[4] - libm::hypot(x[0], x[1]) - libm::hypot(x[2], x[3]);
        if straight < -1e-9 {
            return None;
        }
        for end in [0, 1] {
            let (u, v) = (x[2 * end], x[2 * end + 1]);
            let size = libm::hypot(u, v);
            let turned = libm::fmod(size, 2.0 * PI);
            let [a, b] = &self.across[end];
            normals[end] = if size > 0.0 { crate::layout::unit(&((a * u + b * v) / size)) } else { *a };
            angles[end] = turned;
            if 2.0 * PI - turned < 1e-9 {
                angles[end] = 0.0;
            }
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
    pub fn arc(&self, end: usize, x: &Unknowns) -> ArcEnd {
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

/// The step that lessens the residual most, damped: least squares of the Jacobian with the damping's roots below it. The
/// normal equations would square away what little tells nearly symmetric links apart.
fn damped_step(jacobian: &SMatrix<f64, 6, 5>, residual: &Residual, damping: f64) -> Option<Unknowns> {
    let mut tall = SMatrix::<f64, 11, 5>::zeros();
    let mut rest = SVector::<f64, 11>::zeros();
    tall.fixed_rows_mut::<6>(0).copy_from(jacobian);
    rest.fixed_rows_mut::<6>(0).copy_from(residual);
    for i in 0..5 {
        tall[(6 + i, i)] = (damping * (1e-3 + jacobian.column(i).norm_squared())).sqrt();
    }
    let square = tall.qr();
    square.q_tr_mul(&mut rest);
    let mut step = rest.fixed_rows::<5>(0).into_owned();
    square.r().solve_upper_triangular_mut(&mut step).then_some(step)
}
