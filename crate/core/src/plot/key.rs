//! The key under a plot: a sample of each line, area or mark, and what it is.

use super::PlotError;
use super::letters::wrapped;
use super::sheet::{self, Drawn, Sheet, Type, WORDS};

/// Width of a sample, px, and the gap to its words.
const SAMPLE: f64 = 36.0;
const GAP: f64 = 10.0;
/// The most lines that an entry takes.
const LINES: usize = 4;

/// Draws a sample into the box of that left edge, that middle height and that width.
pub(super) type Sample<'a> = Box<dyn Fn(&Sheet, f64, f64, f64) -> Drawn + 'a>;

/// One entry.
pub(super) struct Entry<'a> {
    pub sample: Sample<'a>,
    pub words: String,
}

/// Entries given their places.
pub(super) struct Key<'a> {
    rows: Vec<Vec<(&'a Entry<'a>, Vec<String>)>>,
    column: f64,
    /// Px from its top to its bottom.
    pub height: f64,
}

impl<'a> Key<'a> {
    /// The entries in `columns` of a width of `across` in all.
    pub fn laid_out(entries: &'a [Entry<'a>], across: f64, columns: usize) -> Self {
        let columns = columns.max(1);
        let column = across / columns as f64;
        let room = column - SAMPLE - GAP - 12.0;
        let rows: Vec<Vec<_>> = entries
            .chunks(columns)
            .map(|row| row.iter().map(|entry| (entry, wrapped(&entry.words, WORDS, room, LINES))).collect())
            .collect();
        let height = rows.iter().map(|row| row_height(row)).sum();
        Self { rows, column, height }
    }

    /// Draws it with its upper left corner there.
    pub fn draw(&self, sheet: &Sheet, left: f64, top: f64) -> Result<(), PlotError> {
        let mut down = top;
        for row in &self.rows {
            for (place, (entry, words)) in row.iter().enumerate() {
                let x = left + place as f64 * self.column;
                let base = down + WORDS;
                sheet.group("plot-key", || {
                    (entry.sample)(sheet, x, base - 0.36 * WORDS, SAMPLE)?;
                    sheet::lines(sheet, x + SAMPLE + GAP, base, words, Type::plain(WORDS)).map(|_| ())
                })?;
            }
            down += row_height(row);
        }
        Ok(())
    }
}

fn row_height(row: &[(&Entry<'_>, Vec<String>)]) -> f64 {
    let lines = row.iter().map(|(_, words)| words.len()).max().unwrap_or(0);
    lines.max(1) as f64 * sheet::leading(WORDS) + 6.0
}
