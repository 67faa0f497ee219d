//! A drawn run, ready to be held against others.

use crate::centreline::{Bounds, Centreline};
use crate::check::OneRun;
use crate::distance::Body;
use core::f64::consts::FRAC_PI_2;
use std::cell::OnceCell;

/// A drawn run with its nested boxes and the arc lengths that count.
pub(in crate::check) struct Tube<'a> {
    pub run: OneRun<'a>,
    pub line: &'a Centreline,
    pub radius: f64,
    pub clearance: f64,
    /// The collars of its joints: arc lengths, and outer radius, mm.
    pub collars: Vec<([f64; 2], f64)>,
    /// The box round the centreline from mouth to mouth and beyond.
    pub bounds: Bounds,
    body: OnceCell<Body<'a>>,
}

impl<'a> Tube<'a> {
    /// None where the run has no centreline.
    pub fn of(run: OneRun<'a>, clearance: f64) -> Option<Self> {
        let line = run.drawn.line.as_ref().filter(|line| !line.pieces.is_empty())?;
        let bounds = crate::centreline::bounds(line, &[], |_| 0.0);
        let radius = run.run.largest_radius();
        let joints = run.cutting().joints;
        let collars = joints.iter().map(|joint| (joint.collar_span(), joint.size.collar())).collect();
        Some(Self { run, line, radius, clearance, collars, bounds, body: OnceCell::new() })
    }

    /// Its boxes, made when first asked for.
    pub fn body(&self) -> &Body<'a> {
        self.body.get_or_init(|| Body::new(self.line))
    }

    /// Its parts with their radii within `on`, mm of arc length: the tube all along, and each collar.
    pub fn parts(&self, on: [f64; 2]) -> impl Iterator<Item = ([f64; 2], f64)> {
        let collars = self.collars.iter().map(move |([from, to], radius)| ([from.max(on[0]), to.min(on[1])], *radius));
        std::iter::once((on, self.radius)).chain(collars.filter(|([from, to], _)| from < to))
    }

    /// Largest radius anywhere, mm.
    pub fn widest(&self) -> f64 {
        self.collars.iter().map(|(_, radius)| *radius).fold(self.radius, f64::max)
    }

    /// From mouth to mouth: what sticks in a fitting is inside its collar, which is held against everything itself.
    pub fn outside(&self) -> [f64; 2] {
        [self.run.placed.start.inside, self.line.length - self.run.placed.end.inside]
    }

    /// Half the circle on which a tube comes back beside itself at exactly the clearance, mm of arc length.
    ///
    /// A curve that nowhere bends tighter than that circle cannot come back within the clearance sooner (Schur's
    /// comparison theorem: of all curves as long and no more bent, the arc has the shortest chord). Nearer points along
    /// the curve are near only because they are the same bend.
    pub fn half_turn(&self) -> f64 {
        FRAC_PI_2 * (2.0 * self.radius + self.clearance)
    }

    /// The arc lengths that count against something at which the run starts or ends: by then it has had its lead and
    /// room for a half turn.
    pub fn clear_of_ends(&self, start: bool, end: bool) -> [f64; 2] {
        let [mut from, mut to] = self.outside();
        if start {
            from = self.run.placed.start.straight + self.half_turn();
        }
        if end {
            to = self.line.length - self.run.placed.end.straight - self.half_turn();
        }
        [from, to]
    }
}
