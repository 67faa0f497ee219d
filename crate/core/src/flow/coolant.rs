//! Which coolant, and what it is like at a temperature.

use super::glycol::{Glycol, glycol};
use super::water::water;
use crate::out_of_range::OutOfRange;

/// What a coolant is like at one temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fluid {
    /// Density, kg/m3.
    pub density: f64,
    /// Dynamic viscosity, Pa s.
    pub viscosity: f64,
    /// Specific heat at constant pressure, J/(kg K).
    pub specific_heat: f64,
}

/// A coolant by what it is made of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Coolant {
    /// Water alone.
    Water,
    /// Water with a glycol.
    Mixture {
        /// Which glycol.
        glycol: Glycol,
        /// Its share of the mass, 0 to 0.6.
        mass_fraction: f64,
    },
}

impl Coolant {
    /// What it is like at a temperature, degrees C, at the pressure of the air.
    ///
    /// # Errors
    /// [`OutOfRange`] for a temperature at which it may freeze or boil, or a share of glycol above 0.6.
    pub fn at(&self, temperature: f64) -> Result<Fluid, OutOfRange> {
        match self {
            Self::Water => water(temperature),
            Self::Mixture { glycol: kind, mass_fraction } => glycol(*kind, *mass_fraction, temperature),
        }
    }
}

impl Fluid {
    /// Kinematic viscosity, m2/s.
    pub fn kinematic_viscosity(&self) -> f64 {
        self.viscosity / self.density
    }

    /// Reynolds number of a flow, l/h, in a bore, mm.
    pub fn reynolds(&self, flow: f64, bore: f64) -> f64 {
        super::velocity(flow, bore) * bore * 1e-3 / self.kinematic_viscosity()
    }

    /// Dynamic pressure, Pa, of a flow, l/h, in a bore, mm.
    pub fn dynamic_pressure(&self, flow: f64, bore: f64) -> f64 {
        let velocity = super::velocity(flow, bore);
        0.5 * self.density * velocity * velocity
    }
}
