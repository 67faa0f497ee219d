//! What pressure a run holds.

use crate::centreline::Centreline;
use crate::design::{Design, Process, Run};
use crate::strength::{
    Allowable, Factor, Wall, allowed_pressure, stress_of_angle, stress_of_offset, torus_factor, utilisation,
};

/// MPa in a kPa.
const MPA: f64 = 1e-3;
const PRACTICE: &str = "common practice, no source";

/// A run against its pressure. Stresses MPa, pressures kPa.
#[derive(Debug, Clone, PartialEq)]
pub struct Strength {
    /// The pressure it is held against: that of the test or of the work, whichever is more.
    pub pressure: f64,
    /// Hoop stress at the bore of a straight.
    pub hoop: f64,
    /// By how much the tightest bend's inside is worse off.
    pub bend: f64,
    /// The stress that may be used, and what takes from the sheet's strength.
    pub allowed: f64,
    /// See [`Strength::allowed`].
    pub factors: Vec<Factor>,
    /// Share of the allowed stress that is used: 1 is all of it.
    pub utilisation: f64,
    /// The pressure that would use all of it.
    pub allowed_pressure: f64,
}

impl Strength {
    /// A run's strength; none where the material's is not known, or the tube is none.
    pub fn of(design: &Design, run: &Run, line: &Centreline) -> Option<Self> {
        let allowable = allowable(&design.process)?;
        let allowed = allowable.stress().ok()?;
        let pressure = design.working.test_kpa.max(design.working.pressure_kpa);
        let (outer, bore) = (thinnest_outer(run), run.tube.bore);
        let hoop = Wall::under(pressure * MPA, outer, bore).ok()?.hoop_at_bore;
        let tightest = line.tightest_radius();
        let bend = if tightest.is_finite() { torus_factor(tightest, outer, bore).ok()? } else { 1.0 };
        Some(Self {
            pressure,
            hoop,
            bend,
            allowed,
            factors: allowable.factors,
            utilisation: utilisation(hoop * bend, allowed).ok()?,
            allowed_pressure: allowed_pressure(allowed, outer, bore, bend).ok()? / MPA,
        })
    }
}

/// Outer diameter of a round tube whose wall is the run's thinnest, mm.
pub fn thinnest_outer(run: &Run) -> f64 {
    let dressed = run.dress.as_ref().map_or(f64::INFINITY, |dress| run.tube.bore + 2.0 * dress.thinnest(run.tube));
    run.tube.outer_diameter.min(dressed)
}

/// The material's strength and what takes from it; none where either of its figures is not known.
pub fn allowable(process: &Process) -> Option<Allowable> {
    let (material, factors) = (&process.material, &process.factors);
    Some(Allowable {
        strength: material.strength_mpa?,
        factors: vec![
            Factor::share("across the layers", material.across_layers?, "the material's figures"),
            Factor::share("warm", factors.warm, PRACTICE),
            Factor::share("over years", factors.lasting, PRACTICE),
            Factor::safety("safety", factors.safety, PRACTICE),
        ],
    })
}

/// Bending stress at a collar, MPa, where both ports are as far off as they may be, sideways or leaning, whichever is more;
/// none where the material's modulus is not known. `apart` is the way between the mouths, mm.
pub fn side_load(process: &Process, run: &Run, apart: f64, offset: f64, lean: f64) -> Option<f64> {
    let modulus = process.material.modulus_mpa?;
    let outer = run.tube.outer_diameter;
    let sideways = stress_of_offset(modulus, outer, apart, offset).ok()?;
    let leaning = stress_of_angle(modulus, outer, apart, lean.min(0.2)).ok()?;
    Some(sideways.max(leaning))
}

/// The bending stress that a tube may carry for good, MPa: its strength across the layers, over years, with the safety
/// factor. It is held cold as well as warm, so that no share is taken for warmth.
pub fn allowed_side_load(process: &Process) -> Option<f64> {
    let (material, factors) = (&process.material, &process.factors);
    Some(material.strength_mpa? * material.across_layers? * factors.lasting / factors.safety)
}
