//! The geometry of nearest distances: centrelines to one another, to themselves and to solids; solids to solids.
//!
//! Straights are exact. Arcs are halved only where a chord, less how far the arc strays from it, could still beat the
//! best pair so far. That bound tightens with the square of the arc's angle, so even arcs that run side by side settle
//! after a few hundred looks. An answer is within [`SETTLED`] of the least distance, and then follows the exact curves
//! to the bottom of the dip it found. All work is counted, so no design can make it hang.

mod body;
mod budget;
mod curve;
mod curve_solid;
mod segment;
mod solid;
mod solids;
mod span;

pub use body::{Body, box_gap};
pub use budget::Budget;
pub use curve::{Near, between, within_itself};
pub use curve_solid::{NearSolid, to_solid};
pub use segment::{on_segment, segments};
pub use solid::Solid;
pub use solids::{SolidGap, apart};

/// A found distance is at most this far above the least one, mm: a tenth of the printed skin's own deviation.
pub const SETTLED: f64 = 1e-3;
