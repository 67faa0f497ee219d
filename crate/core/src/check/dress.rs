//! Does a dressed body keep its wall, and is there room for it?

use super::finding::GEOMETRY;
use super::round::down;
use super::wall::{SAME, USUAL_LEAST_WALL, held};
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::design::{Dress, Printer};
use crate::distance::Budget;

/// `dress_wall`: stop below the printer's least wall, care below the usual one. `dress_room` (care): the leads and the
/// blends leave no body.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let printer = &subject.design.process.printer;
    let of_run = |run: OneRun<'_>| {
        let dress = run.run.dress.as_ref()?;
        Some([wall(&run, dress, printer), room(&run, dress)])
    };
    subject.runs().filter_map(of_run).flatten().flatten().collect()
}

fn wall(run: &OneRun<'_>, dress: &Dress, printer: &Printer) -> Option<Finding> {
    let plain = run.run.wall();
    let thinnest = dress.thinnest(run.run.tube);
    // A plain tube as thin is a finding of its own.
    if thinnest >= plain - SAME {
        return None;
    }
    let (severity, limit, source) = held(thinnest, printer)?;
    let place = if dress.lobes > 0 && dress.depth > 0.0 { "/dress/depth" } else { "/dress" };
    let shallower = |limit: f64| {
        let depth = down(dress.depth - (limit - thinnest));
        (dress.lobes > 0 && depth > 0.0).then(|| vec![PatchStep::set(run.at("/dress/depth"), depth)])
    };
    let wider = |limit: f64| {
        let [first, last] = dress.diameters(run.run.tube.outer_diameter).map(|d| d + 2.0 * (limit - thinnest));
        vec![PatchStep::set(run.at("/dress/diameter"), first), PatchStep::set(run.at("/dress/end_diameter"), last)]
    };
    let usual = limit.max(USUAL_LEAST_WALL);
    let ways = [shallower(usual), shallower(limit), Some(wider(usual))];
    Some(
        run.finding("dress_wall", severity, run.at(place))
            .value(thinnest, "mm")
            .limit(limit, source)
            .ways(ways.into_iter().flatten()),
    )
}

fn room(run: &OneRun<'_>, dress: &Dress) -> Option<Finding> {
    let line = run.drawn.line.as_ref()?;
    let room = line.length - run.pose(true).straight - run.pose(false).straight;
    let need = 2.0 * dress.blend;
    if room > need {
        return None;
    }
    let blend = down(room / 4.0);
    let way = (blend >= 0.5).then(|| vec![PatchStep::set(run.at("/dress/blend"), blend)]);
    Some(
        run.finding("dress_room", Severity::Care, run.at("/dress/blend"))
            .value(room, "mm")
            .limit(need, GEOMETRY)
            .word("blend", words::number(dress.blend, "mm"))
            .ways(way),
    )
}
