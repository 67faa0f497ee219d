//! Names that every file system takes, from names that people give.

use std::collections::HashSet;

/// Longest stem, bytes of UTF-8: with an extension it stays well below the 255 that file systems take, also where a
/// path or a download manager adds to it.
const LONGEST: usize = 80;

/// A file name's stem from any name: letters of every script are kept; path separators, signs that some system
/// forbids, control and direction characters are not; it is no reserved device name, neither starts nor ends with a
/// dot, a space or a hyphen, has 1 to 80 bytes, and is the same for the same name. Forbidden signs and device names:
/// "Naming Files, Paths, and Namespaces" of the Windows documentation.
pub fn file_stem(name: &str) -> String {
    stem_within(name, LONGEST)
}

/// [`file_stem`] of a name with something after it that is kept whole, such as "-piece-1-of-3".
pub fn file_stem_ending(name: &str, end: &str) -> String {
    stem_within(name, LONGEST - end.len().min(LONGEST / 2)) + end
}

/// [`file_stem`] of each name, made unique where case does not count: a stem that is taken gets -2, -3 and so on.
pub fn unique_stems<'a>(names: impl IntoIterator<Item = &'a str>) -> Vec<String> {
    let mut taken = HashSet::new();
    let mut unique = |name: &str| {
        let mut stem = file_stem(name);
        let mut count = 1;
        while !taken.insert(folded(&stem)) {
            count += 1;
            let number = format!("-{count}");
            stem = stem_within(name, LONGEST - number.len()) + &number;
        }
        stem
    };
    names.into_iter().map(&mut unique).collect()
}

fn stem_within(name: &str, longest: usize) -> String {
    let mut stem = String::new();
    for c in name.chars().filter(|c| !invisible(*c)) {
        let c = match c {
            _ if c.is_whitespace() => ' ',
            '/' | '\\' | ':' | '*' | '?' | '"' | '<' | '>' | '|' => '-',
            _ => c,
        };
        // A run of spaces or of hyphens says no more than one.
        if !(matches!(c, ' ' | '-') && stem.ends_with(c)) {
            stem.push(c);
        }
    }
    let mut stem = trimmed(stem.trim_start_matches(EDGE), longest);
    if stem.is_empty() {
        return UNNAMED.to_owned();
    }
    if is_device(&stem) {
        stem = format!("_{}", trimmed(&stem, longest - 1));
    }
    stem
}

/// What a name without any usable sign becomes.
const UNNAMED: &str = "unnamed";

/// Signs that a stem neither starts nor ends with: dots hide or vanish, spaces vanish, a hyphen in front looks like a
/// command's option.
const EDGE: [char; 3] = [' ', '.', '-'];

/// The front of `stem` that fits, cut between characters, without an edge sign at its end.
fn trimmed(stem: &str, longest: usize) -> String {
    let fits = (0..=longest.min(stem.len())).rev().find(|&end| stem.is_char_boundary(end)).unwrap_or(0);
    stem[..fits].trim_end_matches(EDGE).to_owned()
}

/// Characters that do not show: controls but for the ones that are spaces, direction marks and overrides, joiners,
/// fillers, tags, and code points that are no characters. Source: Unicode general category Cf and noncharacters.
fn invisible(c: char) -> bool {
    let code = c as u32;
    (c.is_control() && !c.is_whitespace())
        || matches!(c,
            '\u{ad}' | '\u{34f}' | '\u{600}'..='\u{605}' | '\u{61c}' | '\u{6dd}' | '\u{70f}' | '\u{890}'..='\u{891}'
            | '\u{8e2}' | '\u{115f}'..='\u{1160}' | '\u{180b}'..='\u{180f}' | '\u{200b}'..='\u{200f}'
            | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{3164}' | '\u{fe00}'..='\u{fe0f}' | '\u{feff}'
            | '\u{ffa0}' | '\u{fff0}'..='\u{fffb}' | '\u{110bd}' | '\u{110cd}' | '\u{13430}'..='\u{1343f}'
            | '\u{1bca0}'..='\u{1bca3}' | '\u{1d173}'..='\u{1d17a}' | '\u{e0000}'..='\u{e0fff}')
        || (0xfdd0..=0xfdef).contains(&code)
        || code & 0xfffe == 0xfffe
}

/// Whether a system keeps the name, whatever follows its first dot, for a device.
fn is_device(stem: &str) -> bool {
    let base = stem.split('.').next().unwrap_or_default().trim_end().to_uppercase();
    let numbered = |port: &str| {
        base.strip_prefix(port).is_some_and(|rest| {
            let mut rest = rest.chars();
            matches!((rest.next(), rest.next()), (Some('0'..='9' | '¹' | '²' | '³'), None))
        })
    };
    matches!(base.as_str(), "CON" | "PRN" | "AUX" | "NUL" | "CONIN$" | "CONOUT$" | "CLOCK$")
        || numbered("COM")
        || numbered("LPT")
}

/// The stem with case taken away, to compare.
fn folded(stem: &str) -> String {
    stem.to_uppercase().to_lowercase()
}
