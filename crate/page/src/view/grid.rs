//! Squared paper behind or below the scene, with a known spacing, so that sizes can be read off.

use tubewright_core::layout::Vec3;

use super::camera::{Ball, Frame};
use super::stroke::{End, Ink, Strokes, Style};

/// Every fifth line is a major one: 10 mm and 50 mm for most builds.
pub const MAJOR: i64 = 5;
/// Most squares along the scene's longest side.
const MOST: f64 = 80.0;
/// Longest side that a scene is taken to have at least, mm.
const LEAST: f64 = 10.0;
/// CSS pixels between minor lines at which they begin to show, and at which they are as dark as they get.
const SHOWN: (f64, f64) = (4.0, 9.0);

/// Which paper is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// Below the scene: a floor.
    Floor,
    /// Across y: behind the scene from front or back.
    AcrossY,
    /// Across x: behind the scene from left or right.
    AcrossX,
}

/// The paper round a scene, in whole squares.
#[derive(Debug, Clone, PartialEq)]
pub struct Grid {
    step: f64,
    /// Lowest and highest corner, in steps.
    min: [i64; 3],
    max: [i64; 3],
}

impl Grid {
    /// Paper for a scene: 10 mm squares up to 800 mm, ten times smaller or larger for very small or large ones. An
    /// empty scene gets 100 mm on each side of the datum.
    pub fn of(balls: &[Ball]) -> Self {
        let reach = |axis: usize| {
            balls.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), ball| {
                (low.min(ball.centre[axis] - ball.radius), high.max(ball.centre[axis] + ball.radius))
            })
        };
        let spans: [(f64, f64); 3] =
            if balls.is_empty() { [(-100.0, 100.0), (-100.0, 100.0), (0.0, 0.0)] } else { std::array::from_fn(reach) };
        let longest = spans.iter().map(|(low, high)| high - low).fold(LEAST, f64::max);
        let step = libm::pow(10.0, libm::log10(longest / MOST).ceil());
        let major = MAJOR as f64 * step;
        let pad = |axis: usize| if axis == 2 { 0.0 } else { 0.04 * longest };
        let min = std::array::from_fn(|axis| {
            let low = spans[axis].0 - pad(axis);
            if axis == 2 { (low / step + 1e-6).floor() as i64 } else { (low / major).floor() as i64 * MAJOR }
        });
        let max = std::array::from_fn(|axis| ((spans[axis].1 + pad(axis)) / major).ceil() as i64 * MAJOR);
        Self { step, min, max }
    }

    /// Spacing of the finest lines that show at `scale` (CSS pixels a millimetre), mm.
    pub fn shown_step(&self, scale: f64) -> f64 {
        if self.step * scale > SHOWN.0 { self.step } else { self.step * MAJOR as f64 }
    }

    /// How dark the minor lines are at `scale`, 0 to 1.
    pub fn minor_strength(&self, scale: f64) -> f64 {
        ((self.step * scale - SHOWN.0) / (SHOWN.1 - SHOWN.0)).clamp(0.0, 1.0)
    }

    /// The major spacing, mm.
    pub fn major(&self) -> f64 {
        self.step * MAJOR as f64
    }

    /// The datum where it lies on the paper's box, else the point of the box nearest to it.
    pub fn nearest_to_datum(&self) -> Vec3 {
        let (min, max) = self.corners();
        Vec3::new(0f64.clamp(min.x, max.x), 0f64.clamp(min.y, max.y), 0f64.clamp(min.z, max.z))
    }

    /// Lowest and highest corner of the box that the papers are sides of, mm.
    pub fn corners(&self) -> (Vec3, Vec3) {
        let corner = |of: &[i64; 3]| Vec3::new(of[0] as f64, of[1] as f64, of[2] as f64) * self.step;
        (corner(&self.min), corner(&self.max))
    }

    /// The paper that faces the eye: the floor, unless the eye looks square along x or y and would see its edge only.
    pub fn paper(frame: &Frame) -> Paper {
        let square = |axis: usize| frame.toward[axis].abs() > 0.9999;
        if square(0) {
            Paper::AcrossX
        } else if square(1) {
            Paper::AcrossY
        } else {
            Paper::Floor
        }
    }

    /// The paper's lines, minor ones first.
    pub fn lines(&self, paper: Paper) -> Strokes {
        let (flat, across, up) = match paper {
            Paper::Floor => (2, 0, 1),
            Paper::AcrossY => (1, 0, 2),
            Paper::AcrossX => (0, 1, 2),
        };
        let low_up = if up == 2 { self.min[2].div_euclid(MAJOR) * MAJOR } else { self.min[up] };
        let corner = |a: i64, b: i64| {
            let mut point = [0.0; 3];
            point[flat] = self.min[flat] as f64 * self.step;
            point[across] = a as f64 * self.step;
            point[up] = b as f64 * self.step;
            End::at(&Vec3::from(point))
        };
        let mut strokes = Strokes::default();
        for (ink, major) in [(Ink::Minor, false), (Ink::Major, true)] {
            let style = Style::new(ink, 1.0);
            for a in (self.min[across]..=self.max[across]).filter(|a| (a % MAJOR == 0) == major) {
                strokes.line(style, corner(a, low_up), corner(a, self.max[up]));
            }
            for b in (low_up..=self.max[up]).filter(|b| (b % MAJOR == 0) == major) {
                strokes.line(style, corner(self.min[across], b), corner(self.max[across], b));
            }
        }
        strokes
    }
}
