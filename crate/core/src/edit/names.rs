//! Names for new things: after the thing they come from, and taken by nothing else.

use std::collections::BTreeSet;

use crate::quantity::{Kind, Quantity};

/// `of` with `word` behind it, and a number behind that where such a name is taken: "pump to block copy 2". A name that
/// would be longer than `quantity` allows is cut first.
pub(super) fn fresh<'a>(taken: impl Iterator<Item = &'a str>, of: &str, word: &str, quantity: &Quantity) -> String {
    let taken: BTreeSet<&str> = taken.collect();
    let most = match quantity.kind {
        Kind::Text { most, .. } => most,
        _ => usize::MAX,
    };
    // One more number than there are names cannot be taken as well.
    (1..=taken.len() + 1)
        .map(|number| {
            let tail = if number == 1 { format!(" {word}") } else { format!(" {word} {number}") };
            let stem: String = of.chars().take(most.saturating_sub(tail.chars().count())).collect();
            format!("{}{tail}", stem.trim_end())
        })
        .find(|name| !taken.contains(name.as_str()))
        .unwrap_or_else(|| of.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::RUN_NAME;

    #[test]
    fn a_name_is_new_and_short_enough() {
        let fresh = |taken: &[&str], of: &str| fresh(taken.iter().copied(), of, "copy", &RUN_NAME);
        assert_eq!(fresh(&["a"], "a"), "a copy");
        assert_eq!(fresh(&["a", "a copy"], "a"), "a copy 2");
        assert_eq!(fresh(&["a", "a copy", "a copy 2"], "a"), "a copy 3");
        let long = "ü".repeat(200);
        let name = fresh(&[&long], &long);
        assert_eq!((name.chars().count(), name.ends_with("ü copy")), (200, true));
    }
}
