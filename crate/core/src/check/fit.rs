//! How does this printer print, and do the readings that say so hold?

use super::finding::{GEOMETRY, PRACTICE};
use super::{Finding, OneRun, Severity, Subject, words};
use crate::coupon::{Compensation, HeldBack, correction};
use crate::design::{Fit, wording};
use crate::distance::Budget;
use crate::tube::LEAST_TIP_WALL;

const PLACE: &str = "/process/fit";

/// `fit_reading` (care): a reading is off by more than a print is. `fit_exchanged` (care): outer diameters read no wider than
/// bores. `fit_other` (care): the coupon is of another printer or material. `fit_wall` (stop): the correction leaves no wall.
/// `fit_unknown` (note): rings are to seal on tubes of a printer that was never measured.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let process = &subject.design.process;
    let slips = process.fit.iter().flat_map(slips);
    let state = match correction(process) {
        Some(Ok(compensation)) => walls(subject, &compensation),
        Some(Err(HeldBack::Other)) => process.fit.iter().map(|fit| other(subject, fit)).collect(),
        Some(Err(HeldBack::Doubtful | HeldBack::Nothing)) | None => Vec::new(),
    };
    let read = process.fit.iter().any(|fit| fit.outer.iter().any(|reading| reading.measured.is_some()));
    let unknown = (!read).then(|| unknown(subject)).flatten();
    slips.chain(state).chain(unknown).collect()
}

fn slips(fit: &Fit) -> Vec<Finding> {
    let slips = fit.slips().into_iter().map(|slip| {
        Finding::new("fit_reading", Severity::Care, format!("{PLACE}{}", slip.path))
            .value(slip.measured, "mm")
            .limit(slip.most, PRACTICE)
            .word("nominal", words::number(slip.nominal, "mm"))
    });
    let exchanged = fit.exchanged().map(|[widest, narrowest]| {
        Finding::new("fit_exchanged", Severity::Care, format!("{PLACE}/bore"))
            .value(widest, "mm")
            .limit(narrowest, GEOMETRY)
    });
    slips.chain(exchanged).collect()
}

fn other(subject: Subject<'_>, fit: &Fit) -> Finding {
    let process = &subject.design.process;
    let key = if fit.material == process.material.name { "printer" } else { "material" };
    Finding::new("fit_other", Severity::Care, format!("{PLACE}/{key}"))
        .source("the coupon's own readings")
        .word("was", format!("{} on {}", wording::quoted(&fit.material), wording::quoted(&fit.printer)))
        .word(
            "is",
            format!("{} on {}", wording::quoted(&process.material.name), wording::quoted(&process.printer.name)),
        )
}

/// Runs that the correction leaves without a wall.
fn walls(subject: Subject<'_>, compensation: &Compensation) -> Vec<Finding> {
    let thin = |run: &OneRun<'_>| {
        let profile = run.profile(run.drawn.line.as_ref()?.length);
        // Where there is none without it, that is a finding of its own.
        if profile.tip_wall().min(profile.least_wall().wall) < LEAST_TIP_WALL {
            return None;
        }
        compensation.applied(run.run, &profile).err()
    };
    let found = |run: OneRun<'_>| {
        let wall = thin(&run)?;
        Some(
            run.finding("fit_wall", Severity::Stop, run.at("/tube/bore"))
                .value(wall, "mm")
                .limit(LEAST_TIP_WALL, GEOMETRY),
        )
    };
    subject.runs().filter_map(found).collect()
}

/// The first end whose ring is stated: one note is enough.
fn unknown(subject: Subject<'_>) -> Option<Finding> {
    let sealed = |run: &OneRun<'_>| {
        let fits = |at_start| {
            run.fitting(at_start).is_some_and(|fitting| {
                fitting.seal.is_some() && (fitting.tube_diameter - run.run.tube.outer_diameter).abs() < 1e-9
            })
        };
        fits(true) || fits(false)
    };
    subject.runs().any(|run| sealed(&run)).then(|| {
        Finding::new("fit_unknown", Severity::Note, PLACE)
            .source(PRACTICE)
            .word("printer", wording::quoted(&subject.design.process.printer.name))
    })
}
