//! A JSON text as a tree that keeps the order of keys and shows repeated ones, bounded while it is read: what goes
//! beyond the bounds is counted and dropped, never kept.

use std::cell::{Cell, RefCell};

use serde::de::{DeserializeSeed, Deserializer, IgnoredAny, MapAccess, SeqAccess, Visitor};

use super::place::{Place, Step, pointer};
use super::syntax;
use super::{Refusal, wording};
use crate::quantity::MOST_STATIONS;

/// Longest text that is looked at, bytes: 16 MiB.
pub const LONGEST_TEXT: usize = 16 * 1024 * 1024;
/// Items of a list that are kept: the longest list that a design may have.
const KEPT_ITEMS: usize = MOST_STATIONS;
/// Keys of an object that are kept: several times what any part of a design has.
const KEPT_KEYS: usize = 64;
/// Values of a text that are kept; 200 runs of 2,000 corners with own radii have 2,400,000.
const MOST_VALUES: usize = 3_000_000;

/// A JSON value.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Node {
    Null,
    Flag(bool),
    Number(f64),
    Text(String),
    List { items: Vec<Node>, count: usize },
    Object { entries: Vec<(String, Node)>, count: usize },
}

/// The refusal of a text of that many bytes, for those who can tell its length before they have it.
pub fn too_long(bytes: usize) -> Refusal {
    let mebibytes = bytes as f64 / (1024.0 * 1024.0);
    Refusal::at(
        "",
        format!("The text has {mebibytes:.1} MiB; a design has at most 16 MiB. Is it another kind of file?"),
    )
}

/// Reads a whole text. Refused: a text too long or too deep, one that is not JSON, a key given twice.
pub(super) fn read(text: &str) -> Result<Node, Refusal> {
    if text.len() > LONGEST_TEXT {
        return Err(too_long(text.len()));
    }
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.trim().is_empty() {
        return Err(Refusal::at(
            "",
            "The text is empty. A design begins with { \"format\": \"tubewright-design\", \"version\": 1 }.",
        ));
    }
    let state = State::default();
    let mut deserializer = serde_json::Deserializer::from_str(text);
    let outcome = Seed(&state).deserialize(&mut deserializer).and_then(|node| deserializer.end().map(|()| node));
    let node = outcome.map_err(|error| {
        let trail = state.trail.borrow();
        let place = pointer(trail.iter().rev().map(|step| match step {
            Trail::Key(key) => Step::Key(key),
            Trail::Item(index) => Step::Item(*index),
        }));
        syntax::refusal(text, &error, place)
    })?;
    match repeated(&node, &Place::ROOT) {
        Some(refusal) => Err(refusal),
        None => Ok(node),
    }
}

/// The first key given twice.
fn repeated(node: &Node, place: &Place<'_>) -> Option<Refusal> {
    match node {
        Node::List { items, .. } => {
            items.iter().enumerate().find_map(|(index, item)| repeated(item, &place.item(index)))
        }
        Node::Object { entries, .. } => entries.iter().enumerate().find_map(|(index, (key, value))| {
            let place = place.key(key);
            if entries[..index].iter().any(|(earlier, _)| earlier == key) {
                let message = format!("The key {} is given twice. Keep one of them.", wording::quoted(key));
                return Some(Refusal::at(place.pointer(), message));
            }
            repeated(value, &place)
        }),
        _ => None,
    }
}

/// What is known while reading: how many values are kept, and on an error the steps to it, innermost first.
#[derive(Default)]
struct State {
    values: Cell<usize>,
    trail: RefCell<Vec<Trail>>,
}

enum Trail {
    Key(String),
    Item(usize),
}

struct Seed<'s>(&'s State);

impl<'de> DeserializeSeed<'de> for Seed<'_> {
    type Value = Node;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Node, D::Error> {
        let values = self.0.values.get() + 1;
        if values > MOST_VALUES {
            return Err(serde::de::Error::custom(syntax::TOO_MANY_VALUES));
        }
        self.0.values.set(values);
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Seed<'_> {
    type Value = Node;

    fn expecting(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        formatter.write_str("a JSON value")
    }

    fn visit_unit<E>(self) -> Result<Node, E> {
        Ok(Node::Null)
    }

    fn visit_bool<E>(self, value: bool) -> Result<Node, E> {
        Ok(Node::Flag(value))
    }

    fn visit_i64<E>(self, value: i64) -> Result<Node, E> {
        Ok(Node::Number(value as f64))
    }

    fn visit_u64<E>(self, value: u64) -> Result<Node, E> {
        Ok(Node::Number(value as f64))
    }

    fn visit_f64<E>(self, value: f64) -> Result<Node, E> {
        // Minus zero says nothing more than zero and would show up as "-0" in files.
        Ok(Node::Number(value + 0.0))
    }

    fn visit_str<E>(self, value: &str) -> Result<Node, E> {
        Ok(Node::Text(value.to_owned()))
    }

    fn visit_string<E>(self, value: String) -> Result<Node, E> {
        Ok(Node::Text(value))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Node, A::Error> {
        let mut items = Vec::new();
        loop {
            let index = items.len();
            if index == KEPT_ITEMS {
                break;
            }
            match list.next_element_seed(Seed(self.0)).map_err(|error| self.0.note(Trail::Item(index), error))? {
                Some(item) => items.push(item),
                None => return Ok(Node::List { items, count: index }),
            }
        }
        let mut count = items.len();
        while list.next_element::<IgnoredAny>().map_err(|error| self.0.note(Trail::Item(count), error))?.is_some() {
            count += 1;
        }
        Ok(Node::List { items, count })
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Node, A::Error> {
        let mut entries: Vec<(String, Node)> = Vec::new();
        while let Some(key) = map.next_key::<String>()? {
            if entries.len() == KEPT_KEYS {
                map.next_value::<IgnoredAny>()?;
                let mut count = KEPT_KEYS + 1;
                while map.next_entry::<IgnoredAny, IgnoredAny>()?.is_some() {
                    count += 1;
                }
                return Ok(Node::Object { entries, count });
            }
            match map.next_value_seed(Seed(self.0)) {
                Ok(value) => entries.push((key, value)),
                Err(error) => return Err(self.0.note(Trail::Key(key), error)),
            }
        }
        let count = entries.len();
        // A large design is hundreds of thousands of objects with one key each; spare room in each would add up.
        entries.shrink_to_fit();
        Ok(Node::Object { entries, count })
    }
}

impl State {
    /// Notes on the way out of an error where it was.
    fn note<E>(&self, step: Trail, error: E) -> E {
        self.trail.borrow_mut().push(step);
        error
    }
}

impl Node {
    /// What kind of value it is, in words.
    pub fn kind(&self) -> &'static str {
        match self {
            Node::Null => "null",
            Node::Flag(_) => "true or false",
            Node::Number(_) => "a number",
            Node::Text(_) => "a text",
            Node::List { .. } => "a list",
            Node::Object { .. } => "an object",
        }
    }

    /// Whether some of it was beyond the bounds and is not kept.
    pub fn is_cut(&self) -> bool {
        match self {
            Node::List { items, count } => items.len() < *count || items.iter().any(Node::is_cut),
            Node::Object { entries, count } => {
                entries.len() < *count || entries.iter().any(|(_, value)| value.is_cut())
            }
            _ => false,
        }
    }
}
