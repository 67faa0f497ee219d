//! The stations of a route: corners, points passed through, coils.

use std::collections::BTreeMap;

use super::super::model::{Coil, Coordinate, Corner, Design, Hand, Station, Through};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader, axis_label};
use super::super::wording::{quoted, shown};
use super::names::Names;
use crate::quantity::{self as q, Quantity};

/// One station of a route.
pub(super) fn station(reader: &mut Reader, node: &Node, place: &Place<'_>, ports: &Names<'_>) -> Option<Station> {
    let has = |key: &str| matches!(node, Node::Object { entries, .. } if entries.iter().any(|(name, _)| name == key));
    if has("through") {
        let keys = reader.keys(node, place, "A point passed through", &["through"])?;
        let at = coordinates(reader, &keys, "through", &THROUGH, ports);
        return Some(Station::Through(Through { at: at? }));
    }
    if has("coil") {
        let keys = reader.keys(node, place, "A coil's station", &["coil"])?;
        return coil(reader, &keys, ports).map(Station::Coil);
    }
    if let Node::Object { entries, .. } = node
        && !has("corner")
        && !has("bend_radius")
    {
        let told = entries.first().map(|(key, _)| format!(", not {}", quoted(key))).unwrap_or_default();
        let message = format!(
            "A station needs one of the keys \"corner\", \"through\" and \"coil\"{told}; \
             a corner is {{ \"corner\": [x, y, z] }}."
        );
        reader.refuse(place, message);
        return None;
    }
    let keys = reader.keys(node, place, "A corner's station", &["corner", "bend_radius"])?;
    let at = coordinates(reader, &keys, "corner", &CORNER, ports);
    let bend_radius = reader.optional_number(&keys, &q::CORNER_BEND_RADIUS);
    Some(Station::Corner(Corner { at: at?, bend_radius: bend_radius? }))
}

/// The quantities of a point whose coordinates may be tied: number, port, offset.
struct Tie {
    number: &'static Quantity,
    of: &'static Quantity,
    plus: &'static Quantity,
}

const CORNER: Tie = Tie { number: &q::CORNER, of: &q::CORNER_OF, plus: &q::CORNER_PLUS };
const THROUGH: Tie = Tie { number: &q::THROUGH, of: &q::THROUGH_OF, plus: &q::THROUGH_PLUS };
const CENTRE: Tie = Tie { number: &q::COIL_CENTRE, of: &q::COIL_OF, plus: &q::COIL_PLUS };

fn coordinates(
    reader: &mut Reader,
    keys: &Keys<'_, '_>,
    key: &str,
    tie: &Tie,
    ports: &Names<'_>,
) -> Option<[Coordinate; 3]> {
    let place = keys.place.key(key);
    let items = reader.three(keys.get(key), &place, tie.number)?;
    let [x, y, z] = [0, 1, 2].map(|axis| coordinate(reader, &items[axis], &place.item(axis), (axis, tie), ports));
    Some([x?, y?, z?])
}

fn coordinate(
    reader: &mut Reader,
    node: &Node,
    place: &Place<'_>,
    (axis, tie): (usize, &Tie),
    ports: &Names<'_>,
) -> Option<Coordinate> {
    if !matches!(node, Node::Object { .. }) {
        let label = axis_label(tie.number.label, axis);
        return reader.number_at(node, place, tie.number, &label).map(Coordinate::Fixed);
    }
    let keys = reader.keys(node, place, "A tied coordinate", &["of", "plus"])?;
    let of = reader.reference(&keys, tie.of, ports);
    let plus = reader.number(&keys, tie.plus);
    Some(Coordinate::Tied { of: of?, plus: plus? })
}

fn coil(reader: &mut Reader, station: &Keys<'_, '_>, ports: &Names<'_>) -> Option<Coil> {
    let place = station.place.key("coil");
    let node = station.get("coil")?;
    let known = &["centre", "axis", "radius", "end_radius", "pitch", "turns", "hand", "start_deg"];
    let keys = reader.keys(node, &place, "A coil", known)?;
    let centre = coordinates(reader, &keys, "centre", &CENTRE, ports);
    let axis = axis(reader, &keys);
    let radius = reader.number(&keys, &q::COIL_RADIUS);
    let end_radius = reader.optional_number(&keys, &q::COIL_END_RADIUS);
    let pitch = reader.number(&keys, &q::COIL_PITCH);
    let turns = reader.number(&keys, &q::COIL_TURNS);
    let hand = hand(reader, &keys);
    let start_deg = reader.number(&keys, &q::COIL_START);
    Some(Coil {
        centre: centre?,
        axis: axis?,
        radius: radius?,
        end_radius: end_radius?,
        pitch: pitch?,
        turns: turns?,
        hand: hand?,
        start_deg: start_deg?,
    })
}

fn axis(reader: &mut Reader, coil: &Keys<'_, '_>) -> Option<[f64; 3]> {
    let axis = reader.point(coil, "axis", &q::COIL_AXIS)?;
    if libm::hypot(libm::hypot(axis[0], axis[1]), axis[2]) >= q::LEAST_FACING {
        return Some(axis);
    }
    let message = "Axis: 0, 0, 0 points nowhere. Give the direction in which the coil climbs; 0, 0, 1 is up.";
    reader.refuse(&coil.place.key("axis"), message);
    None
}

fn hand(reader: &mut Reader, coil: &Keys<'_, '_>) -> Option<Hand> {
    match coil.get("hand") {
        None => Some(Hand::Right),
        Some(Node::Text(word)) if word == Hand::Right.word() => Some(Hand::Right),
        Some(Node::Text(word)) if word == Hand::Left.word() => Some(Hand::Left),
        Some(node) => {
            let found = match node {
                Node::Text(word) => quoted(word),
                other => other.kind().to_owned(),
            };
            let message = format!("{}: {found} will not do. Give \"right\" or \"left\".", q::COIL_HAND.label);
            reader.refuse(&coil.place.key("hand"), message);
            None
        }
    }
}

/// Refuses tied coordinates that end up too far from the datum: the port and the offset each may be near the bound.
pub(super) fn tied_in_bounds(reader: &mut Reader, design: &Design) {
    let ports: BTreeMap<&str, [f64; 3]> = design.ports.iter().map(|port| (port.name.as_str(), port.at)).collect();
    let (root, runs) = (Place::ROOT, "runs");
    let list = root.key(runs);
    for (r, run) in design.runs.iter().enumerate() {
        let (run_place, route_key) = (list.item(r), "route");
        let route = run_place.key(route_key);
        for (s, station) in run.route.iter().enumerate() {
            let station_place = route.item(s);
            let coil = station_place.key("coil");
            let (at, label, place) = match station {
                Station::Corner(corner) => (&corner.at, q::CORNER.label, station_place.key("corner")),
                Station::Through(through) => (&through.at, q::THROUGH.label, station_place.key("through")),
                Station::Coil(turns) => (&turns.centre, q::COIL_CENTRE.label, coil.key("centre")),
            };
            for (axis, coordinate) in at.iter().enumerate() {
                let Coordinate::Tied { of, plus } = coordinate else { continue };
                let sum = ports.get(of.as_str()).map_or(0.0, |at| at[axis] + plus);
                if sum.abs() > q::FURTHEST {
                    let message = format!(
                        "{label} {}: {} and {} mm more is {} mm, too far from the datum. Stay within 1,000,000 mm.",
                        ["x", "y", "z"][axis],
                        quoted(of),
                        shown(*plus),
                        shown(sum)
                    );
                    reader.refuse(&place.item(axis), message);
                }
            }
        }
    }
}
