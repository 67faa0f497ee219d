//! The questions a builder asks of a design: one file a question, each a pure function to findings.

mod assembly;
mod bend_radius;
mod bleed;
mod chamfer;
mod choke;
mod curves;
mod dress;
mod far;
mod finding;
mod fitted;
mod heat;
mod loops;
mod meets;
mod mend;
mod misaligned;
mod obstacles;
mod patch;
mod play;
mod ports;
mod pumped;
mod round;
mod seal;
mod strength;
mod subject;
mod tight;
mod trim;
mod tube_diameter;
mod wall;
pub mod words;

pub use finding::*;
pub use patch::patched;
pub use subject::{OneRun, Subject};

use crate::distance::Budget;

/// A check: a question answered. Those that look at pairs of things take each look off the budget.
pub type Check = fn(Subject<'_>, &mut Budget) -> Vec<Finding>;

/// All checks, in the order their findings are told.
pub const CHECKS: &[Check] = &[
    obstacles::findings,
    bend_radius::findings,
    curves::findings,
    fitted::findings,
    loops::findings,
    tube_diameter::findings,
    wall::findings,
    chamfer::findings,
    dress::findings,
    meets::findings,
    ports::findings,
    misaligned::findings,
    play::findings,
    trim::findings,
    far::findings,
    assembly::findings,
    heat::findings,
    strength::findings,
    tight::findings,
    seal::findings,
    choke::findings,
    pumped::findings,
    bleed::findings,
];

/// Findings of one kind about one run that are told: a run with more is wrong as a whole, and telling each corner of
/// two thousand would help nobody.
const MOST_OF_A_KIND: usize = 100;

/// Looks at pairs of a design's parts, about 0.3 microseconds each. A four-run loop takes some hundreds.
const LOOKS: u64 = 2_000_000;

/// Every finding about a design; none stops at the first. A `fix` has been tried: with it the finding is gone and
/// nothing new stops the design.
pub fn findings(subject: Subject<'_>) -> Vec<Finding> {
    let mut found = untried(subject, &mut Budget::of(LOOKS));
    mend::try_ways(subject, &mut found);
    found
}

/// Every finding, its ways to mend it not yet tried.
fn untried(subject: Subject<'_>, budget: &mut Budget) -> Vec<Finding> {
    CHECKS.iter().flat_map(|check| check(subject, budget)).collect()
}
