//! Chance that is the same everywhere.

use crate::layout::Vec3;
use core::f64::consts::TAU;

/// A stream of numbers from a seed: SplitMix64 (Steele, Lea, Flood 2014, "Fast splittable pseudorandom number
/// generators"), enough to pick test cases by.
#[derive(Debug, Clone)]
pub struct Chance(u64);

impl Chance {
    /// The stream that `seed` begins.
    pub fn of(seed: u64) -> Self {
        Self(seed)
    }

    /// 64 bits.
    pub fn word(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// A number from `low` up to, but not, `high`.
    pub fn from(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * ((self.word() >> 11) as f64 / (1u64 << 53) as f64)
    }

    /// A number from `low` up to `high`, both above zero, each power of ten as likely as the next.
    pub fn scale(&mut self, low: f64, high: f64) -> f64 {
        libm::exp(self.from(libm::log(low), libm::log(high)))
    }

    /// A whole number from `low` to `high`.
    pub fn whole(&mut self, low: usize, high: usize) -> usize {
        low + (self.word() % (high - low + 1) as u64) as usize
    }

    /// Whether something happens that does so in one of `n` cases.
    pub fn once_in(&mut self, n: usize) -> bool {
        self.whole(1, n) == 1
    }

    /// One of them.
    pub fn pick<T: Copy>(&mut self, of: &[T]) -> T {
        of[self.whole(0, of.len() - 1)]
    }

    /// A unit direction: along an axis half the time, else any.
    pub fn direction(&mut self) -> Vec3 {
        if self.once_in(2) {
            let mut axis = Vec3::zeros();
            axis[self.whole(0, 2)] = self.pick(&[1.0, -1.0]);
            return axis;
        }
        let (sin, cos) = libm::sincos(self.from(0.0, TAU));
        let z = self.from(-1.0, 1.0);
        let r = (1.0 - z * z).sqrt();
        Vec3::new(r * cos, r * sin, z)
    }

    /// A point in a cube about the datum, mm.
    pub fn point(&mut self, half: f64) -> Vec3 {
        Vec3::new(self.from(-half, half), self.from(-half, half), self.from(-half, half))
    }

    /// An angle about an axis, radians: a quarter turn half the time.
    pub fn roll(&mut self) -> f64 {
        if self.once_in(2) { self.pick(&[0.0, 0.25, 0.5, 0.75]) * TAU } else { self.from(0.0, TAU) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_stream_is_the_published_one() {
        // First words of SplitMix64 from seed 1234567, as its reference code prints them.
        let mut chance = Chance::of(1_234_567);
        assert_eq!([chance.word(), chance.word()], [6_457_827_717_110_365_317, 3_203_168_211_198_807_973]);
    }

    #[test]
    fn ranges_are_kept() {
        let mut chance = Chance::of(3);
        for _ in 0..1000 {
            assert!((2.0..5.0).contains(&chance.from(2.0, 5.0)));
            assert!((1e-6..1.0).contains(&chance.scale(1e-6, 1.0)));
            assert!((3..=5).contains(&chance.whole(3, 5)));
            assert!((chance.direction().norm() - 1.0).abs() < 1e-15);
        }
    }
}
