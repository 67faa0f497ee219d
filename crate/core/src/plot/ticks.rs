//! Axes with ticks in steps of 1, 2 or 5 times a power of ten.

use super::fault::LARGEST;
use super::figures;
use crate::tongue::marked;

/// One axis: its ends and its ticks.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Axis {
    pub low: f64,
    pub high: f64,
    pub step: f64,
    pub ticks: Vec<f64>,
    /// What stands before decimals.
    pub decimal: char,
}

/// How far an axis goes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Ends {
    /// To ticks at both ends.
    Ticks,
    /// From a tick to exactly the highest value.
    Exact,
}

impl Axis {
    /// An axis over `low` to `high` with about `count` steps. Where both are the same, it reaches to both sides of them.
    ///
    /// Both are at most [`LARGEST`] in size, which [`super::fault`] has seen to.
    pub fn over(low: f64, high: f64, count: usize, ends: Ends) -> Self {
        let (low, high) = opened(low.clamp(-LARGEST, LARGEST), high.clamp(-LARGEST, LARGEST));
        let step = step_of((high - low) / count.max(1) as f64);
        // A hair's breadth off, so that 0.3 / 0.1 is three steps and not two and a bit.
        let first = libm::floor(low / step + 1e-9);
        let last = match ends {
            Ends::Ticks => libm::ceil(high / step - 1e-9),
            Ends::Exact => libm::floor(high / step + 1e-9),
        };
        // The step is at least a fraction of the span, so this is a handful; the bound is for arithmetic gone wrong.
        let steps = (last - first).clamp(0.0, 100.0) as usize;
        let ticks: Vec<f64> = (0..=steps).map(|place| (first + place as f64) * step).collect();
        let low = ticks.first().copied().unwrap_or(low);
        let high = if ends == Ends::Exact { high } else { ticks.last().copied().unwrap_or(high) };
        Self { low, high, step, ticks, decimal: '.' }
    }

    /// The same with another mark before decimals.
    pub fn written(self, decimal: char) -> Self {
        Self { decimal, ..self }
    }

    /// An axis without ticks, for a chart that has none that way.
    pub fn bare() -> Self {
        Self { low: 0.0, high: 1.0, step: 1.0, ticks: Vec::new(), decimal: '.' }
    }

    /// How far along a value is: 0 at the low end, 1 at the high one.
    pub fn share(&self, value: f64) -> f64 {
        (value - self.low) / (self.high - self.low)
    }

    /// The words at a tick.
    pub fn told(&self, tick: f64) -> String {
        marked(&figures::tick(tick, self.step), self.decimal)
    }

    /// Room that the number at the last tick takes beyond the axis, px, and a little more.
    pub fn overhang(&self, size: f64) -> f64 {
        6.0 + (0.5 * self.widest(size)).max(10.0)
    }

    /// The widest words at any tick, in the unit of `size`.
    pub fn widest(&self, size: f64) -> f64 {
        self.ticks.iter().map(|&tick| super::letters::width_of(&self.told(tick), size)).fold(0.0, f64::max)
    }
}

/// Ends that are some way apart, so that there is a scale between them.
fn opened(low: f64, high: f64) -> (f64, f64) {
    let (low, high) = (low.min(high), low.max(high));
    let least = 1e-9 * low.abs().max(high.abs()).max(1e-3);
    if high - low > least {
        return (low, high);
    }
    // Next to nothing has no size to take a share of.
    if low.abs().max(high.abs()) < 1e-9 {
        return (low.min(0.0), 1.0);
    }
    let aside = 0.5 * high.abs().max(low.abs());
    (low - aside, high + aside)
}

/// The least of 1, 2, 5 times a power of ten that is at least `rough`, which is above zero.
fn step_of(rough: f64) -> f64 {
    let power = libm::floor(libm::log10(rough));
    // A power of ten below one is divided by, since 0.1 is not exact and 1 / 10 is the nearest there is.
    let scaled =
        |digit: f64| if power < 0.0 { digit / libm::pow(10.0, -power) } else { digit * libm::pow(10.0, power) };
    [1.0, 2.0, 5.0].map(scaled).into_iter().find(|step| *step >= rough * (1.0 - 1e-9)).unwrap_or(scaled(10.0))
}
