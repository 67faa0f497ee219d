//! The scene: what there is to draw besides the tubes' meshes. It also feeds the drawing that stands in for the
//! preview where there is none.

use serde::Serialize;

use super::numbers::point;
use super::runs::skin_bounds;
use crate::centreline::{Bounds, Centreline, Form, Piece, Shape};
use crate::design::{KeepOut, KeepOutShape, Look};
use crate::engine::Stages;
use crate::layout::{Collar, PlacedPort, PlacedRun, PlacedStation, Vec3};

/// How far a drawn centreline may be from the exact one, mm.
const DRAWN_TO: f64 = 0.01;

/// The widest step of a drawn arc, radians: also a tiny bend shows as round.
const WIDEST_STEP: f64 = core::f64::consts::PI / 12.0;

/// Most steps of a piece: one sharper than that is nothing that could be a tube.
const MOST_STEPS: f64 = 2_000.0;

/// The scene as JSON text, coordinates mm in the builder's datum.
pub fn scene(stages: &Stages<'_>) -> String {
    let design = &stages.design;
    let ports = || design.ports.iter().zip(&stages.layout.ports);
    let scene = Scene {
        ports: ports().map(|(port, placed)| PortDrawn::of(&port.name, placed)).collect(),
        collars: ports()
            .flat_map(|(port, placed)| placed.collars.iter().map(|collar| CollarDrawn::of(&port.name, collar)))
            .collect(),
        keep_outs: design.keep_outs.iter().map(KeepOutDrawn::of).collect(),
        runs: (0..design.runs.len()).map(|run| RunDrawn::of(stages, run)).collect(),
        look: design.process.material.look.map(LookDrawn::of),
        bounds: BoundsDrawn::of(&round(stages)),
    };
    serde_json::to_string(&scene).unwrap_or_default()
}

#[derive(Serialize)]
struct Scene<'a> {
    ports: Vec<PortDrawn<'a>>,
    collars: Vec<CollarDrawn<'a>>,
    keep_outs: Vec<KeepOutDrawn<'a>>,
    runs: Vec<RunDrawn<'a>>,
    /// Of the material; left out where nothing is said of it.
    #[serde(skip_serializing_if = "Option::is_none")]
    look: Option<LookDrawn>,
    bounds: BoundsDrawn,
}

#[derive(Serialize)]
struct LookDrawn {
    clarity: &'static str,
    colour: String,
}

#[derive(Serialize)]
struct PortDrawn<'a> {
    name: &'a str,
    seat: [f64; 3],
    facing: [f64; 3],
    mouth: [f64; 3],
    out: [f64; 3],
}

#[derive(Serialize)]
struct CollarDrawn<'a> {
    port: &'a str,
    from: [f64; 3],
    to: [f64; 3],
    radius: f64,
}

#[derive(Serialize)]
struct KeepOutDrawn<'a> {
    name: &'a str,
    #[serde(flatten)]
    shape: Solid,
}

#[derive(Serialize)]
#[serde(rename_all = "snake_case")]
enum Solid {
    Box { min: [f64; 3], max: [f64; 3] },
    Cylinder { from: [f64; 3], to: [f64; 3], radius: f64 },
}

#[derive(Serialize)]
struct RunDrawn<'a> {
    name: &'a str,
    made: bool,
    outer_diameter: f64,
    bore: f64,
    /// Arc lengths between which the skin has lobes, mm; null where it is the same on all sides.
    lobed: Option<[f64; 2]>,
    /// A polyline; where there is no curve, end, corners and end.
    centreline: Vec<[f64; 3]>,
    corners: Vec<[f64; 3]>,
    /// Which station of the route each of the corners is.
    stations: Vec<usize>,
    turns: Vec<TurnDrawn>,
}

/// A stretch of a centreline that is no straight.
#[derive(Serialize)]
struct TurnDrawn {
    /// A bend, a coil or a smooth curve.
    kind: &'static str,
    /// The first and the last station that it belongs to; null for a bend that joins what others ask for.
    stations: Option<[usize; 2]>,
    /// Points of the centreline, counted from zero, between which it is.
    points: [usize; 2],
    /// Of a bend alone.
    #[serde(skip_serializing_if = "Option::is_none")]
    bend: Option<BendDrawn>,
}

/// A bend: how it lies about the apex of its corner.
#[derive(Serialize)]
struct BendDrawn {
    radius: f64,
    angle_deg: f64,
    /// The middle of its arc.
    middle: [f64; 3],
    /// Unit direction from there to its centre.
    inward: [f64; 3],
}

#[derive(Serialize)]
struct BoundsDrawn {
    min: [f64; 3],
    max: [f64; 3],
}

impl LookDrawn {
    fn of(look: Look) -> Self {
        Self { clarity: look.clarity.word(), colour: look.colour_word() }
    }
}

impl<'a> PortDrawn<'a> {
    fn of(name: &'a str, placed: &PlacedPort) -> Self {
        let PlacedPort { seat, facing, mouth, out, .. } = placed;
        Self { name, seat: point(seat), facing: point(facing), mouth: point(mouth), out: point(out) }
    }
}

impl<'a> CollarDrawn<'a> {
    fn of(port: &'a str, collar: &Collar) -> Self {
        Self { port, from: point(&collar.from), to: point(&collar.to), radius: collar.radius }
    }
}

impl<'a> KeepOutDrawn<'a> {
    fn of(keep_out: &'a KeepOut) -> Self {
        let shape = match keep_out.shape {
            KeepOutShape::Box { min, max } => Solid::Box { min, max },
            KeepOutShape::Cylinder { from, to, radius } => Solid::Cylinder { from, to, radius },
        };
        Self { name: &keep_out.name, shape }
    }
}

impl<'a> RunDrawn<'a> {
    fn of(stages: &'a Stages<'_>, run: usize) -> Self {
        let (stated, line) = (&stages.design.runs[run], &stages.lines[run]);
        Self {
            name: &stated.name,
            made: stages.is_made(run),
            outer_diameter: stated.tube.outer_diameter,
            bore: stated.tube.bore,
            lobed: line.line.as_ref().and_then(|curve| stages.profile(run, curve.length).lobes?.span()),
            centreline: match &line.line {
                Some(curve) => polyline(curve),
                None => line.skeleton.iter().map(point).collect(),
            },
            corners: marks(&stages.layout.runs[run]).map(|(_, at)| at).collect(),
            stations: marks(&stages.layout.runs[run]).map(|(station, _)| station).collect(),
            turns: line.line.as_ref().map(turns).unwrap_or_default(),
        }
    }
}

impl BoundsDrawn {
    fn of(bounds: &Bounds) -> Self {
        Self { min: point(&bounds.min), max: point(&bounds.max) }
    }
}

/// The points that the builder stated, each with its station: corners, and points passed through.
fn marks(placed: &PlacedRun) -> impl Iterator<Item = (usize, [f64; 3])> + '_ {
    let stated = placed.stations.iter().enumerate();
    stated
        .filter(|(_, station)| !matches!(station, PlacedStation::Coil(_)))
        .map(|(index, station)| (index, point(&station.at())))
}

/// What bends of a curve, in order; all of a coil, and of a smooth curve, is one.
fn turns(curve: &Centreline) -> Vec<TurnDrawn> {
    let mut turns: Vec<TurnDrawn> = Vec::new();
    let mut whole = None;
    let mut end = 0;
    for piece in &curve.pieces {
        let start = end;
        end += steps_of(piece);
        let part_of = match &piece.shape {
            Shape::Straight => {
                whole = None;
                continue;
            }
            Shape::Arc { .. } => None,
            Shape::Curve(part) => Some(part.whole),
        };
        if let (Some(turn), true) = (turns.last_mut(), part_of.is_some() && part_of == whole) {
            turn.points[1] = end;
            turn.stations =
                turn.stations.zip(piece.station()).map(|([first, last], station)| [first, last.max(station)]);
        } else {
            turns.push(TurnDrawn::of(piece, [start, end]));
        }
        whole = part_of;
    }
    turns
}

impl TurnDrawn {
    /// Of a piece that is no straight, drawn between two of the centreline's points.
    fn of(piece: &Piece, points: [usize; 2]) -> Self {
        let middle = piece.at(piece.length / 2.0);
        let (kind, bend) = match &piece.shape {
            Shape::Curve(part) if matches!(part.form, Form::Helix(_)) => ("coil", None),
            Shape::Curve(_) => ("curve", None),
            _ => {
                let radius = piece.radius().unwrap_or_default();
                let angle_deg = piece.turned().to_degrees();
                let bend = BendDrawn {
                    radius,
                    angle_deg,
                    middle: point(&middle.point),
                    inward: point(&(middle.curvature * radius)),
                };
                ("bend", Some(bend))
            }
        };
        let stations = match &piece.shape {
            Shape::Curve(part) => Some([part.whole, part.station]),
            _ => piece.station().map(|station| [station, station]),
        };
        Self { kind, stations, points, bend }
    }
}

/// Points of the curve from end to end, so close that straight lines between them stay within [`DRAWN_TO`].
fn polyline(curve: &Centreline) -> Vec<[f64; 3]> {
    let first = curve.pieces.first().map(|piece| point(&piece.start));
    first.into_iter().chain(curve.pieces.iter().flat_map(rest_of)).collect()
}

/// The points of a piece after its first.
fn rest_of(piece: &Piece) -> impl Iterator<Item = [f64; 3]> + '_ {
    let steps = steps_of(piece);
    (1..=steps).map(move |step| point(&piece.at(piece.length * (step as f64 / steps as f64)).point))
}

/// In how many steps a piece is drawn.
fn steps_of(piece: &Piece) -> usize {
    let Some(radius) = piece.radius() else { return 1 };
    // The chord of a step s lies radius * (1 - cos(s / 2)) inside the arc; a curve is nowhere bent more.
    let step = 2.0 * libm::acos((1.0 - DRAWN_TO / radius).clamp(0.0, 1.0));
    let tightest_all_along = (piece.length / radius).max(piece.turned());
    (tightest_all_along / step.min(WIDEST_STEP)).ceil().clamp(1.0, MOST_STEPS) as usize
}

/// The box round everything that is drawn; where that is nothing, a hand's breadth at the datum.
fn round(stages: &Stages<'_>) -> Bounds {
    let ports = stages.layout.ports.iter().map(|port| Bounds { min: port.seat, max: port.seat });
    let collars = stages
        .layout
        .ports
        .iter()
        .flat_map(|port| &port.collars)
        .map(|collar| cylinder(&collar.from, &collar.to, collar.radius));
    let keep_outs = stages.design.keep_outs.iter().map(|keep_out| match keep_out.shape {
        KeepOutShape::Box { min, max } => Bounds { min: min.into(), max: max.into() },
        KeepOutShape::Cylinder { from, to, radius } => cylinder(&from.into(), &to.into(), radius),
    });
    let runs = stages.lines.iter().enumerate().flat_map(|(run, line)| {
        let skin = line
            .line
            .as_ref()
            .filter(|_| stages.is_made(run))
            .map(|curve| skin_bounds(curve, &stages.profile(run, curve.length)));
        let skeleton = line.skeleton.iter().map(|point| Bounds { min: *point, max: *point });
        skeleton.chain(skin)
    });
    ports
        .chain(collars)
        .chain(keep_outs)
        .chain(runs)
        .reduce(|all, part| all.with(&part))
        .unwrap_or(Bounds { min: Vec3::zeros(), max: Vec3::repeat(100.0) })
}

/// The box round a closed cylinder: two discs, each reaching `radius * sqrt(1 - a^2)` along an axis to which the
/// cylinder's own has the component `a`.
fn cylinder(from: &Vec3, to: &Vec3, radius: f64) -> Bounds {
    let axis = crate::layout::unit(&(to - from));
    let reach = axis.map(|a| radius * (1.0 - a * a).max(0.0).sqrt());
    Bounds { min: from.inf(to) - reach, max: from.sup(to) + reach }
}
