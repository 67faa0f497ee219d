//! How far O-rings are off their sizes.

use crate::out_of_range::{OutOfRange, within};

/// Sections up to which, mm, and what they may be off either way, mm: ISO 3601-1 class B, as an O-ring maker's page quotes
/// its annex.
const CLASS_B: [[f64; 2]; 5] = [[2.25, 0.08], [3.15, 0.09], [4.50, 0.10], [6.30, 0.13], [8.40, 0.15]];

/// What a ring's section, mm, may be off either way, mm: ISO 3601-1 class B.
///
/// # Errors
/// [`OutOfRange`] for a section outside the standard's (0.8, the thinnest it has, from memory, to 8.4).
pub fn section_tolerance(section: f64) -> Result<f64, OutOfRange> {
    let section = within("O-ring section", section, [0.8, 8.4], "mm")?;
    Ok(CLASS_B.iter().find(|[most, _]| section <= *most).map_or(0.15, |[_, tolerance]| *tolerance))
}

/// What a ring's inside diameter, mm, may be off either way, mm: 0.009 ID^0.93 + 0.11, the formula of the same page.
///
/// # Errors
/// [`OutOfRange`] for a diameter outside [0.5, 700].
pub fn inside_diameter_tolerance(inside_diameter: f64) -> Result<f64, OutOfRange> {
    let diameter = within("O-ring inside diameter", inside_diameter, [0.5, 700.0], "mm")?;
    Ok(0.009 * libm::pow(diameter, 0.93) + 0.11)
}
