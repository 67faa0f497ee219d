//! Meshes made by hand, so that files are tested against something the mesher had no part in.

use tubewright_core::mesh::Mesh;

/// A hollow quarter bend about the z axis: `around` corners a ring, `along` rings, radii in mm. Its first end face lies
/// in the plane y = 0, the bend begins at x = `bend`.
pub fn quarter_bend(bend: f64, outer: f64, bore: f64, around: u32, along: u32) -> Mesh {
    let mut mesh = Mesh::default();
    for ring in 0..along {
        for radius in [outer, bore] {
            for k in 0..around {
                let (s, c) = libm::sincos(f64::from(k) / f64::from(around) * core::f64::consts::TAU);
                let (sin, cos) = libm::sincos(f64::from(ring) / f64::from(along - 1) * core::f64::consts::FRAC_PI_2);
                let out = bend + radius * c;
                mesh.positions.extend([out * cos, out * sin, radius * s].map(|x| x as f32));
            }
        }
    }
    // Vertex of a ring, on its outer (0) or bore (1) circle.
    let at = |ring: u32, circle: u32, k: u32| (ring * 2 + circle) * around + k % around;
    let mut quad = |a: u32, b: u32, c: u32, d: u32| mesh.indices.extend([a, b, c, a, c, d]);
    for k in 0..around {
        for ring in 0..along - 1 {
            quad(at(ring, 0, k), at(ring + 1, 0, k), at(ring + 1, 0, k + 1), at(ring, 0, k + 1));
            quad(at(ring, 1, k), at(ring, 1, k + 1), at(ring + 1, 1, k + 1), at(ring + 1, 1, k));
        }
        let last = along - 1;
        quad(at(0, 0, k), at(0, 0, k + 1), at(0, 1, k + 1), at(0, 1, k));
        quad(at(last, 0, k), at(last, 1, k), at(last, 1, k + 1), at(last, 0, k + 1));
    }
    mesh
}
