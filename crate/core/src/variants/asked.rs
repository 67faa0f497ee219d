//! What is found about each variant, the checks asked only for what is not known of another.

use super::shared::{Place, Shared};
use crate::check::{CHECKS, Finding, LOOKS, Subject};
use crate::distance::Budget;

/// Each check's answers so far, in the order of [`CHECKS`].
pub(super) struct Asked(Vec<Shared<Vec<Finding>>>);

impl Asked {
    /// No check has been asked yet.
    pub fn none() -> Self {
        Self(CHECKS.iter().map(|check| Shared::on(check.hangs_on)).collect())
    }

    /// Every finding about a variant, in order, ways to mend them not tried.
    pub fn of(&mut self, place: Place, subject: Subject<'_>) -> Vec<Finding> {
        let mut budget = Budget::of(LOOKS);
        let checks = CHECKS.iter().zip(&mut self.0);
        checks.flat_map(|(check, known)| known.of(place, || (check.ask)(subject, &mut budget))).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::check::HangsOn;
    use crate::engine::Stages;
    use crate::strategies::{KINDS, designs};
    use crate::variants::request::Request;
    use crate::{engine, variants};
    use serde_json::Value;

    /// Bores from one that a pump hardly drives coolant through to no wall; materials of each way of printing, rough and
    /// smooth, stiff and soft in the warm.
    const ASKED: &str = r#"{ "outer_diameters": [6, 12, 12.3, 16], "bores": [3, 9.5, 11.9],
        "materials": ["PLA", "tough resin", "PA12, jet-fused", "PC"] }"#;

    /// Every check asked anew of every variant finds what the marks let variants share, to the last word and number; and
    /// the designs are such that each marked check finds something in one variant that it does not in another.
    #[test]
    fn a_check_hangs_on_no_more_than_its_mark_says() {
        let shipped: Value = serde_json::from_str(&engine::presets()).expect("presets");
        let demos = shipped["demos"].as_array().expect("demos").iter().map(|demo| demo["design"].to_string());
        let made_up = designs(11, 2 * KINDS.len()).into_iter().map(|design| design.text);
        let mut differ = vec![false; CHECKS.len()];
        for text in demos.chain(made_up) {
            let Ok(stages) = Stages::of(&text) else { continue };
            let request = Request::read(ASKED, &stages.design).expect("a request");
            let mut asked = Asked::none();
            let mut first: Vec<Option<Vec<Finding>>> = vec![None; CHECKS.len()];
            for variant in request.combinations() {
                let design = variant.made(&stages.design, &request.runs);
                if variants::typed(&design).is_err() {
                    continue;
                }
                let stages = Stages { design, ..stages.clone() };
                let subject = Subject { design: &stages.design, layout: &stages.layout, lines: &stages.lines };
                let mut budget = Budget::of(LOOKS);
                for (index, check) in CHECKS.iter().enumerate() {
                    let left = budget.clone();
                    let anew = (check.ask)(subject, &mut budget);
                    assert!(budget == left || check.hangs_on == HangsOn::SKIN, "check {index} looks at pairs");
                    let known = asked.0[index].of(variant.place, || anew.clone());
                    assert_eq!(known, anew, "check {index} of {variant:?} of {text}");
                    differ[index] |= first[index].get_or_insert_with(|| anew.clone()) != &anew;
                }
            }
        }
        for (index, check) in CHECKS.iter().enumerate() {
            let marked = check.hangs_on != HangsOn::ALL;
            assert!(!marked || differ[index], "no variant shows whether check {index} is marked rightly");
        }
    }
}
