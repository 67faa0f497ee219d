//! Tubewright's engine: from measured ports, fittings and bend radii to exact centrelines, tubes, findings and files.
//!
//! One direction: text -> design -> layout -> centreline -> tube -> mesh -> files; checks read the stages and never
//! change geometry. No clock, no randomness, no global state; all trigonometry is `libm`'s, so native and wasm agree
//! to the bit.

pub mod accept;
pub mod bleed;
mod cautions;
pub mod centreline;
pub mod check;
pub mod code;
pub mod coupon;
pub mod design;
pub mod distance;
pub mod edit;
pub mod engine;
pub mod export;
pub mod flow;
mod golden;
pub mod graphs;
pub mod heat;
pub mod layout;
pub mod leak;
pub mod mesh;
pub mod opened;
pub mod origin;
pub mod out_of_range;
pub mod plot;
pub mod presets;
pub mod print;
pub mod quantity;
pub mod report;
mod request;
pub mod seal;
pub mod service;
pub mod sheet;
pub mod strategies;
pub mod strength;
pub mod tongue;
pub mod tube;
pub mod variants;
