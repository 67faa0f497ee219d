//! The tubes: size, bends, body, ends.

use super::super::{Quantity, choice, flag, group, number, text};
use super::NAME;

rows! {
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
    /// Whether radii give way.
    FIT_BENDS = flag("/runs/*/fit_bends", "As large as fits", false,
        "Where bends are closer than their straights, they share the room instead of being refused; the radii are upper limits then.");

    /// The shape of a run between its leads.
    DRESS = group("/runs/*/dress", "Body of another shape between the leads",
        "A body may be thicker than the tube, taper, or carry lobes that run or twist along it; left out, the tube is plain.");
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

    /// How a run stands on the plate.
    STANCE = group("/runs/*/stance", "Own stance on the plate",
        "How the tube stands on the printer's plate; left out, the best that is found.");
    /// Which way is away from the plate.
    STANCE_UP = number("/runs/*/stance/up/*", "Up", "",
        "The direction in your axes that points away from the plate when the tube is printed.")
        .from(-1e6).to(1e6).step(0.1, 1.0);
    /// Turn on the plate.
    STANCE_TURN = number("/runs/*/stance/turn_deg", "Turn", "°",
        "How far the tube is turned on the plate, seen from above against the clock.")
        .from(-360.0).to(360.0).step(1.0, 0.0).or(0.0);

    /// Where a run is cut.
    CUT_AT = number("/runs/*/cuts/*/at", "Cut at", "mm",
        "How far along the tube from its first end face the two pieces meet inside; the joint reaches back from there.")
        .above(0.0).to(100_000.0).step(1.0, 150.0);
    /// How a further piece stands on the plate.
    CUT_STANCE = group("/runs/*/cuts/*/stance", "Own stance of this piece",
        "How the piece that begins at this cut stands on the printer's plate; left out, the best that is found.");
    /// Which way of a further piece is away from the plate.
    CUT_STANCE_UP = number("/runs/*/cuts/*/stance/up/*", "Up", "",
        "The direction in your axes that points away from the plate when this piece is printed.")
        .from(-1e6).to(1e6).step(0.1, 1.0);
    /// Turn of a further piece on the plate.
    CUT_STANCE_TURN = number("/runs/*/cuts/*/stance/turn_deg", "Turn", "°",
        "How far the piece is turned on the plate, seen from above against the clock.")
        .from(-360.0).to(360.0).step(1.0, 0.0).or(0.0);

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
}
