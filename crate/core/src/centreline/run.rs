//! The centreline of each run, and the largest run radius where the asked one is in the way.

use super::corners::through_corners;
use super::link::{Pose, link_line};
use super::{Centreline, Obstacle, RunLine};
use crate::design::{Design, Run, Station};
use crate::layout::{Layout, PlacedRun, Vec3};

/// Halvings of the search for the largest radius: from any radius in range to under a millionth of it.
const HALVINGS: u32 = 24;

/// The centrelines of all runs, in order.
pub fn lines(design: &Design, layout: &Layout) -> Vec<RunLine> {
    design.runs.iter().zip(&layout.runs).map(|(run, placed)| line_of(run, placed)).collect()
}

fn line_of(run: &Run, placed: &PlacedRun) -> RunLine {
    let (line, obstacles) = at_radius(run, placed, run.bend_radius);
    let largest_run_radius = (!obstacles.is_empty()).then(|| largest_radius(run, placed)).flatten();
    let skeleton = [placed.start.end, placed.start.lead_end]
        .into_iter()
        .chain(placed.corners.iter().map(|corner| corner.at))
        .chain([placed.end.lead_end, placed.end.end])
        .collect::<Vec<Vec3>>();
    RunLine { line, obstacles, largest_run_radius, skeleton }
}

/// The run's centreline if its own radius were `radius`; corners keep radii of their own.
fn at_radius(run: &Run, placed: &PlacedRun, radius: f64) -> (Option<Centreline>, Vec<Obstacle>) {
    if placed.corners.is_empty() {
        let pose = |end: &crate::layout::EndPose, sign: f64| Pose { at: end.lead_end, heading: end.out * sign };
        return link_line(placed, &pose(&placed.start, 1.0), &pose(&placed.end, -1.0), radius);
    }
    let radii: Vec<f64> =
        run.route.iter().map(|Station::Corner(corner)| corner.bend_radius.unwrap_or(radius)).collect();
    through_corners(placed, &radii, radius)
}

/// The largest run radius, below the asked one, that leaves no obstacle.
fn largest_radius(run: &Run, placed: &PlacedRun) -> Option<f64> {
    let clear = |radius: f64| at_radius(run, placed, radius).1.is_empty();
    let (mut good, mut bad) = (0.0, run.bend_radius);
    for _ in 0..HALVINGS {
        let middle = (good + bad) / 2.0;
        if clear(middle) { good = middle } else { bad = middle }
    }
    (good > 0.0).then_some(good)
}
