//! Whether an O-ring on the tube seals in its fitting: how much it is squeezed, how full its groove is, and how sure both
//! are.
//!
//! The ring's section is taken as it comes: what its stretch over the tube takes from it is not reckoned. All mm.

mod chamfer;
mod section;
mod squeeze;
mod stack;

pub use chamfer::{Chamfer, LEAD_IN_SLIM, LEAD_IN_STEEP, chamfer};
pub use section::{inside_diameter_tolerance, section_tolerance};
pub use squeeze::{Gland, best_outer_diameter, mean_squeeze};
pub use stack::{Stack, Tolerances};
