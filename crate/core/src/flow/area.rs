//! A sudden change of bore, square-edged.

use super::estimate::Estimate;
use super::straight::FULLY_TURBULENT;

/// How many dynamic pressures of the smaller bore a step to a larger one costs: Borda and Carnot's (1 - (d1/d2)^2)^2. Bores
/// in mm. Trusted where the smaller bore's flow is turbulent.
pub fn expansion(smaller: f64, larger: f64, reynolds_in_smaller: f64) -> Estimate {
    Estimate::judged(expansion_factor(smaller / larger), reynolds_in_smaller >= FULLY_TURBULENT)
}

/// How many dynamic pressures of the smaller bore a step to it from a larger one costs: 0.5 (1 - (d1/d2)^2), Crane TP-410.
/// Bores in mm. Always with a band: another handbook (Rennels and Hudson, Pipe Flow) gives up to 38 % more.
pub fn contraction(smaller: f64, larger: f64, reynolds_in_smaller: f64) -> Estimate {
    let factor = contraction_factor(smaller / larger);
    let trusted = reynolds_in_smaller >= FULLY_TURBULENT;
    Estimate { trusted, high: factor * 1.4, ..Estimate::outside(factor) }
}

/// Borda and Carnot's (1 - b^2)^2, b the smaller bore over the larger.
pub fn expansion_factor(bore_ratio: f64) -> f64 {
    let open = 1.0 - bore_ratio * bore_ratio;
    open * open
}

/// Crane's 0.5 (1 - b^2), b the smaller bore over the larger.
pub fn contraction_factor(bore_ratio: f64) -> f64 {
    0.5 * (1.0 - bore_ratio * bore_ratio)
}
