//! A leak test with air.

use super::{GEOMETRY, Origin, origin};

const GAS: &str = "law of the ideal gas";
const READINGS: &[&str] = &[
    "/loop/leak_test/start_kpa",
    "/loop/leak_test/end_kpa",
    "/loop/leak_test/start_c",
    "/loop/leak_test/end_c",
    "/loop/leak_test/air_kpa",
];
const STEADY: &str = "Volume and air pressure stay as they are; the thermometer shows the shut-in air.";

pub(super) const ROWS: &[Origin] = &[
    origin("/loop/leak_test/volume_ml", "Air shut in", "mL")
        .by("As stated, or the coolant in the loop", GEOMETRY)
        .holds("Hoses and gauge count too.")
        .of(&["/loop/leak_test/volume_ml", "/loop/coolant_ml"]),
    origin("/loop/leak_test/fall_kpa", "Pressure fell by", "kPa")
        .by("Start − end", GEOMETRY)
        .holds(STEADY)
        .of(READINGS),
    origin("/loop/leak_test/by_temperature_kpa", "of which temperature", "kPa")
        .by("p (1 − T end ÷ T start), p absolute, T in kelvin", GAS)
        .holds(STEADY)
        .of(READINGS),
    origin("/loop/leak_test/by_leak_kpa", "of which leaked", "kPa")
        .by("What is missing from p start × T end ÷ T start, at the temperature of the start", GAS)
        .holds(STEADY)
        .of(READINGS),
    origin("/loop/leak_test/in_limit_time_kpa", "leaks in the limit's time", "kPa")
        .by("Leaked × limit's time ÷ time of the test", GEOMETRY)
        .holds("A leak slows down as the pressure falls: short tests overstate it a little.")
        .of(&["/loop/leak_test/by_leak_kpa", "/loop/leak_test/minutes", "/loop/leak_test/limit_minutes"]),
    origin("/loop/leak_test/rate_mbar_l_per_s", "Leak rate", "mbar·L/s")
        .by("Leaked × volume ÷ time", GAS)
        .holds(STEADY)
        .of(&["/loop/leak_test/by_leak_kpa", "/loop/leak_test/volume_ml", "/loop/leak_test/minutes"]),
    origin("/loop/leak_test/rate_sccm", "or", "cm³/min")
        .by("Leak rate at 101.325 kPa", GAS)
        .holds("At the temperature of the start.")
        .of(&["/loop/leak_test/rate_mbar_l_per_s"]),
    origin("/loop/leak_test/per_kelvin_kpa", "One kelvin looks like", "kPa")
        .by("p ÷ T, p absolute, T in kelvin", GAS)
        .holds(STEADY)
        .of(&["/loop/leak_test/start_kpa", "/loop/leak_test/start_c", "/loop/leak_test/air_kpa"]),
    origin("/loop/leak_test/energy_j", "Energy of a burst", "J")
        .by(
            "Least: slow, at one temperature, less the work on the air about; most: (p − p0) V ÷ (γ − 1), γ 1.4",
            "Brode, J. Appl. Phys. 26 (1955) 766, from memory",
        )
        .holds("Between the two. A joule is an apple dropped from a table.")
        .of(&["/loop/leak_test/volume_ml", "/loop/leak_test/start_kpa", "/loop/leak_test/air_kpa"]),
];
