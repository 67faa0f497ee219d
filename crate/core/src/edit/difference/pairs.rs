//! Which thing of the one design is which of the other.

use std::collections::BTreeMap;

use serde_json::Value;

use super::Side;
use super::leaves::changes;

/// A thing's indices in the two designs' lists.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Pair {
    Both(usize, usize),
    Removed(usize),
    Added(usize),
}

/// Pairs by name; `matches` pairs of those left over what should be one thing under two names. In the later list's order,
/// what is gone last.
pub(super) fn by_name(
    old: &[&str],
    new: &[&str],
    matches: impl FnOnce(&[usize], &[usize]) -> Vec<(usize, usize)>,
) -> Vec<Pair> {
    let places: BTreeMap<&str, usize> = old.iter().enumerate().map(|(index, name)| (*name, index)).collect();
    let mut earlier: Vec<Option<usize>> = new.iter().map(|name| places.get(name).copied()).collect();
    let mut gone: Vec<usize> = (0..old.len()).filter(|index| !earlier.contains(&Some(*index))).collect();
    let fresh: Vec<usize> = (0..new.len()).filter(|index| earlier[*index].is_none()).collect();
    for (was, is) in matches(&gone, &fresh) {
        earlier[is] = Some(was);
        gone.retain(|index| *index != was);
    }
    let kept = earlier.iter().enumerate().map(|(is, was)| was.map_or(Pair::Added(is), |was| Pair::Both(was, is)));
    kept.chain(gone.into_iter().map(Pair::Removed)).collect()
}

/// Pairs of a list whose things are renamed where nothing but the name differs.
pub(super) fn alike(old: &Side<'_>, new: &Side<'_>, list: &str) -> Vec<Pair> {
    let [names, later] = [old, new].map(|side| names_of(&side.tree[list]));
    by_name(&names, &later, |gone, fresh| {
        first_come(gone, fresh, |was, is| changes(old.item(list, was), new.item(list, is), "", &["name"]).is_empty())
    })
}

/// Each of the earlier things with the first of the later ones that it is the same as, each used once.
pub(super) fn first_come(
    gone: &[usize],
    fresh: &[usize],
    is_same: impl Fn(usize, usize) -> bool,
) -> Vec<(usize, usize)> {
    let mut left = fresh.to_vec();
    let mut found = Vec::new();
    for was in gone {
        if let Some(place) = left.iter().position(|is| is_same(*was, *is)) {
            found.push((*was, left.remove(place)));
        }
    }
    found
}

fn names_of(list: &Value) -> Vec<&str> {
    list.as_array().into_iter().flatten().map(|item| item["name"].as_str().unwrap_or_default()).collect()
}

/// What fittings and ports of the earlier design are called in the later one.
pub(super) struct NewNames {
    fittings: BTreeMap<String, String>,
    ports: BTreeMap<String, String>,
}

impl NewNames {
    pub(super) fn of(old: &Side<'_>, new: &Side<'_>, fittings: &[Pair], ports: &[Pair]) -> Self {
        let names = |list: &str, pairs: &[Pair]| {
            let [names, later] = [old, new].map(|side| names_of(&side.tree[list]));
            let both = pairs.iter().filter_map(|pair| match *pair {
                Pair::Both(was, is) => Some((names[was].to_owned(), later[is].to_owned())),
                _ => None,
            });
            both.collect()
        };
        Self { fittings: names("fittings", fittings), ports: names("ports", ports) }
    }

    /// A port of the earlier design as a reference in the later one would name it.
    pub(super) fn port<'n>(&'n self, name: &'n str) -> &'n str {
        self.ports.get(name).map_or(name, String::as_str)
    }

    /// A copy of a part of the earlier design whose references name things as the later design does.
    pub(super) fn carried(&self, part: &Value) -> Value {
        let mut part = part.clone();
        self.carry(&mut part);
        part
    }

    fn carry(&self, part: &mut Value) {
        match part {
            Value::Array(items) => items.iter_mut().for_each(|item| self.carry(item)),
            Value::Object(entries) => {
                for (key, value) in entries.iter_mut() {
                    let names = match key.as_str() {
                        "fitting" => &self.fittings,
                        "from" | "to" | "of" => &self.ports,
                        _ => {
                            self.carry(value);
                            continue;
                        }
                    };
                    match value.as_str().and_then(|name| names.get(name)) {
                        Some(name) => *value = Value::from(name.as_str()),
                        None => self.carry(value),
                    }
                }
            }
            _ => {}
        }
    }
}
