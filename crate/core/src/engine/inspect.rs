//! A file held against what print services ask, on its own bytes.

use serde::Serialize;
use serde_json::Value;

use super::coupon;
use super::deviation::{Deviation, meshed};
use super::limits::limits;
use super::piece;
use super::stages::{Piece, Stages};
use crate::accept::{Asked, questions, read_stl};
use crate::coupon::Compensation;
use crate::design::Refusal;
use crate::export::{self, Kind};
use crate::print::Subject;
use crate::request;

#[derive(Serialize)]
struct Inspection<'a> {
    run: &'a str,
    /// Null for a run as it is put together.
    piece: Option<usize>,
    deviation_mm: f64,
    triangles: usize,
    bytes: usize,
    passes: bool,
    questions: Vec<Asked>,
}

/// What a print service asks of the STL of a run, each question with its answer, as JSON text; the file is written and
/// read back for it. `request` is JSON, `{ "run": "pump to block", "deviation": "fit" }`, deviation, `compensated` and
/// `piece` as for a file.
///
/// # Errors
/// As [`super::export_file`].
pub fn inspect(text: &str, request: &str) -> Result<String, Refusal> {
    let stages = Stages::of(text)?;
    let asked = asked(request, &stages)?;
    inspected(&stages, &asked)
}

/// Which file.
struct Request {
    piece: Piece,
    /// Whether a piece was asked for.
    one: bool,
    deviation: Deviation,
    correction: Option<Compensation>,
}

fn asked(text: &str, stages: &Stages<'_>) -> Result<Request, Refusal> {
    const EXAMPLE: &str = "{ \"run\": \"pump to block\", \"deviation\": 0.01 }";
    let keys = request::object(text, EXAMPLE)?;
    request::knows(&keys, &["run", "piece", "deviation", "compensated"], "it")?;
    let Some(name) = keys.get("run").and_then(Value::as_str) else {
        return Err(Refusal::at("/run", "Say which run by its name, \"run\": \"...\"."));
    };
    let run = stages.run_named(name, "/run")?;
    let asked = piece::read(Kind::Stl, Some(run), &keys, stages)?;
    Ok(Request {
        one: asked.is_some(),
        piece: asked.map_or_else(|| stages.whole(run), Ok)?,
        deviation: Deviation::read(keys.get("deviation"))?,
        correction: coupon::correction(Kind::Stl, &keys, stages)?,
    })
}

fn inspected(stages: &Stages<'_>, asked: &Request) -> Result<String, Refusal> {
    let (piece, correction) = (&asked.piece, asked.correction.as_ref());
    let (deviation, mesh) = meshed(stages, piece, asked.deviation, correction)?;
    let name = &stages.design.runs[piece.run].name;
    let bytes = export::stl(&mesh, &export::called(&piece.called(name), correction.is_some()));
    let Some(solid) = read_stl(&bytes) else { return Err(stages.not_made(piece.run)) };
    let fits = Subject::of_piece(stages, piece)?.chosen().is_some_and(|standing| standing.fits());
    let questions = questions(&solid, &limits(stages, piece, correction, fits)?);
    let inspection = Inspection {
        run: name,
        piece: asked.one.then_some(piece.index + 1),
        deviation_mm: deviation,
        triangles: solid.mesh.indices.len() / 3,
        bytes: bytes.len(),
        passes: questions.iter().all(|asked| asked.passes),
        questions,
    };
    Ok(serde_json::to_string(&inspection).unwrap_or_default())
}
