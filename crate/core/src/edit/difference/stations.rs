//! The stations of a run: which moved, and whether they only followed a port that they are tied to.

use serde::Serialize;
use serde_json::Value;

use super::leaves::{Change, changes};
use super::places::MOVED;
use super::{Fate, Side};
use crate::layout::{PlacedStation, Vec3};

/// A station that differs.
#[derive(Serialize)]
pub(super) struct StationDifference {
    /// `corner`, `through` or `coil`.
    kind: &'static str,
    /// Its index in the later design's route; none where it is gone.
    station: Option<usize>,
    /// Its index in the earlier design's route; none where it is new.
    was: Option<usize>,
    fate: Fate,
    /// Where it is now less where it was.
    by_mm: Option<[f64; 3]>,
    /// The length of that.
    moved_mm: Option<f64>,
    /// Whether it is stated as it was and moved with the ports that it is tied to.
    followed: bool,
    /// What else differs: an own radius, a coil's turns.
    changes: Vec<Change>,
}

/// The stations that differ between run `was` of the one design and run `is` of the other. `stated` is the earlier
/// route with its references carried over to the later names.
///
/// Stations that are the same at the routes' beginnings and ends are paired there; those between, in their order.
pub(super) fn stations(
    (old, was): (&Side<'_>, usize),
    (new, is): (&Side<'_>, usize),
    stated: &Value,
) -> Vec<StationDifference> {
    let [before, after] = [(old, was), (new, is)].map(|(side, run)| &side.stages.layout.runs[run].stations);
    let restated = &new.item("runs", is)["route"];
    let same = |i: usize, j: usize| {
        kind(&before[i]) == kind(&after[j])
            && (stated[i] == restated[j] || (after[j].at() - before[i].at()).norm() <= MOVED)
    };
    let shorter = before.len().min(after.len());
    let first = (0..shorter).take_while(|k| same(*k, *k)).count();
    let last = (0..shorter - first).take_while(|k| same(before.len() - 1 - k, after.len() - 1 - k)).count();
    let (left, right) = (before.len() - first - last, after.len() - first - last);
    let paired = left.min(right);
    let ends = (0..last).rev().map(|k| (Some(before.len() - 1 - k), Some(after.len() - 1 - k)));
    let pairs = (0..first + paired)
        .map(|k| (Some(k), Some(k)))
        .chain((first + paired..first + left).map(|k| (Some(k), None)))
        .chain((first + paired..first + right).map(|k| (None, Some(k))))
        .chain(ends);
    let place = |station: usize| format!("/runs/{is}/route/{station}");
    pairs
        .filter_map(|(i, j)| match (i, j) {
            (Some(i), Some(j)) => {
                let same_statement = at_of(&stated[i]) == at_of(&restated[j]);
                let changes = changes(&without_place(&stated[i]), &without_place(&restated[j]), &place(j), &[]);
                let by = after[j].at() - before[i].at();
                let is_new = kind(&before[i]) != kind(&after[j]);
                let moved = by.norm() > MOVED;
                let differs = is_new || moved || !changes.is_empty();
                differs.then(|| StationDifference {
                    kind: kind(&after[j]),
                    station: Some(j),
                    was: Some(i),
                    fate: Fate::Changed,
                    by_mm: Some(if moved { by } else { Vec3::zeros() }.into()),
                    moved_mm: Some(if moved { by.norm() } else { 0.0 }),
                    followed: same_statement && moved,
                    changes,
                })
            }
            (Some(i), None) => Some(only(kind(&before[i]), None, Some(i), Fate::Removed)),
            (None, Some(j)) => Some(only(kind(&after[j]), Some(j), None, Fate::Added)),
            (None, None) => None,
        })
        .collect()
}

fn only(kind: &'static str, station: Option<usize>, was: Option<usize>, fate: Fate) -> StationDifference {
    StationDifference { kind, station, was, fate, by_mm: None, moved_mm: None, followed: false, changes: Vec::new() }
}

fn kind(station: &PlacedStation) -> &'static str {
    match station {
        PlacedStation::Corner(_) => "corner",
        PlacedStation::Through(_) => "through",
        PlacedStation::Coil(_) => "coil",
    }
}

/// The stated coordinates of a station.
fn at_of(station: &Value) -> &Value {
    let at = ["corner", "through"].iter().find_map(|key| station.get(key));
    at.unwrap_or(&station["coil"]["centre"])
}

/// A station without its coordinates, which are told as a move.
fn without_place(station: &Value) -> Value {
    let mut station = station.clone();
    if let Value::Object(keys) = &mut station {
        keys.remove("corner");
        keys.remove("through");
        if let Some(Value::Object(coil)) = keys.get_mut("coil") {
            coil.remove("centre");
        }
    }
    station
}
