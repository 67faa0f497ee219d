//! The centreline of each run, and the largest run radius where the asked one is in the way.

use super::corners::{Corners, Drawn, Radii, Terminal, through_corners};
use super::link::{Pose, SHARPEST, draw_link, loops, shortest_link};
use super::pen::Pen;
use super::{Centreline, Obstacle, RunLine, coil, smooth};
use crate::design::{Design, Run, Station};
use crate::layout::{EndPose, Layout, PlacedCorner, PlacedRun, PlacedStation, Vec3};

/// Halvings of the search for the largest radius: from any radius in range to under a millionth of it.
const HALVINGS: u32 = 24;
/// Two poses nearer than this are one pose: mm, and difference of unit directions.
const SAME_POSE: f64 = 1e-9;

/// The centrelines of all runs, in order.
pub fn lines(design: &Design, layout: &Layout) -> Vec<RunLine> {
    design.runs.iter().zip(&layout.runs).map(|(run, placed)| line_of(run, placed)).collect()
}

/// The centreline of one run.
pub fn line_of(run: &Run, placed: &PlacedRun) -> RunLine {
    let (line, obstacles) = at_radius(run, placed, run.bend_radius);
    let largest_run_radius = (!obstacles.is_empty()).then(|| largest_radius(run, placed)).flatten();
    let skeleton = [placed.start.end, placed.start.lead_end]
        .into_iter()
        .chain(placed.stations.iter().map(PlacedStation::at))
        .chain([placed.end.lead_end, placed.end.end])
        .collect::<Vec<Vec3>>();
    RunLine { line, obstacles, largest_run_radius, skeleton }
}

/// The run's centreline if its own radius were `radius`; corners keep radii of their own.
fn at_radius(run: &Run, placed: &PlacedRun, radius: f64) -> (Option<Centreline>, Vec<Obstacle>) {
    let mut route = Drawing {
        pen: Pen::default(),
        whole: true,
        obstacles: Vec::new(),
        radii: Radii { run: radius, fit: run.fit_bends },
    };
    let mut start = End { pose: placed.start.clone(), station: None };
    let mut from = 0;
    for (station, placed_station) in placed.stations.iter().enumerate() {
        let PlacedStation::Coil(turns) = placed_station else { continue };
        let [first, last] = coil::ends(turns);
        let end = End { pose: bare(&first.at, -first.heading), station: Some(station) };
        route.between(run, placed, &start, from..station, &end);
        coil::draw(&mut route.pen, turns, station);
        start = End { pose: bare(&last.at, last.heading), station: Some(station) };
        from = station + 1;
    }
    let end = End { pose: placed.end.clone(), station: None };
    route.between(run, placed, &start, from..placed.stations.len(), &end);
    (route.whole.then(|| route.pen.finish()), route.obstacles)
}

/// The largest run radius, below the asked one, that leaves no obstacle.
fn largest_radius(run: &Run, placed: &PlacedRun) -> Option<f64> {
    let clear = |radius: f64| at_radius(run, placed, radius).1.is_empty();
    let (mut good, mut bad) = (0.0, run.bend_radius);
    for _ in 0..HALVINGS {
        let middle = (good + bad) / 2.0;
        if clear(middle) { good = middle } else { bad = middle }
    }
    (good > 0.0).then_some(good)
}

/// The end of a coil as a pose without a lead; `out` points away from the coil.
fn bare(at: &Vec3, out: Vec3) -> EndPose {
    EndPose { end: *at, mouth: *at, lead_end: *at, out, inside: 0.0, straight: 0.0 }
}

/// An end of a way: a fitting's (no station) or a coil's.
struct End {
    pose: EndPose,
    station: Option<usize>,
}

impl End {
    fn terminal(&self) -> Terminal {
        Terminal::Pose { pose: self.pose.clone(), station: self.station }
    }

    /// As a pose of travel out of it.
    fn leaving(&self) -> Pose {
        Pose { at: self.pose.lead_end, heading: self.pose.out }
    }

    /// As a pose of travel into it.
    fn arriving(&self) -> Pose {
        Pose { at: self.pose.lead_end, heading: -self.pose.out }
    }
}

/// A centreline in the making.
struct Drawing {
    pen: Pen,
    /// Whether nothing has been left out so far.
    whole: bool,
    obstacles: Vec<Obstacle>,
    radii: Radii,
}

/// Consecutive stations of one kind.
enum Stretch {
    Corners(Vec<(usize, PlacedCorner)>),
    Points(Vec<(usize, Vec3)>),
}

impl Drawing {
    /// Draws from one end to another past the stations between them, none of which is a coil.
    fn between(&mut self, run: &Run, placed: &PlacedRun, start: &End, stations: core::ops::Range<usize>, end: &End) {
        if stations.is_empty() {
            return self.link(start, end);
        }
        let stretches = stretches(run, placed, stations, self.radii.run);
        let ways: Vec<Option<Drawn>> =
            (0..stretches.len()).map(|index| self.corners(&stretches, index, start, end)).collect();
        for (index, stretch) in stretches.iter().enumerate() {
            match (stretch, &ways[index]) {
                (Stretch::Corners(_), Some(way)) => self.pen.append(way.line.clone()),
                (Stretch::Corners(_), None) => self.whole = false,
                (Stretch::Points(points), _) => {
                    let before = index.checked_sub(1).map(|before| &ways[before]);
                    let after = ways.get(index + 1);
                    self.curve(points, (start, before), (end, after));
                }
            }
        }
    }

    fn link(&mut self, start: &End, end: &End) {
        let (from, to) = (start.leaving(), end.arriving());
        self.pen.straight(start.pose.end, start.pose.out, start.pose.straight);
        if (to.at - from.at).norm() > SAME_POSE || (to.heading - from.heading).norm() > SAME_POSE {
            let between = [start.station, end.station];
            let too_tight = Obstacle::LinkTooTight { between, largest_radius: 0.0 };
            match shortest_link(&from, &to, self.radii.run.max(SHARPEST)) {
                Some(link) => {
                    if loops(&from, &to, &link) {
                        self.obstacles.push(too_tight);
                    }
                    draw_link(&mut self.pen, &from, &to, self.radii.run, &link);
                }
                None => {
                    self.obstacles.push(too_tight);
                    self.whole = false;
                }
            }
        }
        self.pen.straight(end.pose.lead_end, -end.pose.out, end.pose.straight);
    }

    /// The way through a stretch of corners; none for a stretch of points, or where there is no way.
    fn corners(&mut self, stretches: &[Stretch], index: usize, start: &End, end: &End) -> Option<Drawn> {
        let Stretch::Corners(corners) = &stretches[index] else { return None };
        let point = |stretch: Option<&Stretch>, last: bool| match stretch {
            Some(Stretch::Points(points)) => {
                let (station, at) = if last { points.last() } else { points.first() }?;
                Some(Terminal::Point { at: *at, station: *station })
            }
            _ => None,
        };
        let before = index.checked_sub(1).and_then(|before| point(stretches.get(before), true));
        let after = point(stretches.get(index + 1), false);
        let way = Corners {
            start: before.unwrap_or_else(|| start.terminal()),
            corners,
            end: after.unwrap_or_else(|| end.terminal()),
        };
        let (drawn, obstacles) = through_corners(&way, self.radii);
        self.obstacles.extend(obstacles);
        drawn
    }

    /// A smooth curve between the ways before and after it, or from or to an end. Where such a way could not be drawn
    /// there is nothing to join, and nothing is.
    fn curve(
        &mut self,
        points: &[(usize, Vec3)],
        (start, before): (&End, Option<&Option<Drawn>>),
        (end, after): (&End, Option<&Option<Drawn>>),
    ) {
        let from = match before {
            None => Some(start.leaving()),
            Some(way) => way.as_ref().map(|way| way.to.clone()),
        };
        let to = match after {
            None => Some(end.arriving()),
            Some(way) => way.as_ref().map(|way| way.from.clone()),
        };
        let (Some(from), Some(to)) = (from, to) else { return };
        if before.is_none() {
            self.pen.straight(start.pose.end, start.pose.out, start.pose.straight);
        }
        if let Err(obstacles) = smooth::draw(&mut self.pen, &from, points, &to) {
            self.obstacles.extend(obstacles);
            self.whole = false;
        }
        if after.is_none() {
            self.pen.straight(end.pose.lead_end, -end.pose.out, end.pose.straight);
        }
    }
}

/// The stations in stretches of one kind; corners without a radius of their own take `radius`.
fn stretches(run: &Run, placed: &PlacedRun, stations: core::ops::Range<usize>, radius: f64) -> Vec<Stretch> {
    let mut stretches: Vec<Stretch> = Vec::new();
    for station in stations {
        match &placed.stations[station] {
            PlacedStation::Corner(corner) => {
                let own = matches!(&run.route[station], Station::Corner(stated) if stated.bend_radius.is_some());
                let corner = PlacedCorner { at: corner.at, radius: if own { corner.radius } else { radius } };
                match stretches.last_mut() {
                    Some(Stretch::Corners(corners)) => corners.push((station, corner)),
                    _ => stretches.push(Stretch::Corners(vec![(station, corner)])),
                }
            }
            PlacedStation::Through(at) => match stretches.last_mut() {
                Some(Stretch::Points(points)) => points.push((station, *at)),
                _ => stretches.push(Stretch::Points(vec![(station, *at)])),
            },
            PlacedStation::Coil(_) => {}
        }
    }
    stretches
}
