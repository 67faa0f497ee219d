//! The margins as a picture: a bar each, the limit as one line through all.

use super::super::chart::{self, Grid, Placed};
use super::super::ink::{Hatch, Ink};
use super::super::letters::{BOLD, shortened, tamed, width_of, width_of_bold, wrapped};
use super::super::sheet::{self, Drawn, HEADING, SMALL, Sheet, Type, WORDS};
use super::super::ticks::{Axis, Ends};
use super::super::words;
use super::super::{Frame, PlotError};
use super::{MarginRow, MarginsPlot, Standing, tell};
use crate::tongue::Tongue;
use plotters::style::text_anchor::HPos;

/// Where the axis ends at the least and at the most, %: the limit always has room behind it, and one wild value does not
/// press all others together. What is beyond has an arrow.
const ENDS: [f64; 2] = [115.0, 200.0];
const BAR: f64 = 14.0;
const LIMIT: Ink = Ink::line(2.2);
const EDGE: Ink = Ink::line(1.2);
const OVER_EDGE: Ink = Ink::line(2.0);
const WHISKER: Ink = Ink::line(1.6);

/// Where things stand from left to right, px, and how high a row is.
struct Columns {
    bars: [f64; 2],
    words: [f64; 2],
    row: f64,
    /// From a row's top to its bar's middle.
    bar: f64,
    wide: bool,
    end: f64,
}

impl Columns {
    fn of(frame: &Frame<'_>, end: f64) -> Self {
        let across = frame.across();
        if frame.is_wide() {
            let bars = [libm::round(across * 0.3), libm::round(across * 0.61)];
            Self { bars, words: [bars[1] + 22.0, across], row: 34.0, bar: 17.0, wide: true, end }
        } else {
            Self { bars: [6.0, across - 18.0], words: [2.0, across], row: 72.0, bar: 49.0, wide: false, end }
        }
    }

    fn x(&self, percent: f64) -> f64 {
        self.bars[0] + percent.clamp(0.0, self.end) / self.end * (self.bars[1] - self.bars[0])
    }
}

pub(super) fn draw(plot: &MarginsPlot, frame: &Frame<'_>, tongue: &Tongue) -> Result<String, PlotError> {
    let across = frame.across();
    let title = tamed(&plot.title);
    let heading = wrapped(&title, HEADING * BOLD, across - 8.0, 3);
    let highest = plot.rows.iter().map(|row| row.range.map_or(row.used, |[_, high]| high.max(row.used)));
    let end = (105.0 * highest.fold(0.0, f64::max)).clamp(ENDS[0], ENDS[1]);
    let axis = Axis::over(0.0, end, if frame.is_wide() { 6 } else { 5 }, Ends::Exact).written(tongue.decimal());
    let columns = Columns::of(frame, end);
    let head = heading.len() as f64 * sheet::leading(HEADING) + 26.0;
    let bottom = head + plot.rows.len().max(1) as f64 * columns.row + 6.0;
    let sheet = Sheet::new(frame, libm::ceil(bottom + 46.0));

    sheet.group("plot-title", || sheet::lines(&sheet, 2.0, HEADING, &heading, Type::bold(HEADING)).map(|_| ()))?;
    sheet.group("plot-axes", || {
        let x = Placed { axis, from: columns.bars[0], to: columns.bars[1] };
        // In the narrow layout words stand between the bars, where lines would run through them.
        let grid = if columns.wide { Grid::Lines } else { Grid::None };
        chart::axes(&sheet, &x, &Placed { axis: Axis::bare(), from: bottom, to: head }, grid)
    })?;
    sheet.text(columns.bars[1], bottom + 38.0, tongue.word(words::SHARE_AXIS), Type::plain(SMALL).at(HPos::Right))?;
    for (place, row) in plot.rows.iter().enumerate() {
        let top = head + place as f64 * columns.row;
        sheet.group("plot-row", || one(&sheet, &columns, row, top, tongue))?;
    }
    sheet.group("plot-limit", || limit(&sheet, &columns, [head, bottom], plot.rows.len(), tongue))?;
    if plot.rows.is_empty() {
        sheet.text(columns.bars[0] + 8.0, head + 20.0, tongue.word(words::NOTHING), Type::plain(WORDS))?;
    }
    Ok(sheet.finish("margins", &title, &tell::tell(plot, tongue)))
}

fn one(sheet: &Sheet, columns: &Columns, row: &MarginRow, top: f64, tongue: &Tongue) -> Drawn {
    let label = tamed(&row.label);
    let middle = top + columns.bar;
    if columns.wide {
        let room = columns.bars[0] - 14.0;
        let x = columns.bars[0] - 10.0;
        let one_line = width_of(&label, WORDS) <= room;
        let lines = if one_line { vec![label] } else { wrapped(&label, SMALL, room, 2) };
        let size = if one_line { WORDS } else { SMALL };
        let base = middle + 4.7 - lines.len().saturating_sub(1) as f64 * sheet::leading(size) / 2.0;
        sheet::lines(sheet, x, base, &lines, Type::plain(size).at(HPos::Right))?;
        words_beside(sheet, columns, row, middle + 4.7, tongue)?;
    } else {
        let room = columns.words[1] - columns.words[0] - 4.0;
        sheet.text(columns.words[0], top + 16.0, &shortened(&label, WORDS * BOLD, room), Type::bold(WORDS))?;
        words_beside(sheet, columns, row, top + 33.0, tongue)?;
    }
    bar(sheet, columns, row, middle)
}

/// Percent, standing and the numbers; what is over is bold.
fn words_beside(sheet: &Sheet, columns: &Columns, row: &MarginRow, base: f64, tongue: &Tongue) -> Drawn {
    let [left, right] = columns.words;
    let told = tell::beside(row, tongue);
    let bold = if row.standing() == Standing::Within { Type::plain(WORDS) } else { Type::bold(WORDS) };
    sheet.text(left, base, &told, bold)?;
    let at = left + (width_of_bold(&told, WORDS) + 8.0).max(if columns.wide { 52.0 } else { 0.0 });
    let text = shortened(&tamed(&row.text), WORDS, right - at - 2.0);
    if text.chars().count() > 1 { sheet.text(at, base, &text, Type::plain(WORDS)) } else { Ok(()) }
}

fn bar(sheet: &Sheet, columns: &Columns, row: &MarginRow, middle: f64) -> Drawn {
    let (top, bottom) = (middle - BAR / 2.0, middle + BAR / 2.0);
    let share = row.used * 100.0;
    let (from, to, limit) = (columns.x(0.0), columns.x(share), columns.x(100.0));
    let within = to.min(limit);
    sheet.bar([from, top], [within, bottom], Ink::area(Hatch::Plain).faint(0.3))?;
    sheet.edge([from, top], [within, bottom], EDGE)?;
    if row.standing() == Standing::Over {
        sheet.bar([limit, top - 3.0], [to, bottom + 3.0], Ink::area(Hatch::Crossed))?;
        sheet.edge([limit, top - 3.0], [to, bottom + 3.0], OVER_EDGE)?;
    }
    // Nothing used still shows where nothing is.
    sheet.line(&[[from, top - 3.0], [from, bottom + 3.0]], EDGE)?;
    if share > columns.end {
        let tip = [to + 11.0, middle];
        sheet.polygon(&[[to, top - 3.0], tip, [to, bottom + 3.0]], Ink::area(Hatch::Plain))?;
    }
    if let Some([low, high]) = row.range {
        let (low, high) = (columns.x(low * 100.0), columns.x(high * 100.0));
        sheet.line(&[[low, middle], [high, middle]], WHISKER)?;
        for x in [low, high] {
            sheet.line(&[[x, middle - 4.0], [x, middle + 4.0]], WHISKER)?;
        }
    }
    Ok(())
}

/// The limit: one line in the wide layout, a piece at each bar where words stand between.
fn limit(sheet: &Sheet, columns: &Columns, [top, bottom]: [f64; 2], rows: usize, tongue: &Tongue) -> Drawn {
    let x = columns.x(100.0);
    sheet.text(x, top - 8.0, tongue.word(words::LIMIT), Type::bold(WORDS).at(HPos::Center))?;
    if columns.wide {
        return sheet.line(&[[x, top - 4.0], [x, bottom]], LIMIT);
    }
    sheet.line(&[[x, top - 4.0], [x, top + 2.0]], LIMIT)?;
    for place in 0..rows {
        let middle = top + place as f64 * columns.row + columns.bar;
        sheet.line(&[[x, middle - 11.0], [x, middle + 11.0]], LIMIT)?;
    }
    sheet.line(&[[x, bottom - 6.0], [x, bottom]], LIMIT)
}
