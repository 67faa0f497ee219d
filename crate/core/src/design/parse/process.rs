//! What the tubes are made of and on, and the loop's working state: shipped presets by name, or whole objects.

use super::super::making::{Factors, Printer, Process};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader};
use super::super::wording::{listed, quoted};
use super::super::working::{Base, Coolant, Loop};
use super::material;
use crate::presets;
use crate::quantity::{self as q, Kind, Quantity};

/// The design's `process`.
pub(super) fn read(reader: &mut Reader, design: &Keys<'_, '_>) -> Option<Process> {
    let place = design.place.key("process");
    let keys = match design.get("process") {
        Some(node) => reader.keys(node, &place, "The process", &["material", "printer", "factors"])?,
        None => Keys::none(&place),
    };
    let material = preset_or_own(reader, &keys, &q::MATERIAL, presets::materials, |m| &m.name, material::read);
    let printer = preset_or_own(reader, &keys, &q::PRINTER, presets::printers, |p| &p.name, printer);
    let factors = factors(reader, &keys);
    Some(Process { material: material?, printer: printer?, factors: factors? })
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

/// The design's `loop`.
pub(super) fn read_loop(reader: &mut Reader, design: &Keys<'_, '_>) -> Option<Loop> {
    let place = design.place.key("loop");
    let keys = match design.get("loop") {
        Some(node) => {
            let known = &["flow_l_per_h", "coolant", "cold_c", "working_c", "fault_c", "pressure_kpa", "test_kpa", "up"];
            reader.keys(node, &place, "The loop", known)?
        }
        None => Keys::none(&place),
    };
    let flow_l_per_h = reader.number(&keys, &q::FLOW);
    let coolant = preset_or_own(reader, &keys, &q::COOLANT, presets::coolants, |c| &c.name, coolant);
    let cold_c = reader.number(&keys, &q::COLD);
    let working_c = reader.number(&keys, &q::WORKING);
    let fault_c = reader.number(&keys, &q::FAULT);
    let pressure_kpa = reader.number(&keys, &q::PRESSURE);
    let test_kpa = reader.number(&keys, &q::TEST_PRESSURE);
    let up = up(reader, &keys);
    Some(Loop {
        flow_l_per_h: flow_l_per_h?,
        coolant: coolant?,
        cold_c: cold_c?,
        working_c: working_c?,
        fault_c: fault_c?,
        pressure_kpa: pressure_kpa?,
        test_kpa: test_kpa?,
        up: up?,
    })
}

/// The preset that is named (or is the default), or an object of the builder's own.
fn preset_or_own<T>(
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
    let keys = reader.keys(node, place, "A printer", &["name", "build_volume", "least_wall", "tolerance", "source"])?;
    let name = reader.text(&keys, &q::PRINTER_NAME);
    let build_volume = reader.point(&keys, "build_volume", &q::BUILD_VOLUME);
    let least_wall = reader.number(&keys, &q::LEAST_WALL);
    let tolerance = reader.known_number(&keys, &q::PRINTER_TOLERANCE);
    let source = reader.text(&keys, &q::PRINTER_SOURCE);
    Some(Printer {
        name: name?,
        build_volume: build_volume?,
        least_wall: least_wall?,
        tolerance: tolerance?,
        source: source?,
    })
}

fn coolant(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<Coolant> {
    let known = &["name", "density_g_per_cm3", "base", "glycol_percent", "viscosity_mpa_s", "source"];
    let keys = reader.keys(node, place, "A coolant", known)?;
    let name = reader.text(&keys, &q::COOLANT_NAME);
    let density = reader.number(&keys, &q::COOLANT_DENSITY);
    let base = one_of(reader, &keys, &q::COOLANT_BASE, &Base::ALL.map(|base| (base.word(), base)));
    let glycol_percent = reader.number(&keys, &q::COOLANT_GLYCOL);
    let viscosity = reader.known_number(&keys, &q::COOLANT_VISCOSITY);
    let source = reader.text(&keys, &q::COOLANT_SOURCE);
    Some(Coolant {
        name: name?,
        density_g_per_cm3: density?,
        base: base?,
        glycol_percent: glycol_percent?,
        viscosity_mpa_s: viscosity?,
        source: source?,
    })
}

/// Which way is up; z where it is not stated.
fn up(reader: &mut Reader, keys: &Keys<'_, '_>) -> Option<[f64; 3]> {
    if keys.get("up").is_none() {
        return Some([0.0, 0.0, 1.0]);
    }
    let up = reader.point(keys, "up", &q::UP)?;
    if up.iter().fold(0.0, |sum, part| libm::hypot(sum, *part)) >= q::LEAST_FACING {
        return Some(up);
    }
    reader.refuse(&keys.place.key("up"), "Up: it points nowhere. Give a direction, such as [0, 0, 1].");
    None
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
