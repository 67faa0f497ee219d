//! The ways a run is looked at: three orthographic views in third-angle arrangement, and an isometric.

use crate::layout::Vec3;

/// A point on paper or in a view, mm.
pub(super) type Flat = [f64; 2];

/// A direction of sight.
#[derive(Debug, Clone)]
pub(super) struct View {
    /// What it shows.
    pub name: &'static str,
    /// Names of the axes that go right and up.
    pub axes: [&'static str; 2],
    /// Unit, to the right on paper.
    pub right: Vec3,
    /// Unit, up on paper.
    pub up: Vec3,
    /// Unit, towards the eye.
    pub toward: Vec3,
}

/// A view with its place on the sheet.
#[derive(Debug, Clone)]
pub(super) struct Placed {
    /// The view.
    pub view: View,
    /// Paper millimetres a millimetre of tube.
    pub scale: f64,
    /// Where the datum's origin would lie on the sheet, mm; y grows downwards.
    pub origin: Flat,
}

impl View {
    /// Across to the right and up, mm of tube.
    pub fn flat(&self, point: &Vec3) -> Flat {
        [point.dot(&self.right), point.dot(&self.up)]
    }

    /// How near to the eye, mm.
    pub fn depth(&self, point: &Vec3) -> f64 {
        point.dot(&self.toward)
    }
}

impl Placed {
    /// A view whose box (mm of tube, from least to most) has its top left corner at `corner` on the sheet.
    pub fn at(view: View, scale: f64, range: &Range, corner: Flat) -> Self {
        let origin = [corner[0] - scale * range.min[0], corner[1] + scale * range.max[1]];
        Self { view, scale, origin }
    }

    /// A point of the tube on the sheet.
    pub fn on_sheet(&self, point: &Vec3) -> Flat {
        self.lay(self.view.flat(point))
    }

    /// A point of the view on the sheet.
    pub fn lay(&self, [across, up]: Flat) -> Flat {
        [self.origin[0] + self.scale * across, self.origin[1] - self.scale * up]
    }
}

/// A box in a view, mm of tube.
#[derive(Debug, Clone, Copy)]
pub(super) struct Range {
    /// Least across and up.
    pub min: Flat,
    /// Most across and up.
    pub max: Flat,
}

impl Range {
    /// The box round points that reach `radius` further each way.
    pub fn of(points: impl Iterator<Item = (Flat, f64)>) -> Self {
        let none = Self { min: [f64::INFINITY; 2], max: [f64::NEG_INFINITY; 2] };
        points.fold(none, |range, (point, radius)| Self {
            min: [range.min[0].min(point[0] - radius), range.min[1].min(point[1] - radius)],
            max: [range.max[0].max(point[0] + radius), range.max[1].max(point[1] + radius)],
        })
    }

    pub fn width(&self) -> f64 {
        self.max[0] - self.min[0]
    }

    pub fn height(&self) -> f64 {
        self.max[1] - self.min[1]
    }
}

/// What views are called.
pub(super) const FRONT: &str = "Front";
pub(super) const TOP: &str = "Top";
pub(super) const RIGHT: &str = "Right";
pub(super) const ISOMETRIC: &str = "Isometric";

/// Seen against y: x to the right, z up.
pub(super) fn front() -> View {
    View { name: FRONT, axes: ["x", "z"], right: Vec3::x(), up: Vec3::z(), toward: -Vec3::y() }
}

/// Seen from above: x to the right, y up.
pub(super) fn top() -> View {
    View { name: TOP, axes: ["x", "y"], right: Vec3::x(), up: Vec3::y(), toward: Vec3::z() }
}

/// Seen from the right: y to the right, z up.
pub(super) fn side() -> View {
    View { name: RIGHT, axes: ["y", "z"], right: Vec3::y(), up: Vec3::z(), toward: Vec3::x() }
}

/// Seen from in front, right and above, all three axes equally far from the paper.
pub(super) fn isometric() -> View {
    let unit = |x: f64, y: f64, z: f64| crate::layout::unit(&Vec3::new(x, y, z));
    View {
        name: ISOMETRIC,
        axes: ["", ""],
        right: unit(1.0, 1.0, 0.0),
        up: unit(-1.0, 1.0, 2.0),
        toward: unit(1.0, -1.0, 1.0),
    }
}
