//! Where the eye is: a parallel projection that turns about the vertical, so lengths read true at any depth.

use tubewright_core::layout::Vec3;

/// Turning by one CSS pixel of movement, radians: a drag across 450 pixels turns the scene half round.
const TURN: f64 = 0.4 * std::f64::consts::PI / 180.0;
/// Share of the shorter side left free round a scene that fills the view.
const MARGIN: f64 = 0.07;
/// CSS pixels a millimetre: from 100 m across a phone to a tenth of a millimetre across a desk.
const SCALES: (f64, f64) = (1e-3, 1e4);

/// Most a fit enlarges, CSS pixels a millimetre: a lone point fills no picture.
const FIT_LARGEST: f64 = 100.0;

/// A standard direction to look from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// From -y, x to the right, z up.
    Front,
    /// From +y.
    Back,
    /// From -x.
    Left,
    /// From +x.
    Right,
    /// From +z, x to the right, y up.
    Top,
    /// From -z, x to the right.
    Bottom,
    /// From above a corner between front and right.
    Corner,
}

impl Side {
    /// The side of that name, or none.
    pub fn named(name: &str) -> Option<Self> {
        Some(match name {
            "front" => Self::Front,
            "back" => Self::Back,
            "left" => Self::Left,
            "right" => Self::Right,
            "top" => Self::Top,
            "bottom" => Self::Bottom,
            "corner" => Self::Corner,
            _ => return None,
        })
    }

    /// Yaw and pitch, degrees. The corner is no isometric one: in that, tubes along the axes hide each other's bends.
    fn angles(self) -> (f64, f64) {
        match self {
            Self::Front => (0.0, 0.0),
            Self::Back => (180.0, 0.0),
            Self::Left => (-90.0, 0.0),
            Self::Right => (90.0, 0.0),
            Self::Top => (0.0, 90.0),
            Self::Bottom => (0.0, -90.0),
            Self::Corner => (33.0, 27.0),
        }
    }
}

/// Something that must be in view: a sphere, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ball {
    /// Its centre.
    pub centre: Vec3,
    /// Its radius; zero for a point.
    pub radius: f64,
}

/// The picture's own axes in the scene, unit and right-handed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Frame {
    /// To the right of the picture.
    pub right: Vec3,
    /// Up the picture.
    pub up: Vec3,
    /// Out of the picture, to the eye.
    pub toward: Vec3,
}

/// The eye. Sizes in CSS pixels, so that a design looks the same on a fine screen.
#[derive(Debug, Clone, PartialEq)]
pub struct Camera {
    yaw: f64,
    pitch: f64,
    /// The point in the middle of the picture.
    focus: Vec3,
    /// CSS pixels a millimetre.
    scale: f64,
    width: f64,
    height: f64,
}

impl Default for Camera {
    fn default() -> Self {
        Self::new()
    }
}

impl Camera {
    /// An eye at the corner, on the datum, with no picture yet.
    pub fn new() -> Self {
        let mut camera = Self { yaw: 0.0, pitch: 0.0, focus: Vec3::zeros(), scale: 3.0, width: 0.0, height: 0.0 };
        camera.look(Side::Corner);
        camera
    }

    /// Takes a new picture size, CSS pixels.
    pub fn resize(&mut self, width: f64, height: f64) {
        self.width = width;
        self.height = height;
    }

    /// Turns to a side; what is in the middle stays there.
    pub fn look(&mut self, side: Side) {
        let (yaw, pitch) = side.angles();
        self.yaw = yaw.to_radians();
        self.pitch = pitch.to_radians();
    }

    /// Turns the scene as if dragged by `dx` to the right and `dy` down; it never tips over the pole.
    pub fn orbit(&mut self, dx: f64, dy: f64) {
        self.yaw = (self.yaw - dx * TURN) % std::f64::consts::TAU;
        self.pitch = (self.pitch + dy * TURN).clamp(-std::f64::consts::FRAC_PI_2, std::f64::consts::FRAC_PI_2);
    }

    /// Moves the picture by `dx` to the right and `dy` down.
    pub fn pan(&mut self, dx: f64, dy: f64) {
        let frame = self.frame();
        self.focus += (frame.up * dy - frame.right * dx) / self.scale;
    }

    /// Enlarges by `factor` about a point of the picture, given as shares of its width and height from the top left.
    pub fn zoom(&mut self, factor: f64, across: f64, down: f64) {
        let before = self.scale;
        self.scale = (before * factor).clamp(SCALES.0, SCALES.1);
        let frame = self.frame();
        let arm = frame.right * ((across - 0.5) * self.width) + frame.up * ((0.5 - down) * self.height);
        self.focus += arm * (1.0 / before - 1.0 / self.scale);
    }

    /// Moves and scales so that all of `balls` just fit, without turning; does nothing where there are none.
    pub fn fit(&mut self, balls: &[Ball]) {
        let Some(reach) = self.reach(balls) else { return };
        let frame = self.frame();
        self.focus = frame.right * reach.middle[0] + frame.up * reach.middle[1] + frame.toward * reach.middle[2];
        if self.has_picture() {
            self.scale = self.fitting_scale(&reach);
        }
    }

    /// True where a fit would change little: all of `balls` in the picture, and not lost in it.
    pub fn fits(&self, balls: &[Ball]) -> bool {
        let Some(reach) = self.reach(balls) else { return true };
        let frame = self.frame();
        let inside = |direction: &Vec3, axis: usize, size: f64| {
            let off = (reach.middle[axis] - self.focus.dot(direction)).abs();
            (off + reach.half[axis]) * self.scale <= size / 2.0
        };
        inside(&frame.right, 0, self.width)
            && inside(&frame.up, 1, self.height)
            && self.scale > 0.5 * self.fitting_scale(&reach)
    }

    /// The nearest and the farthest of `balls`, mm toward the eye from the middle.
    pub fn depths(&self, balls: &[Ball]) -> (f64, f64) {
        let Some(reach) = self.reach(balls) else { return (-1.0, 1.0) };
        let middle = reach.middle[2] - self.focus.dot(&self.frame().toward);
        (middle - reach.half[2], middle + reach.half[2])
    }

    /// The picture's axes.
    pub fn frame(&self) -> Frame {
        let (sin_yaw, cos_yaw) = libm::sincos(self.yaw);
        let (sin_pitch, cos_pitch) = libm::sincos(self.pitch);
        let right = Vec3::new(cos_yaw, sin_yaw, 0.0);
        let toward = Vec3::new(sin_yaw * cos_pitch, -cos_yaw * cos_pitch, sin_pitch);
        Frame { right, up: toward.cross(&right), toward }
    }

    /// Where a point of the scene is in the picture: CSS pixels from its top left.
    pub fn project(&self, point: &Vec3) -> (f64, f64) {
        let frame = self.frame();
        let arm = (point - self.focus) * self.scale;
        (self.width / 2.0 + arm.dot(&frame.right), self.height / 2.0 - arm.dot(&frame.up))
    }

    /// The point in the middle.
    pub fn focus(&self) -> Vec3 {
        self.focus
    }

    /// CSS pixels a millimetre, the same everywhere in the picture.
    pub fn scale(&self) -> f64 {
        self.scale
    }

    /// Width and height, CSS pixels.
    pub fn size(&self) -> (f64, f64) {
        (self.width, self.height)
    }

    /// False until there is a picture with an area.
    pub fn has_picture(&self) -> bool {
        self.width >= 1.0 && self.height >= 1.0
    }

    fn fitting_scale(&self, reach: &Reach) -> f64 {
        let free = |size: f64| size - 2.0 * MARGIN * self.width.min(self.height);
        let across = free(self.width) / (2.0 * reach.half[0]).max(1e-3);
        let upright = free(self.height) / (2.0 * reach.half[1]).max(1e-3);
        across.min(upright).clamp(SCALES.0, FIT_LARGEST)
    }

    fn reach(&self, balls: &[Ball]) -> Option<Reach> {
        let frame = self.frame();
        let span = |direction: &Vec3| {
            balls
                .iter()
                .map(|ball| (ball.centre.dot(direction), ball.radius))
                .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), (at, radius)| {
                    (low.min(at - radius), high.max(at + radius))
                })
        };
        let spans = [frame.right, frame.up, frame.toward].map(|direction| span(&direction));
        spans.iter().all(|(low, high)| low.is_finite() && high.is_finite()).then(|| Reach {
            middle: spans.map(|(low, high)| (low + high) / 2.0),
            half: spans.map(|(low, high)| (high - low) / 2.0),
        })
    }
}

/// The middle and half the size of something along the picture's axes, mm.
struct Reach {
    middle: [f64; 3],
    half: [f64; 3],
}
