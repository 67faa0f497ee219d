//! Margins at a glance: of each limit, how much is used.

mod draw;
mod tell;

use super::fault::{at_most, not_negative, range};
use super::{Frame, PlotError};
use crate::tongue::Tongue;

/// The most rows in one picture.
const MOST_ROWS: usize = 200;

/// What is drawn.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct MarginsPlot {
    /// The heading.
    pub title: String,
    /// From the top down, at most 200.
    pub rows: Vec<MarginRow>,
}

/// One limit and how much of it is used.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct MarginRow {
    /// What is limited.
    pub label: String,
    /// Share of the limit, not below zero; above 1 it is over.
    pub used: f64,
    /// Lowest and highest share of its uncertainty.
    pub range: Option<[f64; 2]>,
    /// The same in its own unit, such as "0.36 of 1.6 MPa".
    pub text: String,
}

impl MarginsPlot {
    /// The picture.
    ///
    /// # Errors
    /// A share that no axis can place or is below zero, a range the wrong way round, too many rows, or a prefix that is
    /// none.
    pub fn svg(&self, frame: &Frame<'_>) -> Result<String, PlotError> {
        self.svg_in(frame, &Tongue::english())
    }

    /// The picture in another language; its labels are told as they are.
    ///
    /// # Errors
    /// As [`MarginsPlot::svg`].
    pub fn svg_in(&self, frame: &Frame<'_>, tongue: &Tongue) -> Result<String, PlotError> {
        frame.check()?;
        at_most("margins", MOST_ROWS, self.rows.len())?;
        for row in &self.rows {
            not_negative("a share of a limit", row.used)?;
            if let Some(shares) = row.range {
                range("a range of a share", shares)?;
                not_negative("a range of a share", shares[0])?;
            }
        }
        draw::draw(self, frame, tongue)
    }

    /// The same in words, with the numbers.
    pub fn text_alternative(&self) -> String {
        tell::tell(self, &Tongue::english())
    }
}

/// How a row stands to its limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Standing {
    Within,
    MayBeOver,
    Over,
}

impl MarginRow {
    fn standing(&self) -> Standing {
        if self.used > 1.0 {
            Standing::Over
        } else if self.range.is_some_and(|[_, high]| high > 1.0) {
            Standing::MayBeOver
        } else {
            Standing::Within
        }
    }
}
