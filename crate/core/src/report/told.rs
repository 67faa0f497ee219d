//! A finding as the report tells it.

use serde::Serialize;

use super::fix::Step;
use super::numbers::unsigned_zero;
use crate::check::Finding;
use crate::check::words::{message, severity_name};

/// The contract's keys of a finding, and the point to show it at.
#[derive(Serialize)]
pub(crate) struct FindingReport {
    code: &'static str,
    severity: &'static str,
    run: Option<String>,
    #[serde(rename = "where")]
    place: String,
    at_mm: Option<[f64; 3]>,
    message: String,
    value: Option<f64>,
    limit: Option<f64>,
    unit: &'static str,
    source: &'static str,
    fix: Option<Vec<Step>>,
}

impl FindingReport {
    pub(crate) fn of(finding: &Finding, fix: Option<Vec<Step>>) -> Self {
        Self {
            code: finding.code,
            severity: severity_name(finding.severity),
            run: finding.run.clone(),
            place: finding.place.clone(),
            at_mm: finding.at.map(|at| at.map(unsigned_zero)),
            message: message(finding),
            value: finding.value.map(unsigned_zero),
            limit: finding.limit.map(unsigned_zero),
            unit: finding.unit,
            source: finding.source,
            fix,
        }
    }
}
