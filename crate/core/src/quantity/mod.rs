//! The table of quantities: one row for each thing a builder can state. Validation ranges, the words of a refusal,
//! and the form's labels, units, hints and steps all come from it.

mod table;
mod words;

pub use table::*;
pub use words::unit_words;

/// One thing that a builder states: a key of the design document.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Quantity {
    /// JSON Pointer into the design, `*` for a position in a list: `/ports/*/at/*`.
    pub key: &'static str,
    /// What a builder calls it.
    pub label: &'static str,
    /// One sentence that helps: what it is, how to measure it.
    pub hint: &'static str,
    /// What may be stated.
    pub kind: Kind,
}

/// What may be stated for a quantity.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Kind {
    /// A number in a range.
    Number(Range),
    /// A text of so many characters.
    Text {
        /// Fewest characters.
        least: usize,
        /// Most characters.
        most: usize,
        /// What a missing key means; none where the key must be there.
        default: Option<&'static str>,
    },
    /// True or false.
    Flag {
        /// What a missing key means.
        default: bool,
    },
    /// The name of something: an item of another list of the design, or a shipped preset.
    Choice {
        /// What is named: `fitting`, `port`, `material`, `printer`, `coolant`.
        of: &'static str,
        /// What a missing key means; none where the key must be there.
        default: Option<&'static str>,
    },
    /// Several keys that are stated together, as an object or a list; the row is what they are called as one.
    Group,
}

/// The numbers that a quantity may have.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Range {
    /// Unit of all of them, as shown; empty for a bare number.
    pub unit: &'static str,
    /// Lowest.
    pub min: f64,
    /// Highest.
    pub max: f64,
    /// Whether `min` itself is out.
    pub min_open: bool,
    /// Whether `max` itself is out.
    pub max_open: bool,
    /// What one press of an arrow in the form adds.
    pub step: f64,
    /// A usual value, for the words "such as".
    pub example: f64,
    /// What a missing key means; none where the key must be there or its default depends on others.
    pub default: Option<f64>,
}

impl Range {
    /// Whether `value` may be stated. NaN may not.
    pub fn holds(&self, value: f64) -> bool {
        let above = if self.min_open { value > self.min } else { value >= self.min };
        let below = if self.max_open { value < self.max } else { value <= self.max };
        above && below
    }
}

impl Quantity {
    /// The key itself: the pointer's last part.
    pub fn name(&self) -> &'static str {
        self.key.rsplit('/').next().unwrap_or(self.key)
    }

    /// The range, of a number.
    pub fn range(&self) -> Option<&Range> {
        match &self.kind {
            Kind::Number(range) => Some(range),
            _ => None,
        }
    }

    /// What a missing number means.
    pub fn default_number(&self) -> Option<f64> {
        self.range().and_then(|range| range.default)
    }
}

/// A row of the table, being built: a number of any size in `unit`.
const fn number(key: &'static str, label: &'static str, unit: &'static str, hint: &'static str) -> Quantity {
    let range =
        Range { unit, min: -1e6, max: 1e6, min_open: false, max_open: false, step: 1.0, example: 0.0, default: None };
    Quantity { key, label, hint, kind: Kind::Number(range) }
}

/// A row of the table: a text.
const fn text(
    key: &'static str,
    label: &'static str,
    (least, most): (usize, usize),
    default: Option<&'static str>,
    hint: &'static str,
) -> Quantity {
    Quantity { key, label, hint, kind: Kind::Text { least, most, default } }
}

/// A row of the table: true or false.
const fn flag(key: &'static str, label: &'static str, default: bool, hint: &'static str) -> Quantity {
    Quantity { key, label, hint, kind: Kind::Flag { default } }
}

/// A row of the table: the name of something.
const fn choice(
    key: &'static str,
    label: &'static str,
    of: &'static str,
    default: Option<&'static str>,
    hint: &'static str,
) -> Quantity {
    Quantity { key, label, hint, kind: Kind::Choice { of, default } }
}

/// A row of the table: keys that are stated together.
const fn group(key: &'static str, label: &'static str, hint: &'static str) -> Quantity {
    Quantity { key, label, hint, kind: Kind::Group }
}

impl Quantity {
    const fn with(mut self, range: Range) -> Self {
        self.kind = Kind::Number(range);
        self
    }

    const fn parts(&self) -> Range {
        match self.kind {
            Kind::Number(range) => range,
            _ => panic!("only a number has a range"),
        }
    }

    /// `min` and above.
    const fn from(self, min: f64) -> Self {
        let range = Range { min, min_open: false, ..self.parts() };
        self.with(range)
    }

    /// Above `min`.
    const fn above(self, min: f64) -> Self {
        let range = Range { min, min_open: true, ..self.parts() };
        self.with(range)
    }

    /// `max` and below.
    const fn to(self, max: f64) -> Self {
        let range = Range { max, max_open: false, ..self.parts() };
        self.with(range)
    }

    /// Below `max`.
    const fn below(self, max: f64) -> Self {
        let range = Range { max, max_open: true, ..self.parts() };
        self.with(range)
    }

    /// What an arrow of the form adds, and a usual value.
    const fn step(self, step: f64, example: f64) -> Self {
        let range = Range { step, example, ..self.parts() };
        self.with(range)
    }

    /// What a missing key means; also the usual value.
    const fn or(self, default: f64) -> Self {
        let range = Range { default: Some(default), example: default, ..self.parts() };
        self.with(range)
    }
}
