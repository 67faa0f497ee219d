//! Does a tube come back to itself?

use super::{Tube, place_along, search_width, too_close};
use crate::centreline::{Curve, Form, Shape};
use crate::check::round::up;
use crate::check::{Finding, PatchStep};
use crate::design::Station;
use crate::distance::{Budget, Near, between, within_itself};
use core::f64::consts::FRAC_PI_2;

/// How far from a joint a point is told on it, mm of arc length.
const JOINT: f64 = 1e-3;

pub(super) fn findings(tubes: &[Tube<'_>], budget: &mut Budget) -> Vec<Finding> {
    tubes.iter().filter_map(|tube| of_tube(tube, budget)).collect()
}

fn of_tube(tube: &Tube<'_>, budget: &mut Budget) -> Option<Finding> {
    let [from, to] = tube.outside();
    let apart = tube.half_turn();
    if to - from < apart {
        return None;
    }
    let width = 2.0 * tube.radius + search_width(tube.clearance);
    let itself = within_itself(tube.body(), [from, to], apart, width, budget);
    let itself = itself.map(|near| (near.distance - 2.0 * tube.radius, near));
    let all = itself.into_iter().chain(collars(tube, [from, to], budget));
    let (gap, near) = all.min_by(|a, b| a.0.total_cmp(&b.0))?;
    let middle = (near.points[0] + near.points[1]) / 2.0;
    let finding = too_close("meets_itself", &tube.run, tube.clearance, (gap, &middle, near.along[0]))?;
    let finding = finding.word("further", place_along(near.along[1]));
    Some(finding.ways(wider_coil(tube, near.along)))
}

/// Each joint's collar against the rest of the tube, as far from it along the tube as two such skins can come back, and
/// against the other collars there.
fn collars(tube: &Tube<'_>, [from, to]: [f64; 2], budget: &mut Budget) -> Vec<(f64, Near)> {
    let mut found = Vec::new();
    for (span, radius) in &tube.collars {
        let apart = FRAC_PI_2 * (radius + tube.widest() + tube.clearance);
        for rest in [[from, span[0] - apart], [span[1] + apart, to]] {
            if rest[0] >= rest[1] {
                continue;
            }
            for (on, other) in tube.parts(rest) {
                let width = radius + other + search_width(tube.clearance);
                let near = between((tube.body(), *span), (tube.body(), on), width, budget);
                found.extend(near.map(|near| (near.distance - radius - other, near)));
            }
        }
    }
    found
}

/// Where a coil's own turns are too close: more pitch, or, in a flat spiral, a wider end.
fn wider_coil(tube: &Tube<'_>, along: [f64; 2]) -> Vec<Vec<PatchStep>> {
    // A joint belongs to the coil, whichever side of it the point is told on.
    let coil_at = |s: f64| {
        let there = tube.line.pieces.iter().filter(|piece| piece.from <= s + JOINT && s - JOINT <= piece.to());
        there.into_iter().find_map(|piece| match &piece.shape {
            Shape::Curve(Curve { form: Form::Helix(_), whole, .. }) => Some(*whole),
            _ => None,
        })
    };
    let [Some(station), Some(other)] = along.map(coil_at) else { return Vec::new() };
    let Station::Coil(coil) = &tube.run.run.route[station] else { return Vec::new() };
    if station != other {
        return Vec::new();
    }
    let apart = 2.0 * tube.radius + tube.clearance;
    let at = |key: &str| tube.run.station(station, &format!("/coil/{key}"));
    // Turns that climb at a slant are nearer to each other than their pitch; how much depends on the radius.
    let pitches = [1.0, 1.01, 1.05, 1.2, 1.5].map(|times| vec![PatchStep::set(at("pitch"), up(apart * times))]);
    let flat = coil.pitch == 0.0 && coil.end_radius.is_some_and(|end| end != coil.radius);
    let spread = [1.0, 1.02, 1.1].map(|times| up(coil.radius + apart * times * coil.turns.max(1.0)));
    let ends = spread.map(|end| vec![PatchStep::set(at("end_radius"), end)]);
    if flat { ends.into_iter().chain(pitches).collect() } else { pitches.to_vec() }
}
