//! Tries every way to mend a finding on a copy of the design before it is offered as a fix.

use super::{Finding, PatchStep, Severity, Subject, patched, untried};
use crate::centreline;
use crate::design::Design;
use crate::distance::Budget;
use crate::layout;
use std::collections::BTreeMap;

/// Pieces of tube, ports and fittings that may be looked at over again in trying; beyond it findings keep no fix. A
/// four-run loop has about a hundred.
const PARTS: usize = 100_000;
/// Looks at pairs in all tries together.
const LOOKS: u64 = 1_000_000;

/// Keeps the first way of each finding that takes it away and lets nothing new stop the design, and of those the first
/// that gives nothing new to take care over.
pub(super) fn try_ways(subject: Subject<'_>, found: &mut [Finding]) {
    let parts = parts(subject);
    if parts > PARTS {
        return found.iter_mut().for_each(|finding| finding.ways.clear());
    }
    let before = Counts::of(found.iter());
    let mut parts_left = PARTS;
    let mut budget = Budget::of(LOOKS);
    for finding in found {
        let ways = std::mem::take(&mut finding.ways);
        let mut second_best = None;
        for way in ways {
            if parts > parts_left || budget.is_spent() {
                break;
            }
            parts_left -= parts;
            match outcome(subject, finding, &way, &before, &mut budget) {
                Outcome::Mends => {
                    finding.fix = Some(way);
                    break;
                }
                Outcome::MendsWithCare => second_best = second_best.or(Some(way)),
                Outcome::No => {}
            }
        }
        finding.fix = finding.fix.take().or(second_best);
    }
}

enum Outcome {
    Mends,
    MendsWithCare,
    No,
}

fn outcome(
    subject: Subject<'_>,
    finding: &Finding,
    way: &[PatchStep],
    before: &Counts,
    budget: &mut Budget,
) -> Outcome {
    let Some(design) = patched(subject.design, way) else { return Outcome::No };
    let after = found_in(&design, budget);
    if budget.is_spent() {
        return Outcome::No;
    }
    let after = Counts::of(after.iter());
    let before = before.after(way);
    let key = Key::of(finding).after(way);
    let gone = key.as_ref().is_none_or(|key| after.count(key) < before.count(key));
    if !gone || after.has_more_than(&before, Severity::Stop) {
        return Outcome::No;
    }
    if after.has_more_than(&before, Severity::Care) { Outcome::MendsWithCare } else { Outcome::Mends }
}

fn found_in(design: &Design, budget: &mut Budget) -> Vec<Finding> {
    let layout = layout::place(design);
    let lines = centreline::lines(design, &layout);
    untried(Subject { design, layout: &layout, lines: &lines }, budget)
}

fn parts(subject: Subject<'_>) -> usize {
    let pieces = subject.runs().map(|run| run.run.route.len() + run.pieces().len() + 1).sum::<usize>();
    pieces + subject.design.ports.len() + subject.design.fittings.len() + subject.design.keep_outs.len()
}

/// What makes two findings, before and after a change, the same one.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
struct Key {
    code: &'static str,
    place: String,
    about: String,
}

impl Key {
    fn of(finding: &Finding) -> Self {
        let named = ["other", "port", "keep_out", "fitting"];
        let about = finding.words.iter().filter(|(name, _)| named.contains(name)).map(|(_, word)| word.as_str());
        Self { code: finding.code, place: finding.place.clone(), about: about.collect::<Vec<_>>().join("\n") }
    }

    /// The same finding's key once stations have been taken out; none if its own was.
    fn after(&self, way: &[PatchStep]) -> Option<Self> {
        let mut key = self.clone();
        for step in way.iter().filter(|step| step.op == "remove") {
            let (route, gone) = step.path.rsplit_once('/')?;
            let gone: usize = gone.parse().ok()?;
            let Some(rest) = key.place.strip_prefix(&format!("{route}/")) else { continue };
            let (station, rest) = rest.split_once('/').map_or((rest, ""), |(station, rest)| (station, rest));
            let Ok(station) = station.parse::<usize>() else { continue };
            match station.cmp(&gone) {
                std::cmp::Ordering::Less => {}
                std::cmp::Ordering::Equal => return None,
                std::cmp::Ordering::Greater => {
                    let slash = if rest.is_empty() { "" } else { "/" };
                    key.place = format!("{route}/{}{slash}{rest}", station - 1);
                }
            }
        }
        Some(key)
    }
}

/// How often each finding is there, by severity.
#[derive(Debug, Clone, Default)]
struct Counts(BTreeMap<Key, [usize; 3]>);

impl Counts {
    fn of<'f>(found: impl Iterator<Item = &'f Finding>) -> Self {
        let mut counts = Self::default();
        for finding in found {
            counts.0.entry(Key::of(finding)).or_default()[finding.severity as usize] += 1;
        }
        counts
    }

    fn after(&self, way: &[PatchStep]) -> Self {
        let kept = self.0.iter().filter_map(|(key, counts)| Some((key.after(way)?, *counts)));
        Self(kept.collect())
    }

    fn count(&self, key: &Key) -> usize {
        self.0.get(key).map_or(0, |counts| counts.iter().sum())
    }

    /// Whether a finding of this severity, or a worse one, is here more often than in `other`.
    fn has_more_than(&self, other: &Self, severity: Severity) -> bool {
        let worst = |counts: Option<&[usize; 3]>| counts.map_or(0, |c| c[..=severity as usize].iter().sum::<usize>());
        self.0.iter().any(|(key, counts)| worst(Some(counts)) > worst(other.0.get(key)))
    }
}
