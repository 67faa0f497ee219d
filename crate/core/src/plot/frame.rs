//! Where a picture goes: how wide it is, and what its ids begin with.

use super::PlotError;

/// Narrowest and widest picture, CSS pixels: a phone held upright, a full desktop window.
const WIDTHS: [u32; 2] = [280, 1600];
/// From here on there is room for columns side by side, CSS pixels.
const WIDE: u32 = 560;

/// Where a picture goes.
///
/// Words have the same size at every width, so a picture is drawn anew for a narrow place instead of being shrunk.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Frame<'a> {
    /// What every id in the picture begins with: a letter, then letters, digits, `-` or `_`, at most 64 in all. Pictures
    /// in one page need different ones.
    pub prefix: &'a str,
    /// Width in CSS pixels; taken as 280 to 1600. The height follows from what there is to show.
    pub width: u32,
}

impl Frame<'_> {
    /// The width that is drawn, px.
    pub(super) fn across(&self) -> f64 {
        f64::from(self.width.clamp(WIDTHS[0], WIDTHS[1]))
    }

    /// Whether columns stand side by side.
    pub(super) fn is_wide(&self) -> bool {
        self.width >= WIDE
    }

    /// Refuses a prefix that could leave its attribute.
    pub(super) fn check(&self) -> Result<(), PlotError> {
        let fits = self.prefix.len() <= 64
            && self.prefix.starts_with(|c: char| c.is_ascii_alphabetic())
            && self.prefix.chars().all(|c| c.is_ascii_alphanumeric() || c == '-' || c == '_');
        if fits { Ok(()) } else { Err(PlotError::Prefix) }
    }
}
