//! Normals and rims: round where it is round, crisp where it is not; and meshes that cannot be drawn are refused.

use tubewright_core::layout::Vec3;

use crate::view::guide::Guide;
use crate::view::skin::{fault, skin};

/// A cube of 2 mm about the datum, outward.
fn cube() -> (Vec<f32>, Vec<u32>) {
    let positions =
        (0..8u8).flat_map(|at| [0, 1, 2].map(|axis| if at >> axis & 1 == 1 { 1.0 } else { -1.0 })).collect();
    let quads = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
    (positions, quads.iter().flat_map(|[a, b, c, d]| [*a, *b, *c, *a, *c, *d]).collect())
}

/// A closed rod of 4 mm along z, coarse as a thin tube's preview, with a lead-in of 15 degrees over the first 2 mm.
fn rod(sides: u32) -> (Vec<f32>, Vec<u32>) {
    let inset = 2.0 * libm::tan(15f64.to_radians());
    let rings = [(0.0, 2.0 - inset), (2.0, 2.0), (60.0, 2.0)];
    let mut positions: Vec<f32> = rings
        .iter()
        .flat_map(|(z, radius)| {
            (0..sides).flat_map(move |side| {
                let (sin, cos) = libm::sincos(std::f64::consts::TAU * f64::from(side) / f64::from(sides));
                [(radius * cos) as f32, (radius * sin) as f32, *z as f32]
            })
        })
        .collect();
    positions.extend([0.0, 0.0, 0.0, 0.0, 0.0, 60.0]);
    let mut indices = Vec::new();
    for side in 0..sides {
        let next = (side + 1) % sides;
        for ring in [0, sides] {
            indices.extend([ring + side, ring + next, ring + sides + next]);
            indices.extend([ring + side, ring + sides + next, ring + sides + side]);
        }
        indices.extend([next, side, 3 * sides, 2 * sides + side, 2 * sides + next, 3 * sides + 1]);
    }
    (positions, indices)
}

#[test]
fn a_cube_has_twelve_edges_and_six_flat_faces() {
    let (positions, indices) = cube();
    let skin = skin(&positions, &indices, None);
    assert_eq!(skin.creases.len(), 12);
    assert_eq!(skin.points.len(), 24);
    for (point, normal) in skin.points.iter().zip(&skin.normals) {
        let along: Vec<f32> = normal.iter().copied().filter(|value| value.abs() > 1e-6).collect();
        assert!(along.len() == 1 && (along[0].abs() - 1.0).abs() < 1e-6);
        assert!(point[0] * normal[0] + point[1] * normal[1] + point[2] * normal[2] > 0.99, "outward");
    }
}

#[test]
fn a_coarse_rod_is_round_with_three_crisp_rims() {
    for sides in [14, 48] {
        let (positions, indices) = rod(sides);
        let guide = Guide::new(&[[0.0; 3], [0.0, 0.0, 60.0]], 4.0).unwrap();
        let skin = skin(&positions, &indices, Some(&guide));
        assert_eq!(skin.creases.len(), 3 * sides as usize, "two ends and the foot of the lead-in");
        let (sin, cos) = libm::sincos(15f64.to_radians());
        let mut kinds = [0; 3];
        for (point, normal) in skin.points.iter().zip(&skin.normals) {
            let away = f64::from(point[0] * normal[0] + point[1] * normal[1])
                / libm::hypot(f64::from(point[0]), f64::from(point[1])).max(1e-9);
            let along = f64::from(normal[2]);
            let is = |a: f64, b: f64| (away - a).abs() < 2e-3 && (along.abs() - b).abs() < 2e-3;
            if is(1.0, 0.0) {
                kinds[0] += 1;
            } else if is(cos, sin) {
                kinds[1] += 1;
            } else if is(0.0, 1.0) {
                kinds[2] += 1;
            } else {
                panic!("normal {normal:?} at {point:?} is of no face of the rod");
            }
        }
        let ring = sides as usize;
        assert_eq!(kinds, [2 * ring, 2 * ring, 2 * ring + 2]);
    }
}

#[test]
fn without_a_centreline_rims_are_found_by_angle() {
    let (positions, indices) = rod(48);
    let skin = skin(&positions, &indices, None);
    assert_eq!(skin.creases.len(), 2 * 48, "15 degrees are below the crease angle, 75 and 90 above");
    assert!(skin.profile.is_empty() && skin.radials.iter().all(|radial| *radial == [0.0; 3]));
}

#[test]
fn triangles_without_area_are_left_out() {
    let (mut positions, mut indices) = cube();
    positions.extend([1.0, 1.0, 1.0]);
    indices.extend([7, 7, 7, 0, 7, 0, 7, 8, 7, 8, 8, 3]);
    let skin = skin(&positions, &indices, None);
    assert_eq!(skin.indices.len(), 36);
    assert!(skin.normals.iter().flatten().all(|value| value.is_finite()));
}

#[test]
fn meshes_that_cannot_be_drawn_are_refused_in_words() {
    let (positions, indices) = cube();
    assert_eq!(fault(&positions, &indices), None);
    assert_eq!(fault(&[], &[]), None);
    assert!(fault(&positions[1..], &indices).unwrap().contains("threes"));
    assert!(fault(&positions, &indices[1..]).unwrap().contains("threes"));
    assert!(fault(&positions, &[0, 1, 8]).unwrap().contains("point 8"));
    assert!(fault(&[], &[0, 0, 0]).unwrap().contains("0 points"));
    for bad in [f32::NAN, f32::INFINITY, 1e30] {
        let mut positions = positions.clone();
        positions[5] = bad;
        assert!(fault(&positions, &indices).unwrap().contains("cannot be drawn"));
    }
}

/// A body along z with lobes over rings 1 mm apart: its outside only, open at both ends.
fn lobed(lobes: f64, depth: f64, twist_per_ring: f64) -> (Vec<f32>, Vec<u32>) {
    const SIDES: u32 = 96;
    let mut positions = Vec::new();
    let mut indices = Vec::new();
    for ring in 0..40u32 {
        for side in 0..SIDES {
            let angle = std::f64::consts::TAU * f64::from(side) / f64::from(SIDES);
            let wave = libm::cos(lobes * (angle - twist_per_ring * f64::from(ring)));
            let radius = 8.0 - depth * (1.0 - wave) / 2.0;
            let (sin, cos) = libm::sincos(angle);
            positions.extend([(radius * cos) as f32, (radius * sin) as f32, ring as f32]);
            if ring > 0 {
                let (low, next) = ((ring - 1) * SIDES, (side + 1) % SIDES);
                indices.extend([low + side, low + next, low + SIDES + next]);
                indices.extend([low + side, low + SIDES + next, low + SIDES + side]);
            }
        }
    }
    (positions, indices)
}

/// How far a skin's normals are at most from those of the surface r = 8 - depth (1 - cos(lobes (a - twist z))) / 2, degrees.
fn off_by(skin: &crate::view::skin::Skin, lobes: f64, depth: f64, twist: f64) -> f64 {
    let off = skin.points.iter().zip(&skin.normals).filter(|(point, _)| point[2] > 0.5 && point[2] < 38.5);
    off.map(|(point, normal)| {
        let [x, y, z] = point.map(f64::from);
        let (radius, angle) = (libm::hypot(x, y), libm::atan2(y, x));
        // The gradient of radius - r(a, z): 1 away, -r_a / radius round, -r_z along.
        let round = depth / 2.0 * lobes * libm::sin(lobes * (angle - twist * z)) / radius;
        let along = -depth / 2.0 * lobes * twist * libm::sin(lobes * (angle - twist * z));
        let (sin, cos) = libm::sincos(angle);
        let exact = Vec3::new(cos - round * sin, sin + round * cos, along).normalize();
        libm::acos(exact.dot(&Vec3::from(normal.map(f64::from))).clamp(-1.0, 1.0)).to_degrees()
    })
    .fold(0.0, f64::max)
}

#[test]
fn lobes_are_shaded_as_they_are_and_a_thick_body_is_found_on_its_axis() {
    // The guide's tube is 10 mm, the body 16: dressed.
    let plain = Guide::new(&[[0.0; 3], [0.0, 0.0, 39.0]], 10.0).unwrap();
    let guide = plain.clone().with_lobes(Some([0.0, 39.0]));
    for (lobes, depth, twist) in [(6.0, 1.0, 0.0), (6.0, 1.0, 0.035), (3.0, 2.0, -0.05)] {
        let (positions, indices) = lobed(lobes, depth, twist);
        let skin = skin(&positions, &indices, Some(&guide));
        assert!(skin.lobed);
        assert_eq!(skin.points.len(), positions.len() / 3, "one smooth part");
        let off = off_by(&skin, lobes, depth, twist);
        assert!(off < 3.0, "{off} degrees off with {lobes} lobes {depth} mm deep");
    }
    let (positions, indices) = lobed(6.0, 0.0, 0.0);
    assert!(!skin(&positions, &indices, Some(&plain)).lobed);
}
