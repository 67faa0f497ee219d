//! Does the pump drive the stated flow round the loop?

use super::{Finding, Severity, Subject, words};
use crate::distance::Budget;
use crate::flow::NoOperatingPoint;
use crate::service::Circuit;

const SOURCE: &str = "where the pump's stated curve meets the stated parts and the tubes";

/// `pump_weak` (care): pump and loop agree on less than the stated flow. `pump_unmet` (care): they never agree, since the
/// curve begins or ends on the wrong side of what the loop costs.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    told(subject).into_iter().collect()
}

fn told(subject: Subject<'_>) -> Option<Finding> {
    let (design, stated) = (subject.design, subject.design.working.flow_l_per_h);
    if design.runs.is_empty() {
        return None;
    }
    let circuit = Circuit::of(design, subject.lines).ok().flatten()?;
    match circuit.met() {
        Ok(point) if point.flow < stated => {
            let [low, high] = circuit.agreed().map_or([point.flow; 2], |agreed| agreed.flows);
            Some(
                Finding::new("pump_weak", Severity::Care, "/loop/flow_l_per_h")
                    .value(point.flow, "L/h")
                    .limit(stated, SOURCE)
                    .word("low", words::number(low, "L/h"))
                    .word("high", words::number(high, "L/h")),
            )
        }
        Ok(_) | Err(NoOperatingPoint::Loss(_)) => None,
        Err(NoOperatingPoint::TooWeak { flow, head, loss }) => Some(unmet(flow, head, loss).word("end", "begins")),
        Err(NoOperatingPoint::CurveEnds { flow, head, loss }) => Some(unmet(flow, head, loss).word("end", "ends")),
    }
}

fn unmet(flow: f64, head: f64, loss: f64) -> Finding {
    Finding::new("pump_unmet", Severity::Care, "/loop/pump/points")
        .value(head * 1e-3, "kPa")
        .limit(loss * 1e-3, SOURCE)
        .word("flow", words::number(flow, "L/h"))
}
