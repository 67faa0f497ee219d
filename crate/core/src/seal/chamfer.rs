//! The chamfer that leads a tube into its O-ring.

use super::squeeze::Gland;
use crate::out_of_range::{OutOfRange, positive, within};

/// Section, mm, and length of the chamfer along the tube, mm, for one of 15 degrees: one guide's table.
pub const LEAD_IN_SLIM: [[f64; 2]; 3] = [[1.78, 2.10], [2.62, 3.10], [3.53, 4.00]];
/// The same for one of 15 to 20 degrees: another guide's table, shorter.
pub const LEAD_IN_STEEP: [[f64; 2]; 4] = [[1.78, 1.5], [2.0, 2.0], [2.62, 2.0], [3.53, 2.5]];

/// A tube's chamfer against what its ring needs. Lengths mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chamfer {
    /// By how much it takes the tube's end in, on the radius.
    pub drop: f64,
    /// By how much it must, for the end to pass under the ring before it is squeezed: the ring's squeeze.
    pub drop_needed: f64,
    /// The shorter of the lengths that the two guides advise for the section.
    pub length_advised: f64,
    /// The longer of them.
    pub length_ample: f64,
}

/// A chamfer of a length along the tube, mm, and an angle to the tube's axis, radians, against a ring.
///
/// # Errors
/// [`OutOfRange`] for a length below zero or an angle outside (0, 1.4].
pub fn chamfer(length: f64, angle: f64, gland: &Gland) -> Result<Chamfer, OutOfRange> {
    let length = within("chamfer length", length, [0.0, f64::INFINITY], "mm")?;
    let angle = within("chamfer angle", positive("chamfer angle", angle, "rad")?, [0.0, 1.4], "rad")?;
    let (one, other) = (advised(&LEAD_IN_STEEP, gland.section), advised(&LEAD_IN_SLIM, gland.section));
    Ok(Chamfer {
        drop: length * libm::tan(angle),
        drop_needed: (gland.section - gland.gap()).max(0.0),
        length_advised: one.min(other),
        length_ample: one.max(other),
    })
}

/// What a table advises for a section: a straight line between its rows, and the nearest row outside.
fn advised(table: &[[f64; 2]], section: f64) -> f64 {
    let after = table.partition_point(|[at, _]| *at < section);
    match (after.checked_sub(1).and_then(|before| table.get(before)), table.get(after)) {
        (Some([x0, y0]), Some([x1, y1])) => y0 + (y1 - y0) * (section - x0) / (x1 - x0),
        (Some([_, only]), None) | (None, Some([_, only])) => *only,
        (None, None) => 0.0,
    }
}
