//! The turn about z at which the rectangle round a standing tube is least: a tube that stands aslant wastes no room so.

use super::body::Disc;
use super::frame::Frame;
use super::room::width;
use crate::golden::highest;
use crate::layout::turn;
use core::f64::consts::FRAC_PI_2;

/// Turns that are tried, evenly over a quarter, after which the rectangles are the same again.
const TRIED: u32 = 45;
/// Golden sections about the best of them.
const SECTIONS: u32 = 24;

/// The frame turned so, and how far it is turned about z, radians, against the clock seen from above.
pub(super) fn least_rectangle(rim: &[Disc], frame: &Frame) -> (Frame, f64) {
    let area = |by: f64| {
        let Frame { rows: [x, y, _] } = turned(frame, by);
        width(rim, &x) * width(rim, &y)
    };
    let step = FRAC_PI_2 / f64::from(TRIED);
    let tries = (0..TRIED).map(|k| step * f64::from(k)).map(|by| (by, area(by)));
    let (near, least) = tries.min_by(|a, b| a.1.total_cmp(&b.1)).unwrap_or((0.0, 0.0));
    let (between, found) = highest([near - step, near + step], SECTIONS, |by| -area(by));
    let by = if -found < least { between } else { near };
    (turned(frame, by), by)
}

/// The frame of what is turned about z.
fn turned(frame: &Frame, by: f64) -> Frame {
    let [x, y, z] = frame.rows;
    let (sin, cos) = turn(by);
    Frame { rows: [x * cos - y * sin, x * sin + y * cos, z] }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::layout::Vec3;

    /// Two balls' worth of rim 100 apart at 30 degrees to x: square to it the rectangle is 110 by 10.
    #[test]
    fn a_rod_aslant_is_laid_along_a_side() {
        let (sin, cos) = turn(30f64.to_radians());
        let along = Vec3::new(cos, sin, 0.0);
        let disc = |far: f64| Disc {
            s: far,
            point: along * far,
            tangent: Vec3::z(),
            radius: 5.0,
            bore: 3.0,
            bends: [Vec3::zeros(); 2],
        };
        let rim = [disc(0.0), disc(100.0)];
        let (found, by) = least_rectangle(&rim, &Frame::of(&Vec3::z(), 0.0));
        let mut sides = [0, 1].map(|row| width(&rim, &found.rows[row]));
        sides.sort_by(f64::total_cmp);
        assert!((sides[0] - 10.0).abs() < 1e-3 && (sides[1] - 110.0).abs() < 1e-3, "{sides:?}");
        // Turned by 60 degrees it lies along y.
        assert!((by.to_degrees() - 60.0).abs() < 1e-3, "{by}");
        let there = found.seen(&(along * 100.0));
        assert!((there - Vec3::new(0.0, 100.0, 0.0)).norm() < 1e-3, "{there}");
    }
}
