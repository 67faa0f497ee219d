//! A finding's fix as a JSON Patch on the text that was given. Checks see a design with every default filled in; in
//! the text the key may be missing, and with it the object it belongs in, and RFC 6902 replaces only what is there.

use std::cell::OnceCell;

use serde::Serialize;
use serde_json::{Value, json};

use crate::check::Finding;

/// A step of a JSON Patch; RFC 6902 wants no `value` in a `remove`.
#[derive(Serialize)]
pub(super) struct Step {
    op: &'static str,
    path: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    value: Option<Value>,
}

/// The text as a tree, made when the first fix needs it.
pub(super) struct Source<'t> {
    text: &'t str,
    tree: OnceCell<Value>,
}

impl<'t> Source<'t> {
    /// The source of a text that has been read as a design.
    pub(super) fn of(text: &'t str) -> Self {
        Self { text: text.strip_prefix('\u{feff}').unwrap_or(text), tree: OnceCell::new() }
    }

    fn has(&self, pointer: &str) -> bool {
        self.tree.get_or_init(|| serde_json::from_str(self.text).unwrap_or_default()).pointer(pointer).is_some()
    }
}

/// The steps of a finding's fix that can be applied to the text as it is.
pub(super) fn told(finding: &Finding, source: &Source<'_>) -> Option<Vec<Step>> {
    let mut steps: Vec<Step> = Vec::new();
    for step in finding.fix.as_ref()? {
        let mut op = step.op;
        if op != "remove" && !source.has(&step.path) {
            add_missing_parents(&mut steps, &step.path, source);
            op = "add";
        }
        steps.push(Step { op, path: step.path.clone(), value: step.value.clone() });
    }
    Some(steps)
}

/// Adds each missing object above `path`, empty: left out and empty mean the same defaults.
fn add_missing_parents(steps: &mut Vec<Step>, path: &str, source: &Source<'_>) {
    for (end, _) in path.match_indices('/').skip(1) {
        let parent = &path[..end];
        if source.has(parent) || steps.iter().any(|step| step.path == parent) {
            continue;
        }
        // A position in a list is made by the step itself, never by an empty item before it.
        let is_item = |part: &str| part == "-" || part.bytes().all(|byte| byte.is_ascii_digit());
        if parent.rsplit('/').next().is_some_and(is_item) {
            return;
        }
        let child = path[end + 1..].split('/').next().unwrap_or_default();
        let empty = if is_item(child) { json!([]) } else { json!({}) };
        steps.push(Step { op: "add", path: parent.to_owned(), value: Some(empty) });
    }
}
