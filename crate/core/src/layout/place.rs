//! Places ports, fittings, run ends and corners in the builder's datum.

use std::collections::HashMap;

use super::reference::{reference_perpendicular, rotate, unit};
use super::{Collar, EndPose, Layout, PlacedCoil, PlacedCorner, PlacedPort, PlacedRun, PlacedStation, Vec3};
use crate::design::{Coil, Coordinate, Design, Fitting, Port, Run, Station};
use core::f64::consts::PI;

/// Places every port and run of a design that has passed parsing.
pub fn place(design: &Design) -> Layout {
    let fittings = Index::of(design.fittings.iter().map(|fitting| fitting.name.as_str()));
    let names = Index::of(design.ports.iter().map(|port| port.name.as_str()));
    let ports: Vec<PlacedPort> =
        design.ports.iter().enumerate().map(|(index, port)| place_port(design, &fittings, index, port)).collect();
    let runs = design.runs.iter().map(|run| place_run(design, &names, &ports, run)).collect();
    Layout { ports, runs }
}

/// Places of names in their list; parsing has made sure that every name that is asked for is there.
struct Index<'a>(HashMap<&'a str, usize>);

impl<'a> Index<'a> {
    fn of(names: impl Iterator<Item = &'a str>) -> Self {
        Self(names.enumerate().map(|(place, name)| (name, place)).collect())
    }

    fn place(&self, name: &str) -> usize {
        self.0.get(name).copied().unwrap_or_default()
    }
}

fn place_port(design: &Design, fittings: &Index<'_>, index: usize, port: &Port) -> PlacedPort {
    let fitting_index = fittings.place(&port.fitting);
    let fitting = &design.fittings[fitting_index];
    let seat = Vec3::from(port.at);
    let facing = unit(&Vec3::from(port.facing));
    let radius = fitting.collar_diameter / 2.0;
    let (turning_point, mouth, out) = mouth_of(fitting, &seat, &facing);
    let collars = std::iter::once((seat, turning_point))
        .chain((turning_point != mouth).then_some((turning_point, mouth)))
        .map(|(from, to)| Collar { port: index, from, to, radius })
        .collect();
    PlacedPort { seat, facing, fitting: fitting_index, mouth, out, collars }
}

/// Where the fitting's body turns (its mouth, for a straight one), its mouth, and the way out of it.
fn mouth_of(fitting: &Fitting, seat: &Vec3, facing: &Vec3) -> (Vec3, Vec3, Vec3) {
    match &fitting.elbow {
        None => {
            let mouth = seat + facing * fitting.height;
            (mouth, mouth, *facing)
        }
        Some(elbow) => {
            let towards = rotate(&reference_perpendicular(facing), facing, elbow.turn_deg.to_radians());
            let out = unit(&rotate(facing, &facing.cross(&towards), elbow.angle_deg.to_radians()));
            let turning_point = seat + facing * elbow.rise;
            (turning_point, turning_point + out * elbow.reach, out)
        }
    }
}

fn place_run(design: &Design, names: &Index<'_>, ports: &[PlacedPort], run: &Run) -> PlacedRun {
    let from = names.place(&run.from);
    let to = names.place(&run.to);
    let pose = |port: &PlacedPort| end_pose(port, &design.fittings[port.fitting], run.ends.trim);
    let stations = run.route.iter().map(|station| place_station(design, names, run, station)).collect();
    PlacedRun { from, to, start: pose(&ports[from]), end: pose(&ports[to]), stations }
}

fn end_pose(port: &PlacedPort, fitting: &Fitting, trim: f64) -> EndPose {
    let inside = fitting.socket_depth + trim;
    EndPose {
        end: port.mouth - port.out * inside,
        mouth: port.mouth,
        lead_end: port.mouth + port.out * fitting.lead,
        out: port.out,
        inside,
        straight: inside + fitting.lead,
    }
}

fn place_station(design: &Design, names: &Index<'_>, run: &Run, station: &Station) -> PlacedStation {
    let point = |at: &[Coordinate; 3]| Vec3::from([0, 1, 2].map(|axis| coordinate(design, names, &at[axis], axis)));
    match station {
        Station::Corner(corner) => PlacedStation::Corner(PlacedCorner {
            at: point(&corner.at),
            radius: corner.bend_radius.unwrap_or(run.bend_radius),
        }),
        Station::Through(through) => PlacedStation::Through(point(&through.at)),
        Station::Coil(coil) => PlacedStation::Coil(place_coil(coil, point(&coil.centre))),
    }
}

fn coordinate(design: &Design, names: &Index<'_>, coordinate: &Coordinate, axis: usize) -> f64 {
    match coordinate {
        Coordinate::Fixed(value) => *value,
        Coordinate::Tied { of, plus } => design.ports[names.place(of)].at[axis] + plus,
    }
}

fn place_coil(coil: &Coil, centre: Vec3) -> PlacedCoil {
    let axis = unit(&Vec3::from(coil.axis));
    let reference = reference_perpendicular(&axis);
    let angle = 2.0 * PI * coil.turns;
    PlacedCoil {
        centre,
        axis,
        across: [reference, axis.cross(&reference)],
        radius: coil.radius,
        widening: (coil.radius_at_end() - coil.radius) / angle,
        climb: coil.pitch / (2.0 * PI),
        start: coil.start_deg.to_radians(),
        angle,
        sign: coil.hand.sign(),
    }
}
