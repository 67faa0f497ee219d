//! A run told from its other end: the same tube to the last point.

use super::{tidy, within_half_turn};
use crate::design::{Coil, Coordinate, Cut, Dress, Run, Station};
use crate::layout::{Vec3, unit};

/// The run with its ends swapped and its stations in the other order.
///
/// Every point of the centreline stays where it is. A dress keeps its diameters and the hand of its twist; its lobes
/// begin at the other end then, so they may stand turned. Cuts stay where they are: spigots of `spigot` mm reach back from
/// the other side of each joint then, and the seam with them; on a run whose `length`, mm, is not known there is no place
/// for them. Turning round twice gives the run again, but that an end diameter once swapped in stays written out.
pub fn reversed(run: &Run, length: Option<f64>, spigot: f64) -> Run {
    let stances: Vec<_> = run.cuts.iter().rev().map(|cut| cut.stance).chain([run.stance]).collect();
    let places = run.cuts.iter().rev().filter_map(|cut| Some(tidy(length? - cut.at + spigot)));
    let cuts = places.zip(&stances[1..]).map(|(at, stance)| Cut { at, stance: *stance });
    let cuts: Vec<Cut> = cuts.filter(|cut| cut.at > 0.0).collect();
    Run {
        stance: if cuts.is_empty() { run.stance } else { stances[0] },
        cuts,
        from: run.to.clone(),
        to: run.from.clone(),
        route: run.route.iter().rev().map(station).collect(),
        dress: run.dress.as_ref().map(|dress| worn(dress, run.tube.outer_diameter)),
        ..run.clone()
    }
}

fn station(station: &Station) -> Station {
    match station {
        Station::Coil(coil) => Station::Coil(wound_back(coil)),
        other => other.clone(),
    }
}

/// The coil from its other end. With phi turned of the whole angle w, the point at `centre + axis * climb * phi` and the
/// angle `start + sign * phi` is reached from the end after w - phi, by a climb along the opposite axis. About that
/// axis angles count the other way from the same reference, so a hand stays what it is, as with a screw, and the
/// start is `-(start + sign * w)`.
fn wound_back(coil: &Coil) -> Coil {
    let climbed = unit(&Vec3::from(coil.axis)) * (coil.pitch * coil.turns);
    let mut centre = coil.centre.clone();
    for (axis, coordinate) in centre.iter_mut().enumerate() {
        match coordinate {
            Coordinate::Fixed(value) | Coordinate::Tied { plus: value, .. } => *value = tidy(*value + climbed[axis]),
        }
    }
    Coil {
        centre,
        axis: coil.axis.map(|part| 0.0 - part),
        radius: coil.radius_at_end(),
        end_radius: coil.end_radius.map(|_| coil.radius),
        start_deg: within_half_turn(-(coil.start_deg + coil.hand.sign() * 360.0 * coil.turns)),
        ..coil.clone()
    }
}

/// The same body seen from the other end. The hand of a twist does not depend on the end it is seen from.
fn worn(dress: &Dress, plain: f64) -> Dress {
    let [first, last] = dress.diameters(plain);
    match dress.end_diameter {
        None => dress.clone(),
        Some(_) => Dress { diameter: Some(last), end_diameter: Some(first), ..dress.clone() },
    }
}
