//! A leak test with air: how much of a pressure's fall is the weather, and how fast the rest leaks.

use crate::out_of_range::{OutOfRange, positive, within};

/// Pressure of the air where nothing else is stated, mbar: ISO 2533.
pub const AIR: f64 = 1013.25;
/// Flow of one cubic centimetre a minute at 101.325 kPa, mbar l/s.
const SCCM: f64 = 1.013_25 / 60.0;
const ZERO_CELSIUS: f64 = 273.15;

/// What was read. Pressures mbar above the air's, temperatures degrees C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeakTest {
    /// Volume of air shut in, l.
    pub volume: f64,
    /// Pressure at the start.
    pub start: f64,
    /// Pressure at the end.
    pub end: f64,
    /// Temperature of the shut-in air at the start.
    pub start_temperature: f64,
    /// Temperature of the shut-in air at the end.
    pub end_temperature: f64,
    /// How long it took, s.
    pub seconds: f64,
    /// Pressure of the air about it, mbar absolute; taken to stay.
    pub air: f64,
}

/// What a test says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Leak {
    /// Fall of the pressure, mbar.
    pub fall: f64,
    /// The part of it that is cooling, mbar; below zero where it warmed up.
    pub by_temperature: f64,
    /// The part that leaked, mbar, at the temperature of the start.
    pub by_leak: f64,
    /// Leak rate, mbar l/s.
    pub rate: f64,
    /// The same, cubic centimetres a minute at 101.325 kPa and the temperature of the start. A meter that counts at 0
    /// degrees C shows 273.15 K over that temperature of it.
    pub rate_sccm: f64,
}

impl LeakTest {
    /// What the readings say, by the law of the ideal gas at a steady volume: air that kept its mass would have ended at
    /// (start + air) T_end / T_start, and what is missing from that has leaked. The leaked part is told at the temperature of
    /// the start, so that a tight volume comes to nothing at any weather.
    ///
    /// # Errors
    /// [`OutOfRange`] for a volume or a time that is not above zero, temperatures outside [-50, 150], or a pressure at or
    /// below a vacuum.
    pub fn read(&self) -> Result<Leak, OutOfRange> {
        let volume = positive("volume", self.volume, "l")?;
        let seconds = positive("duration", self.seconds, "s")?;
        let air = within("air pressure", self.air, [300.0, 1200.0], "mbar")?;
        let pressure = |what, value: f64| Ok(within(what, value, [1.0 - air, 1e6], "mbar")? + air);
        let kelvin = |what, value: f64| Ok(within(what, value, [-50.0, 150.0], "°C")? + ZERO_CELSIUS);
        let (start, end) = (pressure("pressure at the start", self.start)?, pressure("pressure at the end", self.end)?);
        let warm_start = kelvin("temperature at the start", self.start_temperature)?;
        let warm_end = kelvin("temperature at the end", self.end_temperature)?;
        let tight = start * (warm_end / warm_start);
        let by_leak = (tight - end) * (warm_start / warm_end);
        let rate = by_leak * volume / seconds;
        Ok(Leak { fall: start - end, by_temperature: start - tight, by_leak, rate, rate_sccm: rate / SCCM })
    }
}

impl Leak {
    /// Whether the leaked part, over a time in seconds as the limit is for, stays at or below a limit, mbar, for a test that
    /// took `seconds`: `passes(600.0, 5.0, 600.0)` for 5 mbar in ten minutes.
    pub fn passes(&self, seconds: f64, limit: f64, limit_seconds: f64) -> bool {
        self.by_leak / seconds * limit_seconds <= limit
    }
}

/// Fall of pressure, mbar, for each kelvin that shut-in air cools: absolute pressure over absolute temperature. Pressure
/// mbar above the air's, temperature degrees C.
///
/// # Errors
/// [`OutOfRange`] as [`LeakTest::read`].
pub fn fall_per_kelvin(pressure: f64, air: f64, temperature: f64) -> Result<f64, OutOfRange> {
    let air = within("air pressure", air, [300.0, 1200.0], "mbar")?;
    let pressure = within("pressure", pressure, [1.0 - air, 1e6], "mbar")? + air;
    Ok(pressure / (within("temperature", temperature, [-50.0, 150.0], "°C")? + ZERO_CELSIUS))
}

/// Energy, J, that compressed air sets free when what holds it bursts: the least, of a slow expansion at one temperature
/// less what pushes the air aside, and the most, Brode's (p1 - p0) V / (g - 1) with g 1.4 (J. Appl. Phys. 26 (1955) 766, from
/// memory). Volume l, pressure mbar above the air's.
///
/// # Errors
/// [`OutOfRange`] for a volume or a pressure below zero.
pub fn stored_energy(volume: f64, pressure: f64, air: f64) -> Result<[f64; 2], OutOfRange> {
    let volume = within("volume", volume, [0.0, 1e6], "l")?;
    let air = within("air pressure", air, [300.0, 1200.0], "mbar")?;
    let pressure = within("pressure", pressure, [0.0, 1e6], "mbar")?;
    // A millibar times a litre is a tenth of a joule.
    let slow = (pressure + air) * libm::log1p(pressure / air) - pressure;
    Ok([0.1 * slow * volume, 0.1 * pressure / 0.4 * volume])
}
