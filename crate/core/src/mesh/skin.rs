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

/// How a skin's rings are drawn and sewn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Seam {
    /// Corners of a ring.
    pub around: usize,
    /// Waves round a ring.
    pub count: u32,
    /// Whether quads are cut the other way: along the waves, where these turn left-handed about the travel.
    pub turned: bool,
    pub side: Side,
}

/// Adds the skin through `rings` and gives the index of its first corner.
pub(super) fn sew(mesh: &mut Mesh, rings: &[Ring], seam: &Seam) -> u32 {
    let start = (mesh.positions.len() / 3) as u32;
    let angle = |corner: usize| 2.0 * PI * corner as f64 / seam.around as f64;
    let directions: Vec<[(f64, f64); 2]> = (0..seam.around)
        .map(|corner| [libm::sincos(angle(corner)), libm::sincos(f64::from(seam.count) * angle(corner))])
        .collect();
    for ring in rings {
        let (sin_phase, cos_phase) = libm::sincos(ring.wave[1]);
        for [(sin, cos), (sin_wave, cos_wave)] in &directions {
            let radius = if ring.wave[0] > 0.0 {
                ring.radius + ring.wave[0] * (cos_wave * cos_phase + sin_wave * sin_phase)
            } else {
                ring.radius
            };
            let offset = (ring.across[0] * *cos + ring.across[1] * *sin) * radius;
            let point = ring.centre + ring.bends.iter().flatten().fold(offset, |offset, bend| bend.place(&offset));
            mesh.positions.extend([point.x as f32, point.y as f32, point.z as f32]);
        }
    }
    let around = seam.around as u32;
    for ring in 0..rings.len() as u32 - 1 {
        let (here, there) = (start + ring * around, start + (ring + 1) * around);
        for corner in 0..around {
            let next = (corner + 1) % around;
            let [a, b, c, d] = [here + corner, here + next, there + next, there + corner];
            mesh.indices.extend(match (seam.side, seam.turned) {
                (Side::Outer, false) => [a, b, c, a, c, d],
                (Side::Outer, true) => [a, b, d, b, c, d],
                (Side::Bore, false) => [a, c, b, a, d, c],
                (Side::Bore, true) => [a, d, b, b, d, c],
            });
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
