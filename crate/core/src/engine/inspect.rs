//! A file held against what print services ask, on its own bytes.

use serde::Serialize;
use serde_json::Value;

use super::coupon;
use super::deviation::{Deviation, meshed};
use super::limits::limits;
use super::stages::Stages;
use crate::accept::{Asked, questions, read_stl};
use crate::coupon::Compensation;
use crate::design::Refusal;
use crate::export::{self, Kind};
use crate::print::Subject;
use crate::request;

#[derive(Serialize)]
struct Inspection<'a> {
    run: &'a str,
    deviation_mm: f64,
    triangles: usize,
    bytes: usize,
    passes: bool,
    questions: Vec<Asked>,
}

/// What a print service asks of the STL of a run, each question with its answer, as JSON text; the file is written and
/// read back for it. `request` is JSON, `{ "run": "pump to block", "deviation": "fit" }`, deviation and `compensated` as for
/// a file.
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
    run: usize,
    deviation: Deviation,
    correction: Option<Compensation>,
}

fn asked(text: &str, stages: &Stages<'_>) -> Result<Request, Refusal> {
    const EXAMPLE: &str = "{ \"run\": \"pump to block\", \"deviation\": 0.01 }";
    let keys = request::object(text, EXAMPLE)?;
    request::knows(&keys, &["run", "deviation", "compensated"], "it")?;
    let Some(name) = keys.get("run").and_then(Value::as_str) else {
        return Err(Refusal::at("/run", "Say which run by its name, \"run\": \"...\"."));
    };
    Ok(Request {
        run: stages.run_named(name, "/run")?,
        deviation: Deviation::read(keys.get("deviation"))?,
        correction: coupon::correction(Kind::Stl, &keys, stages)?,
    })
}

fn inspected(stages: &Stages<'_>, asked: &Request) -> Result<String, Refusal> {
    let (run, correction) = (asked.run, asked.correction.as_ref());
    let (deviation, mesh) = meshed(stages, run, asked.deviation, correction)?;
    let name = &stages.design.runs[run].name;
    let bytes = export::stl(&mesh, &export::called(name, correction.is_some()));
    let (Some(solid), Some(line)) = (read_stl(&bytes), &stages.lines[run].line) else {
        return Err(stages.not_made(run));
    };
    let fits = Subject::of(stages, run)?.chosen().is_some_and(|standing| standing.fits());
    let questions = questions(&solid, &limits(stages, run, line, correction, fits)?);
    let inspection = Inspection {
        run: name,
        deviation_mm: deviation,
        triangles: solid.mesh.indices.len() / 3,
        bytes: bytes.len(),
        passes: questions.iter().all(|asked| asked.passes),
        questions,
    };
    Ok(serde_json::to_string(&inspection).unwrap_or_default())
}
