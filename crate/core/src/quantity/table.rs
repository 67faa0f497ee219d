//! The rows of the table. A default without a stated source is common practice, no source.

use super::{Quantity, choice, flag, number, text};

const NAME: (usize, usize) = (1, 200);

/// Most ports, fittings, keep-outs of a design.
pub const MOST_PORTS: usize = 1_000;
/// Most runs of a design.
pub const MOST_RUNS: usize = 200;
/// Most stations of a run.
pub const MOST_STATIONS: usize = 2_000;
/// Most tube of a design, mm: 100 m.
pub const MOST_TUBE: f64 = 100_000.0;
/// Furthest coordinate from the datum, mm.
pub const FURTHEST: f64 = 1e6;
/// Shortest length that `facing` may be typed with; below it no direction is left in it.
pub const LEAST_FACING: f64 = 1e-9;

/// Finest deviation of a mesh from the exact skin, mm.
pub const LEAST_DEVIATION: f64 = 0.001;
/// Coarsest deviation of a mesh from the exact skin, mm.
pub const MOST_DEVIATION: f64 = 1.0;
/// Deviation where none is asked for, mm.
pub const USUAL_DEVIATION: f64 = 0.01;

macro_rules! quantities {
    ($($(#[$doc:meta])* $name:ident = $row:expr;)*) => {
        $($(#[$doc])* pub static $name: Quantity = $row;)*
        /// Every row, in the order of the document.
        pub static QUANTITIES: &[&Quantity] = &[$(&$name),*];
    };
}

quantities! {
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
    /// Cord of the O-ring.
    SEAL_SECTION = number("/fittings/*/seal/section", "O-ring section", "mm",
        "Thickness of the ring that seals on the tube: 1.78, 2.0 or 2.62 are usual.")
        .above(0.0).to(50.0).step(0.01, 2.0);
    /// Floor of the gland.
    SEAL_GLAND = number("/fittings/*/seal/gland_diameter", "Gland diameter", "mm",
        "Diameter of the floor of the groove that the ring lies in, measured without the ring.")
        .above(0.0).to(600.0).step(0.01, 15.2);

    /// Name of a port.
    PORT_NAME = text("/ports/*/name", "Port name", NAME, None,
        "What you call the hole: part and use, such as \"pump out\".");
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

    /// Name of a run.
    RUN_NAME = text("/runs/*/name", "Run name", NAME, None,
        "What you call this tube; it names the file you print.");
    /// Start of a run.
    RUN_FROM = choice("/runs/*/from", "From", "port", None, "The port that the tube starts at.");
    /// End of a run.
    RUN_TO = choice("/runs/*/to", "To", "port", None, "The port that the tube ends at.");
    /// Outer diameter.
    OUTER_DIAMETER = number("/runs/*/tube/outer_diameter", "Outer diameter", "mm",
        "The tube's outside, as your fittings want it; 12, 14 and 16 are usual.")
        .from(0.5).to(500.0).step(0.1, 12.0);
    /// Bore.
    BORE = number("/runs/*/tube/bore", "Bore", "mm",
        "The tube's inside; 4 mm less than the outside leaves a 2 mm wall, which is usual for printed tube.")
        .above(0.0).below(500.0).step(0.1, 8.0);
    /// Bend radius of a run.
    BEND_RADIUS = number("/runs/*/bend_radius", "Bend radius", "mm",
        "Radius of the tube's middle line in its bends; twice the outer diameter is usual, and what is used if you leave it out.")
        .from(0.0).to(100_000.0).step(0.5, 24.0);
    /// Coordinate of a corner.
    CORNER = number("/runs/*/route/*/corner/*", "Corner", "mm",
        "Where the two straights would meet if the bend were sharp, from your datum.")
        .step(0.5, 30.0);
    /// Port whose coordinate a corner follows.
    CORNER_OF = choice("/runs/*/route/*/corner/*/of", "Follows port", "port", None,
        "The port whose same coordinate this one follows, so that a new measurement carries the corner along.");
    /// Offset from that port.
    CORNER_PLUS = number("/runs/*/route/*/corner/*/plus", "plus", "mm",
        "How far beyond that port's coordinate; below zero is the other way.")
        .step(0.5, 0.0).or(0.0);
    /// Coordinate of a point passed through.
    THROUGH = number("/runs/*/route/*/through/*", "Point", "mm",
        "A point that the middle of the tube passes smoothly; points that follow each other make one curve.")
        .step(0.5, 30.0);
    /// Port whose coordinate a point follows.
    THROUGH_OF = choice("/runs/*/route/*/through/*/of", "Follows port", "port", None,
        "The port whose same coordinate this one follows, so that a new measurement carries the point along.");
    /// Offset from that port.
    THROUGH_PLUS = number("/runs/*/route/*/through/*/plus", "plus", "mm",
        "How far beyond that port's coordinate; below zero is the other way.")
        .step(0.5, 0.0).or(0.0);
    /// Coordinate of a coil's centre.
    COIL_CENTRE = number("/runs/*/route/*/coil/centre/*", "Centre", "mm",
        "The point on the coil's axis level with the coil's first point, from your datum.")
        .step(0.5, 30.0);
    /// Port whose coordinate a coil's centre follows.
    COIL_OF = choice("/runs/*/route/*/coil/centre/*/of", "Follows port", "port", None,
        "The port whose same coordinate this one follows, so that a new measurement carries the coil along.");
    /// Offset from that port.
    COIL_PLUS = number("/runs/*/route/*/coil/centre/*/plus", "plus", "mm",
        "How far beyond that port's coordinate; below zero is the other way.")
        .step(0.5, 0.0).or(0.0);
    /// Axis of a coil.
    COIL_AXIS = number("/runs/*/route/*/coil/axis/*", "Axis", "",
        "The direction in which the coil climbs; any length will do, 0, 0, 1 is up.")
        .step(0.1, 1.0);
    /// Radius of a coil.
    COIL_RADIUS = number("/runs/*/route/*/coil/radius", "Coil radius", "mm",
        "From the axis to the middle of the tube where the coil starts; round a reservoir, its radius, the gap you want and half the tube.")
        .above(0.0).to(100_000.0).step(0.5, 40.0);
    /// Radius where a coil ends.
    COIL_END_RADIUS = number("/runs/*/route/*/coil/end_radius", "End radius", "mm",
        "Only where the coil opens or closes: its radius where it ends.")
        .above(0.0).to(100_000.0).step(0.5, 40.0);
    /// Climb of a coil.
    COIL_PITCH = number("/runs/*/route/*/coil/pitch", "Pitch", "mm",
        "How far the coil climbs along its axis in one turn; more than the tube's outer diameter, or turns touch.")
        .from(0.0).to(100_000.0).step(0.5, 20.0);
    /// Turns of a coil.
    COIL_TURNS = number("/runs/*/route/*/coil/turns", "Turns", "",
        "How often it goes round; parts of a turn count, such as 2.25.")
        .from(0.01).to(1_000.0).step(0.25, 2.0);
    /// Hand of a coil.
    COIL_HAND = choice("/runs/*/route/*/coil/hand", "Hand", "hand", Some("right"),
        "Right turns like a common screw as it climbs, left the other way.");
    /// Where a coil starts.
    COIL_START = number("/runs/*/route/*/coil/start_deg", "Start angle", "°",
        "Where the coil starts, about its axis: 0 is towards z, or towards x where the axis is along z.")
        .from(-360.0).to(360.0).step(15.0, 0.0).or(0.0);
    /// Own bend radius of a corner.
    CORNER_BEND_RADIUS = number("/runs/*/route/*/bend_radius", "Own bend radius", "mm",
        "Only where this corner needs another radius than the rest of the run.")
        .from(0.0).to(100_000.0).step(0.5, 24.0);
    /// Whether radii give way.
    FIT_BENDS = flag("/runs/*/fit_bends", "As large as fits", false,
        "Where bends are closer than their straights, they share the room instead of being refused; the radii are upper limits then.");
    /// Diameter of a dressed body.
    DRESS_DIAMETER = number("/runs/*/dress/diameter", "Body diameter", "mm",
        "Outer diameter of the body where it begins, after the first fitting's lead; left out, the tube's.")
        .from(0.5).to(500.0).step(0.5, 14.0);
    /// Diameter at the end of a dressed body.
    DRESS_END_DIAMETER = number("/runs/*/dress/end_diameter", "End diameter", "mm",
        "Outer diameter of the body where it ends; left out, the same all along.")
        .from(0.5).to(500.0).step(0.5, 14.0);
    /// Blend of a dressed body.
    DRESS_BLEND = number("/runs/*/dress/blend", "Blend", "mm",
        "Length over which the round tube becomes the body, at each end.")
        .from(0.5).to(1_000.0).step(0.5, 8.0).or(8.0);
    /// Lobes of a dressed body.
    DRESS_LOBES = number("/runs/*/dress/lobes", "Lobes", "",
        "How many ridges run along the body: 0 for a round one, or 2 to 24.")
        .from(0.0).to(24.0).step(1.0, 6.0).or(0.0);
    /// Depth between lobes.
    DRESS_DEPTH = number("/runs/*/dress/depth", "Groove depth", "mm",
        "How deep the grooves between the lobes go; the wall under them must still do.")
        .from(0.0).to(100.0).step(0.1, 0.8).or(0.0);
    /// Twist of lobes.
    DRESS_TWIST = number("/runs/*/dress/twist_deg_per_mm", "Twist", "°/mm",
        "How far the lobes turn about the tube for each millimetre along it; 0 runs straight.")
        .from(-45.0).to(45.0).step(0.5, 2.0).or(0.0);
    /// Angle of the lead-in chamfer.
    CHAMFER_ANGLE = number("/runs/*/ends/chamfer_deg", "Chamfer angle", "°",
        "Angle between the chamfer and the tube's axis; 15 to 20 lets the end slide past the O-ring.")
        .above(0.0).below(90.0).step(1.0, 15.0).or(15.0);
    /// Length of the lead-in chamfer.
    CHAMFER_LENGTH = number("/runs/*/ends/chamfer_length", "Chamfer length", "mm",
        "How far along the tube the chamfer goes; 2 is usual, 0 leaves it off.")
        .from(0.0).to(1_000.0).step(0.1, 2.0).or(2.0);
    /// Break of the inner edge.
    EDGE_BREAK = number("/runs/*/ends/edge_break", "Inner edge break", "mm",
        "A small 45° bevel on the edge of the bore; 0.2 is usual, 0 leaves it sharp.")
        .from(0.0).to(100.0).step(0.1, 0.2).or(0.2);
    /// Extra length.
    TRIM = number("/runs/*/ends/trim", "Trim", "mm",
        "Extra length at each end, to be cut or sanded to fit; 0 prints the tube to size.")
        .from(0.0).to(1_000.0).step(0.5, 0.0).or(0.0);
    /// Seating mark.
    SEAT_MARK = flag("/runs/*/ends/seat_mark", "Seating mark", true,
        "A shallow ring on the tube that vanishes under the collar when it sits all the way in.");

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
