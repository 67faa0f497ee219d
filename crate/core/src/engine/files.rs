//! Files on request: which kind, of which run, how fine.

use serde_json::{Map, Value};

use super::stages::{Stages, checked_deviation};
use crate::design::wording::quoted;
use crate::design::{Refusal, canonical};
use crate::export::{self, Kind, Meta, NamedMesh};
use crate::mesh::{Mesh, is_solid};
use crate::quantity::USUAL_DEVIATION;

/// What a file is asked to be.
struct Request {
    kind: Kind,
    /// Index of the run; none for a file of all.
    run: Option<usize>,
    deviation: f64,
}

/// The bytes of a file. `request` is JSON: `{ "kind": "stl", "run": "pump to block", "deviation": 0.01 }`; a 3MF
/// without a run holds all made runs; `design` and `all` are of the whole design.
///
/// # Errors
/// A text that is no design, a request that cannot be met: its `path` then points into the request; a run that cannot
/// be made.
pub fn export_file(text: &str, request: &str) -> Result<Vec<u8>, Refusal> {
    let stages = Stages::of(text)?;
    let request = Request::read(request, &stages)?;
    let design = &stages.design;
    match (request.kind, request.run) {
        (Kind::Design, _) => Ok(canonical(design).into_bytes()),
        (Kind::Stl, Some(run)) => Ok(export::stl(&solid(&stages, run, request.deviation)?, &design.runs[run].name)),
        (Kind::ThreeMf, Some(run)) => {
            let mesh = solid(&stages, run, request.deviation)?;
            let name = &design.runs[run].name;
            Ok(export::three_mf(&[NamedMesh { name, mesh: &mesh }], &Meta { title: name }))
        }
        (Kind::Stl | Kind::ThreeMf, None) => {
            let meshes = all_meshes(&stages, request.deviation)?;
            Ok(export::three_mf(&named(&stages, &meshes), &Meta { title: title(&stages) }))
        }
        (Kind::All, _) => {
            let meshes = all_meshes(&stages, request.deviation)?;
            Ok(export::zip(title(&stages), &canonical(design), &named(&stages, &meshes)))
        }
    }
}

/// A name for that file that every system takes.
///
/// # Errors
/// As [`export_file`], but for runs that cannot be made.
pub fn file_name(text: &str, request: &str) -> Result<String, Refusal> {
    let stages = Stages::of(text)?;
    let request = Request::read(request, &stages)?;
    let name = request.run.map_or(title(&stages), |run| &stages.design.runs[run].name);
    Ok(format!("{}.{}", export::file_stem(name), request.kind.extension()))
}

/// The design's name, or what stands for it.
fn title<'a>(stages: &'a Stages<'_>) -> &'a str {
    let name = stages.design.name.trim();
    if name.is_empty() { "tubes" } else { name }
}

fn all_meshes(stages: &Stages<'_>, deviation: f64) -> Result<Vec<(usize, Mesh)>, Refusal> {
    let made = stages.made();
    if made.is_empty() {
        let message = "No run of the design can be made yet, so there is nothing to put in the file. See the findings.";
        return Err(Refusal::at("", message));
    }
    made.into_iter().map(|run| Ok((run, solid(stages, run, deviation)?))).collect()
}

/// The mesh of a run, judged once more before it leaves: nobody shall pay for a print of one with a hole.
fn solid(stages: &Stages<'_>, run: usize, deviation: f64) -> Result<Mesh, Refusal> {
    let mesh = stages.mesh(run, deviation)?;
    if is_solid(&mesh) {
        return Ok(mesh);
    }
    let name = &stages.design.runs[run].name;
    let message = format!(
        "{name}: its mesh has a flaw, so no file is made of it. The fault is Tubewright's; another deviation may do."
    );
    Err(Refusal::at(format!("/runs/{run}"), message))
}

fn named<'a>(stages: &'a Stages<'_>, meshes: &'a [(usize, Mesh)]) -> Vec<NamedMesh<'a>> {
    meshes.iter().map(|(run, mesh)| NamedMesh { name: &stages.design.runs[*run].name, mesh }).collect()
}

impl Request {
    fn read(text: &str, stages: &Stages<'_>) -> Result<Self, Refusal> {
        const EXAMPLE: &str = "{ \"kind\": \"stl\", \"run\": \"pump to block\", \"deviation\": 0.01 }";
        let refused = |path: &str, message: String| Err(Refusal::at(path, message));
        let Ok(Value::Object(keys)) = serde_json::from_str::<Value>(text) else {
            return refused("", format!("The request must be a JSON object, such as {EXAMPLE}."));
        };
        if let Some(key) = keys.keys().find(|key| !["kind", "run", "deviation"].contains(&key.as_str())) {
            let message = format!("The request's key {} is not known; it has kind, run and deviation.", quoted(key));
            return refused(&format!("/{}", key.replace('~', "~0").replace('/', "~1")), message);
        }
        let words: Vec<String> = Kind::ALL.iter().map(|kind| format!("\"{}\"", kind.word())).collect();
        let Some(kind) = keys.get("kind").and_then(Value::as_str).and_then(Kind::of_word) else {
            return refused("/kind", format!("The kind of file must be one of {}.", words.join(", ")));
        };
        let deviation = match keys.get("deviation") {
            None => USUAL_DEVIATION,
            Some(value) => checked_deviation(value.as_f64().unwrap_or(f64::NAN), "/deviation")?,
        };
        Ok(Self { kind, run: run(kind, &keys, stages)?, deviation })
    }
}

fn run(kind: Kind, keys: &Map<String, Value>, stages: &Stages<'_>) -> Result<Option<usize>, Refusal> {
    let whole = matches!(kind, Kind::Design | Kind::All);
    match keys.get("run") {
        None | Some(Value::Null) if kind == Kind::Stl => {
            Err(Refusal::at("/run", "An STL holds one run: say which by its name, \"run\": \"...\"."))
        }
        None | Some(Value::Null) => Ok(None),
        Some(_) if whole => Err(Refusal::at(
            "/run",
            format!("A file of kind \"{}\" is of the whole design; leave the run out.", kind.word()),
        )),
        Some(Value::String(name)) => stages.run_named(name, "/run").map(Some),
        Some(_) => Err(Refusal::at("/run", "The run must be a run's name, in quotes.")),
    }
}
