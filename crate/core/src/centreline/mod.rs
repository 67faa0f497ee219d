//! The exact curve in the middle of a tube: straights, arcs, coils and smooth curves, tangent-continuous, measured by arc
//! length.

mod approach;
mod bounds;
mod coil;
mod corners;
mod curve;
mod fit;
mod frames;
mod link;
mod link_cells;
mod link_equations;
mod link_starts;
mod part;
mod pen;
mod piece;
mod run;
mod smooth;
mod table;
mod turned;

pub use bounds::{Bounds, bounds};
pub use curve::{Curve, Form};
pub(crate) use frames::{Frame, Frames};
pub use link::{Link, Pose, extra_turn, shortest_link};
pub use run::{line_of, lines};
pub use table::{BendKind, BendRow, apexes, bend_table};

use crate::layout::Vec3;

/// One piece of a centreline.
#[derive(Debug, Clone, PartialEq)]
pub enum Shape {
    /// A straight.
    Straight,
    /// A circular arc that turns towards `normal`.
    Arc {
        /// Radius of the arc, mm.
        radius: f64,
        /// Angle turned through, radians, (0, 2 pi).
        angle: f64,
        /// Unit direction from the piece's start to the arc's centre; perpendicular to its start direction.
        normal: Vec3,
        /// Index of the station that asked for this bend; none for a bend of the run's own radius that joins an end.
        station: Option<usize>,
    },
    /// A short stretch of a coil or of a smooth curve.
    Curve(Curve),
}

/// A piece with its place on the curve.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// Arc length at which it starts, mm.
    pub from: f64,
    /// Its length, mm; above zero.
    pub length: f64,
    /// Its first point.
    pub start: Vec3,
    /// Unit tangent at its first point.
    pub direction: Vec3,
    /// What it is.
    pub shape: Shape,
}

/// Point, tangent and curvature at an arc length.
#[derive(Debug, Clone, PartialEq)]
pub struct Sample {
    /// The point, mm.
    pub point: Vec3,
    /// The unit tangent.
    pub tangent: Vec3,
    /// The curvature vector: towards the centre, of size 1/radius; zero on a straight.
    pub curvature: Vec3,
}

/// A whole centreline, tangent-continuous from end face to end face.
#[derive(Debug, Clone, PartialEq)]
pub struct Centreline {
    /// Its pieces in order.
    pub pieces: Vec<Piece>,
    /// Exact length, mm.
    pub length: f64,
}

/// Why a centreline of the asked radii does not exist. Lengths mm.
#[derive(Debug, Clone, PartialEq)]
pub enum Obstacle {
    /// Two stations (or a station and an end) leave less straight between them than their bends need.
    CornersTooClose {
        /// Index of the station (corner, coil or point) before the straight; none where it is the run's start.
        before: Option<usize>,
        /// Index of the station after the straight; none where it is the run's end.
        after: Option<usize>,
        /// Length between the apexes (or from the lead's end).
        room: f64,
        /// Sum of the tangent lengths asked for.
        need: f64,
        /// Largest radius for both bends at which they just meet.
        largest_radius: f64,
    },
    /// The first (last) bend would begin before the lead ends.
    LeadTooShort {
        /// True at the run's start, false at its end.
        at_start: bool,
        /// Index of the station whose bend it is.
        station: usize,
        /// Straight length from mouth to bend that is left; may be negative.
        left: f64,
        /// The fitting's lead.
        lead: f64,
        /// Largest radius of that bend that keeps the lead; 0 if none.
        largest_radius: f64,
    },
    /// The first (last) corner lies inside the circle that the joining bend must follow.
    CornerOutOfReach {
        /// True where the bend leaves the run's start or a coil's end, false where it leads to the run's end or a coil.
        at_start: bool,
        /// Index of the coil that the bend joins; none for a port.
        from: Option<usize>,
        /// Index of the station.
        station: usize,
        /// Largest run radius that reaches it.
        largest_radius: f64,
    },
    /// A corner turns straight back (180 degrees).
    TurnsBack {
        /// Index of the station.
        station: usize,
    },
    /// Two stations, or a station and an end, are the same point.
    SamePoint {
        /// Index of the station that repeats.
        station: usize,
    },
    /// No link of the run's radius joins two ends without looping.
    LinkTooTight {
        /// Indices of the coils that it joins; none for the run's own ends.
        between: [Option<usize>; 2],
        /// Largest run radius that does; 0 if none.
        largest_radius: f64,
    },
}

/// What became of a run's centreline.
#[derive(Debug, Clone, PartialEq)]
pub struct RunLine {
    /// The curve, where it exists at the asked radii (it may still be a bad one).
    pub line: Option<Centreline>,
    /// What is in its way; empty when the curve keeps every promise. A link that loops, or a bend that eats into a
    /// lead, leaves both a curve and an obstacle.
    pub obstacles: Vec<Obstacle>,
    /// Largest run radius at which this run has no obstacle, its corners' own radii kept; none if there is none, or
    /// if there is no obstacle.
    pub largest_run_radius: Option<f64>,
    /// End, stations, end: what to draw where there is no curve.
    pub skeleton: Vec<Vec3>,
}
