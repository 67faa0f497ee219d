//! The names in a list: which there are, and that each is there once.

use std::collections::{BTreeMap, BTreeSet};

use super::super::node::Node;
use super::super::reader::{Keys, Reader};
use super::super::wording::quoted;

/// The names in a list, in its order and to be looked up.
pub(in crate::design) struct Names<'n> {
    /// In the list's order.
    pub listed: Vec<&'n str>,
    known: BTreeSet<&'n str>,
}

impl Names<'_> {
    /// Whether `name` is one of them.
    pub fn has(&self, name: &str) -> bool {
        self.known.contains(name)
    }
}

/// The names in a list, as far as they can be read.
pub(super) fn of<'n>(keys: &Keys<'n, '_>, list: &str) -> Names<'n> {
    let listed: Vec<&str> = named(keys, list).map(|(_, name)| name).collect();
    let known = listed.iter().copied().collect();
    Names { listed, known }
}

/// Refuses every name that an earlier item of the list has.
pub(super) fn unique(reader: &mut Reader, keys: &Keys<'_, '_>, list: &str) {
    let mut seen = BTreeMap::new();
    for (index, name) in named(keys, list) {
        if let Some(first) = seen.insert(name, index).filter(|_| !name.is_empty()) {
            let message = format!(
                "The name {} is taken by number {} in the list. Names must differ; add a number or the part's name.",
                quoted(name),
                first + 1
            );
            let place = keys.place.key(list);
            reader.refuse(&place.item(index).key("name"), message);
            seen.insert(name, first);
        }
    }
}

fn named<'n>(keys: &Keys<'n, '_>, list: &str) -> impl Iterator<Item = (usize, &'n str)> {
    let items: &[Node] = match keys.get(list) {
        Some(Node::List { items, .. }) => items,
        _ => &[],
    };
    items.iter().enumerate().filter_map(|(index, item)| match item {
        Node::Object { entries, .. } => entries.iter().find_map(|(key, value)| match value {
            Node::Text(name) if key == "name" => Some((index, name.as_str())),
            _ => None,
        }),
        _ => None,
    })
}
