//! The predicate that says whether a mesh is a solid, held against cubes spoiled in every way it must see.

use tubewright_core::mesh::{Flaw, Mesh, signed_volume, solidity};

/// A unit cube with a corner at `at`, outward.
fn cube(at: f32) -> Mesh {
    let positions = (0..8).flat_map(|k| [k & 1, k >> 1 & 1, k >> 2]).map(|bit| at + bit as f32).collect();
    let quads = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
    let indices = quads.iter().flat_map(|&[a, b, c, d]| [a, b, c, a, c, d]).collect();
    Mesh { positions, indices }
}

fn joined(mut a: Mesh, b: &Mesh) -> Mesh {
    let offset = a.positions.len() as u32 / 3;
    a.positions.extend(&b.positions);
    a.indices.extend(b.indices.iter().map(|index| index + offset));
    a
}

#[test]
fn a_cube_is_solid_wherever_it_stands() {
    for at in [0.0, -0.5, 1000.0] {
        assert_eq!(solidity(&cube(at)), []);
        assert!((signed_volume(&cube(at)) - 1.0).abs() < 1e-9);
    }
}

#[test]
fn what_cannot_be_read_is_said_alone() {
    assert_eq!(solidity(&Mesh::default()), [Flaw::Empty]);
    let mut mesh = cube(0.0);
    mesh.positions[4] = f32::NAN;
    assert_eq!(solidity(&mesh), [Flaw::NotFinite { vertex: 1 }]);
    mesh.indices[7] = 8;
    assert_eq!(solidity(&mesh), [Flaw::Malformed]);
}

#[test]
fn a_hole_is_told_by_its_three_rims() {
    let mut mesh = cube(0.0);
    mesh.indices.truncate(33);
    // The dropped triangle was (1, 7, 5).
    let open: Vec<Flaw> = solidity(&mesh).into_iter().filter(|flaw| matches!(flaw, Flaw::OpenEdge { .. })).collect();
    assert_eq!(open.len(), 3);
    for (from, to) in [(7, 1), (5, 7), (1, 5)] {
        assert!(open.contains(&Flaw::OpenEdge { from, to }), "{open:?}");
    }
}

#[test]
fn a_turned_triangle_repeats_half_edges() {
    let mut mesh = cube(0.0);
    mesh.indices.swap(0, 1);
    assert!(solidity(&mesh).iter().filter(|flaw| matches!(flaw, Flaw::RepeatedEdge { .. })).count() == 3);
}

#[test]
fn two_pieces_a_stray_vertex_and_twins_are_told() {
    let mut mesh = joined(cube(0.0), &cube(5.0));
    mesh.positions.extend([9.0, 9.0, 9.0]);
    assert_eq!(solidity(&mesh), [Flaw::Unused { vertex: 16 }, Flaw::Pieces { count: 2 }]);
    mesh.positions[16 * 3..].copy_from_slice(&[-0.0, 0.0, 0.0]);
    assert!(solidity(&mesh).contains(&Flaw::SamePoint { vertex: 0, twin: 16 }));
}

#[test]
fn cubes_that_touch_in_a_corner_are_pinched() {
    let mut mesh = joined(cube(0.0), &cube(1.0));
    // The second cube's corner 0 is the first one's corner 7.
    for index in mesh.indices.iter_mut().filter(|index| **index >= 8) {
        *index = if *index == 8 { 7 } else { *index - 1 };
    }
    mesh.positions.drain(24..27);
    assert_eq!(solidity(&mesh), [Flaw::Pinched { vertex: 7 }]);
}

#[test]
fn inside_out_and_flat_are_told() {
    let mut mesh = cube(0.0);
    mesh.indices.as_chunks_mut::<3>().0.iter_mut().for_each(|triangle| triangle.reverse());
    assert_eq!(solidity(&mesh), [Flaw::InsideOut { volume: -1.0 }]);
    let mut mesh = cube(0.0);
    // Corner 3 moved onto the diagonal (0, 0)-(1, 1) side of its face leaves no area between 0, 2 and 3.
    mesh.positions[9..12].copy_from_slice(&[0.0, 2.0, 0.0]);
    assert!(solidity(&mesh).contains(&Flaw::Degenerate { triangle: 0 }), "{:?}", solidity(&mesh));
}

#[test]
fn three_triangles_at_one_edge_do_not_trap_the_walk() {
    let mut mesh = cube(0.0);
    mesh.indices.extend([0, 2, 5]);
    let flaws = solidity(&mesh);
    assert!(flaws.contains(&Flaw::RepeatedEdge { from: 0, to: 2 }) && !flaws.is_empty());
}
