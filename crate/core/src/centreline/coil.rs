//! A coil as pieces of at most a quarter turn, and the poses at its ends.

use super::curve::{Curve, Form, sample};
use super::link::Pose;
use super::pen::Pen;
use crate::layout::PlacedCoil;
use core::f64::consts::FRAC_PI_2;

/// Point and direction of travel at the coil's first and last point.
pub(super) fn ends(coil: &PlacedCoil) -> [Pose; 2] {
    [0.0, coil.angle].map(|u| {
        let there = sample(&Form::Helix(*coil), u);
        Pose { at: there.point, heading: there.tangent }
    })
}

/// Draws the coil of a station.
pub(super) fn draw(pen: &mut Pen, coil: &PlacedCoil, station: usize) {
    let form = Form::Helix(*coil);
    let quarters = libm::ceil(coil.angle / FRAC_PI_2 - 1e-9).max(1.0);
    let place = |quarter: f64| if quarter == quarters { coil.angle } else { coil.angle * (quarter / quarters) };
    for quarter in 0..quarters as usize {
        let span = [place(quarter as f64), place(quarter as f64 + 1.0)];
        pen.curve(Curve::of(form, span, station, station));
    }
}
