//! What the sheet tells in tables: bends, points, ends, coils.

use super::super::features::{Feature, Point};
use super::super::subject::ToldRun;
use super::paper::{Part, Told, shown};
use super::table::Table;
use super::words;
use crate::centreline::{BendKind, bend_table};
use crate::design::{Coil, Hand, Station};
use crate::layout::{PlacedCoil, PlacedStation};
use crate::report::degrees;
use crate::tongue::Tongue;

/// Most rows that a sheet shows, and most bends that it dimensions; the rest is in the files.
pub(super) const MOST_ROWS: usize = 240;

/// A number with its place in the report.
pub(super) fn number(dimension: &'static str, row: Option<usize>, value: f64) -> Told {
    Told { dimension, row, value, shown: shown(value) }
}

/// The bend table, fed from the start.
pub(super) fn bends(told: &ToldRun<'_>) -> Table {
    let tongue = told.tongue;
    let table = bend_table(told.line);
    let bends = table.len().saturating_sub(1);
    let rows = table.iter().enumerate().map(|(index, row)| {
        let cell = |dimension, value| Part::Number(number(dimension, Some(index + 1), value));
        let name = if index < bends { (index + 1).to_string() } else { tongue.word_of(words::LAST_ROW).to_owned() };
        let straight = cell("straight", row.straight);
        if index == bends {
            return vec![Part::words(name), Part::words(""), straight];
        }
        vec![
            Part::words(name),
            Part::words(tongue.word_of(kind(row.kind))),
            straight,
            cell("rotation", degrees(row.rotation)),
            cell("angle", degrees(row.angle)),
            cell("radius", row.radius),
            cell("arc", row.length),
        ]
    });
    cut(tongue, words::BEND_TABLE, words::BENDS, rows)
}

/// The points.
pub(super) fn points(told: &ToldRun<'_>, points: &[Point]) -> Table {
    let tongue = told.tongue;
    let rows = points.iter().enumerate().map(|(index, point)| {
        let cell = |dimension, value| Part::Number(number(dimension, Some(index), value));
        let bend = point.row.map(|row| (row + 1).to_string()).unwrap_or_default();
        let at = point.at;
        vec![
            Part::words(index.to_string()),
            Part::words(tongue.word(point.what)),
            Part::words(bend),
            cell("x", at.x),
            cell("y", at.y),
            cell("z", at.z),
        ]
    });
    cut(tongue, words::POINT_TABLE, words::POINTS, rows)
}

/// What a bend is, where room is short.
fn kind(kind: BendKind) -> &'static str {
    let [bend, coil, curve] = words::KINDS;
    match kind {
        BendKind::Bend => bend,
        BendKind::Coil => coil,
        BendKind::Curve => curve,
        BendKind::End => words::LAST_ROW,
    }
}

/// How a coil winds, of the words for both.
fn hand(coil: &Coil, [right, left]: [&'static str; 2]) -> &'static str {
    match coil.hand {
        Hand::Right => right,
        Hand::Left => left,
    }
}

fn cut<const COUNT: usize>(
    tongue: &Tongue,
    caption: &str,
    columns: [(&str, f64); COUNT],
    rows: impl Iterator<Item = Vec<Part>>,
) -> Table {
    let mut rows: Vec<Vec<Part>> = rows.collect();
    let more = rows.len().saturating_sub(MOST_ROWS);
    rows.truncate(MOST_ROWS);
    let foot = (more > 0).then(|| tongue.say(words::MORE_ROWS, &[&more.to_string()]));
    table(tongue, caption, columns, rows, foot)
}

fn table<const COUNT: usize>(
    tongue: &Tongue,
    caption: &str,
    columns: [(&str, f64); COUNT],
    rows: Vec<Vec<Part>>,
    foot: Option<String>,
) -> Table {
    let columns = columns.map(|(heading, width)| (tongue.word(heading).to_owned(), width));
    Table { caption: tongue.word(caption).to_owned(), columns: columns.into(), rows, foot }
}

/// How both ends are finished and how deep they sit; `last` is the number of the last point.
pub(super) fn ends(told: &ToldRun<'_>, last: usize) -> Table {
    let ends = &told.run.ends;
    let seats = seat_marks(told);
    let rows = [0, 1].map(|end| {
        let cell = |dimension, value: f64| Part::Number(number(dimension, Some(end), value));
        let place = if end == 0 { 0 } else { last };
        vec![
            Part::words(place.to_string()),
            Part::words(told.port_names()[end]),
            cell("chamfer_deg", ends.chamfer_deg),
            cell("chamfer_length", ends.chamfer_length),
            cell("edge_break", ends.edge_break),
            cell("trim", ends.trim),
            cell("socket_depth", told.fittings[end].socket_depth),
            seats[end].map_or(Part::words(told.tongue.word_of(words::NO_MARK)), |inside| cell("seat_mark", inside)),
        ]
    });
    table(told.tongue, words::ENDS, words::END_COLUMNS, rows.into(), None)
}

/// How far each end's seating mark is from its face, to the edge that lies level with the mouth, mm; none where there is
/// no room for a mark, or none is wanted.
pub(super) fn seat_marks(told: &ToldRun<'_>) -> [Option<f64>; 2] {
    let insides = [told.placed.start.inside, told.placed.end.inside];
    core::array::from_fn(|end| told.profile.marks.seat[end].then_some(insides[end]))
}

/// The coils, as they are stated.
pub(super) fn coils(told: &ToldRun<'_>, features: &[Feature]) -> Table {
    let mut rows = Vec::new();
    for (feature, coil, placed) in features.iter().filter_map(|feature| coil_of(told, feature)) {
        let row = Some(feature.row + 1);
        let cell = |dimension, value| Part::Number(number(dimension, row, value));
        let axis = placed.axis;
        rows.push(vec![
            Part::words((feature.row + 1).to_string()),
            cell("coil_radius", coil.radius),
            cell("coil_end_radius", coil.radius_at_end()),
            cell("coil_pitch", coil.pitch),
            cell("coil_turns", coil.turns),
            Part::words(told.tongue.word_of(hand(coil, words::SHORT_HANDS))),
            cell("coil_start", coil.start_deg),
            cell("coil_axis_x", axis.x),
            cell("coil_axis_y", axis.y),
            cell("coil_axis_z", axis.z),
            cell("coil_centre_x", placed.centre.x),
            cell("coil_centre_y", placed.centre.y),
            cell("coil_centre_z", placed.centre.z),
        ]);
    }
    table(told.tongue, words::COILS, words::COIL_COLUMNS, rows, None)
}

fn coil_of<'a>(told: &ToldRun<'a>, feature: &'a Feature) -> Option<(&'a Feature, &'a Coil, &'a PlacedCoil)> {
    let station = feature.told.station?;
    match (told.run.route.get(station)?, told.placed.stations.get(station)?) {
        (Station::Coil(coil), PlacedStation::Coil(placed)) if feature.told.kind == BendKind::Coil => {
            Some((feature, coil, placed))
        }
        _ => None,
    }
}

/// What the body's own shape is, in words and numbers; none for a plain tube.
pub(super) fn dress(told: &ToldRun<'_>) -> Option<Vec<Part>> {
    let dress = told.run.dress.as_ref()?;
    let [first, last] = dress.diameters(told.run.tube.outer_diameter);
    let cell = |dimension, value| Part::Number(number(dimension, None, value));
    let body = [cell("body_diameter", first), cell("body_end_diameter", last), cell("body_blend", dress.blend)];
    let mut parts = Part::line(told.tongue, words::BODY, &body);
    if dress.lobes > 0 {
        let lobes = [
            cell("body_lobes", f64::from(dress.lobes)),
            cell("body_depth", dress.depth),
            cell("body_twist", dress.twist_deg_per_mm),
        ];
        parts.extend(Part::line(told.tongue, words::LOBES, &lobes));
    }
    Some(parts)
}

/// What is said beside an end: its chamfer.
pub(super) fn chamfer(told: &ToldRun<'_>) -> Option<Vec<Vec<Part>>> {
    let ends = &told.run.ends;
    let part = |dimension, value: f64, shown: String| Part::Number(Told { dimension, row: None, value, shown });
    (ends.chamfer_length > 0.0).then(|| {
        let sizes = [
            part("chamfer_deg", ends.chamfer_deg, format!("{}°", shown(ends.chamfer_deg))),
            part("chamfer_length", ends.chamfer_length, shown(ends.chamfer_length)),
        ];
        vec![Part::line(told.tongue, words::BOTH_ENDS, &sizes)]
    })
}

/// What is said of a bend, a coil or a curve.
pub(super) struct Label {
    /// A bend's angle, which stands on its arc where one is drawn.
    pub angle: Option<Part>,
    /// What stands beside it: one line or two, the first with its number in front.
    pub lines: Vec<Vec<Part>>,
}

/// The lines of a label, with the angle after the number of the bend.
pub(super) fn with_angle(mut lines: Vec<Vec<Part>>, angle: Option<Part>) -> Vec<Vec<Part>> {
    if let (Some(angle), Some(first)) = (angle, lines.first_mut()) {
        first.splice(1..1, [angle, Part::words("  ")]);
    }
    lines
}

/// What is said of a bend, a coil or a curve.
pub(super) fn label(told: &ToldRun<'_>, feature: &Feature) -> Label {
    let row = Some(feature.row + 1);
    let part = |dimension, value: f64, shown: String| Part::Number(Told { dimension, row, value, shown });
    let (tongue, name) = (told.tongue, (feature.row + 1).to_string());
    let radius = feature.told.radius;
    if let Some((_, coil, _)) = coil_of(told, feature) {
        let sizes = [
            Part::words(name),
            part("coil_radius", coil.radius, shown(coil.radius)),
            part("coil_end_radius", coil.radius_at_end(), shown(coil.radius_at_end())),
        ];
        let turns = [
            part("coil_turns", coil.turns, shown(coil.turns)),
            Part::words(tongue.word(hand(coil, words::HANDS))),
            part("coil_pitch", coil.pitch, shown(coil.pitch)),
        ];
        let lines = vec![Part::line(tongue, words::COIL, &sizes), Part::line(tongue, words::COIL_TURNS, &turns)];
        return Label { angle: None, lines };
    }
    if feature.told.kind == BendKind::Curve {
        let tightest = [Part::words(name), part("radius", radius, shown(radius))];
        let lines = vec![Part::line(tongue, words::CURVE, &tightest)];
        return Label { angle: None, lines };
    }
    let (angle, rotation) = (degrees(feature.told.angle), degrees(feature.told.rotation));
    let first = vec![Part::words(format!("{name}: ")), part("radius", radius, format!("R{}", shown(radius)))];
    let angle = Some(part("angle", angle, format!("{}°", shown(angle))));
    if feature.row == 0 {
        return Label { angle, lines: vec![first] };
    }
    let sign = if rotation > 0.0 { "+" } else { "" };
    let turned = [part("rotation", rotation, format!("{sign}{}°", shown(rotation)))];
    let second = Part::line(tongue, words::ROTATED, &turned);
    Label { angle, lines: vec![first, second] }
}
