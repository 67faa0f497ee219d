//! One run with everything that is told about it in a table or a drawing.

use super::features::{Feature, Point, features, points};
use crate::centreline::{self, Centreline};
use crate::design::{Design, Fitting, Run};
use crate::layout::PlacedRun;
use crate::tongue::Tongue;
use crate::tube::Profile;

/// A made run, to be told.
#[derive(Debug, Clone, Copy)]
pub struct ToldRun<'a> {
    /// The design it is of.
    pub design: &'a Design,
    /// The run as stated.
    pub run: &'a Run,
    /// Its ends and stations, placed.
    pub placed: &'a PlacedRun,
    /// Its centreline.
    pub line: &'a Centreline,
    /// Its skins.
    pub profile: &'a Profile,
    /// Mass of the tube, g.
    pub mass: f64,
    /// The fittings that its start and its end sit in.
    pub fittings: [&'a Fitting; 2],
    /// The language of what people read of it.
    pub tongue: &'a Tongue,
}

impl ToldRun<'_> {
    pub(super) fn features(&self) -> Vec<Feature> {
        features(self.line)
    }

    pub(super) fn points(&self) -> Vec<Point> {
        points(self.line, &self.features())
    }

    /// How far the tube's skin reaches along x, y and z, mm: the size of the report's bounds.
    pub(super) fn outside_size(&self) -> [f64; 3] {
        let breaks: Vec<f64> = self.profile.outer.breaks.iter().map(|[at, _]| *at).collect();
        let bounds = centreline::bounds(self.line, &breaks, |s| self.profile.outer.radius(s));
        (bounds.max - bounds.min).into()
    }

    /// The ports at its start and its end.
    pub(super) fn port_names(&self) -> [&str; 2] {
        [&self.run.from, &self.run.to]
    }
}
