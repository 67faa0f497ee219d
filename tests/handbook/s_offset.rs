//! The offset of parallel axes by two equal opposite bends with no straight between. Source: plane trigonometry,
//! h = 2 R (1 - cos a), axial run 2 R sin a, developed length 2 R a, as pipe-fitting handbooks tabulate it.

use crate::scene::{SOCKET, bare, close, number, run, table};

/// Offset, bend angle in degrees, axial run, length, at R = 24.
const ROWS: [[f64; 4]; 2] = [[30.0, 67.9757, 44.4972, 56.9472], [20.0, 54.3147, 38.9872, 45.5025]];

#[test]
fn a_link_of_parallel_axes_is_the_s_offset() {
    for [offset, angle, axial, length] in ROWS {
        // The table's run is rounded; the exact one leaves no straight.
        let exact = (4.0 * 24.0 * offset - offset * offset).sqrt();
        close(exact, axial, 5e-5);
        let ports = bare([0.0; 3], [1.0, 0.0, 0.0], [exact + 2.0 * SOCKET, offset, 0.0], [-1.0, 0.0, 0.0]);
        let run = run(&ports.with(12.0, 8.0, 24.0, Vec::new()));
        close(number(&run["length_mm"]) - 2.0 * SOCKET, length, 5e-5);
        let rows = table(&run);
        close(rows[0][2], angle, 5e-5);
        close(rows[1][2], angle, 5e-5);
        close(rows[1][0], 0.0, 1e-5);
        close(rows[1][1], 180.0, 1e-6);
    }
}
