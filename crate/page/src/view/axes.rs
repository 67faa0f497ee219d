//! The datum's axes, told apart by their letters, in one ink.

use tubewright_core::layout::Vec3;

use super::camera::Camera;
use super::stroke::{End, Ink, Strokes, Style};

/// An axis seen end-on is shorter than this on the screen and gets no letter, CSS pixels.
const SHORT: f64 = 9.0;
/// CSS pixels from an axis's tip to the middle of its letter.
const GAP: f64 = 12.0;

/// A letter's strokes, in a square from -1 to 1.
type Letter = &'static [[[f32; 2]; 2]];
const LETTERS: [Letter; 3] = [
    &[[[-0.8, -1.0], [0.8, 1.0]], [[-0.8, 1.0], [0.8, -1.0]]],
    &[[[-0.8, 1.0], [0.0, 0.0]], [[0.8, 1.0], [-0.5, -1.0]]],
    &[[[-0.8, 1.0], [0.8, 1.0]], [[0.8, 1.0], [-0.8, -1.0]], [[-0.8, -1.0], [0.8, -1.0]]],
];

/// Axes of `length` mm from `at`, as `camera` sees them.
pub fn axes(at: &Vec3, length: f64, camera: &Camera) -> Strokes {
    let frame = camera.frame();
    let mut strokes = Strokes::default();
    let line = Style::new(Ink::Axis, 1.5).on_top();
    for (axis, letter) in [Vec3::x(), Vec3::y(), Vec3::z()].iter().zip(LETTERS) {
        let (right, up) = (axis.dot(&frame.right), axis.dot(&frame.up));
        let seen = (right * right + up * up).sqrt();
        if seen * length * camera.scale() < SHORT {
            continue;
        }
        let tip = at + axis * length;
        let (right, up) = ((right / seen) as f32, (up / seen) as f32);
        strokes.line(line, End::at(at), End::at(&tip));
        for (back, side) in [(-7.0, 3.0), (-7.0, -3.0)] {
            let barb = End::at(&tip).shifted(back * right - side * up, back * up + side * right);
            strokes.line(line, End::at(&tip), barb);
        }
        for [from, to] in letter {
            let end =
                |[x, y]: &[f32; 2]| End::at(&tip).shifted(GAP as f32 * right + 4.0 * x, GAP as f32 * up + 4.5 * y);
            strokes.line(line, end(from), end(to));
        }
    }
    strokes
}
