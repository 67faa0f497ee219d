//! Squeeze and fill over all that may be off.

use super::squeeze::Gland;
use crate::out_of_range::{OutOfRange, positive, within};

/// How far each size may be off either way, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tolerances {
    /// The tube's outer diameter as printed.
    pub outer_diameter: f64,
    /// The gland's diameter.
    pub gland_diameter: f64,
    /// The ring's section.
    pub section: f64,
}

/// A number at its sizes as stated and over the stack of what they may be off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stack {
    /// With every size as stated.
    pub nominal: f64,
    /// Least and most with every size off as badly as it may be.
    pub worst: [f64; 2],
    /// Least and most by the root of the sum of squares: what nearly all fits keep, if each size is off by chance and
    /// independently of the others.
    pub likely: [f64; 2],
}

impl Stack {
    /// The squeeze over the stack. It grows with the tube and the section and falls with the gland, so its worst cases are
    /// at the ends of all three; the likely ones are by its slopes at the stated sizes.
    ///
    /// # Errors
    /// [`OutOfRange`] for a tolerance that is negative or takes all of its size, or a gland that may be no wider than the
    /// tube.
    pub fn of_squeeze(gland: &Gland, tolerances: &Tolerances) -> Result<Self, OutOfRange> {
        let [loose, tight] = extremes(gland, tolerances)?;
        let (gap, section) = (gland.gap(), gland.section);
        let across = 1.0 / (2.0 * section);
        let spread = root_of_squares([
            tolerances.outer_diameter * across,
            tolerances.gland_diameter * across,
            tolerances.section * gap / (section * section),
        ]);
        let nominal = gland.squeeze();
        Ok(Self { nominal, worst: [loose.squeeze(), tight.squeeze()], likely: [nominal - spread, nominal + spread] })
    }

    /// The fill of a groove of a width, mm, over the stack; the width is taken as it is.
    ///
    /// # Errors
    /// As [`Stack::of_squeeze`], and for a width that is not above zero.
    pub fn of_fill(gland: &Gland, width: f64, tolerances: &Tolerances) -> Result<Self, OutOfRange> {
        positive("groove width", width, "mm")?;
        let [loose, tight] = extremes(gland, tolerances)?;
        let nominal = gland.fill(width)?;
        let spread = nominal
            * root_of_squares([
                tolerances.outer_diameter / (2.0 * gland.gap()),
                tolerances.gland_diameter / (2.0 * gland.gap()),
                2.0 * tolerances.section / gland.section,
            ]);
        Ok(Self {
            nominal,
            worst: [loose.fill(width)?, tight.fill(width)?],
            likely: [nominal - spread, nominal + spread],
        })
    }
}

/// The loosest and the tightest fit.
fn extremes(gland: &Gland, tolerances: &Tolerances) -> Result<[Gland; 2], OutOfRange> {
    let off = |what, by: f64, size: f64| within(what, by, [0.0, size * 0.999], "mm");
    let outer = off("tolerance of the outer diameter", tolerances.outer_diameter, gland.outer_diameter)?;
    let wall = off("tolerance of the gland", tolerances.gland_diameter, gland.gland_diameter)?;
    let section = off("tolerance of the section", tolerances.section, gland.section)?;
    let fit = |way: f64| {
        Gland::of(gland.outer_diameter + way * outer, gland.gland_diameter - way * wall, gland.section + way * section)
    };
    Ok([fit(-1.0)?, fit(1.0)?])
}

fn root_of_squares(parts: [f64; 3]) -> f64 {
    parts.iter().map(|part| part * part).sum::<f64>().sqrt()
}
