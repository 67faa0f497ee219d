//! Stiffness and temperatures as a picture: a track for each material, an upright line for each temperature.

use super::super::chart::{self, Grid, Placed};
use super::super::figures::figure;
use super::super::ink::{Dash, Hatch, Ink};
use super::super::key::{Entry, Key};
use super::super::letters::{BOLD, shortened, tamed, width_of_bold, wrapped};
use super::super::sheet::{self, Drawn, HEADING, SMALL, Sheet, Type, WORDS};
use super::super::ticks::{Axis, Ends};
use super::super::words;
use super::super::{Frame, PlotError};
use super::flags::{Flag, hoisted};
use super::{MarkKind, MaterialRow, StiffnessPlot, Temperature, tell};
use crate::tongue::Tongue;
use plotters::style::text_anchor::HPos;

const TRACK: f64 = 14.0;
/// From a track's middle to where its marks end, px.
const REACH: f64 = 20.0;
const EDGE: Ink = Ink::line(1.2);
const OVER_EDGE: Ink = Ink::line(2.0);
const ALLOWED: Ink = Ink::line(3.0);
const SOFT: Ink = Ink::line(1.4).dashed(Dash::Dots);
const UPRIGHTS: [Dash; 6] = [Dash::Dots, Dash::Long, Dash::Full, Dash::LongDot, Dash::Short, Dash::LongDotDot];

/// One material's lines of words and its place.
struct Row<'a> {
    material: &'a MaterialRow,
    name: String,
    limits: Vec<String>,
    verdict: Vec<String>,
    is_over: bool,
    top: f64,
    middle: f64,
    height: f64,
}

pub(super) fn draw(plot: &StiffnessPlot, frame: &Frame<'_>, tongue: &Tongue) -> Result<String, PlotError> {
    let across = frame.across();
    let wide = frame.is_wide();
    let title = tamed(&plot.title);
    let heading = wrapped(&title, HEADING * BOLD, across - 8.0, 3);
    let left = if wide { libm::round(across * 0.4) } else { 2.0 };
    let [coolest, warmest] = extent(plot);
    let aside = 0.08 * (warmest - coolest);
    let axis =
        Axis::over(coolest - aside, warmest + aside, if wide { 7 } else { 5 }, Ends::Exact).written(tongue.decimal());
    let to = across - axis.overhang(WORDS);
    let from = if wide { left } else { axis.overhang(WORDS) };
    let scale = Placed { axis, from, to };
    let names: Vec<String> =
        plot.temperatures.iter().map(|one| name(one, if wide { 200.0 } else { 150.0 }, tongue)).collect();
    let lines: Vec<[f64; 2]> = plot
        .temperatures
        .iter()
        .zip(&names)
        .map(|(one, name)| [scale.at(one.celsius), width_of_bold(name, WORDS)])
        .collect();
    let flags = hoisted(&lines, [left, across - 2.0]);
    let levels = flags.iter().map(|flag| flag.level + 1).max().unwrap_or(0);
    let head = heading.len() as f64 * sheet::leading(HEADING) + 6.0 + levels as f64 * sheet::leading(WORDS) + 8.0;
    let rows = rows(plot, if wide { left - 16.0 } else { across - 6.0 }, head, wide, tongue);
    let bottom = rows.last().map_or(head + 40.0, |row| row.top + row.height) + 4.0;
    let entries = entries(plot, tongue);
    let key = Key::laid_out(&entries, across, if wide { 2 } else { 1 });
    let under = bottom + 48.0;
    let sheet = Sheet::new(frame, libm::ceil(under + key.height + 4.0));

    sheet.group("plot-title", || sheet::lines(&sheet, 2.0, HEADING, &heading, Type::bold(HEADING)).map(|_| ()))?;
    sheet.group("plot-axes", || {
        // In the narrow layout words stand between the tracks, where lines would run through them.
        let grid = if wide { Grid::Lines } else { Grid::None };
        chart::axes(&sheet, &scale, &Placed { axis: Axis::bare(), from: bottom, to: head }, grid)
    })?;
    sheet.text(scale.to, bottom + 38.0, tongue.word(words::TEMPERATURE_AXIS), Type::plain(SMALL).at(HPos::Right))?;
    for (place, row) in rows.iter().enumerate() {
        sheet.group("plot-material", || material(&sheet, &scale, plot, row, place == 0))?;
    }
    for (place, one) in plot.temperatures.iter().enumerate() {
        let ink = Ink::line(1.8).dashed(UPRIGHTS[place % UPRIGHTS.len()]);
        sheet.group("plot-temperature", || {
            let x = scale.at(one.celsius);
            let Flag { left, level } = flags[place];
            let base = head - 12.0 - level as f64 * sheet::leading(WORDS);
            sheet.text(left, base, &names[place], Type::bold(WORDS))?;
            for piece in uprights(&rows, base - WORDS + 2.0, head, bottom, wide) {
                sheet.line(&[[x, piece[0]], [x, piece[1]]], ink)?;
            }
            Ok(())
        })?;
    }
    if plot.materials.is_empty() && plot.temperatures.is_empty() {
        sheet.text(scale.from + 8.0, head + 24.0, tongue.word(words::NOTHING), Type::plain(WORDS))?;
    }
    key.draw(&sheet, 2.0, under)?;
    Ok(sheet.finish("stiffness", &title, &tell::tell(plot, tongue)))
}

fn name(one: &Temperature, room: f64, tongue: &Tongue) -> String {
    let degrees = format!(" {} °C", figure(one.celsius, tongue));
    shortened(&tamed(&one.label), WORDS * BOLD, room - width_of_bold(&degrees, WORDS)) + &degrees
}

fn extent(plot: &StiffnessPlot) -> [f64; 2] {
    let of_materials = plot
        .materials
        .iter()
        .flat_map(|material| material.marks.iter().map(|mark| mark.temperature).chain(material.allowed));
    let all = of_materials.chain(plot.temperatures.iter().map(|one| one.celsius));
    let ends = all.fold([f64::INFINITY, f64::NEG_INFINITY], |[least, most], at| [least.min(at), most.max(at)]);
    if ends[0] > ends[1] {
        [0.0, 100.0]
    } else if ends[0] == ends[1] {
        [ends[0] - 10.0, ends[0] + 10.0]
    } else {
        ends
    }
}

fn rows<'p>(plot: &'p StiffnessPlot, room: f64, head: f64, wide: bool, tongue: &Tongue) -> Vec<Row<'p>> {
    let mut top = head;
    plot.materials
        .iter()
        .map(|material| {
            let verdict = tell::verdict(material, &plot.temperatures, tongue);
            let is_over =
                material.allowed.is_some_and(|allowed| plot.temperatures.iter().any(|one| one.celsius > allowed));
            let limits = wrapped(&tell::limits(material, tongue), SMALL, room, 4);
            let verdict = verdict.map_or(Vec::new(), |verdict| wrapped(&verdict, WORDS * BOLD, room, 3));
            let words =
                sheet::leading(WORDS) * (1 + verdict.len()) as f64 + sheet::leading(SMALL) * limits.len() as f64;
            let (middle, height) = if wide {
                let height = (words + 14.0).max(2.0 * REACH + 8.0);
                (top + height / 2.0, height)
            } else {
                (top + words + 8.0 + REACH, words + 2.0 * REACH + 16.0)
            };
            let name = shortened(&tamed(&material.label), WORDS * BOLD, room);
            let row = Row { material, name, limits, verdict, is_over, top, middle, height };
            top += height;
            row
        })
        .collect()
}

/// Where an upright is drawn: all the way down in the wide layout, else at the tracks, clear of the words between.
fn uprights(rows: &[Row<'_>], from: f64, head: f64, bottom: f64, wide: bool) -> Vec<[f64; 2]> {
    if wide || rows.is_empty() {
        return vec![[from, bottom]];
    }
    let pieces = rows.iter().map(|row| [row.middle - REACH, row.middle + REACH]);
    std::iter::once([from, head - 4.0]).chain(pieces).chain([[bottom - 6.0, bottom]]).collect()
}

fn material(sheet: &Sheet, scale: &Placed, plot: &StiffnessPlot, row: &Row<'_>, first: bool) -> Drawn {
    let name = if first { Type::bold(WORDS) } else { Type::plain(WORDS) };
    let mut base = row.top + WORDS + 4.0;
    sheet.text(2.0, base, &row.name, name)?;
    base = sheet::lines(sheet, 2.0, base + sheet::leading(SMALL), &row.limits, Type::plain(SMALL))?;
    let verdict = if row.is_over { Type::bold(WORDS) } else { Type::plain(WORDS) };
    sheet::lines(sheet, 2.0, base + 2.0, &row.verdict, verdict)?;
    track(sheet, scale, plot, row)?;
    for mark in &row.material.marks {
        shape(sheet, mark.kind, [scale.at(mark.temperature), row.middle])?;
    }
    Ok(())
}

fn track(sheet: &Sheet, scale: &Placed, plot: &StiffnessPlot, row: &Row<'_>) -> Drawn {
    let (top, bottom) = (row.middle - TRACK / 2.0, row.middle + TRACK / 2.0);
    let Some(allowed) = row.material.allowed else {
        return sheet.line(&[[scale.from, row.middle], [scale.to, row.middle]], SOFT);
    };
    let end = scale.at(allowed);
    stiff(sheet, [scale.from, top], [end, bottom])?;
    let warmest = plot.temperatures.iter().map(|one| one.celsius).fold(allowed, f64::max);
    let reached = scale.at(warmest);
    if warmest > allowed {
        over(sheet, [end, top - 3.0], [reached, bottom + 3.0])?;
    }
    sheet.line(&[[reached, row.middle], [scale.to, row.middle]], SOFT)?;
    sheet.line(&[[end, top - 5.0], [end, bottom + 5.0]], ALLOWED)
}

fn stiff(sheet: &Sheet, from: [f64; 2], to: [f64; 2]) -> Drawn {
    sheet.bar(from, to, Ink::area(Hatch::Plain).faint(0.22))?;
    sheet.edge(from, to, EDGE)
}

fn over(sheet: &Sheet, from: [f64; 2], to: [f64; 2]) -> Drawn {
    sheet.bar(from, to, Ink::area(Hatch::Crossed))?;
    sheet.edge(from, to, OVER_EDGE)
}

/// A shape for each kind, each at its own height, so that marks close together stay apart.
fn shape(sheet: &Sheet, kind: MarkKind, [x, y]: [f64; 2]) -> Drawn {
    let (near, far, half) = (TRACK / 2.0 + 3.0, REACH - 1.0, 6.0);
    let corners: Vec<[f64; 2]> = match kind {
        MarkKind::DeflectionLow => vec![[x, y + near], [x + half, y + far], [x - half, y + far]],
        MarkKind::DeflectionHigh => vec![[x, y - near], [x + half, y - far], [x - half, y - far]],
        MarkKind::Glass => vec![[x, y - 7.0], [x + half, y], [x, y + 7.0], [x - half, y]],
    };
    sheet.polygon(&corners, Ink::area(Hatch::Plain))
}

fn entries<'p>(plot: &'p StiffnessPlot, tongue: &Tongue) -> Vec<Entry<'p>> {
    let mut entries: Vec<Entry<'p>> = Vec::new();
    if plot.materials.iter().any(|material| material.allowed.is_some()) {
        let sample = Box::new(|sheet: &Sheet, x: f64, y: f64, wide: f64| {
            stiff(sheet, [x, y - 6.0], [x + wide, y + 6.0])?;
            sheet.line(&[[x + wide, y - 9.0], [x + wide, y + 9.0]], ALLOWED)
        });
        entries.push(Entry { sample, words: tongue.word(words::STIFF).into() });
    }
    let over_somewhere = plot.materials.iter().filter_map(|material| material.allowed);
    if over_somewhere.clone().any(|allowed| plot.temperatures.iter().any(|one| one.celsius > allowed)) {
        let sample =
            Box::new(|sheet: &Sheet, x: f64, y: f64, wide: f64| over(sheet, [x, y - 8.0], [x + wide, y + 8.0]));
        entries.push(Entry { sample, words: tongue.word(words::TOO_WARM).into() });
    }
    if !plot.materials.is_empty() {
        let sample = Box::new(|sheet: &Sheet, x: f64, y: f64, wide: f64| sheet.line(&[[x, y], [x + wide, y]], SOFT));
        entries.push(Entry { sample, words: tongue.word(words::SOFT).into() });
    }
    for kind in [MarkKind::DeflectionLow, MarkKind::DeflectionHigh, MarkKind::Glass] {
        if plot.materials.iter().flat_map(|material| &material.marks).any(|mark| mark.kind == kind) {
            // In the key a shape stands in the middle, wherever on a track it stands.
            let lift = match kind {
                MarkKind::DeflectionLow => -15.0,
                MarkKind::DeflectionHigh => 15.0,
                MarkKind::Glass => 0.0,
            };
            let sample = Box::new(move |sheet: &Sheet, x: f64, y: f64, wide: f64| {
                shape(sheet, kind, [x + wide / 2.0, y + lift])
            });
            entries.push(Entry { sample, words: tongue.word(tell::kind(kind)).into() });
        }
    }
    entries
}
