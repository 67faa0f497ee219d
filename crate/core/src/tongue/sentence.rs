//! Sentences that come filled with names and numbers, in another language: matched against the rows' templates piece by piece,
//! never backwards. Names stay as they are.

use super::Tongue;
use super::holes::{Part, names, parts};

/// Places that may hold the name of a shipped thing, which has a row of its own.
pub(crate) const SHIPPED: [&str; 3] = ["material", "printer", "name"];
/// Templates that are tried for one sentence and its parts, so that no table makes it take long.
const MOST_TRIED: usize = 100_000;
/// As many colons as a name before a sentence is tried with.
const MOST_COLONS: usize = 4;

/// A row with named places.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Sentence {
    /// What stands before the first place, between two, and after the last.
    literals: Vec<String>,
    places: Vec<String>,
    other: String,
}

impl Sentence {
    /// None for a row without named places, or with nothing but places.
    pub fn of(english: &str, other: &str) -> Option<Self> {
        let mut found = Self { literals: vec![String::new()], places: Vec::new(), other: other.to_owned() };
        for part in parts(english) {
            match part {
                Part::Words(words) => found.literals.last_mut()?.push_str(words),
                Part::Hole(name) => {
                    found.places.push(name.to_owned());
                    found.literals.push(String::new());
                }
            }
        }
        let numbered = names(english).iter().any(|name| name.bytes().all(|byte| byte.is_ascii_digit()));
        (!found.places.is_empty() && !numbered && found.words() > 0).then_some(found)
    }

    /// Length of its own words.
    pub fn words(&self) -> usize {
        self.literals.iter().map(String::len).sum()
    }

    /// Whether it is little more than a word between two names, which could stand in a name as well.
    fn is_list(&self) -> bool {
        matches!(&self.literals[..], [first, between, last] if first.is_empty() && last.is_empty() && between.len() < 8)
    }

    /// What its places are filled with; none where the text is not its.
    fn filled<'t>(&self, text: &'t str, quoted: &[bool]) -> Option<Vec<&'t str>> {
        let (first, rest) = self.literals.split_first()?;
        let (last, between) = rest.split_last()?;
        let tail = text.len().checked_sub(last.len())?;
        if !text.starts_with(first.as_str()) || !text.ends_with(last.as_str()) {
            return None;
        }
        let (mut at, mut found) = (first.len(), Vec::with_capacity(self.places.len()));
        for literal in between {
            let end = outside(text, literal, at, quoted)?;
            found.push(&text[at..end]);
            at = end + literal.len();
        }
        found.push(text.get(at..tail).filter(|part| !part.is_empty())?);
        Some(found)
    }
}

/// A sentence, which may begin with the name of what it is about. Which colon ends that name is not told: each is tried,
/// then the sentence as a whole.
pub(super) fn told(tongue: &Tongue, english: &str) -> String {
    let mut left = MOST_TRIED;
    for (at, colon) in english.match_indices(": ").take(MOST_COLONS) {
        let from = at + colon.len();
        if let Some(words) = whole(tongue, &english[from..], &mut left) {
            return format!("{}{words}", &english[..from]);
        }
    }
    let words = whole(tongue, english, &mut left).or_else(|| {
        let small = first_letter(english, |letter| letter.to_lowercase().collect());
        whole(tongue, &small, &mut left).map(|words| first_letter(&words, |letter| letter.to_uppercase().collect()))
    });
    words.unwrap_or_else(|| english.to_owned())
}

/// See [`Tongue::part`].
pub(super) fn part(tongue: &Tongue, english: &str, shipped: bool) -> String {
    part_within(tongue, english, shipped, &mut MOST_TRIED.clone())
}

fn part_within(tongue: &Tongue, english: &str, shipped: bool, left: &mut usize) -> String {
    if let Some(name) = one_name(english) {
        return tongue.quoted(if shipped { tongue.word(name) } else { name });
    }
    whole(tongue, english, left).unwrap_or_else(|| plain(tongue, english))
}

/// A text that is a row, or that fills the template of one.
fn whole(tongue: &Tongue, english: &str, left: &mut usize) -> Option<String> {
    if let Some(row) = tongue.row(english) {
        return Some(row.to_owned());
    }
    let quoted = quoted_in(english);
    for sentence in &tongue.sentences {
        *left = left.checked_sub(1)?;
        let Some(found) = sentence.filled(english, &quoted) else { continue };
        if sentence.is_list() && !found.iter().all(|part| is_known(tongue, part, left)) {
            continue;
        }
        let filled = parts(&sentence.other).map(|part| match part {
            Part::Words(words) => words.to_owned(),
            Part::Hole(name) => match sentence.places.iter().position(|place| place == name) {
                Some(place) => part_within(tongue, found[place], SHIPPED.contains(&name), left),
                None => String::new(),
            },
        });
        return Some(filled.collect());
    }
    None
}

fn is_known(tongue: &Tongue, part: &str, left: &mut usize) -> bool {
    part.split(", ").all(|name| one_name(name).is_some()) || is_number(part) || whole(tongue, part, left).is_some()
}

/// A number, with its unit or without.
fn is_number(text: &str) -> bool {
    let mut words = text.split(' ');
    let number = words.next().unwrap_or_default();
    let digits = number.trim_start_matches(['−', '-']);
    let plain = !digits.is_empty() && digits.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ','));
    plain && words.next().is_none_or(|unit| !unit.is_empty()) && words.next().is_none()
}

/// The name in a text that is one quoted name.
fn one_name(text: &str) -> Option<&str> {
    text.strip_prefix('“')?.strip_suffix('”').filter(|name| !name.contains('”'))
}

/// Names and numbers as the language writes them; numbers side by side stay apart where a comma stands in them.
fn plain(tongue: &Tongue, english: &str) -> String {
    let side_by_side = english.contains(", ") && english.split(", ").all(is_number);
    let apart = if tongue.decimal == ',' && side_by_side { english.replace(", ", "; ") } else { english.to_owned() };
    let (mut text, mut rest, mut before) = (String::with_capacity(apart.len()), apart.as_str(), ' ');
    while let Some(first) = rest.chars().next() {
        let name = rest.strip_prefix('“').and_then(|rest| rest.split_once('”'));
        let number = if before.is_alphanumeric() || matches!(before, '.' | '_') { 0 } else { number_at(rest) };
        let taken = match name {
            Some((name, _)) => {
                text.push_str(&tongue.quoted(name));
                name.len() + "“”".len()
            }
            None if number > 0 => {
                text.push_str(&tongue.number(&rest[..number]));
                number
            }
            None => {
                text.push(first);
                first.len_utf8()
            }
        };
        before = rest[..taken].chars().next_back().unwrap_or(first);
        rest = &rest[taken..];
    }
    text
}

/// Length of the number that a text begins with, no letter following it: digits, groups of three after commas, a point with
/// decimals.
fn number_at(text: &str) -> usize {
    let digits = |from: usize| text[from..].bytes().take_while(u8::is_ascii_digit).count();
    let mut end = digits(0);
    if end == 0 {
        return 0;
    }
    while text[end..].starts_with(',') && digits(end + 1) == 3 {
        end += 4;
    }
    if text[end..].starts_with('.') && digits(end + 1) > 0 {
        end += 1 + digits(end + 1);
    }
    if text[end..].starts_with(|c: char| c.is_alphanumeric() || c == '_') { 0 } else { end }
}

/// Where a literal is next outside of quoted names, something standing before it.
fn outside(text: &str, literal: &str, at: usize, quoted: &[bool]) -> Option<usize> {
    let mut from = at + text.get(at..)?.chars().next()?.len_utf8();
    loop {
        let found = from + text.get(from..)?.find(literal)?;
        if !quoted.get(found).copied().unwrap_or(false) {
            return Some(found);
        }
        from = found + text[found..].chars().next()?.len_utf8();
    }
}

/// Which bytes stand within a quoted name.
fn quoted_in(text: &str) -> Vec<bool> {
    let (mut marks, mut within) = (Vec::with_capacity(text.len()), false);
    for letter in text.chars() {
        within |= letter == '“';
        marks.extend(core::iter::repeat_n(within, letter.len_utf8()));
        within &= letter != '”';
    }
    marks
}

fn first_letter(text: &str, change: impl Fn(char) -> String) -> String {
    let mut letters = text.chars();
    letters.next().map_or(String::new(), |first| change(first) + letters.as_str())
}
