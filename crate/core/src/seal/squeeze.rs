//! Squeeze and fill of an O-ring on a tube in a gland.

use crate::out_of_range::{LEAST, OutOfRange, positive, within};
use core::f64::consts::FRAC_PI_4;

/// A ring between a tube and the round wall of a gland. mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gland {
    /// Outer diameter of the tube.
    pub outer_diameter: f64,
    /// Diameter of the gland's wall, where the ring rests.
    pub gland_diameter: f64,
    /// Thickness of the ring.
    pub section: f64,
}

impl Gland {
    /// A ring between a tube and a wall.
    ///
    /// # Errors
    /// [`OutOfRange`] for a diameter or a section that is not above zero, or a gland not wider than the tube.
    pub fn of(outer_diameter: f64, gland_diameter: f64, section: f64) -> Result<Self, OutOfRange> {
        positive("outer diameter", outer_diameter, "mm")?;
        positive("O-ring section", section, "mm")?;
        within("gland diameter", gland_diameter, [outer_diameter + LEAST, f64::INFINITY], "mm")?;
        Ok(Self { outer_diameter, gland_diameter, section })
    }

    /// Room for the ring between tube and wall, mm.
    pub fn gap(&self) -> f64 {
        (self.gland_diameter - self.outer_diameter) / 2.0
    }

    /// By how much of its section the ring is squeezed: 0.2 is 20 %; below zero it does not touch both.
    pub fn squeeze(&self) -> f64 {
        1.0 - self.gap() / self.section
    }

    /// How much of a groove of a width, mm, the ring fills: 1 is all of it, and more does not go in.
    ///
    /// # Errors
    /// [`OutOfRange`] for a width that is not above zero.
    pub fn fill(&self, width: f64) -> Result<f64, OutOfRange> {
        let width = positive("groove width", width, "mm")?;
        Ok(FRAC_PI_4 * self.section * self.section / (self.gap() * width))
    }
}

/// The tube's outer diameter, mm, that squeezes a ring by a share of its section in a gland of a diameter, mm.
///
/// # Errors
/// [`OutOfRange`] for a share outside [0, 0.5], or a gland in which no tube is left.
pub fn best_outer_diameter(gland_diameter: f64, section: f64, squeeze: f64) -> Result<f64, OutOfRange> {
    let section = positive("O-ring section", section, "mm")?;
    let squeeze = within("squeeze", squeeze, [0.0, 0.5], "")?;
    let room = 2.0 * section * (1.0 - squeeze);
    Ok(within("gland diameter", gland_diameter, [room + LEAST, f64::INFINITY], "mm")? - room)
}

/// Usual squeeze of a static radial seal by its section, mm: 27 % at 1.78, less down to 18 % at 6.99 (a seal textbook's
/// chapter, ISBN 9780203744109, ch. 4, its abstract). Between them a straight line in one over the section, which comes
/// within 1.2 points of the chapter's average of 20.5 % over the standard's sections; level outside.
pub fn mean_squeeze(section: f64) -> f64 {
    let [thin, thick] = [1.0 / 1.78, 1.0 / 6.99];
    0.18 + 0.09 * ((1.0 / section - thick) / (thin - thick)).clamp(0.0, 1.0)
}
