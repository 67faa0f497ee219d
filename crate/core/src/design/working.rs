//! The loop that the tubes are part of, as the builder states it.

/// The coolant, whole.
#[derive(Debug, Clone, PartialEq)]
pub struct Coolant {
    /// Its generic name.
    pub name: String,
    /// Density at the working temperature, g/cm3.
    pub density_g_per_cm3: f64,
    /// Where the figures come from.
    pub source: String,
}

/// The loop's working state.
#[derive(Debug, Clone, PartialEq)]
pub struct Loop {
    /// Volume flow, L/h.
    pub flow_l_per_h: f64,
    /// What is pumped.
    pub coolant: Coolant,
    /// Temperature at which the tubes are fitted, degrees C.
    pub cold_c: f64,
    /// Usual coolant temperature, degrees C.
    pub working_c: f64,
    /// Coolant temperature in a fault, degrees C.
    pub fault_c: f64,
    /// Gauge pressure, kPa.
    pub pressure_kpa: f64,
    /// Gauge pressure of the leak test, kPa.
    pub test_kpa: f64,
}
