//! What the plots say, in one place.

pub(super) const FLOW_AXIS: &str = "Flow, L/h";
pub(super) const PRESSURE_AXIS: &str = "Pressure, kPa";
pub(super) const SHARE_AXIS: &str = "Share of the limit used, %";
pub(super) const TEMPERATURE_AXIS: &str = "Temperature, °C";
pub(super) const LIMIT: &str = "limit";
pub(super) const OVER: &str = "OVER";
pub(super) const MAY_BE_OVER: &str = "may be over";
pub(super) const NOTHING: &str = "Nothing to show yet";
pub(super) const STIFF: &str = "stiff: up to the allowed temperature";
pub(super) const SOFT: &str = "above it, or not known";
pub(super) const TOO_WARM: &str = "OVER: warmer than allowed";
