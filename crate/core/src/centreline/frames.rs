//! Frames across the centreline that do not twist along it.
//!
//! Along a straight the frame stays, along an arc it turns about the arc's axis: both exact. Along any other curve it is
//! carried by two reflections a step (Wang, Juettler, Zheng and Liu 2008, ACM Trans. Graph. 27, 1), whose error falls
//! with the fourth power of the step.

use super::{Centreline, Piece, Sample, Shape};
use crate::layout::{Vec3, perpendicular, reference_perpendicular, rotate};

/// Widest turn between two places that a frame is carried by reflections, radians.
const TURN: f64 = 0.05;
/// Fewest such places on a piece, for those that twist more than they turn.
const FEWEST: usize = 8;
/// Places nearer to each other than this are one, mm: what rounding leaves between them has a direction by chance alone,
/// and a reflection in it would turn the frame anywhere.
const SAME_PLACE: f64 = 1e-9;

/// Two unit directions across the centreline; with the direction of travel they make a right-handed frame.
pub(crate) type Frame = [Vec3; 2];

/// The frames of a centreline.
pub(crate) struct Frames<'a> {
    line: &'a Centreline,
    starts: Vec<Start>,
}

/// What frames on a piece are worked from.
enum Start {
    /// The frame at its start.
    Plain(Frame),
    /// Frames at even arc lengths from its start on.
    Curve(Vec<(Sample, Frame)>),
}

impl<'a> Frames<'a> {
    /// The frames of `line`, the first with the reference perpendicular.
    pub(crate) fn of(line: &'a Centreline) -> Self {
        let mut frame = line.pieces.first().map_or([Vec3::x(), Vec3::y()], |piece| {
            let first = reference_perpendicular(&piece.direction);
            [first, piece.direction.cross(&first)]
        });
        let mut starts = Vec::with_capacity(line.pieces.len());
        for piece in &line.pieces {
            // What rounding leaves along the direction is taken out piece by piece, so that it never adds up.
            let first = perpendicular(&piece.direction, &frame[0]);
            frame = [first, piece.direction.cross(&first)];
            if let Shape::Curve(_) = piece.shape {
                let knots = knots(piece, frame);
                frame = knots.last().map_or(frame, |(_, last)| *last);
                starts.push(Start::Curve(knots));
            } else {
                starts.push(Start::Plain(frame));
                frame = turned(&frame, piece, piece.length);
            }
        }
        Self { line, starts }
    }

    /// The frame `local` mm from the start of a piece, where the centreline is as `sample` says.
    pub(crate) fn at(&self, piece: usize, local: f64, sample: &Sample) -> Frame {
        let on = &self.line.pieces[piece];
        match &self.starts[piece] {
            Start::Plain(frame) => turned(frame, on, local),
            Start::Curve(knots) => {
                let steps = knots.len() - 1;
                let nearest = libm::round(local / on.length * steps as f64).clamp(0.0, steps as f64);
                let (from, frame) = &knots[nearest as usize];
                reflected(frame, from, sample)
            }
        }
    }
}

fn knots(piece: &Piece, first: Frame) -> Vec<(Sample, Frame)> {
    let steps = (libm::ceil(piece.turned() / TURN) as usize).max(FEWEST);
    let mut knots = vec![(piece.at(0.0), first)];
    for step in 1..=steps {
        let (before, frame) = &knots[step - 1];
        let sample = piece.at(piece.length * (step as f64 / steps as f64));
        let frame = reflected(frame, before, &sample);
        knots.push((sample, frame));
    }
    knots
}

/// The frame carried from one place of a curve to another near it: reflected in the plane between the two points, then
/// in the one that brings the tangent home.
fn reflected(frame: &Frame, from: &Sample, to: &Sample) -> Frame {
    let between = to.point - from.point;
    if between.norm() < SAME_PLACE {
        let first = perpendicular(&to.tangent, &frame[0]);
        return [first, to.tangent.cross(&first)];
    }
    let over = |v: &Vec3, normal: &Vec3| {
        let square = normal.norm_squared();
        if square > 0.0 { v - normal * (2.0 * normal.dot(v) / square) } else { *v }
    };
    let tangent = over(&from.tangent, &between);
    let first = over(&over(&frame[0], &between), &(to.tangent - tangent));
    let first = perpendicular(&to.tangent, &first);
    [first, to.tangent.cross(&first)]
}

/// The frame carried along a straight or an arc: turned with it about the bend's axis, which is what does not twist.
fn turned(frame: &Frame, piece: &Piece, local: f64) -> Frame {
    let Shape::Arc { radius, angle, normal, .. } = &piece.shape else { return *frame };
    let axis = piece.direction.cross(normal);
    let turned = if local >= piece.length { *angle } else { local / radius };
    frame.map(|direction| rotate(&direction, &axis, turned))
}
