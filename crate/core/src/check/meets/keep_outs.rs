//! Does a tube come into space that must stay free?

use super::{Tube, search_width, too_close};
use crate::centreline::Bounds;
use crate::check::{Finding, Subject};
use crate::design::{KeepOut, KeepOutShape, wording};
use crate::distance::{Budget, Solid, box_gap, to_solid};
use crate::layout::Vec3;

/// A port's seat this near to a keep-out is a hole in that very part, mm: well above what positions are rounded to and
/// well below any fitting.
const IN_PART: f64 = 0.5;

pub(super) fn findings(subject: Subject<'_>, tubes: &[Tube<'_>], budget: &mut Budget) -> Vec<Finding> {
    let keep_outs: Vec<Solid> = subject.design.keep_outs.iter().map(solid_of).collect();
    let mut found = Vec::new();
    for tube in tubes {
        for (index, solid) in keep_outs.iter().enumerate() {
            let name = || wording::quoted(&subject.design.keep_outs[index].name);
            let finding = of_keep_out(subject, tube, solid, budget);
            found.extend(finding.map(|finding| finding.word("keep_out", name())));
        }
    }
    found
}

/// The solid of a keep-out.
pub(in crate::check) fn solid_of(keep_out: &KeepOut) -> Solid {
    match &keep_out.shape {
        KeepOutShape::Box { min, max } => Solid::Box(Bounds { min: Vec3::from(*min), max: Vec3::from(*max) }),
        KeepOutShape::Cylinder { from, to, radius } => Solid::cylinder(&Vec3::from(*from), &Vec3::from(*to), *radius),
    }
}

/// Whether a port is a hole in the part that a keep-out stands for.
pub(in crate::check) fn is_in_part(subject: Subject<'_>, port: usize, part: &Solid) -> bool {
    part.signed_distance(&subject.layout.ports[port].seat) <= IN_PART
}

fn of_keep_out(subject: Subject<'_>, tube: &Tube<'_>, solid: &Solid, budget: &mut Budget) -> Option<Finding> {
    let room = search_width(tube.clearance);
    let width = tube.widest() + room;
    if !budget.spend(1) || box_gap(&tube.bounds, &solid.bounds()) >= width {
        return None;
    }
    // A part that the run's own fitting is screwed into is as near as the fitting itself.
    let [start, end] = [tube.run.placed.from, tube.run.placed.to].map(|port| is_in_part(subject, port, solid));
    let (gap, skin, along) = nearest_part(tube, tube.clear_of_ends(start, end), solid, room, budget)?;
    too_close("meets_keep_out", &tube.run, tube.clearance, (gap, &skin, along))
}

/// The least gap between a tube's skin and a solid, if below `room`: where its skin is there, and the arc length.
pub(super) fn nearest_part(
    tube: &Tube<'_>,
    on: [f64; 2],
    solid: &Solid,
    room: f64,
    budget: &mut Budget,
) -> Option<(f64, Vec3, f64)> {
    let mut nearest: Option<(f64, Vec3, f64)> = None;
    for (on, radius) in tube.parts(on) {
        let within = nearest.map_or(room, |(gap, ..)| gap.min(room)) + radius;
        if let Some(near) = to_solid(tube.body(), on, solid, within, budget) {
            nearest = Some((near.distance - radius, near.point - near.outward * radius, near.along));
        }
    }
    nearest
}
