//! The fewest pieces of a run that fit the printer, and where to cut.
//!
//! A part of what fits, fits. So the furthest cut from the start, and from there the furthest again, needs the fewest pieces;
//! the same from the end gives the earliest place of each cut, and between the two each cut may lie. Of those places one on a
//! straight is taken before one in a bend, and the one that leaves the pieces most alike. What bounds the work is a count
//! of tries.

use super::Frame;
use super::judge::Judge;
use super::room::FITS_WITHIN;
use super::search::fitting;
use crate::centreline::{Centreline, Shape};
use crate::design::Way;
use crate::engine::Stages;
use crate::layout::PlacedRun;
use crate::quantity::MOST_CUTS;
use crate::tube::{Cutting, Joint, JointRoom, Profile};

/// How near to the furthest place a search comes, mm.
const NEAR: f64 = 0.25;
/// Room that a piece must leave, mm: more than what cutting bends into stretches is off by, so that the stance search, which
/// weighs other things as well, finds room for it too.
const SPARE: f64 = 0.05;
/// Choices of places: the one that leaves pieces alike, and others within each cut's span.
pub(super) const CHOICES: u32 = 6;

/// A run, and what its pieces must fit.
pub(super) struct CutSearch<'a> {
    stages: &'a Stages<'a>,
    run: usize,
    line: &'a Centreline,
    placed: &'a PlacedRun,
    plain: &'a Profile,
    room: JointRoom<'a>,
    /// Pieces that may still be tried.
    left: usize,
    hint: Option<Frame>,
}

/// The fewest pieces.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Fewest {
    /// For each cut the earliest and the latest place that do, mm.
    pub spans: Vec<[f64; 2]>,
}

/// Why there are none.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum NoCuts {
    /// From an arc length on, nothing fits up to the next place that has room for a joint.
    NoRoom {
        /// mm; where the piece would begin.
        from: f64,
        /// mm; the next place; none where there is none any more.
        next: Option<f64>,
    },
    /// It would take more cuts than a run may have.
    TooMany,
    /// The work that is allowed did not do.
    Unfinished,
}

impl<'a> CutSearch<'a> {
    pub fn of(stages: &'a Stages<'a>, run: usize, line: &'a Centreline, plain: &'a Profile, most: usize) -> Self {
        let placed = &stages.layout.runs[run];
        let room = JointRoom::of(&stages.design, placed, line, plain);
        Self { stages, run, line, placed, plain, room, left: most, hint: None }
    }

    /// The cuts' places, as few as do; none at all where the whole fits.
    pub fn fewest(&mut self) -> Result<Fewest, NoCuts> {
        let mut forward: Vec<Joint> = Vec::new();
        while !self.fits(forward.last().copied(), None)? {
            if forward.len() == MOST_CUTS {
                return Err(NoCuts::TooMany);
            }
            let before = forward.last().copied();
            let (number, taken) = (forward.len() as u32 + 1, before.map_or(f64::NEG_INFINITY, |joint| joint.span()[1]));
            let places: Vec<[f64; 2]> = self.room.places(number, taken).into_iter().map(|(span, _)| span).collect();
            let reached = furthest(&places, |at| match self.room.joint(0, number, at, taken) {
                Some(joint) => self.fits(before, Some(joint)),
                None => Ok(false),
            })?;
            let joint = reached.and_then(|at| self.room.joint(0, number, at, taken));
            let from = before.map_or(0.0, |joint| joint.mouth());
            forward.push(joint.ok_or(NoCuts::NoRoom { from, next: places.first().map(|span| span[0]) })?);
        }
        let mut spans: Vec<[f64; 2]> = forward.iter().map(|joint| [joint.at; 2]).collect();
        let mut after: Option<Joint> = None;
        for (index, latest) in forward.iter().enumerate().rev() {
            let number = index as u32 + 1;
            let until = after.map_or(f64::INFINITY, |joint| joint.span()[0]);
            let places = self.room.places(number, f64::NEG_INFINITY).into_iter().filter_map(|([from, to], size)| {
                let to = to.min(latest.at).min(until - size.after(number));
                (from <= to).then_some([from, to])
            });
            // Seen from the end, the furthest place is the earliest.
            let backward: Vec<[f64; 2]> = places.map(|[from, to]| [-to, -from]).rev().collect();
            let reached = furthest(&backward, |at| match self.room.joint(0, number, -at, f64::NEG_INFINITY) {
                Some(joint) => self.fits(Some(joint), after),
                None => Ok(false),
            })?;
            let earliest = reached.and_then(|at| self.room.joint(0, number, -at, f64::NEG_INFINITY)).unwrap_or(*latest);
            spans[index][0] = earliest.at;
            after = Some(earliest);
        }
        Ok(Fewest { spans })
    }

    /// A choice of cuts within those places, one place a cut: the first leaves the pieces most alike, those after it try other
    /// places up to [`CHOICES`]; none where that choice has none.
    pub fn choice(&mut self, fewest: &Fewest, choice: u32) -> Result<Option<Vec<f64>>, NoCuts> {
        let mut chosen: Vec<Joint> = Vec::new();
        for (index, span) in fewest.spans.iter().enumerate() {
            let before = chosen.last().copied();
            let taken = before.map_or(f64::NEG_INFINITY, |joint| joint.span()[1]);
            let number = index as u32 + 1;
            let all: Vec<[f64; 2]> = self.room.places(number, taken).into_iter().map(|(span, _)| span).collect();
            let within = clipped(&all, *span);
            // From an earlier cut than the latest the next is not reached as far.
            let reached = furthest(&within, |at| match self.room.joint(0, number, at, taken) {
                Some(joint) => self.fits(before, Some(joint)),
                None => Ok(false),
            })?;
            let Some(latest) = reached else { return Ok(None) };
            let within = clipped(&within, [span[0], latest]);
            let straight = self.on_straights(&within);
            let best = if straight.is_empty() { &within } else { &straight };
            let from = before.map_or(0.0, |joint| joint.at);
            let even = from + (self.line.length - from) / (fewest.spans.len() - index + 1) as f64;
            let wish = match choice.checked_sub(1) {
                None => even,
                Some(step) => span[0] + (latest - span[0]) * f64::from(step) / f64::from(CHOICES - 2),
            };
            let place = nearest_round(best, wish);
            let Some(joint) = place.and_then(|at| self.room.joint(0, number, at, taken)) else { return Ok(None) };
            chosen.push(joint);
        }
        Ok(Some(chosen.iter().map(|joint| joint.at).collect()))
    }

    /// Whether the piece between two joints, or the run's own ends, fits.
    fn fits(&mut self, before: Option<Joint>, after: Option<Joint>) -> Result<bool, NoCuts> {
        self.left = self.left.checked_sub(1).ok_or(NoCuts::Unfinished)?;
        let index = usize::from(before.is_some());
        let cutting = Cutting { joints: before.into_iter().chain(after).collect(), left_out: Vec::new() };
        let Some(profile) = cutting.pieces(self.plain).into_iter().nth(index) else { return Ok(false) };
        let part = self.line.part(profile.span());
        let process = &self.stages.design.process;
        let way: Option<Way> = process.material.way;
        let bore = self.stages.design.runs[self.run].tube.bore;
        let bands = [self.placed.start.inside, self.placed.end.inside];
        let judge = Judge::of(&part, &profile.from_its_start(), bore, bands, &process.printer, way);
        let ends = [part.at(0.0).point, part.at(part.length).point];
        if (ends[1] - ends[0]).norm() > judge.room.diagonal() {
            return Ok(false);
        }
        let spare = if before.is_none() && after.is_none() { -FITS_WITHIN } else { SPARE };
        let found = fitting(&judge, self.hint, spare);
        self.hint = found.or(self.hint);
        Ok(found.is_some())
    }

    /// What of those places lies on straights with the whole spigot.
    fn on_straights(&self, places: &[[f64; 2]]) -> Vec<[f64; 2]> {
        let length = self.stages.design.process.joint.length;
        let straights = self.line.pieces.iter().filter(|piece| piece.shape == Shape::Straight);
        straights.flat_map(|piece| clipped(places, [piece.from + length, piece.to()])).collect()
    }
}

fn clipped(places: &[[f64; 2]], [from, to]: [f64; 2]) -> Vec<[f64; 2]> {
    let clip = places.iter().map(|[a, b]| [a.max(from), b.min(to)]);
    clip.filter(|[a, b]| a <= b).collect()
}

/// The place nearest to a wish, a whole millimetre or a tenth of one where there is such a place.
fn nearest_round(places: &[[f64; 2]], wish: f64) -> Option<f64> {
    let near = |[from, to]: &[f64; 2]| {
        let at = wish.clamp(*from, *to);
        let inside = |value: f64| (*from..=*to).contains(&value);
        let rounded = [1.0, 10.0, 1000.0].into_iter().flat_map(|parts| {
            let scaled = at * parts;
            [libm::round(scaled), libm::floor(scaled), libm::ceil(scaled)].map(|value| value / parts)
        });
        rounded.into_iter().find(|value| inside(*value)).unwrap_or(at)
    };
    places.iter().map(near).min_by(|a, b| (a - wish).abs().total_cmp(&(b - wish).abs()))
}

/// The furthest place of ascending intervals that does, where all before one that does do; none where the first does not.
fn furthest<E>(places: &[[f64; 2]], mut does: impl FnMut(f64) -> Result<bool, E>) -> Result<Option<f64>, E> {
    let whole: f64 = places.iter().map(|[from, to]| to - from).sum();
    let place = |along: f64| {
        let mut left = along;
        for [from, to] in places {
            if left <= to - from {
                return from + left;
            }
            left -= to - from;
        }
        places.last().map_or(0.0, |[_, to]| *to)
    };
    let (Some([first, _]), Some([_, last])) = (places.first(), places.last()) else { return Ok(None) };
    if !does(*first)? {
        return Ok(None);
    }
    if does(*last)? {
        return Ok(Some(*last));
    }
    let (mut low, mut high) = (0.0, whole);
    while high - low > NEAR {
        let middle = f64::midpoint(low, high);
        if does(place(middle))? { low = middle } else { high = middle }
    }
    Ok(Some(if low == 0.0 { *first } else { place(low) }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_furthest_place_is_found_across_gaps() {
        let places = [[0.0, 10.0], [20.0, 30.0], [50.0, 60.0]];
        let up_to = |most: f64| furthest(&places, |at| Ok::<bool, ()>(at <= most)).unwrap();
        for most in [0.0, 3.0, 9.9, 15.0, 24.0, 45.0, 59.0] {
            let found = up_to(most).unwrap();
            let exact = places.iter().filter(|span| span[0] <= most).map(|span| span[1].min(most)).next_back().unwrap();
            assert!(found <= most && exact - found <= NEAR, "{most}: {found}");
        }
        assert_eq!((up_to(-1.0), up_to(70.0)), (None, Some(60.0)));
        assert_eq!(furthest(&[], |_| Ok::<bool, ()>(true)).unwrap(), None);
    }

    #[test]
    fn places_are_round_numbers_where_they_can_be() {
        assert_eq!(nearest_round(&[[10.2, 20.0]], 15.4), Some(15.0));
        assert_eq!(nearest_round(&[[10.2, 10.6]], 15.4), Some(10.6));
        assert_eq!(nearest_round(&[[10.21, 10.29]], 0.0), Some(10.21));
        assert_eq!(nearest_round(&[[0.0, 1.0], [9.0, 12.0]], 8.0), Some(9.0));
    }
}
