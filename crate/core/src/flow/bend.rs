//! A circular bend.

use super::coil::{curved_friction, white_laminar};
use super::estimate::Estimate;
use super::straight::{between, checked, straight_friction};
use crate::out_of_range::{LEAST, OutOfRange, within};
use core::f64::consts::TAU;

/// A circular bend of the centreline.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bend {
    /// Bend radius of the centreline, mm.
    pub radius: f64,
    /// Angle turned through, radians.
    pub angle: f64,
}

/// R/d from which a bend begins to be reckoned as a curve, and from which it is one altogether.
const GENTLE: [f64; 2] = [20.0, 40.0];

impl Bend {
    /// How many dynamic pressures the bend costs, its own friction included.
    ///
    /// Ito's loss, J. Basic Eng. 82 (1960) 131, published for smooth bends from Re 2e4 to 4e5 (range from memory). A
    /// coolant runs slower than that, where a bend keeps its flow laminar: so never less than what the arc costs as a
    /// part of a coil by White's laminar factor. From R/d 20 to 40 it goes over evenly into the arc's friction by
    /// [`curved_friction`], which is what Ito's loss comes to in a long gentle bend. Roughness counts as in a straight
    /// tube, by the ratio of its friction factor to a smooth one's (Miller, Internal Flow Systems).
    ///
    /// # Errors
    /// [`OutOfRange`] for a bend radius below half the bore, an angle outside (0, 2 pi], or as [`curved_friction`].
    pub fn factor(&self, bore: f64, reynolds: f64, relative_roughness: f64) -> Result<Estimate, OutOfRange> {
        let re = checked(reynolds, relative_roughness)?;
        let radius = within("bend radius", self.radius, [bore / 2.0, f64::INFINITY], "mm")?;
        let angle = within("bend angle", self.angle, [LEAST, TAU], "rad")?;
        let (slenderness, arc) = (radius / bore, radius * angle / bore);
        let share = ((slenderness - GENTLE[0]) / (GENTLE[1] - GENTLE[0])).clamp(0.0, 1.0);
        let curve = curved_friction(re, bore / (2.0 * radius), relative_roughness)? * arc;
        if share == 1.0 {
            return Ok(curve);
        }
        let rough = if relative_roughness > 0.0 {
            straight_friction(re, relative_roughness)?.nominal / straight_friction(re, 0.0)?.nominal
        } else {
            1.0
        };
        let ito = ito_bend_factor(re, slenderness, angle) * rough;
        let factor = ito.max(white_laminar(re, bore / (2.0 * radius)) * arc);
        let bend = Estimate::judged(factor, (2e4..=4e5).contains(&re) && slenderness >= 1.0);
        Ok(if share == 0.0 { bend } else { bend * (1.0 - share) + curve * share })
    }
}

/// Loss of a smooth bend by Ito, in dynamic pressures: Reynolds number, R/d, and angle in radians. With r the bore's
/// radius (not its diameter) and x = Re (r/R)^2, it is 0.00873 a f theta (R/r) below x = 91 and 0.00241 a theta Re^-0.17
/// (R/r)^0.84 from there, theta in degrees; the two differ by 0.6 % where they meet.
pub fn ito_bend_factor(reynolds: f64, slenderness: f64, angle: f64) -> f64 {
    let (degrees, wide) = (angle.to_degrees(), 2.0 * slenderness);
    let x = reynolds / (wide * wide);
    let angled = ito_angle_factor(slenderness, angle) * degrees;
    if x < 91.0 {
        0.00873 * angled * ito_curved_friction(reynolds, slenderness) * wide
    } else {
        0.00241 * angled * libm::pow(reynolds, -0.17) * libm::pow(wide, 0.84)
    }
}

/// Friction factor of a curved smooth tube by Ito, J. Basic Eng. 81 (1959) 123, as in his bend's loss: sqrt(r/R) (0.029 +
/// 0.304 x^-0.25), x = Re (r/R)^2 from 0.034 to 300; form from memory, checked against other authors'.
pub fn ito_curved_friction(reynolds: f64, slenderness: f64) -> f64 {
    let wide = 2.0 * slenderness;
    (0.029 + 0.304 * libm::pow(reynolds / (wide * wide), -0.25)) / wide.sqrt()
}

/// Ito's factor for what a bend costs over its friction: his for 45, 90 and 180 degrees, a straight line between, and the
/// nearest of them outside. R/d; angle in radians.
pub fn ito_angle_factor(slenderness: f64, angle: f64) -> f64 {
    let (degrees, wide) = (angle.to_degrees(), 2.0 * slenderness);
    let eighth = 1.0 + 14.2 * libm::pow(wide, -1.47);
    let quarter = if wide < 19.7 { 0.95 + 17.2 * libm::pow(wide, -1.96) } else { 1.0 };
    let half = 1.0 + 116.0 * libm::pow(wide, -4.52);
    match degrees {
        d if d <= 45.0 => eighth,
        d if d <= 90.0 => between(d, [45.0, eighth], [90.0, quarter]),
        d if d <= 180.0 => between(d, [90.0, quarter], [180.0, half]),
        _ => half,
    }
}
