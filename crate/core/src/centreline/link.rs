//! The shortest arc-straight-arc link between two poses in space.
//!
//! Quick starts ([`super::link_starts`]) lead to a short link; then every place where the first arc of a shorter one
//! might be is either excluded by how little a link can change over it, or tried ([`super::link_cells`]). Each try is
//! solved to the last digits ([`super::link_equations`]); the shortest wins.
//!
//! With arcs of radius R, `h` aside and `w` ahead of the first pose (`tests/shapes/link_cases.rs` works each out):
//!
//! | poses | shortest link |
//! |---|---|
//! | in line, one way | a straight |
//! | the same way, `h` aside | two arcs of `a = 2 atan(h / (w + s))`, straight `s`, `s^2 = w^2 + h^2 - 4 R h` |
//! | the same way, ahead, `w^2 + h^2 < 4 R h` | a whole turn to one hand, straight `sqrt(w^2 + h^2)` within it |
//! | the same way, level or behind, `h <= 4 R` | half turns in two planes, straight `-w`: `2 pi R - w` |
//! | back to back on one axis | the same, both in any one plane |
//! | opposite ways, level, `h >= 2 R` | quarter turns, straight `h - 2 R`; just a half turn where `h = 2 R` |
//! | opposite ways, level, `h < 2 R` | three quarters each, straight `2 R - h` |
//! | at one point, turned by `b` | `2 pi + b` in all, straight `2 R sin(b / 2)` |
//! | one bend reaches | that bend, straight on its longer side |
//! | square in space, its own mirror | two equal arcs; one equation for their angle |
//! | all others | no closed form; `tests/shapes/link_search.rs` looks for a shorter one |

use super::corners::angle_between;
use super::link_cells::search;
use super::link_equations::Problem;
use super::link_starts::starts;
use super::pen::{Bend, Pen};
use crate::layout::{Vec3, perpendicular, reference_perpendicular};
use core::f64::consts::{FRAC_PI_2, PI};

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
/// Radius that a link of no radius is drawn with, mm.
pub(super) const SHARPEST: f64 = 1e-6;
/// A link this much shorter than another, relative, is the shorter one; nearer than that the first found stays.
pub(super) const SHORTER: f64 = 1e-9;

/// The shortest link of arcs of `radius` (above 0) from one pose to the other; none where no start led to one.
pub fn shortest_link(from: &Pose, to: &Pose, radius: f64) -> Option<Link> {
    if let Some(link) = in_line(from, to) {
        return Some(link);
    }
    let problem = Problem::new(from, to, radius);
    let mut best: Option<Link> = None;
    let mut keep = |start| {
        if let Some(link) = problem.solve(start)
            && best.as_ref().is_none_or(|other| link.length < other.length * (1.0 - SHORTER))
        {
            best = Some(link);
        }
        best.as_ref().map_or(f64::INFINITY, |link| link.length / radius)
    };
    let mut length = f64::INFINITY;
    for start in starts(&problem) {
        length = keep(start);
    }
    search(&problem, length, keep);
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

/// Whether a link goes round in a way that a smaller radius would not: it turns half a turn more than its ends ask
/// for, or a quarter turn more with a bend beyond a half turn.
pub(super) fn loops(from: &Pose, to: &Pose, link: &Link) -> bool {
    let extra = extra_turn(from, to, link);
    let widest = link.angles[0].max(link.angles[1]);
    extra >= PI - 1e-6 || (extra >= FRAC_PI_2 && widest > PI + 1e-6)
}

/// Draws a link between its poses. A radius of nothing is drawn as the sharpest corners there are, to be found bad as
/// such.
pub(super) fn draw_link(pen: &mut Pen, from: &Pose, to: &Pose, radius: f64, link: &Link) {
    let radius = radius.max(SHARPEST);
    let bend = |which: usize, normal: Vec3| Bend { radius, angle: link.angles[which], normal, station: None };
    pen.arc(from.at, from.heading, bend(0, link.normals[0]));
    // The last arc is placed from the last pose, so that the run ends exactly where it must.
    let (sin, cos) = crate::layout::turn(link.angles[1]);
    let centre = to.at + link.normals[1] * radius;
    let last_start = to.at + (-to.heading * sin + link.normals[1] * (1.0 - cos)) * radius;
    let last_heading = to.heading * cos - link.normals[1] * sin;
    pen.straight(last_start - last_heading * link.straight, last_heading, link.straight);
    pen.arc(last_start, last_heading, bend(1, perpendicular(&last_heading, &(centre - last_start))));
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
