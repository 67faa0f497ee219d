//! Does the tube have the diameter that its fittings take?

use super::finding::PRACTICE;
use super::round::down;
use super::wall::USUAL_LEAST_WALL;
use super::{Finding, OneRun, PatchStep, Severity, Subject};
use crate::design::{Fitting, wording};
use crate::distance::Budget;

/// Beyond this the ring loses more squeeze than its tolerances leave, or the tube does not go in: the tolerance that
/// sellers of rigid tube aim at, mm. 0.1 mm costs 2 to 2.8 points of a 20 % squeeze. Common practice, no source.
const TOO_FAR: f64 = 0.1;
/// Beyond this it shows on calipers and takes half of that tolerance, mm: about one pixel of a resin printer.
const SHOWS: f64 = 0.05;

/// `tube_diameter`: one finding for each different fitting of a run.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().flat_map(|run| of_run(&run)).collect()
}

fn of_run(run: &OneRun<'_>) -> Vec<Finding> {
    let start = run.fitting(true);
    let end = run.fitting(false).filter(|end| start.is_none_or(|start| start.name != end.name));
    [(start, true), (end, false)].into_iter().filter_map(|(fitting, at_start)| judge(run, fitting?, at_start)).collect()
}

fn judge(run: &OneRun<'_>, fitting: &Fitting, at_start: bool) -> Option<Finding> {
    let tube = &run.run.tube;
    let off = (tube.outer_diameter - fitting.tube_diameter).abs();
    // A billionth of a millimetre is what decimal fractions leave, not a difference.
    let severity = if off > TOO_FAR + 1e-9 {
        Severity::Stop
    } else if off > SHOWS + 1e-9 {
        Severity::Care
    } else {
        return None;
    };
    let diameter = fitting.tube_diameter;
    // A bend radius that was left out would follow the diameter; what is told here is to change nothing else.
    let radius = run.run.bend_radius;
    let kept_radius = (radius == 2.0 * tube.outer_diameter).then(|| PatchStep::set(run.at("/bend_radius"), radius));
    let outer = || {
        let diameter = PatchStep::set(run.at("/tube/outer_diameter"), diameter);
        std::iter::once(diameter).chain(kept_radius.clone())
    };
    let kept_bore = (diameter - tube.bore) / 2.0 >= USUAL_LEAST_WALL.min(run.run.wall());
    let bore = down(diameter - 2.0 * run.run.wall());
    let kept_wall = bore > 0.0;
    let ways = kept_bore
        .then(|| outer().collect::<Vec<_>>())
        .into_iter()
        .chain(kept_wall.then(|| outer().chain([PatchStep::set(run.at("/tube/bore"), bore)]).collect()));
    let finding = run
        .finding("tube_diameter", severity, run.at("/tube/outer_diameter"))
        .at(&run.pose(at_start).mouth)
        .value(tube.outer_diameter, "mm")
        .limit(diameter, PRACTICE)
        .word("fitting", wording::quoted(&fitting.name))
        .word("port", run.port_name(at_start))
        .ways(ways);
    Some(finding)
}
