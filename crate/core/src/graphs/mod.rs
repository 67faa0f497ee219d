//! What the plots show of a design: its numbers, put into the pictures' plain data.

mod loss;
mod margins;
mod stiffness;

pub use loss::loss;
pub use margins::margins;
pub use stiffness::stiffness;
