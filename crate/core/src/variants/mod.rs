//! The same design in other sizes and materials, side by side: what each would be, hold, cost and be found wrong with.

mod asked;
mod flow;
mod request;
mod row;
mod shared;
mod variant;

use serde::Serialize;

use crate::check::{HangsOn, Subject};
use crate::design::{self, Design, Refusal};
use crate::engine::Stages;
use crate::flow::Course;
use crate::report::fix::Source;
use crate::service::courses;
use asked::Asked;
use flow::Driven;
use request::Request;
use row::Row;
use shared::Shared;
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
    let mut tried = Tried::of(&stages, &request.runs);
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

/// What variants share: the ways, which hang on neither sizes nor materials, and what is known of those tried so far.
struct Tried<'s, 't> {
    stages: &'s Stages<'t>,
    runs: &'s [usize],
    courses: Vec<Option<Course>>,
    refusals: Shared<Result<(), Refusal>>,
    asked: Asked,
    driven: Shared<Driven>,
}

impl<'s, 't> Tried<'s, 't> {
    /// Nothing has been tried yet.
    fn of(stages: &'s Stages<'t>, runs: &'s [usize]) -> Self {
        Self {
            stages,
            runs,
            courses: courses(&stages.design, &stages.lines),
            // Every material that ships can be typed.
            refusals: Shared::on(HangsOn::SIZES),
            asked: Asked::none(),
            driven: Shared::on(HangsOn::FLOW),
        }
    }

    fn row(&mut self, variant: &Variant, patch: serde_json::Value) -> Row {
        let design = variant.made(&self.stages.design, self.runs);
        if let Err(refusal) = self.refusals.of(variant.place, || typed(&design)) {
            return Row::refused(variant, &refusal, patch);
        }
        let driven = self.driven.of(variant.place, || Driven::of(&design, &self.courses));
        let stages = Stages { design, ..self.stages.clone() };
        let subject = Subject { design: &stages.design, layout: &stages.layout, lines: &stages.lines };
        let found = self.asked.of(variant.place, subject);
        Row::of(&stages, self.runs, &found, &driven, patch)
    }
}

/// Whether a variant could have been typed.
fn typed(design: &Design) -> Result<(), Refusal> {
    design::parse(&design::canonical(design)).map(drop)
}
