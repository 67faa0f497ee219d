//! The arc that shows a bend's angle, in a view that shows the bend as it is: from the straight before it, drawn on past
//! the apex, to the straight after it.

use super::super::features::Feature;
use super::super::subject::ToldRun;
use super::dimensions::{Draft, HIGH, LINE, TRUE, WORDS};
use super::field::Field;
use super::paper::{Anchor, FIGURES, Part, Pen, width_of_parts};
use super::room::Patch;
use super::view::Flat;
use crate::centreline::BendKind;
use crate::layout::Vec3;

/// Angles that are shown by an arc, radians: 10 to 120 degrees. Less shows nothing, and the apex of more is far away.
const SHOWN: [f64; 2] = [core::f64::consts::PI / 18.0, 2.0 * core::f64::consts::FRAC_PI_3 + 1e-9];
/// Shortest arc with its arrows between its ends, mm.
const LEAST_ARC: f64 = 6.5;
/// Arcs that are tried, from the least that has room on.
const TRIES: u32 = 6;
/// What an arc may cost: one that crosses words or another dimension says less than the label alone.
const MOST: f64 = 60.0;

/// An angle between two straights of a view that meet in a point, on the sheet.
struct Corner {
    apex: Flat,
    /// Unit directions: the way on from the first straight, and that of the second.
    ways: [Flat; 2],
    angle: f64,
}

/// An arc with its number.
struct Arc {
    points: Vec<Flat>,
    radius: f64,
    words: Patch,
    cost: f64,
}

/// Draws the arc of a bend with its angle, if the view shows it true and has room; says whether it did.
pub(super) fn arc(draft: &mut Draft<'_>, field: &Field, told: &ToldRun<'_>, feature: &Feature, angle: &Part) -> bool {
    let Some(corner) = corner(field, told, feature) else { return false };
    let wide = width_of_parts(core::slice::from_ref(angle), FIGURES);
    let least = (LEAST_ARC / corner.angle).max(draft.reach + 4.0);
    let arcs = (0..TRIES).filter_map(|step| corner.arc(draft, field, least + 4.0 * f64::from(step), wide));
    let Some(arc) = arcs.min_by(|a, b| a.cost.total_cmp(&b.cost)).filter(|arc| arc.cost <= MOST) else { return false };
    for way in corner.ways {
        let end = along(corner.apex, way, arc.radius + 1.5);
        draft.paper.line(Pen::Thin, corner.apex, end);
        draft.room.take(&Patch::line(corner.apex, end), LINE);
    }
    draft.paper.path(Pen::Thin, &arc.points, "angle");
    draft.room.take_line(&arc.points, LINE);
    for (end, way, turn) in
        [(arc.points[0], corner.ways[0], -1.0), (arc.points[arc.points.len() - 1], corner.ways[1], 1.0)]
    {
        // Along the arc outwards, turned by half of what the arrow's own length takes of it.
        let lean = turn * corner.sense() * (core::f64::consts::FRAC_PI_2 - 1.25 / arc.radius);
        draft.paper.arrow(end, turned(way, lean));
    }
    draft.room.take(&arc.words, WORDS);
    let at = [arc.words.middle[0], arc.words.middle[1] + 1.1];
    draft.paper.told(at, FIGURES, Anchor::Middle, 0.0, core::slice::from_ref(angle));
    true
}

/// The corner of a bend as a view shows it; none where the view does not show its angle true.
fn corner(field: &Field, told: &ToldRun<'_>, feature: &Feature) -> Option<Corner> {
    let angle = feature.told.angle;
    if feature.told.kind != BendKind::Bend || !(SHOWN[0]..=SHOWN[1]).contains(&angle) {
        return None;
    }
    let [first, last] = [feature.from, feature.to].map(|s| told.line.at(s));
    let axis = crate::layout::unit(&first.tangent.cross(&last.tangent));
    if axis.dot(&field.placed.view.toward).abs() < TRUE {
        return None;
    }
    let apex = first.point + first.tangent * (feature.told.radius * libm::tan(angle / 2.0));
    let way = |tangent: &Vec3| {
        let [x, y] = field.placed.view.flat(tangent);
        let long = libm::hypot(x, y);
        [x / long, -y / long]
    };
    Some(Corner { apex: field.placed.on_sheet(&apex), ways: [way(&first.tangent), way(&last.tangent)], angle })
}

impl Corner {
    /// 1 where the second direction is reached clockwise on the sheet, -1 where the other way.
    fn sense(&self) -> f64 {
        let [[a, b], [c, d]] = self.ways;
        if a * d - b * c >= 0.0 { 1.0 } else { -1.0 }
    }

    fn arc(&self, draft: &Draft<'_>, field: &Field, radius: f64, wide: f64) -> Option<Arc> {
        let steps = (self.angle / 0.08).ceil().max(2.0) as usize;
        let way = |share: f64| turned(self.ways[0], self.sense() * self.angle * share);
        let points: Vec<Flat> =
            (0..=steps).map(|step| along(self.apex, way(step as f64 / steps as f64), radius)).collect();
        let [x, y] = way(0.5);
        let off = radius + 0.8 + x.abs() * wide / 2.0 + y.abs() * HIGH / 2.0;
        let words = Patch { middle: along(self.apex, [x, y], off), half: [wide / 2.0, HIGH / 2.0], way: [1.0, 0.0] };
        let inside = field.within(&words) && points.iter().all(|at| field.within(&Patch::upright(*at, [0.0, 0.0])));
        let crossed: f64 = points.windows(2).map(|pair| draft.room.taken(&Patch::line(pair[0], pair[1]))).sum();
        inside.then(|| Arc { cost: crossed + 3.0 * draft.room.taken(&words) + 0.5 * radius, points, radius, words })
    }
}

fn along(from: Flat, way: Flat, by: f64) -> Flat {
    [from[0] + way[0] * by, from[1] + way[1] * by]
}

/// A direction turned clockwise on the sheet, radians.
fn turned([x, y]: Flat, by: f64) -> Flat {
    let (sin, cos) = libm::sincos(by);
    [x * cos - y * sin, x * sin + y * cos]
}
