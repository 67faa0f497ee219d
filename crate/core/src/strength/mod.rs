//! Whether a tube holds its pressure: the stress in its wall, what the material allows, and what a crooked fit adds.
//!
//! Pure functions of plain numbers: diameters, radii and lengths mm, pressures and stresses MPa, angles radians. A printed
//! part seldom bursts by its hoop stress: it cracks at the collar's edge, along a layer, under side load.

mod allowable;
mod bending;
mod wall;

pub use allowable::{Allowable, Factor, allowed_pressure, design_stress, iso_pressure, utilisation};
pub use bending::{angle_of_play, stress_of_angle, stress_of_offset};
pub use wall::{Wall, barlow, torus_factor};
