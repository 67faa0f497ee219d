//! Does it fit the printer, and does it stand there without trouble?
//!
//! What needs no search for a stance is told with the report: a tube that certainly does not fit, powder that is hard to
//! get out. The rest takes a search, which the report has no time for; it is told with the stances.

use super::finding::PRACTICE;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::design::{Way, wording};
use crate::distance::Budget;
use crate::layout::Vec3;
use crate::print::{Judge, Room, Standing};
use serde_json::Value;

/// Bore lengths over the bore up to which powder is got out; common practice, no source.
const POWDER_REACH: f64 = 40.0;
/// Shorter than this a length is rounding, mm.
const LEAST: f64 = 1e-3;
const PRINTER: &str = "the printer's room, as the design states it";
const RULES: &str = "the printer's figures, as the design states them";

/// `print_size` (care) of what no stance could fit; `print_powder` (care).
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let process = &subject.design.process;
    let room = Room::of(&process.printer, process.material.way);
    let printer = wording::quoted(&process.printer.name);
    let powder = process.material.way == Some(Way::Powder);
    let of = |run: OneRun<'_>| {
        let powder = if powder { stuck_powder(&run) } else { None };
        [too_large(&run, &room, &printer), powder]
    };
    subject.runs().flat_map(of).flatten().collect()
}

/// The diameter of the plain tube, and the distance from its start or its end to where a bend begins or ends.
fn too_large(run: &OneRun<'_>, room: &Room, printer: &str) -> Option<Finding> {
    let about = |value: f64, limit: f64| {
        run.finding("print_size", Severity::Care, run.at(""))
            .value(value, "mm")
            .limit(limit, PRINTER)
            .word("printer", printer)
    };
    let diameter = run.run.tube.outer_diameter;
    if !room.holds_disc(diameter) {
        return Some(about(diameter, room.largest_disc()).word("diameter", "diameter"));
    }
    let chord = printed(run).into_iter().map(|span| chord(run, span)).fold(0.0, f64::max);
    (!run.pieces().is_empty() && chord > room.diagonal() + LEAST).then(|| about(chord, room.diagonal()))
}

/// The arc lengths between which each piece lies that is printed of a run; none without a centreline.
fn printed(run: &OneRun<'_>) -> Vec<[f64; 2]> {
    run.drawn.line.as_ref().map_or(Vec::new(), |line| run.cutting().spans(line.length))
}

/// The longest way from an end of a piece to where a bend of it begins or ends.
fn chord(run: &OneRun<'_>, [from, to]: [f64; 2]) -> f64 {
    let Some(line) = &run.drawn.line else { return 0.0 };
    let ends = match (from <= 0.0, to >= line.length) {
        (true, true) => [true, false].map(|at_start| run.pose(at_start).end),
        _ => [from, to].map(|s| line.at(s).point),
    };
    let inside = run.pieces().iter().filter(|piece| piece.from > from && piece.from < to).map(|piece| piece.start);
    let first = run.pieces().first().filter(|_| from <= 0.0).map(|piece| piece.start);
    let farthest = inside
        .chain(first)
        .chain(ends)
        .map(|joint| ends.map(|end: Vec3| (joint - end).norm()).into_iter().fold(0.0, f64::max));
    farthest.fold(0.0, f64::max)
}

fn stuck_powder(run: &OneRun<'_>) -> Option<Finding> {
    let length = printed(run).into_iter().map(|[from, to]| to - from).reduce(f64::max)?;
    let reach = length / run.run.tube.bore;
    let finding = run.finding("print_powder", Severity::Care, run.at("/tube/bore"));
    (reach > POWDER_REACH).then(|| finding.value(reach, "").limit(POWDER_REACH, PRACTICE))
}

/// What is to stand on the plate.
#[derive(Debug, Clone, Copy)]
pub struct StoodPiece<'a> {
    /// Index of its run.
    pub run: usize,
    /// JSON Pointer to its own stance.
    pub place: &'a str,
    /// Arc length of the run where it begins, mm.
    pub from: f64,
    /// What judges its stances.
    pub judge: &'a Judge,
}

/// What is found about a piece as it is to stand: `chosen`, its own stance or the best; `best`, the best. `print_size`,
/// `print_bore`, `print_bridge`, `print_cup`, `print_band` (care). Where the best has less of it, the fix is to leave the stance to it.
pub fn of_stance(subject: Subject<'_>, piece: &StoodPiece<'_>, chosen: &Standing, best: &Standing) -> Vec<Finding> {
    let Some(run) = subject.runs().nth(piece.run) else { return Vec::new() };
    let process = &subject.design.process;
    let printer = &process.printer;
    let about = |code: &'static str, value: f64, best: f64, words: String| {
        let finding = run.finding(code, Severity::Care, piece.place.to_owned()).value(value, "mm").source(RULES);
        let avoids = best < value - LEAST;
        let fix = avoids.then(|| vec![PatchStep::set(piece.place, Value::Null)]);
        let finding = Finding { fix, ..finding };
        if avoids { finding.word("best", words) } else { finding }
    };
    let mm = |value: f64| if value > LEAST { words::number(value, "mm") } else { "none".to_owned() };
    let room = |best: &Standing| {
        if best.fits() { "fits".to_owned() } else { format!("does so by {}", words::number(-best.figures.slack, "mm")) }
    };
    let mut found = Vec::new();
    if !chosen.fits() {
        let [x, y, z] = [0, 1, 2].map(|axis| words::number(chosen.bounds.max[axis] - chosen.bounds.min[axis], ""));
        let finding = about("print_size", -chosen.figures.slack, (-best.figures.slack).max(0.0), room(best));
        let finding = Finding { source: PRINTER, ..finding };
        found.push(finding.word("printer", wording::quoted(&printer.name)).word("box", format!("{x} × {y} × {z}")));
    }
    let (cups, fewer) = (chosen.figures.cups, best.figures.cups);
    if let Some(deepest) = chosen.cups.iter().max_by(|a, b| a.depth.total_cmp(&b.depth)) {
        let volume = |length: f64| words::number(length * piece.judge.bore_area() * 1e-3, "mL");
        let count = chosen.cups.len();
        let words = if best.cups.is_empty() { "none".to_owned() } else { volume(fewer) };
        let finding = about("print_cup", deepest.depth, if fewer < cups - LEAST { 0.0 } else { deepest.depth }, words);
        let count = if count == 1 { "one cup".to_owned() } else { format!("{count} cups") };
        found.push(finding.at(&deepest.at).word("volume", volume(cups)).word("count", count));
    }
    if let Some(flattest) = chosen.flats.iter().min_by(|a, b| a.flattest.total_cmp(&b.flattest)) {
        let middle = f64::midpoint(flattest.span[0], flattest.span[1]);
        let at = run.drawn.line.as_ref().map(|line| line.at(piece.from + middle).point);
        let finding = about("print_bore", chosen.figures.flat, best.figures.flat, mm(best.figures.flat));
        let finding = finding.word("angle", words::number(printer.bore_deg.unwrap_or(0.0), "°"));
        found.push(at.map_or(finding.clone(), |at| finding.at(&at)));
    }
    let widest = |standing: &Standing| {
        let wide = standing.bridges.iter().map(|part| (part, piece.judge.ceiling(part)));
        wide.max_by(|a, b| a.1.total_cmp(&b.1)).map(|(part, width)| (*part, width))
    };
    if let (Some((part, width)), Some(bridge)) = (widest(chosen), piece.judge.rules.bridge) {
        let middle = f64::midpoint(part.span[0], part.span[1]);
        let at = run.drawn.line.as_ref().map(|line| line.at(piece.from + middle).point);
        let other = widest(best).map_or(0.0, |(_, width)| width);
        let words = if other > 0.0 { words::number(other, "mm") } else { "none so wide".to_owned() };
        let finding = about("print_bridge", width, other, words).limit(bridge, RULES);
        let slope = piece.judge.rules.least_slope(run.run.tube.bore).map(|sine| libm::asin(sine).to_degrees());
        let finding = finding.word("length", words::number(chosen.figures.bridged, "mm"));
        let finding = slope.map_or(finding.clone(), |slope| finding.word("slope", words::at_least(slope, "°")));
        let bore = piece.judge.widest_bore(&part);
        let finding = bore.map_or(finding.clone(), |bore| finding.word("bore", words::at_most(bore, "mm")));
        found.push(at.map_or(finding.clone(), |at| finding.at(&at)));
    }
    if chosen.figures.bands > LEAST {
        found.push(about("print_band", chosen.figures.bands, best.figures.bands, mm(best.figures.bands)));
    }
    found
}
