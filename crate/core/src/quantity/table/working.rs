//! What goes through the tubes, how warm and at what pressure.

use super::super::{Quantity, choice, number, text};
use super::NAME;

rows! {
    /// Flow.
    FLOW = number("/loop/flow_l_per_h", "Flow", "L/h",
        "How much coolant goes round; 60 to 300 litres an hour is usual.")
        .from(0.0).to(100_000.0).step(10.0, 120.0).or(120.0);
    /// Coolant.
    COOLANT = choice("/loop/coolant", "Coolant", "coolant", Some("water"), "What the loop is filled with.");
    /// Name of an own coolant.
    COOLANT_NAME = text("/loop/coolant/name", "Coolant name", NAME, None, "What is written on the bottle.");
    /// Density of an own coolant.
    COOLANT_DENSITY = number("/loop/coolant/density_g_per_cm3", "Density", "g/cm³",
        "Mass of one cubic centimetre at the working temperature, from the maker's data sheet.")
        .above(0.0).to(25.0).step(0.01, 0.99);
    /// What an own coolant is made of.
    COOLANT_BASE = choice("/loop/coolant/base", "Made of", "base", None,
        "Water, or water with one of the two glycols; leave it out where you know its viscosity.");
    /// Glycol in an own coolant.
    COOLANT_GLYCOL = number("/loop/coolant/glycol_percent", "Glycol", "%",
        "Share of the mass that is glycol; a coolant that is ready for use has 20 to 30.")
        .from(0.0).to(60.0).step(1.0, 25.0).or(0.0);
    /// Viscosity of an own coolant.
    COOLANT_VISCOSITY = number("/loop/coolant/viscosity_mpa_s", "Viscosity", "mPa·s",
        "Dynamic viscosity at the working temperature, from the maker's data sheet; water has 0.65 at 40 °C.")
        .above(0.0).to(10_000.0).step(0.1, 1.2);
    /// Source of the figures of an own coolant.
    COOLANT_SOURCE = text("/loop/coolant/source", "Source", (0, 2_000), Some(""),
        "Where the figures come from.");
    /// Temperature when fitted.
    COLD = number("/loop/cold_c", "Fitted at", "°C",
        "The room's temperature when the tubes go in: what they grow from.")
        .from(-50.0).to(200.0).step(1.0, 20.0).or(20.0);
    /// Working temperature.
    WORKING = number("/loop/working_c", "Working temperature", "°C",
        "The coolant's usual temperature under load; 25 to 45 is usual.")
        .from(-50.0).to(200.0).step(1.0, 40.0).or(40.0);
    /// Temperature in a fault.
    FAULT = number("/loop/fault_c", "Fault temperature", "°C",
        "The hottest the coolant may get before the machine shuts down; 60 is usual.")
        .from(-50.0).to(200.0).step(1.0, 60.0).or(60.0);
    /// Pressure.
    PRESSURE = number("/loop/pressure_kpa", "Pressure", "kPa",
        "Pressure over the air's in the loop: the pump's head plus the height of coolant; 10 to 60 is usual.")
        .from(0.0).to(10_000.0).step(5.0, 50.0).or(50.0);
    /// Pressure of the leak test.
    TEST_PRESSURE = number("/loop/test_kpa", "Test pressure", "kPa",
        "Pressure over the air's that the tubes are tested at: twice the working pressure is common practice, no source.")
        .from(0.0).to(10_000.0).step(10.0, 100.0).or(100.0);
    /// Which way is up.
    UP = number("/loop/up/*", "Up", "",
        "Which way is up when the machine runs, along your axes: [0, 0, 1] is along z.")
        .step(1.0, 0.0);
}
