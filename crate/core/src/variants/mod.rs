//! The same design in other sizes and materials, side by side: what each would be, hold, cost and be found wrong with.

mod request;
mod row;
mod variant;

use serde::Serialize;

use crate::check::{ByCheck, Subject};
use crate::design::{self, Design, Refusal};
use crate::engine::Stages;
use crate::report::fix::Source;
use request::Request;
use row::Row;
use variant::Variant;

/// Pieces of tube that may be gone through in all variants together; beyond it the request is refused. A loop of four
/// tubes has about forty.
const MOST_PIECES: usize = 200_000;

/// A table of variants as JSON text: every combination of what `request` names, an object such as
/// `{ "outer_diameters": [12, 14], "bores": [8, 9, 10], "materials": ["PETG"], "run": "pump to block" }`. A list that is
/// left out keeps what the design has; without `run` every run is changed. A row's numbers are those of the report of the
/// design after the row's `patch`, a JSON Patch that adopts it. Bend radii stay as they are.
///
/// # Errors
/// A text that is no design, or one with more than 100 m of tube; a request that cannot be met: its `path` then points
/// into the request.
pub fn variants(text: &str, request: &str) -> Result<String, Refusal> {
    let stages = Stages::of(text)?;
    let request = Request::read(request, &stages.design)?;
    let combinations = request.combinations();
    let lines = stages.lines.iter().filter_map(|line| line.line.as_ref());
    let pieces: usize = lines.map(|line| line.pieces.len() + 1).sum();
    if pieces * combinations.len() > MOST_PIECES {
        let most = (MOST_PIECES / pieces.max(1)).max(1);
        let message = format!("The design is too large to try so much at once. Try at most {most} variants.");
        return Err(Refusal::at("", message));
    }
    let source = Source::of(text);
    let mut tried = Tried { stages: &stages, runs: &request.runs, same_skin: None };
    let rows = combinations.iter().map(|variant| {
        let patch = variant.patch(&stages.design, &request.runs, &source);
        tried.row(variant, patch)
    });
    let rows: Vec<Row> = rows.collect();
    Ok(serde_json::to_string(&Table { rows }).unwrap_or_default())
}

#[derive(Serialize)]
struct Table {
    rows: Vec<Row>,
}

/// What variants share: the ways, which hang on neither sizes nor materials, and what is found about the last skin.
struct Tried<'s, 't> {
    stages: &'s Stages<'t>,
    runs: &'s [usize],
    same_skin: Option<(Option<f64>, ByCheck)>,
}

impl<'t> Tried<'_, 't> {
    fn row(&mut self, variant: &Variant, patch: serde_json::Value) -> Row {
        let design = variant.made(&self.stages.design, self.runs);
        match self.checked(design) {
            Err(refusal) => Row::refused(variant, &refusal, patch),
            Ok(stages) => {
                let found = self.found(variant, &stages);
                Row::of(&stages, self.runs, &found, patch)
            }
        }
    }

    /// The variant, if it could have been typed.
    fn checked(&self, design: Design) -> Result<Stages<'t>, Refusal> {
        design::parse(&design::canonical(&design))?;
        Ok(Stages { design, ..self.stages.clone() })
    }

    fn found(&mut self, variant: &Variant, stages: &Stages<'_>) -> ByCheck {
        let subject = Subject { design: &stages.design, layout: &stages.layout, lines: &stages.lines };
        match &self.same_skin {
            Some((outer, known)) if *outer == variant.outer_diameter => known.with_the_same_skin(subject),
            _ => {
                let found = ByCheck::of(subject);
                self.same_skin = Some((variant.outer_diameter, found.clone()));
                found
            }
        }
    }
}
