//! The shape of a run's body between its leads.

use super::super::model::{Dress, TubeSize};
use super::super::node::Node;
use super::super::reader::{Keys, Reader};
use super::super::wording::shown;
use crate::quantity as q;

/// The run's dress; none where the key is missing or null.
pub(super) fn read(reader: &mut Reader, run: &Keys<'_, '_>, tube: Option<TubeSize>) -> Option<Option<Dress>> {
    let place = run.place.key("dress");
    let node = match run.get("dress") {
        None | Some(Node::Null) => return Some(None),
        Some(node) => node,
    };
    let known = &["diameter", "end_diameter", "blend", "lobes", "depth", "twist_deg_per_mm"];
    let keys = reader.keys(node, &place, "A dress", known)?;
    let diameter = reader.optional_number(&keys, &q::DRESS_DIAMETER);
    let end_diameter = reader.optional_number(&keys, &q::DRESS_END_DIAMETER);
    let blend = reader.number(&keys, &q::DRESS_BLEND);
    let lobes = lobes(reader, &keys);
    let depth = reader.number(&keys, &q::DRESS_DEPTH);
    let twist_deg_per_mm = reader.number(&keys, &q::DRESS_TWIST);
    let dress = Dress {
        diameter: diameter?,
        end_diameter: end_diameter?,
        blend: blend?,
        lobes: lobes?,
        depth: depth?,
        twist_deg_per_mm: twist_deg_per_mm?,
    };
    leaves_a_wall(reader, &keys, &dress, tube?).then_some(Some(dress))
}

fn lobes(reader: &mut Reader, keys: &Keys<'_, '_>) -> Option<u32> {
    let count = reader.number(keys, &q::DRESS_LOBES)?;
    if count == libm::floor(count) && count != 1.0 {
        return Some(count as u32);
    }
    let message = format!("Lobes: {} will not do. Give 0, or a whole number from 2 to 24.", shown(count));
    reader.refuse(&keys.place.key("lobes"), message);
    None
}

/// A body whose grooves reach the bore is no tube.
fn leaves_a_wall(reader: &mut Reader, keys: &Keys<'_, '_>, dress: &Dress, tube: TubeSize) -> bool {
    let depth = if dress.lobes > 0 { dress.depth } else { 0.0 };
    let [first, last] = dress.diameters(tube.outer_diameter);
    let thinnest = first.min(last);
    if thinnest - 2.0 * depth > tube.bore {
        return true;
    }
    let (key, message) = if thinnest > tube.bore {
        let most = (thinnest - tube.bore) / 2.0;
        let message = format!(
            "Groove depth: {} mm goes through to the bore of {} mm. Give less than {} mm.",
            shown(depth),
            shown(tube.bore),
            shown(most)
        );
        ("depth", message)
    } else {
        let key = if first <= tube.bore && dress.diameter.is_some() { "diameter" } else { "end_diameter" };
        let message = format!(
            "{}: {} mm leaves no wall over a bore of {} mm. Give more, such as {} mm.",
            if key == "diameter" { q::DRESS_DIAMETER.label } else { q::DRESS_END_DIAMETER.label },
            shown(if key == "diameter" { first } else { last }),
            shown(tube.bore),
            shown(tube.outer_diameter)
        );
        (key, message)
    };
    reader.refuse(&keys.place.key(key), message);
    false
}
