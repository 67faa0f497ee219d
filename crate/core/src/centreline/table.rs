//! The bend table: straight, rotation about the feed direction, angle, radius, row by row; and the apexes.

use super::{Centreline, Curve, Form, Shape};
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
    /// Centreline radius, mm; of a coil or a smooth curve the least.
    pub radius: f64,
    /// What it is. A coil or a smooth curve is one row.
    pub kind: BendKind,
    /// Length along the bend, coil or curve, mm.
    pub length: f64,
    /// Index of the station that it belongs to, the first of a smooth curve's; none for a joining bend.
    pub station: Option<usize>,
}

/// What a row of a bend table is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BendKind {
    /// A circular bend.
    Bend,
    /// A helix.
    Coil,
    /// A smooth curve through points.
    Curve,
    /// The last straight.
    End,
}

impl BendKind {
    /// What the report calls it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Bend => "bend",
            Self::Coil => "coil",
            Self::Curve => "curve",
            Self::End => "end",
        }
    }
}

/// Rotations and their sines nearer to zero than this are zero: they are what rounding leaves of equal planes.
const SAME_PLANE: f64 = 1e-12;

/// The table of a centreline, fed from its start.
pub fn bend_table(line: &Centreline) -> Vec<BendRow> {
    let mut rows: Vec<BendRow> = Vec::new();
    let mut straight = 0.0;
    let mut plane: Option<Vec3> = None;
    let mut whole: Option<usize> = None;
    for piece in &line.pieces {
        let Some([first, last]) = piece.axes() else {
            straight += piece.length;
            whole = None;
            continue;
        };
        let part_of = match &piece.shape {
            Shape::Curve(curve) => Some(curve.whole),
            _ => None,
        };
        if let Some(row) = rows.last_mut()
            && part_of.is_some()
            && part_of == whole
        {
            row.angle += piece.turned();
            row.length += piece.length;
            row.radius = row.radius.min(piece.radius().unwrap_or(f64::INFINITY));
        } else {
            let rotation = plane.map_or(0.0, |before| rotation_about(&piece.direction, &before, &first));
            rows.push(BendRow {
                straight,
                rotation,
                angle: piece.turned(),
                radius: piece.radius().unwrap_or_default(),
                kind: kind_of(&piece.shape),
                length: piece.length,
                station: part_of.or(piece.station()),
            });
            straight = 0.0;
        }
        plane = Some(last);
        whole = part_of;
    }
    rows.push(BendRow {
        straight,
        rotation: 0.0,
        angle: 0.0,
        radius: 0.0,
        kind: BendKind::End,
        length: 0.0,
        station: None,
    });
    rows
}

fn kind_of(shape: &Shape) -> BendKind {
    match shape {
        Shape::Straight => BendKind::End,
        Shape::Arc { .. } => BendKind::Bend,
        Shape::Curve(Curve { form: Form::Helix(_), .. }) => BendKind::Coil,
        Shape::Curve(Curve { form: Form::Cubic(_), .. }) => BendKind::Curve,
    }
}

/// Rotation about `feed` that takes the unit axis `before` to `after`; a half turn is positive.
fn rotation_about(feed: &Vec3, before: &Vec3, after: &Vec3) -> f64 {
    let sin = before.cross(after).dot(feed);
    let cos = before.dot(after);
    let sin = if sin.abs() <= SAME_PLANE { 0.0 } else { sin };
    libm::atan2(sin, if cos.abs() <= SAME_PLANE { 0.0 } else { cos })
}

/// First end, apexes, last end. A bend of half a turn or more has no apex; its middle stands in, and so does every
/// piece's end for a coil or a smooth curve.
pub fn apexes(line: &Centreline) -> Vec<Vec3> {
    let (Some(first), Some(last)) = (line.pieces.first(), line.pieces.last()) else { return Vec::new() };
    let mut points = vec![first.start];
    for (index, piece) in line.pieces.iter().enumerate() {
        match piece.shape {
            Shape::Straight => {}
            Shape::Arc { radius, angle, .. } if angle < PI - 1e-6 => {
                points.push(piece.start + piece.direction * (radius * libm::tan(angle / 2.0)));
            }
            Shape::Arc { .. } => points.push(piece.at(piece.length / 2.0).point),
            Shape::Curve(_) => {
                if index > 0 && !matches!(line.pieces[index - 1].shape, Shape::Curve(_)) {
                    points.push(piece.start);
                }
                if index + 1 < line.pieces.len() {
                    points.push(piece.at(piece.length).point);
                }
            }
        }
    }
    points.push(last.at(last.length).point);
    points
}
