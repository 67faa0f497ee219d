//! Ports: the threaded holes, where they are and which way they face.

use super::super::model::Port;
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader};
use super::each;
use super::names::Names;
use crate::quantity as q;

const KEYS: &[&str] = &["name", "at", "facing", "fitting", "measured_to"];

/// The design's ports.
pub(super) fn read(reader: &mut Reader, design: &Keys<'_, '_>, fittings: &Names<'_>) -> Option<Vec<Port>> {
    each(reader, design, ("ports", q::MOST_PORTS, "ports"), |reader, node, place| port(reader, node, place, fittings))
}

fn port(reader: &mut Reader, node: &Node, place: &Place<'_>, fittings: &Names<'_>) -> Option<Port> {
    let keys = reader.keys(node, place, "A port", KEYS)?;
    let name = reader.text(&keys, &q::PORT_NAME);
    let at = reader.point(&keys, "at", &q::PORT_AT);
    let facing = reader.point(&keys, "facing", &q::PORT_FACING).filter(|facing| {
        let [x, y, z] = *facing;
        let has_length = libm::hypot(libm::hypot(x, y), z) >= q::LEAST_FACING;
        if !has_length {
            let message = "Facing: 0, 0, 0 points nowhere. Give the direction straight out of the hole; 0, 0, 1 is up.";
            reader.refuse(&place.key("facing"), message);
        }
        has_length
    });
    let fitting = reader.reference(&keys, &q::PORT_FITTING, fittings);
    let measured_to = reader.number(&keys, &q::PORT_MEASURED_TO);
    Some(Port { name: name?, at: at?, facing: facing?, fitting: fitting?, measured_to: measured_to? })
}
