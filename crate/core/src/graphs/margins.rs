//! Margins at a glance: how much of each limit is used.

use super::words;
use crate::centreline::Centreline;
use crate::check::words::number;
use crate::design::{Design, Run};
use crate::engine::Stages;
use crate::plot::{MarginRow, MarginsPlot};
use crate::service::{Circuit, Flow, Heat, SealAtEnd, Strength, course, usual_share};
use crate::tongue::Tongue;

/// Most rows: of a large design those that use most.
const MOST_ROWS: usize = 60;
/// Squeeze to aim at, and the accepted range about it; common practice, no source.
const AIM: f64 = 0.2;
const ACCEPTED: [f64; 2] = [0.12, 0.30];

/// The plot, in a language. What does not follow from what is stated has no row.
pub fn margins(stages: &Stages<'_>, tongue: &Tongue) -> MarginsPlot {
    let design = &stages.design;
    let mut rows: Vec<MarginRow> = heat(design, tongue).into_iter().chain(pump(stages, tongue)).collect();
    for (run, line) in design.runs.iter().zip(&stages.lines) {
        let Some(line) = &line.line else { continue };
        rows.extend(strength(design, run, line, tongue));
        rows.extend(tight(design, run, tongue));
        rows.extend(flow(design, run, line, tongue));
        rows.extend([&run.from, &run.to].into_iter().filter_map(|port| ring(design, run, port, tongue)));
    }
    if rows.len() > MOST_ROWS {
        rows.sort_by(|a, b| b.used.total_cmp(&a.used));
        rows.truncate(MOST_ROWS);
    }
    MarginsPlot { title: tongue.word(words::MARGINS).into(), rows }
}

fn row(label: String, used: f64, text: String) -> MarginRow {
    MarginRow { label, used: used.max(0.0), range: None, text }
}

/// How much of a limit, in the unit of both.
fn of(used: f64, limit: f64, unit: &str, tongue: &Tongue) -> String {
    let [used, limit] = [used, limit].map(|value| tongue.number(&number(value, unit)));
    tongue.say(words::OF, &[&used, &limit])
}

/// From where the tubes are fitted to the warmest that the material stands.
fn heat(design: &Design, tongue: &Tongue) -> Option<MarginRow> {
    let (limit, working) = (Heat::of(&design.process.material)?.limit.limit, &design.working);
    let (cold, hottest) = (working.cold_c, working.hottest_c());
    // A material that is soft in the room uses more than all of its limit.
    let used = if limit > cold { (hottest - cold) / (limit - cold) } else { 2.0 };
    Some(row(tongue.word(words::HEAT).into(), used, of(hottest, limit, "°C", tongue)))
}

fn pump(stages: &Stages<'_>, tongue: &Tongue) -> Option<MarginRow> {
    let agreed = Circuit::of(&stages.design, &stages.lines).ok()??.agreed().ok()?;
    let (stated, driven) = (stages.design.working.flow_l_per_h, agreed.nominal.flow);
    if driven <= 0.0 {
        return None;
    }
    let [low, high] = agreed.flows;
    let text = of(stated, driven, "L/h", tongue);
    let range = (low > 0.0).then(|| [stated / high, stated / low]);
    Some(MarginRow { range, ..row(tongue.word(words::PUMP).into(), stated / driven, text) })
}

fn strength(design: &Design, run: &Run, line: &Centreline, tongue: &Tongue) -> Option<MarginRow> {
    let strength = Strength::of(design, run, line)?;
    let text = of(strength.pressure, strength.allowed_pressure, "kPa", tongue);
    Some(row(tongue.say(words::PRESSURE, &[&run.name]), strength.utilisation, text))
}

fn tight(design: &Design, run: &Run, tongue: &Tongue) -> Option<MarginRow> {
    let (least, wall) = (design.process.material.tight_from_mm?, run.wall());
    let text = of(least, wall, "mm", tongue);
    Some(row(tongue.say(words::TIGHT, &[&run.name]), least / wall, text))
}

fn flow(design: &Design, run: &Run, line: &Centreline, tongue: &Tongue) -> Option<MarginRow> {
    let flow = Flow::of(design, run, &course(design, run, line)).ok()??;
    let most = usual_share(&flow.fluid);
    let loss = flow.loss.total;
    let text = of(loss.nominal * 1e-3, most * 1e-3, "kPa", tongue);
    let range = Some([loss.low / most, loss.high / most]);
    Some(MarginRow { range, ..row(tongue.say(words::LOSS_OF, &[&run.name]), loss.nominal / most, text) })
}

/// From the squeeze to aim at to the end of the accepted range.
fn ring(design: &Design, run: &Run, port: &str, tongue: &Tongue) -> Option<MarginRow> {
    let squeeze = SealAtEnd::of(run, design.fitting_at(port)?, &design.process).ok()?.squeeze;
    let used = |squeeze: f64| {
        let end = if squeeze < AIM { ACCEPTED[0] } else { ACCEPTED[1] };
        (squeeze - AIM) / (end - AIM)
    };
    let (nominal, likely) = (used(squeeze.nominal), squeeze.likely.map(used));
    let most = likely[0].max(likely[1]).max(nominal);
    let [stated, low, high] =
        [squeeze.nominal, ACCEPTED[0], ACCEPTED[1]].map(|share| tongue.number(&number(share * 100.0, "%")));
    let text = tongue.say(words::MAY_BE, &[&stated, &low, &high]);
    let label = tongue.say(words::RING, &[&run.name, port]);
    Some(MarginRow { range: Some([nominal.min(most), most]), ..row(label, nominal, text) })
}
