//! Where everything stands: the smallest sheet that holds it, at the largest scale.

use super::super::features::{Feature, Point};
use super::super::subject::ToldRun;
use super::blocks::{NOTES, TITLE};
use super::field::{Field, ratio};
use super::sheet::{Area, Sheet, placed, sheets};
use super::table::Table;
use super::tables;
use super::trace::Trace;
use super::view::{Flat, Placed, Range, View, front, isometric, side, top};
use super::words;
use crate::tongue::Tongue;

/// Room round the views for dimensions: as it should be, and the least, which is taken rather than a larger sheet.
const GAPS: [Gaps; 2] = [Gaps { round: 18.0, between: 28.0 }, Gaps { round: 13.5, between: 23.0 }];
/// Scales, one to so many. Source: ISO 5455 (from memory).
const SCALES: [u32; 10] = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
/// An isometric smaller than this says nothing, mm; it may be smaller where the tube itself is.
const LEAST_ISOMETRIC: f64 = 45.0;
/// Room round the isometric, mm.
const ROUND_ISOMETRIC: f64 = 7.0;
/// Stacks that a table's rows may stand in.
const STACKS: [usize; 6] = [1, 2, 3, 4, 6, 8];

/// The sheet laid out.
pub(super) struct Plan {
    pub sheet: Sheet,
    /// The views are drawn one to so many.
    pub scale: u32,
    pub isometric_scale: u32,
    /// Front, top, side.
    pub views: Vec<Field>,
    pub isometric: Field,
    /// Where each view's axes are marked.
    pub corners: Vec<Flat>,
    /// Tables, and in how many stacks each stands.
    pub tables: Vec<(Table, usize)>,
    /// Paper of the tables, in their order, and then of notes and title.
    pub blocks: Vec<Area>,
    pub notes: Area,
    pub title: Area,
}

/// Room round the views and between two of them, mm.
#[derive(Clone, Copy)]
struct Gaps {
    round: f64,
    between: f64,
}

/// What is being tried: views and isometric one to so many, and the room round the views.
#[derive(Clone, Copy)]
struct Trial {
    scale: u32,
    isometric_scale: u32,
    gaps: Gaps,
}

/// The tube's extents in the views, mm of tube.
struct Extents {
    front: Range,
    top: Range,
    side: Range,
    isometric: Range,
}

/// The views' places: their paper, and their own boxes' top left corners.
struct Views {
    areas: [Area; 3],
    corners: [Flat; 3],
}

impl Plan {
    /// Lays a run out.
    pub fn of(told: &ToldRun<'_>, trace: &Trace<'_>, features: &[Feature], points: &[Point]) -> Self {
        let apexes = points.iter().filter(|point| point.is_near);
        let range =
            |view: &View| Range::of(trace.reach(view).chain(apexes.clone().map(|point| (view.flat(&point.at), 0.0))));
        let extents = Extents {
            front: range(&front()),
            top: range(&top()),
            side: range(&side()),
            isometric: range(&isometric()),
        };
        let mut tables = vec![
            tables::bends(told),
            tables::points(told, points),
            tables::ends(told, points.len().saturating_sub(1)),
            tables::coils(told, features),
        ];
        tables.retain(|table| !table.rows.is_empty());
        for (index, scale) in SCALES.iter().enumerate() {
            for sheet in sheets() {
                for gaps in GAPS {
                    for isometric_scale in &SCALES[index..SCALES.len().min(index + 4)] {
                        let trial = Trial { scale: *scale, isometric_scale: *isometric_scale, gaps };
                        if let Some(places) = attempt(&sheet, trial, &extents, &tables) {
                            return whole(&sheet, trial, &extents, tables, places);
                        }
                    }
                }
            }
        }
        // Nothing that is let into the engine comes here: at 1:1000 a run of any size is smaller than a sheet.
        let last = SCALES[SCALES.len() - 1];
        let sheet = Sheet::largest();
        let trial = Trial { scale: last, isometric_scale: last, gaps: GAPS[1] };
        let places = Places { corners: vec![sheet.frame.at; tables.len() + 1], stacks: vec![8; tables.len()] };
        whole(&sheet, trial, &extents, tables, places)
    }

    /// What must be said about this sheet alone.
    pub fn remark(&self, tongue: &Tongue) -> Option<String> {
        (self.scale > 1).then(|| tongue.say(words::TOO_LARGE, &[&ratio(self.scale)]))
    }
}

/// Where the isometric and then the tables stand, and in how many stacks each table's rows do.
struct Places {
    corners: Vec<Flat>,
    stacks: Vec<usize>,
}

/// Where everything stands on a sheet, if it finds room.
fn attempt(sheet: &Sheet, trial: Trial, extents: &Extents, tables: &[Table]) -> Option<Places> {
    let size = isometric_size(extents, trial.isometric_scale);
    let small = size[0].max(size[1]) < LEAST_ISOMETRIC + 2.0 * ROUND_ISOMETRIC;
    if small && trial.isometric_scale > trial.scale {
        return None;
    }
    let views = Views::at(sheet, trial, extents);
    let (title, notes) = feet(sheet)?;
    let inside = views.areas.iter().all(|area| sheet.frame.holds(area));
    let apart = views.areas.iter().all(|area| !area.meets(&title) && !area.meets(&notes));
    if !inside || !apart {
        return None;
    }
    let standing: Vec<Area> = views.areas.iter().copied().chain([title, notes]).collect();
    for most in STACKS {
        let stacks: Vec<usize> = tables.iter().map(|table| most.min(table.rows.len().div_ceil(4)).max(1)).collect();
        let blocks: Vec<Flat> = std::iter::once(size)
            .chain(tables.iter().zip(&stacks).map(|(table, stacks)| table.size(*stacks)))
            .collect();
        if let Some(corners) = placed(&sheet.frame.inset(2.0), &standing, &blocks) {
            return Some(Places { corners, stacks });
        }
        if stacks.iter().all(|one| *one < most) {
            break;
        }
    }
    None
}

/// Title block and notes: at the bottom right, side by side where there is room, else one above the other.
fn feet(sheet: &Sheet) -> Option<(Area, Area)> {
    let frame = &sheet.frame;
    let [right, bottom] = [frame.at[0] + frame.size[0], frame.at[1] + frame.size[1]];
    let title = Area { at: [right - TITLE[0], bottom - TITLE[1]], size: TITLE };
    let beside = [title.at[0] - NOTES[0], bottom - NOTES[1]];
    let above = [right - NOTES[0], title.at[1] - NOTES[1]];
    let at = if beside[0] >= frame.at[0] { beside } else { above };
    let fits = frame.size[0] >= TITLE[0] && frame.size[1] >= TITLE[1] + NOTES[1];
    fits.then_some((title, Area { at, size: NOTES }))
}

fn isometric_size(extents: &Extents, scale: u32) -> Flat {
    let range = &extents.isometric;
    [range.width(), range.height()].map(|length| length / f64::from(scale) + 2.0 * ROUND_ISOMETRIC)
}

/// The plan of a sheet on which everything has its place.
fn whole(sheet: &Sheet, trial: Trial, extents: &Extents, tables: Vec<Table>, places: Places) -> Plan {
    let views = Views::at(sheet, trial, extents);
    let (title, notes) = feet(sheet).unwrap_or((sheet.frame, sheet.frame));
    let scale = 1.0 / f64::from(trial.scale);
    let ranges = [(front(), &extents.front), (top(), &extents.top), (side(), &extents.side)];
    let fields = ranges.into_iter().enumerate().map(|(index, (view, range))| Field {
        placed: Placed::at(view, scale, range, views.corners[index]),
        area: views.areas[index],
    });
    let Places { corners, stacks } = places;
    let tables: Vec<(Table, usize)> = tables.into_iter().zip(stacks).collect();
    let area = Area { at: corners[0], size: isometric_size(extents, trial.isometric_scale) };
    let inner = area.at.map(|edge| edge + ROUND_ISOMETRIC);
    let isometric = Field {
        placed: Placed::at(isometric(), 1.0 / f64::from(trial.isometric_scale), &extents.isometric, inner),
        area,
    };
    let blocks =
        tables.iter().zip(&corners[1..]).map(|((table, stacks), at)| Area { at: *at, size: table.size(*stacks) });
    Plan {
        scale: trial.scale,
        isometric_scale: trial.isometric_scale,
        corners: views.areas.iter().map(|area| [area.at[0] + 2.0, area.at[1] + area.size[1] - 1.5]).collect(),
        views: fields.collect(),
        isometric,
        blocks: blocks.chain([notes, title]).collect(),
        tables,
        notes,
        title,
        sheet: sheet.clone(),
    }
}

impl Views {
    /// Third angle: the top view above the front view, the right one to its right.
    fn at(sheet: &Sheet, trial: Trial, extents: &Extents) -> Self {
        let Gaps { round, between } = trial.gaps;
        let sized = |length: f64| length / f64::from(trial.scale);
        let (wide, deep, high) =
            (sized(extents.front.width()), sized(extents.top.height()), sized(extents.front.height()));
        let [left, top] = sheet.frame.at;
        let half = between / 2.0;
        let [x, y] = [left + round, top + round];
        let (below, beside) = (y + deep + between, x + wide + between);
        let area = |at: Flat, to: Flat| Area { at, size: [to[0] - at[0], to[1] - at[1]] };
        let front = area([left, below - half], [x + wide + half, below + high + round]);
        let above = area([left, top], [x + wide + round, y + deep + half]);
        let right = area([beside - half, below - round], [beside + deep + round, below + high + round]);
        Self { areas: [front, above, right], corners: [[x, below], [x, y], [beside, below]] }
    }
}
