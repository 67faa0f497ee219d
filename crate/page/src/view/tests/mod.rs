//! The preview's reckoning, held against plane geometry and against the engine's own tubes.

mod camera;
mod coolant;
mod grid;
mod grip;
mod guide;
mod look;
mod model;
mod real;
mod sight;
mod skin;
mod tags;
