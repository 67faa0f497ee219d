//! What the tubes go between: the design's own words, fittings, ports.

use super::super::{Quantity, choice, group, number, text};
use super::NAME;

rows! {
    /// Title of the design.
    DESIGN_NAME = text("/name", "Design name", (0, 200), Some(""),
        "A title for the whole design; it names the files.");

    /// Free text.
    NOTES = text("/notes", "Notes", (0, 100_000), Some(""),
        "Anything worth keeping with the design: the part names, how you measured, what you ordered.");

    /// Name of a fitting.
    FITTING_NAME = text("/fittings/*/name", "Fitting name", NAME, None,
        "A short name for this kind of fitting; ports refer to it.");
    /// Tube that a fitting takes.
    FITTING_TUBE_DIAMETER = number("/fittings/*/tube_diameter", "Takes tube of", "mm",
        "The outer diameter of the tube that this fitting is made for.")
        .from(0.5).to(500.0).step(0.1, 12.0);
    /// Mouth above the seat.
    FITTING_HEIGHT = number("/fittings/*/height", "Height over the port face", "mm",
        "From the face of the part to the rim where the tube goes in, with the fitting screwed down.")
        .above(0.0).to(1_000.0).step(0.1, 18.0).or(18.0);
    /// Mouth to stop.
    FITTING_SOCKET_DEPTH = number("/fittings/*/socket_depth", "Socket depth", "mm",
        "Push a tube in until it stops, mark it at the rim, and measure from the mark to its end.")
        .above(0.0).to(1_000.0).step(0.1, 10.0).or(10.0);
    /// Widest ring.
    FITTING_COLLAR = number("/fittings/*/collar_diameter", "Collar diameter", "mm",
        "Across the widest ring of the fitting: the room it needs to be turned. Left out, it is 7 mm over the tube.")
        .above(0.0).to(1_000.0).step(0.1, 19.0);
    /// Straight after the mouth.
    FITTING_LEAD = number("/fittings/*/lead", "Lead", "mm",
        "Straight tube that must follow the rim before the first bend; 5 mm or half the tube's diameter is usual.")
        .from(0.0).to(1_000.0).step(0.5, 5.0).or(5.0);
    /// Turn of an elbow.
    ELBOW_ANGLE = number("/fittings/*/elbow/angle_deg", "Elbow angle", "°",
        "How far the fitting turns the tube away from the port's own direction.")
        .above(0.0).below(180.0).step(5.0, 90.0).or(90.0);
    /// Seat to turn.
    ELBOW_RISE = number("/fittings/*/elbow/rise", "Elbow rise", "mm",
        "From the face of the part straight out to the middle of the turned arm.")
        .above(0.0).to(1_000.0).step(0.1, 14.0).or(14.0);
    /// Turn to mouth.
    ELBOW_REACH = number("/fittings/*/elbow/reach", "Elbow reach", "mm",
        "From the middle of the port along the turned arm to the rim where the tube goes in.")
        .above(0.0).to(1_000.0).step(0.1, 12.0).or(12.0);
    /// Direction of the turn.
    ELBOW_TURN = number("/fittings/*/elbow/turn_deg", "Elbow turned to", "°",
        "Which way the arm points: 0 is towards up (z), or along x where the port itself faces up or down; \
         it grows anticlockwise, seen looking at the part.")
        .from(-360.0).to(360.0).step(15.0, 0.0).or(0.0);
    /// Way through a fitting.
    FITTING_BORE = number("/fittings/*/bore", "Way through", "mm",
        "The narrowest bore inside the fitting; leave it empty where it is as wide as the tube's.")
        .above(0.0).to(500.0).step(0.1, 9.0);
    /// Cord of the O-ring.
    SEAL_SECTION = number("/fittings/*/seal/section", "O-ring section", "mm",
        "Thickness of the ring that seals on the tube: 1.78, 2.0 or 2.62 are usual.")
        .above(0.0).to(50.0).step(0.01, 2.0);
    /// Floor of the gland.
    SEAL_GLAND = number("/fittings/*/seal/gland_diameter", "Gland diameter", "mm",
        "Diameter of the floor of the groove that the ring lies in, measured without the ring.")
        .above(0.0).to(600.0).step(0.01, 15.2);
    /// Width of the gland.
    SEAL_WIDTH = number("/fittings/*/seal/gland_width", "Gland width", "mm",
        "Width of the groove along the tube; leave it empty where you did not measure it. 2.7 is usual for a 2.0 ring.")
        .above(0.0).to(100.0).step(0.01, 2.7);

    /// Name of a port.
    PORT_NAME = text("/ports/*/name", "Port name", NAME, None,
        "What you call the hole: part and use, such as \"pump out\".");
    /// Where a port is.
    PORT_PLACE = group("/ports/*/at", "Position",
        "The middle of the threaded hole, on the face that the fitting seats on, from your datum.");
    /// Position of a port.
    PORT_AT = number("/ports/*/at/*", "Position", "mm",
        "The middle of the threaded hole, on the face that the fitting seats on, from your datum.")
        .step(0.5, 30.0);
    /// Direction of a port.
    PORT_FACING = number("/ports/*/facing/*", "Facing", "",
        "The direction straight out of the hole; any length will do, 0, 0, 1 is up.")
        .step(0.1, 1.0);
    /// Fitting in a port.
    PORT_FITTING = choice("/ports/*/fitting", "Fitting", "fitting", None,
        "What is screwed into this port.");
    /// How well a port is known.
    PORT_MEASURED_TO = number("/ports/*/measured_to", "Measured to ±", "mm",
        "How far off the position may be: about 0.5 with calipers, 1 with a tape, less off a drawing.")
        .from(0.0).to(100.0).step(0.1, 0.5).or(0.5);
}
