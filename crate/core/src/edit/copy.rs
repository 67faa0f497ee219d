//! A run once more.

use super::names::fresh;
use crate::design::{Design, Refusal};
use crate::quantity::{MOST_RUNS, RUN_NAME};

/// The design with a copy of a run right behind it, under a name of its own. Both run between the same ports until the
/// builder gives the copy others.
///
/// # Errors
/// A design with as many runs as there may be.
pub fn copied(design: &Design, run: usize) -> Result<Design, Refusal> {
    has_room(design)?;
    let mut after = design.clone();
    let mut copy = design.runs[run].clone();
    copy.name = fresh(design.runs.iter().map(|run| run.name.as_str()), &copy.name, "copy", &RUN_NAME);
    after.runs.insert(run + 1, copy);
    Ok(after)
}

/// Whether one more run may be added.
pub(super) fn has_room(design: &Design) -> Result<(), Refusal> {
    if design.runs.len() < MOST_RUNS {
        return Ok(());
    }
    Err(Refusal::at("/run", format!("The design has {MOST_RUNS} runs, the most there can be. Take one out first.")))
}
