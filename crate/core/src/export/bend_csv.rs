//! The bend table of a run as a file, with the convention that its rotations follow written in it.

use super::csv::{Cell, Csv};
use super::subject::ToldRun;
use crate::centreline::{BendRow, bend_table};
use crate::report::degrees;

/// How a bend table is told: machines and people differ in both.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Feed {
    /// Fed from the run's end instead of its start.
    pub from_end: bool,
    /// Rotations with the opposite sign: against the right-hand rule.
    pub flip: bool,
}

const HEADINGS: [&str; 7] = ["row", "kind", "straight_mm", "rotation_deg", "angle_deg", "radius_mm", "length_mm"];

/// The table as CSV. Lines that begin with a number sign say what it is of and how to read it; then the headings, a
/// row a bend, and the last straight.
pub fn bend_csv(told: &ToldRun<'_>, feed: Feed) -> Vec<u8> {
    let mut csv = Csv::new(HEADINGS.len());
    remarks(told, feed).iter().for_each(|words| csv.remark(words));
    csv.record(&HEADINGS.map(Cell::Text));
    for (index, row) in fed(bend_table(told.line), feed).iter().enumerate() {
        csv.record(&[
            Cell::Whole(index + 1),
            Cell::Text(row.kind.word()),
            Cell::Number(row.straight + 0.0),
            Cell::Number(degrees(row.rotation)),
            Cell::Number(degrees(row.angle)),
            Cell::Number(row.radius),
            Cell::Number(row.length),
        ]);
    }
    csv.finish()
}

fn remarks(told: &ToldRun<'_>, feed: Feed) -> Vec<String> {
    let [start, end] = told.port_names();
    let (first, last) = if feed.from_end { (end, start) } else { (start, end) };
    let tube = &told.run.tube;
    let sense = if feed.flip { "against the right-hand rule (flipped)" } else { "by the right-hand rule" };
    vec![
        format!("Tubewright bend table of run: {}", told.run.name),
        format!("Design: {}", told.design.name),
        format!("Fed from port: {first}; row 1 is the bend next to it; the last straight ends at port: {last}"),
        "Lengths mm, angles degrees, decimal point".to_owned(),
        "straight_mm: straight tube before the bend, between tangent points; the last row is the last straight alone"
            .to_owned(),
        format!(
            "rotation_deg: from the plane of the bend before to the plane of this one, about the feed direction (the way \
             from row 1 on), positive {sense}, above -180 to 180; first row 0"
        ),
        "angle_deg: angle turned through, 0 is straight; radius_mm: of the centreline, of a coil or a curve its \
         tightest; length_mm: centreline in the bend; a coil or a smooth curve is one row"
            .to_owned(),
        format!(
            "Tube: outer diameter {} mm, bore {} mm, centreline length {} mm",
            tube.outer_diameter, tube.bore, told.line.length
        ),
    ]
}

/// The rows as fed from the other end, or with the rotations' sign flipped. Fed from the other end, the feed direction
/// and the order of the planes both turn round, so rotations keep their sign.
fn fed(rows: Vec<BendRow>, feed: Feed) -> Vec<BendRow> {
    let bends = rows.len().saturating_sub(1);
    let told = |index: usize| {
        let mut row = rows[index];
        if feed.from_end {
            let straight = rows[bends - index].straight;
            if index < bends {
                row = rows[bends - 1 - index];
                row.rotation = if index == 0 { 0.0 } else { rows[bends - index].rotation };
            }
            row.straight = straight;
        }
        if feed.flip && row.rotation != core::f64::consts::PI {
            row.rotation = -row.rotation;
        }
        row
    };
    (0..rows.len()).map(told).collect()
}
