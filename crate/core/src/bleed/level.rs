//! Where a piece runs level.

use crate::centreline::{Curve, Form, Piece, Shape};
use crate::layout::{PlacedCoil, Vec3};
use core::f64::consts::{PI, TAU};

/// Arc lengths on a piece, within its ends and in order, where its height along the unit direction `up` stops rising or
/// falling.
pub(super) fn places(piece: &Piece, up: &Vec3) -> Vec<f64> {
    let mut places = match &piece.shape {
        Shape::Straight => Vec::new(),
        Shape::Arc { radius, angle, normal, .. } => {
            // The rise along cos(a) + inward sin(a) vanishes at opposite angles.
            let first = libm::atan2(-piece.direction.dot(up), normal.dot(up));
            let turns = (-2..=4).map(|half| first + f64::from(half) * PI);
            turns.filter(|turned| *turned > 0.0 && turned < angle).map(|turned| turned * radius).collect()
        }
        Shape::Curve(curve) => {
            let parameters = match &curve.form {
                Form::Cubic(coefficients) => of_cubic(&coefficients.map(|c| c.dot(up))),
                Form::Helix(coil) if coil.widening == 0.0 => of_coil(coil, curve, up),
                Form::Helix(coil) => of_spiral(coil, curve, up),
            };
            let [from, to] = curve.span;
            parameters.into_iter().filter(|u| *u > from && *u < to).map(|u| curve.arc_length(u)).collect()
        }
    };
    places.sort_by(f64::total_cmp);
    places
}

/// Parameters at which a cubic stops rising: roots of its derivative, by the form of the quadratic's solution that does not
/// cancel.
fn of_cubic([_, b, c, d]: &[f64; 4]) -> Vec<f64> {
    // b + 2 c u + 3 d u^2
    let inside = c * c - 3.0 * b * d;
    if inside < 0.0 {
        return Vec::new();
    }
    let q = -(c + inside.sqrt().copysign(*c));
    [q / (3.0 * d), b / q].into_iter().filter(|u| u.is_finite()).collect()
}

/// Angles at which a coil of steady radius stops rising: r (f cos a - e sin a) sign + climb = 0 along `up`, where `a` is its
/// angle about the axis.
fn of_coil(coil: &PlacedCoil, curve: &Curve, up: &Vec3) -> Vec<f64> {
    let [e, f] = coil.across.map(|direction| direction.dot(up));
    let swing = coil.radius * libm::hypot(e, f);
    let steady = -coil.climb * coil.axis.dot(up) * coil.sign;
    if steady.abs() >= swing {
        return Vec::new();
    }
    let (lag, half) = (libm::atan2(e, f), libm::acos(steady / swing));
    let [from, to] = curve.span;
    [half, -half]
        .into_iter()
        .flat_map(|angle| {
            let first = (angle - lag - coil.start) * coil.sign;
            // The first of these angles, a whole turn apart, on the stretch; a stretch is no more than a few turns.
            let next = first + ((from - first) / TAU).ceil() * TAU;
            (0..8).map(move |turn| next + f64::from(turn) * TAU).filter(move |u| *u <= to)
        })
        .collect()
}

/// Angles at which a coil that widens stops rising: looked for in sixteen parts of the stretch and closed in on.
fn of_spiral(coil: &PlacedCoil, curve: &Curve, up: &Vec3) -> Vec<f64> {
    const LOOKS: u32 = 16;
    let [e, f] = coil.across.map(|direction| direction.dot(up));
    let rise = |u: f64| {
        let (sin, cos) = libm::sincos(coil.start + coil.sign * u);
        (e * cos + f * sin) * coil.widening
            + (f * cos - e * sin) * coil.sign * (coil.radius + coil.widening * u)
            + coil.axis.dot(up) * coil.climb
    };
    let [from, to] = curve.span;
    let place = |look: u32| from + (to - from) * f64::from(look) / f64::from(LOOKS);
    (0..LOOKS)
        .filter_map(|look| {
            let (mut low, mut high) = (place(look), place(look + 1));
            let falls = rise(low) > 0.0;
            if falls == (rise(high) > 0.0) {
                return None;
            }
            for _ in 0..56 {
                let middle = (low + high) / 2.0;
                if (rise(middle) > 0.0) == falls { low = middle } else { high = middle }
            }
            Some((low + high) / 2.0)
        })
        .collect()
}
