//! The picture being drawn: words and lines at places in pixels, groups, and the frame of XML around it.

use super::backend::Backend;
use super::ink::{HATCHES, Hatch, Ink};
use super::letters;
use super::{Frame, PlotError};
use plotters::coord::Shift;
use plotters::prelude::{Circle, DrawingArea, PathElement, Polygon, Rectangle};
use plotters::style::text_anchor::{HPos, Pos, VPos};
use plotters::style::{FontDesc, FontFamily, FontStyle, TextStyle};
use std::cell::RefCell;
use std::fmt::Write;
use std::rc::Rc;

/// Sizes of words, px: headings, everything else, what only adds to it.
pub(super) const HEADING: f64 = 15.0;
pub(super) const WORDS: f64 = 13.0;
pub(super) const SMALL: f64 = 12.0;
/// From base line to base line, as a share of the size.
pub(super) const LEADING: f64 = 1.35;

/// A drawing of some kind, or why not.
pub(super) type Drawn = Result<(), PlotError>;

/// Where `plotters` draws.
pub(super) type Area = DrawingArea<Backend, Shift>;

/// A picture being drawn. Places are pixels from its upper left corner.
pub(super) struct Sheet {
    backend: Rc<RefCell<Backend>>,
    /// All of it, for charts.
    pub area: Area,
    width: f64,
    height: f64,
    prefix: String,
}

/// Words as they stand.
#[derive(Clone, Copy)]
pub(super) struct Type {
    pub size: f64,
    pub bold: bool,
    pub at: HPos,
}

impl Type {
    pub const fn plain(size: f64) -> Self {
        Self { size, bold: false, at: HPos::Left }
    }

    pub const fn bold(size: f64) -> Self {
        Self { size, bold: true, at: HPos::Left }
    }

    pub const fn at(self, at: HPos) -> Self {
        Self { at, ..self }
    }

    /// For the labels of a chart's axes.
    pub fn style(self, height: VPos) -> TextStyle<'static> {
        let style = if self.bold { FontStyle::Bold } else { FontStyle::Normal };
        let font = FontDesc::new(FontFamily::SansSerif, self.size * 100.0, style);
        TextStyle { font, color: plain_color(), pos: Pos::new(self.at, height) }
    }
}

fn plain_color() -> plotters_backend::BackendColor {
    plotters_backend::BackendColor { alpha: 1.0, rgb: (0, 0, 0) }
}

/// Pixels in the backend's unit.
pub(super) fn hundredths(px: f64) -> i32 {
    libm::round(px * 100.0) as i32
}

/// What `plotters` says went wrong is nothing a caller could act on.
pub(super) fn unfinished<E>(_: E) -> PlotError {
    PlotError::Unfinished
}

impl Sheet {
    pub fn new(frame: &Frame<'_>, height: f64) -> Self {
        let width = frame.across();
        let size = (hundredths(width).unsigned_abs(), hundredths(height).unsigned_abs());
        let backend = Rc::new(RefCell::new(Backend::new(size, frame.prefix)));
        let area = Area::from(&backend);
        Self { backend, area, width, height, prefix: frame.prefix.into() }
    }

    /// What `inside` draws, as a group of that class.
    pub fn group(&self, class: &str, inside: impl FnOnce() -> Drawn) -> Drawn {
        self.backend.borrow_mut().open(class);
        inside()?;
        self.backend.borrow_mut().close();
        Ok(())
    }

    /// One line of words on the base line `y`.
    pub fn text(&self, x: f64, y: f64, text: &str, letters: Type) -> Drawn {
        self.area.draw_text(text, &letters.style(VPos::Bottom), (hundredths(x), hundredths(y))).map_err(unfinished)
    }

    pub fn line(&self, points: &[[f64; 2]], ink: Ink) -> Drawn {
        self.area.draw(&PathElement::new(places(points), ink.outline())).map_err(unfinished)
    }

    pub fn polygon(&self, points: &[[f64; 2]], ink: Ink) -> Drawn {
        self.area.draw(&Polygon::new(places(points), ink.filled())).map_err(unfinished)
    }

    /// An area from corner to corner, filled.
    pub fn bar(&self, from: [f64; 2], to: [f64; 2], ink: Ink) -> Drawn {
        self.area.draw(&Rectangle::new([place(from), place(to)], ink.filled())).map_err(unfinished)
    }

    /// The edge of such an area.
    pub fn edge(&self, from: [f64; 2], to: [f64; 2], ink: Ink) -> Drawn {
        self.area.draw(&Rectangle::new([place(from), place(to)], ink.outline())).map_err(unfinished)
    }

    pub fn ring(&self, middle: [f64; 2], radius: f64, ink: Ink) -> Drawn {
        self.area.draw(&Circle::new(place(middle), hundredths(radius), ink.outline())).map_err(unfinished)
    }

    pub fn dot(&self, middle: [f64; 2], radius: f64) -> Drawn {
        let ink = Ink::area(Hatch::Plain).filled();
        self.area.draw(&Circle::new(place(middle), hundredths(radius), ink)).map_err(unfinished)
    }

    /// The whole picture: `class` tells styles which plot it is, `title` and `told` are its name and text alternative.
    pub fn finish(self, class: &str, title: &str, told: &str) -> String {
        let Self { backend, width, height, prefix, .. } = self;
        let backend = backend.borrow();
        let mut svg = String::with_capacity(backend.body.len() + told.len() + 2048);
        // Writing into a string has no way to fail.
        let _ = write!(
            svg,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"plot plot-{class}\" width=\"{width}\" height=\"{height}\" \
             viewBox=\"0 0 {width} {height}\" role=\"img\" aria-labelledby=\"{prefix}-title\" \
             aria-describedby=\"{prefix}-told\" font-family=\"system-ui, sans-serif\" color=\"currentColor\">\n\
             <title id=\"{prefix}-title\">"
        );
        letters::escape_into(&mut svg, title);
        let _ = write!(svg, "</title>\n<desc id=\"{prefix}-told\">");
        letters::escape_into(&mut svg, told);
        svg.push_str("</desc>\n");
        define_hatches(&mut svg, &prefix, &backend.hatched);
        svg.push_str(&backend.body);
        svg.push_str("</svg>\n");
        svg
    }
}

fn define_hatches(svg: &mut String, prefix: &str, used: &[bool; 6]) {
    if !used.contains(&true) {
        return;
    }
    svg.push_str("<defs>\n");
    for (number, (side, content)) in HATCHES.iter().enumerate().map(|(place, hatch)| (place + 1, hatch)) {
        if used[number] {
            let _ = writeln!(
                svg,
                "<pattern id=\"{prefix}-hatch-{number}\" width=\"{side}\" height=\"{side}\" \
                 patternUnits=\"userSpaceOnUse\"><g stroke=\"currentColor\" fill=\"none\">{content}</g></pattern>"
            );
        }
    }
    svg.push_str("</defs>\n");
}

/// Lines of words from the base line `y` down; how far down they reach.
pub(super) fn lines(sheet: &Sheet, x: f64, y: f64, lines: &[String], letters: Type) -> Result<f64, PlotError> {
    let mut down = y;
    for line in lines {
        sheet.text(x, down, line, letters)?;
        down += leading(letters.size);
    }
    Ok(down)
}

/// From base line to base line, px.
pub(super) fn leading(size: f64) -> f64 {
    libm::round(size * LEADING)
}

fn place([x, y]: [f64; 2]) -> (i32, i32) {
    (hundredths(x), hundredths(y))
}

fn places(points: &[[f64; 2]]) -> Vec<(i32, i32)> {
    points.iter().copied().map(place).collect()
}
