//! The fit coupon: its ends, what its readings say, and what the files are given.

use super::{EXACT, GEOMETRY, Origin, PRACTICE, origin};

const COUNTED: &str = "Counted.";
const MEAN: &str = "Mean of measured less stated";
const DEVIATION: &str = "Sample standard deviation, the sum of squares over n - 1";
const WITHIN: &str =
    "t s sqrt(1 + 1/n), t being Student's for 95 % and n - 1; at least 0.02 mm, which is as fine as calipers read";
const STATISTICS: &str = "prediction interval of one further value, any handbook of statistics; t: NIST/SEMATECH e-Handbook of \
                          Statistical Methods, 1.3.6.7.2";
const SCATTER: &str = "Three readings or more; from three it is wide. It tells of one print of one day: print a coupon again when \
                       resin, exposure or nozzle change.";
const OUTER: &[&str] = &["/process/fit/outer/*/nominal", "/process/fit/outer/*/measured"];
const BORE: &[&str] = &["/process/fit/bore/*/nominal", "/process/fit/bore/*/measured"];
const LENGTH: &[&str] = &["/process/fit/length/*/nominal", "/process/fit/length/*/measured"];
const LADDER: &str =
    "The stated diameter, and three steps of 0.05 mm to either side; the bore steps along, so that the wall stays";

pub(super) const ROWS: &[Origin] = &[
    origin("/fit/outer/readings", "Outer diameters read", "").by("Count", GEOMETRY).holds(COUNTED).of(OUTER),
    origin("/fit/outer/off_mm", "Outer diameter comes out off by", "mm")
        .by(MEAN, "arithmetic mean")
        .holds("Taken to be the same for every diameter: what light and nozzle add at an edge is. Near the size measured it holds best.")
        .of(OUTER),
    origin("/fit/outer/deviation_mm", "Outer diameter: standard deviation", "mm")
        .by(DEVIATION, "any handbook of statistics")
        .holds(SCATTER)
        .of(OUTER),
    origin("/fit/outer/within_mm", "Outer diameter: the next print is within, ±", "mm")
        .by(WITHIN, STATISTICS)
        .holds(SCATTER)
        .of(&["/fit/outer/deviation_mm", "/fit/outer/readings"]),
    origin("/fit/bore/readings", "Bores read", "").by("Count", GEOMETRY).holds(COUNTED).of(BORE),
    origin("/fit/bore/off_mm", "Bore comes out off by", "mm")
        .by(MEAN, "arithmetic mean")
        .holds("Taken to be the same for every bore. Jaws read small bores too small; a drill shank reads truer.")
        .of(BORE),
    origin("/fit/bore/deviation_mm", "Bore: standard deviation", "mm")
        .by(DEVIATION, "any handbook of statistics")
        .holds(SCATTER)
        .of(BORE),
    origin("/fit/bore/within_mm", "Bore: the next print is within, ±", "mm")
        .by(WITHIN, STATISTICS)
        .holds(SCATTER)
        .of(&["/fit/bore/deviation_mm", "/fit/bore/readings"]),
    origin("/fit/length/readings", "Lengths read", "").by("Count", GEOMETRY).holds(COUNTED).of(LENGTH),
    origin("/fit/length/off_percent", "Length comes out off by", "%")
        .by("All measured lengths over all stated ones, less 1", "definition of linear shrinkage")
        .holds("Taken to be the same along every direction. Calipers are off by 0.02 mm: on 60 mm that is 0.03 %.")
        .of(LENGTH),
    origin("/fit/runs/*/aim_mm", "Tube is aimed at", "mm")
        .by("What the end that fitted best measures, for tubes of its size; else the stated outer diameter", PRACTICE)
        .holds("Results such as the squeeze are told for the stated diameter.")
        .of(&["/process/fit/fitted/measured", "/process/fit/fitted/outer_diameter", "/runs/*/tube/outer_diameter"]),
    origin("/fit/runs/*/file_outer_mm", "Outer diameter in the file", "mm")
        .by("Aim − how far outer diameters come out off", GEOMETRY)
        .holds("All along the tube; chamfers, rings and grooves keep their depths.")
        .of(&["/fit/runs/*/aim_mm", "/fit/outer/off_mm"]),
    origin("/fit/runs/*/file_bore_mm", "Bore in the file", "mm")
        .by("Stated bore − how far bores come out off", GEOMETRY)
        .holds("All along the tube. Places along it are divided by how long lengths come out, about the datum.")
        .of(&["/runs/*/tube/bore", "/fit/bore/off_mm"]),
    origin("/fit/runs/*/coupon/length_mm", "Length of a stick", "mm")
        .by("Twice the socket, 2 mm and the rings, and 10 mm to hold it by; up to the next 5 mm", PRACTICE)
        .holds(EXACT)
        .of(&["/fittings/*/socket_depth"]),
    origin("/fit/runs/*/coupon/sticks/*/*/rings", "Rings", "")
        .by("Place of the end in the ladder, from the thinnest", PRACTICE)
        .holds(COUNTED)
        .of(&[]),
    origin("/fit/runs/*/coupon/sticks/*/*/outer_mm", "Outer diameter of an end", "mm")
        .by(LADDER, PRACTICE)
        .holds(EXACT)
        .of(&["/runs/*/tube/outer_diameter"]),
    origin("/fit/runs/*/coupon/sticks/*/*/bore_mm", "Bore of an end", "mm")
        .by(LADDER, PRACTICE)
        .holds(EXACT)
        .of(&["/runs/*/tube/bore"]),
];
