//! From a place of the picture back into the scene: onto a plane, onto a line, onto the tube that is seen there.

use tubewright_core::layout::Vec3;

use super::camera::Camera;
use super::scene::{Run, Scene};

/// A plane or a line is seen edge on, or end on, where the sine of its angle to the sight is less than this.
const EDGE_ON: f64 = 0.02;
/// A tube can be picked this near to its centreline, CSS pixels, however thin it is drawn.
const NEAR_ENOUGH: f64 = 5.0;

/// A place on a tube.
#[derive(Debug, Clone, PartialEq)]
pub struct Picked<'a> {
    /// The run.
    pub run: &'a Run,
    /// Where on the polyline of its centreline: the number of the point before, and the share of the way to the next.
    pub place: f64,
}

impl Camera {
    /// The point of the plane through `origin` square to the unit `normal` that is seen at a place of the picture, CSS
    /// pixels from its top left; none where the plane is seen edge on.
    pub fn on_plane(&self, place: (f64, f64), origin: &Vec3, normal: &Vec3) -> Option<Vec3> {
        let toward = self.frame().toward;
        let slope = toward.dot(normal);
        let from = self.in_picture(place);
        (slope.abs() > EDGE_ON).then(|| from + toward * ((origin - from).dot(normal) / slope))
    }

    /// The point of the line through `origin` along the unit `direction` that is seen nearest to a place of the picture;
    /// none where the line is seen end on.
    pub fn on_line(&self, place: (f64, f64), origin: &Vec3, direction: &Vec3) -> Option<Vec3> {
        let toward = self.frame().toward;
        let seen = direction - toward * direction.dot(&toward);
        let square = seen.norm_squared();
        let far = (self.in_picture(place) - origin).dot(&seen) / square;
        (square.sqrt() > EDGE_ON).then(|| origin + direction * far)
    }

    /// The point seen at a place of the picture, at the depth of its middle.
    fn in_picture(&self, (left, top): (f64, f64)) -> Vec3 {
        let (frame, (width, height)) = (self.frame(), self.size());
        self.focus() + (frame.right * (left - width / 2.0) + frame.up * (height / 2.0 - top)) / self.scale()
    }
}

/// The tube seen at a place of the picture, the nearest to the eye where several are; a run without a tube by its line.
pub fn picked<'a>(camera: &Camera, scene: &'a Scene, place: (f64, f64)) -> Option<Picked<'a>> {
    let (from, toward) = (camera.in_picture(place), camera.frame().toward);
    let hits = scene.runs.iter().filter_map(|run| {
        let radius = if run.made { run.outer_diameter / 2.0 } else { 0.0 };
        let hit = hit_of(&run.centreline, radius.max(NEAR_ENOUGH / camera.scale()), &from, &toward)?;
        Some((hit, run))
    });
    let nearest = hits.max_by(|(a, _), (b, _)| a.toward.total_cmp(&b.toward));
    nearest.map(|(hit, run)| Picked { run, place: hit.place })
}

/// Where a line of sight meets a tube.
struct Hit {
    /// How far toward the eye, mm.
    toward: f64,
    /// Where on the polyline.
    place: f64,
}

/// Where the line through `from` along the unit `toward` leaves a round tube about a polyline, nearest to the eye.
fn hit_of(points: &[[f64; 3]], radius: f64, from: &Vec3, toward: &Vec3) -> Option<Hit> {
    let mut best: Option<Hit> = None;
    let mut take = |hit: Hit| {
        if best.as_ref().is_none_or(|it| hit.toward > it.toward) {
            best = Some(hit);
        }
    };
    for (index, pair) in points.windows(2).enumerate() {
        let (a, b) = (Vec3::from(pair[0]), Vec3::from(pair[1]));
        let length = (b - a).norm();
        let Some(axis) = (b - a).try_normalize(1e-9) else { continue };
        // Balls fill the wedges that straight pieces leave open on the outside of a bend; the tube's ends are flat.
        if index > 0
            && let Some(depth) = ball(&a, radius, from, toward)
        {
            take(Hit { toward: depth, place: index as f64 });
        }
        if let Some((depth, far)) = cylinder(&a, &axis, length, radius, from, toward) {
            take(Hit { toward: depth, place: index as f64 + far / length });
        }
    }
    best
}

/// How far along the sight it leaves a ball.
fn ball(centre: &Vec3, radius: f64, from: &Vec3, toward: &Vec3) -> Option<f64> {
    let arm = centre - from;
    let middle = arm.dot(toward);
    let square = radius * radius - (arm.norm_squared() - middle * middle);
    (square >= 0.0).then(|| middle + square.sqrt())
}

/// How far along the sight it leaves a cylinder by its flank or an end face, and how far along the axis that is.
fn cylinder(base: &Vec3, axis: &Vec3, length: f64, radius: f64, from: &Vec3, toward: &Vec3) -> Option<(f64, f64)> {
    let arm = from - base;
    let along = toward.dot(axis);
    let (across, offset) = (toward - axis * along, arm - axis * arm.dot(axis));
    let (a, b, c) = (across.norm_squared(), across.dot(&offset), offset.norm_squared() - radius * radius);
    let height = |depth: f64| arm.dot(axis) + depth * along;
    if a > 1e-12 {
        let square = b * b - a * c;
        if square < 0.0 {
            return None;
        }
        let depth = (square.sqrt() - b) / a;
        if (0.0..=length).contains(&height(depth)) {
            return Some((depth, height(depth)));
        }
    }
    // Out by the face that looks to the eye.
    let top = if along > 0.0 { length } else { 0.0 };
    let depth = (top - arm.dot(axis)) / along;
    (along.abs() > 1e-9 && (offset + across * depth).norm() <= radius).then_some((depth, top))
}
