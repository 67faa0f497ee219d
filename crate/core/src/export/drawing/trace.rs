//! A tube as a view shows it: both edges, what of them is hidden, its ends, its centreline.

use super::view::{Flat, View};
use crate::centreline::{Centreline, Sample};
use crate::layout::{Vec3, perpendicular};
use crate::tube::Section;
use core::f64::consts::TAU;
use std::collections::HashMap;

/// Most samples along a tube.
const MOST_SAMPLES: f64 = 4_000.0;
/// Widest turn between two samples, radians: 2 degrees.
const STEP: f64 = core::f64::consts::PI / 90.0;
/// Corners of a drawn circle.
const ROUND: usize = 72;
/// Below this sine of the angle between tube and line of sight the tube is seen end-on.
const END_ON: f64 = 1e-3;

/// Cosine of the widest swing of the edges between two samples: 8 degrees; and halvings to get there at most.
const SWING: f64 = 0.990;
const DEEPEST: u32 = 10;

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
pub(super) struct Trace<'a> {
    line: &'a Centreline,
    outer: &'a Section,
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

impl<'t> Trace<'t> {
    /// Samples a centreline; `outer` is the tube's skin, `rings` its edges that run round it.
    pub fn of(line: &'t Centreline, outer: &'t Section, rings: Vec<Ring>) -> Self {
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
        Self { line, outer, spots, rings, largest }
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
        let spots = self.close_spots(view);
        for (index, spot) in spots.iter().enumerate() {
            let across = spot.sample.tangent.cross(&view.toward);
            if across.norm() < END_ON {
                runs.iter_mut().for_each(|run| run.end(outline));
                // The straight seen end-on shows as one circle, at its end nearer to the eye.
                if before.take().is_some() || index == 0 {
                    end_on(&spots[index..], view, cover, outline);
                }
                continue;
            }
            let across = crate::layout::unit(&across);
            // Where the tube turns past the line of sight its edges change sides, round a circle.
            if let Some((last, at)) = &before
                && last.dot(&across) < 0.5
            {
                runs.iter_mut().for_each(|run| run.end(outline));
                circle(&spots[*at], view, cover, outline);
            }
            for (run, side) in runs.iter_mut().zip([1.0, -1.0]) {
                let edge = spot.sample.point + across * (side * spot.radius);
                run.push(view.flat(&edge), cover.hides(&edge, None), outline);
            }
            before = Some((across, index));
        }
        runs.iter_mut().for_each(|run| run.end(outline));
    }

    /// The samples with more between them where the edges swing round quickly, so that their crests are drawn.
    fn close_spots(&self, view: &View) -> Vec<Spot> {
        let mut close = Vec::with_capacity(self.spots.len());
        for pair in self.spots.windows(2) {
            close.push(pair[0].clone());
            self.between(&pair[0], &pair[1], view, 0, &mut close);
        }
        close.extend(self.spots.last().cloned());
        close
    }

    fn between(&self, from: &Spot, to: &Spot, view: &View, depth: u32, close: &mut Vec<Spot>) {
        let [a, b] = [from, to].map(|spot| spot.sample.tangent.cross(&view.toward));
        let together = a.dot(&b) >= SWING * a.norm() * b.norm();
        if together || depth >= DEEPEST {
            return;
        }
        let s = (from.s + to.s) / 2.0;
        let middle = Spot { s, radius: self.outer.radius(s), sample: self.line.at(s) };
        self.between(from, &middle, view, depth + 1, close);
        close.push(middle.clone());
        self.between(&middle, to, view, depth + 1, close);
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

/// The circle of a straight that is seen end-on and starts at the first of some samples.
fn end_on(spots: &[Spot], view: &View, cover: &Cover<'_>, outline: &mut Outline) {
    let is = |spot: &&Spot| spot.sample.tangent.cross(&view.toward).norm() < END_ON;
    let depth = |spot: &Spot| view.depth(&spot.sample.point);
    let nearer = |a: &&Spot, b: &&Spot| a.radius.total_cmp(&b.radius).then(depth(a).total_cmp(&depth(b)));
    if let Some(spot) = spots.iter().take_while(is).max_by(nearer) {
        circle(spot, view, cover, outline);
    }
}

fn circle(spot: &Spot, view: &View, cover: &Cover<'_>, outline: &mut Outline) {
    let mut run = Strip::default();
    for step in 0..=ROUND {
        let (sin, cos) = libm::sincos(TAU * step as f64 / ROUND as f64);
        let edge = spot.sample.point + (view.right * cos + view.up * sin) * spot.radius;
        // What is hidden of it lies within the tube's own picture and says nothing more.
        if cover.hides(&edge, None) { run.end(outline) } else { run.push(view.flat(&edge), false, outline) }
    }
    run.end(outline);
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

/// Where the tube stands between an edge and the eye: in each cell of the view the samples that lie there, nearest to
/// the eye first.
struct Cover<'a> {
    view: &'a View,
    cell: f64,
    cells: HashMap<[i64; 2], Vec<Shade>>,
}

/// A sample as a view sees it.
struct Shade {
    at: Flat,
    depth: f64,
    s: f64,
    radius: f64,
}

impl<'a> Cover<'a> {
    fn of(trace: &Trace<'_>, view: &'a View) -> Self {
        let cell = (2.0 * trace.largest).max(1e-6);
        let mut cells: HashMap<[i64; 2], Vec<Shade>> = HashMap::new();
        for Spot { s, sample, radius } in &trace.spots {
            let at = view.flat(&sample.point);
            let shade = Shade { at, depth: view.depth(&sample.point), s: *s, radius: *radius };
            cells.entry(at.map(|x| (x / cell).floor() as i64)).or_default().push(shade);
        }
        cells.values_mut().for_each(|shades| shades.sort_by(|a, b| b.depth.total_cmp(&a.depth)));
        Self { view, cell, cells }
    }

    /// Whether some of the tube, nearer to the eye, covers the point; the part `but` of the tube does not count.
    fn hides(&self, point: &Vec3, but: Option<[f64; 2]>) -> bool {
        let flat = self.view.flat(point);
        let depth = self.view.depth(point);
        let [column, row] = flat.map(|x| (x / self.cell).floor() as i64);
        let around = (-1..=1).flat_map(|x| (-1..=1).map(move |y| [column + x, row + y]));
        let covers = |shade: &Shade| {
            let aside = libm::hypot(shade.at[0] - flat[0], shade.at[1] - flat[1]);
            aside < 0.97 * shade.radius
                && shade.depth > depth + 0.05 * shade.radius
                && !but.is_some_and(|[from, to]| (from..=to).contains(&shade.s))
        };
        around
            .filter_map(|at| self.cells.get(&at))
            .any(|shades| shades.iter().take_while(|shade| shade.depth > depth).any(covers))
    }
}

/// A line without the points that lie within `tolerance` of the straight between their neighbours: from each point kept,
/// the cone of directions that stay near all points passed narrows until one falls outside; the work grows with the
/// points alone.
pub(super) fn simplified(points: &[Flat], tolerance: f64) -> Vec<Flat> {
    let mut kept: Vec<Flat> = points.first().copied().into_iter().collect();
    let mut at = 0;
    while at + 1 < points.len() {
        at = last_in_cone(points, at, tolerance);
        kept.push(points[at]);
    }
    kept
}

/// The last point that a straight from the point `from` reaches without leaving those between.
fn last_in_cone(points: &[Flat], from: usize, tolerance: f64) -> usize {
    let mut base: Option<f64> = None;
    let (mut least, mut most, mut furthest) = (f64::NEG_INFINITY, f64::INFINITY, 0.0_f64);
    for (index, point) in points.iter().enumerate().skip(from + 1) {
        let [x, y] = [point[0] - points[from][0], point[1] - points[from][1]];
        let far = libm::hypot(x, y);
        if far < furthest - tolerance {
            return index - 1;
        }
        if far <= tolerance {
            continue;
        }
        let angle = libm::atan2(y, x);
        let turn = angle - *base.get_or_insert(angle);
        let turn = turn - TAU * libm::round(turn / TAU);
        if turn < least || turn > most {
            return index - 1;
        }
        let half = libm::asin(tolerance / far);
        (least, most, furthest) = (least.max(turn - half), most.min(turn + half), furthest.max(far));
    }
    points.len() - 1
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_left_of_a_line_stays_near_all_of_it() {
        let wave: Vec<Flat> = (0..2000).map(|i| [f64::from(i) * 0.05, 5.0 * libm::sin(f64::from(i) * 0.01)]).collect();
        let there_and_back: Vec<Flat> = (0..50).map(|i| [f64::from(if i < 25 { i } else { 50 - i }), 0.0]).collect();
        for points in [&wave, &there_and_back] {
            let kept = simplified(points, 0.01);
            assert!(kept.len() < points.len() / 5 && kept.first() == points.first() && kept.last() == points.last());
            for point in points {
                let near = kept.windows(2).map(|pair| aside(*point, pair[0], pair[1])).fold(f64::INFINITY, f64::min);
                assert!(near <= 0.0100001, "{point:?} is {near} away");
            }
        }
    }

    /// Distance of a point from the stretch between two others.
    fn aside(point: Flat, from: Flat, to: Flat) -> f64 {
        let (way, arm) = ([to[0] - from[0], to[1] - from[1]], [point[0] - from[0], point[1] - from[1]]);
        let share = ((arm[0] * way[0] + arm[1] * way[1]) / (way[0] * way[0] + way[1] * way[1])).clamp(0.0, 1.0);
        libm::hypot(arm[0] - share * way[0], arm[1] - share * way[1])
    }
}
