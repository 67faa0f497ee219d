//! What keeps a run from having a mesh.

use crate::centreline::{Centreline, Piece};
use crate::design::{Run, Station};
use crate::tube::{LEAST_TIP_WALL, Profile, least_inner_radius};

/// Why a run has no mesh.
#[derive(Debug, Clone, PartialEq)]
pub struct Fault {
    /// JSON Pointer below the run to what is in the way.
    pub path: String,
    /// What is wrong and what would work.
    pub message: String,
}

/// What keeps a run of that profile from having a mesh of any deviation, if something does.
pub fn fault(run: &Run, profile: &Profile, line: &Centreline) -> Option<Fault> {
    let least = least_inner_radius(line.reach() + profile.largest_outer());
    let [from, to] = profile.span();
    let mut pieces = line.pieces.iter().filter(|piece| piece.from < to && piece.to() > from);
    pieces.find_map(|piece| crossing(run, profile, piece, least)).or_else(|| no_wall(profile))
}

/// A piece that bends so tightly that the skin inside it would fold over.
fn crossing(run: &Run, profile: &Profile, piece: &Piece, least_inner: f64) -> Option<Fault> {
    let radius = piece.radius()?;
    let outer = profile.outer.largest_between(piece.from, piece.to());
    let least = outer + least_inner;
    if radius >= least {
        return None;
    }
    let route = piece.station().and_then(|station| Some((station, run.route.get(station)?)));
    let (path, what) = match route {
        Some((station, Station::Corner(corner))) if corner.bend_radius.is_some() => (
            format!("/route/{station}/bend_radius"),
            format!("a bend radius of {} mm", corner.bend_radius.unwrap_or(radius)),
        ),
        Some((station, Station::Coil(_))) => {
            (format!("/route/{station}/coil/radius"), format!("a coil that bends at a radius of {radius:.3} mm"))
        }
        Some((station, Station::Through(_))) => {
            (format!("/route/{station}/through"), format!("a curve that bends at a radius of {radius:.3} mm"))
        }
        _ => ("/bend_radius".to_owned(), format!("a bend radius of {} mm", run.bend_radius)),
    };
    let message = format!("{what} makes a tube of {} mm cross itself; use at least {least:.3} mm", 2.0 * outer);
    Some(Fault { path, message })
}

fn no_wall(profile: &Profile) -> Option<Fault> {
    let tip = profile.tip_wall();
    if tip < LEAST_TIP_WALL {
        return Some(Fault {
            path: "/ends/chamfer_length".into(),
            message: format!(
                "the chamfer and the inner edge break leave {tip:.3} mm of wall at the tip; shorten them until at least \
                 {LEAST_TIP_WALL} mm is left"
            ),
        });
    }
    // A plain tube's wall is what its diameters say, however thin.
    let least = profile.least_wall().wall;
    (least < LEAST_TIP_WALL && profile.is_dressed()).then(|| Fault {
        path: "/dress".into(),
        message: format!(
            "the dress leaves {least:.3} mm of wall; make it thicker or its grooves shallower until at least \
             {LEAST_TIP_WALL} mm is left"
        ),
    })
}

impl Fault {
    /// So far from the datum that 32-bit coordinates cannot hold the deviation asked for.
    pub(super) fn far(reach: f64, asked: f64) -> Self {
        let message = format!(
            "the run lies {reach:.0} mm from the datum, too far for a mesh true to {asked} mm; move the datum \
             nearer or allow a larger deviation"
        );
        Self { path: String::new(), message }
    }

    /// So fine that the mesh would be too large.
    pub(super) fn fine(deviation: f64, triangles: usize) -> Self {
        let message = format!("a deviation of {deviation} mm would take {triangles} triangles; allow a larger one");
        Self { path: String::new(), message }
    }
}
