//! Designs for the tests of checks, as texts: what the engine gets.

#![allow(dead_code)]

use serde_json::{Value, json};
use tubewright_core::check::{Finding, Severity, Subject, findings, words};
use tubewright_core::{centreline, design, engine, layout};

/// Splitmix64 (Steele, Lea, Flood 2014): the same numbers on every machine.
pub struct Random(pub u64);

impl Random {
    /// From [0, 1).
    pub fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    pub fn in_range(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }

    pub fn of<T: Clone>(&mut self, choices: &[T]) -> T {
        choices[(self.next() * choices.len() as f64) as usize].clone()
    }

    pub fn chance(&mut self, probability: f64) -> bool {
        self.next() < probability
    }
}

/// A fitting of a 12 mm tube: mouth 18 above the seat, stop 10 below the mouth, lead 5.
pub fn fitting(name: &str) -> Value {
    json!({ "name": name, "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5 })
}

pub fn port(name: &str, at: [f64; 3], facing: [f64; 3]) -> Value {
    json!({ "name": name, "at": at, "facing": facing, "fitting": "C12", "measured_to": 0.1 })
}

/// A run of 12/8 mm tube.
pub fn run(name: &str, from: &str, to: &str, radius: f64, corners: &[[f64; 3]]) -> Value {
    let route: Vec<Value> = corners.iter().map(|at| json!({ "corner": at })).collect();
    json!({
        "name": name, "from": from, "to": to, "bend_radius": radius, "route": route,
        "tube": { "outer_diameter": 12, "bore": 8 },
    })
}

pub fn design(ports: &[Value], runs: &[Value]) -> Value {
    json!({
        "format": "tubewright-design", "version": 1, "name": "test", "fittings": [fitting("C12")],
        "ports": ports, "runs": runs, "clearance": 1,
    })
}

/// One run from a port at the origin facing up to a port at `end` facing back down x, through `corners`.
pub fn single(end: [f64; 3], facing: [f64; 3], radius: f64, corners: &[[f64; 3]]) -> Value {
    let ports = [port("a", [0.0; 3], [0.0, 0.0, 1.0]), port("b", end, facing)];
    design(&ports, &[run("r", "a", "b", radius, corners)])
}

/// What is found about a design's text.
pub fn found(text: &str) -> Vec<Finding> {
    let design = design::parse(text).unwrap_or_else(|refusal| panic!("{refusal} in {text}"));
    let layout = layout::place(&design);
    let lines = centreline::lines(&design, &layout);
    let found = findings(Subject { design: &design, layout: &layout, lines: &lines });
    for finding in &found {
        assert!(words::words_of(finding.code).is_some(), "{} has no words", finding.code);
        let message = words::message(finding);
        assert!(!message.contains(['{', '}']) && message.len() > 20, "{}: {message}", finding.code);
        let title = words::words_of(finding.code).map(|words| format!("{}.", words.title));
        assert_ne!(Some(message), title, "{} lacks words: {finding:?}", finding.code);
        let place: Value = serde_json::from_str(&design::canonical(&design)).unwrap();
        let whole = finding.place.rsplit_once('/').map_or("", |(whole, _)| whole);
        assert!(place.pointer(whole).is_some(), "{} points nowhere: {}", finding.code, finding.place);
    }
    found
}

/// The findings of one code.
pub fn all(design: &Value, code: &str) -> Vec<Finding> {
    found(&design.to_string()).into_iter().filter(|finding| finding.code == code).collect()
}

/// The one finding of a code.
pub fn one(design: &Value, code: &str) -> Finding {
    let mut all = all(design, code);
    assert_eq!(all.len(), 1, "{code} in {:#?}", found(&design.to_string()));
    all.remove(0)
}

/// What is told of nearly every tube: how it goes in, and how it fares in service. Tests of other questions leave it out.
const OF_EVERY_TUBE: [&str; 7] =
    ["goes_straight_in", "part_stands_back", "order_of_assembly", "side_load", "heat_growth", "bleed", "drain"];

pub fn codes(design: &Value) -> Vec<(&'static str, Severity)> {
    let told = found(&design.to_string());
    let others = told.iter().filter(|finding| !OF_EVERY_TUBE.contains(&finding.code));
    others.map(|finding| (finding.code, finding.severity)).collect()
}

/// The text after the fix of the finding at `index`, as a builder gets it: told by the report, applied by the engine to
/// the text as it was written.
fn mended(text: &str, index: usize) -> String {
    let report: Value = serde_json::from_str(&engine::report(text).unwrap()).unwrap();
    let fix = &report["findings"][index]["fix"];
    engine::apply(text, &fix.to_string()).unwrap_or_else(|refusal| panic!("{refusal}: {fix}"))
}

/// Applies the finding's fix and makes sure that the finding is gone and that there are no more stops of any code than
/// before. Returns the mended text.
pub fn mends(text: &str, finding: &Finding) -> String {
    let fix = finding.fix.as_ref().unwrap_or_else(|| panic!("no fix: {finding:#?}"));
    let before = found(text);
    let index = before.iter().position(|other| other == finding).unwrap_or_else(|| panic!("not found: {finding:#?}"));
    let after = mended(text, index);
    let now = found(&after);
    let count = |all: &[Finding], code: &str, place: Option<&str>| {
        all.iter().filter(|f| f.code == code && place.is_none_or(|place| place == f.place)).count()
    };
    let removes = fix.iter().any(|step| step.op == "remove");
    let place = (!removes).then_some(finding.place.as_str());
    assert!(
        count(&now, finding.code, place) < count(&before, finding.code, place),
        "still there: {finding:#?}\nafter: {now:#?}"
    );
    let stops =
        |all: &[Finding], code: &str| all.iter().filter(|f| f.severity == Severity::Stop && f.code == code).count();
    for stop in now.iter().filter(|f| f.severity == Severity::Stop) {
        assert!(stops(&now, stop.code) <= stops(&before, stop.code), "new stop: {stop:#?}\nby {fix:?}");
    }
    after
}
