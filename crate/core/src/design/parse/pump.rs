//! A pump of the builder's own, by points of its curve.

use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::Reader;
use super::super::wording::shown;
use super::super::working::{PumpPoint, PumpStated};
use super::each;
use crate::flow::{Pump, PumpFault};
use crate::quantity as q;

/// Whether points make a curve does not hang on the coolant, kg/m3.
const ANY_DENSITY: f64 = 1_000.0;

/// A pump.
pub(super) fn read(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<PumpStated> {
    let keys = reader.keys(node, place, "A pump", &["name", "points", "source"])?;
    let name = reader.text(&keys, &q::PUMP_NAME);
    let points = each(reader, &keys, ("points", q::MOST_PUMP_POINTS, "points of the pump's curve"), point);
    let source = reader.text(&keys, &q::PUMP_SOURCE);
    let pump = PumpStated { name: name?, points: points?, source: source? };
    let Err(fault) = Pump::of_heads(&pump.heads(), ANY_DENSITY) else { return Some(pump) };
    let (point, key) = match fault {
        PumpFault::Points { .. } | PumpFault::Nothing => (None, ""),
        PumpFault::FlowNotAbove { point } => (Some(point), "flow_l_per_h"),
        PumpFault::NotANumber { point } | PumpFault::Rises { point } => (Some(point), "head_m"),
    };
    let points = place.key("points");
    let message = told(fault, &pump);
    match point {
        Some(point) => reader.refuse(&points.item(point).key(key), message),
        None => reader.refuse(&points, message),
    }
    None
}

fn point(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<PumpPoint> {
    let keys = reader.keys(node, place, "A point of the pump's curve", &["flow_l_per_h", "head_m"])?;
    let flow = reader.number(&keys, &q::PUMP_FLOW);
    let head = reader.number(&keys, &q::PUMP_HEAD);
    Some(PumpPoint { flow_l_per_h: flow?, head_m: head? })
}

fn told(fault: PumpFault, pump: &PumpStated) -> String {
    let before = |point: usize| pump.points.get(point.wrapping_sub(1));
    match fault {
        PumpFault::Points { count } => {
            format!(
                "A pump's curve needs at least two points; this one has {count}. Its head at no flow and its flow at no head will do."
            )
        }
        PumpFault::FlowNotAbove { point } => format!(
            "Flow: it is not above the {} L/h of the point before. List the points from no flow on.",
            before(point).map_or_else(String::new, |before| shown(before.flow_l_per_h))
        ),
        PumpFault::Rises { point } => format!(
            "Head: the curve rises here, from {} m at the point before. A pump keeps up less the more it moves: give {} m or less.",
            before(point).map_or_else(String::new, |before| shown(before.head_m)),
            before(point).map_or_else(String::new, |before| shown(before.head_m))
        ),
        PumpFault::NotANumber { .. } => "Head: it is no number of a pump.".into(),
        PumpFault::Nothing => "The pump keeps up no head at all. Give the head at no flow, from its data sheet.".into(),
    }
}
