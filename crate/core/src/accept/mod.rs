//! What a print service asks of a file before it takes it, asked of the file's own bytes.

mod question;
mod read;

pub use question::{Asked, Limits, Question, questions};
pub use read::{Solid, read_stl};
