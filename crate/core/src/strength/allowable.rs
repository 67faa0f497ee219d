//! What a material allows, factor by factor.

use super::wall::walls;
use crate::out_of_range::{OutOfRange, positive, within};

/// One reason why less than the sheet's strength may be used.
#[derive(Debug, Clone, PartialEq)]
pub struct Factor {
    /// What it is for, in words.
    pub name: String,
    /// What the strength is multiplied by, above 0; a safety factor of 4 is 0.25 here.
    pub times: f64,
    /// Where it comes from.
    pub source: String,
}

impl Factor {
    /// A share of the strength that is left: across the layers, in the warm, after years.
    pub fn share(name: &str, times: f64, source: &str) -> Self {
        Self { name: name.to_owned(), times, source: source.to_owned() }
    }

    /// A safety factor: the strength is divided by it.
    pub fn safety(name: &str, factor: f64, source: &str) -> Self {
        Self::share(name, 1.0 / factor, source)
    }
}

/// A strength and all that takes from it.
#[derive(Debug, Clone, PartialEq)]
pub struct Allowable {
    /// Tensile strength of the sheet, MPa.
    pub strength: f64,
    /// What takes from it, in order.
    pub factors: Vec<Factor>,
}

impl Allowable {
    /// The stress that may be used, MPa: the strength times every factor.
    ///
    /// # Errors
    /// [`OutOfRange`] for a strength that is not above zero or a factor outside (0, 1].
    pub fn stress(&self) -> Result<f64, OutOfRange> {
        let mut stress = positive("strength", self.strength, "MPa")?;
        for factor in &self.factors {
            stress *= within("factor on the strength", factor.times, [1e-6, 1.0], "")?;
        }
        Ok(stress)
    }
}

/// How much of the allowed stress is used: 1 is all of it.
///
/// # Errors
/// [`OutOfRange`] for an allowed stress that is not above zero.
pub fn utilisation(stress: f64, allowed: f64) -> Result<f64, OutOfRange> {
    Ok(stress / positive("allowed stress", allowed, "MPa")?)
}

/// The pressure, MPa, at which Lame's hoop stress at the bore, times `factor` (1 for a straight, the torus factor inside a
/// bend), is all of the allowed stress, MPa. Diameters mm.
///
/// # Errors
/// [`OutOfRange`] for an allowed stress that is not above zero, a factor below 1, or diameters that leave no wall.
pub fn allowed_pressure(allowed: f64, outer_diameter: f64, bore: f64, factor: f64) -> Result<f64, OutOfRange> {
    let allowed = positive("allowed stress", allowed, "MPa")?;
    let factor = within("bend's factor", factor, [1.0, f64::INFINITY], "")?;
    let [inner, outer] = walls(outer_diameter, bore)?.map(|diameter| diameter * diameter);
    Ok(allowed / factor * (outer - inner) / (outer + inner))
}

/// Design stress, MPa, of a pipe material by ISO 12162: minimum required strength over the design coefficient C.
///
/// # Errors
/// [`OutOfRange`] for a strength that is not above zero or a coefficient below 1.
pub fn design_stress(minimum_required_strength: f64, coefficient: f64) -> Result<f64, OutOfRange> {
    let strength = positive("minimum required strength", minimum_required_strength, "MPa")?;
    Ok(strength / within("design coefficient", coefficient, [1.0, f64::INFINITY], "")?)
}

/// Pressure, MPa, that a design stress allows by the form that the pipe standards use: 2 s t / (OD - t). mm, MPa.
///
/// # Errors
/// [`OutOfRange`] for a stress or a wall that is not above zero, or a wall of half the outer diameter or more.
pub fn iso_pressure(stress: f64, outer_diameter: f64, wall: f64) -> Result<f64, OutOfRange> {
    let stress = positive("design stress", stress, "MPa")?;
    let wall = positive("wall", wall, "mm")?;
    let outer = within("outer diameter", outer_diameter, [2.0 * wall * (1.0 + 1e-6), f64::INFINITY], "mm")?;
    Ok(2.0 * stress * wall / (outer - wall))
}
