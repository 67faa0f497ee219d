//! How much pressure a coolant loses on its way through a tube, and how much of it a pump drives round the loop.
//!
//! Pure functions of plain numbers. Bores, lengths and radii are mm, flows litres an hour, pressures Pa, temperatures
//! degrees C. Every friction factor is Darcy's (four times Fanning's). Each formula names its source and its range;
//! outside it the number is still given, with a band about it, and [`Estimate::trusted`] says so.

mod area;
mod bend;
mod coil;
mod coolant;
mod course;
mod estimate;
mod glycol;
mod pump;
mod run;
mod straight;
mod system;
mod water;

pub use area::{contraction, contraction_factor, expansion, expansion_factor};
pub use bend::{Bend, ito_angle_factor, ito_bend_factor, ito_curved_friction};
pub use coil::{
    critical_reynolds, critical_reynolds_ito, critical_reynolds_schmidt, critical_reynolds_srinivasan, curved_friction,
    developed_diameter, mishra_gupta_laminar, mishra_gupta_turbulent, mori_nakayama_laminar, white_laminar,
};
pub use coolant::{Coolant, Fluid};
pub use course::{Course, Stretch};
pub use estimate::{Estimate, OUTSIDE};
pub use glycol::{Glycol, glycol};
pub use pump::{Pump, PumpFault, head_in_metres, head_in_pascals};
pub use run::{Conditions, Parts, RunLoss, run_loss};
pub use straight::{
    FULLY_TURBULENT, LAMINAR_LIMIT, Regime, blasius, churchill, colebrook, haaland, laminar, straight_friction,
};
pub use system::{NoOperatingPoint, OperatingPoint, coolant_rise, operating_point, quadratic_drop};
pub use water::water;

/// Speed of the coolant, m/s, at a flow, l/h, in a bore, mm.
pub fn velocity(flow: f64, bore: f64) -> f64 {
    let area = core::f64::consts::FRAC_PI_4 * bore * bore * 1e-6;
    flow / 3.6e6 / area
}
