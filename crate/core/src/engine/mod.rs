//! The engine's calls, as the page and other programs use them: texts in, texts and arrays out. Each call reads the
//! text anew and keeps nothing; a refused call says why and where.

mod coupon;
mod deviation;
mod files;
mod inspect;
mod limits;
mod pack;
mod piece;
mod plate;
mod plots;
mod stages;
mod stance;
mod vocabulary;

pub use files::{Watch, export_file, export_file_watched, file_name};
pub use inspect::inspect;
pub use stages::{Piece, Stages};
pub use vocabulary::vocabulary;

use crate::design::{self, LONGEST_TEXT, Refusal};
use crate::mesh::Mesh;
use crate::{edit, opened, presets as shipped, print, report, variants};

/// The same design as canonical JSON text: defaults filled in, keys in order.
///
/// # Errors
/// The first thing that makes the text no design.
pub fn normalise(text: &str) -> Result<String, Refusal> {
    fits(design::canonical(&design::parse(text)?))
}

/// The design in a file, as canonical JSON text: a saved design, a 3MF file that bears its design, the archive of
/// everything.
///
/// # Errors
/// A file that holds no design; the first thing that makes its text none.
pub fn design_in(bytes: &[u8]) -> Result<String, Refusal> {
    normalise(&opened::design_text(bytes)?)
}

/// Everything that makes the text no design, as a JSON list of `{ "path", "message" }`; `[]` for a design.
pub fn problems(text: &str) -> String {
    let list: Vec<serde_json::Value> = design::problems(text)
        .into_iter()
        .map(|refusal| serde_json::json!({ "path": refusal.path, "message": refusal.message }))
        .collect();
    serde_json::Value::from(list).to_string()
}

/// The report: lengths, volumes, mass, bounds and bend table of each run, totals, and the findings.
///
/// # Errors
/// A text that is no design, or one with more than 100 m of tube.
pub fn report(text: &str) -> Result<String, Refusal> {
    Ok(report::report(&Stages::of(text)?))
}

/// What there is to draw besides the tubes' meshes.
///
/// # Errors
/// As [`report()`].
pub fn scene(text: &str) -> Result<String, Refusal> {
    Ok(report::scene(&Stages::of(text)?))
}

/// The triangles of one run, within `deviation` mm (0.001 to 1) of the exact skin.
///
/// # Errors
/// As [`report()`]; a run that the design does not have, one that cannot be made, a deviation out of range.
pub fn tube_mesh(text: &str, run: &str, deviation: f64) -> Result<Mesh, Refusal> {
    let stages = Stages::of(text)?;
    let run = stages.run_named(run, "")?;
    stages.mesh(run, stages::checked_deviation(deviation, "")?)
}

/// The design after a JSON Patch (RFC 6902), as canonical text.
///
/// # Errors
/// A text that is not JSON, a patch that is none or does not fit it, a result that is no design.
pub fn apply(text: &str, patch: &str) -> Result<String, Refusal> {
    fits(design::patched(text, patch)?)
}

/// The design after an edit of a whole run, or with another design's ports, as canonical text; see
/// [`edit::edited`] for what can be asked.
///
/// # Errors
/// A text that is no design; a request that cannot be met: its `path` then points into the request.
pub fn edit(text: &str, request: &str) -> Result<String, Refusal> {
    fits(design::canonical(&edit::edited(text, request)?))
}

/// What sets two designs apart, from `before` to `after`, as JSON text: ports and stations by how far they moved, runs
/// by their lengths, everything else by its values.
///
/// # Errors
/// As [`report()`], of either text; the message says of which.
pub fn difference(before: &str, after: &str) -> Result<String, Refusal> {
    let told = |which: &str, refusal: Refusal| Refusal { message: format!("{which}: {}", refusal.message), ..refusal };
    let old = Stages::of(before).map_err(|refusal| told("The design before", refusal))?;
    let new = Stages::of(after).map_err(|refusal| told("The design after", refusal))?;
    Ok(edit::difference(&old, &new))
}

/// The design in other sizes and materials, side by side; see [`variants::variants`] for what can be asked.
///
/// # Errors
/// As [`report()`]; a request that cannot be met: its `path` then points into the request.
pub fn variants(text: &str, request: &str) -> Result<String, Refusal> {
    variants::variants(text, request)
}

/// The best ways for a run, or for the first piece of a cut one, to stand on the printer's plate, as JSON text; see
/// [`print::stances`].
///
/// # Errors
/// As [`report()`]; a run that the design does not have, one that cannot be made.
pub fn stances(text: &str, run: &str) -> Result<String, Refusal> {
    piece_stances(text, run, 1)
}

/// The same for the piece of that number, counted from 1.
///
/// # Errors
/// As [`stances`]; a piece that the run does not have.
pub fn piece_stances(text: &str, run: &str, piece: u32) -> Result<String, Refusal> {
    let stages = Stages::of(text)?;
    let run = stages.run_named(run, "")?;
    print::stances(&stages, run, piece as usize)
}

/// A text as a QR code, as JSON text; see [`code::code_of`].
///
/// [`code::code_of`]: crate::code::code_of
pub use crate::code::code_of;

/// The fewest pieces that a run is to be cut into for the printer, as JSON text; see [`print::cuts`].
///
/// # Errors
/// As [`report()`]; a run that the design does not have, one that cannot be made.
pub fn cuts(text: &str, run: &str) -> Result<String, Refusal> {
    let stages = Stages::of(text)?;
    let run = stages.run_named(run, "")?;
    print::cuts(&stages, run)
}

/// All pieces of the design on as few plates of the printer as they are found to take, as JSON text; see [`print::plates`].
///
/// # Errors
/// As [`report()`]; a design of which no run can be made.
pub fn plates(text: &str) -> Result<String, Refusal> {
    print::plates(&Stages::of(text)?)
}

/// Everything that ships: fittings, tubes, materials, printers, coolants, demo designs, as one JSON text.
pub fn presets() -> String {
    shipped::all()
}

/// Canonical text is longer than tersely written text: what could not be read again is not handed out.
fn fits(canonical: String) -> Result<String, Refusal> {
    if canonical.len() <= LONGEST_TEXT {
        return Ok(canonical);
    }
    Err(Refusal::at(
        "/runs",
        "The design is too large to be kept: written out it has more than 16 MiB. Split it into two.",
    ))
}
