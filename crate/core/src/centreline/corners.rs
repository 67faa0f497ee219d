//! Ways through corners: straights between apexes, an arc at each, one more bend where an end corner is off its axis.

use super::approach::Approach;
use super::fit::share_room;
use super::link::Pose;
use super::pen::{Bend, Pen};
use super::{Centreline, Obstacle};
use crate::layout::{EndPose, PlacedCorner, Vec3, perpendicular};
use core::f64::consts::PI;

/// A corner this near to its port's axis lies on it, mm: well under what calipers or rounding of inputs can mean.
const ON_AXIS: f64 = 1e-6;
/// Points nearer than this are one point, mm.
const SAME_POINT: f64 = 1e-6;
/// Turns under this are none, radians: they are what rounding leaves of points in one line.
const NO_TURN: f64 = 1e-12;
/// Turns within this of a half turn have no apex, radians.
const TURNS_BACK: f64 = 1e-6;

/// Where a way begins or ends.
#[derive(Debug, Clone)]
pub(super) enum Terminal {
    /// Along the direction out of a fitting (no station) or of a coil's end.
    Pose { pose: EndPose, station: Option<usize> },
    /// At a point that a smooth curve passes: the leg to it is the curve's from the corner's bend on.
    Point { at: Vec3, station: usize },
}

/// Corners between two terminals; at least one.
#[derive(Debug)]
pub(super) struct Corners<'a> {
    pub start: Terminal,
    /// Each with the index of its station.
    pub corners: &'a [(usize, PlacedCorner)],
    pub end: Terminal,
}

/// A way that was drawn, and the poses between which it was: a curve goes on from there.
#[derive(Debug)]
pub(super) struct Drawn {
    pub line: Centreline,
    pub from: Pose,
    pub to: Pose,
}

/// How the radii of a way's bends come about.
#[derive(Debug, Clone, Copy)]
pub(super) struct Radii {
    /// The run's own, mm.
    pub run: f64,
    /// Whether bends that are closer than their straights share the room.
    pub fit: bool,
}

/// The way through corners, and what is in its way.
pub(super) fn through_corners(way: &Corners<'_>, radii: Radii) -> (Option<Drawn>, Vec<Obstacle>) {
    let mut obstacles = Vec::new();
    let [first, last] = [&way.corners[0], &way.corners[way.corners.len() - 1]];
    let start = Way::to(&way.start, &first.1, radii.run);
    let end = Way::to(&way.end, &last.1, radii.run);
    for (reached, terminal, at_start, station) in [(&start, &way.start, true, first.0), (&end, &way.end, false, last.0)]
    {
        if let Way::OutOfReach { largest_radius, .. } = reached {
            let from = terminal.station();
            obstacles.push(Obstacle::CornerOutOfReach { at_start, from, station, largest_radius: *largest_radius });
        }
    }
    let mut route = match Route::of(way, &start, &end) {
        Ok(route) => route,
        Err(twins) => {
            obstacles.extend(twins.into_iter().map(|station| Obstacle::SamePoint { station }));
            return (None, obstacles);
        }
    };
    for (turn, (station, _)) in route.turns.iter().zip(way.corners) {
        if turn.angle >= PI - TURNS_BACK {
            obstacles.push(Obstacle::TurnsBack { station: *station });
        }
    }
    if !obstacles.is_empty() {
        return (None, obstacles);
    }
    if radii.fit {
        share_room(&mut route.turns, &route.legs, route.kept);
    }
    let (fits, crowded) = route.room(way);
    obstacles.extend(crowded);
    (fits.then(|| route.draw(&start, &end, way, radii.run)), obstacles)
}

impl Terminal {
    fn station(&self) -> Option<usize> {
        match self {
            Self::Pose { station, .. } => *station,
            Self::Point { station, .. } => Some(*station),
        }
    }

    /// The pose of a fitting, whose lead is to be kept.
    fn fitting(&self) -> Option<&EndPose> {
        match self {
            Self::Pose { pose, station: None } => Some(pose),
            _ => None,
        }
    }
}

/// How a terminal gets to its corner.
enum Way {
    /// The corner lies ahead on the terminal's axis.
    Axis { from: Vec3, straight: f64 },
    /// By one more bend from the lead's end.
    Bend(Approach),
    /// The corner lies inside that bend's circle; the lead's end still tells which corners coincide.
    OutOfReach { from: Vec3, largest_radius: f64 },
    /// Straight from a point that has no direction of its own.
    Free { from: Vec3 },
}

impl Way {
    fn to(terminal: &Terminal, corner: &PlacedCorner, run_radius: f64) -> Self {
        let pose = match terminal {
            Terminal::Point { at, .. } => return Self::Free { from: *at },
            Terminal::Pose { pose, .. } => pose,
        };
        let offset = corner.at - pose.end;
        let ahead = offset.dot(&pose.out);
        if ahead > 0.0 && (offset - pose.out * ahead).norm() <= ON_AXIS {
            return Self::Axis { from: pose.end, straight: pose.straight };
        }
        match Approach::towards(&pose.lead_end, &pose.out, run_radius, &corner.at) {
            Ok(approach) => Self::Bend(approach),
            Err(largest_radius) => Self::OutOfReach { from: pose.lead_end, largest_radius },
        }
    }

    /// Where the leg to the corner begins, and how much of it must stay straight.
    fn leg_start(&self) -> (Vec3, f64) {
        match self {
            Self::Axis { from, straight } => (*from, *straight),
            Self::Bend(approach) => (approach.point, 0.0),
            Self::OutOfReach { from, .. } | Self::Free { from } => (*from, 0.0),
        }
    }
}

/// Legs between the nodes (end, corners, end) and the turn at each corner.
struct Route {
    nodes: Vec<Vec3>,
    legs: Vec<Leg>,
    turns: Vec<Turn>,
    kept: [f64; 2],
}

pub(super) struct Leg {
    pub direction: Vec3,
    pub length: f64,
}

pub(super) struct Turn {
    angle: f64,
    pub radius: f64,
    tangent: f64,
}

impl Turn {
    pub fn of(angle: f64, radius: f64) -> Self {
        let angle = if angle < NO_TURN { 0.0 } else { angle };
        Self { angle, radius, tangent: radius * libm::tan(angle / 2.0) }
    }

    /// Tangent length over radius.
    pub fn reach(&self) -> f64 {
        libm::tan(self.angle / 2.0)
    }

    /// The same turn on another radius, mm.
    pub fn set(&mut self, radius: f64) {
        *self = Self::of(self.angle, radius);
    }
}

impl Route {
    /// The route, or the stations that repeat the point before them.
    fn of(way: &Corners<'_>, start: &Way, end: &Way) -> Result<Self, Vec<usize>> {
        let (first, kept_start) = start.leg_start();
        let (last, kept_end) = end.leg_start();
        let nodes: Vec<Vec3> =
            std::iter::once(first).chain(way.corners.iter().map(|(_, corner)| corner.at)).chain([last]).collect();
        let final_leg = nodes.len() - 2;
        let mut twins = Vec::new();
        let legs: Vec<Leg> = nodes
            .windows(2)
            .enumerate()
            .map(|(index, pair)| {
                // A joining bend knows its way to the corner, even where the corner is the bend's last point.
                match (start, end) {
                    (Way::Bend(a), _) if index == 0 => return Leg { direction: a.direction, length: a.distance },
                    (_, Way::Bend(a)) if index == final_leg => {
                        return Leg { direction: -a.direction, length: a.distance };
                    }
                    _ => {}
                }
                let along = pair[1] - pair[0];
                let length = along.norm();
                if length <= SAME_POINT {
                    twins.push(way.corners[index.min(way.corners.len() - 1)].0);
                }
                Leg { direction: along / length, length }
            })
            .collect();
        if !twins.is_empty() {
            return Err(twins);
        }
        let turns = legs
            .windows(2)
            .zip(way.corners)
            .map(|(pair, (_, corner))| Turn::of(angle_between(&pair[0].direction, &pair[1].direction), corner.radius))
            .collect();
        Ok(Self { nodes, legs, turns, kept: [kept_start, kept_end] })
    }

    /// Whether every leg has room for the bends at its ends, and every place where it has not.
    fn room(&self, way: &Corners<'_>) -> (bool, Vec<Obstacle>) {
        let mut fits = true;
        let mut obstacles = Vec::new();
        let last = self.legs.len() - 1;
        let turn = |node: usize| (node > 0 && node <= last).then(|| &self.turns[node - 1]);
        let station = |corner: Option<usize>, terminal: &Terminal| {
            corner.and_then(|corner| way.corners.get(corner)).map_or(terminal.station(), |(station, _)| Some(*station))
        };
        for (index, leg) in self.legs.iter().enumerate() {
            let slack = 1e-9 * leg.length.max(1.0);
            let bends = [turn(index), turn(index + 1)];
            let need: f64 = bends.iter().flatten().map(|turn| turn.tangent).sum();
            if need > leg.length + slack {
                fits = false;
                obstacles.push(Obstacle::CornersTooClose {
                    before: station(index.checked_sub(1), &way.start),
                    after: station(Some(index), &way.end),
                    room: leg.length,
                    need,
                    largest_radius: largest_cap(&bends, leg.length),
                });
            }
            let ends = [(index == 0, true, &way.start, bends[1]), (index == last, false, &way.end, bends[0])];
            for (here, at_start, terminal, bend) in ends {
                let kept = self.kept[usize::from(!at_start)];
                let (true, Some(bend), Some(pose)) = (here && kept > 0.0, bend, terminal.fitting()) else { continue };
                let straight = leg.length - bend.tangent;
                if straight < kept - slack {
                    let tangent = (leg.length - kept - (need - bend.tangent)).max(0.0);
                    obstacles.push(Obstacle::LeadTooShort {
                        at_start,
                        station: way.corners[if at_start { 0 } else { self.turns.len() - 1 }].0,
                        left: straight - pose.inside,
                        lead: pose.straight - pose.inside,
                        largest_radius: tangent / libm::tan(bend.angle / 2.0),
                    });
                }
            }
        }
        (fits, obstacles)
    }

    fn draw(&self, start: &Way, end: &Way, way: &Corners<'_>, run_radius: f64) -> Drawn {
        let mut pen = Pen::default();
        if let (Way::Bend(approach), Terminal::Pose { pose, .. }) = (start, &way.start) {
            pen.straight(pose.end, pose.out, pose.straight);
            pen.arc(pose.lead_end, pose.out, approach.bend(run_radius));
        }
        let mut at = self.nodes[0];
        let mut used = 0.0;
        for (index, (turn, (station, _))) in self.turns.iter().zip(way.corners).enumerate() {
            let leg = &self.legs[index];
            if index > 0 || !matches!(start, Way::Free { .. }) {
                pen.straight(at, leg.direction, leg.length - used - turn.tangent);
            }
            let arc_start = self.nodes[index + 1] - leg.direction * turn.tangent;
            let onward = &self.legs[index + 1];
            if turn.angle > 0.0 {
                let normal = perpendicular(&leg.direction, &onward.direction);
                let bend = Bend { radius: turn.radius, angle: turn.angle, normal, station: Some(*station) };
                pen.arc(arc_start, leg.direction, bend);
            }
            at = self.nodes[index + 1] + onward.direction * turn.tangent;
            used = turn.tangent;
        }
        let leg = &self.legs[self.legs.len() - 1];
        let from = Pose {
            at: self.nodes[1] - self.legs[0].direction * self.turns[0].tangent,
            heading: self.legs[0].direction,
        };
        let to = Pose { at, heading: leg.direction };
        if !matches!(end, Way::Free { .. }) {
            pen.straight(at, leg.direction, leg.length - used);
        }
        if let (Way::Bend(approach), Terminal::Pose { pose, .. }) = (end, &way.end) {
            // The joining bend was found looking out of the end; the run travels it the other way.
            let inward = -approach.direction;
            let centre = pose.lead_end + approach.normal * run_radius;
            let normal = perpendicular(&inward, &(centre - approach.point));
            let bend = Bend { radius: run_radius, angle: approach.angle, normal, station: None };
            pen.arc(approach.point, inward, bend);
            pen.straight(pose.lead_end, -pose.out, pose.straight);
        }
        Drawn { line: pen.finish(), from, to }
    }
}

/// Angle between two unit directions, radians, [0, pi]; good to the last digits near 0 and pi as well.
pub(super) fn angle_between(a: &Vec3, b: &Vec3) -> f64 {
    libm::atan2(a.cross(b).norm(), a.dot(b))
}

/// The radius that the larger bends of a leg must come down to, so that both fit into `room`.
fn largest_cap(bends: &[Option<&Turn>; 2], room: f64) -> f64 {
    let mut bends: Vec<&Turn> = bends.iter().flatten().copied().collect();
    bends.sort_by(|a, b| a.radius.total_cmp(&b.radius));
    let tan = |turn: &Turn| libm::tan(turn.angle / 2.0);
    if let [small, large] = bends[..]
        && small.tangent < room
        && (room - small.tangent) / tan(large) >= small.radius
    {
        return (room - small.tangent) / tan(large);
    }
    let sum: f64 = bends.iter().map(|turn| tan(turn)).sum();
    (room / sum).max(0.0)
}
