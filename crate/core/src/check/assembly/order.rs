//! The order in which the tubes of a design go in.

use super::Entry;
use crate::check::{Finding, Severity, Subject};
use crate::design::wording;

/// Most names that an order tells one by one.
const MOST_TOLD: usize = 12;

/// `order_of_assembly` (note): tubes whose part must stand back come first, while parts can still be moved; those that
/// go straight in come last; and no tube comes after one that would be in its way. `no_order` (care): some tubes are
/// in each other's way.
pub(super) fn finding(subject: Subject<'_>, entries: &[Entry<'_>]) -> Option<Finding> {
    if entries.len() < 2 {
        return None;
    }
    let name = |entry: usize| wording::quoted(&subject.design.runs[entries[entry].run.index].name);
    let place_of = |run: usize| entries.iter().position(|entry| entry.run.index == run);
    // For each tube, the tubes that must be in place before it: those it would be in the way of.
    let mut before = vec![Vec::new(); entries.len()];
    for (index, entry) in entries.iter().enumerate() {
        for later in entry.behind.iter().filter_map(|run| place_of(*run)) {
            before[later].push(index);
        }
    }
    let drops = |entry: usize| entries[entry].ways[entries[entry].best].first.is_none();
    let mut order: Vec<usize> = Vec::new();
    while order.len() < entries.len() {
        let ready = |entry: &usize| !order.contains(entry) && before[*entry].iter().all(|one| order.contains(one));
        let Some(next) = (0..entries.len()).filter(ready).min_by_key(|entry| (drops(*entry), *entry)) else { break };
        order.push(next);
    }
    if order.len() < entries.len() {
        let stuck: Vec<String> = (0..entries.len()).filter(|entry| !order.contains(entry)).map(name).collect();
        let finding = Finding::new("no_order", Severity::Care, "/runs").word("runs", joined(&stuck));
        return Some(finding);
    }
    let finding = Finding::new("order_of_assembly", Severity::Note, "/runs")
        .word("order", joined_with(&order.iter().map(|entry| name(*entry)).collect::<Vec<_>>(), "then"));
    let dropping: Vec<String> = order.iter().copied().filter(|entry| drops(*entry)).map(name).collect();
    Some(match dropping.len() {
        0 => finding,
        1 => finding.word("dropping", format!("{} goes", dropping[0])),
        _ => finding.word("dropping", format!("{} go", joined(&dropping))),
    })
}

fn joined(names: &[String]) -> String {
    joined_with(names, "and")
}

fn joined_with(names: &[String], word: &str) -> String {
    if names.len() > MOST_TOLD {
        return format!("{} and {} more", names[..MOST_TOLD].join(", "), names.len() - MOST_TOLD);
    }
    match names {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] if word == "and" => format!("{} and {last}", first.join(", ")),
        [first @ .., last] => format!("{}, {word} {last}", first.join(", ")),
    }
}
