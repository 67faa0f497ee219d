//! Ports: how far each has moved and turned, and which are the same hole under another name.

use serde::Serialize;

use super::leaves::{Change, changes};
use super::pairs::{NewNames, Pair, by_name};
use super::{Fate, Side, fate};
use crate::design::Port;
use crate::layout::{Vec3, unit};

/// A port that differs.
#[derive(Serialize)]
pub(super) struct PortDifference {
    name: String,
    /// Its name before, where it had another.
    was: Option<String>,
    fate: Fate,
    /// Where it is now less where it was; none where it was not in both designs.
    by_mm: Option<[f64; 3]>,
    /// The length of that.
    moved_mm: Option<f64>,
    /// Angle between its facings, degrees.
    turned_deg: Option<f64>,
    /// What else differs: its fitting, how well it was measured.
    changes: Vec<Change>,
}

/// Ports that differ by less have not moved, mm: what a saved file may round away.
pub(super) const MOVED: f64 = 1e-9;
/// Facings that differ by less have not turned, degrees: some thousand roundings.
const TURNED: f64 = 1e-9;
/// Ports of different names within this and what they are measured to are the same hole, mm and degrees; from
/// judgement: no two holes are this near, and no two people measure a facing worse.
const SAME_PLACE: f64 = 1e-6;
const SAME_FACING: f64 = 5.0;

/// The ports of both designs; two of different names at the same place, as well as it was measured, are one.
pub(super) fn pairs(old: &Side<'_>, new: &Side<'_>) -> Vec<Pair> {
    let [before, after] = [old, new].map(|side| &side.design.ports);
    let [names, later] = [before, after].map(|ports| ports.iter().map(|port| port.name.as_str()).collect::<Vec<_>>());
    by_name(&names, &later, |gone, fresh| {
        let mut near: Vec<(f64, usize, usize)> = Vec::new();
        for was in gone {
            for is in fresh {
                let (one, other) = (&before[*was], &after[*is]);
                let apart = apart(one, other);
                let within = SAME_PLACE + one.measured_to + other.measured_to;
                if apart <= within && turned(one, other) <= SAME_FACING {
                    near.push((apart, *was, *is));
                }
            }
        }
        near.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut found: Vec<(usize, usize)> = Vec::new();
        for (_, was, is) in near {
            if found.iter().all(|(taken, used)| *taken != was && *used != is) {
                found.push((was, is));
            }
        }
        found
    })
}

impl PortDifference {
    /// None where nothing differs.
    pub(super) fn of(old: &Side<'_>, new: &Side<'_>, pair: Pair, names: &NewNames) -> Option<Self> {
        let only = |name: &str, fate: Fate| Self {
            name: name.to_owned(),
            was: None,
            fate,
            by_mm: None,
            moved_mm: None,
            turned_deg: None,
            changes: Vec::new(),
        };
        let (was, is) = match pair {
            Pair::Removed(was) => return Some(only(&old.design.ports[was].name, Fate::Removed)),
            Pair::Added(is) => return Some(only(&new.design.ports[is].name, Fate::Added)),
            Pair::Both(was, is) => (was, is),
        };
        let (before, after) = (&old.design.ports[was], &new.design.ports[is]);
        let (moved, turned) = (apart(before, after), turned(before, after));
        let by = Vec3::from(after.at) - Vec3::from(before.at);
        let earlier = names.carried(old.item("ports", was));
        let changes = changes(&earlier, new.item("ports", is), &format!("/ports/{is}"), &["name", "at", "facing"]);
        let changed = moved > MOVED || turned > TURNED || !changes.is_empty();
        let (was, fate) = fate(&before.name, &after.name, changed)?;
        Some(Self {
            name: after.name.clone(),
            was,
            fate,
            by_mm: Some(by.into()),
            moved_mm: Some(if moved > MOVED { moved } else { 0.0 }),
            turned_deg: Some(if turned > TURNED { turned } else { 0.0 }),
            changes,
        })
    }
}

fn apart(one: &Port, other: &Port) -> f64 {
    (Vec3::from(other.at) - Vec3::from(one.at)).norm()
}

fn turned(one: &Port, other: &Port) -> f64 {
    let [a, b] = [one, other].map(|port| unit(&Vec3::from(port.facing)));
    // By the tangent of the half angle, which neither small nor large angles lose digits in (Kahan 2006, "How futile
    // are mindless assessments of roundoff in floating-point computation?", section 12).
    (2.0 * libm::atan2((a - b).norm(), (a + b).norm())).to_degrees()
}
