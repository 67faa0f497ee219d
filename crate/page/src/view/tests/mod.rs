//! The preview's reckoning, held against plane geometry and against the engine's own tubes.

mod camera;
mod grid;
mod grip;
mod guide;
mod model;
mod real;
mod sight;
mod skin;
