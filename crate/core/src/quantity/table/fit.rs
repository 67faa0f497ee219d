//! What calipers read of a fit coupon.

use super::super::{Quantity, group, number, text};
use super::NAME;

rows! {
    /// The coupon.
    FIT = group("/process/fit", "Fit coupon",
        "Print a coupon, try its ends in the fitting and measure it: the files are then corrected for how your printer prints.");
    /// Material of the coupon.
    FIT_MATERIAL = text("/process/fit/material", "Coupon's material", NAME, None,
        "The material that the coupon was printed in; for another one the readings are kept but not used.");
    /// Printer of the coupon.
    FIT_PRINTER = text("/process/fit/printer", "Coupon's printer", NAME, None,
        "The printer that the coupon was printed on; for another one the readings are kept but not used.");
    /// Outer diameter as stated.
    FIT_OUTER = number("/process/fit/outer/*/nominal", "Outer diameter in the file", "mm",
        "What the end that you measure has in the file: count its rings.")
        .above(0.0).to(500.0).step(0.05, 12.0);
    /// Outer diameter as printed.
    FIT_OUTER_MEASURED = number("/process/fit/outer/*/measured", "Outer diameter measured", "mm",
        "Between the chamfer and the first ring, the mean of two readings a quarter turn apart; leave it empty until it is read.")
        .above(0.0).to(500.0).step(0.01, 12.08);
    /// Bore as stated.
    FIT_BORE = number("/process/fit/bore/*/nominal", "Bore in the file", "mm",
        "What the end that you measure has in the file: count its rings.")
        .above(0.0).to(500.0).step(0.05, 8.0);
    /// Bore as printed.
    FIT_BORE_MEASURED = number("/process/fit/bore/*/measured", "Bore measured", "mm",
        "The thickest drill shank that slides in reads truer than the jaws, which read small bores too small.")
        .above(0.0).to(500.0).step(0.01, 7.95);
    /// Length as stated.
    FIT_LENGTH = number("/process/fit/length/*/nominal", "Length in the file", "mm",
        "What you measure has this length in the file; the longer it is, the truer the reading.")
        .above(0.0).to(10_000.0).step(1.0, 60.0);
    /// Length as printed.
    FIT_LENGTH_MEASURED = number("/process/fit/length/*/measured", "Length measured", "mm",
        "From end face to end face; leave it empty until it is read.")
        .above(0.0).to(10_000.0).step(0.01, 59.8);
    /// The end that fitted.
    FITTED = group("/process/fit/fitted", "The end that fitted best",
        "It goes in by hand and does not wobble; from then on tubes of that size are aimed at what it measures.");
    /// The tubes that the end that fitted is for.
    FITTED_OUTER = number("/process/fit/fitted/outer_diameter", "For tubes of", "mm",
        "The outer diameter that the runs for this fitting are stated with.")
        .above(0.0).to(500.0).step(0.5, 12.0);
    /// What the end that fitted measures.
    FITTED_MEASURED = number("/process/fit/fitted/measured", "It measures", "mm",
        "What your calipers read over the outside of the end that fitted best.")
        .above(0.0).to(500.0).step(0.01, 12.03);
}
