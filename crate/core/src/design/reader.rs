//! Reads values out of the tree, and keeps every refusal on the way, so that a form can show all of them at once.

use super::node::Node;
use super::parse::Names;
use super::place::Place;
use super::wording::{self, disturbs, quoted, shown};
use super::{Refusal, model::Design};
use crate::quantity::{Kind, Quantity};

/// Refusals that are kept; a text with more is not worth reading on.
const MOST_REFUSALS: usize = 200;

/// Collects refusals while values are read.
#[derive(Default)]
pub(super) struct Reader {
    refusals: Vec<Refusal>,
}

/// The keys of an object, all of them known.
#[derive(Clone, Copy)]
pub(super) struct Keys<'n, 'p> {
    entries: &'n [(String, Node)],
    /// Where the object is.
    pub place: &'p Place<'p>,
}

impl<'n, 'p> Keys<'n, 'p> {
    /// An object that was left out: every key takes its default.
    pub fn none(place: &'p Place<'p>) -> Self {
        Keys { entries: &[], place }
    }

    /// The value of a key.
    pub fn get(&self, key: &str) -> Option<&'n Node> {
        self.entries.iter().find(|(name, _)| name == key).map(|(_, value)| value)
    }
}

impl Reader {
    /// The design if nothing was refused, or everything that was.
    pub fn finish(self, design: Option<Design>) -> Result<Design, Vec<Refusal>> {
        match design {
            Some(design) if self.refusals.is_empty() => Ok(design),
            _ => Err(self.refusals),
        }
    }

    /// Whether something was refused.
    pub fn has_refused(&self) -> bool {
        !self.refusals.is_empty()
    }

    /// Keeps a refusal.
    pub fn refuse(&mut self, place: &Place<'_>, message: impl Into<String>) {
        if self.refusals.len() < MOST_REFUSALS {
            self.refusals.push(Refusal::at(place.pointer(), message));
        }
    }

    /// The keys of an object. Refused: anything else, and keys that are not among `known`.
    pub fn keys<'n, 'p>(
        &mut self,
        node: &'n Node,
        place: &'p Place<'p>,
        what: &str,
        known: &[&str],
    ) -> Option<Keys<'n, 'p>> {
        let Node::Object { entries, .. } = node else {
            self.refuse(place, format!("{what} must be an object with {}, not {}.", keys_listed(known), node.kind()));
            return None;
        };
        for (key, _) in entries {
            if !known.contains(&key.as_str()) {
                let advice = match nearest(key, known) {
                    Some(near) => format!("Did you mean \"{near}\"? {what} has {}.", keys_listed(known)),
                    None => format!("{what} has {}.", keys_listed(known)),
                };
                self.refuse(&place.key(key), format!("The key {} is not known here. {advice}", quoted(key)));
            }
        }
        // The known keys are still read, so that their refusals are told too; `finish` refuses the whole.
        Some(Keys { entries, place })
    }

    /// The items of a list, at most `most`; a list left out is empty.
    pub fn items<'n>(&mut self, keys: &Keys<'n, '_>, key: &str, most: usize, what: &str) -> &'n [Node] {
        let place = keys.place.key(key);
        match keys.get(key) {
            None => &[],
            Some(Node::List { items, count }) if *count <= most && items.len() == *count => items,
            Some(Node::List { count, .. }) => {
                self.refuse(&place, format!("There are {count} {what}; at most {most} are possible."));
                &[]
            }
            Some(node) => {
                self.refuse(&place, format!("The {what} must be a list in square brackets, not {}.", node.kind()));
                &[]
            }
        }
    }

    /// A number under its own key, in range; left out, its default; refused where there is none.
    pub fn number(&mut self, keys: &Keys<'_, '_>, quantity: &Quantity) -> Option<f64> {
        let place = keys.place.key(quantity.name());
        match keys.get(quantity.name()) {
            Some(node) => self.number_at(node, &place, quantity, quantity.label),
            None => quantity.default_number().or_else(|| self.missing(&place, quantity)),
        }
    }

    /// A number under its own key, in range, or none where it is left out.
    pub fn optional_number(&mut self, keys: &Keys<'_, '_>, quantity: &Quantity) -> Option<Option<f64>> {
        let place = keys.place.key(quantity.name());
        match keys.get(quantity.name()) {
            Some(node) => self.number_at(node, &place, quantity, quantity.label).map(Some),
            None => Some(None),
        }
    }

    /// A figure that may not be known: none where it is left out or null.
    pub fn known_number(&mut self, keys: &Keys<'_, '_>, quantity: &Quantity) -> Option<Option<f64>> {
        match keys.get(quantity.name()) {
            Some(Node::Null) => Some(None),
            _ => self.optional_number(keys, quantity),
        }
    }

    /// Three numbers, each in range of `quantity`, whose row ends in `/*`.
    pub fn point(&mut self, keys: &Keys<'_, '_>, key: &str, quantity: &Quantity) -> Option<[f64; 3]> {
        let place = keys.place.key(key);
        let items = self.three(keys.get(key), &place, quantity)?;
        let [x, y, z] = [0, 1, 2].map(|axis| {
            let label = axis_label(quantity.label, axis);
            self.number_at(&items[axis], &place.item(axis), quantity, &label)
        });
        Some([x?, y?, z?])
    }

    /// The three items of a point.
    pub fn three<'n>(
        &mut self,
        node: Option<&'n Node>,
        place: &Place<'_>,
        quantity: &Quantity,
    ) -> Option<&'n [Node; 3]> {
        let label = quantity.label;
        let message = match node {
            Some(Node::List { items, count }) => match <&[Node; 3]>::try_from(items.as_slice()) {
                Ok(three) if *count == 3 => return Some(three),
                _ => format!(
                    "{label}: three numbers are needed, [x, y, z]; there {} {count}.",
                    if *count == 1 { "is" } else { "are" }
                ),
            },
            Some(node) => format!("{label}: three numbers are needed, [x, y, z], not {}.", node.kind()),
            None => format!("{label} is missing. Give three numbers, [x, y, z]."),
        };
        self.refuse(place, message);
        None
    }

    /// A number in range.
    pub fn number_at(&mut self, node: &Node, place: &Place<'_>, quantity: &Quantity, label: &str) -> Option<f64> {
        debug_assert!(place.is(quantity.key), "{} is read at {}", quantity.key, place.pointer());
        let range = quantity.range()?;
        let value = match node {
            Node::Number(value) => *value,
            Node::Text(text) => {
                self.refuse(place, format!("{label}: {}", half_typed(text, quantity)));
                return None;
            }
            _ => {
                self.refuse(place, format!("{label}: {} is no number. {}", capital(node.kind()), quantity.wanted()));
                return None;
            }
        };
        if range.holds(value) {
            return Some(value);
        }
        let found = range.with_unit(&shown(value));
        self.refuse(place, format!("{label}: {found} is out of range. Give a number {}.", range.words()));
        None
    }

    /// A text under its own key; left out, its default.
    pub fn text(&mut self, keys: &Keys<'_, '_>, quantity: &Quantity) -> Option<String> {
        let Kind::Text { least, most, default } = quantity.kind else { return None };
        let place = keys.place.key(quantity.name());
        debug_assert!(place.is(quantity.key), "{} is read at {}", quantity.key, place.pointer());
        let label = quantity.label;
        let text = match keys.get(quantity.name()) {
            Some(Node::Text(text)) => text,
            Some(node) => {
                let message = format!("{label}: a text in quotes is needed, not {}.", node.kind());
                self.refuse(&place, message);
                return None;
            }
            None => return default.map(str::to_owned).or_else(|| self.missing(&place, quantity)),
        };
        let count = text.chars().count();
        if count > most {
            self.refuse(&place, format!("{label}: {count} characters are too many; {most} are possible."));
            return None;
        }
        if least > 0 && text.trim().is_empty() {
            self.refuse(&place, format!("{label}: it is empty. Give it a name, such as \"pump out\"."));
            return None;
        }
        let lines = most > 1_000;
        if let Some(bad) = text.chars().find(|c| disturbs(*c) && !(lines && matches!(c, '\n' | '\r' | '\t'))) {
            let message = format!(
                "{label}: it holds an invisible character, U+{:04X}, that would garble how it is shown. \
                 Delete it, or type the text anew.",
                bad as u32
            );
            self.refuse(&place, message);
            return None;
        }
        Some(text.clone())
    }

    /// True or false under its own key; left out, its default.
    pub fn flag(&mut self, keys: &Keys<'_, '_>, quantity: &Quantity) -> Option<bool> {
        let Kind::Flag { default } = quantity.kind else { return None };
        match keys.get(quantity.name()) {
            None => Some(default),
            Some(Node::Flag(value)) => Some(*value),
            Some(node) => {
                let place = keys.place.key(quantity.name());
                self.refuse(
                    &place,
                    format!("{}: {} will not do. {}", quantity.label, capital(node.kind()), quantity.wanted()),
                );
                None
            }
        }
    }

    /// A name that refers to something, under its own key; one of `names`.
    pub fn reference(&mut self, keys: &Keys<'_, '_>, quantity: &Quantity, names: &Names<'_>) -> Option<String> {
        let Kind::Choice { of, .. } = quantity.kind else { return None };
        let place = keys.place.key(quantity.name());
        debug_assert!(place.is(quantity.key), "{} is read at {}", quantity.key, place.pointer());
        let label = quantity.label;
        let message = match keys.get(quantity.name()) {
            None => return self.missing(&place, quantity),
            Some(Node::Text(name)) if names.has(name) => return Some(name.clone()),
            Some(Node::Text(_)) if names.listed.is_empty() => {
                format!("{label}: the design has no {of} yet. Add one first.")
            }
            Some(Node::Text(name)) if name.is_empty() => {
                format!("{label}: no {of} is chosen. The design has {}.", wording::listed(names.listed.iter().copied()))
            }
            Some(Node::Text(name)) => {
                let has = wording::listed(names.listed.iter().copied());
                format!("{label}: there is no {of} named {}. The design has {has}.", quoted(name))
            }
            Some(node) => format!("{label}: the name of a {of} is needed, in quotes, not {}.", node.kind()),
        };
        self.refuse(&place, message);
        None
    }

    fn missing<T>(&mut self, place: &Place<'_>, quantity: &Quantity) -> Option<T> {
        let message = format!("{} is missing: the key \"{}\". {}", quantity.label, quantity.name(), quantity.wanted());
        self.refuse(place, message);
        None
    }
}

/// The label of one coordinate: "Position x".
pub(super) fn axis_label(label: &str, axis: usize) -> String {
    format!("{label} {}", ["x", "y", "z"].get(axis).unwrap_or(&""))
}

/// What to say about a text where a number belongs: in a form, mostly something half typed.
fn half_typed(text: &str, quantity: &Quantity) -> String {
    let trimmed = text.trim();
    if trimmed.is_empty() {
        return quantity.wanted();
    }
    let unit = quantity.range().map_or("", |range| range.unit);
    if trimmed.chars().count() <= 40 {
        if is_plain_number(trimmed) {
            return format!("give the number without quotes, {trimmed}.");
        }
        let with_point = trimmed.replacen(',', ".", 1);
        if is_plain_number(&with_point) {
            return format!("write {with_point}, with a point.");
        }
        let digits = trimmed.trim_end_matches(|c: char| !c.is_ascii_digit());
        let tail = trimmed[digits.len()..].trim();
        if is_plain_number(digits) && !tail.is_empty() && tail == unit {
            return format!("leave the unit out and write {digits}.");
        }
    }
    format!("{} is no number. {}", quoted(text), quantity.wanted())
}

/// Digits with at most a sign, a point and an exponent; not the words that Rust also takes.
fn is_plain_number(text: &str) -> bool {
    text.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | '-' | '+' | 'e' | 'E'))
        && text.parse::<f64>().is_ok_and(f64::is_finite)
}

/// The known key that is most like a mistyped one, if one is.
fn nearest<'k>(key: &str, known: &[&'k str]) -> Option<&'k str> {
    if key.chars().count() > 40 {
        return None;
    }
    let key = key.to_lowercase().replace([' ', '-'], "_");
    let likeness = |name: &str| strsim::normalized_damerau_levenshtein(&key, name);
    let best = known.iter().copied().max_by(|a, b| likeness(a).total_cmp(&likeness(b)))?;
    (likeness(best) > 0.6).then_some(best)
}

fn keys_listed(known: &[&str]) -> String {
    match known {
        [one] => format!("the key \"{one}\""),
        many => format!("the keys {}", many.iter().map(|key| format!("\"{key}\"")).collect::<Vec<_>>().join(", ")),
    }
}

fn capital(words: &str) -> String {
    let mut chars = words.chars();
    chars.next().map_or(String::new(), |first| first.to_uppercase().chain(chars).collect())
}
