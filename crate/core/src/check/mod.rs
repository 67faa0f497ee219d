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
mod fit;
mod fitted;
mod heat;
mod leak;
mod loops;
mod meets;
mod mend;
mod misaligned;
mod obstacles;
mod patch;
mod play;
mod ports;
mod print;
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
pub use print::of_stance;
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
    leak::findings,
    print::findings,
    fit::findings,
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

/// Findings without ways to mend them, check by check: what differs between variants of a tube is asked of each anew.
#[derive(Debug, Clone, PartialEq)]
pub struct ByCheck(Vec<Vec<Finding>>);

impl ByCheck {
    /// Places in [`CHECKS`] of those that look for what the skin meets. They take longest, and nothing of the bore, the
    /// material or the loop is their concern.
    const OF_THE_SKIN: [usize; 2] = [9, 15];

    /// Asks every check.
    pub fn of(subject: Subject<'_>) -> Self {
        let mut budget = Budget::of(LOOKS);
        Self(CHECKS.iter().map(|check| check(subject, &mut budget)).collect())
    }

    /// Asks about a design whose ways and outer diameters are the same, and of which only the rest may differ.
    pub fn with_the_same_skin(&self, subject: Subject<'_>) -> Self {
        let mut budget = Budget::of(LOOKS);
        let known = |index: usize| self.0.get(index).filter(|_| Self::OF_THE_SKIN.contains(&index)).cloned();
        let asked = CHECKS.iter().enumerate();
        Self(asked.map(|(index, check)| known(index).unwrap_or_else(|| check(subject, &mut budget))).collect())
    }

    /// Every finding, in order.
    pub fn all(&self) -> impl Iterator<Item = &Finding> {
        self.0.iter().flatten()
    }
}
