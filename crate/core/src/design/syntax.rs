//! A text that is not JSON: what is wrong with it, where, in plain words.

use serde_json::error::Category;

use super::{Refusal, wording};

/// The error of a text with more values than are kept.
pub(super) const TOO_MANY_VALUES: &str = "too many values";

/// Words for the reader's error; `place` points at the value that was being read.
pub(super) fn refusal(text: &str, error: &serde_json::Error, place: String) -> Refusal {
    let (line, column) = (error.line(), error.column());
    let told = error.to_string();
    let reason = told.rsplit_once(" at line ").map_or(told.as_str(), |(reason, _)| reason);
    if reason == TOO_MANY_VALUES {
        return Refusal::at("", "The text holds more values than any design has. Is it another kind of file?");
    }
    if reason == "number out of range" {
        let message = "The number is too large for any length. Give one between -1,000,000 and 1,000,000.";
        return Refusal::at(place, message);
    }
    if reason == "recursion limit exceeded" {
        let message = format!(
            "Lists and objects are nested more than 127 deep at line {line}, column {column}; \
             a design needs 8. Is it another kind of file?"
        );
        return Refusal::at("", message);
    }
    let at = format!("line {line}, column {column}");
    if let Some(word) = not_a_number(text, line, column) {
        let message =
            format!("{} at {at} is not a number. Give a number in plain digits, such as 12.5.", wording::quoted(word));
        return Refusal::at(place, message);
    }
    let message = match error.classify() {
        Category::Eof => format!("The text ends too early, at {at}: {}.", plain(reason)),
        _ => format!("The text is not JSON: at {at}, {}.", plain(reason)),
    };
    Refusal::at("", message)
}

/// NaN or an infinity, which other programs write and JSON has no place for.
fn not_a_number(text: &str, line: usize, column: usize) -> Option<&str> {
    let line = text.split('\n').nth(line.checked_sub(1)?)?;
    // The column counts bytes up to the one that did not fit, which may be inside the word.
    let before = line.get(..column.min(line.len()))?;
    let start = before.rfind(|c: char| !(c.is_ascii_alphabetic() || c == '-' || c == '+')).map_or(0, |at| at + 1);
    let rest = line.get(start..)?;
    let word = rest.split(|c: char| !(c.is_ascii_alphabetic() || c == '-' || c == '+')).next()?;
    let bare = word.trim_start_matches(['-', '+']);
    let known = ["nan", "inf", "infinity"].iter().any(|name| bare.eq_ignore_ascii_case(name));
    known.then_some(word)
}

/// The reader's own reasons in plain words; others as they are, without code marks.
fn plain(reason: &str) -> String {
    let known = match reason {
        "EOF while parsing a list" => "a list is not closed with ]",
        "EOF while parsing an object" => "an object is not closed with }",
        "EOF while parsing a string" => "a text is not closed with a quote",
        "EOF while parsing a value" => "a value is missing",
        "expected `:`" => "a colon must follow the key",
        "expected `,` or `]`" => "a comma or a closing ] must follow",
        "expected `,` or `}`" => "a comma or a closing } must follow",
        "expected value" | "expected ident" => {
            "a value must stand here: a number, a text in quotes, a list or an object"
        }
        "key must be a string" => "a key in double quotes must stand here",
        "trailing comma" => "the comma before the closing bracket must go",
        "trailing characters" => "there is more text after the design's end",
        "invalid number" => "a number is not written right; write it like 12.5",
        "invalid escape" => "a text has a backslash that JSON does not know",
        "control character (\\u0000-\\u001F) found while parsing a string" => {
            "a text has a line break or another control character in it"
        }
        other => return other.replace('`', ""),
    };
    known.to_owned()
}
