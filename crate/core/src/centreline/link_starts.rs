//! Quick starts for the equations of a link.
//!
//! In a plane: both circles on either side, joined by an outer or an inner tangent. Parallel headings the same way: two
//! half turns whose planes differ. Along the chord between the poses, each end reached the short or the long way. Most
//! shortest links are among them, so that the search of all cells ([`super::link_cells`]) has little left to look at.

use super::link_equations::{Problem, Unknowns};
use crate::layout::{Vec3, perpendicular, unit};
use core::f64::consts::PI;

/// The quick starts, in a fixed order.
pub(super) fn starts(problem: &Problem) -> Vec<Unknowns> {
    let mut starts = about_chord(problem);
    starts.extend(in_plane(problem));
    starts.extend(half_turns(problem));
    starts
}

/// The unknowns of a link whose straight runs along `direction`, each end reached the short or the long way.
fn guess(problem: &Problem, direction: &Vec3, long: [bool; 2]) -> Unknowns {
    let mut x = Unknowns::zeros();
    for end in [0, 1] {
        let target = if end == 0 { *direction } else { -direction };
        let [a, b] = &problem.across[end];
        let (u, v) = (target.dot(a), target.dot(b));
        let size = libm::hypot(u, v);
        let (u, v) = if size > 1e-9 { (u / size, v / size) } else { (1.0, 0.0) };
        let short = libm::atan2(size, target.dot(&problem.out[end]));
        let angle = if long[end] { short - 2.0 * PI } else { short };
        x[2 * end] = u * angle;
        x[2 * end + 1] = v * angle;
    }
    finished(problem, x, direction)
}

/// The start with the whole length that brings the straight nearest to the far arc.
fn finished(problem: &Problem, mut x: Unknowns, direction: &Vec3) -> Unknowns {
    let ends = [problem.arc(0, &x), problem.arc(1, &x)];
    let turned = ends[0].angle + ends[1].angle;
    x[4] = (problem.gap + ends[1].foot - ends[0].foot).dot(direction).max(turned);
    x
}

const WAYS: [[bool; 2]; 4] = [[false, false], [true, false], [false, true], [true, true]];

fn about_chord(problem: &Problem) -> Vec<Unknowns> {
    let chord = unit(&problem.gap);
    let chord = if chord.norm() > 0.0 { chord } else { problem.across[0][0] };
    WAYS.map(|long| guess(problem, &chord, long)).to_vec()
}

/// Tangents of the circles on either side of both poses, in the plane of the near heading that comes nearest.
fn in_plane(problem: &Problem) -> Vec<Unknowns> {
    let (ahead, aside) = (problem.out[0], problem.across[0][0]);
    let flat = |v: &Vec3| [v.dot(&ahead), v.dot(&aside)];
    let target = flat(&problem.gap);
    let heading = flat(&-problem.out[1]);
    let size = libm::hypot(heading[0], heading[1]);
    if size < 1e-6 {
        return Vec::new();
    }
    let heading = [heading[0] / size, heading[1] / size];
    let mut starts = Vec::new();
    // A circle to the left (+1) has its centre a quarter turn to the left of the heading.
    for near in [1.0, -1.0] {
        for far in [1.0, -1.0] {
            let from = [0.0, near];
            let to = [target[0] - far * heading[1], target[1] + far * heading[0]];
            let between = [to[0] - from[0], to[1] - from[1]];
            let apart = libm::hypot(between[0], between[1]);
            // An outer tangent runs along the centres' line, an inner one crosses it.
            let offset = near - far;
            if apart < offset.abs().max(1e-12) {
                continue;
            }
            let along = libm::atan2(between[1], between[0]) + libm::asin((offset / apart).clamp(-1.0, 1.0));
            let (sin, cos) = libm::sincos(along);
            let whole = |angle: f64| angle - 2.0 * PI * libm::floor(angle / (2.0 * PI));
            let first = whole(near * along);
            let last = whole(far * (libm::atan2(heading[1], heading[0]) - along));
            let direction = ahead * cos + aside * sin;
            let mut x = Unknowns::zeros();
            x[0] = near * first;
            // The far arc, looked at backwards, still has its centre on the same side of the plane.
            let centre = perpendicular(&problem.out[1], &((aside * heading[0] - ahead * heading[1]) * far));
            x[2] = centre.dot(&problem.across[1][0]) * last;
            x[3] = centre.dot(&problem.across[1][1]) * last;
            starts.push(finished(problem, x, &direction));
        }
    }
    starts
}

/// Two half turns joined by a straight that runs back, for headings much the same way.
fn half_turns(problem: &Problem) -> Vec<Unknowns> {
    let ahead = &problem.out[0];
    if ahead.dot(&-problem.out[1]) < 0.5 {
        return Vec::new();
    }
    let lateral = problem.gap - ahead * ahead.dot(&problem.gap);
    let lean = (lateral.norm() / 4.0).min(1.0);
    let rise = (1.0 - lean * lean).sqrt();
    let across = perpendicular(ahead, &lateral);
    [1.0, -1.0]
        .map(|hand| {
            let side = ahead.cross(&across) * (hand * rise);
            let mut x = Unknowns::zeros();
            for (end, centre) in [(0, across * lean + side), (1, side - across * lean)] {
                for axis in [0, 1] {
                    x[2 * end + axis] = PI * centre.dot(&problem.across[end][axis]);
                }
            }
            finished(problem, x, &-ahead)
        })
        .to_vec()
}
