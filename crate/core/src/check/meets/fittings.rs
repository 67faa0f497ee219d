//! Does a tube come into the room that a fitting's collar needs?

use super::keep_outs::nearest_part;
use super::{Tube, search_width, too_close};
use crate::check::{Finding, Subject};
use crate::design::wording;
use crate::distance::{Budget, Solid, box_gap};

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
    let mut room = search_width(tube.clearance);
    let mut nearest = None;
    for collar in collars {
        if !budget.spend(1) || box_gap(&tube.bounds, &collar.bounds()) >= room + tube.widest() {
            continue;
        }
        if let Some(near) = nearest_part(tube, on, collar, room, budget) {
            room = near.0;
            nearest = Some(near);
        }
    }
    let (gap, skin, along) = nearest?;
    too_close("meets_fitting", &tube.run, tube.clearance, (gap, &skin, along))
}
