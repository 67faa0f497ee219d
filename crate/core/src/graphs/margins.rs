//! Margins at a glance: how much of each limit is used.

use crate::centreline::Centreline;
use crate::check::words::number;
use crate::design::{Design, Run};
use crate::engine::Stages;
use crate::plot::{MarginRow, MarginsPlot};
use crate::service::{Circuit, Flow, Heat, SealAtEnd, Strength, course, usual_share};

/// Most rows: of a large design those that use most.
const MOST_ROWS: usize = 60;
/// Squeeze to aim at, and the accepted range about it; common practice, no source.
const AIM: f64 = 0.2;
const ACCEPTED: [f64; 2] = [0.12, 0.30];

/// The plot. What does not follow from what is stated has no row.
pub fn margins(stages: &Stages<'_>) -> MarginsPlot {
    let design = &stages.design;
    let mut rows: Vec<MarginRow> = heat(design).into_iter().chain(pump(stages)).collect();
    for (run, line) in design.runs.iter().zip(&stages.lines) {
        let Some(line) = &line.line else { continue };
        rows.extend(strength(design, run, line));
        rows.extend(tight(design, run));
        rows.extend(flow(design, run, line));
        rows.extend([&run.from, &run.to].into_iter().filter_map(|port| ring(design, run, port)));
    }
    if rows.len() > MOST_ROWS {
        rows.sort_by(|a, b| b.used.total_cmp(&a.used));
        rows.truncate(MOST_ROWS);
    }
    MarginsPlot { title: "Margins".into(), rows }
}

fn row(label: String, used: f64, text: String) -> MarginRow {
    MarginRow { label, used: used.max(0.0), range: None, text }
}

/// From where the tubes are fitted to the warmest that the material stands.
fn heat(design: &Design) -> Option<MarginRow> {
    let (limit, working) = (Heat::of(&design.process.material)?.limit.limit, &design.working);
    let (cold, hottest) = (working.cold_c, working.hottest_c());
    // A material that is soft in the room uses more than all of its limit.
    let used = if limit > cold { (hottest - cold) / (limit - cold) } else { 2.0 };
    Some(row("Heat".into(), used, format!("{} of {}", number(hottest, "°C"), number(limit, "°C"))))
}

fn pump(stages: &Stages<'_>) -> Option<MarginRow> {
    let agreed = Circuit::of(&stages.design, &stages.lines).ok()??.agreed().ok()?;
    let (stated, driven) = (stages.design.working.flow_l_per_h, agreed.nominal.flow);
    if driven <= 0.0 {
        return None;
    }
    let [low, high] = agreed.flows;
    let text = format!("{} of {}", number(stated, "L/h"), number(driven, "L/h"));
    let range = (low > 0.0).then(|| [stated / high, stated / low]);
    Some(MarginRow { range, ..row("Flow that the pump drives".into(), stated / driven, text) })
}

fn strength(design: &Design, run: &Run, line: &Centreline) -> Option<MarginRow> {
    let strength = Strength::of(design, run, line)?;
    let text = format!("{} of {}", number(strength.pressure, "kPa"), number(strength.allowed_pressure, "kPa"));
    Some(row(format!("{}: pressure", run.name), strength.utilisation, text))
}

fn tight(design: &Design, run: &Run) -> Option<MarginRow> {
    let (least, wall) = (design.process.material.tight_from_mm?, run.wall());
    let text = format!("{} of {}", number(least, "mm"), number(wall, "mm"));
    Some(row(format!("{}: tight wall", run.name), least / wall, text))
}

fn flow(design: &Design, run: &Run, line: &Centreline) -> Option<MarginRow> {
    let flow = Flow::of(design, run, &course(design, run, line)).ok()??;
    let most = usual_share(&flow.fluid);
    let loss = flow.loss.total;
    let text = format!("{} of {}", number(loss.nominal * 1e-3, "kPa"), number(most * 1e-3, "kPa"));
    let range = Some([loss.low / most, loss.high / most]);
    Some(MarginRow { range, ..row(format!("{}: loss", run.name), loss.nominal / most, text) })
}

/// From the squeeze to aim at to the end of the accepted range.
fn ring(design: &Design, run: &Run, port: &str) -> Option<MarginRow> {
    let squeeze = SealAtEnd::of(run, design.fitting_at(port)?, &design.process).ok()?.squeeze;
    let used = |squeeze: f64| {
        let end = if squeeze < AIM { ACCEPTED[0] } else { ACCEPTED[1] };
        (squeeze - AIM) / (end - AIM)
    };
    let (nominal, likely) = (used(squeeze.nominal), squeeze.likely.map(used));
    let most = likely[0].max(likely[1]).max(nominal);
    let percent = |share: f64| number(share * 100.0, "%");
    let text = format!("{}; {} to {} may be", percent(squeeze.nominal), percent(ACCEPTED[0]), percent(ACCEPTED[1]));
    let label = format!("{}: ring at {}", run.name, port);
    Some(MarginRow { range: Some([nominal.min(most), most]), ..row(label, nominal, text) })
}
