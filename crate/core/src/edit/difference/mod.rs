//! What sets two designs apart, told so that someone with the same case can re-measure, see what differs, and keep the
//! shape: things added, removed, renamed and changed; ports and stations by how far and where to; lengths and masses.
//!
//! Things are the same where their names are. Of those left over, a port of one design and one of the other at the same
//! place, a run between the same ports, a fitting or keep-out with the same numbers are taken to be renamed; references
//! that only follow a new name are no change.

mod leaves;
mod pairs;
mod places;
mod runs;
mod stations;

use serde::Serialize;
use serde_json::Value;

use crate::design::{Design, canonical};
use crate::engine::Stages;
use crate::report;
use leaves::{Change, changes};
use pairs::Pair;
use places::PortDifference;
use runs::RunDifference;

/// A design with what the engine makes of it, as trees.
struct Side<'s> {
    design: &'s Design,
    stages: &'s Stages<'s>,
    tree: Value,
    report: Value,
}

impl<'s> Side<'s> {
    fn of(stages: &'s Stages<'s>) -> Self {
        let read = |text: String| serde_json::from_str(&text).unwrap_or_default();
        let design = &stages.design;
        Self { design, stages, tree: read(canonical(design)), report: read(report::report(stages)) }
    }

    fn item(&self, list: &str, index: usize) -> &Value {
        &self.tree[list][index]
    }
}

/// What becomes of a thing on the way from one design to the other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
enum Fate {
    Added,
    Removed,
    Renamed,
    Changed,
}

/// A fitting or keep-out.
#[derive(Serialize)]
struct Thing {
    name: String,
    /// Its name before, where it had another.
    was: Option<String>,
    fate: Fate,
    changes: Vec<Change>,
}

/// A number before and after; `change` only where there are both.
#[derive(Serialize)]
struct Figure {
    before: Option<f64>,
    after: Option<f64>,
    change: Option<f64>,
}

#[derive(Serialize)]
struct Difference {
    alike: bool,
    /// Changes of what belongs to no list: name, notes, clearance, making, loop.
    settings: Vec<Change>,
    fittings: Vec<Thing>,
    ports: Vec<PortDifference>,
    runs: Vec<RunDifference>,
    keep_outs: Vec<Thing>,
    totals: Totals,
}

#[derive(Serialize)]
struct Totals {
    length_mm: Figure,
    mass_g: Figure,
}

/// The difference as JSON text, from `before` to `after`; lists hold only what differs.
pub fn difference(before: &Stages<'_>, after: &Stages<'_>) -> String {
    let sides = [Side::of(before), Side::of(after)];
    let [old, new] = &sides;
    let fittings = pairs::alike(old, new, "fittings");
    let ports = places::pairs(old, new);
    let keep_outs = pairs::alike(old, new, "keep_outs");
    let names = pairs::NewNames::of(old, new, &fittings, &ports);
    let runs = runs::pairs(old, new, &names);
    let mut difference = Difference {
        alike: false,
        settings: settings(old, new),
        fittings: things(old, new, "fittings", &fittings),
        ports: ports.iter().filter_map(|pair| PortDifference::of(old, new, *pair, &names)).collect(),
        runs: runs.iter().filter_map(|pair| RunDifference::of(old, new, *pair, &names)).collect(),
        keep_outs: things(old, new, "keep_outs", &keep_outs),
        totals: Totals { length_mm: total(old, new, "length_mm"), mass_g: total(old, new, "mass_g") },
    };
    let Difference { settings, fittings, ports, runs, keep_outs, .. } = &difference;
    difference.alike = settings.is_empty()
        && [fittings, keep_outs].iter().all(|list| list.is_empty())
        && ports.is_empty()
        && runs.is_empty();
    serde_json::to_string(&difference).unwrap_or_default()
}

fn settings(old: &Side<'_>, new: &Side<'_>) -> Vec<Change> {
    let keys = ["name", "notes", "clearance", "process", "loop"];
    keys.iter().flat_map(|key| changes(&old.tree[*key], &new.tree[*key], &format!("/{key}"), &[])).collect()
}

fn things(old: &Side<'_>, new: &Side<'_>, list: &str, pairs: &[Pair]) -> Vec<Thing> {
    let name = |side: &Side<'_>, index: usize| side.item(list, index)["name"].as_str().unwrap_or_default().to_owned();
    let of_pair = |pair: &Pair| match *pair {
        Pair::Removed(index) => {
            Some(Thing { name: name(old, index), was: None, fate: Fate::Removed, changes: Vec::new() })
        }
        Pair::Added(index) => Some(Thing { name: name(new, index), was: None, fate: Fate::Added, changes: Vec::new() }),
        Pair::Both(was, is) => {
            let changes = changes(old.item(list, was), new.item(list, is), &format!("/{list}/{is}"), &["name"]);
            fate(&name(old, was), &name(new, is), !changes.is_empty()).map(|(was, fate)| Thing {
                name: name(new, is),
                was,
                fate,
                changes,
            })
        }
    };
    pairs.iter().filter_map(of_pair).collect()
}

/// The name before and the fate of a thing that both designs have; none where nothing differs.
fn fate(was: &str, is: &str, changed: bool) -> Option<(Option<String>, Fate)> {
    match (was != is, changed) {
        (false, false) => None,
        (true, false) => Some((Some(was.to_owned()), Fate::Renamed)),
        (true, true) => Some((Some(was.to_owned()), Fate::Changed)),
        (false, true) => Some((None, Fate::Changed)),
    }
}

fn total(old: &Side<'_>, new: &Side<'_>, figure: &str) -> Figure {
    let of = |side: &Side<'_>| side.report["totals"][figure].as_f64();
    Figure::of(of(old), of(new))
}

impl Figure {
    fn of(before: Option<f64>, after: Option<f64>) -> Self {
        Self { before, after, change: before.zip(after).map(|(before, after)| after - before) }
    }

    fn differs(&self) -> bool {
        // Lengths of the same run worked from another end or another port differ in their last digits.
        self.before.is_some() != self.after.is_some() || self.change.is_some_and(|change| change.abs() > 1e-9)
    }
}
