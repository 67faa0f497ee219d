//! A route through corners: straights between apexes, an arc at each, one more bend where an end corner is off its axis.

use super::approach::Approach;
use super::pen::{Bend, Pen};
use super::{Centreline, Obstacle};
use crate::layout::{EndPose, PlacedCorner, PlacedRun, Vec3, perpendicular};
use core::f64::consts::PI;

/// A corner this near to its port's axis lies on it, mm: well under what calipers or rounding of inputs can mean.
const ON_AXIS: f64 = 1e-6;
/// Points nearer than this are one point, mm.
const SAME_POINT: f64 = 1e-6;
/// Turns under this are none, radians: they are what rounding leaves of points in one line.
const NO_TURN: f64 = 1e-12;
/// Turns within this of a half turn have no apex, radians.
const TURNS_BACK: f64 = 1e-6;

/// The centreline of `run` with bends of `run_radius` where a corner has none of its own, and what is in its way.
pub(super) fn through_corners(run: &PlacedRun, radii: &[f64], run_radius: f64) -> (Option<Centreline>, Vec<Obstacle>) {
    let mut obstacles = Vec::new();
    let start = Way::to(&run.start, &run.corners[0], run_radius);
    let end = Way::to(&run.end, &run.corners[run.corners.len() - 1], run_radius);
    for (way, at_start, station) in [(&start, true, 0), (&end, false, run.corners.len() - 1)] {
        if let Way::OutOfReach { largest_radius } = way {
            obstacles.push(Obstacle::CornerOutOfReach { at_start, station, largest_radius: *largest_radius });
        }
    }
    let route = match Route::of(run, radii, &start, &end) {
        Ok(route) => route,
        Err(twins) => {
            obstacles.extend(twins.into_iter().map(|station| Obstacle::SamePoint { station }));
            return (None, obstacles);
        }
    };
    for (station, turn) in route.turns.iter().enumerate() {
        if turn.angle >= PI - TURNS_BACK {
            obstacles.push(Obstacle::TurnsBack { station });
        }
    }
    if !obstacles.is_empty() {
        return (None, obstacles);
    }
    let (fits, crowded) = route.room(run);
    obstacles.extend(crowded);
    (fits.then(|| route.draw(&start, &end, run, run_radius)), obstacles)
}

/// How an end of the run gets to its corner.
enum Way {
    /// The corner lies ahead on the port's axis.
    Axis,
    /// By one more bend from the lead's end.
    Bend(Approach),
    /// The corner lies inside that bend's circle.
    OutOfReach { largest_radius: f64 },
}

impl Way {
    fn to(pose: &EndPose, corner: &PlacedCorner, run_radius: f64) -> Self {
        let offset = corner.at - pose.end;
        let ahead = offset.dot(&pose.out);
        if ahead > 0.0 && (offset - pose.out * ahead).norm() <= ON_AXIS {
            return Self::Axis;
        }
        match Approach::towards(&pose.lead_end, &pose.out, run_radius, &corner.at) {
            Ok(approach) => Self::Bend(approach),
            Err(largest_radius) => Self::OutOfReach { largest_radius },
        }
    }

    /// Where the leg to the corner begins, and how much of it must stay straight.
    fn leg_start(&self, pose: &EndPose) -> (Vec3, f64) {
        match self {
            Self::Axis => (pose.end, pose.straight),
            Self::Bend(approach) => (approach.point, 0.0),
            // Nothing is drawn then; the lead's end still tells which corners coincide.
            Self::OutOfReach { .. } => (pose.lead_end, 0.0),
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

struct Leg {
    direction: Vec3,
    length: f64,
}

struct Turn {
    angle: f64,
    radius: f64,
    tangent: f64,
}

impl Route {
    /// The route, or the stations that repeat the point before them.
    fn of(run: &PlacedRun, radii: &[f64], start: &Way, end: &Way) -> Result<Self, Vec<usize>> {
        let (first, kept_start) = start.leg_start(&run.start);
        let (last, kept_end) = end.leg_start(&run.end);
        let nodes: Vec<Vec3> = std::iter::once(first).chain(run.corners.iter().map(|c| c.at)).chain([last]).collect();
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
                    twins.push(index.min(run.corners.len() - 1));
                }
                Leg { direction: along / length, length }
            })
            .collect();
        if !twins.is_empty() {
            return Err(twins);
        }
        let turns = legs
            .windows(2)
            .zip(radii)
            .map(|(pair, &radius)| {
                let angle = angle_between(&pair[0].direction, &pair[1].direction);
                let angle = if angle < NO_TURN { 0.0 } else { angle };
                Turn { angle, radius, tangent: radius * libm::tan(angle / 2.0) }
            })
            .collect();
        Ok(Self { nodes, legs, turns, kept: [kept_start, kept_end] })
    }

    /// Whether every leg has room for the bends at its ends, and every place where it has not.
    fn room(&self, run: &PlacedRun) -> (bool, Vec<Obstacle>) {
        let mut fits = true;
        let mut obstacles = Vec::new();
        let last = self.legs.len() - 1;
        let turn = |node: usize| (node > 0 && node <= last).then(|| &self.turns[node - 1]);
        for (index, leg) in self.legs.iter().enumerate() {
            let slack = 1e-9 * leg.length.max(1.0);
            let bends = [turn(index), turn(index + 1)];
            let need: f64 = bends.iter().flatten().map(|turn| turn.tangent).sum();
            if need > leg.length + slack {
                fits = false;
                obstacles.push(Obstacle::CornersTooClose {
                    before: index.checked_sub(1),
                    after: (index < last).then_some(index),
                    room: leg.length,
                    need,
                    largest_radius: largest_cap(&bends, leg.length),
                });
            }
            let ends = [(index == 0, true, &run.start, bends[1]), (index == last, false, &run.end, bends[0])];
            for (here, at_start, pose, bend) in ends {
                let kept = self.kept[usize::from(!at_start)];
                let (true, Some(bend)) = (here && kept > 0.0, bend) else { continue };
                let straight = leg.length - bend.tangent;
                if straight < kept - slack {
                    let tangent = (leg.length - kept - (need - bend.tangent)).max(0.0);
                    obstacles.push(Obstacle::LeadTooShort {
                        at_start,
                        station: if at_start { 0 } else { self.turns.len() - 1 },
                        left: straight - pose.inside,
                        lead: pose.straight - pose.inside,
                        largest_radius: tangent / libm::tan(bend.angle / 2.0),
                    });
                }
            }
        }
        (fits, obstacles)
    }

    fn draw(&self, start: &Way, end: &Way, run: &PlacedRun, run_radius: f64) -> Centreline {
        let mut pen = Pen::default();
        if let Way::Bend(approach) = start {
            pen.straight(run.start.end, run.start.out, run.start.straight);
            pen.arc(run.start.lead_end, run.start.out, approach.bend(run_radius));
        }
        let mut from = self.nodes[0];
        let mut used = 0.0;
        for (index, turn) in self.turns.iter().enumerate() {
            let leg = &self.legs[index];
            pen.straight(from, leg.direction, leg.length - used - turn.tangent);
            let arc_start = self.nodes[index + 1] - leg.direction * turn.tangent;
            let onward = &self.legs[index + 1];
            if turn.angle > 0.0 {
                let normal = perpendicular(&leg.direction, &onward.direction);
                let bend = Bend { radius: turn.radius, angle: turn.angle, normal, station: Some(index) };
                pen.arc(arc_start, leg.direction, bend);
            }
            from = self.nodes[index + 1] + onward.direction * turn.tangent;
            used = turn.tangent;
        }
        let leg = &self.legs[self.legs.len() - 1];
        pen.straight(from, leg.direction, leg.length - used);
        if let Way::Bend(approach) = end {
            // The joining bend was found looking out of the end fitting; the run travels it the other way.
            let inward = -approach.direction;
            let centre = run.end.lead_end + approach.normal * run_radius;
            let normal = perpendicular(&inward, &(centre - approach.point));
            let bend = Bend { radius: run_radius, angle: approach.angle, normal, station: None };
            pen.arc(approach.point, inward, bend);
            pen.straight(run.end.lead_end, -run.end.out, run.end.straight);
        }
        pen.finish()
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
