//! The preview: tubes, ports, fittings, keep-outs, axes and squared paper on a canvas.
//!
//! It is given arrays and the engine's scene, never a design. What it reckons (the eye, normals, lines) is plain code
//! that tests run natively; what touches the graphics card is in `host`, `device`, `picture`, `solid`, `glass` and `pen`, for wasm alone.

pub mod axes;
pub mod camera;
pub mod coolant;
pub mod furniture;
pub mod grid;
pub mod grip;
pub mod guide;
pub mod lathe;
pub mod look;
pub mod model;
pub mod outline;
pub mod scene;
pub mod sight;
pub mod skin;
pub mod stroke;
pub mod tags;
pub mod theme;
pub mod words;

#[cfg(test)]
mod tests;

#[cfg(target_arch = "wasm32")]
mod device;
#[cfg(target_arch = "wasm32")]
mod glass;
#[cfg(target_arch = "wasm32")]
mod host;
#[cfg(target_arch = "wasm32")]
mod pen;
#[cfg(target_arch = "wasm32")]
mod picture;
#[cfg(target_arch = "wasm32")]
mod solid;

#[cfg(target_arch = "wasm32")]
pub use host::View;
