//! A smooth curve through points: a cubic spline of continuous curvature that leaves and arrives along given headings.
//!
//! Its parameter is very nearly its arc length: the spline is solved with the chords' lengths as intervals, and again
//! with the lengths that its spans then have, a fixed number of times. So its speed stays near one, which is what keeps
//! a spline from swinging out in long spans and from looping in short ones.

use super::Obstacle;
use super::curve::{Curve, Form, integral};
use super::link::Pose;
use super::pen::Pen;
use crate::layout::Vec3;

/// Points nearer than this are one point, mm.
const SAME_POINT: f64 = 1e-6;
/// Times that the intervals are set to the spans' lengths; each brings them nearer by half or more.
const ROUNDS: usize = 8;
/// Most that a piece may turn, radians: what is asked of pieces assumes that they are much like arcs.
const MOST_TURN: f64 = 0.4;
/// Halvings of a span at most.
const DEEPEST: u32 = 10;
/// How well the rule for its length and the halved rule must agree, as a share of it.
const AGREED: f64 = 1e-13;

/// Draws the curve from one pose through the points, each with the index of its station, to another pose.
pub(super) fn draw(pen: &mut Pen, from: &Pose, points: &[(usize, Vec3)], to: &Pose) -> Result<(), Vec<Obstacle>> {
    let (nodes, stations) = nodes(from, points, to)?;
    let cubics = spline(&nodes, &from.heading, &to.heading);
    let whole = points.first().map_or(0, |(station, _)| *station);
    for (span, cubic) in cubics.iter().enumerate() {
        let near = [stations[span], stations[span + 1]];
        cut(pen, &Form::Cubic(*cubic), [0.0, 1.0], near, whole, 0);
    }
    Ok(())
}

/// The points that the spline interpolates and the station of each; the ends have their neighbours'. A first or last
/// point on the very end pose is passed anyway.
fn nodes(from: &Pose, points: &[(usize, Vec3)], to: &Pose) -> Result<(Vec<Vec3>, Vec<usize>), Vec<Obstacle>> {
    let mut points = points;
    while let [(_, first), rest @ ..] = points
        && (first - from.at).norm() <= SAME_POINT
    {
        points = rest;
    }
    while let [rest @ .., (_, last)] = points
        && (last - to.at).norm() <= SAME_POINT
    {
        points = rest;
    }
    let first = points.first().map_or(0, |(station, _)| *station);
    let last = points.last().map_or(0, |(station, _)| *station);
    let nodes: Vec<Vec3> =
        std::iter::once(from.at).chain(points.iter().map(|(_, point)| *point)).chain([to.at]).collect();
    let stations: Vec<usize> =
        std::iter::once(first).chain(points.iter().map(|(station, _)| *station)).chain([last]).collect();
    let twins: Vec<Obstacle> = nodes
        .windows(2)
        .zip(&stations[1..])
        .filter(|(pair, _)| (pair[1] - pair[0]).norm() <= SAME_POINT)
        .map(|(_, station)| Obstacle::SamePoint { station: *station })
        .collect();
    if twins.is_empty() { Ok((nodes, stations)) } else { Err(twins) }
}

/// The cubics between the nodes, each by its coefficients over a parameter from 0 to 1.
fn spline(nodes: &[Vec3], start: &Vec3, end: &Vec3) -> Vec<[Vec3; 4]> {
    let mut intervals: Vec<f64> = nodes.windows(2).map(|pair| (pair[1] - pair[0]).norm()).collect();
    let mut cubics = through(nodes, &intervals, start, end);
    for _ in 0..ROUNDS {
        for (interval, cubic) in intervals.iter_mut().zip(&cubics) {
            let form = Form::Cubic(*cubic);
            *interval = integral([0.0, 0.5], |u| form.speed(u)) + integral([0.5, 1.0], |u| form.speed(u));
        }
        cubics = through(nodes, &intervals, start, end);
    }
    cubics
}

/// The cubic spline with continuous first and second derivatives over the given intervals, clamped to unit end
/// derivatives: a tridiagonal system for the derivatives at the nodes, solved by elimination.
fn through(nodes: &[Vec3], intervals: &[f64], start: &Vec3, end: &Vec3) -> Vec<[Vec3; 4]> {
    let last = nodes.len() - 1;
    let slope = |i: usize| (nodes[i + 1] - nodes[i]) / intervals[i];
    let mut rates = vec![*start; last + 1];
    rates[last] = *end;
    // Row i: intervals[i] m[i-1] + 2 (intervals[i-1] + intervals[i]) m[i] + intervals[i-1] m[i+1] = right-hand side.
    let mut above = vec![0.0; last + 1];
    for i in 1..last {
        let (before, after) = (intervals[i - 1], intervals[i]);
        let right = (slope(i - 1) * after + slope(i) * before) * 3.0;
        let pivot = 2.0 * (before + after) - after * above[i - 1];
        above[i] = before / pivot;
        rates[i] = (right - rates[i - 1] * after) / pivot;
    }
    for i in (1..last).rev() {
        rates[i] = rates[i] - rates[i + 1] * above[i];
    }
    (0..last)
        .map(|i| {
            let chord = nodes[i + 1] - nodes[i];
            let (a, b) = (rates[i] * intervals[i], rates[i + 1] * intervals[i]);
            [nodes[i], a, chord * 3.0 - a * 2.0 - b, a + b - chord * 2.0]
        })
        .collect()
}

/// Draws a span in pieces that turn little and whose lengths the rule gives exactly.
fn cut(pen: &mut Pen, form: &Form, [from, to]: [f64; 2], near: [usize; 2], whole: usize, depth: u32) {
    let middle = (from + to) / 2.0;
    let station = near[usize::from(middle > 0.5)];
    let curve = Curve::of(*form, [from, to], station, whole);
    let halves = form.length([from, middle]) + form.length([middle, to]);
    let agreed = (curve.length() - halves).abs() <= AGREED * halves;
    // A span is halved at least once, so that each half belongs to the point it is nearer to.
    if depth > 0 && (depth >= DEEPEST || (agreed && curve.turned <= MOST_TURN)) {
        return pen.curve(curve);
    }
    cut(pen, form, [from, middle], near, whole, depth + 1);
    cut(pen, form, [middle, to], near, whole, depth + 1);
}
