//! Is anything of a tube finer than what its printer draws with?
//!
//! What is two spots wide holds a whole one wherever it lies between them: so much of a wall, a ring or a mark is surely drawn.
//! A step, such as a key's height, shows from one spot on where the outline itself is made of spots; a nozzle goes along the
//! outline, so that its width bounds no step.

use super::round::down;
use super::wall::SAME;
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::coupon::RING;
use crate::design::Way;
use crate::distance::Budget;
use crate::tube::{MARK, RingWidths};

const SOURCE: &str = "the printer's pixel, spot or nozzle, as the design states it; twice that: geometry";
const STEP_SOURCE: &str = "the printer's pixel or spot, as the design states it";

/// `too_fine`: care for walls and keys, note for rings and marks.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let process = &subject.design.process;
    let Some(spot) = process.printer.spot_mm else { return Vec::new() };
    let steps = process.material.way != Some(Way::Filament);
    let of = |run: OneRun<'_>| {
        let drawn = run.drawn.line.is_some();
        [wall(&run, spot), tip(&run, spot)].into_iter().flatten().chain(if drawn {
            marks(subject, &run, spot, steps)
        } else {
            Vec::new()
        })
    };
    subject.runs().flat_map(of).chain(coupon(subject, spot)).collect()
}

fn about(finding: Finding, value: f64, spot: f64, what: &str) -> Finding {
    finding.value(value, "mm").limit(2.0 * spot, SOURCE).word("feature", what)
}

fn wall(run: &OneRun<'_>, spot: f64) -> Option<Finding> {
    let wall = run.run.wall();
    let bore = down(run.run.tube.outer_diameter - 4.0 * spot);
    let thicker = (bore > 0.0).then(|| vec![PatchStep::set(run.at("/tube/bore"), bore)]);
    let finding = run.finding("too_fine", Severity::Care, run.at("/tube/bore"));
    (wall < 2.0 * spot - SAME).then(|| {
        let finding = about(finding, wall, spot, "its wall is").ways(thicker);
        if bore > 0.0 {
            finding.word("instead", format!("A bore of {} or less leaves it", words::at_most(bore, "mm")))
        } else {
            finding
        }
    })
}

/// Where the wall itself is wide enough, but not what chamfer and edge break leave of it.
fn tip(run: &OneRun<'_>, spot: f64) -> Option<Finding> {
    let length = run.drawn.line.as_ref().map_or(f64::INFINITY, |line| line.length);
    let tip = run.profile(length).tip_wall();
    let thin = tip < 2.0 * spot - SAME && run.run.wall() >= 2.0 * spot - SAME;
    let finding = run.finding("too_fine", Severity::Care, run.at("/ends/chamfer_length")).at(&run.pose(true).end);
    thin.then(|| {
        about(finding, tip.max(0.0), spot, "what the chamfer leaves of its wall is")
            .word("instead", "A shorter or flatter chamfer leaves more")
    })
}

fn marks(subject: Subject<'_>, run: &OneRun<'_>, spot: f64, steps: bool) -> Vec<Finding> {
    let printer = &subject.design.process.printer;
    let length = run.drawn.line.as_ref().map_or(0.0, |line| line.length);
    let marks = run.profile(length).marks;
    let widths = RingWidths::of(run.run.wall(), printer.least_wall);
    let ring = |there: [bool; 2], width: f64, place: &str, what: &str, instead: &str| {
        let finding = run.finding("too_fine", Severity::Note, run.at(place));
        (there != [false; 2] && width < 2.0 * spot - SAME)
            .then(|| about(finding, width, spot, what).word("instead", instead.to_owned()))
    };
    let seat = "Measure how deep the tube must sit, and mark it by hand";
    let mut found: Vec<Finding> = [
        ring(marks.seat, widths.seat, "/ends/seat_mark", "its seat mark is", seat),
        ring(marks.trim, widths.trim, "/ends/trim", "its trim ring is", "Measure where it is cut, and mark it by hand"),
    ]
    .into_iter()
    .flatten()
    .collect();
    let joints = run.cutting().joints;
    let Some(joint) = joints.first() else { return found };
    let place = run.at(&format!("/cuts/{}", joint.cut));
    if MARK < 2.0 * spot - SAME {
        let finding = run.finding("too_fine", Severity::Note, place);
        found.push(
            about(finding, MARK, spot, "the narrow marks of its joints are")
                .word("instead", "Write the numbers of the joints on the pieces"),
        );
    }
    let key = joint.size.key;
    if steps && key > 0.0 && key < spot - SAME {
        let finding = run.finding("too_fine", Severity::Care, "/process/joint/key_depth".to_owned());
        let higher = vec![PatchStep::set("/process/joint/key_depth", spot)];
        let finding = finding.value(key, "mm").limit(spot, STEP_SOURCE).word("feature", "the key of its joints is");
        found.push(finding.word("instead", "Make it higher, or turn the pieces by eye").ways([higher]));
    }
    found
}

fn coupon(subject: Subject<'_>, spot: f64) -> Option<Finding> {
    let finding = Finding::new("too_fine", Severity::Note, "/process/printer/spot_mm");
    (!subject.design.runs.is_empty() && RING < 2.0 * spot - SAME).then(|| {
        about(finding, RING, spot, "the rings of a fit coupon are")
            .word("instead", "Write each stick's number on it as it comes off the plate")
    })
}
