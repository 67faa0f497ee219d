//! Can a stiff tube get into both sockets, and in which order do the tubes go in?
//!
//! Assumed: tubes do not bend; a tube can be brought before its sockets; parts stand fixed, but the part at one end of a
//! tube can be moved straight back along that end's line and brought on again.

mod order;
mod path;
mod ways;

use super::meets::keep_outs::{is_in_part, solid_of};
use super::{Finding, OneRun, Severity, Subject, words};
use crate::design::wording;
use crate::distance::Budget;
use path::{Room, Strike};
use ways::Way;

/// A tube, the way in that suits it best, and what is in that way.
struct Entry<'a> {
    run: OneRun<'a>,
    ways: Vec<Way>,
    best: usize,
    /// Travel of the other way in, where it is as free; mm.
    instead: Option<f64>,
    strike: Option<Strike>,
    /// Indices of the runs whose tubes, once in place, are in the way.
    behind: Vec<usize>,
}

/// `goes_straight_in`, `part_stands_back` (note), `both_on_one_part`, `strikes_going_in` (care), `order_of_assembly`
/// (note), `no_order` (care). Runs without a centreline are left out: what stops them comes first.
pub(super) fn findings(subject: Subject<'_>, budget: &mut Budget) -> Vec<Finding> {
    let room = Room::of(subject);
    let entries: Vec<Entry<'_>> = subject
        .runs()
        .filter(|run| run.drawn.line.as_ref().is_some_and(|line| !line.pieces.is_empty()))
        .map(|run| entry(&room, run, budget))
        .collect();
    let own = entries.iter().flat_map(|entry| of_run(subject, entry));
    own.chain(order::finding(subject, &entries)).collect()
}

/// Of the ways in, the one with the least in its way, and of equals the one with the least travel.
fn entry<'a>(room: &Room<'a>, run: OneRun<'a>, budget: &mut Budget) -> Entry<'a> {
    let ways = ways::ways(&run);
    let mut judged: Vec<(Option<Strike>, Vec<usize>)> =
        ways.iter().map(|way| (room.strike(&run, way, budget), room.runs_in_the_way(&run, way, budget))).collect();
    let cost = |(strike, behind): &(Option<Strike>, Vec<usize>)| (strike.is_some(), behind.len());
    let best = (0..judged.len()).min_by_key(|way| cost(&judged[*way])).unwrap_or_default();
    let as_free = |way: &usize| *way != best && cost(&judged[*way]) == cost(&judged[best]);
    let instead = (0..judged.len()).find(as_free).map(|way| ways[way].travel());
    let (strike, behind) = judged.swap_remove(best);
    Entry { run, ways, best, instead, strike, behind }
}

fn of_run(subject: Subject<'_>, entry: &Entry<'_>) -> Vec<Finding> {
    let (run, way) = (&entry.run, &entry.ways[entry.best]);
    let mut found = vec![match way.first {
        None => together(run, way),
        Some(first) => match shared_part(subject, run) {
            Some(part) => on_one_part(run, way, &part),
            None => one_after_the_other(run, entry, first),
        },
    }];
    found.extend(entry.strike.as_ref().map(|strike| strikes(run, strike)));
    found
}

fn together(run: &OneRun<'_>, way: &Way) -> Finding {
    run.finding("goes_straight_in", Severity::Note, run.at("")).at(&run.pose(true).mouth).value(way.travel(), "mm")
}

fn one_after_the_other(run: &OneRun<'_>, entry: &Entry<'_>, first: bool) -> Finding {
    let way = &entry.ways[entry.best];
    let finding = run
        .finding("part_stands_back", Severity::Note, run.at(""))
        .at(&run.pose(!first).mouth)
        .value(way.travel(), "mm")
        .word("relation", relation(way))
        .word("first", run.port_name(first))
        .word("last", run.port_name(!first));
    match entry.instead {
        Some(instead) if (instead - way.travel()).abs() <= 1e-9 => {
            finding.word("either", format!("either of {} and {}", run.port_name(first), run.port_name(!first)))
        }
        Some(instead) => finding.word("instead", words::number(instead, "mm")),
        None => finding,
    }
}

fn on_one_part(run: &OneRun<'_>, way: &Way, part: &str) -> Finding {
    run.finding("both_on_one_part", Severity::Care, run.at(""))
        .at(&run.pose(false).mouth)
        .value(way.travel(), "mm")
        .word("relation", relation(way))
        .word("keep_out", wording::quoted(part))
}

fn strikes(run: &OneRun<'_>, strike: &Strike) -> Finding {
    run.finding("strikes_going_in", Severity::Care, run.at(""))
        .at(&strike.at)
        .value(strike.depth, "mm")
        .word("what", strike.what.clone())
}

/// How the tube's ends stand to each other, in words.
fn relation(way: &Way) -> String {
    if way.apart >= 180.0 - ways::PLAY {
        "its ends face opposite ways".to_owned()
    } else {
        // A hundredth of a degree is finer than anyone can set a fitting.
        format!("its ends point {} apart", words::number(libm::round(way.apart * 100.0) / 100.0, "°"))
    }
}

/// The keep-out that both ports of a run are holes in.
fn shared_part(subject: Subject<'_>, run: &OneRun<'_>) -> Option<String> {
    let parts = subject.design.keep_outs.iter().map(|keep_out| (keep_out, solid_of(keep_out)));
    let both = |port: [usize; 2], solid: &crate::distance::Solid| port.iter().all(|p| is_in_part(subject, *p, solid));
    let ports = [run.placed.from, run.placed.to];
    parts.into_iter().find(|(_, solid)| both(ports, solid)).map(|(keep_out, _)| keep_out.name.clone())
}
