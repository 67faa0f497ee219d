//! A radius along the tube, straight between breaks, and what it encloses.

use core::f64::consts::PI;

/// A radius along the tube: straight between breaks.
#[derive(Debug, Clone, PartialEq)]
pub struct Section {
    /// Arc length and radius at each break, mm; arc lengths strictly ascending, from 0 to the tube's length, or from
    /// where a piece of it begins to where that ends.
    pub breaks: Vec<[f64; 2]>,
}

impl Section {
    /// `radius` all along, running out at `slope` over the last `end` mm at both ends.
    pub(super) fn with_ends(radius: f64, end: f64, slope: f64, length: f64) -> Self {
        if end <= 0.0 {
            return Self { breaks: vec![[0.0, radius], [length, radius]] };
        }
        let tip = radius + slope * end;
        let mut breaks = vec![[0.0, tip], [end, radius]];
        if length - end > end {
            breaks.push([length - end, radius]);
        }
        breaks.push([length, tip]);
        Self { breaks }
    }

    /// Arc lengths, mm, at which one of several changes its course, in order.
    pub fn breaks_of<'a>(sections: impl IntoIterator<Item = &'a Self>) -> Vec<f64> {
        let mut breaks: Vec<f64> =
            sections.into_iter().flat_map(|section| &section.breaks).map(|[at, _]| *at).collect();
        breaks.sort_by(f64::total_cmp);
        breaks.dedup();
        breaks
    }

    /// The arc lengths of its ends, mm.
    pub fn span(&self) -> [f64; 2] {
        [self.breaks[0][0], self.breaks[self.breaks.len() - 1][0]]
    }

    /// What of it lies between two arc lengths inside it.
    pub(super) fn between(&self, from: f64, to: f64) -> Self {
        let inside = self.breaks.iter().copied().filter(|[at, _]| *at > from && *at < to);
        let ends = [from, to].map(|s| [s, self.radius(s)]);
        Self { breaks: [ends[0]].into_iter().chain(inside).chain([ends[1]]).collect() }
    }

    /// The radius at arc length `s`, mm; the ends' beyond them.
    pub fn radius(&self, s: f64) -> f64 {
        let next = self.breaks.partition_point(|[at, _]| *at <= s).clamp(1, self.breaks.len() - 1);
        let [[s0, r0], [s1, r1]] = [self.breaks[next - 1], self.breaks[next]];
        r0 + (r1 - r0) * ((s - s0) / (s1 - s0)).clamp(0.0, 1.0)
    }

    /// Volume enclosed, mm3: frusta carried along the centreline.
    pub fn volume(&self) -> f64 {
        self.breaks
            .windows(2)
            .map(|pair| {
                let [[s0, r0], [s1, r1]] = [pair[0], pair[1]];
                PI / 3.0 * (r0 * r0 + r0 * r1 + r1 * r1) * (s1 - s0)
            })
            .sum()
    }

    /// The largest radius anywhere, mm.
    pub fn largest(&self) -> f64 {
        self.breaks.iter().map(|[_, radius]| *radius).fold(0.0, f64::max)
    }

    /// The largest radius between two arc lengths, mm.
    pub fn largest_between(&self, from: f64, to: f64) -> f64 {
        let inside = self.breaks.iter().filter(|[at, _]| *at > from && *at < to).map(|[_, radius]| *radius);
        inside.fold(self.radius(from).max(self.radius(to)), f64::max)
    }

    /// Puts `points` in place of what runs between the first and the last of them, which lie on the section.
    pub(super) fn put(&mut self, points: &[[f64; 2]]) {
        let (Some([from, _]), Some([to, _])) = (points.first(), points.last()) else { return };
        let before = self.breaks.partition_point(|[at, _]| at < from);
        let after = self.breaks.partition_point(|[at, _]| at <= to);
        self.breaks.splice(before..after, points.iter().copied());
    }
}
