//! How a tube stands on a printer's plate: its stance.
//!
//! A stance is a direction of the datum that points away from the plate, `up`, a turn about it, and a lift. It is judged
//! from the exact centreline, cut into stretches that turn by no more than 3 degrees each (more only where a tube turns
//! for more than 3,000 such stretches): heights between their ends are off by at most R (1 - cos 1.5 degrees), 0.00035 of
//! the bend radius R. The box that is told, and whether it fits, come from the exact skin.
//!
//! Which pockets of the bore hold liquid, both ends being open. In a vat the tube hangs from the plate, which rises; the
//! side away from the plate is the one that grows, against the film.
//!
//! - A **cup** is a part of the bore about a low point towards the plate. Until the layers have grown past the lower of
//!   its two sills it is open to the film alone: it traps resin and pulls a vacuum each time the layer is lifted off. An
//!   end face that lies flat on the plate closes the bore there, and the bore above it is a cup too. A cup also holds what
//!   it is filled with when the plate stands on a table.
//! - A **pool** is a part of the bore about a low point as the tube hangs: away from the plate. While it grows the ends
//!   vent it, but once it has left the vat it keeps resin until it is turned over. That is washed out, so it counts little.
//!
//! Both are filled up to the lower of the highest places of the bore's floor on the two ways out, as rain water between hills;
//! the floor is its wall on the side to which liquid falls, at a mouth the lip. What of the bore lies below that level is
//! filled, bounded by its wall. Deeper than the bore is wide, it closes the bore: then it is told.

mod body;
mod ceiling;
mod cost;
mod cut_search;
mod cuts;
mod fit;
mod frame;
mod judge;
mod least_rectangle;
mod packing;
mod plates;
mod pools;
mod room;
mod search;
mod skin;
mod spiral;
mod standing;
mod supports;
mod told;

pub use cost::Cost;
pub use cuts::cuts;
pub use frame::Frame;
pub use judge::{Figures, Judge, Rules};
pub use packing::{Spot, packed};
pub use plates::{GAP, Laid, LeftOut, Plates, lay, plates};
pub use room::Room;
pub use search::{Found, search};
pub use standing::{FlatSpan, Pocket, Standing};
pub use told::{Subject, frame_of, stances};
