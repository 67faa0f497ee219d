//! Runs: what was stated, how long each is, and which stations moved.

use serde::Serialize;

use super::leaves::{Change, changes};
use super::pairs::{NewNames, Pair, by_name, first_come};
use super::stations::{StationDifference, stations};
use super::{Fate, Figure, Side, fate};

/// A run that differs.
#[derive(Serialize)]
pub(super) struct RunDifference {
    name: String,
    /// Its name before, where it had another.
    was: Option<String>,
    fate: Fate,
    length_mm: Figure,
    mass_g: Figure,
    /// What differs in the run itself: its ends, sizes, radii, dress.
    changes: Vec<Change>,
    stations: Vec<StationDifference>,
}

/// The runs of both designs; two of different names between the same ports are one.
pub(super) fn pairs(old: &Side<'_>, new: &Side<'_>, names: &NewNames) -> Vec<Pair> {
    let [before, after] = [old, new].map(|side| &side.design.runs);
    let [listed, later] = [before, after].map(|runs| runs.iter().map(|run| run.name.as_str()).collect::<Vec<_>>());
    by_name(&listed, &later, |gone, fresh| {
        first_come(gone, fresh, |was, is| {
            let (one, other) = (&before[was], &after[is]);
            names.port(&one.from) == other.from && names.port(&one.to) == other.to
        })
    })
}

impl RunDifference {
    /// None where nothing differs.
    pub(super) fn of(old: &Side<'_>, new: &Side<'_>, pair: Pair, names: &NewNames) -> Option<Self> {
        let figure = |key: &str, was: Option<usize>, is: Option<usize>| {
            let of = |side: &Side<'_>, run: Option<usize>| side.report["runs"][run?][key].as_f64();
            Figure::of(of(old, was), of(new, is))
        };
        let figures = |was: Option<usize>, is: Option<usize>| [figure("length_mm", was, is), figure("mass_g", was, is)];
        let only = |name: &str, fate: Fate, [length_mm, mass_g]: [Figure; 2]| Self {
            name: name.to_owned(),
            was: None,
            fate,
            length_mm,
            mass_g,
            changes: Vec::new(),
            stations: Vec::new(),
        };
        let (was, is) = match pair {
            Pair::Removed(was) => {
                return Some(only(&old.design.runs[was].name, Fate::Removed, figures(Some(was), None)));
            }
            Pair::Added(is) => return Some(only(&new.design.runs[is].name, Fate::Added, figures(None, Some(is)))),
            Pair::Both(was, is) => (was, is),
        };
        let (before, after) = (&old.design.runs[was], &new.design.runs[is]);
        let [length_mm, mass_g] = figures(Some(was), Some(is));
        let earlier = names.carried(old.item("runs", was));
        let changes = changes(&earlier, new.item("runs", is), &format!("/runs/{is}"), &["name", "route"]);
        let stations = stations((old, was), (new, is), &earlier["route"]);
        let changed = length_mm.differs() || mass_g.differs() || !changes.is_empty() || !stations.is_empty();
        let (was, fate) = fate(&before.name, &after.name, changed)?;
        Some(Self { name: after.name.clone(), was, fate, length_mm, mass_g, changes, stations })
    }
}
