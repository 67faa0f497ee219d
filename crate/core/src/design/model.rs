//! The design: everything the builder stated, nothing derived.
//!
//! Lengths are millimetres, angles degrees with the suffix `_deg`, in the builder's own right-handed datum, z up.
//! A value of these types has passed [`super::parse`]: names are unique, references resolve, numbers are finite and in range.

use super::making::Process;
use super::working::Loop;

/// The one document.
#[derive(Debug, Clone, PartialEq)]
pub struct Design {
    /// Title of the design; may be empty.
    pub name: String,
    /// Free text; may be empty.
    pub notes: String,
    /// What can be screwed into a port.
    pub fittings: Vec<Fitting>,
    /// The threaded holes.
    pub ports: Vec<Port>,
    /// The tubes.
    pub runs: Vec<Run>,
    /// Space that every tube must stay clear of.
    pub keep_outs: Vec<KeepOut>,
    /// Least gap between a tube's skin and anything else, mm.
    pub clearance: f64,
    /// What the tubes are made of and on.
    pub process: Process,
    /// The coolant's working state.
    pub working: Loop,
}

impl Design {
    /// The fitting that a port carries, by the port's name.
    pub fn fitting_at(&self, port: &str) -> Option<&Fitting> {
        let port = self.ports.iter().find(|other| other.name == port)?;
        self.fittings.iter().find(|fitting| fitting.name == port.fitting)
    }
}

/// What is screwed into a port and takes the tube.
#[derive(Debug, Clone, PartialEq)]
pub struct Fitting {
    /// Unique among the fittings.
    pub name: String,
    /// Outer diameter of the tube it takes, mm.
    pub tube_diameter: f64,
    /// Mouth above the port's seat face, mm; an elbow uses its rise and reach instead.
    pub height: f64,
    /// From the mouth down to the stop, mm.
    pub socket_depth: f64,
    /// Diameter of the widest ring round the tube, mm.
    pub collar_diameter: f64,
    /// Straight tube that must follow the mouth before a bend, mm.
    pub lead: f64,
    /// Its narrowest bore, mm; none where it is as wide as the tube's.
    pub bore: Option<f64>,
    /// Present when the fitting turns the tube's axis away from the port's.
    pub elbow: Option<Elbow>,
    /// The O-ring and its gland, when known.
    pub seal: Option<Seal>,
}

/// The angled body of an elbow fitting.
#[derive(Debug, Clone, PartialEq)]
pub struct Elbow {
    /// Angle turned away from the port's facing, degrees, (0, 180).
    pub angle_deg: f64,
    /// From the seat along the facing to the turn, mm.
    pub rise: f64,
    /// From the turn on to the mouth, mm.
    pub reach: f64,
    /// Direction of the turn about the facing, degrees; see [`crate::layout::reference_perpendicular`].
    pub turn_deg: f64,
}

/// The O-ring that seals on the tube.
#[derive(Debug, Clone, PartialEq)]
pub struct Seal {
    /// Cross-section diameter of the ring, mm.
    pub section: f64,
    /// Diameter of the gland's floor, mm.
    pub gland_diameter: f64,
    /// Width of the groove along the tube, mm; none where it was not measured.
    pub gland_width: Option<f64>,
}

/// A threaded hole in a part.
#[derive(Debug, Clone, PartialEq)]
pub struct Port {
    /// Unique among the ports.
    pub name: String,
    /// Centre of the hole on its seat face, mm.
    pub at: [f64; 3],
    /// Direction out of the part, as typed: any length above zero.
    pub facing: [f64; 3],
    /// Name of a fitting of the design.
    pub fitting: String,
    /// How well the position is known, plus or minus mm.
    pub measured_to: f64,
}

/// One tube, from one port to another.
#[derive(Debug, Clone, PartialEq)]
pub struct Run {
    /// Unique among the runs.
    pub name: String,
    /// Name of the port it starts at.
    pub from: String,
    /// Name of the port it ends at; never the same port.
    pub to: String,
    /// Outer diameter and bore.
    pub tube: TubeSize,
    /// Centreline radius of the run's bends, mm; 0 is accepted and found bad.
    pub bend_radius: f64,
    /// Whether bends that are closer than their straights share the room, their radii then being upper limits.
    pub fit_bends: bool,
    /// The stations between the ports, in order.
    pub route: Vec<Station>,
    /// The body's own shape between the leads; none for a plain tube.
    pub dress: Option<Dress>,
    /// How the tube's ends are finished.
    pub ends: Ends,
    /// How it stands on the printer's plate, or its first piece where it is cut; none for the best that is found.
    pub stance: Option<Stance>,
    /// Where it is cut into pieces that are printed one by one, in order along it; none for a run in one piece.
    pub cuts: Vec<Cut>,
}

/// A place where a run is cut into two pieces, which a bonded joint puts together again.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cut {
    /// Arc length from the run's first end face to the bore's seam, mm; above zero.
    pub at: f64,
    /// How the piece that begins here stands on the printer's plate; none for the best that is found.
    pub stance: Option<Stance>,
}

/// How a tube stands on the printer's plate, as the builder chose it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stance {
    /// Direction in the datum that points away from the plate, as typed: any length above zero.
    pub up: [f64; 3],
    /// How far it is turned on the plate, degrees, by the right-hand rule about `up`; at 0 the reference perpendicular of
    /// `up` lies along the plate's x, see [`crate::layout::reference_perpendicular`].
    pub turn_deg: f64,
}

/// Diameters of a tube.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TubeSize {
    /// Outer diameter, mm.
    pub outer_diameter: f64,
    /// Inner diameter, mm; always below the outer.
    pub bore: f64,
}

/// One station of a route.
#[derive(Debug, Clone, PartialEq)]
pub enum Station {
    /// The apex where two straights would meet.
    Corner(Corner),
    /// A point that a smooth curve passes through; consecutive ones make one curve.
    Through(Through),
    /// A helix, cylindrical or conical.
    Coil(Coil),
}

/// A point that the route passes smoothly.
#[derive(Debug, Clone, PartialEq)]
pub struct Through {
    /// The point.
    pub at: [Coordinate; 3],
}

/// A helix that starts in the plane of its centre and advances along its axis.
#[derive(Debug, Clone, PartialEq)]
pub struct Coil {
    /// Point of the axis in the plane where the coil starts.
    pub centre: [Coordinate; 3],
    /// Direction of the axis and of the advance, as typed: any length above zero.
    pub axis: [f64; 3],
    /// Radius of the centreline where it starts, mm.
    pub radius: f64,
    /// Radius where it ends, mm; none for the same.
    pub end_radius: Option<f64>,
    /// Advance along the axis per turn, mm.
    pub pitch: f64,
    /// Turns, whole or not.
    pub turns: f64,
    /// Which way it turns as it advances.
    pub hand: Hand,
    /// Where it starts, about the axis, degrees; see [`crate::layout::reference_perpendicular`].
    pub start_deg: f64,
}

/// Which way a helix turns as it advances along its axis.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hand {
    /// By the right-hand rule, as a common screw.
    Right,
    /// The other way.
    Left,
}

/// The shape of a tube's body between its leads; the bore stays round.
#[derive(Debug, Clone, PartialEq)]
pub struct Dress {
    /// Outer diameter where the body begins, mm; none for the tube's.
    pub diameter: Option<f64>,
    /// Outer diameter where the body ends, mm; none for the same.
    pub end_diameter: Option<f64>,
    /// Length over which the plain tube becomes the body, at each end, mm.
    pub blend: f64,
    /// Lobes round the body: 0 for none, or at least 2.
    pub lobes: u32,
    /// Depth of the grooves between the lobes, mm.
    pub depth: f64,
    /// How far the lobes turn about the tube along it, degrees per mm, by the right-hand rule about the travel.
    pub twist_deg_per_mm: f64,
}

/// An apex of the route.
#[derive(Debug, Clone, PartialEq)]
pub struct Corner {
    /// Where the two straights would meet.
    pub at: [Coordinate; 3],
    /// Own centreline radius, mm, where it differs from the run's.
    pub bend_radius: Option<f64>,
}

/// A coordinate of a station: a number, or tied to a port's same coordinate.
#[derive(Debug, Clone, PartialEq)]
pub enum Coordinate {
    /// Millimetres in the datum.
    Fixed(f64),
    /// That port's same coordinate plus an offset.
    Tied {
        /// Name of a port of the design.
        of: String,
        /// Offset, mm.
        plus: f64,
    },
}

/// Finish of both ends of a tube.
#[derive(Debug, Clone, PartialEq)]
pub struct Ends {
    /// Angle of the outer lead-in chamfer to the tube's axis, degrees.
    pub chamfer_deg: f64,
    /// Axial length of the outer lead-in chamfer, mm; 0 for none.
    pub chamfer_length: f64,
    /// 45 degree break of the inner edge, mm; 0 for none.
    pub edge_break: f64,
    /// Extra length beyond the stop at each end, to be cut or sanded off, mm.
    pub trim: f64,
    /// Whether a seating mark is wanted: a shallow ring that vanishes under the collar when the tube is home.
    pub seat_mark: bool,
}

/// Space the tubes must stay clear of.
#[derive(Debug, Clone, PartialEq)]
pub struct KeepOut {
    /// Unique among the keep-outs.
    pub name: String,
    /// Its solid.
    pub shape: KeepOutShape,
}

/// The solid of a keep-out.
#[derive(Debug, Clone, PartialEq)]
pub enum KeepOutShape {
    /// Axis-aligned box, `min` below `max` in each coordinate.
    Box {
        /// Lowest corner.
        min: [f64; 3],
        /// Highest corner.
        max: [f64; 3],
    },
    /// Closed round cylinder between two points.
    Cylinder {
        /// Centre of one end.
        from: [f64; 3],
        /// Centre of the other end, elsewhere.
        to: [f64; 3],
        /// Radius, mm.
        radius: f64,
    },
}

impl Hand {
    /// 1 for right, -1 for left.
    pub fn sign(self) -> f64 {
        match self {
            Self::Right => 1.0,
            Self::Left => -1.0,
        }
    }

    /// How the document writes it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Right => "right",
            Self::Left => "left",
        }
    }
}

impl Coil {
    /// Radius where it ends, mm.
    pub fn radius_at_end(&self) -> f64 {
        self.end_radius.unwrap_or(self.radius)
    }
}

impl Dress {
    /// Outer diameters where the body begins and where it ends, mm, on a tube of `plain` mm.
    pub fn diameters(&self, plain: f64) -> [f64; 2] {
        let first = self.diameter.unwrap_or(plain);
        [first, self.end_diameter.unwrap_or(first)]
    }

    /// The body's wall at its thinnest, mm: under the grooves, where the body is slimmest.
    pub fn thinnest(&self, tube: TubeSize) -> f64 {
        let [first, last] = self.diameters(tube.outer_diameter);
        let depth = if self.lobes > 0 { self.depth } else { 0.0 };
        (first.min(last) - tube.bore) / 2.0 - depth
    }
}

impl Run {
    /// Half the outer diameter, mm.
    pub fn outer_radius(&self) -> f64 {
        self.tube.outer_diameter / 2.0
    }

    /// Half the largest diameter anywhere on it, its dress included, mm: what must clear everything.
    pub fn largest_radius(&self) -> f64 {
        let dressed = self.dress.as_ref().map(|dress| dress.diameters(self.tube.outer_diameter));
        dressed.into_iter().flatten().fold(self.tube.outer_diameter, f64::max) / 2.0
    }

    /// The stance of the piece that begins at a cut, by the cut's index; without one, of the first piece.
    pub fn stance_from(&self, cut: Option<usize>) -> Option<Stance> {
        cut.map_or(self.stance, |cut| self.cuts.get(cut).and_then(|cut| cut.stance))
    }

    /// Thickness of the plain tube, mm.
    pub fn wall(&self) -> f64 {
        (self.tube.outer_diameter - self.tube.bore) / 2.0
    }
}
