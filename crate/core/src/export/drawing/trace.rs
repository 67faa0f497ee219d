//! A tube as a view shows it: both edges, what of them is hidden, its ends, its centreline.

use super::cover::Cover;
use super::graze::{Graze, is_end_on};
use super::view::{Flat, View};
use crate::centreline::{Centreline, Sample};
use crate::layout::{Vec3, perpendicular};
use crate::tube::Section;
use core::f64::consts::TAU;

/// Most samples along a tube.
const MOST_SAMPLES: f64 = 4_000.0;
/// Widest turn between two samples, radians: 2 degrees.
const STEP: f64 = core::f64::consts::PI / 90.0;
/// Corners of a drawn circle.
const ROUND: usize = 72;
/// Halvings between two samples, at most.
const DEEPEST: u32 = 10;
/// Slopes that differ by less are one, and parts in which an edge turns round a ridge.
const EVEN: f64 = 1e-9;
const RIDGE_TURNS: u32 = 4;

/// A place on the tube.
#[derive(Debug, Clone)]
pub(super) struct Spot {
    /// Arc length, mm.
    pub s: f64,
    /// The centreline there.
    pub sample: Sample,
    /// Of the skin, mm.
    pub radius: f64,
    /// What the radius gains along the tube.
    pub slope: f64,
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
    /// In order along the tube.
    pub spots: Vec<Spot>,
    rings: Vec<Ring>,
    /// The largest radius anywhere, mm.
    pub largest: f64,
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
                let [before, after] = slopes(outer, s);
                // Round a ridge the edge runs from the one slope's to the other's.
                let turns = if (after - before).abs() < EVEN { 0 } else { RIDGE_TURNS };
                for turn in 0..=turns {
                    let slope = before + (after - before) * f64::from(turn) / f64::from(turns.max(1));
                    spots.push(Spot { s, radius: outer.radius(s), slope, sample: sample.clone() });
                }
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
        let mut round_drawn = false;
        let spots = self.close_spots(view);
        for (index, spot) in spots.iter().enumerate() {
            let Some(graze) = Graze::of(spot, view) else {
                if let Some((_, at)) = before.take() {
                    // Where a flare runs past the line of sight its two edges meet.
                    let tip = Graze::of(&spots[at], view).and_then(|graze| graze.tip());
                    close(&mut runs, &spots[at], tip, view, cover, outline);
                }
                runs.iter_mut().for_each(|run| run.end(outline));
                // The straight seen end-on shows as one circle, at its end nearer to the eye.
                if is_end_on(spot, view) && !round_drawn {
                    end_on(&spots[index..], view, cover, outline);
                    round_drawn = true;
                }
                continue;
            };
            round_drawn = false;
            match &before {
                // Where the tube turns past the line of sight its edges change sides, round a circle.
                Some((last, at)) if last.dot(&graze.across) < 0.5 => {
                    runs.iter_mut().for_each(|run| run.end(outline));
                    circle(&spots[*at], view, cover, outline);
                }
                Some(_) => {}
                None => close(&mut runs, spot, graze.tip(), view, cover, outline),
            }
            for (run, out) in runs.iter_mut().zip(graze.sides) {
                let edge = spot.sample.point + out * spot.radius;
                run.push(view.flat(&edge), cover.hides(&edge, None), outline);
            }
            before = Some((graze.across, index));
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
        if depth >= DEEPEST || Graze::swings_little(from, to, view) {
            return;
        }
        let s = (from.s + to.s) / 2.0;
        let slope = (from.slope + to.slope) / 2.0;
        let middle = Spot { s, radius: self.outer.radius(s), slope, sample: self.line.at(s) };
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

/// What the skin's radius gains along the tube, just before and just after an arc length.
fn slopes(outer: &Section, s: f64) -> [f64; 2] {
    let last = outer.breaks.len().saturating_sub(1);
    [outer.breaks.partition_point(|[at, _]| *at < s), outer.breaks.partition_point(|[at, _]| *at <= s)].map(|next| {
        let pair = next.clamp(1, last);
        let [[from, first], [to, second]] = [outer.breaks[pair - 1], outer.breaks[pair]];
        (second - first) / (to - from)
    })
}

/// Brings both edges to the point where they meet.
fn close(runs: &mut [Strip; 2], spot: &Spot, tip: Option<Vec3>, view: &View, cover: &Cover<'_>, outline: &mut Outline) {
    let Some(out) = tip else { return };
    let edge = spot.sample.point + out * spot.radius;
    for run in runs {
        run.push(view.flat(&edge), cover.hides(&edge, None), outline);
    }
}

/// The circle of a straight that is seen end-on and starts at the first of some samples.
fn end_on(spots: &[Spot], view: &View, cover: &Cover<'_>, outline: &mut Outline) {
    let is = |spot: &&Spot| is_end_on(spot, view);
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
