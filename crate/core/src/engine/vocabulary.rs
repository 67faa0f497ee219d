//! The words and ranges that the form is made of: one JSON text, from the table of quantities and that of findings.

use serde::{Serialize, Serializer};
use serde_json::Value;

use super::files::templates;
use crate::cautions::{CAUTIONS, FIRST_FILL};
use crate::check::Severity;
use crate::check::words::{all_words, severity_meaning, severity_name};
use crate::design::LONGEST_TEXT;
use crate::origin::{Origin, origins};
use crate::quantity::{self as q, Kind, Quantity, unit_words};

/// Labels, units, hints, ranges and defaults of every quantity by its key; titles and meanings of findings by their
/// code; where each result comes from; meanings of the severities; bounds of a design; what a builder must know before
/// printing and filling; and the order of a first fill; and what files say, which another language has rows for.
pub fn vocabulary() -> String {
    let vocabulary = Vocabulary {
        quantities: q::quantities().map(|quantity| (quantity.key, Row::of(quantity))).collect(),
        findings: all_words()
            .map(|words| (words.code, Meaning { title: words.title, meaning: words.meaning, messages: words.messages }))
            .collect(),
        results: origins().map(Source::of).collect(),
        severities: [Severity::Stop, Severity::Care, Severity::Note]
            .map(|severity| (severity_name(severity), severity_meaning(severity)))
            .to_vec(),
        bounds: Bounds {
            ports: q::MOST_PORTS,
            fittings: q::MOST_PORTS,
            keep_outs: q::MOST_PORTS,
            runs: q::MOST_RUNS,
            stations: q::MOST_STATIONS,
            tube_mm: q::MOST_TUBE,
            coordinate_mm: q::FURTHEST,
            text_bytes: LONGEST_TEXT,
            deviation_mm: [q::LEAST_DEVIATION, q::MOST_DEVIATION],
            usual_deviation_mm: q::USUAL_DEVIATION,
        },
        cautions: CAUTIONS,
        first_fill: FIRST_FILL,
        files: templates(),
    };
    serde_json::to_string(&vocabulary).unwrap_or_default()
}

#[derive(Serialize)]
struct Vocabulary {
    #[serde(serialize_with = "in_order")]
    quantities: Vec<(&'static str, Row)>,
    #[serde(serialize_with = "in_order")]
    findings: Vec<(&'static str, Meaning)>,
    results: Vec<Source>,
    #[serde(serialize_with = "in_order")]
    severities: Vec<(&'static str, &'static str)>,
    bounds: Bounds,
    cautions: &'static [&'static str],
    /// Each step, and what to mind at it, which may be empty.
    first_fill: &'static [[&'static str; 2]],
    /// Templates of what files say to people, beside those of findings.
    files: Vec<&'static str>,
}

/// A result and where it comes from.
#[derive(Serialize)]
struct Source {
    path: &'static str,
    label: &'static str,
    unit: &'static str,
    formula: &'static str,
    source: &'static str,
    range: &'static str,
    inputs: &'static [&'static str],
}

impl Source {
    fn of(origin: &Origin) -> Self {
        let Origin { path, label, unit, formula, source, range, inputs } = *origin;
        Self { path, label, unit, formula, source, range, inputs }
    }
}

#[derive(Serialize)]
struct Meaning {
    title: &'static str,
    meaning: &'static str,
    /// Templates of its message, so that a page in another language can tell what the places in it are filled with.
    messages: &'static [&'static str],
}

#[derive(Serialize)]
struct Bounds {
    ports: usize,
    fittings: usize,
    keep_outs: usize,
    runs: usize,
    stations: usize,
    tube_mm: f64,
    coordinate_mm: f64,
    text_bytes: usize,
    deviation_mm: [f64; 2],
    usual_deviation_mm: f64,
}

/// A quantity as the form needs it; what its kind has no use for is null.
#[derive(Serialize)]
struct Row {
    key: &'static str,
    label: &'static str,
    hint: &'static str,
    kind: &'static str,
    /// As shown: "mm".
    unit: &'static str,
    /// As read out.
    unit_words: &'static str,
    min: Option<f64>,
    max: Option<f64>,
    min_open: bool,
    max_open: bool,
    step: Option<f64>,
    example: Option<f64>,
    /// The range in words.
    range: Option<String>,
    default: Value,
    /// What a choice is of.
    of: Option<&'static str>,
    /// Most characters of a text.
    most: Option<usize>,
}

impl Row {
    fn of(quantity: &Quantity) -> Self {
        let mut row = Row {
            key: quantity.key,
            label: quantity.label,
            hint: quantity.hint,
            kind: "number",
            unit: "",
            unit_words: "",
            min: None,
            max: None,
            min_open: false,
            max_open: false,
            step: None,
            example: None,
            range: None,
            default: Value::Null,
            of: None,
            most: None,
        };
        match quantity.kind {
            Kind::Number(range) => {
                row.unit = range.unit;
                row.unit_words = unit_words(range.unit);
                (row.min, row.max) = (Some(range.min), Some(range.max));
                (row.min_open, row.max_open) = (range.min_open, range.max_open);
                (row.step, row.example) = (Some(range.step), Some(range.example));
                row.range = Some(range.words());
                row.default = range.default.map_or(Value::Null, Value::from);
            }
            Kind::Text { most, default, .. } => {
                row.kind = "text";
                row.most = Some(most);
                row.default = default.map_or(Value::Null, Value::from);
            }
            Kind::Flag { default } => {
                row.kind = "flag";
                row.default = Value::from(default);
            }
            Kind::Group => row.kind = "group",
            Kind::Choice { of, default } => {
                row.kind = "choice";
                row.of = Some(of);
                row.default = default.map_or(Value::Null, Value::from);
            }
        }
        row
    }
}

/// Pairs as an object that keeps their order.
fn in_order<S: Serializer, V: Serialize>(pairs: &[(&'static str, V)], serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_map(pairs.iter().map(|(key, value)| (key, value)))
}
