//! A table of another language's words, read from a request.

use serde_json::{Map, Value};

use super::Tongue;
use super::holes::names;
use super::sentence::Sentence;
use crate::design::wording::{disturbs, quoted};
use crate::design::{Refusal, key_pointer};
use crate::request;

const AT: &str = "/words";
/// Most rows, bytes of all, and bytes of one of another language's: many times what the engine can say.
const MOST_ROWS: usize = 5_000;
const MOST_BYTES: usize = 300_000;
const LONGEST_ROW: usize = 4_000;
/// Longest tag of a language (RFC 5646, 4.4.1).
const LONGEST_TAG: usize = 35;
/// Longest mark beside a quoted name, bytes.
const LONGEST_QUOTE: usize = 8;

/// The language of a request's `words`, such as `{ "language": "de", "decimal": ",", "quotes": ["„", "“"], "words": { "Trim":
/// "Zugabe" } }`; English where it has none. A row whose places are not those of its English is left out.
///
/// # Errors
/// What is no such table, or is too large for one.
pub(crate) fn read(words: Option<&Value>) -> Result<Tongue, Refusal> {
    let mut tongue = Tongue::english();
    let Some(words) = words else { return Ok(tongue) };
    const EXAMPLE: &str =
        "{ \"language\": \"de\", \"decimal\": \",\", \"words\": { \"Trim, {0} mm\": \"Zugabe, {0} mm\" } }";
    let Value::Object(keys) = words else {
        return Err(Refusal::at(AT, format!("The words of a language must be an object, such as {EXAMPLE}.")));
    };
    request::knows(keys, &["language", "decimal", "quotes", "words"], "\"words\"")
        .map_err(|refusal| Refusal::at(format!("{AT}{}", refusal.path), refusal.message))?;
    tongue.language = language(keys.get("language"))?;
    tongue.decimal = decimal(keys.get("decimal"))?;
    if let Some(quotes) = keys.get("quotes") {
        tongue.quotes = marks(quotes)?;
    }
    let at = format!("{AT}/words");
    let Some(Value::Object(rows)) = keys.get("words") else {
        let message = format!("The rows of a language must be an object from English to its words, as in {EXAMPLE}.");
        return Err(Refusal::at(at, message));
    };
    take(&mut tongue, rows, &at)?;
    Ok(tongue)
}

fn take(tongue: &mut Tongue, rows: &Map<String, Value>, at: &str) -> Result<(), Refusal> {
    if rows.len() > MOST_ROWS {
        let message = format!("{} rows of words are too many; {MOST_ROWS} are possible.", rows.len());
        return Err(Refusal::at(at, message));
    }
    let mut bytes = 0;
    for (english, other) in rows {
        let row = || format!("{at}{}", key_pointer(english));
        let Value::String(other) = other else {
            let message = format!("The row of {} must be text in quotes.", quoted(english));
            return Err(Refusal::at(row(), message));
        };
        if other.len() > LONGEST_ROW {
            let message =
                format!("The row of {} has {} bytes; {LONGEST_ROW} are possible.", quoted(english), other.len());
            return Err(Refusal::at(row(), message));
        }
        if let Some(odd) = other.chars().find(|c| disturbs(*c)) {
            let message = format!(
                "The row of {} holds an invisible character, U+{:04X}, that would garble how it is shown. Delete it.",
                quoted(english),
                u32::from(odd)
            );
            return Err(Refusal::at(row(), message));
        }
        bytes += english.len() + other.len();
        if bytes > MOST_BYTES {
            let message =
                format!("The rows of words have more than {MOST_BYTES} bytes. Leave out what files do not say.");
            return Err(Refusal::at(at, message));
        }
        if names(english) == names(other) {
            tongue.sentences.extend(Sentence::of(english, other));
            tongue.rows.insert(english.clone(), other.clone());
        }
    }
    tongue.sentences.sort_by_key(|sentence| core::cmp::Reverse(sentence.words()));
    Ok(())
}

/// A tag's form: letters, then groups of letters and digits after hyphens (RFC 5646, 2.1).
fn language(stated: Option<&Value>) -> Result<String, Refusal> {
    let is_tag = |tag: &str| {
        let mut groups = tag.split('-');
        let first = groups.next().unwrap_or_default();
        let letters = (2..=8).contains(&first.len()) && first.bytes().all(|byte| byte.is_ascii_alphabetic());
        letters
            && tag.len() <= LONGEST_TAG
            && groups
                .all(|group| (1..=8).contains(&group.len()) && group.bytes().all(|byte| byte.is_ascii_alphanumeric()))
    };
    match stated.and_then(Value::as_str) {
        Some(tag) if is_tag(tag) => Ok(tag.to_owned()),
        _ => Err(Refusal::at(
            format!("{AT}/language"),
            "The language must be a tag of letters, such as \"de\" or \"pt-BR\".",
        )),
    }
}

fn decimal(stated: Option<&Value>) -> Result<char, Refusal> {
    match stated.map(|value| value.as_str().unwrap_or_default()) {
        None | Some(".") => Ok('.'),
        Some(",") => Ok(','),
        Some(_) => Err(Refusal::at(format!("{AT}/decimal"), "The mark before decimals must be \".\" or \",\".")),
    }
}

fn marks(stated: &Value) -> Result<[String; 2], Refusal> {
    let mark = |value: &Value| {
        let mark = value.as_str()?;
        (mark.len() <= LONGEST_QUOTE && !mark.chars().any(disturbs)).then(|| mark.to_owned())
    };
    let both = match stated.as_array().map(Vec::as_slice) {
        Some([open, close]) => mark(open).zip(mark(close)),
        _ => None,
    };
    both.map(|(open, close)| [open, close]).ok_or_else(|| {
        let message = "The marks round a name must be two short texts, such as [\"„\", \"“\"].";
        Refusal::at(format!("{AT}/quotes"), message)
    })
}
