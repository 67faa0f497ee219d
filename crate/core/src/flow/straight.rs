//! Friction in a straight tube.

use super::estimate::Estimate;
use crate::out_of_range::{LEAST, OutOfRange, within};

/// Reynolds number up to which flow in a straight tube is laminar.
pub const LAMINAR_LIMIT: f64 = 2300.0;
/// Reynolds number from which it is turbulent.
pub const FULLY_TURBULENT: f64 = 4000.0;

/// How coolant runs in a tube.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Regime {
    /// In layers.
    Laminar,
    /// Now the one, now the other.
    Transition,
    /// In eddies.
    Turbulent,
}

impl Regime {
    /// The regime of a straight tube at a Reynolds number.
    pub fn of(reynolds: f64) -> Self {
        match reynolds {
            re if re < LAMINAR_LIMIT => Self::Laminar,
            re if re < FULLY_TURBULENT => Self::Transition,
            _ => Self::Turbulent,
        }
    }
}

/// Friction factor of a straight tube: laminar below 2300, Colebrook and White's above 4000, and between them the
/// straight line from the one's value at 2300 to the other's at 4000, so that nothing jumps. The share of turbulence that
/// grows evenly from 2300 to 4000 is Gnielinski's, Int. J. Heat Mass Transfer 63 (2013) 134, who uses it for heat (from
/// memory). In between, either may hold: low is the laminar, high the turbulent factor.
///
/// `relative_roughness` is the height of the bore's roughness over the bore.
///
/// # Errors
/// [`OutOfRange`] for a Reynolds number outside [1e-9, 1e8] or a relative roughness outside Moody's chart, [0, 0.05].
pub fn straight_friction(reynolds: f64, relative_roughness: f64) -> Result<Estimate, OutOfRange> {
    let re = checked(reynolds, relative_roughness)?;
    Ok(match Regime::of(re) {
        Regime::Laminar => Estimate::exact(laminar(re)),
        Regime::Turbulent => Estimate::exact(colebrook(re, relative_roughness)),
        Regime::Transition => Estimate {
            nominal: between(
                re,
                [LAMINAR_LIMIT, laminar(LAMINAR_LIMIT)],
                [FULLY_TURBULENT, colebrook(FULLY_TURBULENT, relative_roughness)],
            ),
            low: laminar(re),
            high: colebrook(re, relative_roughness),
            trusted: false,
        },
    })
}

/// The Reynolds number, if both numbers are on Moody's chart.
pub(super) fn checked(reynolds: f64, relative_roughness: f64) -> Result<f64, OutOfRange> {
    within("relative roughness", relative_roughness, [0.0, 0.05], "")?;
    within("Reynolds number", reynolds, [LEAST, 1e8], "")
}

/// The straight line through two points, at `x`.
pub(super) fn between(x: f64, [x0, y0]: [f64; 2], [x1, y1]: [f64; 2]) -> f64 {
    y0 + (y1 - y0) * ((x - x0) / (x1 - x0))
}

/// Laminar friction factor, 64 / Re: Hagen and Poiseuille's law, exact.
pub fn laminar(reynolds: f64) -> f64 {
    64.0 / reynolds
}

/// Turbulent friction factor by Colebrook and White's formula, 1/sqrt f = -2 log10(e/3.7 + 2.51/(Re sqrt f)), J. Inst. Civ.
/// Eng. 11 (1939) 133; Re from 4000 to 1e8, relative roughness e from 0 to 0.05. Below 2300 it means nothing.
pub fn colebrook(reynolds: f64, relative_roughness: f64) -> f64 {
    // In x = 1/sqrt f the miss is a rising curve bent one way, so that Newton's steps close in: five at most from Haaland's.
    let (a, b) = (relative_roughness / 3.7, 2.51 / reynolds);
    let mut x = 1.0 / haaland(reynolds, relative_roughness).sqrt();
    for _ in 0..8 {
        let inside = a + b * x;
        let step = (x + 2.0 * libm::log10(inside)) / (1.0 + 2.0 * b / (core::f64::consts::LN_10 * inside));
        x -= step;
        if step.abs() <= 1e-14 * x {
            break;
        }
    }
    1.0 / (x * x)
}

/// Turbulent friction factor of a smooth tube by Blasius, 0.3164 Re^-0.25, Forschungsheft 131 (1913); Re from 4e3 to 1e5.
pub fn blasius(reynolds: f64) -> f64 {
    0.3164 * libm::pow(reynolds, -0.25)
}

/// Turbulent friction factor by Haaland, J. Fluids Eng. 105 (1983) 89: within 2 % of Colebrook and White's.
pub fn haaland(reynolds: f64, relative_roughness: f64) -> f64 {
    let x = -1.8 * libm::log10(libm::pow(relative_roughness / 3.7, 1.11) + 6.9 / reynolds);
    1.0 / (x * x)
}

/// Friction factor for every regime by Churchill, Chem. Eng. 84 (1977) 91; here as a check on [`straight_friction`].
pub fn churchill(reynolds: f64, relative_roughness: f64) -> f64 {
    let a = libm::pow(2.457 * libm::log(1.0 / (libm::pow(7.0 / reynolds, 0.9) + 0.27 * relative_roughness)), 16.0);
    let b = libm::pow(37_530.0 / reynolds, 16.0);
    8.0 * libm::pow(libm::pow(8.0 / reynolds, 12.0) + libm::pow(a + b, -1.5), 1.0 / 12.0)
}
