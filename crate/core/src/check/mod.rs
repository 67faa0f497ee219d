//! The questions a builder asks of a design: one file a question, each a pure function to findings.

mod asking;
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
mod joint;
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
mod spot;
mod strength;
mod subject;
mod tight;
mod trim;
mod tube_diameter;
mod wall;
pub mod words;

pub use asking::{Check, HangsOn};
pub use finding::*;
pub use patch::patched;
pub use print::{StoodPiece, of_stance};
pub use subject::{OneRun, Subject};

use crate::distance::Budget;

/// All checks, in the order their findings are told.
pub const CHECKS: &[Check] = &[
    Check { ask: obstacles::findings, hangs_on: HangsOn::ALL },
    Check { ask: bend_radius::findings, hangs_on: HangsOn::ALL },
    Check { ask: curves::findings, hangs_on: HangsOn::ALL },
    Check { ask: fitted::findings, hangs_on: HangsOn::ALL },
    Check { ask: loops::findings, hangs_on: HangsOn::ALL },
    Check { ask: tube_diameter::findings, hangs_on: HangsOn::ALL },
    Check { ask: wall::findings, hangs_on: HangsOn::ALL },
    Check { ask: spot::findings, hangs_on: HangsOn::ALL },
    Check { ask: chamfer::findings, hangs_on: HangsOn::ALL },
    Check { ask: dress::findings, hangs_on: HangsOn::ALL },
    Check { ask: meets::findings, hangs_on: HangsOn::SKIN },
    Check { ask: ports::findings, hangs_on: HangsOn::ALL },
    Check { ask: misaligned::findings, hangs_on: HangsOn::ALL },
    Check { ask: play::findings, hangs_on: HangsOn::ALL },
    Check { ask: trim::findings, hangs_on: HangsOn::ALL },
    Check { ask: far::findings, hangs_on: HangsOn::ALL },
    Check { ask: assembly::findings, hangs_on: HangsOn::SKIN },
    Check { ask: heat::findings, hangs_on: HangsOn::MATERIAL },
    Check { ask: strength::findings, hangs_on: HangsOn::ALL },
    Check { ask: joint::findings, hangs_on: HangsOn::ALL },
    Check { ask: tight::findings, hangs_on: HangsOn::ALL },
    Check { ask: seal::findings, hangs_on: HangsOn::ALL },
    Check { ask: choke::findings, hangs_on: HangsOn::FLOW },
    Check { ask: pumped::findings, hangs_on: HangsOn::FLOW },
    Check { ask: bleed::findings, hangs_on: HangsOn::BORES },
    Check { ask: leak::findings, hangs_on: HangsOn::ALL },
    Check { ask: print::findings, hangs_on: HangsOn::ALL },
    Check { ask: fit::findings, hangs_on: HangsOn::ALL },
];

/// Findings of one kind about one run that are told: a run with more is wrong as a whole, and telling each corner of
/// two thousand would help nobody.
const MOST_OF_A_KIND: usize = 100;

/// Looks at pairs of a design's parts, about 0.3 microseconds each. A four-run loop takes some hundreds.
pub(crate) const LOOKS: u64 = 2_000_000;

/// Every finding about a design; none stops at the first. A `fix` has been tried: with it the finding is gone and
/// nothing new stops the design.
pub fn findings(subject: Subject<'_>) -> Vec<Finding> {
    let mut found = untried(subject, &mut Budget::of(LOOKS));
    mend::try_ways(subject, &mut found);
    found
}

/// Every finding, its ways to mend it not yet tried.
fn untried(subject: Subject<'_>, budget: &mut Budget) -> Vec<Finding> {
    CHECKS.iter().flat_map(|check| (check.ask)(subject, budget)).collect()
}
