//! Keep-outs: boxes and cylinders that the tubes must stay clear of.

use super::super::model::{KeepOut, KeepOutShape};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader, axis_label};
use super::super::wording::shown;
use super::each;
use crate::quantity as q;

/// The design's keep-outs.
pub(super) fn read(reader: &mut Reader, design: &Keys<'_, '_>) -> Option<Vec<KeepOut>> {
    each(reader, design, ("keep_outs", q::MOST_PORTS, "keep-outs"), keep_out)
}

fn keep_out(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<KeepOut> {
    let keys = reader.keys(node, place, "A keep-out", &["name", "box", "cylinder"])?;
    let name = reader.text(&keys, &q::KEEP_OUT_NAME);
    let shape = match (keys.get("box"), keys.get("cylinder")) {
        (Some(node), None) => cuboid(reader, node, &place.key("box")),
        (None, Some(node)) => cylinder(reader, node, &place.key("cylinder")),
        (Some(_), Some(_)) => {
            let message = "A keep-out is a box or a cylinder, not both. Make two of it.";
            reader.refuse(&place.key("cylinder"), message);
            None
        }
        (None, None) => {
            let message = "A keep-out needs its shape: \"box\": { \"min\", \"max\" } or \
                           \"cylinder\": { \"from\", \"to\", \"radius\" }.";
            reader.refuse(place, message);
            None
        }
    };
    Some(KeepOut { name: name?, shape: shape? })
}

fn cuboid(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<KeepOutShape> {
    let keys = reader.keys(node, place, "A box", &["min", "max"])?;
    let min = reader.point(&keys, "min", &q::BOX_MIN);
    let max = reader.point(&keys, "max", &q::BOX_MAX);
    let (min, max) = (min?, max?);
    for axis in 0..3 {
        if min[axis] >= max[axis] {
            let message = format!(
                "{}: {} mm is not above the lowest corner's, {} mm. The box needs a size; swap or change them.",
                axis_label(q::BOX_MAX.label, axis),
                shown(max[axis]),
                shown(min[axis])
            );
            reader.refuse(&place.key("max").item(axis), message);
            return None;
        }
    }
    Some(KeepOutShape::Box { min, max })
}

fn cylinder(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<KeepOutShape> {
    let keys = reader.keys(node, place, "A cylinder", &["from", "to", "radius"])?;
    let from = reader.point(&keys, "from", &q::CYLINDER_FROM);
    let to = reader.point(&keys, "to", &q::CYLINDER_TO);
    let radius = reader.number(&keys, &q::CYLINDER_RADIUS);
    let (from, to) = (from?, to?);
    let length = libm::hypot(libm::hypot(to[0] - from[0], to[1] - from[1]), to[2] - from[2]);
    if length < q::LEAST_FACING {
        let message = "Middle of the other end: it is the same point as the one end's. The cylinder needs a length.";
        reader.refuse(&place.key("to"), message);
        return None;
    }
    Some(KeepOutShape::Cylinder { from, to, radius: radius? })
}
