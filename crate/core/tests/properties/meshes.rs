//! Designs moved and mirrored have meshes moved and mirrored: carried back, the mesh of the moved design lies on the skin
//! of the design as it was. The judge is the motion itself; no source is needed but geometry.

use crate::answers::told;
use crate::mesh_judge::Case;
use crate::mesh_judge::skin::Skin;
use crate::motion::Motion;
use nalgebra::{Rotation3, Unit, Vector3};
use serde_json::Value;
use tubewright_core::mesh::{Mesh, signed_volume, solidity};
use tubewright_core::strategies::{Chance, one};

/// Kinds that say nothing about the axes, of every sort of piece. Lobes begin at a reference of the axes.
const FREE: [&str; 11] = [
    "near-straight corners",
    "arcs with no straight between",
    "end corners off the ports' axes",
    "coil in line with its ports",
    "conical coil",
    "part of a turn",
    "coil between corners",
    "smooth curve between corners",
    "smooth curve into a coil",
    "bends that share their room",
    "tapered and swollen bodies",
];

const DEVIATION: f64 = 0.05;

/// Every corner of the mesh taken through a map.
fn carried(mesh: &Mesh, map: impl Fn(Vector3<f64>) -> Vector3<f64>) -> Mesh {
    let corners = mesh.positions.as_chunks::<3>().0.iter();
    let positions = corners.flat_map(|p| {
        let p = map(Vector3::from(p.map(f64::from)));
        [p.x as f32, p.y as f32, p.z as f32]
    });
    Mesh { positions: positions.collect(), indices: mesh.indices.clone() }
}

#[test]
fn moved_and_mirrored_designs_have_moved_and_mirrored_meshes() {
    let mut chance = Chance::of(0x3e5);
    for kind in FREE {
        for (seed, mirrors) in [(3, false), (4, true)] {
            let design = one(kind, seed).expect("a kind");
            let told = told(&design);
            let document: Value = serde_json::from_str(&design.text).expect("JSON");
            let rotation = Rotation3::from_axis_angle(&Unit::new_normalize(chance.point(1.0)), chance.from(0.1, 3.0));
            let shift = chance.point(20.0);
            let flip = Vector3::new(if mirrors { -1.0 } else { 1.0 }, 1.0, 1.0);
            let along = |d: Vector3<f64>| rotation * d.component_mul(&flip);
            let at = |p: Vector3<f64>| along(p) + shift;
            let moved = Motion { at: &at, along: &along, mirrors }.of(&document);

            let (here, there) = (Case::of(&design.text), Case::of(&moved.to_string()));
            let (mesh, before) = (there.mesh(DEVIATION), here.mesh(DEVIATION));
            assert_eq!(solidity(&mesh), [], "{told}");
            let (found, expected) = (signed_volume(&mesh), signed_volume(&before));
            assert!((found / expected - 1.0).abs() < 1e-4, "{told}: {found} for {expected}");
            let back = carried(&mesh, |p| (rotation.inverse() * (p - shift)).component_mul(&flip));
            let off = Skin::of(&here).farthest_of(&back);
            assert!(off <= DEVIATION, "{told}: off {off}");
        }
    }
}
