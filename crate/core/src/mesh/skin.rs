//! Sews rings into a skin.

use super::Mesh;
use super::rings::{InBend, Ring};
use crate::layout::Vec3;
use core::f64::consts::PI;

/// Which way a skin looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Side {
    /// Away from the centreline.
    Outer,
    /// Towards it.
    Bore,
}

/// Adds the skin through `rings`, each of `around` corners, and gives the index of its first corner.
pub(super) fn sew(mesh: &mut Mesh, rings: &[Ring], around: usize, side: Side) -> u32 {
    let start = (mesh.positions.len() / 3) as u32;
    let directions: Vec<(f64, f64)> =
        (0..around).map(|corner| libm::sincos(2.0 * PI * corner as f64 / around as f64)).collect();
    for ring in rings {
        for (sin, cos) in &directions {
            let offset = (ring.across[0] * *cos + ring.across[1] * *sin) * ring.radius;
            let point = ring.centre + ring.bends.iter().flatten().fold(offset, |offset, bend| bend.place(&offset));
            mesh.positions.extend([point.x as f32, point.y as f32, point.z as f32]);
        }
    }
    let around = around as u32;
    for ring in 0..rings.len() as u32 - 1 {
        let (here, there) = (start + ring * around, start + (ring + 1) * around);
        for corner in 0..around {
            let next = (corner + 1) % around;
            let [a, b, c, d] = [here + corner, here + next, there + next, there + corner];
            match side {
                Side::Outer => mesh.indices.extend([a, b, c, a, c, d]),
                Side::Bore => mesh.indices.extend([a, c, b, a, d, c]),
            }
        }
    }
    start
}

impl InBend {
    /// Where a corner `offset` from the ring's centre goes: its distance from the bend's axis stretched, and kept.
    fn place(&self, offset: &Vec3) -> Vec3 {
        let distance = self.radius + offset.dot(&self.outward);
        let placed = (distance * self.stretch).max(self.floor);
        offset + self.outward * (placed - distance)
    }
}
