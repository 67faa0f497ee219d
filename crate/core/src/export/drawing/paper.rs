//! The sheet as SVG text: lines in the weights and dashes of technical drawings, and words. Presentation attributes
//! alone, no style sheet inside the picture, so that it shows also where a strict page puts it.

use super::view::Flat;
use crate::tongue::{Tongue, marked};

/// Size of words, mm from baseline to baseline of the font: small print, figures, headings.
pub(super) const SMALL: f64 = 2.6;
pub(super) const FIGURES: f64 = 3.0;
pub(super) const LARGE: f64 = 4.6;

/// How wide a character is at most, as a share of the font's size: a plain sans-serif font's digits take 0.56 to 0.64,
/// its capitals up to 0.8; words are a mixture (common practice, no source).
const CHARACTER: f64 = 0.62;

/// Line kinds. Weights and dashes as ISO 128-2 has them for a wide line of 0.5 mm (from memory): narrow is half of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Pen {
    /// Edges in sight: continuous, wide.
    Edge,
    /// Dimensions, leaders, tables: continuous, narrow.
    Thin,
    /// Edges out of sight: dashed, narrow.
    Hidden,
    /// Centrelines: long-dashed dotted, narrow.
    Centre,
    /// Filled, for arrowheads.
    Fill,
}

/// How words stand on their point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Anchor {
    Start,
    Middle,
    End,
}

/// A number on the drawing, with what it is: it can be read back.
#[derive(Debug, Clone)]
pub(super) struct Told {
    /// What is measured, a word of the data attribute.
    pub dimension: &'static str,
    /// The row of the bend table, or the number of the point, if it has one.
    pub row: Option<usize>,
    /// The exact value, in mm or degrees or as its unit says.
    pub value: f64,
    /// As shown.
    pub shown: String,
}

/// A sheet being drawn.
#[derive(Debug)]
pub(super) struct Paper {
    text: String,
    /// What stands before decimals.
    decimal: char,
}

impl Pen {
    fn attributes(self) -> &'static str {
        match self {
            Self::Edge => r#"stroke-width="0.5""#,
            Self::Thin => r#"stroke-width="0.25""#,
            Self::Hidden => r#"stroke-width="0.25" stroke-dasharray="3 0.75""#,
            Self::Centre => r#"stroke-width="0.25" stroke-dasharray="6 0.75 0.4 0.75""#,
            Self::Fill => r##"fill="#000" stroke="none""##,
        }
    }
}

impl Paper {
    /// An empty sheet on which numbers have that mark before decimals.
    pub fn new(decimal: char) -> Self {
        Self { text: String::new(), decimal }
    }

    /// A line through points.
    pub fn path(&mut self, pen: Pen, points: &[Flat], class: &str) {
        if points.len() < 2 {
            return;
        }
        self.text.push_str("<path");
        if !class.is_empty() {
            self.text.push_str(&format!(" class=\"{class}\""));
        }
        self.text.push_str(&format!(" {} d=\"", pen.attributes()));
        for (index, [x, y]) in points.iter().enumerate() {
            self.text.push_str(&format!("{}{} {}", if index == 0 { "M" } else { "L" }, short(*x), short(*y)));
        }
        self.text.push_str(if pen == Pen::Fill { "Z\"/>\n" } else { "\"/>\n" });
    }

    /// A straight line.
    pub fn line(&mut self, pen: Pen, from: Flat, to: Flat) {
        self.path(pen, &[from, to], "");
    }

    /// A box.
    pub fn rectangle(&mut self, pen: Pen, [x, y]: Flat, [width, height]: Flat) {
        self.text.push_str(&format!(
            "<rect {} x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"/>\n",
            pen.attributes(),
            short(x),
            short(y),
            short(width),
            short(height)
        ));
    }

    /// A circle.
    pub fn circle(&mut self, pen: Pen, [x, y]: Flat, radius: f64) {
        let (x, y, radius) = (short(x), short(y), short(radius));
        self.text.push_str(&format!("<circle {} cx=\"{x}\" cy=\"{y}\" r=\"{radius}\"/>\n", pen.attributes()));
    }

    /// A filled arrowhead with its point at `at`, pointing along the unit direction `way`: closed and filled, 15 degrees.
    pub fn arrow(&mut self, at: Flat, way: Flat) {
        let (long, half) = (2.5, 0.34);
        let [x, y] = [at[0] - way[0] * long, at[1] - way[1] * long];
        let side = [-way[1] * half, way[0] * half];
        self.path(Pen::Fill, &[at, [x + side[0], y + side[1]], [x - side[0], y - side[1]]], "");
    }

    /// Words at a point, turned by `turn` degrees clockwise about it.
    pub fn words(&mut self, at: Flat, size: f64, anchor: Anchor, turn: f64, words: &str) {
        self.start_text(at, size, anchor, turn, "");
        self.escaped(words);
        self.text.push_str("</text>\n");
    }

    /// Words, some of which are numbers that can be read back.
    pub fn told(&mut self, at: Flat, size: f64, anchor: Anchor, turn: f64, parts: &[Part]) {
        self.start_text(at, size, anchor, turn, "");
        for part in parts {
            match part {
                Part::Words(words) => self.escaped(words),
                Part::Number(told) => self.number(told, false),
                Part::Foreshortened(told) => self.number(told, true),
            }
        }
        self.text.push_str("</text>\n");
    }

    fn number(&mut self, told: &Told, underlined: bool) {
        self.text.push_str(&format!("<tspan data-dimension=\"{}\"", told.dimension));
        if let Some(row) = told.row {
            self.text.push_str(&format!(" data-row=\"{row}\""));
        }
        self.text.push_str(&format!(" data-value=\"{}\"", told.value + 0.0));
        if underlined {
            self.text.push_str(" text-decoration=\"underline\"");
        }
        self.text.push('>');
        self.escaped(&marked(&told.shown, self.decimal));
        self.text.push_str("</tspan>");
    }

    fn start_text(&mut self, [x, y]: Flat, size: f64, anchor: Anchor, turn: f64, more: &str) {
        let (x, y) = (short(x), short(y));
        self.text.push_str(&format!("<text x=\"{x}\" y=\"{y}\" font-size=\"{size}\"{more}"));
        match anchor {
            Anchor::Start => {}
            Anchor::Middle => self.text.push_str(" text-anchor=\"middle\""),
            Anchor::End => self.text.push_str(" text-anchor=\"end\""),
        }
        if turn != 0.0 {
            self.text.push_str(&format!(" transform=\"rotate({} {x} {y})\"", short(turn)));
        }
        self.text.push_str(" fill=\"#000\" stroke=\"none\">");
    }

    /// Opens a group that says what it holds; `close` ends it.
    pub fn open(&mut self, attributes: &str) {
        self.text.push_str(&format!("<g {attributes}>\n"));
    }

    /// Ends a group.
    pub fn close(&mut self) {
        self.text.push_str("</g>\n");
    }

    /// Markup that is known to be well formed.
    pub fn raw(&mut self, markup: &str) {
        self.text.push_str(markup);
    }

    /// The picture: `width` and `height` are the sheet's, mm. `title` is what it is of.
    pub fn finish(self, width: f64, height: f64, title: &str, about: &str) -> String {
        let (width, height) = (short(width), short(height));
        let mut head = Self::new(self.decimal);
        head.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        head.raw(&format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} \
             {height}\" font-family=\"sans-serif\" fill=\"none\" stroke=\"#000\" stroke-linejoin=\"round\" {about}>\n<title>"
        ));
        head.escaped(title);
        // The one rule of style is for the printer: a page as large as the sheet, so that nothing is scaled.
        head.raw(&format!("</title>\n<style>@page{{size:{width}mm {height}mm;margin:0}}</style>\n"));
        head.raw(&format!("<rect width=\"{width}\" height=\"{height}\" fill=\"#fff\" stroke=\"none\"/>\n"));
        head.raw(&self.text);
        head.raw("</svg>\n");
        head.text
    }

    /// Words from outside: markup escaped, what XML 1.0 cannot hold made U+FFFD.
    fn escaped(&mut self, words: &str) {
        for c in words.chars() {
            match c {
                '&' => self.text.push_str("&amp;"),
                '<' => self.text.push_str("&lt;"),
                '>' => self.text.push_str("&gt;"),
                '"' => self.text.push_str("&quot;"),
                '\t' | '\n' | '\r' => self.text.push(' '),
                '\0'..' ' | '\u{fffe}' | '\u{ffff}' => self.text.push('\u{fffd}'),
                _ => self.text.push(c),
            }
        }
    }
}

/// A piece of a line of words.
#[derive(Debug, Clone)]
pub(super) enum Part {
    /// Plain words.
    Words(String),
    /// A number that can be read back.
    Number(Told),
    /// One that its view shows shorter than it is: underlined, as ISO 129-1 has it for what is not to scale (from
    /// memory).
    Foreshortened(Told),
}

impl Part {
    /// Plain words.
    pub fn words(words: impl Into<String>) -> Self {
        Self::Words(words.into())
    }

    /// A template with its places filled by such pieces.
    #[inline(never)]
    pub fn line(tongue: &Tongue, english: &str, fill: &[Self]) -> Vec<Self> {
        tongue.pieces(english, fill, Self::words).collect()
    }

    fn shown(&self) -> &str {
        match self {
            Self::Words(words) => words,
            Self::Number(told) | Self::Foreshortened(told) => &told.shown,
        }
    }
}

/// How wide words are at most, mm.
pub(super) fn width_of(words: &str, size: f64) -> f64 {
    words.chars().map(|c| if c.is_ascii() || c == '\u{2212}' { CHARACTER } else { 1.0 }).sum::<f64>() * size
}

/// How wide a line of parts is at most, mm.
pub(super) fn width_of_parts(parts: &[Part], size: f64) -> f64 {
    parts.iter().map(|part| width_of(part.shown(), size)).sum()
}

/// Words cut so that they fit, with a sign that they were.
pub(super) fn fitted(words: &str, size: f64, room: f64) -> String {
    if width_of(words, size) <= room {
        return words.to_owned();
    }
    let mut cut = String::new();
    for c in words.chars() {
        if width_of(&cut, size) + 2.0 * size > room {
            break;
        }
        cut.push(c);
    }
    cut.trim_end().to_owned() + "…"
}

/// A coordinate on paper: thousandths of a millimetre, no trailing zeros.
pub(super) fn short(value: f64) -> String {
    let text = format!("{value:.3}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}

/// A number as people read it: at most two decimals, a true minus.
pub(super) fn shown(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0".to_owned() } else { text.replace('-', "\u{2212}") }
}
