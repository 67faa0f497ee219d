//! What goes through the tubes, how warm and at what pressure.

use super::super::{Quantity, choice, group, number, text};
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
    /// Heat that the coolant takes up.
    HEAT = number("/loop/heat_w", "Heat load", "W",
        "What the cooled parts give off under load: add up their rated powers.")
        .from(0.0).to(100_000.0).step(50.0, 400.0).or(400.0);
    /// Pump.
    PUMP = choice("/loop/pump", "Pump", "pump", Some("usual pump"),
        "What drives the coolant, by its curve: head against flow.");
    /// Name of an own pump.
    PUMP_NAME = text("/loop/pump/name", "Pump name", NAME, None, "A name for your pump.");
    /// Flow at a point of its curve.
    PUMP_FLOW = number("/loop/pump/points/*/flow_l_per_h", "Flow", "L/h",
        "A flow of the pump's curve; the first is no flow, and each is more than the one before.")
        .from(0.0).to(100_000.0).step(50.0, 500.0);
    /// Head at a point of its curve.
    PUMP_HEAD = number("/loop/pump/points/*/head_m", "Head", "m",
        "How high it lifts coolant at that flow, from the data sheet; 1 m is 9.8 kPa. It falls as the flow grows.")
        .from(0.0).to(1_000.0).step(0.1, 3.0);
    /// Source of its figures.
    PUMP_SOURCE = text("/loop/pump/source", "Source", (0, 2_000), Some(""), "Where the figures come from.");
    /// Name of a part of the loop.
    PART_NAME = text("/loop/parts/*/name", "Part", NAME, None,
        "What you call it, such as \"processor block\".");
    /// What a part costs.
    PART_DROP = number("/loop/parts/*/drop_kpa", "Pressure drop", "kPa",
        "What it costs at the flow beside, from the maker's or a tester's curve; 1 psi is 6.9 kPa.")
        .from(0.0).to(10_000.0).step(0.5, 6.0);
    /// At what flow.
    PART_FLOW = number("/loop/parts/*/at_l_per_h", "At a flow of", "L/h",
        "The flow that the pressure drop is stated at; 1 US gallon a minute is 227.")
        .above(0.0).to(100_000.0).step(5.0, 225.0).or(225.0);
    /// What it holds.
    PART_VOLUME = number("/loop/parts/*/volume_ml", "Holds", "mL",
        "How much coolant it holds: fill it from a jug and see.")
        .from(0.0).to(1e6).step(10.0, 50.0).or(0.0);
    /// Readings of a leak test.
    LEAK_TEST = group("/loop/leak_test", "Leak test with air",
        "Shut air in, let it settle for some minutes, read the gauge and a thermometer, and read both again later.");
    /// Volume of air.
    LEAK_VOLUME = number("/loop/leak_test/volume_ml", "Air shut in", "mL",
        "How much air is shut in, hoses and gauge included; leave it empty where it is the whole loop's.")
        .above(0.0).to(1e6).step(10.0, 600.0);
    /// Pressure at the start.
    LEAK_START = number("/loop/leak_test/start_kpa", "Pressure at the start", "kPa",
        "What the gauge shows once it has settled; 50 kPa is 0.5 bar or 7.3 psi, and the most to use with air.")
        .above(0.0).to(1_000.0).step(1.0, 50.0).or(50.0);
    /// Pressure at the end.
    LEAK_END = number("/loop/leak_test/end_kpa", "Pressure at the end", "kPa",
        "What the gauge shows at the end of the test; leave it empty until then.")
        .from(-100.0).to(1_000.0).step(0.1, 49.5);
    /// Temperature at the start.
    LEAK_START_WARM = number("/loop/leak_test/start_c", "Temperature at the start", "°C",
        "Of the loop itself when you read the gauge: hold a thermometer to a block.")
        .from(-40.0).to(100.0).step(0.5, 21.0).or(21.0);
    /// Temperature at the end.
    LEAK_END_WARM = number("/loop/leak_test/end_c", "Temperature at the end", "°C",
        "The same at the end: one kelvin less looks like half a kilopascal lost.")
        .from(-40.0).to(100.0).step(0.5, 21.0).or(21.0);
    /// How long.
    LEAK_MINUTES = number("/loop/leak_test/minutes", "Took", "min",
        "Time between the two readings: 15 to 60 minutes is common practice, no source.")
        .above(0.0).to(100_000.0).step(5.0, 30.0).or(30.0);
    /// Pressure of the air about it.
    LEAK_AIR = number("/loop/leak_test/air_kpa", "Air pressure", "kPa",
        "Of the air about you, absolute; 101.325 at the sea, some 10 less 900 m up. The weather moves it by 1 or 2.")
        .from(30.0).to(120.0).step(0.1, 101.325).or(101.325);
    /// The most that may leak.
    LEAK_LIMIT = number("/loop/leak_test/limit_kpa", "May lose", "kPa",
        "What may leak in the time beside, after the part that is temperature: 0.5 kPa in 10 minutes is common practice, no source.")
        .above(0.0).to(100.0).step(0.1, 0.5).or(0.5);
    /// In what time.
    LEAK_LIMIT_MINUTES = number("/loop/leak_test/limit_minutes", "In", "min",
        "The time that the limit is for.")
        .above(0.0).to(100_000.0).step(1.0, 10.0).or(10.0);
}
