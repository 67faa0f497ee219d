//! Does the tube choke the flow?

use super::finding::PRACTICE;
use super::{Finding, OneRun, Severity, Subject, words};
use crate::distance::Budget;
use crate::service::{Flow, coolant, course, usual_share};

/// `flow` (care): at the stated flow a tube costs more than a tenth of a usual pump's head. `flow_none` (care):
/// no flow is stated. `flow_unknown` (note): nothing can be told of a coolant, or of one at such a temperature.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    if subject.design.runs.is_empty() {
        return Vec::new();
    }
    if subject.design.working.flow_l_per_h == 0.0 {
        return vec![Finding::new("flow_none", Severity::Care, "/loop/flow_l_per_h").value(0.0, "L/h")];
    }
    match coolant(&subject.design.working) {
        Err(fault) => {
            vec![Finding::new("flow_unknown", Severity::Note, "/loop/working_c").word("fault", fault.to_string())]
        }
        Ok(None) => vec![Finding::new("flow_unknown", Severity::Note, "/loop/coolant")],
        Ok(Some(_)) => subject.runs().filter_map(|run| choked(subject, &run)).collect(),
    }
}

fn choked(subject: Subject<'_>, run: &OneRun<'_>) -> Option<Finding> {
    let flow =
        Flow::of(subject.design, run.run, &course(subject.design, run.run, run.drawn.line.as_ref()?)).ok().flatten()?;
    let (loss, most) = (flow.loss.total, usual_share(&flow.fluid));
    (loss.nominal > most).then(|| {
        let finding = run
            .finding("flow", Severity::Care, run.at("/tube/bore"))
            .value(loss.nominal * 1e-3, "kPa")
            .limit(most * 1e-3, PRACTICE)
            .word("velocity", words::number(flow.loss.velocity, "m/s"))
            .word("flow", words::number(subject.design.working.flow_l_per_h, "L/h"));
        let band = [loss.low, loss.high].map(|pressure| words::number(pressure * 1e-3, "kPa"));
        if loss.trusted { finding } else { finding.word("band", band.join(" to ")) }
    })
}
