//! A tube as a view shows it: both edges, what of them is hidden, its ends, its centreline.

use super::view::{Flat, View};
use crate::centreline::{Centreline, Sample};
use crate::layout::{Vec3, perpendicular};
use crate::tube::Section;
use core::f64::consts::TAU;
use std::collections::HashMap;

/// Most samples along a tube.
const MOST_SAMPLES: f64 = 6_000.0;
/// Widest turn between two samples, radians: 2 degrees.
const STEP: f64 = core::f64::consts::PI / 90.0;
/// Corners of a drawn circle.
const ROUND: usize = 72;
/// Below this sine of the angle between tube and line of sight the tube is seen end-on.
const END_ON: f64 = 1e-3;

/// A place on the tube.
#[derive(Debug, Clone)]
struct Spot {
    s: f64,
    sample: Sample,
    radius: f64,
}

/// A ring round the tube that shows as an edge: where it is, its radius, and the outward normals of the surfaces on
/// both sides as parts along the radius and along the tube.
#[derive(Debug, Clone, Copy)]
pub(super) struct Ring {
    /// Arc length, mm.
    pub s: f64,
    /// Radius, mm.
    pub radius: f64,
    /// Radial and axial part of the normal on either side.
    pub normals: [[f64; 2]; 2],
}

/// The tube, sampled once for all views.
#[derive(Debug)]
pub(super) struct Trace {
    spots: Vec<Spot>,
    rings: Vec<Ring>,
    largest: f64,
}

/// Lines of one view, mm of tube.
#[derive(Debug, Default)]
pub(super) struct Outline {
    /// Edges in sight.
    pub seen: Vec<Vec<Flat>>,
    /// Edges that the tube itself hides.
    pub hidden: Vec<Vec<Flat>>,
    /// The centreline, end to end.
    pub centre: Vec<Flat>,
}

impl Trace {
    /// Samples a centreline; `outer` is the tube's skin, `rings` its edges that run round it.
    pub fn of(line: &Centreline, outer: &Section, rings: Vec<Ring>) -> Self {
        let least = (line.length / MOST_SAMPLES).max(1e-6);
        let mut spots = Vec::new();
        for piece in &line.pieces {
            let round = piece.radius().map_or(f64::INFINITY, |tightest| tightest * STEP);
            let step = (outer.radius(piece.from + piece.length / 2.0) / 4.0).min(round).max(least);
            let steps = (piece.length / step).ceil().max(1.0) as usize;
            let even = (0..=steps).map(|index| piece.length * (index as f64 / steps as f64));
            // Where the skin has a corner the outline has one.
            let corners = outer.breaks.iter().map(|[at, _]| at - piece.from).filter(|s| *s > 0.0 && *s < piece.length);
            let mut places: Vec<f64> = even.chain(corners).collect();
            places.sort_by(f64::total_cmp);
            places.dedup();
            for s in places.into_iter().skip(usize::from(!spots.is_empty())) {
                let sample = piece.at(s);
                let s = piece.from + s;
                spots.push(Spot { s, radius: outer.radius(s), sample });
            }
        }
        let largest = spots.iter().map(|spot| spot.radius).fold(0.0, f64::max);
        Self { spots, rings, largest }
    }

    /// Points of the centreline with the tube's radius there.
    pub fn reach<'a>(&'a self, view: &'a View) -> impl Iterator<Item = (Flat, f64)> + 'a {
        self.spots.iter().map(|spot| (view.flat(&spot.sample.point), spot.radius))
    }

    /// What a view shows.
    pub fn outline(&self, view: &View) -> Outline {
        let cover = Cover::of(self, view);
        let mut outline = Outline {
            centre: self.spots.iter().map(|spot| view.flat(&spot.sample.point)).collect(),
            ..Outline::default()
        };
        self.edges(view, &cover, &mut outline);
        for ring in &self.rings {
            self.ring(ring, view, &cover, &mut outline);
        }
        outline
    }

    /// Both edges: the places where the line of sight grazes the tube.
    fn edges(&self, view: &View, cover: &Cover<'_>, outline: &mut Outline) {
        let mut runs = [Strip::default(), Strip::default()];
        let mut before: Option<(Vec3, usize)> = None;
        for (index, spot) in self.spots.iter().enumerate() {
            let across = spot.sample.tangent.cross(&view.toward);
            if across.norm() < END_ON {
                runs.iter_mut().for_each(|run| run.end(outline));
                // The straight seen end-on shows as one circle, at its end nearer to the eye.
                if before.take().is_some() || index == 0 {
                    self.end_on(index, view, cover, outline);
                }
                continue;
            }
            let across = crate::layout::unit(&across);
            // Where the tube turns past the line of sight its edges change sides, round a circle.
            if let Some((last, at)) = &before
                && last.dot(&across) < 0.5
            {
                runs.iter_mut().for_each(|run| run.end(outline));
                self.circle(&self.spots[*at], view, cover, outline);
            }
            for (run, side) in runs.iter_mut().zip([1.0, -1.0]) {
                let edge = spot.sample.point + across * (side * spot.radius);
                run.push(view.flat(&edge), cover.hides(&edge, None), outline);
            }
            before = Some((across, index));
        }
        runs.iter_mut().for_each(|run| run.end(outline));
    }

    /// The circle of a straight that is seen end-on and starts at a sample.
    fn end_on(&self, from: usize, view: &View, cover: &Cover<'_>, outline: &mut Outline) {
        let is = |spot: &&Spot| spot.sample.tangent.cross(&view.toward).norm() < END_ON;
        let nearest = self.spots[from..].iter().take_while(is).max_by(|a, b| {
            (a.radius, view.depth(&a.sample.point)).partial_cmp(&(b.radius, view.depth(&b.sample.point))).unwrap()
        });
        if let Some(spot) = nearest {
            self.circle(spot, view, cover, outline);
        }
    }

    fn circle(&self, spot: &Spot, view: &View, cover: &Cover<'_>, outline: &mut Outline) {
        let mut run = Strip::default();
        for step in 0..=ROUND {
            let (sin, cos) = libm::sincos(TAU * step as f64 / ROUND as f64);
            let edge = spot.sample.point + (view.right * cos + view.up * sin) * spot.radius;
            // What is hidden of it lies within the tube's own picture and says nothing more.
            if cover.hides(&edge, None) { run.end(outline) } else { run.push(view.flat(&edge), false, outline) }
        }
        run.end(outline);
    }

    fn ring(&self, ring: &Ring, view: &View, cover: &Cover<'_>, outline: &mut Outline) {
        let Some(spot) = self.spots.iter().min_by(|a, b| (a.s - ring.s).abs().total_cmp(&(b.s - ring.s).abs())) else {
            return;
        };
        let along = spot.sample.tangent;
        let middle = spot.sample.point + along * (ring.s - spot.s);
        let u = perpendicular(&along, &view.up);
        let v = along.cross(&u);
        let near = Some([ring.s - 3.0 * self.largest, ring.s + 3.0 * self.largest]);
        let mut run = Strip::default();
        for step in 0..=ROUND {
            let (sin, cos) = libm::sincos(TAU * step as f64 / ROUND as f64);
            let out = u * cos + v * sin;
            let faces = |[radial, axial]: [f64; 2]| (out * radial + along * axial).dot(&view.toward) > -1e-9;
            let edge = middle + out * ring.radius;
            let shows = (faces(ring.normals[0]) || faces(ring.normals[1])) && !cover.hides(&edge, near);
            if shows { run.push(view.flat(&edge), false, outline) } else { run.end(outline) }
        }
        run.end(outline);
    }
}

/// An edge being drawn, cut where it goes out of sight.
#[derive(Default)]
struct Strip {
    points: Vec<Flat>,
    hidden: bool,
}

impl Strip {
    fn push(&mut self, point: Flat, hidden: bool, outline: &mut Outline) {
        if !self.points.is_empty() && hidden != self.hidden {
            // The two parts share the point at which the edge goes out of sight.
            self.points.push(point);
            self.end(outline);
        }
        self.hidden = hidden;
        self.points.push(point);
    }

    fn end(&mut self, outline: &mut Outline) {
        let points = std::mem::take(&mut self.points);
        if points.len() > 1 {
            if self.hidden { outline.hidden.push(points) } else { outline.seen.push(points) }
        }
    }
}

/// Where the tube stands between an edge and the eye.
struct Cover<'a> {
    trace: &'a Trace,
    view: &'a View,
    cell: f64,
    cells: HashMap<[i64; 2], Vec<u32>>,
}

impl<'a> Cover<'a> {
    fn of(trace: &'a Trace, view: &'a View) -> Self {
        let cell = (2.0 * trace.largest).max(1e-6);
        let mut cells: HashMap<[i64; 2], Vec<u32>> = HashMap::new();
        for (index, spot) in trace.spots.iter().enumerate() {
            let at = view.flat(&spot.sample.point).map(|x| (x / cell).floor() as i64);
            cells.entry(at).or_default().push(index as u32);
        }
        Self { trace, view, cell, cells }
    }

    /// Whether some of the tube, nearer to the eye, covers the point; the part `but` of the tube does not count.
    fn hides(&self, point: &Vec3, but: Option<[f64; 2]>) -> bool {
        let flat = self.view.flat(point);
        let depth = self.view.depth(point);
        let [column, row] = flat.map(|x| (x / self.cell).floor() as i64);
        let around = (-1..=1).flat_map(|x| (-1..=1).map(move |y| [column + x, row + y]));
        around.filter_map(|at| self.cells.get(&at)).flatten().any(|index| {
            let spot = &self.trace.spots[*index as usize];
            let [x, y] = self.view.flat(&spot.sample.point);
            let aside = libm::hypot(x - flat[0], y - flat[1]);
            aside < 0.97 * spot.radius
                && self.view.depth(&spot.sample.point) > depth + 0.05 * spot.radius
                && !but.is_some_and(|[from, to]| (from..=to).contains(&spot.s))
        })
    }
}

/// A line without the points that lie within `tolerance` of the straight between their neighbours (Ramer, Douglas and
/// Peucker).
pub(super) fn simplified(points: &[Flat], tolerance: f64) -> Vec<Flat> {
    let mut kept = vec![false; points.len()];
    if let (Some(first), true) = (kept.first_mut(), !points.is_empty()) {
        *first = true;
    }
    if let Some(last) = kept.last_mut() {
        *last = true;
    }
    let mut spans = vec![(0, points.len().saturating_sub(1))];
    while let Some((from, to)) = spans.pop() {
        let off = |index: &usize| aside(points[*index], points[from], points[to]);
        let Some(worst) = (from + 1..to).max_by(|a, b| off(a).total_cmp(&off(b))) else { continue };
        if off(&worst) > tolerance {
            kept[worst] = true;
            spans.extend([(from, worst), (worst, to)]);
        }
    }
    points.iter().zip(kept).filter_map(|(point, keep)| keep.then_some(*point)).collect()
}

/// Distance of a point from the stretch between two others.
fn aside(point: Flat, from: Flat, to: Flat) -> f64 {
    let (way, arm) = ([to[0] - from[0], to[1] - from[1]], [point[0] - from[0], point[1] - from[1]]);
    let long = way[0] * way[0] + way[1] * way[1];
    let share = if long > 0.0 { ((arm[0] * way[0] + arm[1] * way[1]) / long).clamp(0.0, 1.0) } else { 0.0 };
    libm::hypot(arm[0] - share * way[0], arm[1] - share * way[1])
}
