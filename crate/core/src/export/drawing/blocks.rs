//! The title block with the sheet's facts, and the notes with the bar to check a print by.

use super::super::subject::ToldRun;
use super::paper::{Anchor, FIGURES, LARGE, Paper, Part, Pen, SMALL, Told, fitted, shown};
use super::sheet::{Area, Sheet};
use super::tables::number;
use super::view::Flat;
use super::words;
use crate::tongue::Tongue;

/// Size of the title block, mm; as wide as ISO 7200 lets one be (from memory).
pub(super) const TITLE: Flat = [180.0, 28.0];
/// Size of the notes, mm.
pub(super) const NOTES: Flat = [180.0, 32.0];
/// Length of the check bar, mm.
pub(super) const BAR: f64 = 50.0;

/// Height of a row of fields, mm.
const ROW: f64 = 9.0;

/// A named field of the title block.
struct Field {
    width: f64,
    label: &'static str,
    parts: Vec<Part>,
    size: f64,
}

/// Draws the title block.
pub(super) fn title(paper: &mut Paper, at: Flat, told: &ToldRun<'_>, sheet: &Sheet, scale: &str) {
    let tongue = told.tongue;
    paper.open("class=\"title-block\"");
    paper.rectangle(Pen::Edge, at, TITLE);
    let field = |label, width, words: &str, size| Field {
        width,
        label,
        parts: vec![Part::words(fitted(words, size, width - 3.0))],
        size,
    };
    let run = told.run;
    let wall = number("wall", None, run.wall());
    let sized = |dimension, value: f64| Part::Number(number(dimension, None, value));
    let sizes = [sized("outer_diameter", run.tube.outer_diameter), sized("bore", run.tube.bore), Part::Number(wall)];
    let tube = Part::line(tongue, words::TUBE_IS, &sizes);
    let size = match sheet.name {
        Some(name) => name.to_owned(),
        None => format!("{} \u{d7} {}", shown(sheet.size[0]), shown(sheet.size[1])),
    };
    let [x, y, z] = told.outside_size();
    let times = || Part::words(" \u{d7} ");
    let outside = vec![sized("size_x", x), times(), sized("size_y", y), times(), sized("size_z", z)];
    let mass = Part::Number(Told { dimension: "mass", row: None, value: told.mass, shown: shown(told.mass) });
    let rows = [
        vec![field(words::RUN, 90.0, &run.name, LARGE), field(words::DESIGN, 90.0, &told.design.name, FIGURES)],
        vec![
            Field { width: 60.0, label: words::TUBE, parts: tube, size: FIGURES },
            field(words::MATERIAL, 60.0, tongue.word(&told.design.process.material.name), FIGURES),
            Field { width: 34.0, label: words::LENGTH, parts: vec![sized("length", told.line.length)], size: FIGURES },
            Field { width: 26.0, label: words::MASS, parts: vec![mass], size: FIGURES },
        ],
        vec![
            field(words::SCALE, 20.0, scale, FIGURES),
            field(words::UNITS, 28.0, tongue.word(words::UNITS_ARE), FIGURES),
            field(words::PROJECTED, 38.0, tongue.word(words::THIRD_ANGLE), FIGURES),
            field(words::SHEET, 26.0, &size, FIGURES),
            Field { width: 44.0, label: words::OUTSIDE, parts: outside, size: SMALL },
            field(words::MADE_BY, 24.0, super::super::APPLICATION, FIGURES),
        ],
    ];
    let mut y = at[1];
    for (index, row) in rows.iter().enumerate() {
        let high = if index == 0 { TITLE[1] - 2.0 * ROW } else { ROW };
        if index > 0 {
            paper.line(Pen::Thin, [at[0], y], [at[0] + TITLE[0], y]);
        }
        let mut x = at[0];
        for field in row {
            if x > at[0] {
                paper.line(Pen::Thin, [x, y], [x, y + high]);
            }
            paper.words([x + 1.2, y + 2.7], 2.2, Anchor::Start, 0.0, tongue.word(field.label));
            paper.told([x + 1.5, y + high - 1.8], field.size, Anchor::Start, 0.0, &field.parts);
            x += field.width;
        }
        y += high;
    }
    symbol(paper, [at[0] + 20.0 + 28.0 + 25.0, at[1] + TITLE[1] - ROW / 2.0]);
    paper.close();
}

/// The sign of third-angle projection: a truncated cone seen from its narrow end, and beside it from the side, the
/// narrow end towards the circles. Source: ISO 5456-2 (from memory).
fn symbol(paper: &mut Paper, [x, y]: Flat) {
    let (wide, narrow) = (2.4, 1.2);
    paper.open("class=\"projection\" data-projection=\"third-angle\"");
    paper.circle(Pen::Thin, [x, y], wide);
    paper.circle(Pen::Thin, [x, y], narrow);
    let (left, right) = (x + 4.2, x + 9.0);
    let cone = [[left, y - narrow], [right, y - wide], [right, y + wide], [left, y + narrow], [left, y - narrow]];
    paper.path(Pen::Thin, &cone, "");
    paper.line(Pen::Centre, [x - 3.2, y], [right + 0.8, y]);
    paper.line(Pen::Centre, [x, y - 3.2], [x, y + 3.2]);
    paper.close();
}

/// Draws the bar and the notes.
pub(super) fn notes(paper: &mut Paper, area: &Area, tongue: &Tongue, more: &[Vec<Part>]) {
    let [x, y] = area.at;
    paper.open("class=\"notes\"");
    let bar = [x + 1.0, y + 4.0];
    paper.open("class=\"check-bar\" data-check-bar=\"50\"");
    paper.path(Pen::Edge, &[bar, [bar[0] + BAR, bar[1]]], "bar");
    for step in 0..=5 {
        let at = bar[0] + f64::from(step) * 10.0;
        let half = if step % 5 == 0 { 1.8 } else { 1.0 };
        paper.line(Pen::Thin, [at, bar[1] - half], [at, bar[1] + half]);
    }
    paper.close();
    for (index, line) in words::BAR.iter().enumerate() {
        paper.words([bar[0] + BAR + 4.0, y + 3.0 + 3.4 * index as f64], SMALL, Anchor::Start, 0.0, tongue.word(line));
    }
    let always = [words::PROJECTION, words::LEGS, words::ROTATION].map(|line| Part::line(tongue, line, &[]));
    for (index, line) in always.iter().chain(more).enumerate() {
        paper.told([x + 1.0, y + 11.0 + 3.4 * index as f64], SMALL, Anchor::Start, 0.0, line);
    }
    paper.close();
}
