//! What the plots show of a design: its numbers, put into the pictures' plain data.

mod loss;
mod margins;
mod stiffness;
mod words;

pub use loss::loss;
pub use margins::margins;
pub use stiffness::stiffness;
pub(crate) use words::all as templates;
