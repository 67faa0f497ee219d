//! A dimensioned drawing of one run, as SVG at true scale: three views, an isometric, dimensions, tables, title block,
//! and a bar of 50 mm to check a print by.
//!
//! Black on white, told apart by line weights and dashes alone. Conventions in general terms, numbers from memory: ISO
//! 128 (lines, views), ISO 129-1 (dimensions), ISO 5455 (scales), ISO 5456 (projections), ISO 5457 and ISO 7200 (sheet
//! and title block). Every number can be read back: it stands in an element with `data-dimension` (what it is),
//! `data-row` (the bend's row from 1, the leg that ends there from 1, the point from 0, or the end 0 or 1) and
//! `data-value` (exact; mm or degrees).

mod angle;
mod blocks;
mod cover;
mod dimensions;
mod field;
mod graze;
mod paper;
mod plan;
mod room;
mod sheet;
mod table;
mod tables;
mod thinned;
mod trace;
mod view;
mod words;

use super::subject::ToldRun;
use blocks::BAR;
use dimensions::Draft;
use field::{axes, ratio, scale_words};
use paper::{Anchor, FIGURES, LARGE, Paper, Part, Pen, width_of};
use plan::Plan;
use room::{Patch, Room};
use sheet::Tiles;
use thinned::simplified;
use trace::{Outline, Ring, Trace};
use view::{Flat, Placed};

/// How far a drawn line may be from the exact one, mm on paper.
const DRAWN_TO: f64 = 0.01;
/// How much drawn lines keep words away.
const EDGE: u16 = 3;
const CENTRE: u16 = 2;
/// Change of slope that shows as an edge round the tube; a blend's many small ones do not.
const RIDGE: f64 = 0.15;

/// Everything that drawings say: what another language has rows for.
pub(crate) fn templates() -> Vec<&'static str> {
    words::all()
}

/// The drawing of a run as SVG text.
pub fn drawing(told: &ToldRun<'_>) -> String {
    let trace = Trace::of(told.line, &told.profile.outer, rings(told));
    let (features, points) = (told.features(), told.points());
    let plan = Plan::of(told, &trace, &features, &points);
    let tongue = told.tongue;
    let mut paper = Paper::new(tongue.decimal());
    let mut room = Room::new(plan.sheet.size);
    for area in &plan.blocks {
        room.take(&area.patch(), 40);
    }
    paper.rectangle(Pen::Edge, plan.sheet.frame.at, plan.sheet.frame.size);
    for field in plan.views.iter().chain([&plan.isometric]) {
        paper.open(&format!("class=\"view\" data-view=\"{}\"", field.placed.view.name.to_lowercase()));
        let outline = trace.outline(&field.placed.view);
        lay(&mut paper, &mut room, &field.placed, &outline);
        paper.close();
    }
    for (field, corner) in plan.views.iter().zip(&plan.corners) {
        axes(&mut paper, &mut room, field, *corner, tongue);
    }
    if let Some(tiles) = &plan.sheet.tiles {
        tile_marks(&mut paper, &mut room, tiles, plan.sheet.size);
    }
    let name = scale_words(tongue.word(plan.isometric.placed.view.name), &ratio(plan.isometric_scale));
    let foot = [plan.isometric.area.at[0] + 1.0, plan.isometric.area.at[1] + plan.isometric.area.size[1] - 1.0];
    paper.words(foot, FIGURES, Anchor::Start, 0.0, &name);
    room.take(&Patch::upright([foot[0], foot[1] - 3.0], [width_of(&name, FIGURES), 4.0]), 20);

    let reach = told.profile.outer.largest() / f64::from(plan.scale);
    let mut draft = Draft { paper: &mut paper, room: &mut room, reach, underlined: false };
    dimensions::legs(&mut draft, &plan.views, &points);
    dimensions::marks(&mut draft, &plan.views, told);
    dimensions::bends(&mut draft, &plan.views, told, &features);
    dimensions::ends(&mut draft, &plan.views, told);
    dimensions::numbers(&mut draft, &plan.isometric, &points);
    let underlined = draft.underlined;

    let scale = ratio(plan.scale);
    for ((table, stacks), area) in plan.tables.iter().zip(&plan.blocks) {
        table.draw(&mut paper, area.at, *stacks);
    }
    let said = [
        underlined.then(|| Part::line(tongue, words::UNDERLINED, &[])),
        plan.sheet.tiles.as_ref().map(|_| Part::line(tongue, words::GLUE, &[])),
        plan.remark(tongue).map(|words| vec![Part::words(words)]),
        tables::dress(told),
    ];
    blocks::notes(&mut paper, &plan.notes, tongue, &said.into_iter().flatten().collect::<Vec<_>>());
    blocks::title(&mut paper, plan.title.at, told, &plan.sheet, &scale);
    let [width, height] = plan.sheet.size;
    let title = tongue.say(words::TITLE, &[&told.run.name, &scale]);
    let about = format!("data-scale=\"{scale}\" data-bar=\"{BAR}\"{}", tile_data(&plan.sheet.tiles));
    paper.finish(width, height, &title, &about)
}

/// The tube's round edges: end faces, bores, and wherever the outer skin has a ridge or a groove.
fn rings(told: &ToldRun<'_>) -> Vec<Ring> {
    let (outer, bore, length) = (&told.profile.outer, &told.profile.bore, told.line.length);
    let slopes: Vec<f64> =
        outer.breaks.windows(2).map(|pair| (pair[1][1] - pair[0][1]) / (pair[1][0] - pair[0][0])).collect();
    let normal = |slope: f64| {
        let long = libm::hypot(1.0, slope);
        [1.0 / long, -slope / long]
    };
    let mut rings: Vec<Ring> = outer
        .breaks
        .windows(3)
        .zip(slopes.windows(2))
        .filter(|(_, pair)| (pair[1] - pair[0]).abs() > RIDGE)
        .map(|(breaks, pair)| Ring {
            s: breaks[1][0],
            radius: breaks[1][1],
            normals: [normal(pair[0]), normal(pair[1])],
        })
        .collect();
    let skins = [slopes.first(), slopes.last()].map(|slope| normal(slope.copied().unwrap_or(0.0)));
    for (end, sign, skin) in [(0.0, -1.0, skins[0]), (length, 1.0, skins[1])] {
        let face = [0.0, sign];
        rings.push(Ring { s: end, radius: outer.radius(end), normals: [face, skin] });
        rings.push(Ring { s: end, radius: bore.radius(end), normals: [face, face] });
    }
    rings
}

fn lay(paper: &mut Paper, room: &mut Room, placed: &Placed, outline: &Outline) {
    let on_sheet = |points: &Vec<Flat>| {
        let points: Vec<Flat> = points.iter().map(|point| placed.lay(*point)).collect();
        simplified(&points, DRAWN_TO)
    };
    for (pen, class, lines) in [(Pen::Hidden, "hidden", &outline.hidden), (Pen::Edge, "edge", &outline.seen)] {
        for line in lines {
            let line = on_sheet(line);
            room.take_line(&line, EDGE);
            paper.path(pen, &line, class);
        }
    }
    let centre = on_sheet(&outline.centre);
    room.take_line(&centre, CENTRE);
    paper.path(Pen::Centre, &centre, "centreline");
}

/// Crosses in the overlaps, and each tile's letter near its corner.
fn tile_marks(paper: &mut Paper, room: &mut Room, tiles: &Tiles, size: Flat) {
    paper.open("class=\"tiles\"");
    for choices in tiles.crosses(size) {
        let patch = |[x, y]: Flat| Patch::upright([x - 3.5, y - 3.5], [7.0, 7.0]);
        let taken = |at: &&Flat| room.taken(&patch(**at));
        let Some([x, y]) = choices.iter().min_by(|a, b| taken(a).total_cmp(&taken(b))).copied() else { continue };
        paper.line(Pen::Thin, [x - 3.0, y], [x + 3.0, y]);
        paper.line(Pen::Thin, [x, y - 3.0], [x, y + 3.0]);
        room.take(&patch([x, y]), 10);
    }
    for (name, area) in tiles.each() {
        let corner = [0, 1].map(|axis| area.at[axis].max(0.0) + sheet::OVERLAP + 2.0);
        let letters = |[x, y]: Flat| Patch::upright([x - 1.5, y - 1.0], [width_of(&name, LARGE) + 3.0, 7.0]);
        // Further in where something stands in the corner.
        let choices =
            (0..112).map(|step| [corner[0] + f64::from(step % 14) * 12.0, corner[1] + f64::from(step / 14) * 12.0]);
        let taken = |at: &Flat| room.taken(&letters(*at));
        let Some([x, y]) = choices.min_by(|a, b| taken(a).total_cmp(&taken(b))) else { continue };
        paper.words([x, y + 4.0], LARGE, Anchor::Start, 0.0, &name);
        room.take(&letters([x, y]), 20);
    }
    paper.close();
}

/// The tiles for whoever prints them: count, window and first corner, mm.
fn tile_data(tiles: &Option<Tiles>) -> String {
    tiles.as_ref().map_or(String::new(), |Tiles { count, window, first }| {
        let values = [count[0] as f64, count[1] as f64, window[0], window[1], first[0], first[1]];
        let values: Vec<String> = values.iter().map(|value| paper::short(*value)).collect();
        format!(" data-tiles=\"{}\" data-overlap=\"{}\"", values.join(" "), sheet::OVERLAP)
    })
}
