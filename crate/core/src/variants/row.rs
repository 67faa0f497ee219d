//! What one variant comes to.

use serde::Serialize;
use serde_json::Value;

use super::flow::Driven;
use super::variant::Variant;
use crate::check::{Finding, Severity, words};
use crate::design::{Refusal, Run};
use crate::engine::Stages;
use crate::service::{Heat, SealAtEnd, Strength, material_cost};

/// Cubic millimetres in a cubic centimetre.
const MM3_IN_CM3: f64 = 1e3;
/// Most reasons that a row names.
const MOST_REASONS: usize = 5;

/// One variant. Numbers over all runs that are changed are sums, or the worst of them; what cannot be told is null.
#[derive(Debug, Serialize)]
pub(super) struct Row {
    outer_diameter: Option<f64>,
    bore: Option<f64>,
    material: Option<String>,
    /// Whether nothing stops it.
    feasible: bool,
    /// What stops it, in words, the first few.
    why: Vec<String>,
    /// The thinnest.
    wall_mm: Option<f64>,
    /// Whether every fitting takes the tube.
    fits: Option<bool>,
    /// The least and the most nominal squeeze of a ring.
    squeeze_percent: Option<[f64; 2]>,
    /// Of the allowed stress, the run that uses most.
    utilisation: Option<f64>,
    allowed_kpa: Option<f64>,
    /// Kelvin that the fault temperature stays below the material's limit.
    heat_margin_k: Option<f64>,
    /// Of the tubes together, at the stated flow.
    loss_kpa: Option<f64>,
    /// Where the pump and the whole loop agree.
    operating_l_per_h: Option<f64>,
    /// In the tubes.
    coolant_ml: Option<f64>,
    material_cm3: Option<f64>,
    mass_g: Option<f64>,
    cost: Option<f64>,
    findings: Counts,
    patch: Value,
}

#[derive(Debug, Default, Serialize)]
struct Counts {
    stop: usize,
    care: usize,
    note: usize,
}

impl Row {
    /// A variant that is no design at all, such as a bore that is not smaller than its tube.
    pub fn refused(variant: &Variant, refusal: &Refusal, patch: Value) -> Self {
        Self {
            outer_diameter: variant.outer_diameter,
            bore: variant.bore,
            material: variant.material.clone(),
            feasible: false,
            why: vec![refusal.message.clone()],
            wall_mm: None,
            fits: None,
            squeeze_percent: None,
            utilisation: None,
            allowed_kpa: None,
            heat_margin_k: None,
            loss_kpa: None,
            operating_l_per_h: None,
            coolant_ml: None,
            material_cm3: None,
            mass_g: None,
            cost: None,
            findings: Counts { stop: 1, ..Counts::default() },
            patch,
        }
    }

    /// A variant that is a design: `runs` are those that were changed, `found` is what is found about it, `driven`
    /// what it costs the pump.
    pub fn of(stages: &Stages<'_>, runs: &[usize], found: &[Finding], driven: &Driven, patch: Value) -> Self {
        let design = &stages.design;
        let changed: Vec<&Run> = runs.iter().map(|run| &design.runs[*run]).collect();
        let same = |of: fn(&Run) -> f64| {
            let first = changed.first().map(|run| of(run))?;
            changed.iter().all(|run| of(run) == first).then_some(first)
        };
        let stops = || found.iter().filter(|finding| finding.severity == Severity::Stop);
        let made = Made::of(stages, driven);
        let material = &design.process.material;
        let hottest = design.working.hottest_c();
        Self {
            outer_diameter: same(|run| run.tube.outer_diameter),
            bore: same(|run| run.tube.bore),
            material: Some(material.name.clone()),
            feasible: stops().next().is_none(),
            why: stops().take(MOST_REASONS).map(words::message).collect(),
            wall_mm: changed.iter().map(|run| run.wall()).min_by(f64::total_cmp),
            fits: Some(!found.iter().any(|finding| finding.code == "tube_diameter")),
            squeeze_percent: made.squeeze,
            utilisation: made.utilisation,
            allowed_kpa: made.allowed,
            heat_margin_k: Heat::of(material).map(|heat| heat.limit.limit - hottest),
            loss_kpa: made.loss,
            operating_l_per_h: driven.operating,
            coolant_ml: made.all.then_some(made.bores / MM3_IN_CM3),
            material_cm3: made.all.then_some(made.material / MM3_IN_CM3),
            mass_g: made.all.then_some(made.material / MM3_IN_CM3 * material.density_g_per_cm3),
            cost: material_cost(material, made.material).filter(|_| made.all),
            findings: Counts::of(found),
            patch,
        }
    }
}

impl Counts {
    fn of(found: &[Finding]) -> Self {
        let count = |severity| found.iter().filter(|finding| finding.severity == severity).count();
        Self { stop: count(Severity::Stop), care: count(Severity::Care), note: count(Severity::Note) }
    }
}

/// Sums and worsts over all runs.
struct Made {
    /// Whether every run can be made.
    all: bool,
    material: f64,
    bores: f64,
    loss: Option<f64>,
    utilisation: Option<f64>,
    allowed: Option<f64>,
    squeeze: Option<[f64; 2]>,
}

impl Made {
    fn of(stages: &Stages<'_>, driven: &Driven) -> Self {
        let design = &stages.design;
        let mut made = Self {
            all: !design.runs.is_empty(),
            material: 0.0,
            bores: 0.0,
            loss: Some(0.0),
            utilisation: None,
            allowed: None,
            squeeze: None,
        };
        for (index, run) in design.runs.iter().enumerate() {
            let (Some(line), true) = (&stages.lines[index].line, stages.is_made(index)) else {
                (made.all, made.loss) = (false, None);
                continue;
            };
            let profile = stages.profile(index, line.length);
            made.material += profile.material_volume();
            made.bores += profile.bore_volume();
            made.loss = made.loss.zip(driven.losses[index]).map(|(sum, loss)| sum + loss);
            if let Some(strength) = Strength::of(design, run, line) {
                made.utilisation =
                    Some(made.utilisation.map_or(strength.utilisation, |most| most.max(strength.utilisation)));
                made.allowed =
                    Some(made.allowed.map_or(strength.allowed_pressure, |least| least.min(strength.allowed_pressure)));
            }
            for name in [&run.from, &run.to] {
                made.ring(stages, run, name);
            }
        }
        made.loss = made.loss.filter(|_| made.all);
        made
    }

    fn ring(&mut self, stages: &Stages<'_>, run: &Run, port: &str) {
        let design = &stages.design;
        let Some(fitting) = design.fitting_at(port) else { return };
        if let Ok(end) = SealAtEnd::of(run, fitting, &design.process) {
            let percent = end.squeeze.nominal * 100.0;
            let [least, most] = self.squeeze.unwrap_or([percent, percent]);
            self.squeeze = Some([least.min(percent), most.max(percent)]);
        }
    }
}
