//! Where the tubes must begin and end: ports and fittings to end poses, collars, leads; tied coordinates to points.

mod place;
mod reference;

pub use place::place;
pub(crate) use reference::turn;
pub use reference::{perpendicular, reference_perpendicular, rotate, unit};

use nalgebra::Vector3;

/// A point or a direction, mm or unit, in the builder's datum.
pub type Vec3 = Vector3<f64>;

/// Where a tube ends in a fitting. All directions point out of the fitting, the way the tube leaves it.
#[derive(Debug, Clone, PartialEq)]
pub struct EndPose {
    /// Centre of the tube's end face: on the stop, or `trim` beyond it.
    pub end: Vec3,
    /// Centre of the fitting's mouth.
    pub mouth: Vec3,
    /// Centre of the tube where the first bend may start: `mouth + lead * out`.
    pub lead_end: Vec3,
    /// Unit direction in which the tube leaves the mouth.
    pub out: Vec3,
    /// Length of tube from `end` to `mouth`, mm.
    pub inside: f64,
    /// Length of tube from `end` to `lead_end`, mm.
    pub straight: f64,
}

/// A solid cylinder of a fitting's body: the space its collar needs to be turned.
#[derive(Debug, Clone, PartialEq)]
pub struct Collar {
    /// Index of the port it sits on.
    pub port: usize,
    /// Centre of one end.
    pub from: Vec3,
    /// Centre of the other end.
    pub to: Vec3,
    /// Radius, mm.
    pub radius: f64,
}

/// A port with its fitting, placed.
#[derive(Debug, Clone, PartialEq)]
pub struct PlacedPort {
    /// Centre of the hole on the seat face.
    pub seat: Vec3,
    /// Unit direction out of the part.
    pub facing: Vec3,
    /// Index of its fitting in the design.
    pub fitting: usize,
    /// Centre of the fitting's mouth.
    pub mouth: Vec3,
    /// Unit direction in which a tube leaves the mouth.
    pub out: Vec3,
    /// The solids of the fitting: one for a straight, two for an elbow.
    pub collars: Vec<Collar>,
}

/// A run's ends and corners, placed.
#[derive(Debug, Clone, PartialEq)]
pub struct PlacedRun {
    /// Index of the port it starts at.
    pub from: usize,
    /// Index of the port it ends at.
    pub to: usize,
    /// Where it starts.
    pub start: EndPose,
    /// Where it ends; `out` points out of that fitting, against the run's travel.
    pub end: EndPose,
    /// The route's stations, with their coordinates resolved.
    pub stations: Vec<PlacedStation>,
}

/// A station with its coordinates resolved.
#[derive(Debug, Clone, PartialEq)]
pub enum PlacedStation {
    /// The apex where two straights would meet.
    Corner(PlacedCorner),
    /// A point passed through.
    Through(Vec3),
    /// A helix.
    Coil(PlacedCoil),
}

/// A corner of the route with its coordinates resolved.
#[derive(Debug, Clone, PartialEq)]
pub struct PlacedCorner {
    /// The apex.
    pub at: Vec3,
    /// The radius asked for: the corner's own, or the run's, mm.
    pub radius: f64,
}

/// A coil of the route in the builder's datum. With the angle `phi` turned since its start, from 0 to `angle`, its point
/// is `centre + (cos a * across[0] + sin a * across[1]) * (radius + widening * phi) + axis * climb * phi`, where
/// `a = start + sign * phi`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlacedCoil {
    /// Point of the axis in the plane where the coil starts.
    pub centre: Vec3,
    /// Unit direction of the axis, the way it climbs.
    pub axis: Vec3,
    /// Two unit directions across the axis; the first is its reference perpendicular, and with the axis they make a
    /// right-handed frame.
    pub across: [Vec3; 2],
    /// Radius where it starts, mm.
    pub radius: f64,
    /// Change of the radius per radian, mm.
    pub widening: f64,
    /// Climb along the axis per radian, mm.
    pub climb: f64,
    /// Angle about the axis where it starts, radians.
    pub start: f64,
    /// Angle turned about the axis, radians.
    pub angle: f64,
    /// 1 for a right-hand coil, -1 for a left-hand one.
    pub sign: f64,
}

impl PlacedStation {
    /// The corner, if it is one.
    pub fn corner(&self) -> Option<&PlacedCorner> {
        match self {
            Self::Corner(corner) => Some(corner),
            _ => None,
        }
    }

    /// The corner's apex, the point itself, or the coil's centre.
    pub fn at(&self) -> Vec3 {
        match self {
            Self::Corner(corner) => corner.at,
            Self::Through(at) => *at,
            Self::Coil(coil) => coil.centre,
        }
    }
}

/// Everything placed, in the order of the design's lists.
#[derive(Debug, Clone, PartialEq)]
pub struct Layout {
    /// One a port.
    pub ports: Vec<PlacedPort>,
    /// One a run.
    pub runs: Vec<PlacedRun>,
}
