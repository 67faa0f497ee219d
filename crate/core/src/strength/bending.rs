//! Stress at a collar from a fit that is not quite true.
//!
//! The tube between two collars is a slender straight beam of `length` mm, built in at both, and one of them is off by a
//! little. Source: Euler and Bernoulli's beam, as handbooks of strength tabulate it for a beam with both ends fixed and one
//! moved or turned. That a tube with bends is one straight beam of the way between its collars is common practice, no
//! source: its bends yield, so it is stressed less, and the number is on the safe side.

use crate::out_of_range::{OutOfRange, positive, within};

/// Bending stress, MPa, at the collars where one is off sideways by `offset` mm and neither turns: the moment there is
/// 6 E I d / L^2, the stress 3 E OD d / L^2. Modulus MPa, diameter and length mm.
///
/// # Errors
/// [`OutOfRange`] for an offset below zero, or another number that is not above zero.
pub fn stress_of_offset(modulus: f64, outer_diameter: f64, length: f64, offset: f64) -> Result<f64, OutOfRange> {
    let [modulus, outer, length] = beam(modulus, outer_diameter, length)?;
    let offset = within("offset", offset, [0.0, f64::INFINITY], "mm")?;
    Ok(3.0 * modulus * outer * offset / (length * length))
}

/// Bending stress, MPa, at the collar that is turned by `angle` radians: the moment there is 4 E I a / L, the stress
/// 2 E OD a / L. Modulus MPa, diameter and length mm. Small angles only.
///
/// # Errors
/// [`OutOfRange`] for an angle outside [0, 0.2], or another number that is not above zero.
pub fn stress_of_angle(modulus: f64, outer_diameter: f64, length: f64, angle: f64) -> Result<f64, OutOfRange> {
    let [modulus, outer, length] = beam(modulus, outer_diameter, length)?;
    let angle = within("misalignment", angle, [0.0, 0.2], "rad")?;
    Ok(2.0 * modulus * outer * angle / length)
}

/// Angle, radians, by which a tube may lie askew in a socket: its clearance, mm, over the length that holds it, mm.
///
/// # Errors
/// [`OutOfRange`] for a clearance below zero or a length that is not above zero.
pub fn angle_of_play(clearance: f64, depth: f64) -> Result<f64, OutOfRange> {
    let clearance = within("clearance", clearance, [0.0, f64::INFINITY], "mm")?;
    Ok(libm::atan(clearance / positive("socket depth", depth, "mm")?))
}

fn beam(modulus: f64, outer_diameter: f64, length: f64) -> Result<[f64; 3], OutOfRange> {
    Ok([
        positive("modulus", modulus, "MPa")?,
        positive("outer diameter", outer_diameter, "mm")?,
        positive("length between the collars", length, "mm")?,
    ])
}
