//! Water at the pressure of the air.
//!
//! Source: IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa: volume, specific
//! heat and viscosity as functions of temperature alone. It agrees with the formulations of IAPWS R6-95 and R12-08 to
//! 0.0001 % in density and 0.1 % in viscosity where water is a stable liquid. From 0.1 MPa to 0.2 MPa the density grows by
//! 0.005 %, which no loop notices.

use super::coolant::Fluid;
use crate::out_of_range::{OutOfRange, within};

/// Temperatures at which water is a stable liquid at the pressure of the air, degrees C.
pub const RANGE: [f64; 2] = [0.01, 99.0];

/// Specific gas constant of water, J/(kg K).
const GAS: f64 = 461.518_05;
/// Pressure that the release is for, Pa.
const PRESSURE: f64 = 1e5;
/// Temperature that it scales by, K.
const SCALE: f64 = 10.0;
/// Coefficient and power of the terms in `SCALE / (593 K - T)` and in `SCALE / (T - 232 K)`: of the Gibbs energy, whose
/// second derivative is the specific heat, and of the volume.
const HEAT_HIGH: [(f64, f64); 3] = [(-1.661_470_539e5, 4.0), (2.708_781_640e6, 5.0), (-1.557_191_544e8, 7.0)];
const HEAT_LOW: [(f64, f64); 4] =
    [(-8.237_426_256e-1, 2.0), (1.908_956_353, 3.0), (-2.017_597_384, 4.0), (8.546_361_348e-1, 5.0)];
const HEAT_CONSTANT: f64 = -8.983_025_854;
const VOLUME_HIGH: [(f64, f64); 5] = [
    (6.744_584_46e3, 4.0),
    (-2.225_216_04e5, 5.0),
    (1.002_312_47e8, 7.0),
    (-1.635_521_18e9, 8.0),
    (8.322_996_58e9, 9.0),
];
const VOLUME_LOW: [(f64, f64); 6] = [
    (5.785_452_92e-3, 1.0),
    (-1.531_956_65e-2, 2.0),
    (3.113_378_59e-2, 3.0),
    (-4.235_462_41e-2, 4.0),
    (3.387_135_07e-2, 5.0),
    (-1.199_467_61e-2, 6.0),
];
const VOLUME_CONSTANT: f64 = 1.937_631_57e-2;
/// Coefficient, uPa s, and power of the temperature in units of 300 K.
const VISCOSITY: [(f64, f64); 4] = [(280.68, -1.9), (511.45, -7.7), (61.131, -19.6), (0.459_03, -40.0)];

/// Water at a temperature, degrees C.
///
/// # Errors
/// [`OutOfRange`] below 0.01 and above 99 degrees C: it freezes or boils.
pub fn water(temperature: f64) -> Result<Fluid, OutOfRange> {
    let kelvin = within("water temperature", temperature, RANGE, "°C")? + 273.15;
    let (high, low) = (SCALE / (593.0 - kelvin), SCALE / (kelvin - 232.0));
    let sum = |terms: &[(f64, f64)], base: f64| terms.iter().map(|(c, n)| c * libm::pow(base, *n)).sum::<f64>();
    let bent = |terms: &[(f64, f64)], base: f64| {
        terms.iter().map(|(c, n)| n * (n + 1.0) * c * libm::pow(base, n + 2.0)).sum::<f64>()
    };
    let volume = GAS * SCALE / PRESSURE * (VOLUME_CONSTANT + sum(&VOLUME_HIGH, high) + sum(&VOLUME_LOW, low));
    let specific_heat = -GAS * (HEAT_CONSTANT + kelvin / SCALE * (bent(&HEAT_HIGH, high) + bent(&HEAT_LOW, low)));
    let viscosity = sum(&VISCOSITY, kelvin / 300.0) * 1e-6;
    Ok(Fluid { density: 1.0 / volume, viscosity, specific_heat })
}
