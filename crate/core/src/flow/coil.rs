//! Friction in a tube that bends all along: a coil, or a curve by its curvature at each place.
//!
//! `curvature_ratio` is the bore over the diameter of the circle that the centreline follows there, d/D: the bore times
//! half of the curvature. For a coil of pitch p that circle is the developed one, Dc = D (1 + (p / pi D)^2), which is
//! two over a helix's curvature: so a coil's pitch is allowed for by taking its curvature.

use super::estimate::Estimate;
use super::straight::{FULLY_TURBULENT, LAMINAR_LIMIT, between, checked, colebrook, laminar, straight_friction};
use crate::out_of_range::{OutOfRange, within};

/// Friction factor of a tube that follows a circle: White's laminar one up to the critical Reynolds number (Ito's, not
/// below a straight tube's 2300), above 4000/2300 of it the straight tube's factor plus 0.03 sqrt(d/D), the term by which
/// Mishra and Gupta's exceeds Blasius's; a straight line between. With no curvature it is [`straight_friction`].
///
/// The straight part is Colebrook and White's, not Blasius's, so that roughness counts and a tube that straightens out
/// does not jump; that stays within 2.5 % of the published sum, and from Re 2e4 within 5.5 % of Schmidt's turbulent factor.
/// Trusted where White's (Dean number to 2000), or Mishra and Gupta's (Re to 1e5, D/d from 6.7 to 346), holds.
///
/// # Errors
/// [`OutOfRange`] as [`straight_friction`], or for a curvature ratio outside [0, 1]: a bore that reaches the centre.
pub fn curved_friction(reynolds: f64, curvature_ratio: f64, relative_roughness: f64) -> Result<Estimate, OutOfRange> {
    let re = checked(reynolds, relative_roughness)?;
    let ratio = within("bore over bend diameter", curvature_ratio, [0.0, 1.0], "")?;
    if ratio == 0.0 {
        return straight_friction(re, relative_roughness);
    }
    let critical = critical_reynolds(ratio);
    let settled = critical * (FULLY_TURBULENT / LAMINAR_LIMIT);
    let turbulent = |re: f64| colebrook(re, relative_roughness) + 0.03 * ratio.sqrt();
    if re <= critical {
        return Ok(Estimate::judged(white_laminar(re, ratio), re * ratio.sqrt() <= 2000.0));
    }
    if re >= settled {
        let known = ratio < 1.0 / 346.0 || (ratio <= 1.0 / 6.7 && re <= 1e5);
        return Ok(Estimate::judged(turbulent(re), known));
    }
    Ok(Estimate::outside(between(re, [critical, white_laminar(critical, ratio)], [settled, turbulent(settled)])))
}

/// Reynolds number up to which flow in a coil stays laminar: Ito's, and never below a straight tube's.
pub fn critical_reynolds(curvature_ratio: f64) -> f64 {
    critical_reynolds_ito(curvature_ratio).max(LAMINAR_LIMIT)
}

/// Ito's, 2e4 (d/D)^0.32, J. Basic Eng. 81 (1959) 123; d/D from 0.00116 to 0.067.
pub fn critical_reynolds_ito(curvature_ratio: f64) -> f64 {
    2e4 * libm::pow(curvature_ratio, 0.32)
}

/// Schmidt's, 2300 (1 + 8.6 (d/D)^0.45), Chem.-Ing.-Tech. 39 (1967) 781; d/D below 0.14.
pub fn critical_reynolds_schmidt(curvature_ratio: f64) -> f64 {
    2300.0 * (1.0 + 8.6 * libm::pow(curvature_ratio, 0.45))
}

/// Srinivasan's, 2100 (1 + 12 (d/D)^0.5); d/D from 0.004 to 0.1.
pub fn critical_reynolds_srinivasan(curvature_ratio: f64) -> f64 {
    2100.0 * (1.0 + 12.0 * curvature_ratio.sqrt())
}

/// Laminar friction factor in a coil by White, Proc. R. Soc. A 123 (1929) 645; Dean number from 11.6 to 2000, below which
/// it is the straight tube's.
pub fn white_laminar(reynolds: f64, curvature_ratio: f64) -> f64 {
    let dean = reynolds * curvature_ratio.sqrt();
    if dean <= 11.6 {
        return laminar(reynolds);
    }
    laminar(reynolds) / (1.0 - libm::pow(1.0 - libm::pow(11.6 / dean, 0.45), 1.0 / 0.45))
}

/// Laminar friction factor in a coil by Mori and Nakayama, Int. J. Heat Mass Transfer 8 (1965) 67 (year and volume from
/// memory); Dean number from 100 to 2000.
pub fn mori_nakayama_laminar(reynolds: f64, curvature_ratio: f64) -> f64 {
    let root = (reynolds * curvature_ratio.sqrt()).sqrt();
    laminar(reynolds) * 0.108 * root / (1.0 - 3.253 / root)
}

/// Laminar friction factor in a coil of a pitch by Mishra and Gupta, Ind. Eng. Chem. Process Des. Dev. 18 (1979) 130, from
/// memory: (64/Re) (1 + 0.033 log10(He)^4), He the Helical number Re sqrt(d/Dc) from 1 to 3000.
pub fn mishra_gupta_laminar(reynolds: f64, curvature_ratio: f64) -> f64 {
    let log = libm::log10((reynolds * curvature_ratio.sqrt()).max(1.0));
    laminar(reynolds) * (1.0 + 0.033 * log * log * log * log)
}

/// Turbulent friction factor in a smooth coil by Mishra and Gupta, as the VDI Heat Atlas gives it in Darcy's factor:
/// 0.3164 Re^-0.25 + 0.03 sqrt(d/Dc); Re from 4500 to 1e5, D/d from 6.7 to 346.
pub fn mishra_gupta_turbulent(reynolds: f64, curvature_ratio: f64) -> f64 {
    super::straight::blasius(reynolds) + 0.03 * curvature_ratio.sqrt()
}

/// Diameter of the circle, mm, that a coil of a centreline diameter and a pitch, mm, bends like: D (1 + (p / pi D)^2).
pub fn developed_diameter(diameter: f64, pitch: f64) -> f64 {
    let slope = pitch / (core::f64::consts::PI * diameter);
    diameter * (1.0 + slope * slope)
}
