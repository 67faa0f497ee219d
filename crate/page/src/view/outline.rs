//! The lines that draw a tube: its rims, its flanks, and what a section lays open.

use tubewright_core::layout::Vec3;

use super::grip::middles;
use super::guide::Guide;
use super::scene::Run;
use super::skin::{Skin, Station};
use super::stroke::{End, Ink, Strokes, Style};

/// Width of an outline, CSS pixels; the pen widens it for the selected run.
const OUTLINE: f32 = 1.5;
/// Width of an edge inside the outline, CSS pixels.
const EDGE: f32 = 1.0;

/// Size of the mark at a corner, CSS pixels from its middle to a tip.
const HANDLE: f32 = 5.0;

/// A body wider than its tube's ends by more than this is a dressed one, mm: no mesh to look at is so far off.
const DRESSED: f64 = 0.2;

/// A tube's lines: those always drawn, and those of its section.
#[derive(Debug, Clone, Default)]
pub struct Outline {
    /// Flanks and rims.
    pub body: Strokes,
    /// The bore's flanks and the wall's ends.
    pub opened: Strokes,
    /// The bore's flanks as its filling shows them.
    pub filled: Strokes,
}

/// The lines of a tube whose skin is ready; without a guide only its rims.
pub fn outline(skin: &Skin, guide: Option<&Guide>) -> Outline {
    let mut outline = Outline::default();
    let rim = Style::new(Ink::Edge, EDGE);
    // Within the wall at the tube's ends: on the way out a body may become wider or narrower.
    let radii = skin.profile.iter().filter(|station| station.outward.abs() < 0.2).map(|station| station.radius);
    let middle = 0.5 * (radii.clone().fold(0.0, f32::max) + radii.fold(f32::INFINITY, f32::min));
    let outside = |vertex: u32| skin.profile.get(vertex as usize).is_some_and(|station| station.radius > middle);
    let end = |vertex: u32| End::vertex(skin.points[vertex as usize], skin.radials[vertex as usize]);
    for [from, to] in &skin.creases {
        outline.body.line(if outside(*from) { rim.sunk() } else { rim }, end(*from), end(*to));
    }
    let Some(guide) = guide else { return outline };
    let outer = profile(guide, &skin.profile, |station| station.outward > 0.2);
    let inner = profile(guide, &skin.profile, |station| station.outward < -0.2);
    // Lobes have no flank that stands still while the eye goes round: their shading tells them.
    if !skin.lobed {
        flanks(&mut outline.body, Style::new(Ink::Outline, OUTLINE).lifted(1.0), &outer);
    }
    let cut = Style::new(Ink::Outline, EDGE).level();
    flanks(&mut outline.opened, cut, &inner);
    flanks(&mut outline.filled, Style::new(Ink::Outline, EDGE).lifted(1.0), &inner);
    for (outside, inside) in outer.first().zip(inner.first()).into_iter().chain(outer.last().zip(inner.last())) {
        for sign in [-1.0, 1.0] {
            let ends = [outside, inside].map(|it| End::flank(&it.centre, &it.tangent, sign * it.radius));
            outline.opened.line(cut, ends[0], ends[1]);
        }
    }
    outline
}

/// Circles for what is seen of a tube end-on: there it has no flanks, and its outline is its own section. `sight` is the
/// unit direction to the eye, `scale` CSS pixels a millimetre; `through` where the wall is seen through.
pub fn end_on(
    strokes: &mut Strokes,
    guide: &Guide,
    run: &Run,
    (section, through): (bool, bool),
    sight: &Vec3,
    scale: f64,
) {
    for (from, to, direction) in guide.spans().filter(|(.., direction)| direction.dot(sight).abs() > 0.9992) {
        for end in [from, to] {
            let radius = 0.5 * run.outer_diameter;
            // In a section the half that is left hides all of it that is not outline.
            let lift = if section { -2.0 * radius * scale } else { 1.0 + (1.5 * radius * scale).sqrt() };
            strokes.circle(Style::new(Ink::Outline, OUTLINE).lifted(lift as f32), &end, &direction, radius, false);
            if section || through {
                let style = Style::new(Ink::Outline, EDGE).lifted(if section { -4.0 } else { lift as f32 });
                strokes.circle(style, &end, &direction, 0.5 * run.bore, false);
            }
        }
    }
}

/// A line for a run that has no tube (yet): dashed where it cannot be made.
pub fn trace(run: &Run) -> Strokes {
    let mut strokes = Strokes::default();
    let points: Vec<Vec3> = run.centreline.iter().map(|point| Vec3::from(*point)).collect();
    let style = if run.made { Style::new(Ink::Edge, EDGE) } else { Style::new(Ink::Unmade, 2.0).dashed().on_top() };
    strokes.path(style, &points);
    if !run.made {
        run.corners
            .iter()
            .for_each(|corner| diamond(&mut strokes, Style::new(Ink::Unmade, 1.5).on_top(), corner, HANDLE));
    }
    strokes
}

/// Where a run stands over the floor at height `floor`, drawn there as wide as its tube: in a parallel projection
/// nothing else tells how high a tube is.
pub fn shadow(run: &Run, floor: f64) -> Strokes {
    let mut strokes = Strokes::default();
    let points: Vec<Vec3> = run.centreline.iter().map(|point| Vec3::new(point[0], point[1], floor)).collect();
    strokes.path(Style::broad(Ink::Shadow, run.outer_diameter), &points);
    strokes
}

/// Marks that show which run is selected without colour: rings round its ends, its route and corners.
pub fn marks(run: &Run, guide: &Guide, mouths: &[(Vec3, Vec3)]) -> Strokes {
    let mut strokes = Strokes::default();
    let stations: Vec<(f64, Vec3, Vec3)> = guide.stations().collect();
    for (_, end, tangent) in stations.first().into_iter().chain(stations.last()) {
        let near = |mouth: &Vec3| (mouth - end).norm() < 6.0 * run.outer_diameter;
        let in_line = |mouth: &Vec3| (mouth - end).cross(tangent).norm() < 0.25 * run.outer_diameter;
        let mouth = mouths.iter().find(|(mouth, _)| near(mouth) && in_line(mouth));
        let place = mouth.map_or(*end, |(mouth, out)| mouth + out * (0.12 * run.outer_diameter));
        for size in [0.56, 0.68] {
            strokes.circle(Style::new(Ink::Mark, 2.0), &place, tangent, size * run.outer_diameter, false);
        }
    }
    // Straight from end to end a route would say nothing, neither of a coil nor of a link.
    if let (Some(first), Some(last), false) = (run.centreline.first(), run.centreline.last(), run.corners.is_empty()) {
        let corners = run.corners.iter().copied();
        let route: Vec<Vec3> = std::iter::once(*first).chain(corners).chain([*last]).map(Vec3::from).collect();
        strokes.path(Style::new(Ink::Mark, 1.0).dashed().on_top(), &route);
        let style = Style::new(Ink::Mark, 1.5).on_top();
        run.corners.iter().for_each(|corner| diamond(&mut strokes, style, corner, HANDLE));
        middles(run).for_each(|middle| diamond(&mut strokes, style, &middle, 0.6 * HANDLE));
    }
    strokes
}

/// Marks the handle that is held: a diamond in a diamond, where it is going.
pub fn held(at: &[f64; 3]) -> Strokes {
    let mut strokes = Strokes::default();
    for (width, size) in [(2.5, 1.2), (1.5, 2.0)] {
        diamond(&mut strokes, Style::new(Ink::Mark, width).on_top(), at, size * HANDLE);
    }
    strokes
}

/// A mark of constant size on the screen, from its middle to a tip in CSS pixels.
fn diamond(strokes: &mut Strokes, style: Style, at: &[f64; 3], size: f32) {
    const TIPS: [[f32; 2]; 4] = [[1.0, 0.0], [0.0, 1.0], [-1.0, 0.0], [0.0, -1.0]];
    let end = |tip: usize| End::at(&Vec3::from(*at)).shifted(size * TIPS[tip % 4][0], size * TIPS[tip % 4][1]);
    (0..4).for_each(|tip| strokes.line(style, end(tip), end(tip + 1)));
}

/// A point of the outer or inner profile.
struct Waist {
    along: f64,
    centre: Vec3,
    tangent: Vec3,
    radius: f64,
}

/// The radius along the tube on one side of its wall: ring by ring in the straights at its ends, where chamfers are,
/// and at every point of the centreline between.
fn profile(guide: &Guide, stations: &[Station], on_side: impl Fn(&Station) -> bool) -> Vec<Waist> {
    let last = guide.segments() - 1;
    let half = guide.length() / 2.0;
    let at_end = |station: &&Station| {
        let segment = station.segment as usize;
        let from_end = if segment == 0 && f64::from(station.along) <= half {
            f64::from(station.along)
        } else {
            guide.length() - f64::from(station.along)
        };
        (segment == 0 || segment == last) && from_end < 0.98 * guide.segment_length(segment).min(half)
    };
    let mut found: Vec<(f64, f64)> = Vec::new();
    for station in stations.iter().filter(|station| on_side(station)).filter(at_end) {
        let (along, radius) = (f64::from(station.along), f64::from(station.radius));
        // Ring by ring: the one looked for is nearly always the last.
        match found.iter_mut().rev().find(|(there, _)| (there - along).abs() < 5e-3) {
            Some((_, widest)) => *widest = widest.max(radius),
            None => found.push((along, radius)),
        }
    }
    found.sort_by(|a, b| a.0.total_cmp(&b.0));
    let before: Vec<_> = found.iter().copied().filter(|(along, _)| *along <= half).collect();
    let after: Vec<_> = found.iter().copied().filter(|(along, _)| *along > half).collect();
    let (Some(first), Some(final_one)) = (before.last(), after.first()) else { return Vec::new() };
    let waist = |segment: usize, (along, radius): (f64, f64)| {
        let (centre, tangent) = guide.on(segment, along);
        Waist { along, centre, tangent, radius }
    };
    let between = guide.stations().filter(|(along, ..)| *along > first.0 && *along < final_one.0);
    let widths = widths(stations, &on_side, first.1);
    let radius_at = |along: f64| widths.as_ref().map_or(first.1, |widths| between_of(widths, along));
    let mut waists: Vec<Waist> = before.iter().map(|it| waist(0, *it)).collect();
    waists.extend(between.map(|(along, centre, tangent)| Waist { along, centre, tangent, radius: radius_at(along) }));
    waists.extend(after.iter().map(|it| waist(last, *it)));
    waists
}

/// Radius over arc length, sorted, where a body is wider or narrower than `plain` somewhere; none for a plain tube.
fn widths(stations: &[Station], on_side: &impl Fn(&Station) -> bool, plain: f64) -> Option<Vec<(f64, f64)>> {
    let mut widths: Vec<(f64, f64)> = stations
        .iter()
        .filter(|station| on_side(station))
        .map(|station| (f64::from(station.along), f64::from(station.radius)))
        .collect();
    if !widths.iter().any(|(_, radius)| *radius > plain + DRESSED) {
        return None;
    }
    widths.sort_by(|a, b| a.0.total_cmp(&b.0));
    Some(widths)
}

/// The radius at a place, straight between the rings beside it.
fn between_of(widths: &[(f64, f64)], along: f64) -> f64 {
    let after = widths.partition_point(|(there, _)| *there < along).min(widths.len() - 1);
    let (a, b) = (widths[after.saturating_sub(1)], widths[after]);
    let share = if b.0 > a.0 { ((along - a.0) / (b.0 - a.0)).clamp(0.0, 1.0) } else { 1.0 };
    a.1 + (b.1 - a.1) * share
}

fn flanks(strokes: &mut Strokes, style: Style, waists: &[Waist]) {
    for pair in waists.windows(2) {
        for sign in [-1.0, 1.0] {
            let end = |it: &Waist| End::flank(&it.centre, &it.tangent, sign * it.radius).along(it.along);
            strokes.line(style, end(&pair[0]), end(&pair[1]));
        }
    }
}
