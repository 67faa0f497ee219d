//! Does a tube come back to itself?

use super::{Tube, place_along, search_width, too_close};
use crate::check::Finding;
use crate::distance::{Budget, within_itself};

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
    let near = within_itself(tube.body(), [from, to], apart, width, budget)?;
    let middle = (near.points[0] + near.points[1]) / 2.0;
    let gap = near.distance - 2.0 * tube.radius;
    let finding = too_close("meets_itself", &tube.run, tube.clearance, (gap, &middle, near.along[0]))?;
    Some(finding.word("further", place_along(near.along[1])))
}
