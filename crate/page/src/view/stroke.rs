//! Lines of constant width on the screen, as the pen draws them: the drawing's edges, flanks, grid, axes and letters.

use tubewright_core::layout::Vec3;

/// What a line is of; the theme gives each its colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[repr(u8)]
pub enum Ink {
    /// Outlines of bodies.
    Outline,
    /// Edges inside an outline.
    Edge,
    /// The grid's every line.
    Minor,
    /// The grid's every fifth line.
    Major,
    /// The axes and their letters.
    Axis,
    /// Edges of keep-outs.
    KeepOut,
    /// The line of a run that cannot be made.
    Unmade,
    /// Marks on the selected run.
    Mark,
    /// Where tubes stand over the floor.
    Shadow,
    /// What numbers stand on.
    Paper,
}

/// How many inks there are.
pub const INKS: usize = 10;

/// Drawn through.
const PLAIN: f32 = 0.0;
/// Drawn in dashes.
const DASHED: f32 = 1.0;
/// On the outside of a body: where a section has taken the near half away, the far half hides it.
const SUNK: f32 = 2.0;
/// On a cut: no body bulges beside it.
const LEVEL: f32 = 3.0;

/// A set of lines, list by list as the pen's instance buffers want them.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Strokes {
    /// One end, and how far it is moved sideways to the flank of a tube, mm (zero: not at all).
    pub from: Vec<[f32; 4]>,
    /// The other end.
    pub to: Vec<[f32; 4]>,
    /// Tangent of the tube whose flank it is; or, where it is no flank, the direction away from the axis by which a
    /// section takes it away (zero: never).
    pub from_lean: Vec<[f32; 3]>,
    /// The same for the other end.
    pub to_lean: Vec<[f32; 3]>,
    /// CSS pixels to the right and up by which each end is moved on the screen.
    pub shift: Vec<[f32; 4]>,
    /// Ink; width in CSS pixels (negative: in mm); [`PLAIN`], [`DASHED`], [`SUNK`] or [`LEVEL`]; CSS pixels of lift to the eye.
    pub style: Vec<[f32; 4]>,
    /// Arc length at each end, mm, so that dashes run on from piece to piece.
    pub along: Vec<[f32; 2]>,
}

/// How a line is drawn.
#[derive(Debug, Clone, Copy)]
pub struct Style {
    ink: Ink,
    width: f32,
    manner: f32,
    lift: f32,
}

/// One end of a line.
#[derive(Debug, Clone, Copy, Default)]
pub struct End {
    at: [f32; 3],
    sideways: f32,
    lean: [f32; 3],
    shift: [f32; 2],
    along: f32,
}

impl Style {
    /// A plain line of a width in CSS pixels, lifted a little so that the face it lies on does not hide it.
    pub fn new(ink: Ink, width: f32) -> Self {
        Self { ink, width, manner: PLAIN, lift: 4.0 }
    }

    /// A line as wide as a body of that many mm.
    pub fn broad(ink: Ink, width: f64) -> Self {
        Self { ink, width: -width as f32, manner: PLAIN, lift: 0.0 }
    }

    /// The same, dashed.
    pub fn dashed(self) -> Self {
        Self { manner: DASHED, ..self }
    }

    /// The same, on the outside of a body that a section opens.
    pub fn sunk(self) -> Self {
        Self { manner: SUNK, ..self }
    }

    /// The same, on a cut.
    pub fn level(self) -> Self {
        Self { manner: LEVEL, lift: 1.0, ..self }
    }

    /// The same, lifted toward the eye by so many CSS pixels.
    pub fn lifted(self, lift: f32) -> Self {
        Self { lift, ..self }
    }

    /// The same, in front of everything.
    pub fn on_top(self) -> Self {
        Self { lift: 1e6, ..self }
    }
}

impl End {
    /// An end at a point.
    pub fn at(point: &Vec3) -> Self {
        Self { at: small(point), ..Self::default() }
    }

    /// An end at a vertex of a skin, which a section takes away with the half toward the eye.
    pub fn vertex(at: [f32; 3], radial: [f32; 3]) -> Self {
        Self { at, lean: radial, ..Self::default() }
    }

    /// An end on the flank of a tube: `sideways` (mm, either sign) from its centreline, square to the line of sight.
    pub fn flank(centre: &Vec3, tangent: &Vec3, sideways: f64) -> Self {
        Self { at: small(centre), sideways: sideways as f32, lean: small(tangent), ..Self::default() }
    }

    /// The same end, moved on the screen by CSS pixels to the right and up.
    pub fn shifted(self, right: f32, up: f32) -> Self {
        Self { shift: [right, up], ..self }
    }

    /// The same end at an arc length, mm.
    pub fn along(self, along: f64) -> Self {
        Self { along: along as f32, ..self }
    }
}

impl Strokes {
    /// Adds one line.
    pub fn line(&mut self, style: Style, from: End, to: End) {
        self.from.push(wide(from.at, from.sideways));
        self.to.push(wide(to.at, to.sideways));
        self.from_lean.push(from.lean);
        self.to_lean.push(to.lean);
        self.shift.push([from.shift[0], from.shift[1], to.shift[0], to.shift[1]]);
        self.style.push([f32::from(style.ink as u8), style.width, style.manner, style.lift]);
        self.along.push([from.along, to.along]);
    }

    /// Adds a line through points, dashes running on.
    pub fn path(&mut self, style: Style, points: &[Vec3]) {
        let mut along = 0.0;
        for pair in points.windows(2) {
            let next = along + (pair[1] - pair[0]).norm();
            self.line(style, End::at(&pair[0]).along(along), End::at(&pair[1]).along(next));
            along = next;
        }
    }

    /// Adds a circle about an axis; a section takes its half away where `cut`.
    pub fn circle(&mut self, style: Style, centre: &Vec3, axis: &Vec3, radius: f64, cut: bool) {
        let points: Vec<Vec3> = ring(axis).collect();
        let end = |radial: &Vec3| {
            let point = small(&(centre + radial * radius));
            End::vertex(point, if cut { small(radial) } else { [0.0; 3] })
        };
        for place in 0..points.len() {
            self.line(style, end(&points[place]), end(&points[(place + 1) % points.len()]));
        }
    }

    /// Adds both flanks of a straight cylinder.
    pub fn flanks(&mut self, style: Style, from: &Vec3, to: &Vec3, radius: f64) {
        if let Some(axis) = (to - from).try_normalize(1e-9) {
            for sideways in [-radius, radius] {
                self.line(style, End::flank(from, &axis, sideways), End::flank(to, &axis, sideways));
            }
        }
    }

    /// Adds all lines of another set.
    pub fn append(&mut self, other: Self) {
        self.from.extend(other.from);
        self.to.extend(other.to);
        self.from_lean.extend(other.from_lean);
        self.to_lean.extend(other.to_lean);
        self.shift.extend(other.shift);
        self.style.extend(other.style);
        self.along.extend(other.along);
    }

    /// How many lines there are.
    pub fn count(&self) -> usize {
        self.from.len()
    }
}

/// Unit vectors square to an axis, evenly round it: enough for a circle to look round at any size it is seen.
pub fn ring(axis: &Vec3) -> impl Iterator<Item = Vec3> {
    const SIDES: usize = 48;
    let (across, up) = square_to(axis);
    (0..SIDES).map(move |side| {
        let (sin, cos) = libm::sincos(side as f64 * std::f64::consts::TAU / SIDES as f64);
        across * cos + up * sin
    })
}

/// Two unit vectors that with the unit `axis` make a right-handed frame.
pub fn square_to(axis: &Vec3) -> (Vec3, Vec3) {
    let other = if axis.z.abs() < 0.9 { Vec3::z() } else { Vec3::x() };
    let across = other.cross(axis).try_normalize(1e-9).unwrap_or_else(Vec3::x);
    (across, axis.cross(&across))
}

/// A vector as the graphics card takes it.
pub fn small(vector: &Vec3) -> [f32; 3] {
    [vector.x as f32, vector.y as f32, vector.z as f32]
}

fn wide([x, y, z]: [f32; 3], w: f32) -> [f32; 4] {
    [x, y, z, w]
}
