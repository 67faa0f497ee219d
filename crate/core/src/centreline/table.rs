//! The bend table: straight, rotation about the feed direction, angle, radius, row by row; and the apexes.

use super::{Centreline, Piece, Shape};
use crate::layout::Vec3;
use core::f64::consts::PI;

/// One row of a bend table. The last row of a table is the last straight alone: its other values are 0.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BendRow {
    /// Straight before the bend, mm.
    pub straight: f64,
    /// From the bend plane before to this one, about the feed direction by the right-hand rule, radians, (-pi, pi];
    /// 0 in the first row.
    pub rotation: f64,
    /// Angle turned through, radians.
    pub angle: f64,
    /// Centreline radius, mm.
    pub radius: f64,
}

/// Rotations and their sines nearer to zero than this are zero: they are what rounding leaves of equal planes.
const SAME_PLANE: f64 = 1e-12;

/// The table of a centreline, fed from its start.
pub fn bend_table(line: &Centreline) -> Vec<BendRow> {
    let mut rows = Vec::new();
    let mut straight = 0.0;
    let mut plane: Option<Vec3> = None;
    for piece in &line.pieces {
        match (&piece.shape, piece.axis()) {
            (Shape::Arc { radius, angle, .. }, Some(axis)) => {
                let rotation = plane.map_or(0.0, |before| rotation_about(&piece.direction, &before, &axis));
                rows.push(BendRow { straight, rotation, angle: *angle, radius: *radius });
                straight = 0.0;
                plane = Some(axis);
            }
            _ => straight += piece.length,
        }
    }
    rows.push(BendRow { straight, rotation: 0.0, angle: 0.0, radius: 0.0 });
    rows
}

/// Rotation about `feed` that takes the unit axis `before` to `after`; a half turn is positive.
fn rotation_about(feed: &Vec3, before: &Vec3, after: &Vec3) -> f64 {
    let sin = before.cross(after).dot(feed);
    let cos = before.dot(after);
    let sin = if sin.abs() <= SAME_PLANE { 0.0 } else { sin };
    libm::atan2(sin, if cos.abs() <= SAME_PLANE { 0.0 } else { cos })
}

/// First end, apexes, last end. A bend of half a turn or more has no apex; its middle stands in.
pub fn apexes(line: &Centreline) -> Vec<Vec3> {
    let (Some(first), Some(last)) = (line.pieces.first(), line.pieces.last()) else { return Vec::new() };
    std::iter::once(first.start)
        .chain(line.pieces.iter().filter_map(apex))
        .chain([last.at(last.length).point])
        .collect()
}

fn apex(piece: &Piece) -> Option<Vec3> {
    match piece.shape {
        Shape::Straight => None,
        Shape::Arc { radius, angle, .. } if angle < PI - 1e-6 => {
            Some(piece.start + piece.direction * (radius * libm::tan(angle / 2.0)))
        }
        Shape::Arc { .. } => Some(piece.at(piece.length / 2.0).point),
    }
}
