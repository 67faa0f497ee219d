//! What is round the tubes and in them: keep-outs, clearance, material, printer, coolant.

use super::super::{Quantity, choice, number, text};
use super::NAME;

rows! {
    /// Name of a keep-out.
    KEEP_OUT_NAME = text("/keep_outs/*/name", "Keep-out name", NAME, None,
        "What is in the way, such as \"drive bay\".");
    /// Lowest corner of a box.
    BOX_MIN = number("/keep_outs/*/box/min/*", "Lowest corner", "mm",
        "The box's corner with the smallest x, y and z, from your datum.")
        .step(1.0, 0.0);
    /// Highest corner of a box.
    BOX_MAX = number("/keep_outs/*/box/max/*", "Highest corner", "mm",
        "The box's corner with the largest x, y and z, from your datum.")
        .step(1.0, 60.0);
    /// Start of a cylinder.
    CYLINDER_FROM = number("/keep_outs/*/cylinder/from/*", "Middle of one end", "mm",
        "The middle of the cylinder's one end, from your datum.")
        .step(1.0, 0.0);
    /// End of a cylinder.
    CYLINDER_TO = number("/keep_outs/*/cylinder/to/*", "Middle of the other end", "mm",
        "The middle of the cylinder's other end, from your datum.")
        .step(1.0, 120.0);
    /// Radius of a cylinder.
    CYLINDER_RADIUS = number("/keep_outs/*/cylinder/radius", "Radius", "mm",
        "Half of what calipers show across the cylinder.")
        .above(0.0).to(1e6).step(0.5, 25.0);

    /// Clearance.
    CLEARANCE = number("/clearance", "Clearance", "mm",
        "The least gap you want between a tube and anything else; 1 or more leaves room for measuring errors.")
        .from(0.0).to(1_000.0).step(0.5, 1.0).or(1.0);

    /// Material.
    MATERIAL = choice("/process/material", "Material", "material", Some("tough resin"),
        "What the tubes are printed in; it gives the mass.");
    /// Name of an own material.
    MATERIAL_NAME = text("/process/material/name", "Material name", NAME, None,
        "What is written on the bottle, spool or order.");
    /// Density of an own material.
    MATERIAL_DENSITY = number("/process/material/density_g_per_cm3", "Density", "g/cm³",
        "Mass of one cubic centimetre of the printed part, from the maker's data sheet.")
        .above(0.0).to(25.0).step(0.01, 1.12);
    /// Source of the figures of an own material.
    MATERIAL_SOURCE = text("/process/material/source", "Source", (0, 2_000), Some(""),
        "Where the figures come from.");
    /// Printer.
    PRINTER = choice("/process/printer", "Printer", "printer", Some("medium resin"),
        "The class of printer the tubes are printed on.");
    /// Name of an own printer.
    PRINTER_NAME = text("/process/printer/name", "Printer name", NAME, None,
        "A name for your printer, or the service's.");
    /// Room in an own printer.
    BUILD_VOLUME = number("/process/printer/build_volume/*", "Build volume", "mm",
        "The largest part it takes: width, depth and height.")
        .above(0.0).to(100_000.0).step(1.0, 200.0);
    /// Least wall of an own printer.
    LEAST_WALL = number("/process/printer/least_wall", "Least wall", "mm",
        "The thinnest wall that it prints well.")
        .above(0.0).to(100.0).step(0.1, 1.0);
    /// Source of the figures of an own printer.
    PRINTER_SOURCE = text("/process/printer/source", "Source", (0, 2_000), Some(""),
        "Where the figures come from.");

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
    /// Source of the figures of an own coolant.
    COOLANT_SOURCE = text("/loop/coolant/source", "Source", (0, 2_000), Some(""),
        "Where the figures come from.");
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
}
