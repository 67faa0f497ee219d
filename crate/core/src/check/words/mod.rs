//! The words of findings: one table from code to title, meaning and message, so that they can be translated, tested
//! and kept alike. The message of a finding about a run begins with the run's name; templates leave it out.

mod fit;
mod make;
mod print;
mod room;
mod serve;
mod shape;

use super::{Finding, Severity};
use crate::design::wording;
use crate::tongue::{SHIPPED, Tongue};

/// The words of one kind of finding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Words {
    /// The finding's code.
    pub code: &'static str,
    /// A heading, a few words.
    pub title: &'static str,
    /// What it means for the builder, and why it matters: one or two sentences.
    pub meaning: &'static str,
    /// Templates of the message. The first whose `{placeholders}` all have a value is used: `{value}` and `{limit}`
    /// are the finding's numbers with their unit, the others its `words`.
    pub messages: &'static [&'static str],
    /// Which way the limit is rounded for showing, so that the shown number would really do.
    pub limit: Limit,
}

/// What a finding's limit is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limit {
    /// The most that would do: shown rounded down.
    Most,
    /// The least that would do: shown rounded up.
    Least,
    /// A number that is known exactly, or none.
    Exact,
}

/// The words of a code; none for a code that is not in the table.
pub fn words_of(code: &str) -> Option<&'static Words> {
    all_words().find(|words| words.code == code)
}

/// The whole table, in the order of the work: the way, the making, room, ports and putting in, what the
/// tubes are in service, and how they stand when they are printed.
pub fn all_words() -> impl Iterator<Item = &'static Words> {
    [shape::WORDS, make::WORDS, room::WORDS, fit::WORDS, serve::WORDS, print::WORDS].into_iter().flatten()
}

/// A finding's message in plain words.
pub fn message(finding: &Finding) -> String {
    message_in(finding, &Tongue::english())
}

/// The same in another language.
pub fn message_in(finding: &Finding, tongue: &Tongue) -> String {
    let body = match words_of(finding.code) {
        Some(words) => words
            .messages
            .iter()
            .find_map(|template| filled(template, finding, words.limit, tongue))
            .unwrap_or_else(|| format!("{}.", tongue.word(words.title))),
        None => finding.code.replace('_', " "),
    };
    match &finding.run {
        Some(run) => format!("{run}: {body}"),
        None => capital(&body),
    }
}

/// What a severity means, in plain words.
pub fn severity_meaning(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => "Cannot be made, or must not be used as it is",
        Severity::Care => "Can be made; look before you pay for it",
        Severity::Note => "Good to know",
    }
}

/// A severity's name in the report.
pub fn severity_name(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => "stop",
        Severity::Care => "care",
        Severity::Note => "note",
    }
}

/// A length, angle or other number with its unit, for a finding's `words`. Lengths and angles have at most three decimals;
/// of what follows from a formula and a data sheet three digits are told.
pub fn number(value: f64, unit: &str) -> String {
    let measured = matches!(unit, "mm" | "°" | "");
    joined(wording::shown(if measured { value } else { three_digits(value) }), unit)
}

fn three_digits(value: f64) -> f64 {
    if value == 0.0 || !value.is_finite() {
        return value;
    }
    let decimals = 2.0 - libm::floor(libm::log10(value.abs()));
    if decimals <= 0.0 {
        return libm::round(value);
    }
    let scale = libm::pow(10.0, decimals.min(6.0));
    libm::round(value * scale) / scale
}

/// The most that would do, for a finding's `words`: rounded down.
pub fn at_most(value: f64, unit: &str) -> String {
    joined(wording::shown_down(value), unit)
}

/// The least that would do, for a finding's `words`: rounded up.
pub fn at_least(value: f64, unit: &str) -> String {
    joined(wording::shown_up(value), unit)
}

fn joined(number: String, unit: &str) -> String {
    match unit {
        "" => number,
        "°" => format!("{number}°"),
        unit => format!("{number} {unit}"),
    }
}

/// The template with its placeholders filled; none where one has no value.
fn filled(template: &str, finding: &Finding, limit: Limit, tongue: &Tongue) -> Option<String> {
    // A row has the same placeholders as its template.
    let template = tongue.word(template);
    let mut text = String::with_capacity(template.len() + 40);
    let mut rest = template;
    while let Some((before, after)) = rest.split_once('{') {
        let (name, after) = after.split_once('}')?;
        text.push_str(before);
        text.push_str(&placeholder(name, finding, limit, tongue)?);
        rest = after;
    }
    text.push_str(rest);
    Some(text)
}

fn placeholder(name: &str, finding: &Finding, limit: Limit, tongue: &Tongue) -> Option<String> {
    let words = match name {
        "value" => number(finding.value?, finding.unit),
        "limit" => {
            let value = finding.limit?;
            match limit {
                Limit::Most => at_most(value, finding.unit),
                Limit::Least => at_least(value, finding.unit),
                Limit::Exact => number(value, finding.unit),
            }
        }
        name => finding.words.iter().find(|(key, _)| *key == name)?.1.clone(),
    };
    Some(tongue.part(&words, SHIPPED.contains(&name)))
}

fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or(String::new(), |first| first.to_uppercase().chain(chars).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn finding(code: &'static str) -> Finding {
        Finding {
            code,
            severity: Severity::Stop,
            run: Some("pump to block".into()),
            place: "/runs/0/bend_radius".into(),
            at: None,
            value: Some(5.0),
            limit: Some(6.000_5),
            unit: "mm",
            source: "geometry",
            words: vec![("diameter", number(12.0, "mm")), ("usual", number(24.0, "mm"))],
            fix: None,
            ways: Vec::new(),
        }
    }

    #[test]
    fn a_message_reads_like_a_sentence() {
        assert_eq!(
            message(&finding("bend_radius")),
            "pump to block: a bend radius of 5 mm folds a tube of 12 mm into itself. Use at least 6.001 mm; 24 mm is \
             usual."
        );
    }

    #[test]
    fn the_first_message_whose_words_are_there_is_used() {
        let mut link = finding("link_too_tight");
        link.limit = Some(12.3459);
        assert!(message(&link).contains("12.345 mm or less fits"), "{}", message(&link));
        link.limit = None;
        assert!(message(&link).contains("no bend radius fits"), "{}", message(&link));
    }

    #[test]
    fn a_finding_without_a_run_begins_with_a_capital() {
        let mut unused = finding("fitting_unused");
        unused.run = None;
        unused.words = vec![("fitting", "“C12”".into())];
        assert_eq!(message(&unused), "No port carries “C12”.");
    }

    #[test]
    fn every_row_is_whole_and_there_once() {
        for (index, row) in all_words().enumerate() {
            assert!(all_words().take(index).all(|earlier| earlier.code != row.code), "{} is there twice", row.code);
            assert!(!row.title.is_empty() && !row.title.ends_with('.'), "{}", row.code);
            assert!(row.meaning.ends_with('.'), "{}", row.code);
            assert!(!row.messages.is_empty(), "{}", row.code);
            for template in row.messages {
                assert!(template.ends_with('.') || template.ends_with('?'), "{}: {template}", row.code);
                assert_eq!(template.matches('{').count(), template.matches('}').count(), "{}", row.code);
                assert!(!template.contains("  ") && !template.contains("{run}"), "{}: {template}", row.code);
            }
        }
    }
}
