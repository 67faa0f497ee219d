//! Fittings: what is screwed into a port.

use super::super::model::{Elbow, Fitting, Seal};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader};
use super::{each, optional};
use crate::quantity as q;

/// How much wider than its tube a collar is taken to be where it is not stated, mm; common practice, no source.
const COLLAR_OVER_TUBE: f64 = 7.0;

const KEYS: &[&str] =
    &["name", "tube_diameter", "height", "socket_depth", "collar_diameter", "lead", "bore", "elbow", "seal"];

/// The design's fittings.
pub(super) fn read(reader: &mut Reader, design: &Keys<'_, '_>) -> Option<Vec<Fitting>> {
    each(reader, design, ("fittings", q::MOST_PORTS, "fittings"), fitting)
}

fn fitting(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<Fitting> {
    let keys = reader.keys(node, place, "A fitting", KEYS)?;
    let name = reader.text(&keys, &q::FITTING_NAME);
    let tube_diameter = reader.number(&keys, &q::FITTING_TUBE_DIAMETER);
    let height = reader.number(&keys, &q::FITTING_HEIGHT);
    let socket_depth = reader.number(&keys, &q::FITTING_SOCKET_DEPTH);
    let collar = reader.optional_number(&keys, &q::FITTING_COLLAR);
    let lead = reader.number(&keys, &q::FITTING_LEAD);
    let bore = reader.known_number(&keys, &q::FITTING_BORE);
    let elbow = optional(reader, &keys, "elbow", elbow);
    let seal = optional(reader, &keys, "seal", seal);
    let tube_diameter = tube_diameter?;
    Some(Fitting {
        name: name?,
        tube_diameter,
        height: height?,
        socket_depth: socket_depth?,
        collar_diameter: collar?.unwrap_or(tube_diameter + COLLAR_OVER_TUBE),
        lead: lead?,
        bore: bore?,
        elbow: elbow?,
        seal: seal?,
    })
}

fn elbow(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<Elbow> {
    let keys = reader.keys(node, place, "An elbow", &["angle_deg", "rise", "reach", "turn_deg"])?;
    let angle_deg = reader.number(&keys, &q::ELBOW_ANGLE);
    let rise = reader.number(&keys, &q::ELBOW_RISE);
    let reach = reader.number(&keys, &q::ELBOW_REACH);
    let turn_deg = reader.number(&keys, &q::ELBOW_TURN);
    Some(Elbow { angle_deg: angle_deg?, rise: rise?, reach: reach?, turn_deg: turn_deg? })
}

fn seal(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<Seal> {
    let keys = reader.keys(node, place, "A seal", &["section", "gland_diameter", "gland_width"])?;
    let section = reader.number(&keys, &q::SEAL_SECTION);
    let gland_diameter = reader.number(&keys, &q::SEAL_GLAND);
    let gland_width = reader.known_number(&keys, &q::SEAL_WIDTH);
    Some(Seal { section: section?, gland_diameter: gland_diameter?, gland_width: gland_width? })
}
