//! The drawing's words, in one place.

use super::super::features::POINT_KINDS as POINT_KINDS_OF_FILES;
use super::view::{FRONT, ISOMETRIC, RIGHT, TOP};
use crate::tongue::worded;

worded! {
    /// What stands over the table of bends, a heading a column, and how wide the columns are, mm.
    BENDS: [(&'static str, f64); 7] = [
        ("Bend", 9.0),
        ("is a", 11.0),
        ("Straight", 15.0),
        ("Rotate", 14.0),
        ("Angle", 13.0),
        ("Radius", 13.0),
        ("Length", 15.0),
    ];
    /// What stands over the table of points.
    POINTS: [(&'static str, f64); 6] =
        [("Point", 9.0), ("is a", 28.0), ("of bend", 11.0), ("x", 16.0), ("y", 16.0), ("z", 16.0)];

    BEND_TABLE: &str = "Bend table, fed from point 0";
    POINT_TABLE: &str = "Points, in the design's datum";
    ENDS: &str = "Ends; the seat mark by its distance from the end face";

    PROJECTION: &str = "Third-angle projection: each view stands on the side that it is seen from.";
    LEGS: &str =
        "Lengths of legs go from apex to apex, where the straights before and after a bend would meet.";
    UNDERLINED: &str =
        "An underlined length is seen foreshortened in its view; the number is the true length.";
    ROTATION: &str =
        "Rotate: about the way the tube is fed, by the right-hand rule, from the bend before; the first is 0.";
    /// Beside the check bar, two lines.
    BAR: [&'static str; 2] =
        ["50 mm: measure this bar on the print. If it is not 50 mm,", "print again at 100 %, without “fit to page”."];
    GLUE: &str = "On A4 tiles: trim one of two neighbours and lay the crosses on each other.";


    /// What stands over the table of ends.
    END_COLUMNS: [(&'static str, f64); 8] = [
        ("Point", 9.0),
        ("in port", 24.0),
        ("Chamfer °", 16.0),
        ("long", 12.0),
        ("Edge break", 17.0),
        ("Trim", 12.0),
        ("In socket", 15.0),
        ("Seat mark", 16.0),
    ];

    COILS: &str = "Coils: of the centreline; the centre lies on the axis, level with the start";
    /// What stands over the table of coils.
    COIL_COLUMNS: [(&'static str, f64); 13] = [
        ("Bend", 9.0),
        ("Radius", 13.0),
        ("End rad.", 13.0),
        ("Pitch", 12.0),
        ("Turns", 11.0),
        ("Hand", 11.0),
        ("Start °", 13.0),
        ("Axis x", 13.0),
        ("y", 13.0),
        ("z", 13.0),
        ("Centre x", 16.0),
        ("y", 16.0),
        ("z", 16.0),
    ];

    /// Said where a table does not show all rows.
    MORE_ROWS: &str = "and {0} more: see the file of the table";
    TITLE: &str = "{0}, drawing {1}";
    TOO_LARGE: &str = "Too large for true size: drawn {0}. The numbers are the tube's own.";
    /// A view with the axes that it shows.
    VIEW: &str = "{0}: {1} and {2}";
    VIEWS: [&'static str; 4] = [FRONT, TOP, RIGHT, ISOMETRIC];
    /// What a row of the table of bends is, where room is short; keys of their own.
    KINDS: [&'static str; 3] = ["kind:bend", "kind:coil", "kind:curve"];
    LAST_ROW: &str = "row:end";
    /// How a coil winds, in a line and where room is short.
    HANDS: [&'static str; 2] = ["right", "left"];
    SHORT_HANDS: [&'static str; 2] = ["hand:right", "hand:left"];
    NO_MARK: &str = "mark:none";
    /// What points are; the table of points has the same in its file, in English.
    POINT_KINDS: [&'static str; 10] = POINT_KINDS_OF_FILES;

    RUN: &str = "Run";
    DESIGN: &str = "Design";
    TUBE: &str = "Tube: outer diameter, bore";
    TUBE_IS: &str = "\u{2300}{0} \u{d7} \u{2300}{1}, wall {2}";
    MATERIAL: &str = "Material";
    LENGTH: &str = "Length of the centreline";
    MASS: &str = "Mass, g";
    SCALE: &str = "Scale";
    UNITS: &str = "Units";
    UNITS_ARE: &str = "mm, degrees";
    PROJECTED: &str = "Projection";
    THIRD_ANGLE: &str = "third angle";
    SHEET: &str = "Sheet";
    OUTSIDE: &str = "Outside size: x, y, z";
    MADE_BY: &str = "Made by";

    BODY: &str = "Body between the leads: \u{2300}{0} to \u{2300}{1}, blends {2}";
    LOBES: &str = "; {0} lobes, grooves {1} deep, twisted {2}°/mm. The views show the crests.";
    BOTH_ENDS: &str = "both ends {0} \u{d7} {1}";
    COIL: &str = "{0}: coil R{1} to R{2}";
    COIL_TURNS: &str = "{0} turns, {1}, pitch {2}";
    CURVE: &str = "{0}: curve, tightest R{1}";
    ROTATED: &str = "rotate {0}";
}
