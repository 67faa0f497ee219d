//! Bend tables. Source: worked by hand from the definitions of leg, deviation angle, tangent length R tan(angle / 2) and
//! plane rotation that tube-bending practice shares (common practice, no source for the sign of the rotation).

use crate::scene::{close, number, run, table, through};

pub const A: [[f64; 3]; 4] = [[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [100.0, 80.0, 0.0], [100.0, 80.0, 60.0]];
pub const B: [[f64; 3]; 5] =
    [[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [100.0, 80.0, 0.0], [160.0, 80.0, 60.0], [160.0, 140.0, 60.0]];
pub const C: [[f64; 3]; 5] =
    [[0.0, 0.0, 0.0], [100.0, 0.0, 0.0], [160.0, 80.0, 0.0], [160.0, 80.0, 100.0], [200.0, 80.0, 130.0]];

/// Example rows (straight, rotation, angle), the last straight, developed length.
struct Example {
    points: &'static [[f64; 3]],
    radius: f64,
    rows: &'static [[f64; 3]],
    last: f64,
    developed: f64,
}

const EXAMPLES: [Example; 3] = [
    Example {
        points: &A,
        radius: 24.0,
        rows: &[[76.0, 0.0, 90.0], [32.0, 90.0, 90.0]],
        last: 36.0,
        developed: 219.398_224,
    },
    Example {
        points: &B,
        radius: 24.0,
        rows: &[[76.0, 0.0, 90.0], [32.0, 135.0, 90.0], [36.852_814, 180.0, 90.0]],
        last: 36.0,
        developed: 293.950_149,
    },
    Example {
        points: &C,
        radius: 20.0,
        rows: &[[90.0, 0.0, 53.130_102], [70.0, 90.0, 90.0], [70.0, 126.869_898, 53.130_102]],
        last: 40.0,
        developed: 338.507_735,
    },
];

fn rows_of(points: &[[f64; 3]], radius: f64) -> Vec<[f64; 4]> {
    table(&run(&through(points, 12.0, 8.0, radius)))
}

#[test]
fn worked_examples() {
    for example in &EXAMPLES {
        let run = run(&through(example.points, 12.0, 8.0, example.radius));
        let rows = table(&run);
        assert_eq!(rows.len(), example.rows.len() + 1);
        for (row, expected) in rows.iter().zip(example.rows) {
            for column in 0..3 {
                close(row[column], expected[column], 1e-6);
            }
            close(row[3], example.radius, 0.0);
        }
        let last = rows[rows.len() - 1];
        close(last[0], example.last, 1e-6);
        assert_eq!(&last[1..], [0.0, 0.0, 0.0]);
        close(number(&run["length_mm"]), example.developed, 1e-6);
    }
}

#[test]
fn right_angles_and_their_planes_are_exact() {
    let rows = rows_of(&A, 24.0);
    assert_eq!([rows[0][2], rows[1][1], rows[1][2]], [90.0, 90.0, 90.0]);
    assert_eq!(rows_of(&B, 24.0)[2][1], 180.0);
}

#[test]
fn reversing_reverses_rows_and_keeps_rotations() {
    for example in &EXAMPLES {
        let forward = rows_of(example.points, example.radius);
        let points: Vec<[f64; 3]> = example.points.iter().rev().copied().collect();
        let backward = rows_of(&points, example.radius);
        let bends = forward.len() - 1;
        for i in 0..=bends {
            close(backward[i][0], forward[bends - i][0], 1e-9);
        }
        for i in 0..bends {
            close(backward[i][2], forward[bends - 1 - i][2], 1e-9);
        }
        for i in 1..bends {
            close(backward[i][1], forward[bends - i][1], 1e-9);
        }
    }
}

#[test]
fn a_mirror_flips_rotations_and_nothing_else() {
    for example in &EXAMPLES {
        let forward = rows_of(example.points, example.radius);
        let points: Vec<[f64; 3]> = example.points.iter().map(|[x, y, z]| [*x, *y, -*z]).collect();
        for (row, mirrored) in forward.iter().zip(rows_of(&points, example.radius)) {
            close(mirrored[0], row[0], 1e-9);
            close(mirrored[2], row[2], 1e-9);
            // A half turn of the plane is its own mirror image.
            close(mirrored[1], if row[1] == 180.0 { 180.0 } else { -row[1] }, 1e-9);
        }
    }
}

#[test]
fn a_rigid_motion_changes_nothing() {
    for example in &EXAMPLES {
        let forward = rows_of(example.points, example.radius);
        let points: Vec<[f64; 3]> = example.points.iter().map(moved).collect();
        for (row, other) in forward.iter().zip(rows_of(&points, example.radius)) {
            for column in 0..4 {
                let turn = (other[column] - row[column]).abs();
                assert!(turn < 1e-9 || (column == 1 && (turn - 360.0).abs() < 1e-9), "{row:?} {other:?}");
            }
        }
    }
}

#[test]
fn points_to_table_to_points_closes() {
    for example in &EXAMPLES {
        let walked = walk(&rows_of(example.points, example.radius));
        for (found, expected) in walked.iter().zip(example.points) {
            for axis in 0..3 {
                close(found[axis], expected[axis], 1e-9);
            }
        }
    }
}

/// A turn by 1 radian about (2, -1, 2) / 3 and a shift, by Rodrigues' formula.
fn moved(p: &[f64; 3]) -> [f64; 3] {
    let k = [2.0 / 3.0, -1.0 / 3.0, 2.0 / 3.0];
    let turned = turned(*p, k, 1.0);
    [turned[0] + 11.0, turned[1] - 7.0, turned[2] + 3.0]
}

fn turned(v: [f64; 3], k: [f64; 3], angle: f64) -> [f64; 3] {
    let (s, c) = libm::sincos(angle);
    let dot = v[0] * k[0] + v[1] * k[1] + v[2] * k[2];
    let cross = [k[1] * v[2] - k[2] * v[1], k[2] * v[0] - k[0] * v[2], k[0] * v[1] - k[1] * v[0]];
    [0, 1, 2].map(|i| v[i] * c + cross[i] * s + k[i] * dot * (1.0 - c))
}

/// Ends and apexes from a table, fed along x with the first bend in the plane of x and y (all examples begin so).
pub fn walk(rows: &[[f64; 4]]) -> Vec<[f64; 3]> {
    let (mut at, mut feed, mut axis) = ([0.0; 3], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]);
    let mut points = vec![at];
    let mut before = 0.0;
    for [straight, rotation, angle, radius] in rows.iter().copied() {
        let tangent = radius * libm::tan(angle.to_radians() / 2.0);
        let leg = before + straight + tangent;
        at = [0, 1, 2].map(|i| at[i] + feed[i] * leg);
        points.push(at);
        axis = turned(axis, feed, rotation.to_radians());
        feed = turned(feed, axis, angle.to_radians());
        before = tangent;
    }
    points
}
