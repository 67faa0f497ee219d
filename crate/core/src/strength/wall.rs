//! Stress in the wall of a tube under pressure from inside.

use crate::out_of_range::{OutOfRange, positive, within};

/// Stresses in a straight tube's wall, MPa, by Lame's formulas for a thick cylinder with closed ends: exact for a long one
/// of an elastic material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wall {
    /// Round the tube, at the bore: the largest.
    pub hoop_at_bore: f64,
    /// Round the tube, at the outside.
    pub hoop_at_outside: f64,
    /// Along the tube.
    pub axial: f64,
    /// Through the wall, at the bore: the pressure itself, as compression.
    pub radial_at_bore: f64,
    /// All three at the bore in one, by von Mises.
    pub von_mises_at_bore: f64,
}

impl Wall {
    /// The stresses of a pressure, MPa above the air's, in a tube of an outer diameter and a bore, mm. They are in
    /// proportion to the pressure.
    ///
    /// # Errors
    /// [`OutOfRange`] for a pressure below zero, or a bore that is not above zero and below the outer diameter.
    pub fn under(pressure: f64, outer_diameter: f64, bore: f64) -> Result<Self, OutOfRange> {
        let p = within("pressure", pressure, [0.0, f64::INFINITY], "MPa")?;
        let [inner, outer] = walls(outer_diameter, bore)?.map(|diameter| diameter * diameter);
        let unit = p / (outer - inner);
        let (hoop, axial, radial) = (unit * (outer + inner), unit * inner, -p);
        let [a, b, c] = [hoop - axial, axial - radial, radial - hoop];
        Ok(Self {
            hoop_at_bore: hoop,
            hoop_at_outside: 2.0 * unit * inner,
            axial,
            radial_at_bore: radial,
            von_mises_at_bore: ((a * a + b * b + c * c) / 2.0).sqrt(),
        })
    }
}

/// Bore and outer diameter, where they leave a wall.
pub(super) fn walls(outer_diameter: f64, bore: f64) -> Result<[f64; 2], OutOfRange> {
    positive("bore", bore, "mm")?;
    // A wall of a millionth of the bore is the thinnest that a quotient can still tell from none.
    within("outer diameter", outer_diameter, [bore * (1.0 + 1e-6), f64::INFINITY], "mm")?;
    Ok([bore, outer_diameter])
}

/// By how much the inside of a bend is worse off than a straight: (R - r/2) / (R - r), r the middle of the wall's radius,
/// by the membrane theory of a torus (from memory; found in texts on shells and pressure vessels). 1 at an endless radius.
/// Bend radius, outer diameter and bore in mm.
///
/// # Errors
/// [`OutOfRange`] for a bend radius that is not above half of the outer diameter.
pub fn torus_factor(bend_radius: f64, outer_diameter: f64, bore: f64) -> Result<f64, OutOfRange> {
    let [bore, outer] = walls(outer_diameter, bore)?;
    let radius = within("bend radius", bend_radius, [outer / 2.0, f64::INFINITY], "mm")?;
    let middle = (outer + bore) / 4.0;
    Ok((radius - middle / 2.0) / (radius - middle))
}

/// Barlow's hoop stress, p D / (2 t), MPa. With the outer diameter it is above Lame's at the bore; with any other, below.
///
/// # Errors
/// As [`Wall::under`].
pub fn barlow(pressure: f64, outer_diameter: f64, bore: f64) -> Result<f64, OutOfRange> {
    let p = within("pressure", pressure, [0.0, f64::INFINITY], "MPa")?;
    let [bore, outer] = walls(outer_diameter, bore)?;
    Ok(p * outer / (outer - bore))
}
