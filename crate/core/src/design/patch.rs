//! Changes to a design as JSON Patch (RFC 6902): what a finding's fix is made of, and how it is applied.

use json_patch::{Patch, PatchErrorKind, PatchOperation};
use serde_json::Value;

use super::node;
use super::{Design, Refusal, canonical, parse, wording};

/// Longest patch that is looked at, bytes.
const LONGEST_PATCH: usize = 1024 * 1024;
/// Most steps of a patch.
const MOST_STEPS: usize = 1_000;
/// Most values of a text that is changed by a patch, and of what becomes of it: a library's tree is larger than ours.
const MOST_VALUES: usize = 1_000_000;
/// Deepest nesting that a step may build; a text may have no more either.
const DEEPEST: usize = 127;

/// The design that a patch makes of a text, in canonical form. The text itself may still be one that [`parse`]
/// refuses, if the patch mends it.
///
/// # Errors
/// A text that is not JSON, a patch that is none or does not fit the text, and a result that is no design. Nothing is
/// changed then.
pub fn patched(text: &str, patch: &str) -> Result<String, Refusal> {
    let tree = node::read(text)?;
    if tree.is_cut() {
        // Too long a list or too many keys: parsing says which.
        return parse(text).map(|design: Design| canonical(&design));
    }
    let steps = steps(patch)?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut document: Value = serde_json::from_str(text).map_err(|error| Refusal::at("", error.to_string()))?;
    as_floats(&mut document);
    let mut values = size(&document).values;
    if values > MOST_VALUES {
        return Err(Refusal::at("", "The design is too large to be changed step by step; change its text."));
    }
    for (index, step) in steps.iter().enumerate() {
        values += added(&document, step).ok_or_else(|| failed(index, step, "it would make the design too large"))?;
        if values > MOST_VALUES {
            return Err(failed(index, step, "it would make the design too large"));
        }
        json_patch::patch_unsafe(&mut document, std::slice::from_ref(step))
            .map_err(|error| failed(index, step, why(&error.kind)))?;
    }
    parse(&document.to_string()).map(|design| canonical(&design))
}

fn steps(patch: &str) -> Result<Vec<PatchOperation>, Refusal> {
    if patch.len() > LONGEST_PATCH {
        return Err(Refusal::at("", "The change is too long; at most 1 MiB is possible."));
    }
    let Patch(mut steps) = serde_json::from_str(patch).map_err(|error| {
        Refusal::at(
            "",
            format!(
                "The change is no JSON Patch, a list of steps such as \
            [{{ \"op\": \"replace\", \"path\": \"/clearance\", \"value\": 2 }}]: {error}."
            ),
        )
    })?;
    if steps.len() > MOST_STEPS {
        return Err(Refusal::at("", format!("The change has {} steps; at most 1,000 are possible.", steps.len())));
    }
    for step in &mut steps {
        if let PatchOperation::Test(test) = step {
            as_floats(&mut test.value);
        }
    }
    Ok(steps)
}

/// Every number as a float: a `test` is of values (RFC 6902, section 4.6), and 8 is 8.0.
fn as_floats(value: &mut Value) {
    match value {
        Value::Number(number) => {
            if let Some(float) = number.as_f64().and_then(serde_json::Number::from_f64) {
                *number = float;
            }
        }
        Value::Array(items) => items.iter_mut().for_each(as_floats),
        Value::Object(entries) => entries.values_mut().for_each(as_floats),
        _ => {}
    }
}

fn failed(index: usize, step: &PatchOperation, why: &str) -> Refusal {
    let path = step.path().to_string();
    let message = format!("Step {} of the change, at {}, cannot be made: {why}.", index + 1, wording::quoted(&path));
    Refusal::at(path, message)
}

fn why(kind: &PatchErrorKind) -> &'static str {
    match kind {
        PatchErrorKind::TestFailed => "the design holds another value there now",
        PatchErrorKind::InvalidFromPointer => "there is nothing at the place it takes from",
        PatchErrorKind::CannotMoveInsideItself => "a thing cannot be moved into itself",
        _ => "there is no such place in the design",
    }
}

/// How many values a step adds at most; none where it would nest too deep.
fn added(document: &Value, step: &PatchOperation) -> Option<usize> {
    let at = step.path().tokens().count();
    let part = match step {
        PatchOperation::Add(step) => size(&step.value),
        PatchOperation::Replace(step) => size(&step.value),
        PatchOperation::Copy(step) => document.pointer(step.from.as_str()).map(size).unwrap_or_default(),
        PatchOperation::Move(step) => {
            Size { values: 0, ..document.pointer(step.from.as_str()).map(size).unwrap_or_default() }
        }
        PatchOperation::Remove(_) | PatchOperation::Test(_) => return Some(0),
    };
    (at + part.depth <= DEEPEST).then_some(part.values)
}

#[derive(Default)]
struct Size {
    values: usize,
    depth: usize,
}

fn size(value: &Value) -> Size {
    let parts = |sizes: &mut dyn Iterator<Item = Size>| {
        sizes.fold(Size { values: 1, depth: 1 }, |all, part| Size {
            values: all.values + part.values,
            depth: all.depth.max(part.depth + 1),
        })
    };
    match value {
        Value::Array(items) => parts(&mut items.iter().map(size)),
        Value::Object(entries) => parts(&mut entries.values().map(size)),
        _ => Size { values: 1, depth: 1 },
    }
}
