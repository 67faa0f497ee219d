//! Directions: the reference perpendicular that turns are measured from, and rotation about an axis.

use super::Vec3;

/// The direction that a `turn_deg` or `start_deg` of 0 points in: world z projected onto the plane across `axis`,
/// or world x where `axis` is within 1 degree of z. `axis` is a unit direction.
pub fn reference_perpendicular(axis: &Vec3) -> Vec3 {
    let near_z = libm::hypot(axis.x, axis.y) <= libm::sin(core::f64::consts::PI / 180.0);
    perpendicular(axis, &if near_z { Vec3::x() } else { Vec3::z() })
}

/// The part of `towards` across the unit direction `axis`, made unit; any perpendicular where there is none.
pub fn perpendicular(axis: &Vec3, towards: &Vec3) -> Vec3 {
    let mut across = towards - axis * axis.dot(towards);
    if across.norm() <= 1e-9 * towards.norm() {
        let least = if axis.x.abs() <= axis.y.abs() && axis.x.abs() <= axis.z.abs() {
            Vec3::x()
        } else if axis.y.abs() <= axis.z.abs() {
            Vec3::y()
        } else {
            Vec3::z()
        };
        across = least - axis * axis.dot(&least);
    }
    let once = unit(&across);
    // A second projection removes what rounding left along the axis when `towards` is nearly parallel to it.
    unit(&(once - axis * axis.dot(&once)))
}

/// `v` made unit; scaled first so that neither tiny nor huge components lose it.
pub fn unit(v: &Vec3) -> Vec3 {
    let largest = v.x.abs().max(v.y.abs()).max(v.z.abs());
    if largest == 0.0 {
        return Vec3::zeros();
    }
    let scaled = v / largest;
    scaled / scaled.norm()
}

/// `v` turned about the unit `axis` by `angle` radians, right-hand rule (Rodrigues' formula).
pub fn rotate(v: &Vec3, axis: &Vec3, angle: f64) -> Vec3 {
    let (sin, cos) = turn(angle);
    v * cos + axis.cross(v) * sin + axis * (axis.dot(v) * (1.0 - cos))
}

/// Sine and cosine, exact at whole quarter turns, so that a right angle leaves no 6e-17 behind.
pub(crate) fn turn(angle: f64) -> (f64, f64) {
    let quarter = core::f64::consts::FRAC_PI_2;
    let n = libm::round(angle / quarter);
    if n * quarter == angle && n.abs() < 1e6 {
        return match (n as i64).rem_euclid(4) {
            0 => (0.0, 1.0),
            1 => (1.0, 0.0),
            2 => (0.0, -1.0),
            _ => (-1.0, 0.0),
        };
    }
    libm::sincos(angle)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reference_switches_one_degree_from_z() {
        let tilt = |deg: f64| {
            let (s, c) = libm::sincos(deg.to_radians());
            Vec3::new(0.0, s, c)
        };
        assert_eq!(reference_perpendicular(&tilt(0.99)).x, 1.0);
        let beyond = reference_perpendicular(&tilt(1.01));
        assert!(beyond.x == 0.0 && beyond.y < 0.0 && beyond.dot(&tilt(1.01)).abs() < 1e-15);
        assert_eq!(reference_perpendicular(&Vec3::x()), Vec3::z());
    }

    #[test]
    fn quarter_turns_are_exact() {
        let half = core::f64::consts::PI;
        assert_eq!(rotate(&Vec3::x(), &Vec3::z(), half / 2.0), Vec3::y());
        assert_eq!(rotate(&Vec3::x(), &Vec3::z(), half), -Vec3::x());
        assert_eq!(rotate(&Vec3::x(), &Vec3::z(), -half / 2.0), -Vec3::y());
    }

    #[test]
    fn a_perpendicular_is_found_even_for_parallel_directions() {
        for axis in [Vec3::x(), Vec3::y(), Vec3::z(), unit(&Vec3::new(1.0, 1.0, 1.0))] {
            let p = perpendicular(&axis, &axis);
            assert!((p.norm() - 1.0).abs() < 1e-15 && p.dot(&axis).abs() < 1e-15);
        }
    }
}
