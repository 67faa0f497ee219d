//! Where does the tube keep air when it is filled, and coolant when it is drained?

use super::{Finding, OneRun, Severity, Subject, words};
use crate::bleed::{Keeps, Trap, profile};
use crate::distance::Budget;
use crate::layout::Vec3;

/// `bleed`, `drain` (note): a high or low point deeper than the bore, so that nothing passes beside it.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let up = Vec3::from(subject.design.working.up);
    subject.runs().flat_map(|run| traps(&run, &up)).collect()
}

fn traps(run: &OneRun<'_>, up: &Vec3) -> Vec<Finding> {
    let bore = run.run.tube.bore;
    let Some(profile) = run.drawn.line.as_ref().and_then(|line| profile(line, up).ok()) else { return Vec::new() };
    // A coil on its side has one a turn; the deepest of each sort says it.
    [Keeps::Air, Keeps::Coolant]
        .into_iter()
        .filter_map(|keeps| {
            let deep = || profile.traps.iter().filter(|trap| trap.keeps == keeps && trap.depth > bore);
            let worst = deep().max_by(|a, b| a.depth.total_cmp(&b.depth))?;
            Some(told(run, worst, deep().count(), deep().map(|trap| trap.volume(bore)).sum()))
        })
        .collect()
}

fn told(run: &OneRun<'_>, trap: &Trap, count: usize, volume: f64) -> Finding {
    let code = if trap.keeps == Keeps::Air { "bleed" } else { "drain" };
    let finding = run
        .finding(code, Severity::Note, run.at("/route"))
        .at(&trap.at)
        .value(trap.depth, "mm")
        .limit(run.run.tube.bore, "geometry: what is shallower than the bore is passed beside")
        .word("volume", words::number(volume * 1e-3, "mL"));
    if count > 1 { finding.word("count", count.to_string()) } else { finding }
}
