//! What is held against a stance: one number, so that "the best" is defined.

/// What is held against a stance, part by part. The weights are from judgement: what ruins a print weighs more than what
/// costs work, and that more than what costs time.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Cost {
    /// 0 where it fits the room; else 1000 and the millimetres that it sticks out by, so that what fits always comes first.
    pub fit: f64,
    /// Resin: 300 times the share of the bore that is a cup, so that a whole coil would rather lie flat than trap a fifth of
    /// itself.
    pub cups: f64,
    /// 60 times the share of the bore's length that is flatter than it may be, half of it for being so and half by how much.
    pub bore: f64,
    /// 60 times the share of the bore's length whose ceiling is wider than the printer's longest bridge, half of it for being so and
    /// half by how much.
    pub bridges: f64,
    /// 30 times the share of the sealing bands' length that needs support, half of it for needing any and the rest by how
    /// far round.
    pub bands: f64,
    /// 20 times the share of the outer skin that needs support.
    pub supports: f64,
    /// Filament: 3 where no end face lies flat on the plate to stand on.
    pub foot: f64,
    /// 5 times its height over the room's.
    pub height: f64,
    /// Resin: 2 times the share of the bore that is a pool.
    pub pools: f64,
}

pub(super) const NO_FIT: f64 = 1_000.0;
pub(super) const CUPS: f64 = 300.0;
pub(super) const BORE: f64 = 60.0;
pub(super) const BRIDGES: f64 = 60.0;
pub(super) const BANDS: f64 = 30.0;
pub(super) const SUPPORTS: f64 = 20.0;
pub(super) const FOOT: f64 = 3.0;
pub(super) const HEIGHT: f64 = 5.0;
pub(super) const POOLS: f64 = 2.0;

impl Cost {
    /// Their sum: the smaller, the better.
    pub fn total(&self) -> f64 {
        let bore = self.cups + self.bore + self.bridges + self.pools;
        self.fit + bore + self.bands + self.supports + self.foot + self.height
    }
}
