//! From tube to triangles: two skins of rings along the centreline and two flat ends.
//!
//! Every ring's corners stand a little outside its circle, and every ring inside a bend a little outside its place, so
//! that the polyhedron holds the tube's exact volume; what sticks out and what is cut off both stay within the
//! deviation asked for.

mod cap;
mod fineness;
mod rings;
mod skin;
mod solidity;

pub use solidity::{Flaw, is_solid, signed_volume, solidity};

use crate::centreline::Centreline;
use crate::design::Run;
use crate::tube::{LEAST_TIP_WALL, Profile, least_inner_radius, rounding};

/// A triangle mesh, mm, outward normals by the right-hand rule, closed.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Mesh {
    /// x, y, z of each vertex; a shared corner is stored once.
    pub positions: Vec<f32>,
    /// Three vertex indices a triangle, counter-clockwise seen from outside.
    pub indices: Vec<u32>,
}

/// Why a run has no mesh.
#[derive(Debug, Clone, PartialEq)]
pub struct Fault {
    /// JSON Pointer below the run to what is in the way.
    pub path: String,
    /// What is wrong and what would work.
    pub message: String,
}

/// Most triangles of one run's mesh: above it, the deviation asked for is too fine for the tube's length.
const MOST_TRIANGLES: usize = 8_000_000;

/// The mesh of a run along its centreline. No point of it is farther than `deviation` mm (0.001 to 1) from the exact
/// skin, nor the skin from it.
///
/// # Errors
/// A [`Fault`] where the tube would cross itself inside a bend, has no wall at its tip, lies so far from the datum
/// that 32-bit coordinates cannot hold the deviation, or would take over eight million triangles.
pub fn run_mesh(run: &Run, line: &Centreline, deviation: f64) -> Result<Mesh, Fault> {
    let profile = Profile::of(run, line.length);
    let reach = reach_of(line) + profile.outer.largest();
    refuse_bad_tube(run, line, &profile, reach)?;
    // A coarse mesh must not let the skins touch, so a thin wall bounds the deviation as well.
    let asked = deviation.min(profile.tip_wall() / 4.0).min(run.wall() / 4.0);
    let allowed = asked * 0.99 - 0.9 * f64::from(rounding(reach));
    if allowed < asked / 2.0 {
        return Err(Fault {
            path: String::new(),
            message: format!(
                "the run lies {reach:.0} mm from the datum, too far for a mesh true to {asked} mm; move the datum \
                 nearer or allow a larger deviation"
            ),
        });
    }
    let outer = fineness::choose(line, &profile.outer, allowed);
    let bore = fineness::choose(line, &profile.bore, allowed);
    let rings = [rings::along(line, &profile.outer, &outer, reach), rings::along(line, &profile.bore, &bore, reach)];
    let triangles = 2 * (outer.around * rings[0].len() + bore.around * rings[1].len());
    if triangles > MOST_TRIANGLES {
        return Err(Fault {
            path: String::new(),
            message: format!("a deviation of {deviation} mm would take {triangles} triangles; allow a larger one"),
        });
    }
    let mut mesh = Mesh {
        positions: Vec::with_capacity(3 * (outer.around * rings[0].len() + bore.around * rings[1].len())),
        indices: Vec::with_capacity(3 * triangles),
    };
    let outer_start = skin::sew(&mut mesh, &rings[0], outer.around, skin::Side::Outer);
    let bore_start = skin::sew(&mut mesh, &rings[1], bore.around, skin::Side::Bore);
    let last = |start: u32, around: usize, rings: &[rings::Ring]| start + (around * (rings.len() - 1)) as u32;
    let first_edges = [(outer_start, outer.around), (bore_start, bore.around)];
    let last_edges = [
        (last(outer_start, outer.around, &rings[0]), outer.around),
        (last(bore_start, bore.around, &rings[1]), bore.around),
    ];
    cap::close(&mut mesh, first_edges, cap::Faces::Back);
    cap::close(&mut mesh, last_edges, cap::Faces::Forward);
    Ok(mesh)
}

/// What keeps a run from having a mesh of any deviation, if something does.
pub fn fault(run: &Run, line: &Centreline) -> Option<Fault> {
    let profile = Profile::of(run, line.length);
    refuse_bad_tube(run, line, &profile, reach_of(line) + profile.outer.largest()).err()
}

fn refuse_bad_tube(run: &Run, line: &Centreline, profile: &Profile, reach: f64) -> Result<(), Fault> {
    let least = run.outer_radius() + least_inner_radius(reach);
    for piece in &line.pieces {
        if let crate::centreline::Shape::Arc { radius, station, .. } = piece.shape
            && radius < least
        {
            let own = station.and_then(|index| {
                let crate::design::Station::Corner(corner) = &run.route[index];
                corner.bend_radius.map(|radius| (format!("/route/{index}/bend_radius"), radius))
            });
            let (path, stated) = own.unwrap_or_else(|| ("/bend_radius".to_string(), run.bend_radius));
            return Err(Fault {
                path,
                message: format!(
                    "a bend radius of {stated} mm makes a tube of {} mm cross itself; use at least {least:.3} mm",
                    run.tube.outer_diameter
                ),
            });
        }
    }
    if profile.tip_wall() < LEAST_TIP_WALL {
        return Err(Fault {
            path: "/ends/chamfer_length".into(),
            message: format!(
                "the chamfer and the inner edge break leave {:.3} mm of wall at the tip; shorten them until at least \
                 {LEAST_TIP_WALL} mm is left",
                profile.tip_wall()
            ),
        });
    }
    Ok(())
}

/// Largest coordinate of the centreline's joints, and of an arc's far side, mm.
fn reach_of(line: &Centreline) -> f64 {
    line.pieces
        .iter()
        .flat_map(|piece| {
            let end = piece.at(piece.length).point;
            let bulge = piece.radius().map_or(0.0, |radius| piece.length.min(2.0 * radius));
            [piece.start.amax() + bulge, end.amax()]
        })
        .fold(0.0, f64::max)
}
