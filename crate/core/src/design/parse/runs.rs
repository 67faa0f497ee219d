//! Runs: the tubes and their ends.

use super::super::model::{Ends, Run, TubeSize};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader};
use super::super::wording::{shown, shown_down};
use super::names::Names;
use super::{cuts, dress, each, route};
use crate::quantity as q;

/// Bend radius where none is stated, as a multiple of the outer diameter; common practice, no source.
const USUAL_BEND: f64 = 2.0;

const KEYS: &[&str] =
    &["name", "from", "to", "tube", "bend_radius", "fit_bends", "route", "dress", "ends", "stance", "cuts"];

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
        route::station(reader, node, place, ports)
    });
    let fit_bends = reader.flag(&keys, &q::FIT_BENDS);
    let dress = dress::read(reader, &keys, tube);
    let ends = ends(reader, &keys);
    let stance = cuts::stance(reader, &keys, &q::STANCE_UP, &q::STANCE_TURN);
    let cuts = cuts::read(reader, &keys);
    let tube = tube?;
    Some(Run {
        name: name?,
        from: from?,
        to: to?,
        tube,
        bend_radius: bend_radius?.unwrap_or(USUAL_BEND * tube.outer_diameter),
        fit_bends: fit_bends?,
        route: route?,
        dress: dress?,
        ends: ends?,
        stance: stance?,
        cuts: cuts?,
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
