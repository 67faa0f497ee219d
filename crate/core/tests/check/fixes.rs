//! Designs made for trouble: every fix that is offered is applied by JSON Patch to the text and must mend its finding
//! without a new stop; what has no stop can be meshed; and the largest design is told about in bounded work.

use crate::check_support::{Random, fitting, found, mends, port};
use serde_json::{Value, json};
use std::collections::BTreeMap;
use tubewright_core::check::Severity;
use tubewright_core::tube::Profile;
use tubewright_core::{centreline, design, layout, mesh};

/// A point of a coarse grid, now and then a little off it, so that corners fall on axes and just beside them.
fn point(random: &mut Random) -> [f64; 3] {
    let off = [0.0, 0.0, 0.0, 0.3, 1e-4, 2e-6];
    [0; 3].map(|_| random.of(&[0.0, 0.0, 20.0, 40.0, 60.0, 95.0]) + random.of(&off))
}

const RADII: [f64; 10] = [0.0, 3.0, 6.0, 6.0005, 6.1, 8.0, 12.0, 16.0, 24.0, 60.0];

fn trouble(random: &mut Random) -> Value {
    let facings = [[0.0, 0.0, 1.0], [0.0, 0.0, -1.0], [1.0, 0.0, 0.0], [0.0, -1.0, 0.0], [1.0, 1.0, 0.3]];
    let count = 1 + (random.next() * 2.0) as usize;
    let mut ports = Vec::new();
    let mut runs = Vec::new();
    for index in 0..count {
        let (from, to) = (format!("from {index}"), format!("to {index}"));
        ports.push(port(&from, point(random), random.of(&facings)));
        let end = point(random).map(|at| at + 110.0 * random.of(&[0.0, 1.0]));
        ports.push(port(&to, end, random.of(&facings)));
        let mut stations: Vec<Value> = Vec::new();
        for _ in 0..random.of(&[0, 1, 1, 2, 2, 3, 4]) {
            let mut corner = json!({ "corner": point(random) });
            if random.chance(0.3) {
                corner["corner"][0] = json!({ "of": from, "plus": random.of(&[0.0, 0.0, 20.0]) });
                corner["corner"][1] = json!({ "of": from });
            }
            if random.chance(0.25) {
                corner["bend_radius"] = json!(random.of(&RADII));
            }
            stations.push(corner);
        }
        if stations.len() > 1 && random.chance(0.1) {
            stations[1] = stations[0].clone();
        }
        if stations.len() == 2 && random.chance(0.15) {
            // Out too far and straight back.
            stations[0] = json!({ "corner": [{ "of": from }, { "of": from, "plus": 0 }, 90] });
            stations[1] = json!({ "corner": [{ "of": from }, { "of": from, "plus": 0 }, 45] });
        }
        let outer = random.of(&[12.0, 12.0, 12.0, 12.08, 12.7, 16.0]);
        let mut run = json!({
            "name": format!("run {index}"), "from": from, "to": to, "bend_radius": random.of(&RADII), "route": stations,
            "tube": { "outer_diameter": outer, "bore": random.of(&[4.0, 8.0, 8.0, 8.0, 9.4, 10.5, 11.9]) },
        });
        if random.chance(0.3) {
            run["ends"] = json!({
                "chamfer_deg": random.of(&[2.0, 15.0, 45.0, 60.0]), "chamfer_length": random.of(&[0.0, 1.0, 2.0, 4.0, 12.0]),
                "edge_break": random.of(&[0.0, 0.2, 1.5]),
            });
        }
        if random.chance(0.1) {
            run.as_object_mut().unwrap().remove("bend_radius");
        }
        runs.push(run);
    }
    let mut design = crate::check_support::design(&ports, &runs);
    let mut c12 = fitting("C12");
    c12["lead"] = json!(random.of(&[0.0, 5.0, 12.0]));
    design["fittings"] = json!([c12]);
    if random.chance(0.4) {
        design["keep_outs"] = json!([{ "name": "box", "box": { "min": [30, -10, 30], "max": [50, 50, 52] } }]);
    }
    design
}

#[test]
fn every_fix_mends_its_finding() {
    let mut random = Random(23);
    let mut fixed: BTreeMap<&str, usize> = BTreeMap::new();
    let mut told: BTreeMap<&str, usize> = BTreeMap::new();
    for _ in 0..400 {
        let text = trouble(&mut random).to_string();
        for finding in found(&text) {
            *told.entry(finding.code).or_default() += 1;
            if finding.fix.is_some() {
                *fixed.entry(finding.code).or_default() += 1;
                mends(&text, &finding);
            }
        }
    }
    println!("told {told:?}\nfixed {fixed:?}");
    for code in [
        "bend_radius",
        "bend_tight",
        "corners_too_close",
        "lead_too_short",
        "corner_out_of_reach",
        "turns_back",
        "same_point",
        "link_too_tight",
        "loops",
        "tube_diameter",
        "thin_wall",
        "thin_tip",
        "chamfer_long",
        "misaligned",
    ] {
        assert!(fixed.get(code).is_some_and(|count| *count >= 1), "{code} is never fixed: {fixed:?}");
    }
    for code in ["meets_itself", "meets_fitting", "meets_keep_out", "meets_run", "fittings_close"] {
        assert!(told.contains_key(code), "{code} is never told");
    }
}

#[test]
fn what_has_no_stop_has_a_mesh() {
    let mut random = Random(29);
    let mut meshed = 0;
    for _ in 0..400 {
        let text = trouble(&mut random).to_string();
        let design = design::parse(&text).unwrap();
        let placed = layout::place(&design);
        let lines = centreline::lines(&design, &placed);
        let found = found(&text);
        let stopped = |run: &str| found.iter().any(|f| f.severity == Severity::Stop && f.run.as_deref() == Some(run));
        for ((run, place), line) in design.runs.iter().zip(&placed.runs).zip(&lines) {
            let fault = line.line.as_ref().map(|line| {
                let profile = Profile::of(run, place, &design.process.printer, line.length);
                mesh::fault(run, &profile, line)
            });
            match fault {
                Some(None) => meshed += 1,
                // Without a centreline, or with one that cannot be meshed, there is a reason told.
                Some(Some(fault)) => assert!(stopped(&run.name), "{fault:?} but no stop: {text}"),
                None => assert!(stopped(&run.name), "no centreline but no stop: {text}"),
            }
        }
    }
    assert!(meshed > 20, "{meshed}");
}

#[test]
fn the_largest_design_is_bounded_work() {
    // 200 runs of 2,000 corners, each a zigzag in the same few centimetres: 100 m of tube that all meets.
    let mut ports = Vec::new();
    let mut runs = Vec::new();
    for index in 0..200 {
        let shift = f64::from(index) * 0.01;
        ports.push(port(&format!("a{index}"), [shift, 0.0, 0.0], [0.0, 0.0, 1.0]));
        ports.push(port(&format!("b{index}"), [shift, 5.0, 0.0], [0.0, 0.0, 1.0]));
        let route: Vec<Value> = (0..2_000)
            .map(|k| json!({ "corner": [shift + 0.1 * f64::from(k % 2), 0.1 * f64::from(k % 7), 30.0 + 0.1 * f64::from(k % 11)] }))
            .collect();
        runs.push(json!({
            "name": format!("r{index}"), "from": format!("a{index}"), "to": format!("b{index}"), "bend_radius": 0.01,
            "tube": { "outer_diameter": 12, "bore": 8 }, "route": route,
        }));
    }
    let text = crate::check_support::design(&ports, &runs).to_string();
    let found = found_plainly(&text);
    // The looks at pairs have run out: without that bound it takes hours.
    assert!(found.iter().any(|finding| finding.code == "not_all_checked"));
    // Nor is anything tried on a design of so many parts, or each of its corners told.
    assert!(found.iter().all(|finding| finding.fix.is_none()));
    let mut told: BTreeMap<(&str, Option<&str>), usize> = BTreeMap::new();
    for finding in &found {
        *told.entry((finding.code, finding.run.as_deref())).or_default() += 1;
    }
    assert!(told.len() > 200, "{told:?}");
    assert!(told.values().all(|count| *count <= 100), "{told:?}");
}

fn found_plainly(text: &str) -> Vec<tubewright_core::check::Finding> {
    let design = design::parse(text).unwrap();
    let layout = layout::place(&design);
    let lines = centreline::lines(&design, &layout);
    let subject = tubewright_core::check::Subject { design: &design, layout: &layout, lines: &lines };
    tubewright_core::check::findings(subject)
}
