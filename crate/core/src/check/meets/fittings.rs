//! Does a tube come into the room that a fitting's collar needs?

use super::{Tube, search_width, too_close};
use crate::check::{Finding, Subject};
use crate::design::wording;
use crate::distance::{Budget, Solid, box_gap, to_solid};

pub(super) fn findings(subject: Subject<'_>, tubes: &[Tube<'_>], budget: &mut Budget) -> Vec<Finding> {
    let collars: Vec<Vec<Solid>> = subject
        .layout
        .ports
        .iter()
        .map(|port| port.collars.iter().map(|c| Solid::cylinder(&c.from, &c.to, c.radius)).collect())
        .collect();
    let mut found = Vec::new();
    for tube in tubes {
        for (port, collars) in collars.iter().enumerate() {
            let name = || wording::quoted(&subject.design.ports[port].name);
            found.extend(of_port(tube, port, collars, budget).map(|finding| finding.word("port", name())));
        }
    }
    found
}

fn of_port(tube: &Tube<'_>, port: usize, collars: &[Solid], budget: &mut Budget) -> Option<Finding> {
    let on = tube.clear_of_ends(tube.run.placed.from == port, tube.run.placed.to == port);
    let mut width = tube.radius + search_width(tube.clearance);
    let mut nearest = None;
    for collar in collars {
        if !budget.spend(1) || box_gap(&tube.bounds, &collar.bounds()) >= width {
            continue;
        }
        if let Some(near) = to_solid(tube.body(), on, collar, width, budget) {
            width = near.distance;
            nearest = Some(near);
        }
    }
    let near = nearest?;
    let skin = near.point - near.outward * tube.radius;
    too_close("meets_fitting", &tube.run, tube.clearance, (near.distance - tube.radius, &skin, near.along))
}
