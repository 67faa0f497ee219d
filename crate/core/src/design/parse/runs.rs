//! Runs: the tubes, their routes and ends.

use std::collections::BTreeMap;

use super::super::model::{Coordinate, Corner, Design, Ends, Run, Station, TubeSize};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader, axis_label};
use super::super::wording::{quoted, shown, shown_down};
use super::each;
use super::names::Names;
use crate::quantity as q;

/// Bend radius where none is stated, as a multiple of the outer diameter; common practice, no source.
const USUAL_BEND: f64 = 2.0;

const KEYS: &[&str] = &["name", "from", "to", "tube", "bend_radius", "route", "ends"];

/// The design's runs.
pub(super) fn read(reader: &mut Reader, design: &Keys<'_, '_>, ports: &Names<'_>) -> Option<Vec<Run>> {
    each(reader, design, ("runs", q::MOST_RUNS, "runs"), |reader, node, place| run(reader, node, place, ports))
}

fn run(reader: &mut Reader, node: &Node, place: &Place<'_>, ports: &Names<'_>) -> Option<Run> {
    let keys = reader.keys(node, place, "A run", KEYS)?;
    let name = reader.text(&keys, &q::RUN_NAME);
    let from = reader.reference(&keys, &q::RUN_FROM, ports);
    let to = reader.reference(&keys, &q::RUN_TO, ports);
    if from.is_some() && from == to {
        let message = "To: a tube cannot end at the port it starts from. Choose another port.";
        reader.refuse(&place.key("to"), message);
    }
    let tube = tube(reader, &keys);
    let bend_radius = reader.optional_number(&keys, &q::BEND_RADIUS);
    let route = each(reader, &keys, ("route", q::MOST_STATIONS, "stations"), |reader, node, place| {
        station(reader, node, place, ports)
    });
    let ends = ends(reader, &keys);
    let tube = tube?;
    Some(Run {
        name: name?,
        from: from?,
        to: to?,
        tube,
        bend_radius: bend_radius?.unwrap_or(USUAL_BEND * tube.outer_diameter),
        route: route?,
        ends: ends?,
    })
}

fn tube(reader: &mut Reader, run: &Keys<'_, '_>) -> Option<TubeSize> {
    let place = run.place.key("tube");
    let Some(node) = run.get("tube") else {
        let message = "The tube's size is missing: the key \"tube\". \
                       Give its diameters, such as { \"outer_diameter\": 12, \"bore\": 8 }.";
        reader.refuse(&place, message);
        return None;
    };
    let keys = reader.keys(node, &place, "A tube's size", &["outer_diameter", "bore"])?;
    let outer_diameter = reader.number(&keys, &q::OUTER_DIAMETER);
    let bore = reader.number(&keys, &q::BORE);
    let (outer_diameter, bore) = (outer_diameter?, bore?);
    if bore >= outer_diameter {
        let usual = if outer_diameter >= 6.0 { outer_diameter - 4.0 } else { outer_diameter * 0.5 };
        let message = format!(
            "Bore: {} mm leaves no wall in a tube of {} mm outer diameter. Give less, such as {} mm.",
            shown(bore),
            shown(outer_diameter),
            shown_down(usual)
        );
        reader.refuse(&place.key("bore"), message);
        return None;
    }
    Some(TubeSize { outer_diameter, bore })
}

fn station(reader: &mut Reader, node: &Node, place: &Place<'_>, ports: &Names<'_>) -> Option<Station> {
    if let Node::Object { entries, .. } = node
        && let Some((kind, _)) = entries.iter().find(|(key, _)| key == "through" || key == "coil")
    {
        let message = format!(
            "A station \"{kind}\" cannot be made by this version; it makes corners: {{ \"corner\": [x, y, z] }}."
        );
        reader.refuse(&place.key(kind), message);
        return None;
    }
    let keys = reader.keys(node, place, "A station", &["corner", "bend_radius"])?;
    let corner = place.key("corner");
    let at = reader.three(keys.get("corner"), &corner, &q::CORNER).and_then(|items| {
        let [x, y, z] = [0, 1, 2].map(|axis| coordinate(reader, &items[axis], &corner.item(axis), axis, ports));
        Some([x?, y?, z?])
    });
    let bend_radius = reader.optional_number(&keys, &q::CORNER_BEND_RADIUS);
    Some(Station::Corner(Corner { at: at?, bend_radius: bend_radius? }))
}

fn coordinate(
    reader: &mut Reader,
    node: &Node,
    place: &Place<'_>,
    axis: usize,
    ports: &Names<'_>,
) -> Option<Coordinate> {
    if !matches!(node, Node::Object { .. }) {
        let label = axis_label(q::CORNER.label, axis);
        return reader.number_at(node, place, &q::CORNER, &label).map(Coordinate::Fixed);
    }
    let keys = reader.keys(node, place, "A tied coordinate", &["of", "plus"])?;
    let of = reader.reference(&keys, &q::CORNER_OF, ports);
    let plus = reader.number(&keys, &q::CORNER_PLUS);
    Some(Coordinate::Tied { of: of?, plus: plus? })
}

fn ends(reader: &mut Reader, run: &Keys<'_, '_>) -> Option<Ends> {
    let place = run.place.key("ends");
    let keys = match run.get("ends") {
        Some(node) => {
            let known = &["chamfer_deg", "chamfer_length", "edge_break", "trim", "seat_mark"];
            reader.keys(node, &place, "The ends' finish", known)?
        }
        None => Keys::none(&place),
    };
    let chamfer_deg = reader.number(&keys, &q::CHAMFER_ANGLE);
    let chamfer_length = reader.number(&keys, &q::CHAMFER_LENGTH);
    let edge_break = reader.number(&keys, &q::EDGE_BREAK);
    let trim = reader.number(&keys, &q::TRIM);
    let seat_mark = reader.flag(&keys, &q::SEAT_MARK);
    Some(Ends {
        chamfer_deg: chamfer_deg?,
        chamfer_length: chamfer_length?,
        edge_break: edge_break?,
        trim: trim?,
        seat_mark: seat_mark?,
    })
}

/// Refuses tied coordinates that end up too far from the datum: the port and the offset each may be near the bound.
pub(super) fn tied_in_bounds(reader: &mut Reader, design: &Design) {
    let ports: BTreeMap<&str, [f64; 3]> = design.ports.iter().map(|port| (port.name.as_str(), port.at)).collect();
    let (root, runs) = (Place::ROOT, "runs");
    let list = root.key(runs);
    for (r, run) in design.runs.iter().enumerate() {
        for (s, Station::Corner(corner)) in run.route.iter().enumerate() {
            for (axis, coordinate) in corner.at.iter().enumerate() {
                let Coordinate::Tied { of, plus } = coordinate else { continue };
                let sum = ports.get(of.as_str()).map_or(0.0, |at| at[axis] + plus);
                if sum.abs() > q::FURTHEST {
                    let message = format!(
                        "Corner {}: {} and {} mm more is {} mm, too far from the datum. Stay within 1,000,000 mm.",
                        ["x", "y", "z"][axis],
                        quoted(of),
                        shown(*plus),
                        shown(sum)
                    );
                    let (run, route) = (list.item(r), "route");
                    let (route, corner) = (run.key(route), "corner");
                    let station = route.item(s);
                    reader.refuse(&station.key(corner).item(axis), message);
                }
            }
        }
    }
}
