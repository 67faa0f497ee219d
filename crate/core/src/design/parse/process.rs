//! What the tubes are made of and on: shipped presets by name, or whole objects.

use super::super::making::{Factors, JointSizes, Printer, Process, ServicePrices};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader};
use super::super::wording::{listed, quoted};
use super::{fit, material, optional};
use crate::presets;
use crate::quantity::{self as q, Kind, Quantity};

const PROCESS_KEYS: &[&str] = &["material", "printer", "factors", "fit", "joint", "service"];
const PRINTER_KEYS: &[&str] = &[
    "name",
    "build_volume",
    "least_wall",
    "tolerance",
    "margin",
    "layer_mm",
    "spot_mm",
    "overhang_deg",
    "bore_deg",
    "bridge_mm",
    "seconds_per_layer",
    "most_triangles",
    "most_mb",
    "source",
];

/// The design's `process`.
pub(super) fn read(reader: &mut Reader, design: &Keys<'_, '_>) -> Option<Process> {
    let place = design.place.key("process");
    let keys = match design.get("process") {
        Some(node) => reader.keys(node, &place, "The process", PROCESS_KEYS)?,
        None => Keys::none(&place),
    };
    let material = preset_or_own(reader, &keys, &q::MATERIAL, presets::materials, |m| &m.name, material::read);
    let printer = preset_or_own(reader, &keys, &q::PRINTER, presets::printers, |p| &p.name, printer);
    let factors = factors(reader, &keys);
    let fit = optional(reader, &keys, "fit", fit::read);
    let joint = joint(reader, &keys);
    let service = optional(reader, &keys, "service", service);
    Some(Process {
        material: material?,
        printer: printer?,
        factors: factors?,
        fit: fit?,
        joint: joint?,
        service: service?,
    })
}

fn service(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<ServicePrices> {
    let keys = reader.keys(node, place, "The print service", &["price_per_cm3", "setup", "minimum", "source"])?;
    let price_per_cm3 = reader.known_number(&keys, &q::SERVICE_PRICE);
    let setup = reader.number(&keys, &q::SERVICE_SETUP);
    let minimum = reader.number(&keys, &q::SERVICE_MINIMUM);
    let source = reader.text(&keys, &q::SERVICE_SOURCE);
    Some(ServicePrices { price_per_cm3: price_per_cm3?, setup: setup?, minimum: minimum?, source: source? })
}

fn joint(reader: &mut Reader, process: &Keys<'_, '_>) -> Option<JointSizes> {
    let place = process.place.key("joint");
    let keys = match process.get("joint") {
        Some(node) => {
            reader.keys(node, &place, "The joint", &["length", "clearance", "wall", "key_depth", "bond_mpa"])?
        }
        None => Keys::none(&place),
    };
    let length = reader.number(&keys, &q::JOINT_LENGTH);
    let clearance = reader.number(&keys, &q::JOINT_CLEARANCE);
    let wall = reader.number(&keys, &q::JOINT_WALL);
    let key_depth = reader.number(&keys, &q::JOINT_KEY);
    let bond_mpa = reader.number(&keys, &q::JOINT_BOND);
    Some(JointSizes { length: length?, clearance: clearance?, wall: wall?, key_depth: key_depth?, bond_mpa: bond_mpa? })
}

fn factors(reader: &mut Reader, process: &Keys<'_, '_>) -> Option<Factors> {
    let place = process.place.key("factors");
    let keys = match process.get("factors") {
        Some(node) => reader.keys(node, &place, "The factors", &["warm", "lasting", "safety"])?,
        None => Keys::none(&place),
    };
    let warm = reader.number(&keys, &q::FACTOR_WARM);
    let lasting = reader.number(&keys, &q::FACTOR_LASTING);
    let safety = reader.number(&keys, &q::FACTOR_SAFETY);
    Some(Factors { warm: warm?, lasting: lasting?, safety: safety? })
}

/// The preset that is named (or is the default), or an object of the builder's own.
pub(super) fn preset_or_own<T>(
    reader: &mut Reader,
    keys: &Keys<'_, '_>,
    quantity: &Quantity,
    presets: fn() -> Vec<T>,
    name_of: fn(&T) -> &str,
    own: fn(&mut Reader, &Node, &Place<'_>) -> Option<T>,
) -> Option<T> {
    let Kind::Choice { of, default } = quantity.kind else { return None };
    let place = keys.place.key(quantity.name());
    let name = match keys.get(quantity.name()) {
        Some(node @ Node::Object { .. }) => return own(reader, node, &place),
        Some(Node::Text(name)) => name.as_str(),
        None => default?,
        Some(node) => {
            let message = format!(
                "{}: the name of a {of} is needed, or an object with its figures, not {}.",
                quantity.label,
                node.kind()
            );
            reader.refuse(&place, message);
            return None;
        }
    };
    let mut all = presets();
    if let Some(index) = all.iter().position(|preset| name_of(preset) == name) {
        return Some(all.swap_remove(index));
    }
    let names: Vec<&str> = all.iter().map(name_of).collect();
    let message = format!(
        "{}: there is no {of} {} here. There is {}; or give an object with your own figures.",
        quantity.label,
        quoted(name),
        listed(names.into_iter())
    );
    reader.refuse(&place, message);
    None
}

fn printer(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<Printer> {
    let keys = reader.keys(node, place, "A printer", PRINTER_KEYS)?;
    let name = reader.text(&keys, &q::PRINTER_NAME);
    let build_volume = reader.point(&keys, "build_volume", &q::BUILD_VOLUME);
    let least_wall = reader.number(&keys, &q::LEAST_WALL);
    let tolerance = reader.known_number(&keys, &q::PRINTER_TOLERANCE);
    let margin = reader.number(&keys, &q::PRINTER_MARGIN);
    let layer_mm = reader.known_number(&keys, &q::LAYER);
    let spot_mm = reader.known_number(&keys, &q::SPOT);
    let overhang_deg = reader.known_number(&keys, &q::OVERHANG);
    let bore_deg = reader.known_number(&keys, &q::BORE_ANGLE);
    let bridge_mm = reader.known_number(&keys, &q::BRIDGE);
    let seconds_per_layer = reader.known_number(&keys, &q::LAYER_TIME);
    let most_triangles = reader.known_number(&keys, &q::MOST_TRIANGLES);
    let most_mb = reader.known_number(&keys, &q::MOST_FILE);
    let source = reader.text(&keys, &q::PRINTER_SOURCE);
    Some(Printer {
        name: name?,
        build_volume: build_volume?,
        least_wall: least_wall?,
        tolerance: tolerance?,
        margin: margin?,
        layer_mm: layer_mm?,
        spot_mm: spot_mm?,
        overhang_deg: overhang_deg?,
        bore_deg: bore_deg?,
        bridge_mm: bridge_mm?,
        seconds_per_layer: seconds_per_layer?,
        most_triangles: most_triangles?,
        most_mb: most_mb?,
        source: source?,
    })
}

/// One of a few words; none where it is left out or null.
pub(super) fn one_of<T: Copy>(
    reader: &mut Reader,
    keys: &Keys<'_, '_>,
    quantity: &Quantity,
    words: &[(&'static str, T)],
) -> Option<Option<T>> {
    let found = match keys.get(quantity.name()) {
        None | Some(Node::Null) => return Some(None),
        Some(Node::Text(text)) => match words.iter().find(|(word, _)| word == text) {
            Some((_, one)) => return Some(Some(*one)),
            None => quoted(text),
        },
        Some(node) => node.kind().to_owned(),
    };
    let listed = listed(words.iter().map(|(word, _)| *word));
    let message = format!("{}: {found} will not do. There is {listed}; or leave it out.", quantity.label);
    reader.refuse(&keys.place.key(quantity.name()), message);
    None
}
