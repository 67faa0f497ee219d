//! What of a tube hides what of it from an eye.

use super::trace::{Spot, Trace};
use super::view::{Flat, View};
use crate::layout::Vec3;
use std::collections::HashMap;

/// Where the tube stands between an edge and the eye: in each cell of the view the samples that lie there, nearest to
/// the eye first.
pub(super) struct Cover<'a> {
    view: &'a View,
    cell: f64,
    cells: HashMap<[i64; 2], Vec<Shade>>,
}

/// A sample as a view sees it.
struct Shade {
    at: Flat,
    depth: f64,
    s: f64,
    radius: f64,
}

impl<'a> Cover<'a> {
    pub fn of(trace: &Trace<'_>, view: &'a View) -> Self {
        let cell = (2.0 * trace.largest).max(1e-6);
        let mut cells: HashMap<[i64; 2], Vec<Shade>> = HashMap::new();
        for Spot { s, sample, radius, .. } in &trace.spots {
            let at = view.flat(&sample.point);
            let shade = Shade { at, depth: view.depth(&sample.point), s: *s, radius: *radius };
            cells.entry(at.map(|x| (x / cell).floor() as i64)).or_default().push(shade);
        }
        cells.values_mut().for_each(|shades| shades.sort_by(|a, b| b.depth.total_cmp(&a.depth)));
        Self { view, cell, cells }
    }

    /// Whether some of the tube, nearer to the eye, covers the point; the part `but` of the tube does not count.
    pub fn hides(&self, point: &Vec3, but: Option<[f64; 2]>) -> bool {
        let flat = self.view.flat(point);
        let depth = self.view.depth(point);
        let [column, row] = flat.map(|x| (x / self.cell).floor() as i64);
        let around = (-1..=1).flat_map(|x| (-1..=1).map(move |y| [column + x, row + y]));
        let covers = |shade: &Shade| {
            let aside = libm::hypot(shade.at[0] - flat[0], shade.at[1] - flat[1]);
            aside < 0.97 * shade.radius
                && shade.depth > depth + 0.05 * shade.radius
                && !but.is_some_and(|[from, to]| (from..=to).contains(&shade.s))
        };
        around
            .filter_map(|at| self.cells.get(&at))
            .any(|shades| shades.iter().take_while(|shade| shade.depth > depth).any(covers))
    }
}
