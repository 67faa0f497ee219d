//! What a bend saves over its sharp corner. Source: plane trigonometry, 2 R tan(a / 2) - R a; for a right angle 2 R -
//! pi R / 2 = 0.429204 R, the gain that bending handbooks give.

use crate::scene::{close, number, run, through};

#[test]
fn a_right_angle_gains_0_429204_r() {
    for radius in [12.0, 24.0, 40.0] {
        let points = [[0.0; 3], [100.0, 0.0, 0.0], [100.0, 80.0, 0.0]];
        let length = number(&run(&through(&points, 12.0, 8.0, radius))["length_mm"]);
        close(180.0 - length, 0.429_204 * radius, 5e-7 * radius);
    }
    let points = [[0.0; 3], [100.0, 0.0, 0.0], [100.0, 80.0, 0.0]];
    close(180.0 - number(&run(&through(&points, 12.0, 8.0, 24.0))["length_mm"]), 10.300_888, 1e-6);
}
