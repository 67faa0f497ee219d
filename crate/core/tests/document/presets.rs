//! What ships: every preset can be used as it is, every figure names its source, and the demos are good designs. And
//! the vocabulary: what the form is told is what the reader holds to.

use std::collections::BTreeSet;

use serde_json::{Value, json};
use tubewright_core::design::{parse, problems};
use tubewright_core::{engine, presets};

fn shipped() -> Value {
    serde_json::from_str(&engine::presets()).expect("the presets are JSON")
}

fn vocabulary() -> Value {
    serde_json::from_str(&engine::vocabulary()).expect("the vocabulary is JSON")
}

#[test]
fn every_list_ships_something_and_every_row_names_its_source() {
    let shipped = shipped();
    for (list, least) in [
        ("fittings", 10),
        ("tubes", 11),
        ("materials", 11),
        ("printers", 5),
        ("coolants", 3),
        ("pumps", 3),
        ("parts", 6),
    ] {
        let rows = shipped[list].as_array().unwrap();
        assert!(rows.len() >= least, "{list}");
        for row in rows {
            assert!(row["source"].as_str().is_some_and(|source| source.len() > 8), "{row}");
        }
    }
    assert_eq!(presets::materials().len(), shipped["materials"].as_array().unwrap().len());
    assert_eq!(presets::printers().len(), shipped["printers"].as_array().unwrap().len());
    assert_eq!(presets::coolants().len(), shipped["coolants"].as_array().unwrap().len());
    assert_eq!(presets::pumps().len(), shipped["pumps"].as_array().unwrap().len());
}

#[test]
fn there_is_a_straight_and_an_elbow_for_each_tube_in_trade_use() {
    let shipped = shipped();
    for diameter in [10.0, 12.0, 12.7, 14.0, 16.0] {
        let of_size = |elbow: bool| {
            shipped["fittings"]
                .as_array()
                .unwrap()
                .iter()
                .filter(|row| {
                    row["fitting"]["tube_diameter"].as_f64() == Some(diameter)
                        && row["fitting"]["elbow"].is_object() == elbow
                })
                .count()
        };
        assert_eq!((of_size(false), of_size(true)), (1, 1), "{diameter} mm");
        assert!(
            shipped["tubes"]
                .as_array()
                .unwrap()
                .iter()
                .any(|row| row["tube"]["outer_diameter"].as_f64() == Some(diameter))
        );
    }
}

#[test]
fn every_fitting_takes_its_tube_and_is_made() {
    for row in shipped()["fittings"].as_array().unwrap() {
        let fitting = &row["fitting"];
        let diameter = fitting["tube_diameter"].as_f64().unwrap();
        // Two ports 250 mm apart that face the same way; an elbow turns both the same way.
        let design = json!({"format": "tubewright-design", "version": 1, "fittings": [fitting],
            "ports": [{"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": fitting["name"]},
                      {"name": "b", "at": [0, 250, 0], "facing": [0, 0, 1], "fitting": fitting["name"]}],
            "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": diameter, "bore": diameter - 4.0}}]});
        let report: Value = serde_json::from_str(&engine::report(&design.to_string()).unwrap()).unwrap();
        assert_eq!(report["runs"][0]["made"], json!(true), "{report}");
        assert_eq!(bad(&report), Vec::<&Value>::new());
        // A 2.0 mm ring in its gland is squeezed by a fifth: what design guides recommend for a ring that stays put.
        let seal = &fitting["seal"];
        let (section, gland) = (seal["section"].as_f64().unwrap(), seal["gland_diameter"].as_f64().unwrap());
        let squeeze = 1.0 - (gland - diameter) / 2.0 / section;
        assert!((squeeze - 0.2).abs() < 1e-9, "{squeeze}");
    }
}

#[test]
fn materials_printers_coolants_and_pumps_can_be_named() {
    let shipped = shipped();
    let with = |part: &str, key: &str, name: &Value| {
        json!({"format": "tubewright-design", "version": 1, part: {key: name}}).to_string()
    };
    for (list, part, key) in [
        ("materials", "process", "material"),
        ("printers", "process", "printer"),
        ("coolants", "loop", "coolant"),
        ("pumps", "loop", "pump"),
    ] {
        for row in shipped[list].as_array().unwrap() {
            let whole: Value =
                serde_json::from_str(&engine::normalise(&with(part, key, &row["name"])).unwrap()).unwrap();
            assert_eq!(whole[part][key]["name"], row["name"]);
            // The object written out is accepted in its own right.
            assert_eq!(problems(&with(part, key, &whole[part][key])), []);
        }
    }
}

#[test]
fn demos_are_good_designs() {
    let shipped = shipped();
    let demos = shipped["demos"].as_array().unwrap();
    assert_eq!(demos.len(), 7);
    for demo in demos {
        assert!(demo["label"].as_str().is_some_and(|label| !label.is_empty()));
        assert!(demo["about"].as_str().is_some_and(|about| about.ends_with('.')));
        let text = demo["design"].to_string();
        let report: Value = serde_json::from_str(&engine::report(&text).unwrap()).unwrap();
        assert_eq!(bad(&report), Vec::<&Value>::new());
        for run in report["runs"].as_array().unwrap() {
            assert_eq!(run["made"], json!(true));
            let mesh = engine::tube_mesh(&text, run["name"].as_str().unwrap(), 0.05).unwrap();
            assert!(tubewright_core::mesh::is_solid(&mesh));
        }
        assert!(engine::export_file(&text, r#"{"kind":"all","deviation":0.2}"#).is_ok());
    }
}

#[test]
fn the_loop_shows_what_a_design_can_hold() {
    let shipped = shipped();
    let design = parse(&shipped["demos"][1]["design"].to_string()).unwrap();
    assert_eq!(design.runs.len(), 4);
    assert!(design.fittings.iter().any(|fitting| fitting.elbow.is_some()));
    assert!(design.runs.iter().any(|run| run.route.is_empty()));
    assert!(design.keep_outs.len() >= 2);
    // Every port carries one tube: the loop is closed.
    let used: BTreeSet<&str> = design.runs.iter().flat_map(|run| [run.from.as_str(), run.to.as_str()]).collect();
    assert_eq!(used.len(), design.ports.len());
    // A first corner that is not in front of its port: the run has one bend more than corners.
    let report: Value =
        serde_json::from_str(&engine::report(&shipped["demos"][1]["design"].to_string()).unwrap()).unwrap();
    let bends = report["runs"][0]["bend_table"].as_array().unwrap().len() - 1;
    assert_eq!(bends, design.runs[0].route.len() + 1);
}

/// Each coolant's density is what its base has at 40 degrees C: Melinder's mixtures, IAPWS's water.
#[test]
fn coolants_are_as_dense_as_what_they_are_made_of() {
    for row in shipped()["coolants"].as_array().unwrap() {
        let text = json!({"format": "tubewright-design", "version": 1, "loop": {"coolant": row["name"]}}).to_string();
        let report: Value = serde_json::from_str(&engine::report(&text).unwrap()).unwrap();
        let (found, stated) = (&report["loop"]["fluid"]["density_kg_per_m3"], &row["density_g_per_cm3"]);
        let off = found.as_f64().unwrap() / 1e3 - stated.as_f64().unwrap();
        assert!(off.abs() < 1e-4, "{}: {found}, not {stated}", row["name"]);
    }
}

/// Each part that ships can be a part of a loop as it is.
#[test]
fn parts_of_a_loop_can_be_taken_over() {
    for row in shipped()["parts"].as_array().unwrap() {
        let mut part = row.clone();
        part.as_object_mut().unwrap().remove("source");
        let text = json!({"format": "tubewright-design", "version": 1, "loop": {"parts": [part]}}).to_string();
        assert_eq!(problems(&text), []);
    }
}

/// The findings that stop a run or want a second look; of a brittle material's side load all tubes are told.
fn bad(report: &Value) -> Vec<&Value> {
    let all = report["findings"].as_array().unwrap().iter();
    all.filter(|finding| finding["severity"] != json!("note") && finding["code"] != json!("side_load")).collect()
}

#[test]
fn the_form_is_told_what_the_reader_holds_to() {
    // A design with every key there is, so that every row of the table has its place in it.
    let full = json!({"format": "tubewright-design", "version": 1, "name": "n", "notes": "",
        "fittings": [{"name": "f", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5, "bore": 9,
            "elbow": {"angle_deg": 90, "rise": 20, "reach": 20, "turn_deg": 0}, "seal": {"section": 2, "gland_diameter": 15, "gland_width": 2.7}}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "f", "measured_to": 0.5},
                  {"name": "b", "at": [100, 0, 0], "facing": [0, 0, 1], "fitting": "f"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 500, "bore": 0.1}, "bend_radius": 24,
            "fit_bends": true,
            "route": [{"corner": [0, {"of": "a", "plus": 0}, 50], "bend_radius": 20},
                {"through": [0, {"of": "a", "plus": 0}, 80]},
                {"coil": {"centre": [0, {"of": "a", "plus": 0}, 90], "axis": [0, 0.5, 1], "radius": 30, "end_radius": 40,
                    "pitch": 20, "turns": 2, "hand": "left", "start_deg": 15}}],
            "dress": {"diameter": 500, "end_diameter": 500, "blend": 8, "lobes": 0, "depth": 0, "twist_deg_per_mm": 1},
            "ends": {"chamfer_deg": 15, "chamfer_length": 2, "edge_break": 0.2, "trim": 0, "seat_mark": true},
            "stance": {"up": [1, 0.5, 0.5], "turn_deg": 0},
            "cuts": [{"at": 50, "stance": {"up": [1, 0.5, 0.5], "turn_deg": 0}}]}],
        "keep_outs": [{"name": "k", "box": {"min": [-1e6, -1e6, -1e6], "max": [1e6, 1e6, 1e6]}},
                      {"name": "l", "cylinder": {"from": [0, 0, 0.5], "to": [1, 0.5, 0.25], "radius": 1}}],
        "clearance": 1,
        "process": {"material": {"name": "m", "way": "resin", "density_g_per_cm3": 1, "glass_c": 60,
                        "semicrystalline": false, "hdt_045_c": 60, "hdt_180_c": 50, "strength_mpa": 40, "modulus_mpa": 2000,
                        "elongation_percent": 8, "expansion_um_per_m_k": 100, "water_uptake_percent": 1,
                        "across_layers": 0.8, "tight_from_mm": 1, "roughness_um": 5, "price_per_l": 50,
                        "look": {"clarity": "clear", "colour": "#d8e6e2"}, "cautions": "", "source": ""},
                    "printer": {"name": "p", "build_volume": [1, 1, 1], "least_wall": 1, "tolerance": 0.1,
                        "margin": 5, "layer_mm": 0.05, "spot_mm": 0.05, "overhang_deg": 19, "bore_deg": 30, "bridge_mm": 21,
                        "seconds_per_layer": 8, "most_triangles": 1e6, "most_mb": 100, "source": ""},
                    "factors": {"warm": 0.5, "lasting": 0.4, "safety": 4},
                    "fit": {"material": "m", "printer": "p", "outer": [{"nominal": 1, "measured": 1}],
                            "bore": [{"nominal": 1, "measured": 1}], "length": [{"nominal": 1, "measured": 1}],
                            "fitted": {"outer_diameter": 1, "measured": 1}},
                    "joint": {"length": 8, "clearance": 0.1, "wall": 1.5, "key_depth": 0.5, "bond_mpa": 5},
                    "service": {"price_per_cm3": 1, "setup": 1, "minimum": 1, "source": ""}},
        "loop": {"flow_l_per_h": 1, "coolant": {"name": "c", "density_g_per_cm3": 1, "base": "ethylene glycol",
                     "glycol_percent": 20, "viscosity_mpa_s": 1, "source": ""}, "cold_c": 20, "working_c": 1,
                 "fault_c": 1, "pressure_kpa": 1, "test_kpa": 100, "up": [1, 0.5, 0.5], "heat_w": 1,
                 "pump": {"name": "p", "points": [{"flow_l_per_h": 0, "head_m": 1000}, {"flow_l_per_h": 100_000, "head_m": 0}],
                          "source": ""},
                 "parts": [{"name": "p", "drop_kpa": 1, "at_l_per_h": 1, "volume_ml": 1}],
                 "leak_test": {"volume_ml": 1, "start_kpa": 1, "end_kpa": 1, "start_c": 1, "end_c": 1, "minutes": 1,
                               "air_kpa": 120, "limit_kpa": 1, "limit_minutes": 1}}});
    assert_eq!(problems(&full.to_string()), []);
    let vocabulary = vocabulary();
    let mut numbers = 0;
    for (key, row) in vocabulary["quantities"].as_object().unwrap() {
        assert_eq!(row["key"], json!(key));
        assert!(row["hint"].as_str().is_some_and(|hint| hint.ends_with('.') && !hint.contains("  ")), "{row}");
        assert!(row["label"].as_str().is_some_and(|label| !label.is_empty()));
        let pointer = ["/0", "/1"]
            .iter()
            .flat_map(|last| {
                // The keep-outs' second item is the cylinder; other lists are looked at in their first.
                let list = if key.contains("/cylinder/") { "/keep_outs/1" } else { "/keep_outs/0" };
                // The route shows each kind of station once, and each ties its second coordinate.
                let station = if key.contains("/through") { 1 } else { 2 * usize::from(key.contains("/coil")) };
                let route = format!("/route/{station}");
                let place = ["/corner", "/through", "/centre"]
                    .iter()
                    .fold(key.replace("/keep_outs/*", list).replace("/route/*", &route), |place, point| {
                        place.replace(&format!("{point}/*/"), &format!("{point}/1/"))
                    })
                    .replace("/*", "/0");
                [place.clone(), place.strip_suffix("/0").map(|place| format!("{place}{last}")).unwrap_or(place)]
            })
            .find(|pointer| full.pointer(pointer).is_some());
        let Some(pointer) = pointer else { panic!("{key} is not in the design") };
        if row["kind"] != json!("number") {
            continue;
        }
        numbers += 1;
        let refused = |value: f64| {
            let mut design = full.clone();
            *design.pointer_mut(&pointer).unwrap() = json!(value);
            problems(&design.to_string())
                .into_iter()
                .any(|refusal| refusal.path == pointer && refusal.message.contains("out of range"))
        };
        let (min, max) = (row["min"].as_f64().unwrap(), row["max"].as_f64().unwrap());
        let beyond = |value: f64| value + value.abs().max(1.0) * 1e-9;
        assert_eq!(refused(min), row["min_open"] == json!(true), "{key} at {min}");
        assert_eq!(refused(max), row["max_open"] == json!(true), "{key} at {max}");
        assert!(refused(-beyond(-min)) && refused(beyond(max)), "{key} beyond its range");
        assert!(!refused(row["example"].as_f64().unwrap()), "{key}'s example");
        if let Some(default) = row["default"].as_f64() {
            assert!(!refused(default), "{key}'s default");
        }
        assert!(row["step"].as_f64().is_some_and(|step| step > 0.0), "{key}");
    }
    assert!(numbers > 30);
}

#[test]
fn defaults_are_what_the_form_says() {
    let bare = json!({"format": "tubewright-design", "version": 1, "fittings": [{"name": "f", "tube_diameter": 12, "elbow": {}}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "f"},
                  {"name": "b", "at": [9, 0, 0], "facing": [0, 0, 1], "fitting": "f"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8},
                  "route": [{"corner": [{"of": "a"}, 0, 0]}]}]});
    let whole: Value = serde_json::from_str(&engine::normalise(&bare.to_string()).unwrap()).unwrap();
    let mut seen = 0;
    for (key, row) in vocabulary()["quantities"].as_object().unwrap() {
        let default = &row["default"];
        let Some(found) = whole.pointer(&key.replace("/*", "/0")) else { continue };
        // A preset brings its own words; the default is that of an object of the builder's own.
        if default.is_null() || key.ends_with("/source") || key.ends_with("/cautions") {
            continue;
        }
        seen += 1;
        match row["kind"].as_str().unwrap() {
            "number" => assert_eq!(found.as_f64(), default.as_f64(), "{key}"),
            "choice" => assert_eq!(&found["name"], default, "{key}"),
            _ => assert_eq!(found, default, "{key}"),
        }
    }
    assert!(seen > 20, "{seen}");
}

#[test]
fn no_brand_or_unfinished_word_ships() {
    let all = format!("{}{}", engine::presets(), engine::vocabulary()).to_lowercase();
    for word in ["todo", "tbd", "lorem", "placeholder", "®", "™"] {
        assert!(!all.contains(word), "{word}");
    }
}
