//! What is told of how to cut a run, as JSON text.

use serde::Serialize;

use super::cut_search::{CHOICES, CutSearch, NoCuts};
use super::{Standing, Subject};
use crate::check::{PatchStep, patched, words};
use crate::design::wording::quoted;
use crate::design::{Cut, Refusal};
use crate::engine::Stages;
use crate::report::fix::{Source, Step, on_text};
use crate::report::{BoundsMm, degrees, point};
use serde_json::json;

/// Pieces that are tried at most for an answer.
const MOST_TRIED: usize = 600;
/// The same where the answer is only a finding's fix.
const FEW_TRIED: usize = 120;

/// The fewest pieces that a run is to be cut into for the printer, as JSON text: the cuts, a JSON Patch that states them, and
/// how each piece stands best. A run that fits whole is left whole, cuts that it states taken out. Where no cuts do, why, and
/// what would work.
///
/// # Errors
/// A run that cannot be made: what is found about it.
pub fn cuts(stages: &Stages<'_>, run: usize) -> Result<String, Refusal> {
    let answer = match proposed(stages, run, MOST_TRIED)? {
        Ok(proposal) => Answer::of(stages, run, &proposal)?,
        Err(why) => Answer::none(stages, run, why),
    };
    Ok(serde_json::to_string(&answer).unwrap_or_default())
}

/// The steps that state the fewest cuts of a run, and how many pieces they make; none where none are found quickly.
pub(super) fn quick_fix(stages: &Stages<'_>, run: usize) -> Option<(Vec<PatchStep>, usize)> {
    let proposal = proposed(stages, run, FEW_TRIED).ok()?.ok().filter(|proposal| !proposal.places.is_empty())?;
    Some((steps(run, &proposal.places), proposal.places.len() + 1))
}

/// Whether every piece of a run cut there stands in the room as it stands best.
fn stands(stages: &Stages<'_>, run: usize, places: &[f64]) -> bool {
    let Some(cut) = stated(stages, run, places) else { return false };
    let fits = |piece| Subject::of_piece(&cut, &piece).ok()?.chosen().map(|standing| standing.fits());
    cut.pieces(run).into_iter().all(|piece| fits(piece) == Some(true))
}

struct Proposal {
    places: Vec<f64>,
    spans: Vec<[f64; 2]>,
}

fn proposed(stages: &Stages<'_>, run: usize, most: usize) -> Result<Result<Proposal, NoCuts>, Refusal> {
    let (Some(line), true) = (&stages.lines[run].line, stages.is_made(run)) else { return Err(stages.not_made(run)) };
    let plain = stages.uncut(run, line.length);
    let mut search = CutSearch::of(stages, run, line, &plain, most);
    let fewest = match search.fewest() {
        Ok(fewest) => fewest,
        Err(why) => return Ok(Err(why)),
    };
    // The first choice that comes no nearer to anything than the run does uncut; else the one that does so least.
    let nearness = |places: &[f64]| stated(stages, run, places).map_or(usize::MAX, |stages| close(&stages));
    let uncut = nearness(&[]);
    let mut best: Option<(usize, Vec<f64>)> = None;
    for choice in 0..CHOICES {
        // Where the search gives out, what was found before does.
        let Ok(Some(places)) = search.choice(&fewest, choice) else { continue };
        let count = nearness(&places);
        if best.as_ref().is_none_or(|(least, _)| count < *least) && stands(stages, run, &places) {
            best = Some((count, places));
        }
        if best.as_ref().is_some_and(|(count, _)| *count <= uncut) {
            break;
        }
    }
    let Some((_, places)) = best else { return Ok(Err(NoCuts::Unfinished)) };
    let spans = fewest.spans;
    Ok(Ok(Proposal { places, spans }))
}

/// How many findings say that something is in the way or close.
fn close(stages: &Stages<'_>) -> usize {
    let about = ["meets_itself", "meets_run", "meets_fitting", "meets_keep_out"];
    stages.findings().iter().filter(|finding| about.contains(&finding.code)).count()
}

fn steps(run: usize, places: &[f64]) -> Vec<PatchStep> {
    let cuts: Vec<_> = places.iter().map(|at| json!({ "at": at, "stance": null })).collect();
    vec![PatchStep::set(format!("/runs/{run}/cuts"), cuts)]
}

/// The design with those cuts, taken through the stages.
fn stated<'t>(stages: &Stages<'t>, run: usize, places: &[f64]) -> Option<Stages<'t>> {
    let design = patched(&stages.design, &steps(run, places))?;
    debug_assert!(design.runs[run].cuts.iter().map(|cut: &Cut| cut.at).eq(places.iter().copied()));
    Some(Stages { design, ..stages.clone() })
}

#[derive(Serialize)]
struct Answer<'a> {
    run: &'a str,
    length_mm: f64,
    /// How many; null where no cuts do.
    pieces: Option<usize>,
    cuts: Vec<CutTold>,
    patch: Vec<Step>,
    parts: Vec<Part>,
    /// Why there are none, and what would work; null where there are.
    why: Option<String>,
}

#[derive(Serialize)]
struct CutTold {
    at_mm: f64,
    /// As few pieces do with the cut anywhere between, joints having room, the others placed to suit.
    earliest_mm: f64,
    latest_mm: f64,
}

/// A piece as it stands best.
#[derive(Serialize)]
struct Part {
    piece: usize,
    from_mm: f64,
    to_mm: f64,
    material_mm3: f64,
    mass_g: f64,
    fits: bool,
    slack_mm: f64,
    box_mm: BoundsMm,
    height_mm: f64,
    up: [f64; 3],
    turn_deg: f64,
    cups: usize,
    support_mm2: f64,
}

impl<'a> Answer<'a> {
    fn of(stages: &'a Stages<'_>, run: usize, proposal: &Proposal) -> Result<Self, Refusal> {
        let whole = stated(stages, run, &proposal.places).ok_or_else(|| stages.not_made(run))?;
        let mut parts = Vec::new();
        for piece in whole.pieces(run) {
            let Some(standing) = Subject::of_piece(&whole, &piece)?.best().into_iter().next() else { continue };
            parts.push(Part::of(&whole, &piece, &standing));
        }
        let same = stages.design.runs[run].cuts.is_empty() && proposal.places.is_empty();
        let steps = if same { Vec::new() } else { steps(run, &proposal.places) };
        let told = proposal.places.iter().zip(&proposal.spans);
        Ok(Self {
            pieces: Some(parts.len()),
            cuts: told
                .map(|(at, span)| CutTold { at_mm: *at, earliest_mm: span[0].min(*at), latest_mm: span[1].max(*at) })
                .collect(),
            patch: on_text(&steps, &Source::of(stages.text)),
            parts,
            why: None,
            ..Self::about(stages, run)
        })
    }

    fn none(stages: &'a Stages<'_>, run: usize, why: NoCuts) -> Self {
        let printer = quoted(&stages.design.process.printer.name);
        let larger = "What would work: a printer with more room";
        let words = match why {
            NoCuts::NoRoom { from, next: Some(next) } => format!(
                "What begins at {} does not fit {printer} up to the next place that has room for a joint, at {}. {larger}, or a \
                 straight sooner, long enough for a joint.",
                words::number(from, "mm"),
                words::number(next, "mm")
            ),
            NoCuts::NoRoom { from, next: None } => format!(
                "What begins at {} does not fit {printer}, and beyond it no place has room for a joint. {larger}, or a straight \
                 there, long enough for a joint.",
                words::number(from, "mm")
            ),
            NoCuts::TooMany => format!("It would take more than {} cuts. {larger}.", crate::quantity::MOST_CUTS),
            NoCuts::Unfinished => {
                format!("No cuts were found in the time that a search is given. {larger}, or cuts of your own.")
            }
        };
        Self { why: Some(words), ..Self::about(stages, run) }
    }

    fn about(stages: &'a Stages<'_>, run: usize) -> Self {
        Self {
            run: &stages.design.runs[run].name,
            length_mm: stages.lines[run].line.as_ref().map_or(0.0, |line| line.length),
            pieces: None,
            cuts: Vec::new(),
            patch: Vec::new(),
            parts: Vec::new(),
            why: None,
        }
    }
}

impl Part {
    fn of(stages: &Stages<'_>, piece: &crate::engine::Piece, standing: &Standing) -> Self {
        let [from_mm, to_mm] = piece.profile.span();
        let material = piece.profile.material_volume();
        let figures = &standing.figures;
        Self {
            piece: piece.index + 1,
            from_mm,
            to_mm,
            material_mm3: material,
            mass_g: material / 1e3 * stages.design.process.material.density_g_per_cm3,
            fits: standing.fits(),
            slack_mm: figures.slack,
            box_mm: BoundsMm::of(&standing.bounds),
            height_mm: figures.height,
            up: point(&standing.frame.up()),
            turn_deg: degrees(standing.frame.turned()),
            cups: standing.cups.len(),
            support_mm2: figures.support,
        }
    }
}
