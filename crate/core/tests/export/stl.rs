//! STL files, read back by stl_io's reader.

use crate::shapes::quarter_bend;
use std::io::Cursor;
use tubewright_core::export::stl;
use tubewright_core::mesh::{Mesh, signed_volume, solidity};

fn read(bytes: &[u8]) -> stl_io::IndexedMesh {
    stl_io::read_stl(&mut Cursor::new(bytes)).expect("stl_io reads it")
}

/// Every facet of the file, in order.
fn facets(mesh: &Mesh) -> Vec<stl_io::Triangle> {
    let mut bytes = Cursor::new(stl(mesh, "bend"));
    stl_io::create_stl_reader(&mut bytes).expect("stl_io opens it").collect::<Result<_, _>>().expect("stl_io reads it")
}

#[test]
fn the_bend_made_by_hand_is_what_the_tests_take_it_for() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 64, 65);
    assert_eq!(solidity(&mesh), []);
    // Pappus for polygons of 64 corners: the flat sections lose 1 - (64 / 2 pi) sin(2 pi / 64) = 0.0016; the 64 straight
    // steps along the bend lose another 0.0001.
    let exact = core::f64::consts::PI * (64.0 - 36.0) * 32.0 * core::f64::consts::FRAC_PI_2;
    assert!((signed_volume(&mesh) / exact - 1.0 + 0.0017).abs() < 0.0002);
}

#[test]
fn triangles_come_back_to_the_bit() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 24, 9);
    let back = facets(&mesh);
    let sent: Vec<[[f32; 3]; 3]> = (mesh.indices.chunks_exact(3))
        .map(|t| [0, 1, 2].map(|k| [0, 1, 2].map(|axis| mesh.positions[t[k] as usize * 3 + axis])))
        .collect();
    assert_eq!(back.iter().map(|t| t.vertices.map(|v| v.0)).collect::<Vec<_>>(), sent);
    // A shared corner is shared to the bit, so a reader that joins equal corners finds the same solid.
    let joined = read(&stl(&mesh, "t"));
    joined.validate().expect("stl_io finds it closed");
    assert_eq!(joined.vertices.len(), mesh.positions.len() / 3);
}

#[test]
fn normals_point_along_the_facets() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 24, 9);
    for facet in facets(&mesh) {
        let [n, a, b, c] =
            [facet.normal, facet.vertices[0], facet.vertices[1], facet.vertices[2]].map(|v| v.0.map(f64::from));
        let dot = |p: [f64; 3], q: [f64; 3]| (0..3).map(|axis| n[axis] * (q[axis] - p[axis])).sum::<f64>();
        assert!((n.iter().map(|x| x * x).sum::<f64>() - 1.0).abs() < 1e-6);
        assert!(dot(a, b).abs() < 1e-5 && dot(b, c).abs() < 1e-5, "across the facet");
    }
    // The first end face lies in y = 0 and the solid behind it, at y > 0.
    let caps: Vec<_> = facets(&mesh).into_iter().filter(|facet| facet.vertices.iter().all(|v| v.0[1] == 0.0)).collect();
    assert!(caps.len() == 48 && caps.iter().all(|facet| facet.normal.0 == [0.0, -1.0, 0.0]));
}

#[test]
fn a_flat_facet_has_no_normal_and_does_no_harm() {
    let flat = Mesh { positions: vec![0.0, 0.0, 0.0, 1.0, 1.0, 1.0, 2.0, 2.0, 2.0], indices: vec![0, 1, 2] };
    assert_eq!(read(&stl(&flat, "")).faces[0].normal.0, [0.0; 3]);
    assert_eq!(read(&stl(&Mesh::default(), "")).faces.len(), 0);
}

#[test]
fn the_header_is_80_bytes_of_plain_words() {
    let mesh = quarter_bend(32.0, 8.0, 6.0, 8, 3);
    for title in
        ["pump to block", "", "solid", "solid COLOR=\u{1}\u{2}", &"very long ".repeat(40), "\u{202e}übergroß/\n"]
    {
        let bytes = stl(&mesh, title);
        assert_eq!(bytes.len(), 84 + 50 * mesh.indices.len() / 3);
        let header = std::str::from_utf8(&bytes[..80]).expect("plain");
        assert!(
            header.starts_with("Tubewright, unit mm") && header.chars().all(|c| (' '..='~').contains(&c)),
            "{header}"
        );
        assert!(!header.contains('='));
        assert_eq!(read(&bytes).faces.len(), mesh.indices.len() / 3);
    }
    assert_eq!(stl(&mesh, "pump to block"), stl(&mesh, "pump to block"));
}
