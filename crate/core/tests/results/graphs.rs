//! The plots of designs: what they show is what the report says, and what cannot be drawn says why.

use crate::check_support::single;
use serde_json::{Value, json};
use tubewright_core::engine::{self, Stages};
use tubewright_core::graphs;
use tubewright_core::strategies::{KINDS, designs};
use tubewright_core::tongue::Tongue;

const PLOTS: [&str; 3] = ["loss-plot", "margins-plot", "stiffness-plot"];

fn demos() -> Vec<String> {
    let presets: Value = serde_json::from_str(&engine::presets()).unwrap();
    presets["demos"].as_array().unwrap().iter().map(|demo| demo["design"].to_string()).collect()
}

fn drawn(text: &str, kind: &str) -> String {
    let bytes =
        engine::export_file(text, &json!({"kind": kind}).to_string()).unwrap_or_else(|refusal| panic!("{refusal}"));
    let svg = String::from_utf8(bytes).unwrap();
    roxmltree::Document::parse(&svg).unwrap_or_else(|fault| panic!("{fault}: {svg}"));
    svg
}

#[test]
fn every_demo_has_its_plots_in_words_too() {
    for text in demos() {
        for kind in PLOTS {
            let svg = drawn(&text, kind);
            assert!(svg.contains("<desc") && !svg.contains("NaN") && !svg.contains("style="), "{svg}");
        }
        let archive = engine::export_file(&text, r#"{"kind":"all","deviation":0.2}"#).unwrap();
        for name in [" loss.svg", " margins.svg", " heat.svg"] {
            assert!(archive.windows(name.len()).any(|window| window == name.as_bytes()), "no{name}");
        }
    }
}

#[test]
fn the_loss_plot_meets_where_the_report_does() {
    for text in demos() {
        let stages = Stages::of(&text).unwrap();
        let report: Value = serde_json::from_str(&engine::report(&text).unwrap()).unwrap();
        let operating = &report["loop"]["operating"];
        let plot = graphs::loss(&stages, &Tongue::english()).unwrap().unwrap();
        let point = plot.operating.unwrap();
        assert_eq!(Some(point.flow), operating["flow_l_per_h"]["nominal"].as_f64());
        assert_eq!(Some(point.pressure), operating["pressure_kpa"].as_f64());
        // The curves cross there: the pump is above before it, and the loop after it.
        let pump = plot.pump.unwrap().points;
        for ([flow, loss], [same, head]) in plot.loops[0].points.iter().zip(&pump) {
            assert_eq!(flow, same);
            assert_eq!(loss < head, *flow < point.flow, "at {flow}");
        }
    }
}

#[test]
fn the_margins_are_the_report_s() {
    let text = demos().swap_remove(1);
    let stages = Stages::of(&text).unwrap();
    let report: Value = serde_json::from_str(&engine::report(&text).unwrap()).unwrap();
    let plot = graphs::margins(&stages, &Tongue::english());
    let used = |label: &str| plot.rows.iter().find(|row| row.label == label).map(|row| row.used);
    for run in report["runs"].as_array().unwrap() {
        let name = run["name"].as_str().unwrap();
        assert_eq!(used(&format!("{name}: pressure")), run.pointer("/service/strength/utilisation").unwrap().as_f64());
        assert!(used(&format!("{name}: loss")).is_some_and(|used| used > 0.0));
    }
    // Fitted at 20, hottest 60, allowed 70 degrees.
    assert!((used("Heat").unwrap() - 40.0 / 50.0).abs() < 1e-12);
}

#[test]
fn what_cannot_be_drawn_says_why() {
    let mut text = single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, 60.0]]);
    let refused =
        |text: &Value, request: Value| engine::export_file(&text.to_string(), &request.to_string()).unwrap_err();
    text["loop"] = json!({"working_c": -20});
    assert_eq!(refused(&text, json!({"kind": "loss-plot"})).path, "/loop/working_c");
    text["loop"] = json!({"coolant": {"name": "c", "density_g_per_cm3": 1}});
    assert_eq!(refused(&text, json!({"kind": "loss-plot"})).path, "/loop/coolant");
    assert_eq!(refused(&text, json!({"kind": "margins-plot", "width": 10})).path, "/width");
    assert_eq!(refused(&text, json!({"kind": "stl", "run": "r", "width": 300})).path, "/width");
    assert_eq!(refused(&text, json!({"kind": "margins-plot", "run": "r"})).path, "/run");
    drawn(&text.to_string(), "margins-plot");
    // Without a run there is little to show, but no fault.
    for kind in PLOTS {
        drawn(r#"{"format":"tubewright-design","version":1}"#, kind);
    }
}

#[test]
fn made_up_designs_have_plots_or_reasons() {
    for made_up in designs(9, KINDS.len()) {
        let mut design: Value = serde_json::from_str(&made_up.text).unwrap();
        design["runs"][0]["name"] = json!("<b onclick=\"x\">&amp; '");
        for kind in PLOTS {
            match engine::export_file(&design.to_string(), &json!({"kind": kind, "width": 300}).to_string()) {
                Ok(bytes) => {
                    let svg = String::from_utf8(bytes).unwrap();
                    assert!(!svg.contains("<b ") && roxmltree::Document::parse(&svg).is_ok(), "{svg}");
                }
                Err(refusal) => assert!(refusal.message.contains("drawn"), "{kind}: {refusal}"),
            }
        }
    }
}
