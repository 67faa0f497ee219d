//! Which piece of a cut run a file is asked to be of.

use serde_json::{Map, Value};

use super::stages::{Piece, Stages};
use crate::design::Refusal;
use crate::export::Kind;

/// The request's `piece`, counted from 1; none where it is left out.
///
/// # Errors
/// A kind of file that is not of one piece, and a piece that the run does not have.
pub(super) fn read(
    kind: Kind,
    run: Option<usize>,
    keys: &Map<String, Value>,
    stages: &Stages<'_>,
) -> Result<Option<Piece>, Refusal> {
    const KEY: &str = "/piece";
    let Some(value) = keys.get("piece").filter(|value| !value.is_null()) else { return Ok(None) };
    let (Kind::Stl | Kind::ThreeMf, Some(run)) = (kind, run) else {
        return Err(Refusal::at(
            KEY,
            "Only an STL or a 3MF of one run can be of one piece of it; leave the piece out.",
        ));
    };
    let Some(number) = value.as_u64() else {
        return Err(Refusal::at(KEY, "The piece must be its number along the run, counted from 1."));
    };
    stages.piece(run, usize::try_from(number).unwrap_or(usize::MAX), KEY).map(Some)
}

/// That a run which stands on the plate is in one piece.
///
/// # Errors
/// A cut run without a word of which piece.
pub(super) fn one_to_stand(run: usize, stages: &Stages<'_>) -> Result<(), Refusal> {
    let count = stages.pieces(run).len();
    if count < 2 {
        return Ok(());
    }
    let name = &stages.design.runs[run].name;
    Err(Refusal::at(
        "/piece",
        format!("{name}: it is cut into {count} pieces, and each stands by itself: say which, \"piece\": 1."),
    ))
}
