//! Water with a glycol.
//!
//! Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, International Institute of
//! Refrigeration, 2010: each property a polynomial of eighteen terms in the share of the mass and the temperature, for
//! shares to 60 % from the freezing point up. Against the tables of the ASHRAE Handbook of Fundamentals, for shares of
//! 10 % to 50 % from 20 to 95 degrees C, the density stays within 1.3 %, the specific heat within 2.3 % and the viscosity
//! within 8 %.

use super::coolant::Fluid;
use crate::out_of_range::{OutOfRange, within};

/// A glycol that coolants are made with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Glycol {
    /// Ethane-1,2-diol.
    Ethylene,
    /// Propane-1,2-diol.
    Propylene,
}

impl Glycol {
    fn melinder(self) -> &'static Melinder {
        match self {
            Self::Ethylene => &ETHYLENE,
            Self::Propylene => &PROPYLENE,
        }
    }

    /// Where ice begins to form in a mixture of that share of the mass, degrees C; 0 to 0.6.
    ///
    /// # Errors
    /// [`OutOfRange`] for another share.
    pub fn freezing(self, mass_fraction: f64) -> Result<f64, OutOfRange> {
        let fluid = self.melinder();
        let rich = share(mass_fraction)? * 100.0 - fluid.percent;
        Ok(fluid.freezing.iter().rev().fold(0.0, |sum, c| sum * rich + c))
    }
}

/// A mixture of a share of the mass, 0 to 0.6, at a temperature, degrees C.
///
/// # Errors
/// [`OutOfRange`] for another share, below the freezing point, and above 99 degrees C.
pub fn glycol(kind: Glycol, mass_fraction: f64, temperature: f64) -> Result<Fluid, OutOfRange> {
    let fluid = kind.melinder();
    let rich = share(mass_fraction)? * 100.0 - fluid.percent;
    let warm = within("mixture temperature", temperature, [kind.freezing(mass_fraction)?, 99.0], "°C")? - fluid.celsius;
    let sum = |table: &Table| {
        table.iter().rev().fold(0.0, |sum, row| sum * rich + row.iter().rev().fold(0.0, |part, c| part * warm + c))
    };
    Ok(Fluid {
        density: sum(&fluid.density),
        viscosity: libm::exp(sum(&fluid.viscosity)) * 1e-3,
        specific_heat: sum(&fluid.specific_heat),
    })
}

fn share(mass_fraction: f64) -> Result<f64, OutOfRange> {
    within("share of glycol", mass_fraction, [0.0, 0.6], "")
}

/// Coefficients: a row for each power of the share, a column for each power of the temperature.
type Table = [[f64; 4]; 6];

struct Melinder {
    /// Share of the mass that the powers are taken about, per cent.
    percent: f64,
    /// Temperature that the powers are taken about, degrees C.
    celsius: f64,
    /// Freezing point, degrees C, by powers of the share alone.
    freezing: [f64; 6],
    /// kg/m3.
    density: Table,
    /// J/(kg K).
    specific_heat: Table,
    /// Natural logarithm of the viscosity in mPa s.
    viscosity: Table,
}

const ETHYLENE: Melinder = Melinder {
    percent: 30.846_2,
    celsius: 31.728,
    freezing: [-15.25, -0.808, -0.013_34, -7.293e-5, 1.006e-6, 1.14e-9],
    density: [
        [1_034.0, -0.478_1, -0.002_692, 4.725e-6],
        [1.311, -0.006_876, 4.805e-5, 1.69e-8],
        [7.49e-5, 7.855e-5, -3.995e-7, 4.982e-9],
        [-1.062e-4, 1.229e-6, -1.153e-8, 0.0],
        [-9.623e-7, -7.211e-8, 0.0, 0.0],
        [4.891e-8, 0.0, 0.0, 0.0],
    ],
    specific_heat: [
        [3_737.0, 2.93, -0.004_675, -1.389e-5],
        [-17.99, 0.104_6, -4.147e-4, 1.847e-7],
        [-0.099_33, 3.516e-4, 5.109e-6, -7.138e-8],
        [0.002_61, -1.189e-6, -1.643e-7, 0.0],
        [1.537e-5, -4.272e-7, 0.0, 0.0],
        [-1.618e-6, 0.0, 0.0, 0.0],
    ],
    viscosity: [
        [0.470_5, -0.025_5, 1.782e-4, -7.669e-7],
        [0.024_71, -1.171e-4, 1.052e-6, -1.634e-8],
        [3.328e-6, 1.086e-6, 1.051e-8, -6.475e-10],
        [1.659e-6, 3.157e-9, 4.063e-10, 0.0],
        [3.089e-8, 1.831e-10, 0.0, 0.0],
        [-1.865e-9, 0.0, 0.0, 0.0],
    ],
};

const PROPYLENE: Melinder = Melinder {
    percent: 30.703_1,
    celsius: 32.708_3,
    freezing: [-13.25, -0.663_1, -0.010_94, -2.283e-4, -3.409e-6, 1.465e-8],
    density: [
        [1_018.0, -0.540_6, -0.002_666, 1.347e-5],
        [0.760_4, -0.009_45, 5.541e-5, -1.343e-7],
        [-0.002_498, 2.7e-5, -4.018e-7, 3.376e-9],
        [-1.55e-4, 2.829e-6, -7.175e-9, 0.0],
        [-1.131e-6, -2.221e-8, 0.0, 0.0],
        [2.342e-8, 0.0, 0.0, 0.0],
    ],
    specific_heat: [
        [3_882.0, 2.699, -0.001_659, -1.032e-5],
        [-13.04, 0.050_7, -4.752e-5, 1.522e-6],
        [-0.159_8, 9.534e-5, 1.167e-5, -4.87e-8],
        [3.539e-4, 3.102e-5, -2.95e-7, 0.0],
        [5.0e-5, -7.135e-7, 0.0, 0.0],
        [-4.959e-7, 0.0, 0.0, 0.0],
    ],
    viscosity: [
        [0.683_7, -0.030_45, 2.525e-4, -1.399e-6],
        [0.033_28, -3.984e-4, 4.332e-6, -1.86e-8],
        [5.453e-5, -8.6e-8, -1.593e-8, -4.465e-11],
        [-3.9e-6, 1.054e-7, -1.589e-9, 0.0],
        [-1.587e-8, 4.475e-10, 0.0, 0.0],
        [3.564e-9, 0.0, 0.0, 0.0],
    ],
};
