//! Binary STL read back into a mesh: what whoever prints it will see.

use std::io::Cursor;

use crate::export::STL_HEADER;
use crate::mesh::Mesh;

/// What a file's bytes hold.
#[derive(Debug, Clone, PartialEq)]
pub struct Solid {
    /// The triangles, corners at the same place being one.
    pub mesh: Mesh,
    /// The words of the header.
    pub header: String,
    /// Size of the file, bytes.
    pub bytes: usize,
}

/// Reads binary STL; none where the bytes are none.
pub fn read_stl(bytes: &[u8]) -> Option<Solid> {
    let header = bytes.get(..STL_HEADER)?;
    let read = stl_io::read_stl(&mut Cursor::new(bytes)).ok()?;
    let mesh = Mesh {
        positions: read.vertices.iter().flat_map(|vertex| <[f32; 3]>::from(*vertex)).collect(),
        indices: read.faces.iter().flat_map(|face| face.vertices).map(|vertex| vertex as u32).collect(),
    };
    Some(Solid { mesh, header: String::from_utf8_lossy(header).trim_end().to_owned(), bytes: bytes.len() })
}
