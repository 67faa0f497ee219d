//! Does a tube come close to another?

use super::{Tube, place_along, search_width, too_close};
use crate::check::Finding;
use crate::design::wording;
use crate::distance::{Budget, Near, between, box_gap};

pub(super) fn findings(tubes: &[Tube<'_>], budget: &mut Budget) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, tube) in tubes.iter().enumerate() {
        found.extend(tubes[index + 1..].iter().filter_map(|other| of_pair(tube, other, budget)));
    }
    found
}

fn of_pair(tube: &Tube<'_>, other: &Tube<'_>, budget: &mut Budget) -> Option<Finding> {
    let room = search_width(tube.clearance);
    let width = tube.widest() + other.widest() + room;
    if !budget.spend(1) || box_gap(&tube.bounds, &other.bounds) >= width {
        return None;
    }
    let ports = |tube: &Tube<'_>| [tube.run.placed.from, tube.run.placed.to];
    if ports(tube).iter().any(|port| ports(other).contains(port)) {
        // One inside the other from the port on, for as long as both go straight: told as the port used twice.
        return None;
    }
    let mut nearest: Option<(f64, Near)> = None;
    for (on, radius) in tube.parts(tube.outside()) {
        for (on_other, radius_other) in other.parts(other.outside()) {
            let within = radius + radius_other + nearest.as_ref().map_or(room, |(gap, _)| gap.min(room));
            if let Some(near) = between((tube.body(), on), (other.body(), on_other), within, budget) {
                nearest = Some((near.distance - radius - radius_other, near));
            }
        }
    }
    let (gap, near) = nearest?;
    let middle = (near.points[0] + near.points[1]) / 2.0;
    let finding = too_close("meets_run", &tube.run, tube.clearance, (gap, &middle, near.along[0]))?;
    Some(
        finding
            .word("other", wording::quoted(&other.run.run.name))
            .word("along_other", place_along(near.along[1]))
            .word("from_other", other.run.port_name(true)),
    )
}
