//! Dimensions: lengths of legs, bends with their angle, radius and rotation, numbers of points. Each stands once, in the
//! view that shows it best, where the least is drawn already.

use super::super::features::{Feature, Point};
use super::super::subject::ToldRun;
use super::angle::arc;
use super::field::Field;
use super::paper::{Anchor, FIGURES, Paper, Part, Pen, Told, width_of, width_of_parts};
use super::room::{Patch, Room};
use super::tables::{Label, MOST_ROWS, chamfer, label, number, seat_marks, with_angle};
use super::view::Flat;
use crate::centreline::{BendKind, Piece};

/// How much each thing keeps others away.
pub(super) const WORDS: u16 = 20;
pub(super) const LINE: u16 = 4;
/// A length that its view shows at least this share of counts as shown true.
pub(super) const TRUE: f64 = 0.9999;
/// Height of a line of figures, mm.
pub(super) const HIGH: f64 = 3.6;

/// Where dimensions are drawn.
pub(super) struct Draft<'a> {
    pub paper: &'a mut Paper,
    pub room: &'a mut Room,
    /// Half the tube's diameter on paper, mm.
    pub reach: f64,
    /// Whether something was underlined.
    pub underlined: bool,
}

/// Draws the lengths of all legs, longest first: they have the least choice of places.
pub(super) fn legs(draft: &mut Draft<'_>, fields: &[Field], points: &[Point]) {
    let mut legs: Vec<(usize, f64)> = points
        .windows(2)
        .enumerate()
        .filter(|(_, pair)| pair[0].leads_straight_to(&pair[1]))
        .map(|(index, pair)| (index, (pair[1].at - pair[0].at).norm()))
        .filter(|(_, length)| *length > 1e-3)
        .collect();
    legs.truncate(MOST_ROWS);
    legs.sort_by(|a, b| b.1.total_cmp(&a.1));
    for (index, length) in legs {
        let along = (points[index + 1].at - points[index].at) / length;
        let Some((field, seen)) = best(fields, |field| field.shows(&along)) else { continue };
        let ends = [index, index + 1].map(|at| field.placed.on_sheet(&points[at].at));
        let told = number("leg", Some(index + 1), length);
        draft.leg("leg", field, ends, told, seen < TRUE);
    }
}

/// The first field whose measure is not clearly less than the best one's.
fn best(fields: &[Field], measure: impl Fn(&Field) -> f64) -> Option<(&Field, f64)> {
    let most = fields.iter().map(&measure).fold(0.0, f64::max);
    fields.iter().map(|field| (field, measure(field))).find(|(_, value)| *value >= 0.999 * most)
}

/// Draws a label at each bend.
pub(super) fn bends(draft: &mut Draft<'_>, fields: &[Field], told: &ToldRun<'_>, features: &[Feature]) {
    for feature in features.iter().take(MOST_ROWS) {
        let middle = told.line.at(place_of(told, feature));
        let axis = crate::layout::unit(&middle.tangent.cross(&middle.curvature));
        let Some((field, _)) = best(fields, |field| axis.dot(&field.placed.view.toward).abs()) else { continue };
        draft.paper.open("class=\"bend\"");
        let Label { angle, lines } = label(told, feature);
        let lines = match angle {
            Some(angle) if arc(draft, field, told, feature, &angle) => lines,
            // Without an arc the angle stands before the radius.
            angle => with_angle(lines, angle),
        };
        draft.label(field, field.placed.on_sheet(&middle.point), &lines);
        draft.paper.close();
    }
}

/// Draws how far the rings of the trim and the seating marks are from the tube's end faces, each in the view that shows it
/// from the side.
pub(super) fn marks(draft: &mut Draft<'_>, fields: &[Field], told: &ToldRun<'_>) {
    let trims = told.profile.marks.trim.map(|there| there.then_some(told.run.ends.trim));
    let both = |what: &'static str, marks: [Option<f64>; 2]| {
        marks.into_iter().enumerate().filter_map(move |(end, far)| Some((what, end, far?)))
    };
    for (what, end, far) in both("trim", trims).chain(both("seat_mark", seat_marks(told))) {
        let places = if end == 0 { [0.0, far] } else { [told.line.length, told.line.length - far] };
        let [face, mark] = places.map(|s| told.line.at(s));
        let Some((field, seen)) = best(fields, |field| field.shows(&face.tangent)) else { continue };
        let ends = [face, mark].map(|at| field.placed.on_sheet(&at.point));
        draft.leg("mark", field, ends, number(what, Some(end), far), seen < TRUE);
    }
}

/// Where a feature's label points: its middle; of a smooth curve its tightest place.
fn place_of(told: &ToldRun<'_>, feature: &Feature) -> f64 {
    let middle = (feature.from + feature.to) / 2.0;
    if feature.told.kind != BendKind::Curve {
        return middle;
    }
    let of_it = |piece: &&Piece| piece.from >= feature.from - 1e-9 && piece.to() <= feature.to + 1e-9;
    let radius = |piece: &&Piece| piece.radius().unwrap_or(f64::INFINITY);
    let tightest = told.line.pieces.iter().filter(of_it).min_by(|a, b| radius(a).total_cmp(&radius(b)));
    tightest.map_or(middle, |piece| piece.from + piece.tightest_at())
}

/// Draws what both ends are like beside the first, in the view that shows it from the side.
pub(super) fn ends(draft: &mut Draft<'_>, fields: &[Field], told: &ToldRun<'_>) {
    let Some(lines) = chamfer(told) else { return };
    let start = told.line.at(told.run.ends.chamfer_length / 2.0);
    let Some((field, _)) = best(fields, |field| field.shows(&start.tangent)) else { return };
    let across = crate::layout::unit(&start.tangent.cross(&field.placed.view.toward));
    let radius = told.profile.outer.radius(told.run.ends.chamfer_length / 2.0);
    draft.paper.open("class=\"end\"");
    draft.label(field, field.placed.on_sheet(&(start.point + across * radius)), &lines);
    draft.paper.close();
}

/// Draws the numbers of the points, as far as they lie on the view's paper.
pub(super) fn numbers(draft: &mut Draft<'_>, field: &Field, points: &[Point]) {
    for (index, point) in points.iter().enumerate().take(MOST_ROWS) {
        let at = field.placed.on_sheet(&point.at);
        if !field.within(&Patch::upright(at, [0.0, 0.0])) {
            continue;
        }
        draft.paper.circle(Pen::Fill, at, 0.5);
        draft.mark(field, at, &index.to_string());
    }
}

/// A place for a leg's dimension.
struct Place {
    from: Flat,
    to: Flat,
    words: Patch,
    cost: f64,
}

impl Draft<'_> {
    fn leg(&mut self, class: &str, field: &Field, [p, q]: [Flat; 2], told: Told, foreshortened: bool) {
        let length = libm::hypot(q[0] - p[0], q[1] - p[1]);
        if length < 0.2 {
            return;
        }
        let way = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
        let part = if foreshortened { Part::Foreshortened(told) } else { Part::Number(told) };
        let parts = [part];
        let wide = width_of_parts(&parts, FIGURES);
        let mut best: Option<Place> = None;
        for side in [1.0, -1.0] {
            let across = [-way[1] * side, way[0] * side];
            for step in 0..7 {
                let off = self.reach + 5.5 + 5.0 * f64::from(step);
                let place = self.place(field, [p, q], across, off, [wide, length]);
                if best.as_ref().is_none_or(|known| place.cost < known.cost) {
                    best = Some(place);
                }
            }
        }
        let Some(Place { from, to, words, .. }) = best else { return };
        self.underlined |= foreshortened;
        self.paper.open(&format!("class=\"{class}\""));
        for (apex, end) in [(p, from), (q, to)] {
            let out = libm::hypot(end[0] - apex[0], end[1] - apex[1]);
            let across = [(end[0] - apex[0]) / out, (end[1] - apex[1]) / out];
            let start = [apex[0] + across[0] * 1.0, apex[1] + across[1] * 1.0];
            let stop = [end[0] + across[0] * 1.5, end[1] + across[1] * 1.5];
            self.paper.line(Pen::Thin, start, stop);
            self.room.take(&Patch::line(start, stop), LINE);
        }
        // Short ones have their arrows outside.
        let inside = length > 7.0;
        let beyond = if inside { 0.0 } else { 5.0 };
        let ends = [
            [from[0] - way[0] * beyond, from[1] - way[1] * beyond],
            [to[0] + way[0] * beyond, to[1] + way[1] * beyond],
        ];
        self.paper.line(Pen::Thin, ends[0], ends[1]);
        let turn = if inside { 1.0 } else { -1.0 };
        self.paper.arrow(from, [-way[0] * turn, -way[1] * turn]);
        self.paper.arrow(to, [way[0] * turn, way[1] * turn]);
        self.room.take(&Patch::line(ends[0], ends[1]), LINE);
        self.room.take(&words, WORDS);
        // The words' baseline runs along the line, readable from below or from the right.
        let down = [-words.way[1], words.way[0]];
        let at = [words.middle[0] + down[0] * 1.1, words.middle[1] + down[1] * 1.1];
        let turn = libm::atan2(words.way[1], words.way[0]).to_degrees();
        self.paper.told(at, FIGURES, Anchor::Middle, turn, &parts);
        self.paper.close();
    }

    /// A dimension line `off` to one side of a leg, with what it would cost; `sizes` are the words' width and the leg's
    /// length on paper.
    fn place(&self, field: &Field, [p, q]: [Flat; 2], across: Flat, off: f64, [wide, length]: Flat) -> Place {
        let moved = |point: Flat, by: f64| [point[0] + across[0] * by, point[1] + across[1] * by];
        let (from, to) = (moved(p, off), moved(q, off));
        let way = [(q[0] - p[0]) / length, (q[1] - p[1]) / length];
        // Left to right; straight up where it is upright.
        let reads = if way[0] < -1e-6 || (way[0].abs() <= 1e-6 && way[1] > 0.0) { -1.0 } else { 1.0 };
        let read = [way[0] * reads, way[1] * reads];
        let up = [read[1], -read[0]];
        let middle = [(from[0] + to[0]) / 2.0, (from[1] + to[1]) / 2.0];
        let shifts = if wide + 2.0 < length {
            vec![0.0]
        } else {
            let aside = (length + wide) / 2.0 + 3.0;
            vec![0.0, aside, -aside]
        };
        let line = Patch::line(from, to);
        let extensions = [Patch::line(moved(p, 1.5), from), Patch::line(moved(q, 1.5), to)];
        let lines = self.room.taken(&line) + extensions.iter().map(|patch| 0.5 * self.room.taken(patch)).sum::<f64>();
        let mut best: Option<Place> = None;
        for shift in shifts {
            let at = [0, 1].map(|axis| middle[axis] + read[axis] * shift + up[axis] * (HIGH / 2.0 + 0.2));
            let words = Patch { middle: at, half: [wide / 2.0, HIGH / 2.0], way: read };
            let mut cost = 2.0 * lines + 3.0 * self.room.taken(&words) + 1.2 * off + 0.2 * f64::abs(shift);
            if !field.within(&words) || !field.within(&line) {
                cost += 1e6;
            }
            if best.as_ref().is_none_or(|known| cost < known.cost) {
                best = Some(Place { from, to, words, cost });
            }
        }
        best.unwrap_or(Place { from, to, words: line, cost: f64::INFINITY })
    }

    /// Lines of words beside a point, with a leader to it.
    fn label(&mut self, field: &Field, at: Flat, lines: &[Vec<Part>]) {
        let wide = lines.iter().map(|parts| width_of_parts(parts, FIGURES)).fold(0.0, f64::max);
        let high = HIGH * lines.len() as f64;
        let mut best: Option<(f64, Patch, Flat)> = None;
        for far in 0..7 {
            let off = self.reach + 4.0 + 4.5 * f64::from(far);
            // Nothing further away costs less than the way there.
            if best.as_ref().is_some_and(|(known, ..)| *known <= off) {
                break;
            }
            for step in 0..24 {
                let (sin, cos) = libm::sincos(core::f64::consts::TAU * (f64::from(step) + 0.5) / 24.0);
                let foot = [at[0] + cos * off, at[1] + sin * off];
                let side = if cos >= 0.0 { 1.0 } else { -1.0 };
                let middle = [foot[0] + side * (wide / 2.0 + 0.8), foot[1]];
                let words = Patch { middle, half: [wide / 2.0, high / 2.0], way: [1.0, 0.0] };
                if !field.within(&words) {
                    continue;
                }
                let leader = 1.5 * self.room.taken(&Patch::line(at, foot)) + off;
                if best.as_ref().is_some_and(|(known, ..)| *known <= leader) {
                    continue;
                }
                let cost = leader + 3.0 * self.room.taken(&words);
                if best.as_ref().is_none_or(|(known, ..)| cost < *known) {
                    best = Some((cost, words, foot));
                }
            }
        }
        // On paper too small for its words they stand beside the point all the same.
        let best = best.or_else(|| {
            let foot = [at[0] + self.reach + 4.0, at[1]];
            let middle = [foot[0] + wide / 2.0 + 0.8, foot[1]];
            Some((0.0, Patch { middle, half: [wide / 2.0, high / 2.0], way: [1.0, 0.0] }, foot))
        });
        let Some((_, words, foot)) = best else { return };
        self.paper.line(Pen::Thin, at, foot);
        let long = libm::hypot(at[0] - foot[0], at[1] - foot[1]).max(1e-9);
        self.paper.arrow(at, [(at[0] - foot[0]) / long, (at[1] - foot[1]) / long]);
        self.room.take(&Patch::line(at, foot), LINE);
        self.room.take(&words, WORDS);
        let [left, top] = [words.middle[0] - words.half[0], words.middle[1] - words.half[1]];
        for (index, parts) in lines.iter().enumerate() {
            let base = top + HIGH * (index as f64 + 1.0) - 0.9;
            self.paper.told([left, base], FIGURES, Anchor::Start, 0.0, parts);
        }
    }

    /// A few signs close to a point.
    fn mark(&mut self, field: &Field, at: Flat, words: &str) {
        let wide = width_of(words, FIGURES);
        let mut best: Option<(f64, Patch)> = None;
        for step in 0..16 {
            let (sin, cos) = libm::sincos(core::f64::consts::TAU * f64::from(step) / 16.0);
            for far in 0..4 {
                let off = 2.6 + 2.0 * f64::from(far);
                let middle = [at[0] + cos * (off + wide / 2.0), at[1] + sin * off];
                let patch = Patch { middle, half: [wide / 2.0, HIGH / 2.0], way: [1.0, 0.0] };
                let cost = 3.0 * self.room.taken(&patch) + 3.0 * off + if field.within(&patch) { 0.0 } else { 1e6 };
                if best.as_ref().is_none_or(|(known, _)| cost < *known) {
                    best = Some((cost, patch));
                }
            }
        }
        let Some((_, patch)) = best else { return };
        self.room.take(&patch, WORDS);
        self.paper.words([patch.middle[0], patch.middle[1] + 1.1], FIGURES, Anchor::Middle, 0.0, words);
    }
}
