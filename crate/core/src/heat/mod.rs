//! How warm a tube may get, and how much it grows.

use crate::out_of_range::{OutOfRange, within};

/// Kelvin below the lower of glass transition and deflection temperature that a part under lasting pressure is kept:
/// least and most of common practice, no source.
pub const MARGIN: [f64; 2] = [10.0, 15.0];

/// A material's service limit, and what sets it. Temperatures degrees C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ServiceLimit {
    /// The warmest it may be under lasting pressure.
    pub limit: f64,
    /// Which temperature of the sheet sets it.
    pub set_by: SetBy,
}

/// What sets a service limit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SetBy {
    /// The glass transition.
    GlassTransition,
    /// The deflection temperature under load.
    Deflection,
}

/// The warmest that a part under lasting pressure may be: the lower of the glass transition and the deflection temperature
/// at 1.80 MPa (ISO 75 method A), less a margin, K. Common practice, no source. A material of which only one is known is
/// given the other as none; where neither is known there is no limit to tell.
///
/// # Errors
/// [`OutOfRange`] for a temperature outside [-100, 500] or a margin outside [0, 100].
pub fn service_limit(
    glass_transition: Option<f64>,
    deflection: Option<f64>,
    margin: f64,
) -> Result<Option<ServiceLimit>, OutOfRange> {
    let margin = within("margin", margin, [0.0, 100.0], "K")?;
    let known = |what, value: Option<f64>| value.map(|value| within(what, value, [-100.0, 500.0], "°C")).transpose();
    let glass = known("glass transition", glass_transition)?;
    let deflection = known("deflection temperature", deflection)?;
    let limit = |at: f64, set_by| Some(ServiceLimit { limit: at - margin, set_by });
    Ok(match (glass, deflection) {
        (Some(glass), Some(deflection)) if glass < deflection => limit(glass, SetBy::GlassTransition),
        (_, Some(deflection)) => limit(deflection, SetBy::Deflection),
        (Some(glass), None) => limit(glass, SetBy::GlassTransition),
        (None, None) => None,
    })
}

/// Growth, mm, of a length, mm, that is warmed by a number of kelvin: the length times the coefficient of linear
/// expansion, 1e-6/K (um per m and K), times the warming. Cooling gives less than zero.
///
/// # Errors
/// [`OutOfRange`] for a length below zero, a coefficient outside [0, 1000], or a warming outside [-500, 500].
pub fn growth(length: f64, expansion: f64, warming: f64) -> Result<f64, OutOfRange> {
    let length = within("length", length, [0.0, f64::INFINITY], "mm")?;
    let expansion = within("expansion", expansion, [0.0, 1000.0], "1e-6/K")?;
    Ok(length * expansion * 1e-6 * within("warming", warming, [-500.0, 500.0], "K")?)
}
