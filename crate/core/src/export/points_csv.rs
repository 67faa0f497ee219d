//! The points of a run as a file.

use super::csv::{Cell, Csv};
use super::subject::ToldRun;

const HEADINGS: [&str; 6] = ["point", "what", "x_mm", "y_mm", "z_mm", "bend_row"];

/// Ends, apexes and points on the way as CSV, in the builder's datum. Lines that begin with a number sign say what it
/// is of and how to read it.
pub fn points_csv(told: &ToldRun<'_>) -> Vec<u8> {
    let [from, to] = told.port_names();
    let mut csv = Csv::new(HEADINGS.len());
    for words in [
        format!("Tubewright points of run: {}", told.run.name),
        format!("Design: {}", told.design.name),
        format!("From port: {from}; to port: {to}"),
        "Millimetres in the design's own datum, right-handed, z up; decimal point".to_owned(),
        "end: centre of an end face; apex: where the straights before and after a bend would meet; others lie on the \
         centreline; bend_row: its row in the bend table fed from the start"
            .to_owned(),
    ] {
        csv.remark(&words);
    }
    csv.record(&HEADINGS.map(Cell::Text));
    for (index, point) in told.points().iter().enumerate() {
        let at = point.at.map(|value| value + 0.0);
        csv.record(&[
            Cell::Whole(index),
            Cell::Text(point.what),
            Cell::Number(at.x),
            Cell::Number(at.y),
            Cell::Number(at.z),
            point.row.map_or(Cell::Empty, |row| Cell::Whole(row + 1)),
        ]);
    }
    csv.finish()
}
