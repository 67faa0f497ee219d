//! What the readings of a leak test say.

use crate::design::LeakReadings;
use crate::leak::{Leak, LeakTest, fall_per_kelvin, stored_energy};
use crate::out_of_range::OutOfRange;

/// Millibars in a kilopascal.
const MBAR: f64 = 10.0;

/// A leak test, read. Pressures kPa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeakFound {
    /// Volume of air, L.
    pub volume: f64,
    /// How far the pressure fell.
    pub fall: f64,
    /// The part of it that is cooling; below zero where it warmed up.
    pub by_temperature: f64,
    /// The part that leaked.
    pub by_leak: f64,
    /// The leaked part in the time that the limit is for.
    pub in_limit_time: f64,
    /// Leak rate, mbar L/s.
    pub rate: f64,
    /// The same, cubic centimetres a minute at 101.325 kPa.
    pub rate_sccm: f64,
    /// What one kelvin of cooling looks like.
    pub per_kelvin: f64,
    /// Energy that a burst sets free, from the least to the most, J.
    pub energy: [f64; 2],
    /// Whether it stays within its limit.
    pub passes: bool,
}

impl LeakFound {
    /// Reads a test of `loop_ml` mL, where the readings state no volume of their own; none until its end is read.
    ///
    /// # Errors
    /// [`OutOfRange`] for a loop that holds nothing.
    pub fn of(readings: &LeakReadings, loop_ml: f64) -> Result<Option<Self>, OutOfRange> {
        let Some(end) = readings.end_kpa else { return Ok(None) };
        let (volume, seconds) = (readings.volume_ml.unwrap_or(loop_ml) / 1e3, readings.minutes * 60.0);
        let (start, air) = (readings.start_kpa * MBAR, readings.air_kpa * MBAR);
        let test = LeakTest {
            volume,
            start,
            end: end * MBAR,
            start_temperature: readings.start_c,
            end_temperature: readings.end_c,
            seconds,
            air,
        };
        let Leak { fall, by_temperature, by_leak, rate, rate_sccm } = test.read()?;
        let in_limit_time = by_leak / MBAR * (readings.limit_minutes / readings.minutes);
        Ok(Some(Self {
            volume,
            fall: fall / MBAR,
            by_temperature: by_temperature / MBAR,
            by_leak: by_leak / MBAR,
            in_limit_time,
            rate,
            rate_sccm,
            per_kelvin: fall_per_kelvin(start, air, readings.start_c)? / MBAR,
            energy: stored_energy(volume, start, air)?,
            passes: in_limit_time <= readings.limit_kpa,
        }))
    }
}
