//! What a call is asked for: a JSON object with known keys.

use serde_json::{Map, Value};

use crate::design::wording::quoted;
use crate::design::{Refusal, key_pointer};

/// The keys of a request.
///
/// # Errors
/// A text that is no JSON object; `example` is one that would do.
pub(crate) fn object(text: &str, example: &str) -> Result<Map<String, Value>, Refusal> {
    match serde_json::from_str::<Value>(text) {
        Ok(Value::Object(keys)) => Ok(keys),
        _ => Err(Refusal::at("", format!("The request must be a JSON object, such as {example}."))),
    }
}

/// That a request has no other keys than those; `what` has them, such as "it".
///
/// # Errors
/// Another key, at its place.
pub(crate) fn knows(keys: &Map<String, Value>, known: &[&str], what: &str) -> Result<(), Refusal> {
    let Some(key) = keys.keys().find(|key| !known.contains(&key.as_str())) else { return Ok(()) };
    let message = format!("The request's key {} is not known; {what} has {}.", quoted(key), known.join(", "));
    Err(Refusal::at(key_pointer(key), message))
}
