//! Does the tube hold its pressure, and a fit that is not quite true?

use super::finding::PRACTICE;
use super::round::down;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::design::wording;
use crate::distance::Budget;
use crate::service::{Strength, allowed_side_load, side_load};

/// Share of the allowed stress above which a look is worth while; common practice, no source.
const MUCH: f64 = 0.7;

/// `strength` (stop): the pressure uses more than the allowed stress; (care) much of it. `side_load` (care): the material
/// is brittle; it names the tube that a crooked fit would load most.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let burst = subject.runs().filter_map(|run| pressed(subject, &run));
    burst.chain(brittle(subject)).collect()
}

fn pressed(subject: Subject<'_>, run: &OneRun<'_>) -> Option<Finding> {
    let strength = Strength::of(subject.design, run.run, run.drawn.line.as_ref()?)?;
    let severity = match strength.utilisation {
        used if used > 1.0 => Severity::Stop,
        used if used > MUCH => Severity::Care,
        _ => return None,
    };
    let safe = strength.allowed_pressure * if severity == Severity::Stop { 1.0 } else { MUCH };
    // Of Lame's formula the bore at which a pressure uses just all of a stress: k = stress / pressure.
    let outer = run.run.tube.outer_diameter;
    let bore = |share: f64| {
        let k = strength.allowed * share / (strength.pressure * 1e-3 * strength.bend);
        down(outer * ((k - 1.0) / (k + 1.0)).max(0.0).sqrt())
    };
    let way = |share: f64| {
        let bore = bore(share);
        (bore > 0.0 && bore < run.run.tube.bore).then(|| vec![PatchStep::set(run.at("/tube/bore"), bore)])
    };
    Some(
        run.finding("strength", severity, run.at("/tube/bore"))
            .value(strength.pressure, "kPa")
            .limit(safe, "Lamé's thick cylinder, the material's strength and the design's own factors")
            .word("pressure", words::number(strength.pressure, "kPa"))
            .word("used", words::number(strength.utilisation * 100.0, "%"))
            .ways(way(MUCH))
            .ways(way(1.0)),
    )
}

fn brittle(subject: Subject<'_>) -> Option<Finding> {
    let process = &subject.design.process;
    if !process.material.is_brittle() {
        return None;
    }
    let allowed = allowed_side_load(process)?;
    let loaded = |run: &OneRun<'_>| {
        let apart = (run.pose(true).mouth - run.pose(false).mouth).norm();
        let off = run.port(true).measured_to + run.port(false).measured_to;
        Some((side_load(process, run.run, apart, off, libm::atan2(off, apart))?, off))
    };
    let all = subject.runs().filter_map(|run| Some((loaded(&run)?, run)));
    let ((stress, off), run) = all.max_by(|a, b| a.0.0.total_cmp(&b.0.0))?;
    Some(
        Finding::new("side_load", Severity::Care, "/process/material")
            .at(&run.pose(true).mouth)
            .value(stress, "MPa")
            .limit(allowed, PRACTICE)
            .word("material", wording::quoted(&process.material.name))
            .word("worst", wording::quoted(&run.run.name))
            .word("off", words::number(off, "mm")),
    )
}
