//! Two parts of a design leaf by leaf.

use serde::Serialize;
use serde_json::Value;

/// One value that differs; null where a design has none there.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub(super) struct Change {
    /// JSON Pointer into the later design, from which the page has the value's label and unit.
    pub key: String,
    pub before: Value,
    pub after: Value,
}

/// The leaves in which two trees differ; keys of `without` on the trees' first level are left out.
pub(super) fn changes(before: &Value, after: &Value, place: &str, without: &[&str]) -> Vec<Change> {
    let mut found = Vec::new();
    walk(before, after, place, without, &mut found);
    found
}

fn walk(before: &Value, after: &Value, place: &str, without: &[&str], found: &mut Vec<Change>) {
    if is_branch(before) || is_branch(after) {
        for key in keys(before, after) {
            if !without.contains(&key.as_str()) {
                walk(part(before, &key), part(after, &key), &format!("{place}/{key}"), &[], found);
            }
        }
    } else if !same(before, after) {
        found.push(Change { key: place.to_owned(), before: before.clone(), after: after.clone() });
    }
}

fn is_branch(value: &Value) -> bool {
    value.is_object() || value.is_array()
}

/// 12 and 12.0 are one number.
fn same(a: &Value, b: &Value) -> bool {
    match (a.as_f64(), b.as_f64()) {
        (Some(a), Some(b)) => a == b,
        _ => a == b,
    }
}

/// The keys of both, those of the later first.
fn keys(before: &Value, after: &Value) -> Vec<String> {
    let of = |value: &Value| match value {
        Value::Object(entries) => entries.keys().cloned().collect(),
        Value::Array(items) => (0..items.len()).map(|index| index.to_string()).collect(),
        _ => Vec::new(),
    };
    let mut keys: Vec<String> = of(after);
    let more: Vec<String> = of(before).into_iter().filter(|key| !keys.contains(key)).collect();
    keys.extend(more);
    keys
}

fn part<'v>(value: &'v Value, key: &str) -> &'v Value {
    let found = match value {
        Value::Object(entries) => entries.get(key),
        Value::Array(items) => key.parse::<usize>().ok().and_then(|index| items.get(index)),
        _ => None,
    };
    found.unwrap_or(&Value::Null)
}
