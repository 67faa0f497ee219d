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
    /// Heat that the coolant takes up on its way round, W.
    pub heat_w: f64,
    /// What drives it.
    pub pump: PumpStated,
    /// What else it goes through, besides the tubes.
    pub parts: Vec<LoopPart>,
    /// What was read when it was tested with air.
    pub leak_test: Option<LeakReadings>,
}

impl Loop {
    /// The warmest that the coolant gets, at work or in a fault, degrees C.
    pub fn hottest_c(&self) -> f64 {
        self.fault_c.max(self.working_c)
    }
}

/// What was read at a leak test with air. Pressures are over the air's, kPa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeakReadings {
    /// Volume of air shut in, mL; none where it is the whole loop's.
    pub volume_ml: Option<f64>,
    /// Pressure at the start.
    pub start_kpa: f64,
    /// Pressure at the end; none until it is read.
    pub end_kpa: Option<f64>,
    /// Temperature at the start, degrees C.
    pub start_c: f64,
    /// Temperature at the end, degrees C.
    pub end_c: f64,
    /// How long it took, minutes.
    pub minutes: f64,
    /// Pressure of the air about it, kPa absolute.
    pub air_kpa: f64,
    /// The most that may leak in `limit_minutes`.
    pub limit_kpa: f64,
    /// See [`LeakReadings::limit_kpa`], minutes.
    pub limit_minutes: f64,
}

/// A pump by points of its curve, from the least flow on; two of them, at no flow and at no head, are a data sheet's two
/// numbers.
#[derive(Debug, Clone, PartialEq)]
pub struct PumpStated {
    /// Its generic name.
    pub name: String,
    /// The curve: flows grow, heads do not.
    pub points: Vec<PumpPoint>,
    /// Where the figures come from.
    pub source: String,
}

impl PumpStated {
    /// The points as `[flow, head]`, L/h and m.
    pub fn heads(&self) -> Vec<[f64; 2]> {
        self.points.iter().map(|point| [point.flow_l_per_h, point.head_m]).collect()
    }
}

/// A point of a pump's curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PumpPoint {
    /// Flow, L/h.
    pub flow_l_per_h: f64,
    /// Head that it keeps up at that flow, metres of coolant.
    pub head_m: f64,
}

/// A block, a radiator or another part of the loop.
#[derive(Debug, Clone, PartialEq)]
pub struct LoopPart {
    /// What the builder calls it.
    pub name: String,
    /// Pressure that it costs at `at_l_per_h`, kPa.
    pub drop_kpa: f64,
    /// The flow that the drop is stated at, L/h.
    pub at_l_per_h: f64,
    /// Coolant that it holds, mL.
    pub volume_ml: f64,
}
