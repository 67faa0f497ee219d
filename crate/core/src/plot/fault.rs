//! Why a plot is not drawn.

use std::fmt;

/// The largest magnitude of any number in a plot, in its own unit: far above what the trade knows, far below where
/// a scale's arithmetic would lose its steps.
pub(super) const LARGEST: f64 = 1e12;

/// Why a plot is refused. Each names what was wrong in the caller's words for it.
#[derive(Debug, Clone, PartialEq)]
pub enum PlotError {
    /// Not a number, infinite, or beyond 1e12.
    Number {
        /// Which field.
        what: &'static str,
    },
    /// A share or a flow below zero.
    Negative {
        /// Which field.
        what: &'static str,
    },
    /// The first of a range is above the second.
    Reversed {
        /// Which range.
        what: &'static str,
    },
    /// More than a picture can show or a page should hold.
    TooMany {
        /// Of what.
        what: &'static str,
        /// The most that is drawn.
        most: usize,
    },
    /// The prefix of the ids is not a letter followed by at most 63 letters, digits, `-` or `_`.
    Prefix,
    /// The picture could not be put together; not known to happen.
    Unfinished,
}

impl fmt::Display for PlotError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Number { what } => write!(f, "{what} is not a number that can be drawn"),
            Self::Negative { what } => write!(f, "{what} is below zero"),
            Self::Reversed { what } => write!(f, "{what} ends before it begins"),
            Self::TooMany { what, most } => write!(f, "more than {most} {what}"),
            Self::Prefix => write!(f, "the prefix of ids is a letter, then letters, digits, - or _, at most 64"),
            Self::Unfinished => write!(f, "the picture could not be put together"),
        }
    }
}

impl std::error::Error for PlotError {}

/// Refuses what no axis can place.
pub(super) fn number(what: &'static str, value: f64) -> Result<(), PlotError> {
    // A comparison with NaN is false, so this refuses NaN and both infinities as well.
    if value.abs() <= LARGEST { Ok(()) } else { Err(PlotError::Number { what }) }
}

/// Refuses what no axis can place, and what is below zero.
pub(super) fn not_negative(what: &'static str, value: f64) -> Result<(), PlotError> {
    number(what, value)?;
    if value >= 0.0 { Ok(()) } else { Err(PlotError::Negative { what }) }
}

/// Refuses a range with a bound no axis can place, or whose bounds are the wrong way round. Both may be the same.
pub(super) fn range(what: &'static str, [low, high]: [f64; 2]) -> Result<(), PlotError> {
    number(what, low)?;
    number(what, high)?;
    if low <= high { Ok(()) } else { Err(PlotError::Reversed { what }) }
}

/// Refuses a list that is longer than what is drawn.
pub(super) fn at_most(what: &'static str, most: usize, count: usize) -> Result<(), PlotError> {
    if count <= most { Ok(()) } else { Err(PlotError::TooMany { what, most }) }
}
