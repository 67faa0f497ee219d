//! What a run is in service: how warm its material may get, what pressure it holds, whether its ends seal, what it costs
//! the pump and where it keeps air. Joins what the builder stated to the formulas; the checks and the report read it.
//!
//! A figure that is not known leaves out what would follow from it.

mod circuit;
mod cost;
mod flow;
mod heat;
mod joint;
mod leak;
mod seal;
mod strength;

pub use circuit::{Agreed, Circuit, Cost, Item, coolant_volume};
pub use cost::{WASTE, material_cost, order_price, piece_price, print_cost};
pub use flow::{Flow, conditions, coolant, course, courses, sweep, usual_share};
pub use heat::{CARE_MARGIN, Heat, STOP_MARGIN, growth};
pub use joint::JointLoad;
pub use leak::LeakFound;
pub use seal::{ACCEPTED, GLAND_TOLERANCE, SealAtEnd, SealFault, TUBE_TOLERANCE, TubeKnown, tube_tolerance};
pub use strength::{Strength, allowable, allowed_side_load, side_load, thinnest_outer};
