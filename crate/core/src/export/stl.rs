//! Binary STL.

use super::APPLICATION;
use crate::mesh::Mesh;
use stl_io::{Normal, Triangle, Vertex};

/// Bytes of the header.
pub const STL_HEADER: usize = 80;
/// Bytes of the header and the count after it, and of each triangle.
const HEAD: u64 = STL_HEADER as u64 + 4;
const TRIANGLE: u64 = 50;

/// Size of a binary STL of so many triangles, bytes.
pub fn stl_size(triangles: u64) -> u64 {
    HEAD + TRIANGLE * triangles
}

/// `mesh` as binary STL, mm. The header holds the program's name, the unit and what of `title` is plain; it never
/// starts with "solid", which readers take for the text form. Each facet's normal is that of its `f32` corners.
pub fn stl(mesh: &Mesh, title: &str) -> Vec<u8> {
    let corners = mesh.positions.as_chunks::<3>().0;
    let indices = mesh.indices.as_chunks::<3>().0;
    let triangles = indices.iter().map(|&[a, b, c]| {
        let [a, b, c] = [corners[a as usize], corners[b as usize], corners[c as usize]];
        Triangle { normal: normal(a, b, c), vertices: [Vertex::new(a), Vertex::new(b), Vertex::new(c)] }
    });
    let mut bytes = Vec::with_capacity(stl_size(indices.len() as u64) as usize);
    // The crate writes a header of zeros; memory takes all that is written to it.
    stl_io::write_stl(&mut bytes, triangles).expect("memory refuses no byte");
    bytes[..STL_HEADER].copy_from_slice(&header(title));
    bytes
}

/// Unit normal of a triangle, worked in `f64` and rounded once; zero where the corners span no area.
fn normal(a: [f32; 3], b: [f32; 3], c: [f32; 3]) -> Normal {
    // Written out, for an array's `map` does not inline here and takes three times as long.
    let way = |from: [f32; 3], to: [f32; 3], axis: usize| f64::from(to[axis]) - f64::from(from[axis]);
    let u = [way(a, b, 0), way(a, b, 1), way(a, b, 2)];
    let v = [way(a, c, 0), way(a, c, 1), way(a, c, 2)];
    let across = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    let length = (across[0] * across[0] + across[1] * across[1] + across[2] * across[2]).sqrt();
    if length > 0.0 {
        let [x, y, z] = across;
        Normal::new([(x / length) as f32, (y / length) as f32, (z / length) as f32])
    } else {
        Normal::new([0.0; 3])
    }
}

/// Program, unit and title, padded with spaces. Letters, digits and a few marks alone are kept of the title: some
/// readers look for colours after words such as "COLOR=".
fn header(title: &str) -> [u8; STL_HEADER] {
    let plain = |c: &char| c.is_ascii_alphanumeric() || matches!(c, ' ' | '-' | '_' | '.' | ',');
    let words = format!("{APPLICATION}, unit mm, {}", title.chars().filter(plain).collect::<String>());
    let mut header = [b' '; STL_HEADER];
    for (place, byte) in header.iter_mut().zip(words.bytes()) {
        *place = byte;
    }
    header
}
