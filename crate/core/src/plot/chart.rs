//! Axes placed on the picture, and their lines, ticks and numbers as `plotters` draws them.

use super::ink::Ink;
use super::sheet::{Drawn, Sheet, Type, WORDS, hundredths, unfinished};
use super::ticks::Axis;
use plotters::coord::ranged1d::{KeyPointHint, NoDefaultFormatting, Ranged, ValueFormatter};
use plotters::prelude::ChartBuilder;
use plotters::style::text_anchor::VPos;
use std::ops::Range;

/// Room for the numbers under a chart, px.
const UNDER: f64 = 24.0;
const GRID: Ink = Ink::line(1.0).faint(0.16);
const AXIS: Ink = Ink::line(1.4);
const TICK: f64 = 4.0;

/// An axis from one place to another, px. Upright axes run from the bottom to the top.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Placed {
    pub axis: Axis,
    pub from: f64,
    pub to: f64,
}

impl Placed {
    /// Where a value is, px.
    pub fn at(&self, value: f64) -> f64 {
        self.from + self.axis.share(value) * (self.to - self.from)
    }
}

/// Whether lines run from the ticks through the chart.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Grid {
    Lines,
    None,
}

/// Draws a chart's axes: one along the bottom, and if given, one up the left side.
pub(super) fn axes(sheet: &Sheet, x: &Placed, y: &Placed, grid: Grid) -> Drawn {
    let upright = !y.axis.ticks.is_empty();
    let left = if upright { 0.0 } else { x.from };
    let size = (hundredths(x.to - left), hundredths(y.from + UNDER - y.to));
    let area = sheet.area.clone().shrink((hundredths(left), hundredths(y.to)), size);
    let mut builder = ChartBuilder::on(&area);
    builder.x_label_area_size(hundredths(UNDER));
    if upright {
        builder.y_label_area_size(hundredths(x.from));
    }
    let mut chart = builder.build_cartesian_2d(x.axis.clone(), y.axis.clone()).map_err(unfinished)?;
    let mut mesh = chart.configure_mesh();
    if grid == Grid::None {
        mesh.disable_mesh();
    }
    if !upright {
        mesh.disable_y_axis();
    }
    mesh.bold_line_style(GRID.outline())
        .axis_style(AXIS.outline())
        .set_all_tick_mark_size(hundredths(TICK))
        .label_style(Type::plain(WORDS).style(VPos::Center))
        .draw()
        .map_err(unfinished)
}

/// Our axes as `plotters` takes them: its own would choose other ticks and round to whole pixels.
impl Ranged for Axis {
    type FormatOption = NoDefaultFormatting;
    type ValueType = f64;

    fn map(&self, value: &f64, (from, to): (i32, i32)) -> i32 {
        from + libm::round(self.share(*value) * f64::from(to - from)) as i32
    }

    fn key_points<Hint: KeyPointHint>(&self, hint: Hint) -> Vec<f64> {
        if hint.weight().allow_light_points() { Vec::new() } else { self.ticks.clone() }
    }

    fn range(&self) -> Range<f64> {
        self.low..self.high
    }
}

impl ValueFormatter<f64> for Axis {
    fn format_ext(&self, value: &f64) -> String {
        self.told(*value)
    }
}
