//! Where a run is cut into pieces, and how pieces stand on the plate.

use super::super::model::{Cut, Stance};
use super::super::node::Node;
use super::super::reader::{Keys, Reader};
use super::super::wording::shown;
use super::each;
use crate::layout::Vec3;
use crate::quantity::{self as q, LEAST_FACING, Quantity};

/// The run's cuts, in order along it.
pub(super) fn read(reader: &mut Reader, run: &Keys<'_, '_>) -> Option<Vec<Cut>> {
    let mut last: Option<f64> = None;
    each(reader, run, ("cuts", q::MOST_CUTS, "cuts"), |reader, node, place| {
        let keys = reader.keys(node, place, "A cut", &["at", "stance"])?;
        let at = reader.number(&keys, &q::CUT_AT);
        let stance = stance(reader, &keys, &q::CUT_STANCE_UP, &q::CUT_STANCE_TURN);
        let at = at?;
        if let Some(last) = last.filter(|last| at <= *last) {
            let message = format!(
                "Cut at: {} mm does not come after the cut before it, at {} mm. Give the cuts in order along the run.",
                shown(at),
                shown(last)
            );
            reader.refuse(&place.key("at"), message);
            return None;
        }
        last = Some(at);
        Some(Cut { at, stance: stance? })
    })
}

/// A piece's own stance on the plate; none where it is left out or null.
pub(super) fn stance(reader: &mut Reader, of: &Keys<'_, '_>, up: &Quantity, turn: &Quantity) -> Option<Option<Stance>> {
    let Some(node) = of.get("stance").filter(|node| !matches!(node, Node::Null)) else { return Some(None) };
    let place = of.place.key("stance");
    let keys = reader.keys(node, &place, "A stance", &["up", "turn_deg"])?;
    let up = reader.point(&keys, "up", up);
    let turn_deg = reader.number(&keys, turn);
    let up = up?;
    if Vec3::from(up).norm() < LEAST_FACING {
        reader.refuse(&place.key("up"), "Up: it points nowhere. Give a direction, such as [0, 0, 1].");
        return None;
    }
    Some(Some(Stance { up, turn_deg: turn_deg? }))
}
