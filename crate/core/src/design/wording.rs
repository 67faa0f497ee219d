//! How values from a text are shown in a message, and which characters a name may have.

/// Characters of a text that a message shows.
const SHOWN: usize = 60;

/// A text in quotation marks, cut short, with nothing in it that could disturb the line it stands on.
pub(crate) fn quoted(text: &str) -> String {
    let mut shown: String = text.chars().take(SHOWN).map(|c| if disturbs(c) { '\u{fffd}' } else { c }).collect();
    if text.chars().nth(SHOWN).is_some() {
        shown.push('…');
    }
    format!("“{shown}”")
}

/// Names for a message: the first six, and how many more there are.
pub(crate) fn listed<'a>(names: impl ExactSizeIterator<Item = &'a str>) -> String {
    let count = names.len();
    let shown: Vec<String> = names.take(6).map(quoted).collect();
    match count.saturating_sub(6) {
        0 => shown.join(", "),
        more => format!("{} and {more} more", shown.join(", ")),
    }
}

/// Whether a character changes how the text around it is laid out: control characters, line and paragraph
/// separators, and the marks that turn the direction of writing (Unicode Standard Annex 9, section 2), with which a
/// name could show as another. Non-characters go with them: no file format takes them.
pub(crate) fn disturbs(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{061c}' | '\u{200e}' | '\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
        || matches!(c, '\u{fdd0}'..='\u{fdef}')
        || (c as u32) & 0xfffe == 0xfffe
}

/// A number as a message shows it: at most three decimals, no trailing zeros, never "-0".
pub(crate) fn shown(value: f64) -> String {
    rounded(value, f64::round)
}

/// A number that is a most: rounded down, so that what is shown would really work.
pub(crate) fn shown_down(value: f64) -> String {
    rounded(value, f64::floor)
}

/// A number that is a least: rounded up, so that what is shown would really work.
pub(crate) fn shown_up(value: f64) -> String {
    rounded(value, f64::ceil)
}

fn rounded(value: f64, way: fn(f64) -> f64) -> String {
    if !value.is_finite() {
        return "no number".to_owned();
    }
    if value.abs() >= 1e12 {
        return format!("{value:e}");
    }
    // Something too small for three decimals keeps one significant digit instead of showing as nothing.
    if value != 0.0 && value.abs() < 0.001 {
        return format!("{value:.0e}");
    }
    // A value that is a whole number of thousandths but for its last bits is shown as that number.
    let nearest = (value * 1e3).round();
    let exact = (nearest / 1e3 - value).abs() <= value.abs() * 1e-12;
    let thousandths = if exact { nearest } else { way(value * 1e3) };
    format!("{}", thousandths / 1e3 + 0.0)
}
