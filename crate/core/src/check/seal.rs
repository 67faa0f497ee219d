//! Does the fitting's ring seal on the tube?

use super::finding::PRACTICE;
use super::{Finding, OneRun, Severity, Subject, words};
use crate::design::wording;
use crate::distance::Budget;
use crate::service::{SealAtEnd, SealFault};

/// Squeeze that a ring is accepted with over what its sizes may be off; common practice, no source.
const GOOD: [f64; 2] = [0.12, 0.30];
/// Squeeze beyond which a ring does not seal, or is torn: the widest that design guides give.
const POSSIBLE: [f64; 2] = [0.10, 0.40];

/// `seal` (stop): the tube has no room in the gland, or the ring's squeeze as stated is beyond all guides; (care) it may
/// leave the accepted range by what tube, ring and gland are likely to be off.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    subject.runs().flat_map(|run| [true, false].map(|at_start| ring(subject, &run, at_start))).flatten().collect()
}

fn ring(subject: Subject<'_>, run: &OneRun<'_>, at_start: bool) -> Option<Finding> {
    let fitting = run.fitting(at_start)?;
    // A tube of another size than the fitting's is a finding of its own, and its squeeze would say it twice.
    if (run.run.tube.outer_diameter - fitting.tube_diameter).abs() > 1e-9 {
        return None;
    }
    let place = subject.design.fittings.iter().position(|other| other.name == fitting.name)?;
    let named = |severity, rest: &str| {
        run.finding("seal", severity, format!("/fittings/{place}/seal{rest}"))
            .at(&run.pose(at_start).mouth)
            .word("fitting", wording::quoted(&fitting.name))
            .word("port", run.port_name(at_start))
    };
    let end = match SealAtEnd::of(run.run, fitting, &subject.design.process.printer) {
        Ok(end) => end,
        Err(SealFault::NoRoom) => {
            let gland = fitting.seal.as_ref()?.gland_diameter;
            let tube = words::number(run.run.tube.outer_diameter, "mm");
            return Some(named(Severity::Stop, "/gland_diameter").value(gland, "mm").word("tube", tube));
        }
        Err(SealFault::NotStated | SealFault::Size(_)) => return None,
    };
    let (nominal, [low, high]) = (end.squeeze.nominal, end.squeeze.likely);
    let (severity, range) = if nominal < POSSIBLE[0] || nominal > POSSIBLE[1] {
        (Severity::Stop, POSSIBLE)
    } else if low < GOOD[0] || high > GOOD[1] {
        (Severity::Care, GOOD)
    } else {
        return None;
    };
    let percent = |share: f64| words::number(share * 100.0, "%");
    let loose = nominal - range[0] < range[1] - nominal;
    let limit = if loose { range[0] } else { range[1] };
    // No fix is offered: sizes of a fitting are measured, not chosen.
    let finding = named(severity, "")
        .value(nominal * 100.0, "%")
        .limit(limit * 100.0, PRACTICE)
        .word("low", percent(low))
        .word("high", percent(high))
        .word("best", words::number(end.best_outer, "mm"));
    Some(finding)
}
