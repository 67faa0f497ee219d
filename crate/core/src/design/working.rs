//! The loop that the tubes are part of, as the builder states it.

/// The coolant, whole.
#[derive(Debug, Clone, PartialEq)]
pub struct Coolant {
    /// Its generic name.
    pub name: String,
    /// Density at the working temperature, g/cm3.
    pub density_g_per_cm3: f64,
    /// What it is mostly made of, where its figures follow from that; none where they do not.
    pub base: Option<Base>,
    /// Share of the glycol, percent of the mass; nothing in water alone.
    pub glycol_percent: f64,
    /// Dynamic viscosity at the working temperature, mPa s, where it is known; it goes before what the base gives.
    pub viscosity_mpa_s: Option<f64>,
    /// Where the figures come from.
    pub source: String,
}

/// What a coolant is mostly made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Base {
    /// Water alone.
    Water,
    /// Water with ethane-1,2-diol.
    EthyleneGlycol,
    /// Water with propane-1,2-diol.
    PropyleneGlycol,
}

impl Base {
    /// Every one.
    pub const ALL: [Self; 3] = [Self::Water, Self::EthyleneGlycol, Self::PropyleneGlycol];

    /// How the document writes it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Water => "water",
            Self::EthyleneGlycol => "ethylene glycol",
            Self::PropyleneGlycol => "propylene glycol",
        }
    }
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
    /// Which way is up when it runs, as typed: any length above zero.
    pub up: [f64; 3],
}
