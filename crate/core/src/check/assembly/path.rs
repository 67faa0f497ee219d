//! What a tube strikes while it is pushed home.

use super::ways::Way;
use crate::check::meets::keep_outs::{is_in_part, solid_of};
use crate::check::meets::tube::Tube;
use crate::check::{OneRun, Subject};
use crate::design::wording;
use crate::distance::{Budget, Solid, box_gap, to_solid};
use crate::layout::Vec3;

/// Steps between the points of a tube that are followed on their way, mm. Skins that touch between two of them touch
/// at them too, but for step^2 / (8 * 12 mm), a twentieth of a millimetre.
const STEP: f64 = 2.0;
/// Most points of a tube that are followed.
const MOST_POINTS: usize = 2_000;
/// Skins that overlap by less only touch, mm.
const TOUCH: f64 = 1e-3;
/// Halvings of a search along a path of some centimetres, to under a micrometre.
const HALVINGS: u32 = 20;

/// Something in a tube's way.
pub(super) struct Strike {
    /// What it is, as a message names it.
    pub what: String,
    /// The tube's point that strikes, where it is when home.
    pub at: Vec3,
    /// How deep, mm.
    pub depth: f64,
}

/// Everything that stands in the room.
pub(super) struct Room<'a> {
    subject: Subject<'a>,
    keep_outs: Vec<Solid>,
    collars: Vec<Vec<Solid>>,
    tubes: Vec<Option<Tube<'a>>>,
}

/// A way of a tube's point: where it is when home, and where it stands off.
type Path = [Vec3; 2];

impl<'a> Room<'a> {
    pub(super) fn of(subject: Subject<'a>) -> Self {
        let cylinder = |collar: &crate::layout::Collar| Solid::cylinder(&collar.from, &collar.to, collar.radius);
        Self {
            subject,
            keep_outs: subject.design.keep_outs.iter().map(solid_of).collect(),
            collars: subject.layout.ports.iter().map(|port| port.collars.iter().map(cylinder).collect()).collect(),
            tubes: subject.runs().map(|run| Tube::of(run, subject.design.clearance)).collect(),
        }
    }

    /// The first keep-out or fitting that the tube strikes on its way but does not touch when home.
    pub(super) fn strike(&self, run: &OneRun<'_>, way: &Way, budget: &mut Budget) -> Option<Strike> {
        let tube = self.tubes[run.index].as_ref()?;
        let moved = way.first.map(|first| if first { run.placed.to } else { run.placed.from });
        let in_part = |port: usize, solid: &Solid| is_in_part(self.subject, port, solid);
        for (index, solid) in self.keep_outs.iter().enumerate() {
            if moved.is_some_and(|port| in_part(port, solid)) {
                continue;
            }
            let [start, end] = [run.placed.from, run.placed.to].map(|port| in_part(port, solid));
            let range = self.range(tube, start, end);
            if let Some((at, depth)) = struck(tube, way, solid, range, budget) {
                let what = wording::quoted(&self.subject.design.keep_outs[index].name);
                return Some(Strike { what, at, depth });
            }
        }
        for (port, collars) in self.collars.iter().enumerate() {
            let range = self.range(tube, port == run.placed.from, port == run.placed.to);
            for collar in collars {
                let stands = match (moved, way.first) {
                    (Some(moved), Some(first)) if moved == port => shifted(collar, &(run.pose(!first).out * -way.back)),
                    _ => collar.clone(),
                };
                if let Some((at, depth)) = struck(tube, way, &stands, range, budget) {
                    let what = format!("the fitting at {}", wording::quoted(&self.subject.design.ports[port].name));
                    return Some(Strike { what, at, depth });
                }
            }
        }
        None
    }

    /// The runs whose tubes, when home, are in this one's way.
    pub(super) fn runs_in_the_way(&self, run: &OneRun<'_>, way: &Way, budget: &mut Budget) -> Vec<usize> {
        let Some(tube) = self.tubes[run.index].as_ref() else { return Vec::new() };
        let others = self.tubes.iter().enumerate().filter(|(index, _)| *index != run.index);
        let in_the_way =
            others.filter(|(_, other)| other.as_ref().is_some_and(|other| strikes_tube(tube, way, other, budget)));
        in_the_way.map(|(index, _)| index).collect()
    }

    /// The arc lengths that count against something at an end of the run; else all of the tube.
    fn range(&self, tube: &Tube<'_>, start: bool, end: bool) -> [f64; 2] {
        let [from, to] = tube.clear_of_ends(start, end);
        [if start { from } else { 0.0 }, if end { to } else { tube.line.length }]
    }
}

/// Where a tube strikes a solid on its way, and how deep.
fn struck(tube: &Tube<'_>, way: &Way, solid: &Solid, range: [f64; 2], budget: &mut Budget) -> Option<(Vec3, f64)> {
    let swept = swept_box(tube, way);
    if !budget.spend(1) || box_gap(&swept, &solid.bounds()) >= tube.radius {
        return None;
    }
    let mut deepest: Option<(Vec3, f64)> = None;
    for path in paths(tube, way, range) {
        if !budget.spend(1) || solid.signed_distance(&path[0]) - tube.radius <= TOUCH {
            // Told as a tube that meets something, or not to be told for want of looks.
            return None;
        }
        let depth = tube.radius - nearest_on(solid, &path);
        if depth > TOUCH && deepest.is_none_or(|(_, most)| depth > most) {
            deepest = Some((path[0], depth));
        }
    }
    deepest
}

fn strikes_tube(tube: &Tube<'_>, way: &Way, other: &Tube<'_>, budget: &mut Budget) -> bool {
    let reach = tube.radius + other.radius;
    if !budget.spend(1) || box_gap(&swept_box(tube, way), &other.bounds) >= reach {
        return false;
    }
    let whole = [0.0, other.line.length];
    let mut strikes = false;
    for [home, off] in paths(tube, way, [0.0, tube.line.length]) {
        let near = |to: &Vec3, budget: &mut Budget| {
            let way = Solid::cylinder(&home, to, 0.0);
            to_solid(other.body(), whole, &way, reach - TOUCH, budget).is_some()
        };
        if near(&home, budget) {
            // Told as tubes that meet.
            return false;
        }
        strikes |= near(&off, budget);
    }
    strikes
}

/// The ways of points along a tube.
fn paths<'t>(tube: &'t Tube<'_>, way: &'t Way, [from, to]: [f64; 2]) -> impl Iterator<Item = Path> + 't {
    let steps = (libm::ceil((to - from) / STEP).max(1.0) as usize).min(MOST_POINTS);
    (0..=steps).filter(move |_| to > from).map(move |step| {
        let home = tube.line.at(from + (to - from) * (step as f64 / steps as f64)).point;
        [home, home + way.along * way.slide]
    })
}

fn swept_box(tube: &Tube<'_>, way: &Way) -> crate::centreline::Bounds {
    let by = way.along * way.slide;
    let off = crate::centreline::Bounds { min: tube.bounds.min + by, max: tube.bounds.max + by };
    tube.bounds.with(&off)
}

/// The least distance of a solid from a straight way. Distance to a convex solid is convex along a line, so halving by
/// its slope finds the least.
fn nearest_on(solid: &Solid, [from, to]: &Path) -> f64 {
    let along = to - from;
    let rises = |fraction: f64| solid.outward(&(from + along * fraction)).dot(&along) >= 0.0;
    let (mut low, mut high) = (0.0, 1.0);
    if rises(0.0) {
        return solid.signed_distance(from);
    }
    if rises(1.0) {
        for _ in 0..HALVINGS {
            let middle = (low + high) / 2.0;
            if rises(middle) { high = middle } else { low = middle }
        }
    }
    solid.signed_distance(&(from + along * high))
}

fn shifted(solid: &Solid, by: &Vec3) -> Solid {
    match solid {
        Solid::Box(bounds) => Solid::Box(crate::centreline::Bounds { min: bounds.min + by, max: bounds.max + by }),
        Solid::Cylinder { centre, axis, half_length, radius } => {
            Solid::Cylinder { centre: centre + by, axis: *axis, half_length: *half_length, radius: *radius }
        }
    }
}
