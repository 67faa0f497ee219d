//! The drawing's words, in one place.

/// What stands over the table of bends, a heading a column, and how wide the columns are, mm.
pub(super) const BENDS: [(&str, f64); 7] = [
    ("Bend", 9.0),
    ("is a", 11.0),
    ("Straight", 15.0),
    ("Rotate", 14.0),
    ("Angle", 13.0),
    ("Radius", 13.0),
    ("Length", 15.0),
];
/// What stands over the table of points.
pub(super) const POINTS: [(&str, f64); 6] =
    [("Point", 9.0), ("is a", 28.0), ("of bend", 11.0), ("x", 16.0), ("y", 16.0), ("z", 16.0)];

pub(super) const BEND_TABLE: &str = "Bend table, fed from point 0";
pub(super) const POINT_TABLE: &str = "Points, in the design's datum";
pub(super) const ENDS: &str = "Ends; the seat mark by its distance from the end face";

pub(super) const PROJECTION: &str = "Third-angle projection: each view stands on the side that it is seen from.";
pub(super) const LEGS: &str =
    "Lengths of legs go from apex to apex, where the straights before and after a bend would meet.";
pub(super) const UNDERLINED: &str =
    "An underlined length is seen foreshortened in its view; the number is the true length.";
pub(super) const ROTATION: &str =
    "Rotate: about the way the tube is fed, by the right-hand rule, from the bend before; the first is 0.";
/// Beside the check bar, two lines.
pub(super) const BAR: [&str; 2] =
    ["50 mm: measure this bar on the print. If it is not 50 mm,", "print again at 100 %, without “fit to page”."];
pub(super) const GLUE: &str = "On A4 tiles: trim one of two neighbours and lay the crosses on each other.";

/// Said where a table does not show all rows.
pub(super) fn more_rows(more: usize) -> String {
    format!("and {more} more: see the file of the table")
}

/// What stands over the table of ends.
pub(super) const END_COLUMNS: [(&str, f64); 8] = [
    ("Point", 9.0),
    ("in port", 24.0),
    ("Chamfer °", 16.0),
    ("long", 12.0),
    ("Edge break", 17.0),
    ("Trim", 12.0),
    ("In socket", 15.0),
    ("Seat mark", 16.0),
];

pub(super) const COILS: &str = "Coils: of the centreline; the centre lies on the axis, level with the start";
/// What stands over the table of coils.
pub(super) const COIL_COLUMNS: [(&str, f64); 13] = [
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
