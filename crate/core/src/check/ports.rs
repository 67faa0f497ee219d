//! Does every port carry one tube, and every fitting a port?

use super::finding::GEOMETRY;
use super::{Finding, Severity, Subject};
use crate::design::wording;
use crate::distance::Budget;
use crate::layout::Vec3;

/// `port_unused` (note), `port_used_twice` (stop), `fitting_unused` (note).
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let mut ends: Vec<Vec<(usize, &'static str)>> = vec![Vec::new(); subject.design.ports.len()];
    for (index, placed) in subject.layout.runs.iter().enumerate() {
        ends[placed.from].push((index, "from"));
        ends[placed.to].push((index, "to"));
    }
    let twice = ends
        .iter()
        .enumerate()
        .filter(|(_, ends)| ends.len() > 1)
        .flat_map(|(port, ends)| ends[1..].iter().map(move |end| used_twice(subject, port, ends[0].0, *end)));
    let unused =
        ends.iter().enumerate().filter(|(_, ends)| ends.is_empty()).map(|(port, _)| port_unused(subject, port));
    let fittings = &subject.design.fittings;
    let mut carried = vec![false; fittings.len()];
    subject.layout.ports.iter().for_each(|port| carried[port.fitting] = true);
    let idle = carried.iter().enumerate().filter(|(_, carried)| !**carried).map(|(index, _)| {
        Finding::new("fitting_unused", Severity::Note, format!("/fittings/{index}"))
            .word("fitting", wording::quoted(&fittings[index].name))
    });
    twice.chain(unused).chain(idle).collect()
}

fn used_twice(subject: Subject<'_>, port: usize, first: usize, (run, end): (usize, &str)) -> Finding {
    let name = |run: usize| wording::quoted(&subject.design.runs[run].name);
    Finding::new("port_used_twice", Severity::Stop, format!("/runs/{run}/{end}"))
        .at(&Vec3::from(subject.design.ports[port].at))
        .limit(1.0, GEOMETRY)
        .word("port", wording::quoted(&subject.design.ports[port].name))
        .word("runs", format!("{} and {}", name(first), name(run)))
}

fn port_unused(subject: Subject<'_>, port: usize) -> Finding {
    Finding::new("port_unused", Severity::Note, format!("/ports/{port}"))
        .at(&Vec3::from(subject.design.ports[port].at))
        .word("port", wording::quoted(&subject.design.ports[port].name))
}
