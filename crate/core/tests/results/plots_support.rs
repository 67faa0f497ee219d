//! Plots for the tests, and how they are read back.

use roxmltree::{Document, Node};
use tubewright_core::plot::*;

pub fn class<'a>(document: &'a Document, name: &str) -> Vec<Node<'a, 'a>> {
    document.descendants().filter(|node| node.attribute("class") == Some(name)).collect()
}

pub fn number(node: Node, name: &str) -> f64 {
    node.attribute(name).and_then(|value| value.parse().ok()).unwrap_or_else(|| panic!("{name} of {node:?}"))
}

pub fn points(node: Node) -> Vec<[f64; 2]> {
    let pair = |text: &str| {
        let (x, y) = text.split_once(',').expect("a pair");
        [x.parse().expect("x"), y.parse().expect("y")]
    };
    node.attribute("points").map(|text| text.split(' ').map(pair).collect()).unwrap_or_default()
}

pub fn lines(node: Node) -> Vec<Vec<[f64; 2]>> {
    node.descendants().filter(|inner| inner.has_tag_name("polyline")).map(points).collect()
}

pub fn words(node: Node) -> Vec<String> {
    node.descendants()
        .filter(|inner| inner.has_tag_name("text"))
        .map(|inner| inner.text().unwrap_or("").into())
        .collect()
}

/// A loop and a pump of that flow and pressure at their most, with an operating point and all that goes with it.
pub fn loss(most: [f64; 2]) -> LossPlot {
    let [flow, pressure] = most;
    let curve = |of: fn(f64) -> f64| (0..=9).map(|step| step as f64 / 9.0).map(move |x| [x * flow, of(x) * pressure]);
    let rise: Vec<_> = curve(|x| 0.9 * x * x).collect();
    LossPlot {
        title: "Loss".into(),
        loops: vec![
            LoopCurve {
                label: "warm".into(),
                band: rise.iter().map(|[at, loss]| [*at, 0.8 * loss, 1.1 * loss]).collect(),
                points: rise,
            },
            LoopCurve { label: "cold".into(), points: curve(|x| 0.5 * x).collect(), band: Vec::new() },
        ],
        pump: Some(PumpCurve { label: "pump".into(), points: curve(|x| 1.0 - x).collect() }),
        operating: Some(OperatingPoint {
            flow: 0.625 * flow,
            pressure: 0.375 * pressure,
            flow_range: Some([0.5 * flow, 0.75 * flow]),
            pressure_range: Some([0.25 * pressure, 0.5 * pressure]),
        }),
        stated_flow: Some(0.25 * flow),
    }
}

pub fn margins() -> MarginsPlot {
    let row = |label: &str, used, range, text: &str| MarginRow { label: label.into(), used, range, text: text.into() };
    MarginsPlot {
        title: "Margins".into(),
        rows: vec![
            row("wall", 0.225, Some([0.1, 0.3]), "0.36 of 1.6 MPa"),
            row("squeeze", 0.82, Some([0.6, 1.08]), "22 of 27 %"),
            row("heat", 1.25, None, "61 of 48.8 °C"),
            row("side load", 37.0, None, "370 of 10 N"),
            row("none", 0.0, None, ""),
        ],
    }
}

pub fn stiffness() -> StiffnessPlot {
    let marks = [(MarkKind::DeflectionLow, 71.0), (MarkKind::DeflectionHigh, 64.5), (MarkKind::Glass, 79.0)];
    let marks = marks.map(|(kind, temperature)| Mark { kind, temperature }).to_vec();
    let warm = |label: &str, celsius| Temperature { label: label.into(), celsius };
    StiffnessPlot {
        title: "Stiffness".into(),
        materials: vec![
            MaterialRow { label: "of the design".into(), allowed: Some(58.5), marks: marks.clone() },
            MaterialRow { label: "better".into(), allowed: Some(101.0), marks: Vec::new() },
            MaterialRow { label: "unknown".into(), allowed: None, marks: Vec::new() },
        ],
        temperatures: vec![warm("fitted", 21.0), warm("working", 45.0), warm("fault", 62.0)],
    }
}

pub fn every_picture(frame: &Frame) -> Vec<String> {
    let empty =
        [LossPlot::default().svg(frame), MarginsPlot::default().svg(frame), StiffnessPlot::default().svg(frame)];
    let full = [loss([300.0, 20.0]).svg(frame), margins().svg(frame), stiffness().svg(frame)];
    full.into_iter().chain(empty).map(|svg| svg.expect("a picture")).collect()
}
