//! The design document: its types, how a text becomes one, and its canonical form.

mod canonical;
mod making;
mod model;
mod node;
mod parse;
mod patch;
mod place;
mod reader;
mod refusal;
mod syntax;
pub(crate) mod wording;
mod working;
mod writer;

pub use canonical::canonical;
pub use making::*;
pub use model::*;
pub use node::{LONGEST_TEXT, too_long};
pub use parse::{FORMAT, VERSION, parse, problems};
pub use patch::patched;
pub(crate) use place::key_pointer;
pub use refusal::Refusal;
pub use working::*;
