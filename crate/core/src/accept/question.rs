//! The questions, each answered with a number, a limit and where the limit comes from.

use serde::Serialize;

use super::Solid;
use crate::design::wording::{quoted, shown};
use crate::mesh::{Flaw, signed_volume, solidity};

/// What the file is held against; a limit that is none is not asked.
#[derive(Debug, Clone, Default)]
pub struct Limits<'a> {
    /// Exact volume of the material, mm3.
    pub material: f64,
    /// The thinnest wall of the exact tube, mm.
    pub wall: f64,
    /// Least wall that the printer prints, mm.
    pub least_wall: f64,
    /// Whether resin prints it, for which one service asks more of larger parts.
    pub resin: bool,
    /// Room that the printer leaves, mm, and whether the tube fits into it in some stance.
    pub room: [f64; 3],
    /// See `room`.
    pub fits: bool,
    /// Most triangles.
    pub most_triangles: Option<f64>,
    /// Most megabytes, of a million bytes.
    pub most_mb: Option<f64>,
    /// What the printer is called whose figures these are.
    pub printer: &'a str,
}

/// What is asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Question {
    /// No rim, no edge of three faces, no corner where parts touch.
    Closed,
    /// One body.
    OneBody,
    /// Faces outward, and encloses the tube's own volume.
    Volume,
    /// Millimetres, and says so.
    Unit,
    /// Nowhere thinner than the printer prints.
    Wall,
    /// Thick enough for its size.
    WallForSize,
    /// Inside the build volume.
    Room,
    /// Not more triangles than are taken.
    Triangles,
    /// Not a larger file than is taken.
    Size,
}

/// A question with its answer.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Asked {
    /// Which.
    pub code: Question,
    /// Whether the file passes.
    pub passes: bool,
    /// What was measured.
    pub value: f64,
    /// What it is held against; none where there is no number.
    pub limit: Option<f64>,
    /// Unit of both.
    pub unit: &'static str,
    /// Words for a reader.
    pub message: String,
    /// Where the limit comes from.
    pub source: String,
}

/// Share by which a mesh's volume may be off the exact one: what every mesh promises.
const VOLUME: f64 = 5e-4;
const CLOSED: &str = "3MF Core Specification 1.2.3, 4.1: a mesh that is printed is manifold";
const USUAL: &str = "common practice, no source";

/// Everything that is asked of a file, passed or not, in the order of the questions.
pub fn questions(solid: &Solid, limits: &Limits<'_>) -> Vec<Asked> {
    let source = format!("figure of the printer, {}", quoted(limits.printer));
    let mut asked = shape(solid, limits.material);
    let sides = box_of(&solid.mesh.positions);
    asked.push(unit(solid, sides));
    asked.push(wall(limits.wall, limits.least_wall, &source));
    if limits.resin {
        asked.push(wall_for_size(limits.wall, sides));
    }
    asked.push(room(sides, limits, &source));
    let triangles = (solid.mesh.indices.len() / 3) as f64;
    if let Some(most) = limits.most_triangles {
        let message = format!("{} triangles; {} are taken.", shown(triangles), shown(most));
        asked.push(at_most(Question::Triangles, triangles, most, "", message, &source));
    }
    if let Some(most) = limits.most_mb {
        let size = solid.bytes as f64 / 1e6;
        let message = format!("The file has {size:.2} MB; {} MB are taken.", shown(most));
        asked.push(at_most(Question::Size, size, most, "MB", message, &source));
    }
    asked
}

fn shape(solid: &Solid, material: f64) -> Vec<Asked> {
    let flaws = solidity(&solid.mesh);
    let pieces = flaws.iter().find_map(|flaw| match flaw {
        Flaw::Pieces { count } => Some(*count),
        _ => None,
    });
    let whole = |flaw: &&Flaw| !matches!(flaw, Flaw::Pieces { .. } | Flaw::InsideOut { .. });
    let holes = flaws.iter().filter(whole).count() as f64;
    let bodies = f64::from(pieces.unwrap_or(1));
    let volume = signed_volume(&solid.mesh);
    let off = if material > 0.0 { (volume / material - 1.0).abs() } else { f64::INFINITY };
    let asked = |code, passes, value, limit, unit, message: String, source: &str| Asked {
        code,
        passes,
        value,
        limit,
        unit,
        message,
        source: source.to_owned(),
    };
    let closed = if holes == 0.0 { "Every edge joins two faces." } else { "It has rims, or faces without area." };
    vec![
        asked(Question::Closed, holes == 0.0, holes, Some(0.0), "", closed.to_owned(), CLOSED),
        asked(
            Question::OneBody,
            bodies == 1.0,
            bodies,
            Some(1.0),
            "",
            format!("{} in the file.", counted(bodies)),
            USUAL,
        ),
        asked(
            Question::Volume,
            volume > 0.0 && off <= VOLUME,
            volume / 1e3,
            Some(material / 1e3),
            "cm³",
            format!("Faces outward and encloses {:.3} cm³; the exact tube has {:.3}.", volume / 1e3, material / 1e3),
            "bend by bend from Pappus's theorem; 0.05 % is what every mesh here promises",
        ),
    ]
}

fn counted(bodies: f64) -> String {
    if bodies == 1.0 { "One body".into() } else { format!("{} bodies", shown(bodies)) }
}

fn unit(solid: &Solid, [x, y, z]: [f64; 3]) -> Asked {
    Asked {
        code: Question::Unit,
        passes: solid.header.contains("unit mm"),
        value: x.max(y).max(z),
        limit: None,
        unit: "mm",
        message: format!(
            "An STL has no unit of its own: choose millimetres. Its box must then come out as {x:.1} × {y:.1} × {z:.1} mm."
        ),
        source: USUAL.into(),
    }
}

fn wall(wall: f64, least: f64, source: &str) -> Asked {
    let message = format!("The thinnest wall has {wall:.2} mm; the printer asks for {}.", shown(least));
    Asked { passes: wall >= least, ..at_most(Question::Wall, wall, least, "mm", message, source) }
}

/// One service's guide: 1 mm where the box's sides add up to less than 200 mm, 2 mm up to 400, 3 mm beyond.
fn wall_for_size(wall: f64, sides: [f64; 3]) -> Asked {
    let sum: f64 = sides.iter().sum();
    let least = if sum < 200.0 {
        1.0
    } else if sum <= 400.0 {
        2.0
    } else {
        3.0
    };
    let message = format!(
        "The thinnest wall has {wall:.2} mm; for a part whose sides add up to {sum:.0} mm one service asks for {least:.0}. \
         Others take less: ask yours."
    );
    let source = "one print service's guide for resin";
    Asked { passes: wall >= least, ..at_most(Question::WallForSize, wall, least, "mm", message, source) }
}

fn room(sides: [f64; 3], limits: &Limits<'_>, source: &str) -> Asked {
    let longest = sides.into_iter().fold(0.0, f64::max);
    let [x, y, z] = limits.room.map(shown);
    let message = if limits.fits {
        format!("It fits into {x} × {y} × {z} mm, the build volume less its margin.")
    } else {
        format!("It fits into {x} × {y} × {z} mm, the build volume less its margin, in no way it may stand.")
    };
    Asked {
        code: Question::Room,
        passes: limits.fits,
        value: longest,
        limit: None,
        unit: "mm",
        message,
        source: source.to_owned(),
    }
}

fn at_most(code: Question, value: f64, limit: f64, unit: &'static str, message: String, source: &str) -> Asked {
    Asked { code, passes: value <= limit, value, limit: Some(limit), unit, message, source: source.to_owned() }
}

/// Sides of the box round all corners, mm.
fn box_of(positions: &[f32]) -> [f64; 3] {
    let points = positions.as_chunks::<3>().0;
    core::array::from_fn(|axis| {
        let (low, high) = points
            .iter()
            .map(|point| f64::from(point[axis]))
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), x| (low.min(x), high.max(x)));
        if low <= high { high - low } else { 0.0 }
    })
}
