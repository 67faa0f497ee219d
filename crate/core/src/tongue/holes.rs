//! Templates taken apart into words and places.

/// A stretch of a template.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Part<'t> {
    Words(&'t str),
    /// The name of a place, such as `port` of `{port}`.
    Hole(&'t str),
}

/// The stretches of a template in their order; a brace that opens no place is a word's.
pub(super) fn parts(template: &str) -> impl Iterator<Item = Part<'_>> {
    let mut rest = template;
    core::iter::from_fn(move || {
        if rest.is_empty() {
            return None;
        }
        let open = next_hole(rest);
        let (part, len) = match open {
            Some((0, name)) => (Part::Hole(name), name.len() + 2),
            Some((at, _)) => (Part::Words(&rest[..at]), at),
            None => (Part::Words(rest), rest.len()),
        };
        rest = &rest[len..];
        Some(part)
    })
}

/// The names of a template's places, sorted.
pub(super) fn names(template: &str) -> Vec<&str> {
    let hole = |part| match part {
        Part::Hole(name) => Some(name),
        Part::Words(_) => None,
    };
    let mut names: Vec<&str> = parts(template).filter_map(hole).collect();
    names.sort_unstable();
    names
}

/// Where the next place is, and its name.
fn next_hole(text: &str) -> Option<(usize, &str)> {
    text.match_indices('{').find_map(|(at, _)| {
        let (name, _) = text[at + 1..].split_once('}')?;
        let plain = !name.is_empty() && name.bytes().all(|byte| byte.is_ascii_alphanumeric() || byte == b'_');
        plain.then_some((at, name))
    })
}

#[cfg(test)]
mod tests {
    use super::{Part::*, *};

    #[test]
    fn a_template_is_words_and_places() {
        let all: Vec<_> = parts("{a}{b_2} of {} {not a place} {0}").collect();
        assert_eq!(all, [Hole("a"), Hole("b_2"), Words(" of {} {not a place} "), Hole("0")]);
        assert_eq!(names("{b} {a} {b}"), ["a", "b", "b"]);
        assert_eq!(parts("").count(), 0);
    }
}
