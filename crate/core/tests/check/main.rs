//! What the checks find, each by its question, and what their fixes do.

mod assembly;
#[path = "../check_support/mod.rs"]
mod check_support;
mod distance;
mod dress;
mod ends;
mod fixes;
mod loops;
mod meets;
mod print;
#[path = "../print_support/mod.rs"]
mod print_support;
mod radius;
mod service;
#[path = "../shapes_support/mod.rs"]
mod shapes_support;
