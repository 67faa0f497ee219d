//! Files on request: which kind, of which run, how fine.

use serde_json::{Map, Value};

use super::coupon::{self, Asked};
use super::deviation::{Deviation, meshed};
use super::pack;
use super::piece;
use super::plate;
use super::plots::{USUAL_WIDTH, plot, width};
use super::stages::{PIECE_OF, Piece, Stages};
use super::stance::{self, Stood};
use crate::coupon::Compensation;
use crate::design::{Refusal, canonical};
use crate::graphs;

use crate::export::{self, DesignTold, Feed, Kind, NamedMesh, Paper, RunFiles, ToldRun};
use crate::mesh::{Mesh, is_solid};
use crate::quantity::USUAL_DEVIATION;
use crate::request;
use crate::sheet;
use crate::tongue::{self, Tongue};
use crate::tube::Profile;

/// Told how much of something long is done, 0 to 1.
pub type Watch<'w> = dyn FnMut(f64) + 'w;

/// What a file is asked to be.
struct Request {
    kind: Kind,
    /// Index of the run; none for a file of all.
    run: Option<usize>,
    /// The piece of it; none for all that there is of it.
    piece: Option<Piece>,
    deviation: Deviation,
    /// Which plate, from 1; none for what is of no plate.
    plate: Option<usize>,
    /// How a bend table is told.
    feed: Feed,
    /// How wide a plot is, CSS pixels.
    width: u32,
    /// How the run stands; none for where it is in the datum.
    stance: Option<Stood>,
    /// What a coupon is to be.
    coupon: Asked,
    /// What meshes are corrected by.
    correction: Option<Compensation>,
    /// The language of what people read.
    tongue: Tongue,
}

/// The bytes of a file. `request` is JSON: `{ "kind": "stl", "run": "pump to block", "deviation": 0.01 }`; a 3MF
/// without a run holds all made runs; the deviation "fit" is the finest that the printer's limits of a file allow;
/// `design`, `all` and `pack` are of the whole design. A `bend-table` can be asked for with `"flip": true`, rotations
/// against the right-hand rule, and `"from": "end"`, fed from the run's end. A plot, `loss-plot`, `margins-plot` or
/// `stiffness-plot`, is of the whole design and can be asked for with a `"width"`, CSS pixels. A `coupon` is of one run's
/// tube; `"format": "stl"` makes it an archive of STLs, one a stick, instead of a 3MF, and `"count"` and `"step"` say how
/// many sizes it has and how far apart. Where a coupon's readings hold, `stl`, `3mf`, `plate`, `all` and `pack` have their meshes
/// corrected by them; `"compensated": false` leaves that off.
///
/// Of a run that is cut into pieces, an STL holds the run put together, and a 3MF every piece, unless one is asked for by its
/// number along the run, `"piece": 1`. `all` and `pack` hold every piece.
///
/// A `plate` holds the pieces that lie on the plate of that number, `"plate": 1`, in their places on it: see [`plates`].
///
/// A `drawing`, a plot, `all` and a `pack` can be asked for in another language: `"words": { "language": "de", "decimal": ",", "quotes": ["„", "“"], "words":
/// { "What to print": "Was zu drucken ist" } }` has rows from the engine's English to the other words. See [`crate::tongue`].
///
/// An STL or 3MF of one run is in the builder's datum, unless it is asked for with a `"stance"`: `true` for the run's own,
/// or the best where it states none, or `{ "up": [x, y, z], "turn_deg": a }`. Its coordinates are then the printer's: x and
/// y from the corner of the build volume, the tube in the middle, z from the plate, the lowest point at the lift.
///
/// # Errors
/// A text that is no design, a request that cannot be met: its `path` then points into the request; a run that cannot
/// be made.
///
/// [`plates`]: super::plates
pub fn export_file(text: &str, request: &str) -> Result<Vec<u8>, Refusal> {
    export_file_watched(text, request, &mut |_| ())
}

/// The same bytes, whoever watches: `watch` is told how much is done, 0 to 1, ascending, each time that a run of many is.
///
/// # Errors
/// As [`export_file`].
pub fn export_file_watched(text: &str, request: &str, watch: &mut Watch<'_>) -> Result<Vec<u8>, Refusal> {
    let stages = Stages::of(text)?;
    let request = Request::read(request, &stages)?;
    let (design, english) = (&stages.design, Tongue::english());
    match (request.kind, request.run) {
        (Kind::Design, _) => Ok(canonical(design).into_bytes()),
        (Kind::Stl, Some(run)) => {
            let piece = request.piece.clone().map_or_else(|| stages.whole(run), Ok)?;
            let name = export::called(&piece.called(&design.runs[run].name), request.correction.is_some());
            Ok(export::stl(&stood(&stages, &piece, &request)?, &name))
        }
        (Kind::BendTable, Some(run)) => told(&stages, run, &english, |told| export::bend_csv(told, request.feed)),
        (Kind::Points, Some(run)) => told(&stages, run, &english, export::points_csv),
        (Kind::Drawing, Some(run)) => told(&stages, run, &request.tongue, |told| export::drawing(told).into_bytes()),
        (kind, _) if kind.is_plot() => plot(&stages, kind, request.width, &request.tongue),
        _ => bearing_the_design(&stages, &request, watch),
    }
}

/// A file that bears the design: written out for these alone, since it may be long.
fn bearing_the_design(stages: &Stages<'_>, request: &Request, watch: &mut Watch<'_>) -> Result<Vec<u8>, Refusal> {
    let design = &stages.design;
    let text = canonical(design);
    let note = coupon::note(request.correction.as_ref(), stages, &Tongue::english());
    let material = &design.process.material.name;
    let told_design = DesignTold { title: title(stages), text: &text, material, note: &note };
    match (request.kind, request.run) {
        (Kind::ThreeMf, Some(run)) => {
            let solids = solids(stages, run, request)?;
            let name = &design.runs[run].name;
            let title = request.piece.as_ref().map_or(name.clone(), |piece| piece.called(name));
            Ok(export::three_mf(&named(&solids), &told_design.meta(&title)))
        }
        (Kind::Coupon, Some(run)) => {
            coupon::file(stages, run, &request.coupon, request.deviation.finest(), &told_design)
        }
        (Kind::Pack, _) => {
            let corrected = request.correction.as_ref();
            pack::file(stages, request.deviation, corrected, &told_design, &request.tongue, watch)
        }
        (Kind::Plate, _) => {
            let corrected = request.correction.as_ref();
            plate::file(stages, request.plate.unwrap_or(1), request.deviation, corrected, &told_design, watch)
        }
        (_, None) if request.kind != Kind::All => {
            let runs = all_solids(stages, request, watch)?;
            let named: Vec<NamedMesh<'_>> = runs.iter().flat_map(|(_, solids)| named(solids)).collect();
            Ok(export::three_mf(&named, &told_design.meta(told_design.title)))
        }
        _ => {
            let runs = all_solids(stages, request, watch)?;
            let mut files = Vec::with_capacity(runs.len());
            for (run, solids) in &runs {
                let suffixes = solids.iter().map(|solid| solid.suffix.as_str());
                let solids = suffixes.zip(named(solids)).collect();
                files.push(RunFiles {
                    name: &design.runs[*run].name,
                    solids,
                    papers: papers(stages, *run, &request.tongue)?,
                });
            }
            Ok(export::zip(&told_design, &files, &plots(stages, &request.tongue)))
        }
    }
}

/// A file of words and numbers about a run.
fn told(
    stages: &Stages<'_>,
    run: usize,
    tongue: &Tongue,
    write: impl Fn(&ToldRun<'_>) -> Vec<u8>,
) -> Result<Vec<u8>, Refusal> {
    let profile = profile(stages, run)?;
    told_run(stages, run, &profile, tongue)
        .map(|told| write(&told))
        .ok_or_else(|| Refusal::at(format!("/runs/{run}"), NOT_MADE))
}

/// The plots that can be drawn.
pub(super) fn plots(stages: &Stages<'_>, tongue: &Tongue) -> Vec<Paper> {
    Kind::PLOTS.iter().filter_map(|kind| Some((*kind, plot(stages, *kind, USUAL_WIDTH, tongue).ok()?))).collect()
}

/// The tables and the drawing of a run.
pub(super) fn papers(stages: &Stages<'_>, run: usize, tongue: &Tongue) -> Result<Vec<Paper>, Refusal> {
    // Tables are read by programs: they are always in English.
    let english = Tongue::english();
    let table = told(stages, run, &english, |told| export::bend_csv(told, Feed::default()))?;
    let points = told(stages, run, &english, export::points_csv)?;
    let drawing = told(stages, run, tongue, |told| export::drawing(told).into_bytes())?;
    Ok(vec![(Kind::BendTable, table), (Kind::Points, points), (Kind::Drawing, drawing)])
}

/// The skins of a made run.
///
/// # Errors
/// A run that cannot be made: what is found about it.
fn profile(stages: &Stages<'_>, run: usize) -> Result<Profile, Refusal> {
    match &stages.lines[run].line {
        Some(line) if stages.is_made(run) => Ok(stages.profile(run, line.length)),
        _ => Err(stages
            .mesh(run, USUAL_DEVIATION)
            .err()
            .unwrap_or_else(|| Refusal::at(format!("/runs/{run}"), NOT_MADE))),
    }
}

const NOT_MADE: &str = "This run cannot be made as it is; see the findings.";

fn told_run<'a>(stages: &'a Stages<'_>, run: usize, profile: &'a Profile, tongue: &'a Tongue) -> Option<ToldRun<'a>> {
    let design = &stages.design;
    let placed = &stages.layout.runs[run];
    let fitting = |port: usize| &design.fittings[stages.layout.ports[port].fitting];
    let grams = profile.material_volume() / 1e3 * design.process.material.density_g_per_cm3;
    Some(ToldRun {
        design,
        run: &design.runs[run],
        placed,
        line: stages.lines[run].line.as_ref()?,
        profile,
        mass: grams,
        fittings: [fitting(placed.from), fitting(placed.to)],
        tongue,
    })
}

/// A name for that file that every system takes.
///
/// # Errors
/// As [`export_file`], but for runs that cannot be made.
pub fn file_name(text: &str, request: &str) -> Result<String, Refusal> {
    let stages = Stages::of(text)?;
    let request = Request::read(request, &stages)?;
    let name = request.run.map_or(title(&stages), |run| &stages.design.runs[run].name);
    let part = request.plate.map(plate::suffix).or(request.piece.as_ref().map(Piece::suffix));
    let stem = export::file_stem_ending(name, &part.unwrap_or_default());
    Ok(match request.kind {
        Kind::Coupon => request.kind.file_name_ending(&stem, request.coupon.extension()),
        kind => kind.file_name(&export::called(&stem, request.correction.is_some())),
    })
}

/// The design's name, or what stands for it.
fn title<'a>(stages: &'a Stages<'_>) -> &'a str {
    let name = stages.design.name.trim();
    if name.is_empty() { "tubes" } else { name }
}

/// A solid of a file.
struct Solid {
    /// What it is called, its run's name included.
    name: String,
    /// What its own files' names have after the run's.
    suffix: String,
    mesh: Mesh,
}

/// The solids of a run's file: the piece that is asked for, or every piece.
fn solids(stages: &Stages<'_>, run: usize, request: &Request) -> Result<Vec<Solid>, Refusal> {
    let pieces = match &request.piece {
        Some(piece) => vec![piece.clone()],
        None => stages.pieces(run),
    };
    if pieces.is_empty() {
        return Err(stages.not_made(run));
    }
    let solid = |piece: &Piece| {
        let name = piece.called(&stages.design.runs[run].name);
        Ok(Solid { name, suffix: piece.suffix(), mesh: stood(stages, piece, request)? })
    };
    pieces.iter().map(solid).collect()
}

fn all_solids(
    stages: &Stages<'_>,
    request: &Request,
    watch: &mut Watch<'_>,
) -> Result<Vec<(usize, Vec<Solid>)>, Refusal> {
    let made = stages.made();
    if made.is_empty() {
        return Err(nothing_made());
    }
    let count = made.len() as f64;
    let mut all = Vec::with_capacity(made.len());
    for run in made {
        all.push((run, solids(stages, run, request)?));
        watch(all.len() as f64 / (count + 1.0));
    }
    Ok(all)
}

fn named(solids: &[Solid]) -> Vec<NamedMesh<'_>> {
    solids.iter().map(|solid| NamedMesh { name: &solid.name, mesh: &solid.mesh }).collect()
}

/// Why there is no file of the whole design.
pub(super) fn nothing_made() -> Refusal {
    Refusal::at("", "No run of the design can be made yet, so there is nothing to put in the file. See the findings.")
}

/// The mesh of a piece in the datum or on the plate, as it is asked for.
fn stood(stages: &Stages<'_>, piece: &Piece, request: &Request) -> Result<Mesh, Refusal> {
    let (_, mesh) = meshed(stages, piece, request.deviation, request.correction.as_ref())?;
    let mesh = match request.stance {
        Some(stance) => stance::on_plate(stages, piece, stance, &mesh, request.correction.is_some())?,
        None => mesh,
    };
    sound(stages, piece.run, mesh)
}

/// The mesh, if it has no flaw: judged once more before it leaves, for nobody shall pay for a print of one with a hole.
pub(super) fn sound(stages: &Stages<'_>, run: usize, mesh: Mesh) -> Result<Mesh, Refusal> {
    if is_solid(&mesh) {
        return Ok(mesh);
    }
    let name = &stages.design.runs[run].name;
    let message = format!(
        "{name}: its mesh has a flaw, so no file is made of it. The fault is Tubewright's; another deviation may do."
    );
    Err(Refusal::at(format!("/runs/{run}"), message))
}

impl Request {
    fn read(text: &str, stages: &Stages<'_>) -> Result<Self, Refusal> {
        const EXAMPLE: &str = "{ \"kind\": \"stl\", \"run\": \"pump to block\", \"deviation\": 0.01 }";
        let keys = request::object(text, EXAMPLE)?;
        request::knows(&keys, &KEYS, "it")?;
        let words: Vec<String> = Kind::ALL.iter().map(|kind| format!("\"{}\"", kind.word())).collect();
        let Some(kind) = keys.get("kind").and_then(Value::as_str).and_then(Kind::of_word) else {
            return Err(Refusal::at("/kind", format!("The kind of file must be one of {}.", words.join(", "))));
        };
        let deviation = Deviation::read(keys.get("deviation"))?;
        let run = run(kind, &keys, stages)?;
        let piece = piece::read(kind, run, &keys, stages)?;
        let stance = stance::read(kind, run, &keys)?;
        if let (Some(run), None, Some(_)) = (run, &piece, &stance) {
            piece::one_to_stand(run, stages)?;
        }
        Ok(Self {
            kind,
            run,
            piece,
            stance,
            plate: plate::read(kind, &keys)?,
            deviation,
            feed: feed(kind, &keys)?,
            width: width(kind, &keys)?,
            coupon: coupon::asked(kind, &keys)?,
            correction: coupon::correction(kind, &keys, stages)?,
            tongue: tongue(kind, &keys)?,
        })
    }
}

/// What a request may say.
const KEYS: [&str; 14] = [
    "kind",
    "run",
    "piece",
    "plate",
    "deviation",
    "flip",
    "from",
    "width",
    "stance",
    "format",
    "count",
    "step",
    "compensated",
    "words",
];

/// Everything that files say to people in words of their own: what another language has rows for.
pub(super) fn templates() -> Vec<&'static str> {
    let all = [
        vec![PIECE_OF],
        coupon::templates(),
        sheet::templates(),
        export::drawing_templates(),
        crate::plot::templates(),
        graphs::templates(),
    ];
    all.concat()
}

/// The language that a file is written in; other kinds have no say in it.
fn tongue(kind: Kind, keys: &Map<String, Value>) -> Result<Tongue, Refusal> {
    let stated = keys.get("words");
    if stated.is_some() && !(matches!(kind, Kind::Drawing | Kind::All | Kind::Pack) || kind.is_plot()) {
        let message = format!(
            "Only a \"drawing\", a plot, \"all\" and a \"pack\" are written in other words; leave \"words\" out for a file of kind \"{}\".",
            kind.word()
        );
        return Err(Refusal::at("/words", message));
    }
    tongue::read(stated)
}

/// How a bend table is to be told; other kinds have no say in it.
fn feed(kind: Kind, keys: &Map<String, Value>) -> Result<Feed, Refusal> {
    if let Some(key) = ["flip", "from"].into_iter().find(|key| keys.contains_key(*key))
        && kind != Kind::BendTable
    {
        let message = format!("Only a bend table has \"{key}\"; leave it out for a file of kind \"{}\".", kind.word());
        return Err(Refusal::at(format!("/{key}"), message));
    }
    let flip = match keys.get("flip") {
        None => false,
        Some(Value::Bool(flip)) => *flip,
        Some(_) => return Err(Refusal::at("/flip", "Whether rotations are flipped must be true or false.")),
    };
    let from_end = match keys.get("from").map(|value| value.as_str().unwrap_or_default()) {
        None | Some("start") => false,
        Some("end") => true,
        Some(_) => {
            return Err(Refusal::at("/from", "The end that the tube is fed from must be \"start\" or \"end\"."));
        }
    };
    Ok(Feed { from_end, flip })
}

fn run(kind: Kind, keys: &Map<String, Value>, stages: &Stages<'_>) -> Result<Option<usize>, Refusal> {
    let whole = matches!(kind, Kind::Plate | Kind::Design | Kind::All | Kind::Pack) || kind.is_plot();
    match keys.get("run") {
        None | Some(Value::Null) if kind.is_of_one_run() => {
            let message = match kind {
                Kind::Stl => "An STL holds one run: say which by its name, \"run\": \"...\".".to_owned(),
                _ => format!(
                    "A file of kind \"{}\" holds one run: say which by its name, \"run\": \"...\".",
                    kind.word()
                ),
            };
            Err(Refusal::at("/run", message))
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
