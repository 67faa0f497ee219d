//! A run in pieces: where it is cut, and the spigot and the socket that a bonded joint is made of.
//!
//! The piece before a cut ends at the seam with a spigot: the tube's own outside, with a key. The piece after it begins a
//! spigot's length before the seam with a socket round that spigot; an axial gap beyond the spigot's tip it goes on as the
//! tube. So the bore is as wide all along. Both pieces run along the run's own centreline, in its own arc lengths and
//! frames, so that put together they are the run.

mod places;
mod room;
mod sections;
mod size;

pub use room::JointRoom;
pub use size::{JointSize, MARK};

use super::Profile;
use crate::centreline::{Centreline, Frames};
use crate::design::{Design, Run};
use crate::layout::PlacedRun;

/// Kept free of joints, and of support, beyond a fitting's socket, mm; common practice, no source.
pub const BEYOND_SOCKET: f64 = 2.0;
/// Curvature below which a tube is straight, 1/mm.
const STRAIGHT: f64 = 1e-12;

/// A joint in its place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Joint {
    /// Index of its cut among the run's.
    pub cut: usize,
    /// Counted from 1 along the run: it carries so many marks.
    pub number: u32,
    /// Arc length of the seam, mm.
    pub at: f64,
    /// Its sizes.
    pub size: JointSize,
    /// Angle in the run's untwisted frame at which the key stands out most, radians: square to a bend, so that it takes
    /// from the inside of the bend what it adds outside.
    pub key_angle: f64,
}

/// A cut that no joint has room at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeftOut {
    /// Its index among the run's.
    pub cut: usize,
    /// The nearest place that has room, mm; none where the run has none that is left.
    pub nearest: Option<f64>,
}

/// The cuts of a run, as they can be made.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Cutting {
    /// Its joints, in order along it.
    pub joints: Vec<Joint>,
    /// The cuts that are not made.
    pub left_out: Vec<LeftOut>,
}

impl Cutting {
    /// The joints of a run as it is drawn, none where it has no centreline; a cut without room for its joint is left out.
    pub fn of(design: &Design, run: &Run, placed: &PlacedRun, line: Option<&Centreline>) -> Self {
        let mut cutting = Self::default();
        let Some(line) = line.filter(|_| !run.cuts.is_empty()) else { return cutting };
        let plain = &Profile::of(run, placed, &design.process.printer, line.length);
        let room = JointRoom::of(design, placed, line, plain);
        let mut taken = f64::NEG_INFINITY;
        for (cut, stated) in run.cuts.iter().enumerate() {
            let number = cutting.joints.len() as u32 + 1;
            match room.joint(cut, number, stated.at, taken) {
                Some(joint) => {
                    taken = joint.span()[1];
                    cutting.joints.push(joint);
                }
                None => cutting.left_out.push(LeftOut { cut, nearest: room.nearest(number, stated.at, taken) }),
            }
        }
        cutting
    }

    /// The arc lengths between which each piece of a run of `length` mm lies, sockets and spigots included.
    pub fn spans(&self, length: f64) -> Vec<[f64; 2]> {
        let starts = std::iter::once(0.0).chain(self.joints.iter().map(Joint::mouth));
        let ends = self.joints.iter().map(|joint| joint.at).chain([length]);
        starts.zip(ends).map(|(from, to)| [from, to]).collect()
    }
}

impl Joint {
    /// Arc length of the socket's mouth, where the second piece begins, mm.
    pub fn mouth(&self) -> f64 {
        self.at - self.size.length
    }

    /// The arc lengths between which the tube is not the plain one, mm: from the first mark to the end of the collar's cone.
    pub fn span(&self) -> [f64; 2] {
        [self.at - self.size.before(self.number), self.at + self.size.after(self.number)]
    }

    /// The arc lengths between which the collar stands out of the tube, mm.
    pub fn collar_span(&self) -> [f64; 2] {
        [self.mouth() - self.size.step, self.span()[1]]
    }
}

/// The angle in the run's untwisted frame that is square to the bend at an arc length, radians; 0 along a straight.
fn square_to_bend(line: &Centreline, s: f64) -> f64 {
    let last = line.pieces.len().saturating_sub(1);
    let piece = line.pieces.partition_point(|piece| piece.to() < s).min(last);
    let Some(on) = line.pieces.get(piece) else { return 0.0 };
    let there = on.at(s - on.from);
    if there.curvature.norm() < STRAIGHT {
        return 0.0;
    }
    let [first, second] = Frames::of(line).at(piece, s - on.from, &there);
    let square = there.tangent.cross(&there.curvature);
    libm::atan2(square.dot(&second), square.dot(&first))
}
