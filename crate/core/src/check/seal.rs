//! Does the fitting's ring seal on the tube?

use super::finding::{GEOMETRY, PRACTICE};
use super::round::up;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::design::{Fitting, wording};
use crate::distance::Budget;
use crate::service::{ACCEPTED as GOOD, SealAtEnd, SealFault, TubeKnown};

/// Squeeze beyond which a ring does not seal, or is torn: the widest that design guides give.
const POSSIBLE: [f64; 2] = [0.10, 0.40];

/// Share of its groove that a ring may fill; two design guides.
const FULL: f64 = 0.85;
const GUIDES: &str = "two O-ring design guides";

const MEASURED_PRACTICE: &str = "common practice, no source; the tube's scatter as measured on the coupon";
const MEASURED_GUIDES: &str = "two O-ring design guides; the tube's scatter as measured on the coupon";

/// `seal` (stop): the tube has no room in the gland, or the ring's squeeze as stated is beyond all guides; (care) it may
/// leave the accepted range by what tube, ring and gland are likely to be off. `gland_full` (care): the ring has no room
/// to give way. `ring_caught` (care): the chamfer does not reach under the ring.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let ends = subject.runs().flat_map(|run| [(run, true), (run, false)]);
    ends.filter_map(|(run, at_start)| End::of(subject, run, at_start)).flat_map(|end| end.findings()).collect()
}

/// A run's end in a fitting whose ring is stated.
struct End<'a> {
    run: OneRun<'a>,
    at_start: bool,
    fitting: &'a Fitting,
    /// JSON Pointer to the fitting's ring.
    place: String,
    seal: Result<SealAtEnd, SealFault>,
}

impl<'a> End<'a> {
    /// A tube of another size than the fitting's is a finding of its own, and its squeeze would say it twice.
    fn of(subject: Subject<'a>, run: OneRun<'a>, at_start: bool) -> Option<Self> {
        let fitting = run.fitting(at_start)?;
        if (run.run.tube.outer_diameter - fitting.tube_diameter).abs() > 1e-9 {
            return None;
        }
        let index = subject.design.fittings.iter().position(|other| other.name == fitting.name)?;
        let seal = SealAtEnd::of(run.run, fitting, &subject.design.process);
        Some(Self { run, at_start, fitting, place: format!("/fittings/{index}/seal"), seal })
    }

    fn findings(&self) -> Vec<Finding> {
        match &self.seal {
            Ok(seal) => [self.squeeze(seal), self.fill(seal), self.caught(seal)].into_iter().flatten().collect(),
            Err(SealFault::NoRoom) => self.no_room().into_iter().collect(),
            Err(SealFault::NotStated | SealFault::Size(_)) => Vec::new(),
        }
    }

    fn found(&self, code: &'static str, severity: Severity, place: String) -> Finding {
        self.run
            .finding(code, severity, place)
            .at(&self.run.pose(self.at_start).mouth)
            .word("fitting", wording::quoted(&self.fitting.name))
            .word("port", self.run.port_name(self.at_start))
    }

    fn no_room(&self) -> Option<Finding> {
        let gland = self.fitting.seal.as_ref()?.gland_diameter;
        let tube = words::number(self.run.run.tube.outer_diameter, "mm");
        let place = format!("{}/gland_diameter", self.place);
        Some(self.found("seal", Severity::Stop, place).value(gland, "mm").word("tube", tube))
    }

    /// No fix is offered: sizes of a fitting are measured, not chosen.
    fn squeeze(&self, seal: &SealAtEnd) -> Option<Finding> {
        let (nominal, [low, high]) = (seal.squeeze.nominal, seal.squeeze.likely);
        let (severity, range) = if !(POSSIBLE[0]..=POSSIBLE[1]).contains(&nominal) {
            (Severity::Stop, POSSIBLE)
        } else if low < GOOD[0] || high > GOOD[1] {
            (Severity::Care, GOOD)
        } else {
            return None;
        };
        let loose = nominal - range[0] < range[1] - nominal;
        let limit = if loose { range[0] } else { range[1] };
        let finding = self
            .found("seal", severity, self.place.clone())
            .value(nominal * 100.0, "%")
            .limit(limit * 100.0, PRACTICE)
            .word("low", percent(low))
            .word("high", percent(high))
            .word("best", words::number(seal.best_outer, "mm"));
        Some(measured(finding, seal))
    }

    fn fill(&self, seal: &SealAtEnd) -> Option<Finding> {
        let fill = seal.fill.filter(|fill| fill.likely[1] > FULL)?;
        let finding = self
            .found("gland_full", Severity::Care, format!("{}/gland_width", self.place))
            .value(fill.nominal * 100.0, "%")
            .limit(FULL * 100.0, GUIDES)
            .word("high", percent(fill.likely[1]));
        Some(measured(finding, seal))
    }

    fn caught(&self, seal: &SealAtEnd) -> Option<Finding> {
        let chamfer = seal.chamfer.filter(|chamfer| chamfer.drop < chamfer.drop_needed - 1e-9)?;
        let ends = &self.run.run.ends;
        let length = up(chamfer.drop_needed / libm::tan(ends.chamfer_deg.to_radians()));
        let finding = self
            .found("ring_caught", Severity::Care, self.run.at("/ends/chamfer_length"))
            .value(chamfer.drop, "mm")
            .limit(chamfer.drop_needed, GEOMETRY)
            .word("length", words::at_least(length, "mm"))
            .ways([vec![PatchStep::set(self.run.at("/ends/chamfer_length"), length)]]);
        Some(finding)
    }
}

/// Says where a coupon told how far the tube may be off.
fn measured(finding: Finding, seal: &SealAtEnd) -> Finding {
    if seal.tube_known != TubeKnown::Measured {
        return finding;
    }
    let source = if finding.source == PRACTICE { MEASURED_PRACTICE } else { MEASURED_GUIDES };
    finding.source(source).word("scatter", words::number(seal.tolerances.outer_diameter, "mm"))
}

fn percent(share: f64) -> String {
    words::number(share * 100.0, "%")
}
