//! A finding's fix as a JSON Patch on the text that was given. Checks see a design with every default filled in; in
//! the text the key may be missing, and with it the object it belongs in, and RFC 6902 replaces only what is there.

use std::cell::OnceCell;

use serde::Serialize;
use serde_json::{Value, json};

use crate::check::PatchStep;

/// A step of a JSON Patch; RFC 6902 wants no `value` in a `remove`.
#[derive(Serialize)]
pub(crate) struct Step {
    op: &'static str,
    path: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    value: Option<Value>,
}

/// The text as a tree, made when the first fix needs it.
pub(crate) struct Source<'t> {
    text: &'t str,
    tree: OnceCell<Value>,
}

impl<'t> Source<'t> {
    /// The source of a text that has been read as a design.
    pub(crate) fn of(text: &'t str) -> Self {
        Self { text: text.strip_prefix('\u{feff}').unwrap_or(text), tree: OnceCell::new() }
    }

    /// Whether the text has something there.
    pub(crate) fn has(&self, pointer: &str) -> bool {
        self.tree.get_or_init(|| serde_json::from_str(self.text).unwrap_or_default()).pointer(pointer).is_some()
    }
}

/// Steps on a design with every default filled in, so that they can be applied to the text as it is.
pub(crate) fn on_text(fix: &[PatchStep], source: &Source<'_>) -> Vec<Step> {
    let mut steps: Vec<Step> = Vec::new();
    for step in fix {
        let mut op = step.op;
        if op != "remove" && !source.has(&step.path) {
            add_missing_parents(&mut steps, &step.path, source);
            op = "add";
        }
        steps.push(Step { op, path: step.path.clone(), value: step.value.clone() });
    }
    steps
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

#[cfg(test)]
mod tests {
    use super::*;

    fn steps(text: &str, fix: &[(&'static str, &str, Option<Value>)]) -> Value {
        let fix: Vec<PatchStep> =
            fix.iter().map(|(op, path, value)| PatchStep { op, path: (*path).into(), value: value.clone() }).collect();
        serde_json::to_value(on_text(&fix, &Source::of(text))).unwrap()
    }

    #[test]
    fn what_is_there_is_replaced_and_what_is_not_is_added() {
        let text = r#"{"runs": [{"bend_radius": 5, "route": [{"corner": [1, 2, 3]}]}]}"#;
        let one = |op, path: &str| steps(text, &[(op, path, Some(json!(9)))]);
        assert_eq!(
            one("replace", "/runs/0/bend_radius"),
            json!([{"op": "replace", "path": "/runs/0/bend_radius", "value": 9}])
        );
        assert_eq!(
            one("replace", "/runs/0/route/0/bend_radius"),
            json!([{"op": "add", "path": "/runs/0/route/0/bend_radius", "value": 9}])
        );
        // An item put before another stays an insertion.
        assert_eq!(one("add", "/runs/0/route/0"), json!([{"op": "add", "path": "/runs/0/route/0", "value": 9}]));
        assert_eq!(
            steps(text, &[("remove", "/runs/0/route/0", None)]),
            json!([{"op": "remove", "path": "/runs/0/route/0"}])
        );
    }

    #[test]
    fn missing_parents_are_added_once() {
        let text = r#"{"runs": [{"name": "a"}]}"#;
        let fix = [
            ("replace", "/runs/0/ends/chamfer_length", Some(json!(1))),
            ("replace", "/runs/0/ends/edge_break", Some(json!(0))),
            ("add", "/runs/0/route/-", Some(json!({"corner": [1, 2, 3]}))),
        ];
        assert_eq!(
            steps(text, &fix),
            json!([
                {"op": "add", "path": "/runs/0/ends", "value": {}},
                {"op": "add", "path": "/runs/0/ends/chamfer_length", "value": 1},
                {"op": "add", "path": "/runs/0/ends/edge_break", "value": 0},
                {"op": "add", "path": "/runs/0/route", "value": []},
                {"op": "add", "path": "/runs/0/route/-", "value": {"corner": [1, 2, 3]}},
            ])
        );
    }
}
