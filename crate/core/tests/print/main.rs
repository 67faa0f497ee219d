//! How a tube stands on the printer's plate.

mod plates;
#[path = "../print_support/mod.rs"]
mod print_support;
mod search;
mod stances;
