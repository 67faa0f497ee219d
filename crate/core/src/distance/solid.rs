//! Solids that a tube must stay clear of: boxes and capped cylinders.

use crate::centreline::Bounds;
use crate::layout::{Vec3, unit};

/// A convex solid, closed.
#[derive(Debug, Clone, PartialEq)]
pub enum Solid {
    /// An axis-aligned box.
    Box(Bounds),
    /// A round cylinder with flat caps.
    Cylinder {
        /// Centre of the whole solid.
        centre: Vec3,
        /// Unit direction of the axis.
        axis: Vec3,
        /// Half its length, mm.
        half_length: f64,
        /// Its radius, mm.
        radius: f64,
    },
}

impl Solid {
    /// The cylinder between two cap centres. Where they are one point it is a disc across z.
    pub fn cylinder(from: &Vec3, to: &Vec3, radius: f64) -> Self {
        let along = to - from;
        let axis = if along == Vec3::zeros() { Vec3::z() } else { unit(&along) };
        Self::Cylinder { centre: (from + to) / 2.0, axis, half_length: along.norm() / 2.0, radius }
    }

    /// Distance of `p` from the surface, mm; below zero inside.
    pub fn signed_distance(&self, p: &Vec3) -> f64 {
        match self {
            Self::Box(bounds) => {
                let out = beyond(bounds, p);
                let largest = out.max();
                if largest <= 0.0 { largest } else { out.sup(&Vec3::zeros()).norm() }
            }
            Self::Cylinder { half_length, radius, .. } => {
                let (along, across) = self.split(p);
                let (out, up) = (across.norm() - radius, along.abs() - half_length);
                if out <= 0.0 || up <= 0.0 { out.max(up) } else { libm::hypot(out, up) }
            }
        }
    }

    /// Unit direction in which the distance grows fastest at `p`: away from the nearest surface. Where several surfaces
    /// are equally near, that of one of them; on the axis of a cylinder whose side is nearest, zero, for there it is
    /// least.
    pub fn outward(&self, p: &Vec3) -> Vec3 {
        match self {
            Self::Box(bounds) => {
                let out = beyond(bounds, p);
                let middle = (bounds.min + bounds.max) / 2.0;
                let side = p.zip_map(&middle, |at, middle| if at >= middle { 1.0 } else { -1.0 });
                if out.max() > 0.0 {
                    return unit(&out.sup(&Vec3::zeros()).component_mul(&side));
                }
                let nearest = out.imax();
                let mut direction = Vec3::zeros();
                direction[nearest] = side[nearest];
                direction
            }
            Self::Cylinder { axis, half_length, radius, .. } => {
                let (along, across) = self.split(p);
                let (out, up) = (across.norm() - radius, along.abs() - half_length);
                let side = if across == Vec3::zeros() { across } else { unit(&across) };
                let end = if along >= 0.0 { *axis } else { -axis };
                if out > 0.0 && up > 0.0 {
                    unit(&(side * out + end * up))
                } else if out >= up {
                    side
                } else {
                    end
                }
            }
        }
    }

    /// The solid's nearest point to `p`; `p` itself inside.
    pub fn nearest(&self, p: &Vec3) -> Vec3 {
        match self {
            Self::Box(bounds) => p.sup(&bounds.min).inf(&bounds.max),
            Self::Cylinder { centre, axis, half_length, radius } => {
                let (along, across) = self.split(p);
                let size = across.norm();
                let across = if size > *radius { across * (radius / size) } else { across };
                centre + axis * along.clamp(-half_length, *half_length) + across
            }
        }
    }

    /// The solid's farthest point along `direction`.
    pub fn farthest(&self, direction: &Vec3) -> Vec3 {
        match self {
            Self::Box(bounds) => Vec3::from_fn(|k, _| if direction[k] >= 0.0 { bounds.max[k] } else { bounds.min[k] }),
            Self::Cylinder { centre, axis, half_length, radius } => {
                let (along, across) = parts(direction, axis);
                // Square to a cap all of it is equally far; less than rounding aside is no direction.
                let aside = across.norm() > 1e-14 * along.abs();
                let rim = if aside { unit(&across) * *radius } else { Vec3::zeros() };
                centre + axis * half_length.copysign(along) + rim
            }
        }
    }

    /// Its middle.
    pub fn centre(&self) -> Vec3 {
        match self {
            Self::Box(bounds) => (bounds.min + bounds.max) / 2.0,
            Self::Cylinder { centre, .. } => *centre,
        }
    }

    /// The box round it, exact.
    pub fn bounds(&self) -> Bounds {
        match self {
            Self::Box(bounds) => *bounds,
            Self::Cylinder { centre, axis, half_length, radius } => {
                // A disc reaches radius * sqrt(1 - t^2) along a direction to which its normal has the component t.
                let reach = axis.map(|t| half_length * t.abs() + radius * (1.0 - t * t).max(0.0).sqrt());
                Bounds { min: centre - reach, max: centre + reach }
            }
        }
    }

    /// Along and across a cylinder's axis, from its centre.
    fn split(&self, p: &Vec3) -> (f64, Vec3) {
        let Self::Cylinder { centre, axis, .. } = self else { return (0.0, Vec3::zeros()) };
        parts(&(p - centre), axis)
    }
}

/// The parts of `v` along and across a unit axis. Projecting twice keeps a small part across free of rounding from a
/// large one along.
fn parts(v: &Vec3, axis: &Vec3) -> (f64, Vec3) {
    let along = v.dot(axis);
    let across = v - axis * along;
    (along, across - axis * across.dot(axis))
}

/// How far `p` is beyond the nearer face in each coordinate; below zero inside.
fn beyond(bounds: &Bounds, p: &Vec3) -> Vec3 {
    (bounds.min - p).sup(&(p - bounds.max))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn distances_inside_and_out() {
        let solid = Solid::Box(Bounds { min: Vec3::zeros(), max: Vec3::new(10.0, 20.0, 30.0) });
        assert_eq!(solid.signed_distance(&Vec3::new(13.0, 24.0, 15.0)), 5.0);
        assert_eq!(solid.signed_distance(&Vec3::new(4.0, 10.0, 15.0)), -4.0);
        let can = Solid::cylinder(&Vec3::zeros(), &Vec3::new(0.0, 0.0, 40.0), 5.0);
        assert_eq!(can.signed_distance(&Vec3::new(8.0, 0.0, 44.0)), 5.0);
        assert_eq!(can.signed_distance(&Vec3::new(0.0, 0.0, 38.0)), -2.0);
        assert_eq!(can.signed_distance(&Vec3::new(0.0, 4.0, 20.0)), -1.0);
        assert_eq!(can.signed_distance(&Vec3::new(3.0, 0.0, 47.0)), 7.0);
    }

    #[test]
    fn outward_is_the_slope_of_the_distance() {
        let solids = [
            Solid::Box(Bounds { min: Vec3::new(-3.0, 0.0, 1.0), max: Vec3::new(4.0, 6.0, 9.0) }),
            Solid::cylinder(&Vec3::new(1.0, 2.0, -1.0), &Vec3::new(4.0, 6.0, 2.0), 2.5),
        ];
        for solid in solids {
            for k in 0..400 {
                let spread = |m: f64| 16.0 * libm::sin(m * f64::from(k) + m) + 2.0;
                let p = Vec3::new(spread(1.3), spread(2.1), spread(0.7));
                let slope = Vec3::from_fn(|axis, _| {
                    let step = Vec3::from_fn(|k, _| if k == axis { 1e-5 } else { 0.0 });
                    (solid.signed_distance(&(p + step)) - solid.signed_distance(&(p - step))) / 2e-5
                });
                assert!((slope - solid.outward(&p)).norm() < 1e-4, "{p:?} in {solid:?}");
                let nearest = solid.nearest(&p);
                assert!(((p - nearest).norm() - solid.signed_distance(&p).max(0.0)).abs() < 1e-12);
            }
        }
    }
}
