//! Tubewright's engine: from measured ports, fittings and bend radii to exact centrelines, tubes, findings and files.
//!
//! One direction: text -> design -> layout -> centreline -> tube -> mesh -> files; checks read the stages and never
//! change geometry. No clock, no randomness, no global state; all trigonometry is `libm`'s, so native and wasm agree
//! to the bit.

pub mod centreline;
pub mod check;
pub mod design;
pub mod distance;
pub mod edit;
pub mod engine;
pub mod export;
pub mod layout;
pub mod mesh;
pub mod presets;
pub mod quantity;
pub mod report;
pub mod strategies;
pub mod tube;
