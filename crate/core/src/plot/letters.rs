//! Words on a picture: how wide they are, how they are cut and broken, and how foreign text is made harmless.

use crate::tongue::Tongue;

/// The most characters of a caller's name or sentence that a picture or its text alternative holds.
pub(super) const LONGEST: usize = 120;

/// Estimated width of a line of text, in the unit of `size`: by kind of character, as the widest of the usual plain
/// sans-serif fonts has them, so that what is placed by them has room in any (common practice, no source).
pub(super) fn width_of(text: &str, size: f64) -> f64 {
    size * text.chars().map(share).sum::<f64>()
}

/// The same of bold letters.
pub(super) fn width_of_bold(text: &str, size: f64) -> f64 {
    BOLD * width_of(text, size)
}

/// How much wider bold letters are (common practice, no source).
pub(super) const BOLD: f64 = 1.12;

fn share(c: char) -> f64 {
    match c {
        'i' | 'j' | 'l' | '.' | ',' | ':' | ';' | '\'' | '|' | ' ' => 0.34,
        'f' | 't' | 'r' | '(' | ')' | '-' | '/' | '[' | ']' | '!' | 'I' => 0.42,
        'm' | 'w' | 'M' | 'W' | '%' | '@' => 1.0,
        '<' | '>' | '=' | '+' | '~' | '^' | '#' | '&' | 'O' | 'Q' | 'G' | '…' => 0.84,
        '0'..='9' => 0.64,
        'A'..='Z' => 0.74,
        ' '..='~' => 0.62,
        // Marks that stand over the letter before them.
        '\u{0300}'..='\u{036F}' | '\u{200B}'..='\u{200F}' | '\u{2066}'..='\u{2069}' => 0.0,
        // Scripts whose letters fill a square, and pictographs.
        '\u{1100}'..='\u{11FF}' | '\u{2E80}'..='\u{FFEF}' | '\u{1F000}'.. => 1.1,
        _ => 0.74,
    }
}

/// A caller's text as one line of at most [`LONGEST`] characters, free of what XML cannot hold and of what would turn
/// the text around it.
pub(super) fn tamed(text: &str) -> String {
    let mut line = String::new();
    let mut length = 0;
    let mut gap = false;
    // A text of nothing but spaces and controls must not be walked to its end.
    for c in text.chars().take(16 * LONGEST) {
        if c.is_whitespace() || c.is_control() || turns(c) || matches!(c, '\u{FFFE}' | '\u{FFFF}') {
            gap = !line.is_empty();
            continue;
        }
        if gap {
            line.push(' ');
            length += 1;
            gap = false;
        }
        if length + 1 >= LONGEST {
            line.push('…');
            break;
        }
        line.push(c);
        length += 1;
    }
    line
}

/// Direction marks, overrides, isolates; the text's own letters still say which way it runs.
fn turns(c: char) -> bool {
    matches!(c, '\u{200E}' | '\u{200F}' | '\u{061C}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' | '\u{FEFF}')
}

/// A caller's name inside a sentence of ours: tamed, in quotation marks, and if it may run from right to left, isolated
/// so that the sentence keeps its order (Unicode Standard Annex 9, FSI and PDI).
pub(super) fn quoted(name: &str, tongue: &Tongue) -> String {
    let name = tamed(name);
    if name.chars().any(|c| matches!(c, '\u{0590}'..='\u{08FF}' | '\u{FB1D}'..='\u{FEFC}')) {
        tongue.quoted(&format!("\u{2068}{name}\u{2069}"))
    } else {
        tongue.quoted(&name)
    }
}

/// The text if it is at most `room` wide, else its beginning and an ellipsis.
pub(super) fn shortened(text: &str, size: f64, room: f64) -> String {
    if width_of(text, size) <= room {
        return text.into();
    }
    let mut cut = String::new();
    let mut wide = width_of("…", size);
    for c in text.chars() {
        wide += size * share(c);
        if wide > room {
            break;
        }
        cut.push(c);
    }
    format!("{}…", cut.trim_end())
}

/// The text in at most `most` lines of `room`; a word wider than a line is cut, and what does not fit ends in an ellipsis.
pub(super) fn wrapped(text: &str, size: f64, room: f64, most: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    let mut line = String::new();
    for word in together(text) {
        let longer = if line.is_empty() { word.clone() } else { format!("{line} {word}") };
        // The last line takes all that is left, so that it is cut where the room ends and not before.
        if line.is_empty() || width_of(&longer, size) <= room || lines.len() + 1 >= most {
            line = longer;
        } else {
            lines.push(shortened(&line, size, room));
            line = word;
        }
    }
    if !line.is_empty() {
        lines.push(shortened(&line, size, room));
    }
    lines
}

/// The words of a text, a number and its unit as one.
fn together(text: &str) -> Vec<String> {
    let mut words: Vec<String> = Vec::new();
    for word in text.split(' ').filter(|word| !word.is_empty()) {
        let unit = word.chars().count() <= 5 && !word.starts_with(|c: char| c.is_ascii_digit());
        match words.last_mut() {
            Some(number) if unit && number.ends_with(|c: char| c.is_ascii_digit()) => {
                number.push(' ');
                number.push_str(word);
            }
            _ => words.push(word.to_owned()),
        }
    }
    words
}

/// Adds text with XML's own characters escaped; what XML 1.0 forbids becomes a replacement character.
pub(crate) fn escape_into(out: &mut String, text: &str) {
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\u{0}'..='\u{8}' | '\u{B}' | '\u{C}' | '\u{E}'..='\u{1F}' | '\u{FFFE}' | '\u{FFFF}' => {
                out.push('\u{FFFD}')
            }
            other => out.push(other),
        }
    }
}
