//! What is told about a design: the report's numbers and findings, and the scene that is drawn.

mod fix;
mod numbers;
mod runs;
mod scene;
mod told;

pub use scene::scene;

use serde::Serialize;

use crate::engine::Stages;
use runs::{RunReport, Totals};
use told::FindingReport;

/// The report as JSON text, numbers rounded nowhere. The same design gives the same bytes on every machine.
pub fn report(stages: &Stages<'_>) -> String {
    let runs: Vec<RunReport> = (0..stages.design.runs.len()).map(|run| RunReport::of(stages, run)).collect();
    let findings = stages.findings();
    let source = fix::Source::of(stages.text);
    let report = Report {
        name: &stages.design.name,
        totals: Totals::of(&runs),
        runs,
        findings: findings.iter().map(|finding| FindingReport::of(finding, fix::told(finding, &source))).collect(),
    };
    serde_json::to_string(&report).unwrap_or_default()
}

#[derive(Serialize)]
struct Report<'a> {
    name: &'a str,
    runs: Vec<RunReport<'a>>,
    totals: Totals,
    findings: Vec<FindingReport>,
}
