//! A finding: one thing found about a design, as a code and values; its words come from the table in `words.rs`.

use crate::layout::Vec3;
use serde_json::Value;

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
    pub value: Option<Value>,
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
    /// Ways that should mend it, the best first. A check proposes them; [`super::findings`] keeps the first that holds
    /// as `fix` and leaves this empty.
    pub ways: Vec<Vec<PatchStep>>,
}

impl PatchStep {
    /// Sets the member of an object, which may be there or not.
    pub fn set(path: impl Into<String>, value: impl Into<Value>) -> Self {
        Self { op: "add", path: path.into(), value: Some(value.into()) }
    }

    /// Replaces an item of a list.
    pub fn replace(path: impl Into<String>, value: impl Into<Value>) -> Self {
        Self { op: "replace", path: path.into(), value: Some(value.into()) }
    }

    /// Takes an item out of a list.
    pub fn remove(path: impl Into<String>) -> Self {
        Self { op: "remove", path: path.into(), value: None }
    }
}

/// Limits that follow from the geometry itself.
pub(super) const GEOMETRY: &str = "geometry";
/// Limits that the trade keeps without a citable source.
pub(super) const PRACTICE: &str = "common practice, no source";
/// Limits that the builder stated.
pub(super) const STATED: &str = "the design itself";

impl Finding {
    pub(super) fn new(code: &'static str, severity: Severity, place: impl Into<String>) -> Self {
        Self {
            code,
            severity,
            run: None,
            place: place.into(),
            at: None,
            value: None,
            limit: None,
            unit: "",
            source: GEOMETRY,
            words: Vec::new(),
            fix: None,
            ways: Vec::new(),
        }
    }

    pub(super) fn at(mut self, point: &Vec3) -> Self {
        self.at = Some([point.x, point.y, point.z]);
        self
    }

    pub(super) fn value(mut self, value: f64, unit: &'static str) -> Self {
        (self.value, self.unit) = (Some(value), unit);
        self
    }

    pub(super) fn limit(mut self, limit: f64, source: &'static str) -> Self {
        (self.limit, self.source) = (Some(limit), source);
        self
    }

    pub(super) fn source(mut self, source: &'static str) -> Self {
        self.source = source;
        self
    }

    pub(super) fn word(mut self, name: &'static str, word: impl Into<String>) -> Self {
        self.words.push((name, word.into()));
        self
    }

    pub(super) fn ways(mut self, ways: impl IntoIterator<Item = Vec<PatchStep>>) -> Self {
        self.ways.extend(ways);
        self
    }
}
