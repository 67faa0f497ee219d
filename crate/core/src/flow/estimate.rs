//! A number with what it may be off by.

use core::iter::Sum;
use core::ops::{Add, Mul};

/// Share by which a formula used outside its published range is taken to be off, either way: common practice, no
/// source. What handbooks give for one bend differs by less.
pub const OUTSIDE: f64 = 0.3;

/// A number, the least and the most that it may be, and whether its formula was used inside its published range.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Estimate {
    /// What the formula gives.
    pub nominal: f64,
    /// The least that it may be.
    pub low: f64,
    /// The most that it may be.
    pub high: f64,
    /// Whether every formula in it was inside its published range.
    pub trusted: bool,
}

impl Estimate {
    /// Nothing.
    pub const ZERO: Self = Self::exact(0.0);

    /// A number whose formula is inside its published range: no band is carried.
    pub const fn exact(nominal: f64) -> Self {
        Self { nominal, low: nominal, high: nominal, trusted: true }
    }

    /// A number whose formula is outside its published range: 30 % either way.
    pub fn outside(nominal: f64) -> Self {
        Self { nominal, low: nominal * (1.0 - OUTSIDE), high: nominal * (1.0 + OUTSIDE), trusted: false }
    }

    /// The one or the other.
    pub fn judged(nominal: f64, trusted: bool) -> Self {
        if trusted { Self::exact(nominal) } else { Self::outside(nominal) }
    }
}

/// Bands add up: one cause, such as a wrong viscosity, moves them all the same way.
impl Add for Estimate {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self {
            nominal: self.nominal + other.nominal,
            low: self.low + other.low,
            high: self.high + other.high,
            trusted: self.trusted && other.trusted,
        }
    }
}

/// Times a number that is not negative.
impl Mul<f64> for Estimate {
    type Output = Self;

    fn mul(self, by: f64) -> Self {
        Self { nominal: self.nominal * by, low: self.low * by, high: self.high * by, ..self }
    }
}

impl Sum for Estimate {
    fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
        parts.fold(Self::ZERO, Add::add)
    }
}
