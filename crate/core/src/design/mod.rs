//! The design document: its types, how a text becomes one, and its canonical form.

mod model;
mod refusal;

pub use model::*;
pub use refusal::Refusal;
