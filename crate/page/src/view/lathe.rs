//! Solids of revolution for fittings, seats and keep-outs, in the same form as a tube's skin.

use tubewright_core::layout::Vec3;

use super::stroke::{ring, small};

/// Faces of plain bodies, ready for shading.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Body {
    /// Positions, mm.
    pub points: Vec<[f32; 3]>,
    /// Unit normals, outward.
    pub normals: Vec<[f32; 3]>,
    /// Unit vectors away from the axis: a section takes away where they look toward the eye. Zero: never.
    pub radials: Vec<[f32; 3]>,
    /// Three vertices a triangle.
    pub indices: Vec<u32>,
}

impl Body {
    /// Adds what turning `profile` (height above `from` along the unit `axis`, radius; bottom first) makes, with a flat
    /// face for each of its steps. Ends of radius zero close it.
    pub fn turn(&mut self, from: &Vec3, axis: &Vec3, profile: &[[f64; 2]], cut: bool) {
        let spokes: Vec<Vec3> = ring(axis).collect();
        for step in profile.windows(2) {
            let (rise, run) = (step[1][0] - step[0][0], step[1][1] - step[0][1]);
            let slope = (rise * rise + run * run).sqrt();
            if slope <= 1e-9 {
                continue;
            }
            let first = self.points.len() as u32;
            for spoke in &spokes {
                for [height, radius] in step {
                    self.points.push(small(&(from + axis * *height + spoke * *radius)));
                    self.normals.push(small(&((spoke * rise - axis * run) / slope)));
                    self.radials.push(if cut { small(spoke) } else { [0.0; 3] });
                }
            }
            self.close(first, spokes.len() as u32);
        }
    }

    /// Adds a sphere, smooth, which a section halves.
    pub fn ball(&mut self, centre: &Vec3, radius: f64) {
        const BANDS: usize = 24;
        let axis = Vec3::z();
        let spokes: Vec<Vec3> = ring(&axis).collect();
        for band in 0..BANDS {
            let first = self.points.len() as u32;
            for spoke in &spokes {
                for edge in [band, band + 1] {
                    let (sin, cos) = libm::sincos(edge as f64 * std::f64::consts::PI / BANDS as f64);
                    let normal = spoke * sin - axis * cos;
                    self.points.push(small(&(centre + normal * radius)));
                    self.normals.push(small(&normal));
                    self.radials.push(small(&normal));
                }
            }
            self.close(first, spokes.len() as u32);
        }
    }

    /// Adds a box along the axes.
    pub fn cuboid(&mut self, corners: &[[f64; 3]; 8]) {
        for axis in 0..3 {
            let (across, up) = ((axis + 1) % 3, (axis + 2) % 3);
            for side in 0..2usize {
                let first = self.points.len() as u32;
                let mut normal = [0.0; 3];
                normal[axis] = if side == 1 { 1.0 } else { -1.0 };
                for (right, top) in [(0usize, 0usize), (1, 0), (1, 1), (0, 1)] {
                    let corner = corners[side << axis | right << across | top << up];
                    self.points.push(corner.map(|value| value as f32));
                    self.normals.push(normal);
                    self.radials.push([0.0; 3]);
                }
                let turn = if side == 1 { [0, 1, 2, 0, 2, 3] } else { [0, 2, 1, 0, 3, 2] };
                self.indices.extend(turn.map(|corner| first + corner));
            }
        }
    }

    /// Joins pairs of points that go round into a closed band, counter-clockwise seen from outside.
    fn close(&mut self, first: u32, pairs: u32) {
        for pair in 0..pairs {
            let (a, b) = (first + 2 * pair, first + 2 * ((pair + 1) % pairs));
            self.indices.extend([a, b, b + 1, a, b + 1, a + 1]);
        }
    }
}
