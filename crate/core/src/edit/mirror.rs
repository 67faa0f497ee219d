//! A run mirrored about a plane, between ports of its own: what the other side of a symmetric build takes.

use super::copy::has_room;
use super::names::fresh;
use super::{tidy, within_half_turn};
use crate::design::wording::{quoted, shown};
use crate::design::{
    Coil, Coordinate, Corner, Cut, Design, Dress, Elbow, Fitting, Hand, Port, Refusal, Run, Station, Through,
};
use crate::layout::{Vec3, reference_perpendicular, unit};
use crate::quantity::{FITTING_NAME, FURTHEST, MOST_PORTS, PORT_NAME, RUN_NAME};

/// A plane across one of the datum's axes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plane {
    /// The axis it stands across: 0 for x, 1 for y, 2 for z.
    pub across: usize,
    /// Where on that axis, mm.
    pub at: f64,
}

/// Ports nearer to each other than this are one, mm: what a file keeps of a coordinate, and far below any measurement.
const SAME_PLACE: f64 = 1e-6;
/// Directions, radians, and turns, degrees, that differ by less are the same.
const SAME_DIRECTION: f64 = 1e-9;

/// The design with a mirrored twin of a run right behind it.
///
/// The twin's ports are those of the design that already are where the mirrored ones belong, or new ones; an elbow
/// that must turn the other way is another fitting. Coordinates tied to a port are tied to its twin; where a port has
/// none, the coordinate across the plane becomes a number. Mirroring the twin gives the run's geometry again.
///
/// # Errors
/// No room for another run, port or fitting; a coordinate that would land too far from the datum.
pub fn mirrored(design: &Design, run: usize, plane: Plane) -> Result<Design, Refusal> {
    has_room(design)?;
    let mut after = design.clone();
    let run_before = &design.runs[run];
    let from = twin_port(&mut after, &run_before.from, plane)?;
    let to = twin_port(&mut after, &run_before.to, plane)?;
    let twin_of = |name: &str| match name {
        _ if name == run_before.from => Some(from.clone()),
        _ if name == run_before.to => Some(to.clone()),
        _ => existing_twin(design, name, plane),
    };
    let mirror = Mirror { plane, design, twin_of: &twin_of };
    let twin = Run {
        name: fresh(design.runs.iter().map(|run| run.name.as_str()), &run_before.name, "mirrored", &RUN_NAME),
        from: from.clone(),
        to: to.clone(),
        route: run_before.route.iter().map(|station| mirror.station(station)).collect::<Result<_, _>>()?,
        // A mirror turns every screw into one of the other hand.
        dress: run_before
            .dress
            .as_ref()
            .map(|dress| Dress { twist_deg_per_mm: 0.0 - dress.twist_deg_per_mm, ..dress.clone() }),
        // The other hand's shape stands in its own way.
        stance: None,
        cuts: run_before.cuts.iter().map(|cut| Cut { stance: None, ..*cut }).collect(),
        ..run_before.clone()
    };
    after.runs.insert(run + 1, twin);
    Ok(after)
}

impl Plane {
    /// A coordinate of the mirrored point.
    fn coordinate(self, axis: usize, value: f64) -> Result<f64, Refusal> {
        if axis != self.across {
            return Ok(value);
        }
        let mirrored = tidy(2.0 * self.at - value);
        if mirrored.abs() <= FURTHEST {
            return Ok(mirrored);
        }
        let (name, at) = (["x", "y", "z"][axis], shown(self.at));
        let message = format!(
            "Mirrored about {name} = {at} mm, {name} = {} mm becomes {} mm, too far from the datum. Give a nearer plane.",
            shown(value),
            shown(mirrored)
        );
        Err(Refusal::at("/at", message))
    }

    fn point(self, at: [f64; 3]) -> Result<[f64; 3], Refusal> {
        let [x, y, z] = [0, 1, 2].map(|axis| self.coordinate(axis, at[axis]));
        Ok([x?, y?, z?])
    }

    fn direction(self, mut direction: [f64; 3]) -> [f64; 3] {
        // Not the minus sign: it would leave -0 in the document.
        direction[self.across] = 0.0 - direction[self.across];
        direction
    }

    /// A turn about `axis`, counted from its reference perpendicular, as the mirrored turn about the mirrored axis,
    /// degrees. Turns change their sense; and where the mirror takes the one reference to the opposite of the other,
    /// half a turn comes in.
    fn turn(self, axis: [f64; 3], degrees: f64) -> f64 {
        let there = Vec3::from(self.direction(reference_perpendicular(&unit(&Vec3::from(axis))).into()));
        let reference = reference_perpendicular(&unit(&Vec3::from(self.direction(axis))));
        within_half_turn(if there.dot(&reference) > 0.0 { -degrees } else { 180.0 - degrees })
    }
}

struct Mirror<'a> {
    plane: Plane,
    design: &'a Design,
    /// The name of a port's twin, if it has one.
    twin_of: &'a dyn Fn(&str) -> Option<String>,
}

impl Mirror<'_> {
    fn station(&self, station: &Station) -> Result<Station, Refusal> {
        Ok(match station {
            Station::Corner(corner) => {
                Station::Corner(Corner { at: self.coordinates(&corner.at)?, bend_radius: corner.bend_radius })
            }
            Station::Through(through) => Station::Through(Through { at: self.coordinates(&through.at)? }),
            Station::Coil(coil) => Station::Coil(Coil {
                centre: self.coordinates(&coil.centre)?,
                axis: self.plane.direction(coil.axis),
                hand: match coil.hand {
                    Hand::Right => Hand::Left,
                    Hand::Left => Hand::Right,
                },
                start_deg: self.plane.turn(coil.axis, coil.start_deg),
                ..coil.clone()
            }),
        })
    }

    fn coordinates(&self, at: &[Coordinate; 3]) -> Result<[Coordinate; 3], Refusal> {
        let [x, y, z] = [0, 1, 2].map(|axis| self.coordinate(axis, &at[axis]));
        Ok([x?, y?, z?])
    }

    fn coordinate(&self, axis: usize, coordinate: &Coordinate) -> Result<Coordinate, Refusal> {
        let (of, plus) = match coordinate {
            Coordinate::Fixed(value) => return self.plane.coordinate(axis, *value).map(Coordinate::Fixed),
            Coordinate::Tied { of, plus } => (of, *plus),
        };
        let across = axis == self.plane.across;
        match (self.twin_of)(of) {
            Some(twin) => Ok(Coordinate::Tied { of: twin, plus: if across { 0.0 - plus } else { plus } }),
            // Along the plane a port and its mirror image have the same coordinate.
            None if !across => Ok(coordinate.clone()),
            None => {
                let port = self.design.ports.iter().find(|port| port.name == *of);
                let value = port.map_or(plus, |port| port.at[axis] + plus);
                self.plane.coordinate(axis, value).map(Coordinate::Fixed)
            }
        }
    }
}

/// The port of the design that already is a port's mirror image.
fn existing_twin(design: &Design, name: &str, plane: Plane) -> Option<String> {
    let port = design.ports.iter().find(|port| port.name == name)?;
    let fitting = design.fittings.iter().find(|fitting| fitting.name == port.fitting)?;
    let at = Vec3::from(plane.point(port.at).ok()?);
    let facing = unit(&Vec3::from(plane.direction(port.facing)));
    let wanted = mirrored_fitting(fitting, port, plane);
    let is_twin = |other: &&Port| {
        (Vec3::from(other.at) - at).norm() <= SAME_PLACE
            && (unit(&Vec3::from(other.facing)) - facing).norm() <= SAME_DIRECTION
            && design.fittings.iter().any(|fitting| fitting.name == other.fitting && is_same(fitting, &wanted))
    };
    design.ports.iter().find(is_twin).map(|twin| twin.name.clone())
}

/// The name of a port's mirror image, which is added where the design has none.
fn twin_port(design: &mut Design, name: &str, plane: Plane) -> Result<String, Refusal> {
    if let Some(twin) = existing_twin(design, name, plane) {
        return Ok(twin);
    }
    if design.ports.len() >= MOST_PORTS {
        let message = format!("The design has {MOST_PORTS} ports, the most there can be. Take one out first.");
        return Err(Refusal::at("/run", message));
    }
    let Some(port) = design.ports.iter().find(|port| port.name == name).cloned() else {
        return Err(Refusal::at("/run", format!("There is no port named {}.", quoted(name))));
    };
    let twin = Port {
        name: fresh(design.ports.iter().map(|port| port.name.as_str()), name, "mirrored", &PORT_NAME),
        at: plane.point(port.at)?,
        facing: plane.direction(port.facing),
        fitting: twin_fitting(design, &port, plane)?,
        measured_to: port.measured_to,
    };
    let twin_name = twin.name.clone();
    design.ports.push(twin);
    Ok(twin_name)
}

/// The name of the fitting for a port's mirror image: the port's own, one that turns as it must, or a new one.
fn twin_fitting(design: &mut Design, port: &Port, plane: Plane) -> Result<String, Refusal> {
    let Some(own) = design.fittings.iter().find(|fitting| fitting.name == port.fitting) else {
        return Ok(port.fitting.clone());
    };
    let wanted = mirrored_fitting(own, port, plane);
    if is_same(own, &wanted) {
        return Ok(own.name.clone());
    }
    if let Some(known) = design.fittings.iter().find(|fitting| is_same(fitting, &wanted)) {
        return Ok(known.name.clone());
    }
    if design.fittings.len() >= MOST_PORTS {
        let message = format!("The design has {MOST_PORTS} fittings, the most there can be. Take one out first.");
        return Err(Refusal::at("/run", message));
    }
    let names = design.fittings.iter().map(|fitting| fitting.name.as_str());
    let name = fresh(names, &own.name, "mirrored", &FITTING_NAME);
    design.fittings.push(Fitting { name: name.clone(), ..wanted });
    Ok(name)
}

/// The fitting that stands in the mirrored port as this one stands in its port; its name is still this one's.
fn mirrored_fitting(fitting: &Fitting, port: &Port, plane: Plane) -> Fitting {
    let turned = |elbow: &Elbow| Elbow { turn_deg: plane.turn(port.facing, elbow.turn_deg), ..elbow.clone() };
    Fitting { elbow: fitting.elbow.as_ref().map(turned), ..fitting.clone() }
}

/// Whether two fittings differ in nothing but their names, and in whole turns of an elbow.
fn is_same(one: &Fitting, other: &Fitting) -> bool {
    let elbows = match (&one.elbow, &other.elbow) {
        (None, None) => true,
        (Some(a), Some(b)) => {
            let turned = within_half_turn(a.turn_deg - b.turn_deg).abs();
            turned <= SAME_DIRECTION && Elbow { turn_deg: b.turn_deg, ..a.clone() } == *b
        }
        _ => false,
    };
    elbows && Fitting { name: other.name.clone(), elbow: other.elbow.clone(), ..one.clone() } == *other
}
