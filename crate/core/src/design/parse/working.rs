//! The loop's working state: coolant, temperatures, pressures, pump and parts.

use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader};
use super::super::working::{Base, Coolant, Loop, LoopPart};
use super::process::{one_of, preset_or_own};
use super::{each, leak_test, names, optional, pump};
use crate::presets;
use crate::quantity as q;

const KEYS: &[&str] = &[
    "flow_l_per_h",
    "coolant",
    "cold_c",
    "working_c",
    "fault_c",
    "pressure_kpa",
    "test_kpa",
    "up",
    "heat_w",
    "pump",
    "parts",
    "leak_test",
];

/// The design's `loop`.
pub(super) fn read(reader: &mut Reader, design: &Keys<'_, '_>) -> Option<Loop> {
    let place = design.place.key("loop");
    let keys = match design.get("loop") {
        Some(node) => reader.keys(node, &place, "The loop", KEYS)?,
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
    let heat_w = reader.number(&keys, &q::HEAT);
    let pump = preset_or_own(reader, &keys, &q::PUMP, presets::pumps, |p| &p.name, pump::read);
    names::unique(reader, &keys, "parts");
    let parts = each(reader, &keys, ("parts", q::MOST_PARTS, "parts of the loop"), part);
    let leak_test = optional(reader, &keys, "leak_test", leak_test::read);
    Some(Loop {
        flow_l_per_h: flow_l_per_h?,
        coolant: coolant?,
        cold_c: cold_c?,
        working_c: working_c?,
        fault_c: fault_c?,
        pressure_kpa: pressure_kpa?,
        test_kpa: test_kpa?,
        up: up?,
        heat_w: heat_w?,
        pump: pump?,
        parts: parts?,
        leak_test: leak_test?,
    })
}

fn part(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<LoopPart> {
    let keys = reader.keys(node, place, "A part of the loop", &["name", "drop_kpa", "at_l_per_h", "volume_ml"])?;
    let name = reader.text(&keys, &q::PART_NAME);
    let drop_kpa = reader.number(&keys, &q::PART_DROP);
    let at_l_per_h = reader.number(&keys, &q::PART_FLOW);
    let volume_ml = reader.number(&keys, &q::PART_VOLUME);
    Some(LoopPart { name: name?, drop_kpa: drop_kpa?, at_l_per_h: at_l_per_h?, volume_ml: volume_ml? })
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
