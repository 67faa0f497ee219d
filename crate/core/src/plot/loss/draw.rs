//! The plot of pressure loss as a picture.

use super::super::chart::{self, Grid, Placed};
use super::super::figures::figure;
use super::super::ink::{Dash, Hatch, Ink};
use super::super::key::{Entry, Key};
use super::super::letters::{BOLD, tamed, width_of, width_of_bold, wrapped};
use super::super::sheet::{self, Drawn, HEADING, SMALL, Sheet, Type, WORDS};
use super::super::ticks::{Axis, Ends};
use super::super::words;
use super::super::{Frame, PlotError};
use super::{LoopCurve, LossPlot, OperatingPoint, callout, tell};
use crate::tongue::Tongue;
use plotters::style::text_anchor::HPos;

const LOOPS: [Dash; 5] = [Dash::Full, Dash::Dots, Dash::LongDot, Dash::Short, Dash::LongDotDot];
const BANDS: [Hatch; 4] = [Hatch::Rising, Hatch::Falling, Hatch::Upright, Hatch::Dotted];
const PUMP: Ink = Ink::line(2.4).dashed(Dash::Pump);
const STATED: Ink = Ink::line(1.4).dashed(Dash::LongDotDot);
const CROSS_HAIRS: Ink = Ink::line(1.0).dashed(Dash::Short);
const RANGE: Ink = Ink::line(1.6);
const LEADER: Ink = Ink::line(0.9);
const BAND_EDGE: Ink = Ink::line(0.8).faint(0.7);
/// The most marks on a curve that has them.
const MARKS: usize = 7;

/// The chart's axes in their places.
struct Chart {
    flow: Placed,
    pressure: Placed,
}

impl Chart {
    fn at(&self, [flow, pressure]: [f64; 2]) -> [f64; 2] {
        [self.flow.at(flow), self.pressure.at(pressure)]
    }

    fn left(&self) -> f64 {
        self.flow.from
    }

    fn right(&self) -> f64 {
        self.flow.to
    }

    fn top(&self) -> f64 {
        self.pressure.to
    }

    fn bottom(&self) -> f64 {
        self.pressure.from
    }
}

pub(super) fn draw(plot: &LossPlot, frame: &Frame<'_>, tongue: &Tongue) -> Result<String, PlotError> {
    let across = frame.across();
    let title = tamed(&plot.title);
    let heading = wrapped(&title, HEADING * BOLD, across - 8.0, 3);
    let [flows, pressures] = plot.extent();
    let steps = if frame.is_wide() { 8 } else { 4 };
    let flow = Axis::over(flows[0], flows[1], steps, Ends::Exact).written(tongue.decimal());
    let pressure = Axis::over(pressures[0], pressures[1], 5, Ends::Ticks).written(tongue.decimal());
    let head = heading.len() as f64 * sheet::leading(HEADING) + 24.0;
    // The stated flow's name has a line of its own above the chart.
    let top = head + if plot.stated_flow.is_some() { 20.0 } else { 2.0 };
    let tall = (across * 0.5).clamp(230.0, 400.0);
    let left = pressure.widest(WORDS) + 14.0;
    let chart = Chart {
        flow: Placed { from: left, to: across - flow.overhang(WORDS), axis: flow },
        pressure: Placed { axis: pressure, from: top + tall, to: top },
    };
    let entries = entries(plot, tongue);
    let key = Key::laid_out(&entries, across, if frame.is_wide() { 2 } else { 1 });
    let under = chart.bottom() + 46.0;
    let sheet = Sheet::new(frame, libm::ceil(under + key.height + 4.0));

    sheet.group("plot-title", || sheet::lines(&sheet, 2.0, HEADING, &heading, Type::bold(HEADING)).map(|_| ()))?;
    sheet.text(2.0, head - 8.0, tongue.word(words::PRESSURE_AXIS), Type::plain(SMALL))?;
    sheet.group("plot-axes", || chart::axes(&sheet, &chart.flow, &chart.pressure, Grid::Lines))?;
    sheet.text(
        chart.right(),
        chart.bottom() + 38.0,
        tongue.word(words::FLOW_AXIS),
        Type::plain(SMALL).at(HPos::Right),
    )?;
    for (place, curve) in plot.loops.iter().enumerate() {
        band(&sheet, &chart, place, curve)?;
    }
    for (place, curve) in plot.loops.iter().enumerate() {
        sheet.group("plot-loop", || {
            trace(&sheet, &chart, &curve.points, loop_ink(place))?;
            marks(&sheet, &chart, place, &curve.points)
        })?;
    }
    if let Some(pump) = &plot.pump {
        sheet.group("plot-pump", || trace(&sheet, &chart, &pump.points, PUMP))?;
    }
    if let Some(flow) = plot.stated_flow {
        sheet.group("plot-stated", || stated(&sheet, &chart, flow, tongue))?;
    }
    if let Some(point) = plot.operating {
        sheet.group("plot-operating", || operating(&sheet, &chart, plot, point, tongue))?;
    }
    if plot.is_empty() {
        let middle = [(chart.left() + chart.right()) / 2.0, (chart.top() + chart.bottom()) / 2.0];
        sheet.text(middle[0], middle[1], tongue.word(words::NOTHING), Type::plain(WORDS).at(HPos::Center))?;
    }
    key.draw(&sheet, 2.0, under)?;
    Ok(sheet.finish("loss", &title, &tell::tell(plot, tongue)))
}

fn loop_ink(place: usize) -> Ink {
    Ink::line(if place == 0 { 2.4 } else { 2.0 }).dashed(LOOPS[place % LOOPS.len()])
}

/// A curve; of a single point, a dot.
fn trace(sheet: &Sheet, chart: &Chart, points: &[[f64; 2]], ink: Ink) -> Drawn {
    match points {
        [] => Ok(()),
        [point] => square(sheet, chart.at(*point), 3.0),
        more => sheet.line(&more.iter().map(|point| chart.at(*point)).collect::<Vec<_>>(), ink),
    }
}

/// Squares on the curves whose dash another curve has already.
fn marks(sheet: &Sheet, chart: &Chart, place: usize, points: &[[f64; 2]]) -> Drawn {
    if place < LOOPS.len() {
        return Ok(());
    }
    let apart = points.len().div_ceil(MARKS).max(1);
    // Not all from the same flow on, so that squares of curves close together do not pile up.
    let first = (place - LOOPS.len()) * apart / LOOPS.len();
    points.iter().skip(first).step_by(apart).try_for_each(|point| square(sheet, chart.at(*point), 4.0))
}

fn square(sheet: &Sheet, [x, y]: [f64; 2], half: f64) -> Drawn {
    sheet.bar([x - half, y - half], [x + half, y + half], Ink::area(Hatch::Plain))
}

fn band(sheet: &Sheet, chart: &Chart, place: usize, curve: &LoopCurve) -> Drawn {
    if curve.band.len() < 2 {
        return Ok(());
    }
    let low: Vec<_> = curve.band.iter().map(|&[flow, low, _]| chart.at([flow, low])).collect();
    let high: Vec<_> = curve.band.iter().map(|&[flow, _, high]| chart.at([flow, high])).collect();
    let around: Vec<_> = low.iter().copied().chain(high.iter().rev().copied()).collect();
    sheet.group("plot-band", || {
        sheet.polygon(&around, Ink::area(BANDS[place % BANDS.len()]).faint(0.7))?;
        sheet.line(&low, BAND_EDGE)?;
        sheet.line(&high, BAND_EDGE)
    })
}

fn stated(sheet: &Sheet, chart: &Chart, flow: f64, tongue: &Tongue) -> Drawn {
    let x = chart.flow.at(flow);
    sheet.line(&[[x, chart.top() - 4.0], [x, chart.bottom()]], STATED)?;
    let words = tongue.say(words::STATED, &[&figure(flow, tongue)]);
    let half = width_of(&words, WORDS) / 2.0;
    let middle = x.min(chart.right() + 10.0 - half).max(half + 2.0);
    sheet.text(middle, chart.top() - 9.0, &words, Type::plain(WORDS).at(HPos::Center))
}

fn operating(sheet: &Sheet, chart: &Chart, plot: &LossPlot, point: OperatingPoint, tongue: &Tongue) -> Drawn {
    let [x, y] = chart.at([point.flow, point.pressure]);
    sheet.line(&[[chart.left(), y], [x, y], [x, chart.bottom()]], CROSS_HAIRS)?;
    let mut obstacles = obstacles(chart, plot);
    obstacles.extend([[[chart.left(), y], [x, y]], [[x, y], [x, chart.bottom()]]]);
    if let Some([low, high]) = point.flow_range {
        let ends = [[chart.flow.at(low), y], [chart.flow.at(high), y]];
        whisker(sheet, ends, [0.0, 5.0])?;
        obstacles.push(ends);
    }
    if let Some([low, high]) = point.pressure_range {
        let ends = [[x, chart.pressure.at(low)], [x, chart.pressure.at(high)]];
        whisker(sheet, ends, [5.0, 0.0])?;
        obstacles.push(ends);
    }
    target(sheet, [x, y])?;
    let words = tongue.say(words::FLOW_AND_PRESSURE, &[&figure(point.flow, tongue), &figure(point.pressure, tongue)]);
    let size = [width_of_bold(&words, WORDS), WORDS];
    let (least, most) = ([chart.left(), chart.top()], [chart.right(), chart.bottom()]);
    // Where lines leave no room, the key alone says it.
    match callout::place([x, y], size, least, most, &obstacles) {
        Some([left, base]) => {
            if let Some(leader) = callout::leader([x, y], [left, base], size) {
                sheet.line(&leader, LEADER)?;
            }
            sheet.text(left, base, &words, Type::bold(WORDS))
        }
        None => Ok(()),
    }
}

/// A ring with a dot: the operating point.
fn target(sheet: &Sheet, [x, y]: [f64; 2]) -> Drawn {
    sheet.ring([x, y], 6.0, Ink::line(1.8))?;
    sheet.dot([x, y], 2.4)
}

fn whisker(sheet: &Sheet, [from, to]: [[f64; 2]; 2], [dx, dy]: [f64; 2]) -> Drawn {
    sheet.line(&[from, to], RANGE)?;
    for [x, y] in [from, to] {
        sheet.line(&[[x - dx, y - dy], [x + dx, y + dy]], RANGE)?;
    }
    Ok(())
}

/// Everything that words should not cover.
fn obstacles(chart: &Chart, plot: &LossPlot) -> Vec<[[f64; 2]; 2]> {
    let pump = plot.pump.iter().map(|pump| &pump.points);
    let curves = plot.loops.iter().map(|curve| &curve.points).chain(pump);
    let mut lines: Vec<_> =
        curves.flat_map(|points| points.windows(2).map(|pair| [chart.at(pair[0]), chart.at(pair[1])])).collect();
    for pair in plot.loops.iter().flat_map(|curve| curve.band.windows(2)) {
        let ([flow, low, high], [next, next_low, next_high]) = (pair[0], pair[1]);
        let corners = [[flow, low], [flow, high], [next, next_high], [next, next_low]].map(|point| chart.at(point));
        // Both edges and both diagonals: a word inside a hatch crosses one of them unless the corners are far apart.
        lines.extend([[0, 1], [1, 2], [3, 0], [0, 2], [1, 3]].map(|[a, b]| [corners[a], corners[b]]));
    }
    if let Some(flow) = plot.stated_flow {
        lines.push([[chart.flow.at(flow), chart.top()], [chart.flow.at(flow), chart.bottom()]]);
    }
    lines
}

fn entries<'p>(plot: &'p LossPlot, tongue: &Tongue) -> Vec<Entry<'p>> {
    let mut entries: Vec<Entry<'p>> = Vec::new();
    for (place, curve) in plot.loops.iter().enumerate() {
        let banded = curve.band.len() > 1;
        let label = tamed(&curve.label);
        let words = if banded { tongue.say(words::WITH_RANGE, &[&label]) } else { label };
        let sample = Box::new(move |sheet: &Sheet, x: f64, y: f64, wide: f64| {
            if banded {
                let hatch = Ink::area(BANDS[place % BANDS.len()]).faint(0.7);
                sheet.bar([x, y - 7.0], [x + wide, y + 7.0], hatch)?;
                sheet.edge([x, y - 7.0], [x + wide, y + 7.0], BAND_EDGE)?;
            }
            sheet.line(&[[x, y], [x + wide, y]], loop_ink(place))?;
            if place < LOOPS.len() { Ok(()) } else { square(sheet, [x + wide / 2.0, y], 4.0) }
        });
        entries.push(Entry { sample, words });
    }
    if let Some(pump) = &plot.pump {
        let sample = Box::new(|sheet: &Sheet, x: f64, y: f64, wide: f64| sheet.line(&[[x, y], [x + wide, y]], PUMP));
        entries.push(Entry { sample, words: tamed(&pump.label) });
    }
    if let Some(words) = tell::stated(plot, tongue) {
        let sample = Box::new(|sheet: &Sheet, x: f64, y: f64, wide: f64| {
            sheet.line(&[[x + wide / 2.0, y - 8.0], [x + wide / 2.0, y + 8.0]], STATED)
        });
        entries.push(Entry { sample, words });
    }
    if let Some(words) = tell::operating(plot, tongue) {
        let ranged = plot.operating.is_some_and(|point| point.flow_range.or(point.pressure_range).is_some());
        let sample = Box::new(move |sheet: &Sheet, x: f64, y: f64, wide: f64| {
            if ranged {
                whisker(sheet, [[x, y], [x + wide, y]], [0.0, 5.0])?;
            }
            target(sheet, [x + wide / 2.0, y])
        });
        entries.push(Entry { sample, words });
    }
    entries
}
