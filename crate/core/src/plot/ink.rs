//! What lines and areas are drawn with: width, dash, hatch, strength; never a colour.
//!
//! `plotters` knows colours, we know none: the red of a colour says which dash, the green which hatch, the alpha how
//! strong. [`super::backend`] reads them back.

use super::sheet::hundredths;
use plotters::style::{RGBAColor, ShapeStyle};
use plotters_backend::BackendColor;

/// Dashes by number, px on and off; the first is a full line.
const DASHES: [&str; 7] = ["", "9 4", "2 3.5", "9 3 2 3", "14 3 3 3 3 3", "4 4", "16 5"];

/// Numbers of [`DASHES`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Dash {
    Full,
    Long,
    Dots,
    LongDot,
    LongDotDot,
    Short,
    Pump,
}

/// How an area is filled.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Hatch {
    /// With the ink itself.
    Plain,
    Rising,
    Falling,
    Upright,
    Dotted,
    /// Close crossed lines: what is over a limit.
    Crossed,
}

/// One way of drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Ink {
    /// Px.
    pub width: f64,
    pub dash: Dash,
    pub hatch: Hatch,
    /// 0 to 1.
    pub strength: f64,
}

impl Ink {
    /// A full line of `width` px.
    pub const fn line(width: f64) -> Self {
        Self { width, dash: Dash::Full, hatch: Hatch::Plain, strength: 1.0 }
    }

    pub const fn dashed(self, dash: Dash) -> Self {
        Self { dash, ..self }
    }

    pub const fn faint(self, strength: f64) -> Self {
        Self { strength, ..self }
    }

    /// An area filled with `hatch`.
    pub const fn area(hatch: Hatch) -> Self {
        Self { width: 0.0, dash: Dash::Full, hatch, strength: 1.0 }
    }

    /// As `plotters` takes it, for an outline.
    pub fn outline(self) -> ShapeStyle {
        let color = RGBAColor(self.dash as u8, self.hatch as u8, 0, self.strength);
        ShapeStyle { color, filled: false, stroke_width: hundredths(self.width).unsigned_abs() }
    }

    /// As `plotters` takes it, for an area.
    pub fn filled(self) -> ShapeStyle {
        ShapeStyle { filled: true, ..self.outline() }
    }
}

/// The dash that a colour stands for, as the value of `stroke-dasharray`; empty for a full line.
pub(super) fn dash_of(color: BackendColor) -> &'static str {
    DASHES.get(usize::from(color.rgb.0)).copied().unwrap_or("")
}

/// The hatch that a colour stands for, by number; 0 is the ink itself.
pub(super) fn hatch_of(color: BackendColor) -> usize {
    usize::from(color.rgb.1).min(HATCHES.len())
}

/// What the hatches from 1 on are made of: side of the square that repeats, px, and what is in it. Lines reach over the
/// square's edge so that they meet in its corners.
pub(super) const HATCHES: [(f64, &str); 5] = [
    (7.0, r#"<path d="M-1 8L8 -1M-1 1L1 -1M6 8L8 6" stroke-width="0.9"/>"#),
    (7.0, r#"<path d="M-1 -1L8 8M6 -1L8 1M-1 6L1 8" stroke-width="0.9"/>"#),
    (5.0, r#"<path d="M2.5 -1V6" stroke-width="0.9"/>"#),
    (5.0, r#"<path d="M1.5 2.5h2" stroke-width="1.6"/>"#),
    (5.0, r#"<path d="M-1 6L6 -1M-1 -1L6 6" stroke-width="1.1"/>"#),
];
