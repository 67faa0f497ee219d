//! Writes what `plotters` draws as SVG text, in `currentColor`.
//!
//! `plotters`'s own SVG writer has whole pixels, colours and no dashes, and measures words by asking the browser's page,
//! which a worker does not have. This one measures by [`letters::width_of`], so that native and wasm write the same bytes.
//! Its unit is a hundredth of a pixel.

use super::ink::{dash_of, hatch_of};
use super::letters;
use plotters_backend::text_anchor::{HPos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind, FontStyle,
};
use std::convert::Infallible;
use std::fmt::Write;

type Done = Result<(), DrawingErrorKind<Infallible>>;

/// The body of a picture being written.
pub(super) struct Backend {
    size: (u32, u32),
    prefix: String,
    /// Elements so far.
    pub body: String,
    /// Hatches in use, by number; 0 is never looked at.
    pub hatched: [bool; 6],
}

impl Backend {
    /// An empty picture of that many hundredths of a pixel.
    pub fn new(size: (u32, u32), prefix: &str) -> Self {
        Self { size, prefix: prefix.into(), body: String::new(), hatched: [false; 6] }
    }

    /// Begins a group that says what its elements are.
    pub fn open(&mut self, class: &str) {
        self.put(format_args!("<g class=\"{class}\">\n"));
    }

    /// Ends the last group.
    pub fn close(&mut self) {
        self.body.push_str("</g>\n");
    }

    fn put(&mut self, words: std::fmt::Arguments<'_>) {
        // Writing into a string has no way to fail.
        let _ = self.body.write_fmt(words);
    }

    fn points(&mut self, path: impl IntoIterator<Item = BackendCoord>) {
        self.body.push_str(" points=\"");
        for (place, (x, y)) in path.into_iter().enumerate() {
            let gap = if place == 0 { "" } else { " " };
            self.put(format_args!("{gap}{},{}", px(x), px(y)));
        }
        self.body.push('"');
    }

    fn stroke(&mut self, color: BackendColor, width: u32) {
        self.put(format_args!(" fill=\"none\" stroke=\"currentColor\" stroke-width=\"{}\"", px(width as i32)));
        if color.alpha < 1.0 {
            self.put(format_args!(" stroke-opacity=\"{}\"", color.alpha));
        }
        let dash = dash_of(color);
        if !dash.is_empty() {
            self.put(format_args!(" stroke-dasharray=\"{dash}\""));
        }
        self.body.push_str("/>\n");
    }

    fn fill(&mut self, color: BackendColor) {
        match hatch_of(color) {
            0 => self.body.push_str(" fill=\"currentColor\""),
            hatch => {
                self.hatched[hatch] = true;
                let prefix = std::mem::take(&mut self.prefix);
                self.put(format_args!(" fill=\"url(#{prefix}-hatch-{hatch})\""));
                self.prefix = prefix;
            }
        }
        if color.alpha < 1.0 {
            self.put(format_args!(" fill-opacity=\"{}\"", color.alpha));
        }
        self.body.push_str(" stroke=\"none\"/>\n");
    }

    fn finish<S: BackendStyle>(&mut self, style: &S, filled: bool) {
        if filled { self.fill(style.color()) } else { self.stroke(style.color(), style.stroke_width()) }
    }
}

/// A number of hundredths as a number of pixels.
fn px(hundredths: i32) -> f64 {
    f64::from(hundredths) / 100.0
}

impl DrawingBackend for Backend {
    type ErrorType = Infallible;

    fn get_size(&self) -> (u32, u32) {
        self.size
    }

    fn ensure_prepared(&mut self) -> Done {
        Ok(())
    }

    fn present(&mut self) -> Done {
        Ok(())
    }

    fn draw_pixel(&mut self, (x, y): BackendCoord, color: BackendColor) -> Done {
        self.put(format_args!("<rect x=\"{}\" y=\"{}\" width=\"1\" height=\"1\"", px(x), px(y)));
        self.fill(color);
        Ok(())
    }

    fn draw_line<S: BackendStyle>(&mut self, from: BackendCoord, to: BackendCoord, style: &S) -> Done {
        self.draw_path([from, to], style)
    }

    fn draw_rect<S: BackendStyle>(&mut self, from: BackendCoord, to: BackendCoord, style: &S, fill: bool) -> Done {
        let (width, height) = (px(to.0 - from.0), px(to.1 - from.1));
        self.put(format_args!("<rect x=\"{}\" y=\"{}\" width=\"{width}\" height=\"{height}\"", px(from.0), px(from.1)));
        self.finish(style, fill);
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, path: I, style: &S) -> Done {
        self.body.push_str("<polyline");
        self.points(path);
        self.body.push_str(" stroke-linejoin=\"round\"");
        self.stroke(style.color(), style.stroke_width());
        Ok(())
    }

    fn draw_circle<S: BackendStyle>(&mut self, centre: BackendCoord, radius: u32, style: &S, fill: bool) -> Done {
        let radius = px(radius as i32);
        self.put(format_args!("<circle cx=\"{}\" cy=\"{}\" r=\"{radius}\"", px(centre.0), px(centre.1)));
        self.finish(style, fill);
        Ok(())
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(&mut self, path: I, style: &S) -> Done {
        self.body.push_str("<polygon");
        self.points(path);
        self.fill(style.color());
        Ok(())
    }

    fn draw_text<S: BackendTextStyle>(&mut self, text: &str, style: &S, (x, y): BackendCoord) -> Done {
        let size = style.size() / 100.0;
        let anchor = style.anchor();
        let at = match anchor.h_pos {
            HPos::Left => "start",
            HPos::Center => "middle",
            HPos::Right => "end",
        };
        // From the stated height to the base line; capitals are about 0.72 of the size high (common practice, no source).
        let down = match anchor.v_pos {
            VPos::Top => 0.72 * size,
            VPos::Center => 0.36 * size,
            VPos::Bottom => 0.0,
        };
        let base = libm::round((px(y) + down) * 100.0) / 100.0;
        self.put(format_args!("<text x=\"{}\" y=\"{base}\" font-size=\"{size}\" text-anchor=\"{at}\"", px(x)));
        if matches!(style.style(), FontStyle::Bold) {
            self.body.push_str(" font-weight=\"600\"");
        }
        self.body.push_str(" fill=\"currentColor\" stroke=\"none\">");
        letters::escape_into(&mut self.body, text);
        self.body.push_str("</text>\n");
        Ok(())
    }

    fn estimate_text_size<S: BackendTextStyle>(
        &self,
        text: &str,
        style: &S,
    ) -> Result<(u32, u32), DrawingErrorKind<Infallible>> {
        let size = style.size();
        Ok((letters::width_of(text, size) as u32, size as u32))
    }
}
