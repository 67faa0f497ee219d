//! What is told about a design: the report's numbers and findings, and the scene that is drawn.

mod circuit;
mod coupon;
pub(crate) mod fix;
mod numbers;
mod pieces;
mod runs;
mod scene;
mod service;
mod told;

pub(crate) use numbers::{BoundsMm, degrees, point};
pub use scene::scene;

use serde::Serialize;

use crate::check::{Finding, Severity};
use crate::engine::Stages;
use circuit::LoopReport;
use coupon::FitReport;
use runs::{RunReport, Totals};
pub(crate) use told::FindingReport;

/// The report as JSON text, numbers rounded nowhere. The same design gives the same bytes on every machine.
pub fn report(stages: &Stages<'_>) -> String {
    let runs: Vec<RunReport> = (0..stages.design.runs.len()).map(|run| RunReport::of(stages, run)).collect();
    let totals = Totals::of(&runs, &stages.design.process);
    let findings = worst(stages.findings());
    let source = fix::Source::of(stages.text);
    let report = Report {
        name: &stages.design.name,
        r#loop: LoopReport::of(stages, totals.bore_mm3),
        totals,
        runs,
        fit: FitReport::of(stages),
        findings: findings
            .iter()
            .map(|finding| FindingReport::of(finding, finding.fix.as_ref().map(|steps| fix::on_text(steps, &source))))
            .collect(),
    };
    serde_json::to_string(&report).unwrap_or_default()
}

/// Most findings that are told; more help nobody, and a page would choke on them.
const MOST_FINDINGS: usize = 1_000;

/// The findings as they are; of too many the worst, in order, and how many more there are.
fn worst(mut findings: Vec<Finding>) -> Vec<Finding> {
    if findings.len() <= MOST_FINDINGS {
        return findings;
    }
    // The sort is stable: within a severity the checks' own order stays.
    findings.sort_by_key(|finding| finding.severity);
    let rest = findings.split_off(MOST_FINDINGS - 1);
    let severity = rest.first().map_or(Severity::Note, |finding| finding.severity);
    findings.push(Finding {
        code: "more_findings",
        severity,
        run: None,
        place: "/runs".into(),
        at: None,
        value: Some(rest.len() as f64),
        limit: None,
        unit: "",
        source: "bound of the report",
        words: vec![("count", rest.len().to_string())],
        ways: Vec::new(),
        fix: None,
    });
    findings
}

#[derive(Serialize)]
struct Report<'a> {
    name: &'a str,
    runs: Vec<RunReport<'a>>,
    totals: Totals,
    r#loop: LoopReport<'a>,
    fit: FitReport<'a>,
    findings: Vec<FindingReport>,
}
