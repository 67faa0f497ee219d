//! All pieces of a design on as few plates as they take.

use core::f64::consts::FRAC_PI_2;

use serde::Serialize;

use super::least_rectangle::least_rectangle;
use super::packing::{Spot, lying, packed};
use super::{Frame, Room, Standing, Subject};
use crate::coupon::correction;
use crate::design::Refusal;
use crate::design::wording::shown;
use crate::engine::{Piece, Stages};
use crate::report::degrees;

/// Least distance between the boxes of two pieces on a plate, mm: so that supports and rafts stay apart, and a knife gets
/// between them. Common practice, no source.
pub const GAP: f64 = 3.0;
/// Micrometres in a millimetre: boxes are packed in whole ones.
const FINE: f64 = 1e3;

/// A piece in its place on a plate.
#[derive(Debug, Clone)]
pub struct Laid {
    /// Which piece it is.
    pub piece: Piece,
    /// How it stands there.
    pub standing: Standing,
    /// Corner of its box from the build volume's corner, mm.
    pub at: [f64; 2],
    /// How far it is turned about z, against the clock seen from above, from its stance by itself, radians.
    pub turned: f64,
    /// Sides of its box as it lies, mm: of the tube and of its file, which a coupon may make larger.
    pub sides: [f64; 3],
}

/// What lies on which plate.
#[derive(Debug, Clone, Default)]
pub struct Plates {
    /// Plate by plate; the pieces in the order of the runs.
    pub plates: Vec<Vec<Laid>>,
    /// What is on none.
    pub left_out: Vec<LeftOut>,
}

/// A run or a piece that is on no plate.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LeftOut {
    /// Index of the run.
    pub run: usize,
    /// Index of its piece; none for a run that cannot be made.
    pub piece: Option<usize>,
    /// Why.
    pub why: String,
}

impl Plates {
    /// Every piece of a design in its chosen stance; `watch` is told how much is done, 0 to 1, ascending.
    pub fn of(stages: &Stages<'_>, watch: &mut dyn FnMut(f64)) -> Self {
        let (mut stood, mut left_out) = (Vec::new(), Vec::new());
        let runs = stages.design.runs.len();
        for run in 0..runs {
            if !stages.is_made(run) {
                left_out.push(LeftOut { run, piece: None, why: stages.not_made(run).message });
            } else {
                for piece in stages.pieces(run) {
                    match chosen(stages, &piece) {
                        Ok(standing) => stood.push((piece, standing)),
                        Err(why) => left_out.push(LeftOut { run, piece: Some(piece.index), why }),
                    }
                }
            }
            watch((run + 1) as f64 / runs as f64);
        }
        Self { plates: lay(stages, stood), left_out }
    }
}

/// Pieces that fit the printer as they stand, plate by plate. They keep their turn, or are turned by a right angle; where fewer
/// plates do so, each is turned until the rectangle round it is least.
pub fn lay(stages: &Stages<'_>, mut stood: Vec<(Piece, Standing)>) -> Vec<Vec<Laid>> {
    let process = &stages.design.process;
    let room = Room::of(&process.printer, process.material.way);
    let [wide, deep] = [0, 1].map(|axis| (room.size[axis].max(0.0) * FINE).floor() as i64);
    let micrometres = |sides: &[f64; 2]| {
        let [x, y] = sides.map(|side| (side * FINE).ceil() as i64);
        // What sticks out by less than it takes to be said so, or only as its file, is printed nevertheless.
        [x.min(wide), y.min(deep)]
    };
    let layout = |stood: &[(Piece, Standing)]| {
        let boxes: Vec<[i64; 2]> =
            stood.iter().map(|(piece, standing)| micrometres(&sides(stages, piece, standing))).collect();
        let plates = packed(&boxes, [wide, deep], (GAP * FINE) as i64);
        (boxes, plates)
    };
    let mut by = vec![0.0; stood.len()];
    let (mut boxes, mut plates) = layout(&stood);
    if plates.len() > 1 {
        let (turned, turns) = each_turned(stages, &stood, [wide, deep].map(|side| side as f64 / FINE));
        let (other_boxes, other) = layout(&turned);
        if other.len() < plates.len() && other.iter().map(Vec::len).sum::<usize>() == stood.len() {
            (stood, by, boxes, plates) = (turned, turns, other_boxes, other);
        }
    }
    let corner = [0, 1].map(|axis| (room.volume[axis] - room.size[axis]) / 2.0);
    let mut stood: Vec<Option<(Piece, Standing)>> = stood.into_iter().map(Some).collect();
    let mut laid = |spot: Spot| {
        let (piece, standing) = stood[spot.item].take()?;
        let [x, y] = lying(boxes[spot.item], spot.turned).map(|side| side as f64 / FINE);
        let at: [f64; 2] = core::array::from_fn(|axis| corner[axis] + spot.at[axis] as f64 / FINE);
        let standing = standing.laid([at[0] + x / 2.0, at[1] + y / 2.0], spot.turned);
        let sides = [x, y, standing.figures.height];
        let quarter = if spot.turned { FRAC_PI_2 } else { 0.0 };
        Some(Laid { piece, standing, at, turned: by[spot.item] + quarter, sides })
    };
    plates.into_iter().map(|plate| plate.into_iter().filter_map(&mut laid).collect()).collect()
}

/// The pieces, each turned about z until the rectangle round it is least, and by how much; one that has no room so stays.
fn each_turned(stages: &Stages<'_>, stood: &[(Piece, Standing)], room: [f64; 2]) -> (Vec<(Piece, Standing)>, Vec<f64>) {
    let one = |(piece, standing): &(Piece, Standing)| {
        let subject = Subject::of_piece(stages, piece).ok()?;
        let (along, by) = least_rectangle(&subject.judge.body.rim, &standing.frame);
        let [x, y, z] = along.rows;
        let across = Frame { rows: [-y, x, z] };
        [(along, by), (across, by + FRAC_PI_2)].into_iter().find_map(|(frame, by)| {
            let turned = subject.standing(frame);
            let [x, y] = sides(stages, piece, &turned);
            (x <= room[0] && y <= room[1]).then_some((turned, by))
        })
    };
    let each = stood.iter().map(|stands| {
        let (standing, by) = one(stands).unwrap_or_else(|| (stands.1.clone(), 0.0));
        ((stands.0.clone(), standing), by)
    });
    each.unzip()
}

/// The plates of a design, as JSON text: what lies where on each, how high it gets, its layers and hours, and what is left
/// out. `piece` is counted from 1.
///
/// # Errors
/// A design of which no run can be made.
pub fn plates(stages: &Stages<'_>) -> Result<String, Refusal> {
    if stages.made().is_empty() {
        let message = "No run of the design can be made yet, so there is nothing to lay on a plate. See the findings.";
        return Err(Refusal::at("", message));
    }
    let process = &stages.design.process;
    let room = Room::of(&process.printer, process.material.way);
    let Plates { plates, left_out } = Plates::of(stages, &mut |_| ());
    let name = |run: usize| stages.design.runs[run].name.as_str();
    let answer = Answer {
        volume_mm: room.volume,
        room_mm: room.size,
        gap_mm: GAP,
        plates: plates.iter().map(|plate| PlateTold::of(stages, plate)).collect(),
        left_out: left_out
            .iter()
            .map(|left| LeftOutTold { run: name(left.run), piece: left.piece.map(|index| index + 1), why: &left.why })
            .collect(),
    };
    Ok(serde_json::to_string(&answer).unwrap_or_default())
}

/// A piece's stance, or why it has none that fits.
fn chosen(stages: &Stages<'_>, piece: &Piece) -> Result<Standing, String> {
    let subject = Subject::of_piece(stages, piece).map_err(|refusal| refusal.message)?;
    let standing = subject.chosen().ok_or_else(|| stages.not_made(piece.run).message)?;
    if standing.fits() {
        return Ok(standing);
    }
    let by = shown(-standing.figures.slack);
    Err(if subject.own.is_some() {
        format!("As it is stated to stand it sticks out of the printer’s room by {by} mm. Choose another stance.")
    } else {
        format!(
            "It fits the printer in no stance; the best sticks out of its room by {by} mm. Cut it into pieces, or take a \
             larger printer."
        )
    })
}

/// The larger of a tube's box and its file's, along x and y: laid out so, the plate is the same whether the file is
/// corrected or not.
fn sides(stages: &Stages<'_>, piece: &Piece, standing: &Standing) -> [f64; 2] {
    let size = |standing: &Standing| standing.bounds.max - standing.bounds.min;
    let tube = size(standing);
    let file = correction(&stages.design.process).and_then(Result::ok).and_then(|by| {
        let corrected = stages.corrected(piece, &by).ok()?;
        let subject = Subject::of_piece(stages, &corrected).ok()?;
        Some(size(&subject.standing(standing.frame)) * by.scale())
    });
    let file = file.unwrap_or(tube);
    [tube.x.max(file.x), tube.y.max(file.y)]
}

#[derive(Serialize)]
struct Answer<'a> {
    volume_mm: [f64; 3],
    room_mm: [f64; 3],
    gap_mm: f64,
    plates: Vec<PlateTold<'a>>,
    left_out: Vec<LeftOutTold<'a>>,
}

#[derive(Serialize)]
struct PlateTold<'a> {
    pieces: Vec<PieceTold<'a>>,
    height_mm: f64,
    layers: Option<f64>,
    hours: Option<f64>,
}

#[derive(Serialize)]
struct PieceTold<'a> {
    run: &'a str,
    piece: usize,
    pieces: usize,
    at_mm: [f64; 2],
    /// From its stance by itself.
    turned_deg: f64,
    box_mm: [f64; 3],
}

#[derive(Serialize)]
struct LeftOutTold<'a> {
    run: &'a str,
    piece: Option<usize>,
    why: &'a str,
}

impl<'a> PlateTold<'a> {
    fn of(stages: &'a Stages<'_>, plate: &[Laid]) -> Self {
        let printer = &stages.design.process.printer;
        // The plate takes as many layers as its highest piece.
        let tallest = plate.iter().max_by(|a, b| a.standing.figures.height.total_cmp(&b.standing.figures.height));
        let told = |laid: &Laid| PieceTold {
            run: &stages.design.runs[laid.piece.run].name,
            piece: laid.piece.index + 1,
            pieces: laid.piece.of,
            at_mm: laid.at,
            turned_deg: degrees(laid.turned),
            box_mm: laid.sides,
        };
        Self {
            pieces: plate.iter().map(told).collect(),
            height_mm: tallest.map_or(0.0, |laid| laid.standing.figures.height),
            layers: tallest.and_then(|laid| laid.standing.layers(printer)),
            hours: tallest.and_then(|laid| laid.standing.hours(printer)),
        }
    }
}
