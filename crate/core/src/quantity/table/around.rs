//! What is round the tubes: keep-outs and clearance.

use super::super::{Quantity, number, text};
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
}
