//! Does a tube come close to another?

use super::{Tube, place_along, search_width, too_close};
use crate::check::Finding;
use crate::design::wording;
use crate::distance::{Budget, between, box_gap};

pub(super) fn findings(tubes: &[Tube<'_>], budget: &mut Budget) -> Vec<Finding> {
    let mut found = Vec::new();
    for (index, tube) in tubes.iter().enumerate() {
        found.extend(tubes[index + 1..].iter().filter_map(|other| of_pair(tube, other, budget)));
    }
    found
}

fn of_pair(tube: &Tube<'_>, other: &Tube<'_>, budget: &mut Budget) -> Option<Finding> {
    let width = tube.radius + other.radius + search_width(tube.clearance);
    if !budget.spend(1) || box_gap(&tube.bounds, &other.bounds) >= width {
        return None;
    }
    let ports = |tube: &Tube<'_>| [tube.run.placed.from, tube.run.placed.to];
    if ports(tube).iter().any(|port| ports(other).contains(port)) {
        // One inside the other from the port on, for as long as both go straight: told as the port used twice.
        return None;
    }
    let near = between((tube.body(), tube.outside()), (other.body(), other.outside()), width, budget)?;
    let gap = near.distance - tube.radius - other.radius;
    let middle = (near.points[0] + near.points[1]) / 2.0;
    let finding = too_close("meets_run", &tube.run, tube.clearance, (gap, &middle, near.along[0]))?;
    Some(
        finding
            .word("other", wording::quoted(&other.run.run.name))
            .word("along_other", place_along(near.along[1]))
            .word("from_other", other.run.port_name(true)),
    )
}
