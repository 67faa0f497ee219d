//! From text to design: every value checked, every reference resolved, every refusal with its place and a way out.

mod cuts;
mod dress;
mod fit;
mod fittings;
mod keep_outs;
mod leak_test;
mod material;
mod names;
mod ports;
mod process;
mod pump;
mod route;
mod runs;
mod working;

pub(super) use names::Names;

use super::node::{self, Node};
use super::place::Place;
use super::reader::{Keys, Reader};
use super::wording::{quoted, shown};
use super::{Design, Refusal};
use crate::quantity as q;

/// The `format` of every design.
pub const FORMAT: &str = "tubewright-design";
/// The newest `version` that is read, and the one that is written.
pub const VERSION: u32 = 1;

/// Steps from one version to the next: the first takes version 1 to 2, and so on. There is only version 1 so far.
const MIGRATIONS: [fn(Node) -> Node; VERSION as usize - 1] = [];

const KEYS: &[&str] =
    &["format", "version", "name", "notes", "fittings", "ports", "runs", "keep_outs", "clearance", "process", "loop"];

/// Reads a design.
///
/// # Errors
/// The first thing wrong, with its JSON Pointer and what would work; [`problems`] gives all of them.
pub fn parse(text: &str) -> Result<Design, Refusal> {
    parse_all(text).map_err(|mut refusals| {
        if refusals.is_empty() { Refusal::at("", "The text is not a design.") } else { refusals.swap_remove(0) }
    })
}

/// Everything that [`parse`] has against a text, in the order of the document; nothing if it is a design.
pub fn problems(text: &str) -> Vec<Refusal> {
    parse_all(text).err().unwrap_or_default()
}

fn parse_all(text: &str) -> Result<Design, Vec<Refusal>> {
    let node = node::read(text).map_err(|refusal| vec![refusal])?;
    let mut reader = Reader::default();
    let design = migrated(&mut reader, node).and_then(|node| design(&mut reader, &node));
    reader.finish(design)
}

/// The document in the newest version; refused where it is no design or from a newer program.
fn migrated(reader: &mut Reader, node: Node) -> Option<Node> {
    let root = Place::ROOT;
    let Node::Object { entries, .. } = &node else {
        let message = format!("A design is one JSON object in curly brackets, not {}.", node.kind());
        reader.refuse(&root, message);
        return None;
    };
    let keys = |name: &str| entries.iter().find(|(key, _)| key == name).map(|(_, value)| value);
    match keys("format") {
        Some(Node::Text(format)) if format == FORMAT => {}
        Some(Node::Text(format)) => {
            let message = format!("The format {} is not known; a design says \"{FORMAT}\".", quoted(format));
            reader.refuse(&root.key("format"), message);
        }
        Some(_) => reader.refuse(&root.key("format"), format!("The format must be the text \"{FORMAT}\".")),
        None => reader.refuse(
            &root.key("format"),
            format!(
                "The key \"format\" is missing; a design says \"format\": \"{FORMAT}\". Is it another kind of file?"
            ),
        ),
    }
    let version = match keys("version") {
        _ if reader.has_refused() => None,
        Some(Node::Number(version)) if *version > f64::from(VERSION) && version.fract() == 0.0 => {
            let message = format!(
                "The design is of version {}, from a newer Tubewright; this one reads up to version {VERSION}. \
                 Open it with the newer one.",
                shown(*version)
            );
            reader.refuse(&root.key("version"), message);
            None
        }
        Some(Node::Number(version)) => (1..=VERSION).find(|known| f64::from(*known) == *version).or_else(|| {
            let message = format!("There is no version {}; write \"version\": {VERSION}.", shown(*version));
            reader.refuse(&root.key("version"), message);
            None
        }),
        Some(_) => {
            reader.refuse(&root.key("version"), format!("The version must be a number: \"version\": {VERSION}."));
            None
        }
        None => {
            let message = format!("The key \"version\" is missing; write \"version\": {VERSION}.");
            reader.refuse(&root.key("version"), message);
            None
        }
    }?;
    Some(MIGRATIONS.iter().skip(version as usize - 1).fold(node, |node, migrate| migrate(node)))
}

fn design(reader: &mut Reader, node: &Node) -> Option<Design> {
    let root = Place::ROOT;
    let keys = reader.keys(node, &root, "A design", KEYS)?;
    let name = reader.text(&keys, &q::DESIGN_NAME);
    let notes = reader.text(&keys, &q::NOTES);
    // Names come before everything else: a name taken twice is what then makes references fail, and one bad field of
    // an item must not make all references to it bad too.
    for list in ["fittings", "ports", "runs", "keep_outs"] {
        names::unique(reader, &keys, list);
    }
    let fitting_names = names::of(&keys, "fittings");
    let port_names = names::of(&keys, "ports");
    let fittings = fittings::read(reader, &keys);
    let ports = ports::read(reader, &keys, &fitting_names);
    let runs = runs::read(reader, &keys, &port_names);
    let keep_outs = keep_outs::read(reader, &keys);
    let clearance = reader.number(&keys, &q::CLEARANCE);
    let process = process::read(reader, &keys);
    let working = working::read(reader, &keys);
    let design = Design {
        name: name?,
        notes: notes?,
        fittings: fittings?,
        ports: ports?,
        runs: runs?,
        keep_outs: keep_outs?,
        clearance: clearance?,
        process: process?,
        working: working?,
    };
    route::tied_in_bounds(reader, &design);
    Some(design)
}

/// Reads every item of a list; none where one was refused, after all were read.
fn each<T>(
    reader: &mut Reader,
    keys: &Keys<'_, '_>,
    (key, most, what): (&str, usize, &str),
    mut read: impl FnMut(&mut Reader, &Node, &Place<'_>) -> Option<T>,
) -> Option<Vec<T>> {
    let items = reader.items(keys, key, most, what);
    let list = keys.place.key(key);
    let mut all = Vec::with_capacity(items.len());
    for (index, item) in items.iter().enumerate() {
        all.extend(read(reader, item, &list.item(index)));
    }
    (all.len() == items.len()).then_some(all)
}

/// A part that may be left out or null.
fn optional<T>(
    reader: &mut Reader,
    keys: &Keys<'_, '_>,
    key: &str,
    read: fn(&mut Reader, &Node, &Place<'_>) -> Option<T>,
) -> Option<Option<T>> {
    match keys.get(key) {
        None | Some(Node::Null) => Some(None),
        Some(node) => read(reader, node, &keys.place.key(key)).map(Some),
    }
}
