//! Is the wall thick enough, along the tube and at its tips?

use super::finding::PRACTICE;
use super::round::down;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::design::{Printer, wording};
use crate::distance::Budget;
use crate::tube::LEAST_TIP_WALL;

/// Least wall of printed tube under pressure, mm; common practice, no source.
pub(super) const USUAL_LEAST_WALL: f64 = 1.5;
/// Wall to leave at the tip, mm; common practice, no source.
const USUAL_TIP: f64 = 1.0;
/// A chamfer shorter than this no longer leads the end past a ring, so none is proposed, mm; from judgement.
const SHORTEST_CHAMFER: f64 = 0.5;
/// What decimal fractions leave is no difference, mm.
pub(super) const SAME: f64 = 1e-9;

/// `thin_wall`: stop below the printer's least wall, care below 1.5 mm. `thin_tip`: stop where nothing is left to
/// print, care below 1 mm.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let printer = &subject.design.process.printer;
    subject.runs().flat_map(|run| [thin_wall(&run, printer), thin_tip(&run)]).flatten().collect()
}

/// How bad a wall is, the limit that it misses, mm, and where that comes from; none where it is thick enough.
pub(super) fn held(wall: f64, printer: &Printer) -> Option<(Severity, f64, &'static str)> {
    if wall < printer.least_wall - SAME {
        Some((Severity::Stop, printer.least_wall, "the printer's least wall, as the design states it"))
    } else if wall < USUAL_LEAST_WALL - SAME {
        Some((Severity::Care, USUAL_LEAST_WALL, PRACTICE))
    } else {
        None
    }
}

fn thin_wall(run: &OneRun<'_>, printer: &Printer) -> Option<Finding> {
    let wall = run.run.wall();
    let (severity, limit, source) = held(wall, printer)?;
    let what = if severity == Severity::Stop {
        format!("the printer {}", wording::quoted(&printer.name))
    } else {
        "a printed tube under pressure".to_owned()
    };
    let bore = |wall: f64| down(run.run.tube.outer_diameter - 2.0 * wall);
    let way = |wall: f64| {
        let bore = bore(wall);
        (wall >= limit && bore > 0.0).then(|| vec![PatchStep::set(run.at("/tube/bore"), bore)])
    };
    let finding = run
        .finding("thin_wall", severity, run.at("/tube/bore"))
        .value(wall, "mm")
        .limit(limit, source)
        .word("printer", what)
        .ways(way(USUAL_LEAST_WALL))
        .ways(way(limit));
    Some(if bore(limit) > 0.0 { finding.word("bore", words::at_most(bore(limit), "mm")) } else { finding })
}

fn thin_tip(run: &OneRun<'_>) -> Option<Finding> {
    let length = run.drawn.line.as_ref().map_or(f64::INFINITY, |line| line.length);
    let tip = run.profile(length).tip_wall();
    let ends = &run.run.ends;
    if ends.chamfer_length == 0.0 && ends.edge_break == 0.0 {
        // Then the wall alone is thin, which is a finding of its own.
        return None;
    }
    let (severity, limit, source) = if tip < LEAST_TIP_WALL {
        (Severity::Stop, LEAST_TIP_WALL, "least that can be meshed and printed; from judgement")
    } else if tip < USUAL_TIP - SAME {
        (Severity::Care, USUAL_TIP, PRACTICE)
    } else {
        return None;
    };
    let slope = libm::tan(ends.chamfer_deg.to_radians());
    let chamfer = |tip: f64, edge_break: f64| down((run.run.wall() - edge_break - tip) / slope);
    let way = |tip: f64, edge_break: f64| {
        let length = chamfer(tip, edge_break);
        let fits = length >= SHORTEST_CHAMFER && length < ends.chamfer_length;
        let shorter = PatchStep::set(run.at("/ends/chamfer_length"), length);
        let sharper = (edge_break != ends.edge_break).then(|| PatchStep::set(run.at("/ends/edge_break"), edge_break));
        fits.then(|| std::iter::once(shorter).chain(sharper).collect::<Vec<_>>())
    };
    let finding = run
        .finding("thin_tip", severity, run.at("/ends/chamfer_length"))
        .at(&run.pose(true).end)
        .value(tip, "mm")
        .limit(limit, source)
        .ways(way(USUAL_TIP, ends.edge_break))
        .ways(way(limit, ends.edge_break))
        .ways((severity == Severity::Stop).then(|| way(limit, 0.0)).flatten());
    let finding = if tip < 0.0 { finding.word("missing", words::number(-tip, "mm")) } else { finding };
    let longest = chamfer(limit, ends.edge_break);
    Some(if longest > 0.0 { finding.word("chamfer", words::at_most(longest, "mm")) } else { finding })
}
