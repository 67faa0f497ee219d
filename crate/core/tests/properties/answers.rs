//! What the property tests read off the engine's answers.

use serde_json::Value;
use tubewright_core::engine;
use tubewright_core::strategies::Generated;

/// Names a generated design so that a failure can be made again.
pub fn told(design: &Generated) -> String {
    format!("strategies::one({:?}, {})", design.kind, design.seed)
}

/// The report of a design, as JSON.
pub fn report(text: &str, told: &str) -> Value {
    let report = engine::report(text).unwrap_or_else(|refusal| panic!("{told}: report refused: {refusal}"));
    serde_json::from_str(&report).unwrap_or_else(|error| panic!("{told}: report is no JSON: {error}"))
}

/// The reported runs.
pub fn runs(report: &Value) -> &[Value] {
    report["runs"].as_array().map_or(&[], Vec::as_slice)
}

/// The findings.
pub fn findings(report: &Value) -> &[Value] {
    report["findings"].as_array().map_or(&[], Vec::as_slice)
}

/// A number of a run.
pub fn number(run: &Value, key: &str) -> f64 {
    run[key].as_f64().unwrap_or_else(|| panic!("{key} of {run}"))
}

/// Three numbers.
pub fn point(value: &Value) -> [f64; 3] {
    [0, 1, 2].map(|axis| value[axis].as_f64().unwrap_or_else(|| panic!("a point: {value}")))
}

/// The bend table: straight, rotation, angle, radius of each row.
pub fn table(run: &Value) -> Vec<[f64; 4]> {
    let rows = run["bend_table"].as_array().map_or(&[][..], Vec::as_slice);
    rows.iter()
        .map(|row| ["straight_mm", "rotation_deg", "angle_deg", "radius_mm"].map(|key| number(row, key)))
        .collect()
}
