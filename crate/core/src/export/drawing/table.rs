//! Tables on the sheet.

use super::paper::{Anchor, FIGURES, Paper, Part, Pen, SMALL, fitted};
use super::view::Flat;

/// Height of a row, mm.
const ROW: f64 = 4.6;
/// Gap between two stacks of rows side by side, mm.
const BESIDE: f64 = 4.0;

/// A table; the first cell of a row and words stand left, numbers right.
pub(super) struct Table {
    pub caption: String,
    pub columns: Vec<(String, f64)>,
    pub rows: Vec<Vec<Part>>,
    /// Said below the rows, if anything.
    pub foot: Option<String>,
}

impl Table {
    /// Its size when its rows stand in so many stacks side by side.
    pub fn size(&self, stacks: usize) -> Flat {
        let foot = f64::from(u8::from(self.foot.is_some()));
        let rows = self.rows.len().div_ceil(stacks) as f64;
        [stacks as f64 * (self.width() + BESIDE) - BESIDE, (rows + 2.0 + foot) * ROW]
    }

    fn width(&self) -> f64 {
        self.columns.iter().map(|(_, width)| width).sum()
    }

    /// Draws it.
    pub fn draw(&self, paper: &mut Paper, at: Flat, stacks: usize) {
        let each = self.rows.len().div_ceil(stacks).max(1);
        let width = self.size(stacks)[0];
        paper.words([at[0], at[1] + 3.2], FIGURES, Anchor::Start, 0.0, &fitted(&self.caption, FIGURES, width));
        for (stack, rows) in self.rows.chunks(each).enumerate() {
            let corner = [at[0] + stack as f64 * (self.width() + BESIDE), at[1] + ROW];
            self.stack(paper, corner, rows);
        }
        if let Some(foot) = &self.foot {
            let y = at[1] + (each as f64 + 2.0) * ROW + 3.2;
            paper.words([at[0], y], FIGURES, Anchor::Start, 0.0, &fitted(foot, FIGURES, width));
        }
    }

    fn stack(&self, paper: &mut Paper, [x, y]: Flat, rows: &[Vec<Part>]) {
        let height = (rows.len() as f64 + 1.0) * ROW;
        paper.rectangle(Pen::Thin, [x, y], [self.width(), height]);
        paper.line(Pen::Edge, [x, y + ROW], [x + self.width(), y + ROW]);
        for row in 1..rows.len() {
            let below = y + (row as f64 + 1.0) * ROW;
            paper.line(Pen::Thin, [x, below], [x + self.width(), below]);
        }
        let mut left = x;
        for (column, (head, width)) in self.columns.iter().enumerate() {
            if column > 0 {
                paper.line(Pen::Thin, [left, y], [left, y + height]);
            }
            paper.words([left + width / 2.0, y + 3.2], SMALL, Anchor::Middle, 0.0, head);
            for (index, row) in rows.iter().enumerate() {
                let base = y + (index as f64 + 1.0) * ROW + 3.3;
                let Some(cell) = row.get(column) else { continue };
                let part = std::slice::from_ref(cell);
                match cell {
                    Part::Words(words) if words.is_empty() => {}
                    Part::Words(words) => {
                        let words = fitted(words, FIGURES, width - 1.6);
                        paper.words([left + 1.0, base], FIGURES, Anchor::Start, 0.0, &words);
                    }
                    _ => paper.told([left + width - 1.0, base], FIGURES, Anchor::End, 0.0, part),
                }
            }
            left += width;
        }
    }
}
