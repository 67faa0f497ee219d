//! What a check may look at, and one run of it with everything that belongs to the run.

use super::{Finding, Severity};
use crate::centreline::{Piece, RunLine};
use crate::design::{Corner, Design, Fitting, Port, Run, Station, wording};
use crate::layout::{EndPose, Layout, PlacedCorner, PlacedRun, PlacedStation, Vec3};
use crate::tube::{Cutting, Profile};

/// What a check may look at: every stage before it.
#[derive(Debug, Clone, Copy)]
pub struct Subject<'a> {
    /// What the builder stated.
    pub design: &'a Design,
    /// Ports and runs, placed.
    pub layout: &'a Layout,
    /// The runs' centrelines.
    pub lines: &'a [RunLine],
}

/// One run: as stated, as placed, as drawn.
#[derive(Debug, Clone, Copy)]
pub struct OneRun<'a> {
    /// Its index.
    pub index: usize,
    /// As stated.
    pub run: &'a Run,
    /// As placed.
    pub placed: &'a PlacedRun,
    /// As drawn.
    pub drawn: &'a RunLine,
    design: &'a Design,
}

impl<'a> Subject<'a> {
    /// Every run.
    pub fn runs(self) -> impl Iterator<Item = OneRun<'a>> {
        let parts = self.design.runs.iter().zip(&self.layout.runs).zip(self.lines);
        parts.enumerate().map(move |(index, ((run, placed), drawn))| OneRun {
            index,
            run,
            placed,
            drawn,
            design: self.design,
        })
    }
}

impl<'a> OneRun<'a> {
    /// JSON Pointer to the run or to something in it: `at("/tube/bore")`.
    pub(super) fn at(&self, rest: &str) -> String {
        format!("/runs/{}{rest}", self.index)
    }

    /// JSON Pointer to a station or to something in it.
    pub(super) fn station(&self, station: usize, rest: &str) -> String {
        format!("/runs/{}/route/{station}{rest}", self.index)
    }

    /// A finding about the run.
    pub(super) fn finding(&self, code: &'static str, severity: Severity, place: String) -> Finding {
        Finding { run: Some(self.run.name.clone()), ..Finding::new(code, severity, place) }
    }

    /// What a message calls a station.
    pub(super) fn station_name(&self, station: usize) -> String {
        let kind = match self.run.route.get(station) {
            Some(Station::Through(_)) => "point",
            Some(Station::Coil(_)) => "coil",
            _ => "corner",
        };
        format!("{kind} {}", station + 1)
    }

    /// The port at an end.
    pub(super) fn port(&self, at_start: bool) -> &'a Port {
        &self.design.ports[if at_start { self.placed.from } else { self.placed.to }]
    }

    /// What a message calls the port at an end.
    pub(super) fn port_name(&self, at_start: bool) -> String {
        wording::quoted(&self.port(at_start).name)
    }

    /// The fitting at an end; parsing has made sure that it is there.
    pub(super) fn fitting(&self, at_start: bool) -> Option<&'a Fitting> {
        let name = &self.port(at_start).fitting;
        self.design.fittings.iter().find(|fitting| fitting.name == *name)
    }

    pub(super) fn pose(&self, at_start: bool) -> &'a EndPose {
        if at_start { &self.placed.start } else { &self.placed.end }
    }

    /// The station next to an end, where it is a corner.
    pub(super) fn end_corner(&self, at_start: bool) -> Option<(usize, &'a PlacedCorner)> {
        let last = self.placed.stations.len().checked_sub(1)?;
        let station = if at_start { 0 } else { last };
        Some((station, self.placed_corner(station)?))
    }

    /// A station as stated, where it is a corner.
    pub(super) fn corner(&self, station: usize) -> Option<&'a Corner> {
        match self.run.route.get(station)? {
            Station::Corner(corner) => Some(corner),
            _ => None,
        }
    }

    /// A station as placed, where it is a corner.
    pub(super) fn placed_corner(&self, station: usize) -> Option<&'a PlacedCorner> {
        self.placed.stations.get(station)?.corner()
    }

    /// Where a message points for a station: a corner's apex, the point itself, a coil's first point.
    pub(super) fn station_at(&self, station: usize) -> Vec3 {
        match &self.placed.stations[station] {
            PlacedStation::Coil(coil) => {
                let (sin, cos) = libm::sincos(coil.start);
                coil.centre + (coil.across[0] * cos + coil.across[1] * sin) * coil.radius
            }
            other => other.at(),
        }
    }

    /// The sections along a centreline of `length` mm.
    pub(super) fn profile(&self, length: f64) -> Profile {
        Profile::of_run(self.design, self.run, self.placed, self.drawn.line.as_ref(), length)
    }

    /// Its joints, and the cuts that have no room for one.
    pub(super) fn cutting(&self) -> Cutting {
        Cutting::of(self.design, self.run, self.placed, self.drawn.line.as_ref())
    }

    /// The drawn pieces; none where there is no curve.
    pub(super) fn pieces(&self) -> &'a [Piece] {
        self.drawn.line.as_ref().map_or(&[], |line| &line.pieces)
    }

    /// How far ahead of an end face a point lies along the fitting's axis, and how far off that axis, mm.
    pub(super) fn beside_axis(&self, at_start: bool, point: &Vec3) -> (f64, f64) {
        let pose = self.pose(at_start);
        let offset = point - pose.end;
        let ahead = offset.dot(&pose.out);
        (ahead, (offset - pose.out * ahead).norm())
    }

    /// Whether the station next to an end lies on the fitting's axis, so that no further bend leads to it. The same
    /// millionth of a millimetre as the centreline's.
    pub(super) fn is_on_axis(&self, at_start: bool) -> bool {
        self.end_corner(at_start).is_some_and(|(_, corner)| {
            let (ahead, aside) = self.beside_axis(at_start, &corner.at);
            ahead > 0.0 && aside <= 1e-6
        })
    }

    /// Largest coordinate that the tube reaches, mm: what its mesh's 32-bit numbers must hold.
    pub(super) fn reach(&self) -> f64 {
        let bulge = |piece: &Piece| 2.0 * piece.radius().unwrap_or(0.0);
        let pieces = self.pieces().iter().map(|piece| piece.start.amax() + bulge(piece));
        let skeleton = self.drawn.skeleton.iter().map(|point| point.amax());
        pieces.chain(skeleton).fold(0.0, f64::max) + self.run.largest_radius()
    }
}
