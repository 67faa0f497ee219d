//! A finding: one thing found about a design, as a code and values; its words come from the table in `words.rs`.

/// How bad a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// The run cannot be made, or must not be used.
    Stop,
    /// It can be made; look before you pay for it.
    Care,
    /// Good to know.
    Note,
}

/// One step of a JSON Patch (RFC 6902).
#[derive(Debug, Clone, PartialEq)]
pub struct PatchStep {
    /// `add`, `remove` or `replace`.
    pub op: &'static str,
    /// JSON Pointer into the design.
    pub path: String,
    /// The new value; none for `remove`.
    pub value: Option<serde_json::Value>,
}

/// One thing found about a design.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// What kind of thing; a row of the table of words.
    pub code: &'static str,
    /// How bad.
    pub severity: Severity,
    /// Name of the run it is about, if one.
    pub run: Option<String>,
    /// JSON Pointer to the part of the design it is about.
    pub place: String,
    /// Point in the datum to show it at, if one, mm.
    pub at: Option<[f64; 3]>,
    /// The value found.
    pub value: Option<f64>,
    /// The limit it is held against.
    pub limit: Option<f64>,
    /// Unit of both, as shown.
    pub unit: &'static str,
    /// Where the limit comes from: a standard, "geometry", or "common practice, no source".
    pub source: &'static str,
    /// Further words for the message's placeholders: names and numbers.
    pub words: Vec<(&'static str, String)>,
    /// Steps that mend it, if there are some; applied to the design they leave it parseable.
    pub fix: Option<Vec<PatchStep>>,
}
