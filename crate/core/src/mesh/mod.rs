//! From tube to triangles.

mod solidity;

pub use solidity::{Flaw, is_solid, signed_volume, solidity};

/// A triangle mesh, mm, outward normals by the right-hand rule, closed.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Mesh {
    /// x, y, z of each vertex; a shared corner is stored once.
    pub positions: Vec<f32>,
    /// Three vertex indices a triangle, counter-clockwise seen from outside.
    pub indices: Vec<u32>,
}
