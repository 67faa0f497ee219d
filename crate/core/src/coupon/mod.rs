//! The fit coupon: short double-ended tubes whose ends are those of a run, in a ladder of sizes round the stated one, to be
//! tried in the real fitting and measured. Outer diameter and bore step together, so that the wall, the chamfer and the
//! edge break are the run's own at every end; rings beyond the socket say which end it is.
//!
//! Sizes of the sticks are common practice, no source.

mod compensation;
mod readings;
mod stick;

pub use compensation::{Compensation, HeldBack, Slip, correction};
pub use readings::{CALIPERS, FEWEST, MeanOff, lengths, sizes};
pub use stick::{COUNT, Coupon, CouponEnd, CouponFault, Ladder, RING, STEP, Stick};
