//! Nearest points of straight segments.

use crate::layout::Vec3;

/// How far along `[a, b]` its nearest point to `p` lies, as a fraction in [0, 1].
pub fn on_segment(p: &Vec3, a: &Vec3, b: &Vec3) -> f64 {
    let along = b - a;
    let squared = along.norm_squared();
    if squared > 0.0 { ((p - a).dot(&along) / squared).clamp(0.0, 1.0) } else { 0.0 }
}

/// Nearest points of two segments: the fractions along each, and their distance. Segments of no length are points.
///
/// The least distance lies inside both segments or at an end of one (Lumelsky 1985, Inf. Proc. Letters 21, 55). The
/// ends are always tried, so that nearly parallel segments, where the inner formula loses its digits, stay right.
pub fn segments(a: [&Vec3; 2], b: [&Vec3; 2]) -> (f64, f64, f64) {
    let (u, v, w) = (a[1] - a[0], b[1] - b[0], a[0] - b[0]);
    let (uu, uv, vv) = (u.norm_squared(), u.dot(&v), v.norm_squared());
    let (uw, vw) = (u.dot(&w), v.dot(&w));
    let cross = uu * vv - uv * uv;
    if cross > 1e-14 * uu * vv {
        let s = (uv * vw - vv * uw) / cross;
        let t = (uu * vw - uv * uw) / cross;
        if (0.0..=1.0).contains(&s) && (0.0..=1.0).contains(&t) {
            return (s, t, (w + u * s - v * t).norm());
        }
    }
    let (to_a0, to_a1) = (on_segment(a[0], b[0], b[1]), on_segment(a[1], b[0], b[1]));
    let (to_b0, to_b1) = (on_segment(b[0], a[0], a[1]), on_segment(b[1], a[0], a[1]));
    let mut best = (0.0, 0.0, f64::INFINITY);
    for (s, t) in [(0.0, to_a0), (1.0, to_a1), (to_b0, 0.0), (to_b1, 1.0)] {
        let squared = (w + u * s - v * t).norm_squared();
        if squared < best.2 {
            best = (s, t, squared);
        }
    }
    (best.0, best.1, best.2.sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn skew_lines_keep_the_distance_of_the_formula() {
        // |w . (u x v)| / |u x v|, analytic geometry: here the lines x = z = 0 and y = 0, z = 7.
        let (a, b) = (
            [Vec3::new(0.0, -5.0, 0.0), Vec3::new(0.0, 9.0, 0.0)],
            [Vec3::new(-3.0, 0.0, 7.0), Vec3::new(4.0, 0.0, 7.0)],
        );
        let (s, t, d) = segments([&a[0], &a[1]], [&b[0], &b[1]]);
        assert!((s - 5.0 / 14.0).abs() < 1e-15 && (t - 3.0 / 7.0).abs() < 1e-15 && d == 7.0);
    }

    #[test]
    fn parallel_and_pointlike_segments_have_a_distance() {
        let o = Vec3::zeros();
        let along = Vec3::new(100.0, 0.0, 0.0);
        let beside = [Vec3::new(30.0, 3.0, 0.0), Vec3::new(70.0, 3.0, 1e-9)];
        assert!((segments([&o, &along], [&beside[0], &beside[1]]).2 - 3.0).abs() < 1e-12);
        let beyond = [Vec3::new(104.0, 3.0, 0.0), Vec3::new(170.0, 3.0, 0.0)];
        assert_eq!(segments([&o, &along], [&beyond[0], &beyond[1]]), (1.0, 0.0, 5.0));
        assert_eq!(segments([&o, &o], [&beside[0], &beside[0]]).2, libm::hypot(30.0, 3.0));
    }
}
