//! Where each number of the results comes from: what it is called, which formula gives it, whose it is, within what it holds
//! and what goes into it. The page asks by the number's place in the report.

mod circuit;
mod cost;
mod fit;
mod leak;
mod pieces;
mod service;
mod shape;
mod variant;

/// A result, and where it comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Origin {
    /// Its place in the report, with `*` for a position in a list; `/variants/*/...` in the table of variants.
    pub path: &'static str,
    /// What it is called.
    pub label: &'static str,
    /// Its unit as shown; empty where it has none.
    pub unit: &'static str,
    /// The formula, by name and as it is written.
    pub formula: &'static str,
    /// Whose it is, or "common practice, no source".
    pub source: &'static str,
    /// Within what it holds, and how far it may be off.
    pub range: &'static str,
    /// What goes into it: keys of quantities of the design, or paths of other results.
    pub inputs: &'static [&'static str],
}

/// Every result.
pub fn origins() -> impl Iterator<Item = &'static Origin> {
    [shape::ROWS, pieces::ROWS, cost::ROWS, service::ROWS, circuit::ROWS, fit::ROWS, leak::ROWS, variant::ROWS]
        .into_iter()
        .flatten()
}

/// A row of the table, being built.
const fn origin(path: &'static str, label: &'static str, unit: &'static str) -> Origin {
    Origin { path, label, unit, formula: "", source: "", range: "", inputs: &[] }
}

impl Origin {
    const fn by(mut self, formula: &'static str, source: &'static str) -> Self {
        (self.formula, self.source) = (formula, source);
        self
    }

    const fn holds(mut self, range: &'static str) -> Self {
        self.range = range;
        self
    }

    const fn of(mut self, inputs: &'static [&'static str]) -> Self {
        self.inputs = inputs;
        self
    }
}

/// What a rule of the trade without a source says of itself.
const PRACTICE: &str = "common practice, no source";
/// What follows from nothing but the shape.
const GEOMETRY: &str = "geometry";
const EXACT: &str = "Exact, but for the last digits of a number.";
