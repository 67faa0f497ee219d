//! How a file's run is asked to stand on the plate.

use serde_json::{Map, Value};

use super::stages::{Piece, Stages};
use crate::design::Refusal;
use crate::export::Kind;
use crate::layout::Vec3;
use crate::mesh::Mesh;
use crate::print::{Frame, Standing, Subject, frame_of};
use crate::quantity::{LEAST_FACING, USUAL_DEVIATION};

/// How a run stands.
#[derive(Debug, Clone, Copy)]
pub(super) enum Stood {
    /// By its own stance; where it states none, by the best.
    Chosen,
    /// As the request says.
    Asked(Frame),
}

/// The request's `stance`; none where it is left out or false.
pub(super) fn read(kind: Kind, run: Option<usize>, keys: &Map<String, Value>) -> Result<Option<Stood>, Refusal> {
    const WORDS: &str = "The stance must be true, or { \"up\": [x, y, z], \"turn_deg\": 0 }.";
    let refused = |path: &str, words: &str| Err(Refusal::at(path, words));
    let stood = match keys.get("stance") {
        None | Some(Value::Null | Value::Bool(false)) => return Ok(None),
        Some(Value::Bool(true)) => Stood::Chosen,
        Some(Value::Object(stance)) => {
            if stance.keys().any(|key| key != "up" && key != "turn_deg") {
                return refused("/stance", WORDS);
            }
            let up = stance.get("up").and_then(Value::as_array).map_or(&[][..], Vec::as_slice);
            let up: Vec<f64> = up.iter().filter_map(Value::as_f64).filter(|part| part.abs() <= 1e6).collect();
            let Ok(up) = <[f64; 3]>::try_from(up) else { return refused("/stance/up", WORDS) };
            if Vec3::from(up).norm() < LEAST_FACING {
                return refused("/stance/up", "Up: it points nowhere. Give a direction, such as [0, 0, 1].");
            }
            let turn = stance.get("turn_deg").map_or(Some(0.0), Value::as_f64);
            let Some(turn) = turn.filter(|turn| turn.abs() <= 360.0) else {
                return refused("/stance/turn_deg", "Turn: give a number from -360 to 360 degrees.");
            };
            Stood::Asked(frame_of(up, turn))
        }
        Some(_) => return refused("/stance", WORDS),
    };
    if !matches!(kind, Kind::Stl | Kind::ThreeMf) || run.is_none() {
        return refused("/stance", "Only an STL or a 3MF of one run can stand on the plate; leave the stance out.");
    }
    Ok(Some(stood))
}

/// A piece's mesh on the plate. One that is corrected by a coupon is a little larger or smaller than the tube, about the datum:
/// it is moved to where the tube stands, its lowest point at the same height and its middle over the same place.
pub(super) fn on_plate(
    stages: &Stages<'_>,
    piece: &Piece,
    stood: Stood,
    mesh: &Mesh,
    corrected: bool,
) -> Result<Mesh, Refusal> {
    let subject = Subject::of_piece(stages, piece)?;
    let standing = match stood {
        Stood::Chosen => subject.chosen(),
        Stood::Asked(frame) => Some(subject.standing(frame)),
    };
    let Some(standing) = standing else { return Err(stages.not_made(piece.run)) };
    placed(stages, piece, &standing, mesh, corrected)
}

/// As [`on_plate`], in a stance that is worked out already.
pub(super) fn placed(
    stages: &Stages<'_>,
    piece: &Piece,
    standing: &Standing,
    mesh: &Mesh,
    corrected: bool,
) -> Result<Mesh, Refusal> {
    let placed = standing.mesh(mesh);
    if !corrected {
        return Ok(placed);
    }
    let [tube, file] = [standing.mesh(&stages.piece_mesh(piece, USUAL_DEVIATION)?).extremes(), placed.extremes()];
    let middle = |[low, high]: [[f64; 3]; 2], axis: usize| (low[axis] + high[axis]) / 2.0;
    let by = [middle(tube, 0) - middle(file, 0), middle(tube, 1) - middle(file, 1), tube[0][2] - file[0][2]];
    Ok(placed.moved(by))
}
