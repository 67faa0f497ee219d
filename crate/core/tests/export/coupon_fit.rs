//! What a coupon's readings say, and the files that make up for it: a made-up printer prints the coupon, its readings go in,
//! and what it then makes of a corrected file must be the tube as stated.

use serde_json::{Value, json};
use std::io::Cursor;
use tubewright_core::centreline::Centreline;
use tubewright_core::engine::{Stages, export_file, file_name, normalise, problems, report, tube_mesh};
use tubewright_core::layout::Vec3;

/// A printer that prints outer diameters 0.08 mm over, bores 0.05 mm under and lengths 0.4 % short.
const OUTER: f64 = 0.08;
const BORE: f64 = -0.05;
const LENGTH: f64 = 0.996;

fn design(fit: Value, changes: Value) -> String {
    let mut design = json!({
        "format": "tubewright-design", "version": 1, "name": "Puffin",
        "fittings": [{"name": "C12", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5,
                      "seal": {"section": 2, "gland_diameter": 15.2}}],
        "ports": [
            {"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "C12"},
            {"name": "b", "at": [90, 0, 90], "facing": [-1, 0, 0], "fitting": "C12"}
        ],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": 20,
                  "route": [{"corner": [0, 0, 90]}]}],
        "process": {"material": "tough resin", "printer": "medium resin"}
    });
    design["process"]["fit"] = fit;
    json_patch::merge(&mut design, &changes);
    design.to_string()
}

/// Readings of the design's own material and printer.
fn fit(outer: &[[f64; 2]], bore: &[[f64; 2]], length: &[[f64; 2]]) -> Value {
    let list = |readings: &[[f64; 2]]| {
        Value::from_iter(readings.iter().map(|[nominal, measured]| json!({"nominal": nominal, "measured": measured})))
    };
    json!({"material": "tough resin", "printer": "medium resin", "outer": list(outer), "bore": list(bore), "length": list(length)})
}

fn told(text: &str) -> Value {
    serde_json::from_str(&report(text).unwrap()).unwrap()
}

fn codes(text: &str) -> Vec<String> {
    let report = told(text);
    let findings = report["findings"].as_array().unwrap().iter();
    findings
        .filter_map(|finding| finding["code"].as_str())
        .filter(|code| code.starts_with("fit_"))
        .map(Into::into)
        .collect()
}

fn near(found: &Value, aim: f64, within: f64) {
    let found = found.as_f64().unwrap_or(f64::NAN);
    assert!((found - aim).abs() <= within, "{found}, not {aim}");
}

/// Puts in what the made-up printer makes of the coupon that the report describes.
fn printed(text: &str) -> String {
    let coupon = told(text)["fit"]["runs"][0]["coupon"].clone();
    let ends: Vec<Value> =
        coupon["sticks"].as_array().unwrap().iter().flat_map(|stick| stick.as_array().unwrap().clone()).collect();
    let sizes = |key: &str, off: f64| {
        ends.iter()
            .map(|end| end[key].as_f64().unwrap())
            .map(|size| json!({"nominal": size, "measured": size + off}))
            .collect::<Vec<_>>()
    };
    let length = coupon["length_mm"].as_f64().unwrap();
    let mut design: Value = serde_json::from_str(&normalise(text).unwrap()).unwrap();
    let name = |of: &str| design["process"][of]["name"].clone();
    design["process"]["fit"] = json!({
        "material": name("material"), "printer": name("printer"),
        "outer": sizes("outer_mm", OUTER), "bore": sizes("bore_mm", BORE),
        "length": [{"nominal": length, "measured": length * LENGTH}]
    });
    design.to_string()
}

/// Where on a centreline a point stands beside: the arc length, found from the nearest of many samples, and how far off.
fn beside(line: &Centreline, samples: &[(f64, Vec3)], point: &Vec3) -> (f64, f64) {
    let nearest = samples.iter().min_by(|a, b| (a.1 - point).norm().total_cmp(&(b.1 - point).norm())).unwrap();
    let mut s = nearest.0;
    for _ in 0..20 {
        let at = line.at(s);
        let ahead = (point - at.point).dot(&at.tangent);
        let slope = 1.0 - (point - at.point).dot(&at.curvature);
        s = (s + ahead / slope.max(0.1)).clamp(0.0, line.length);
    }
    (s, (point - line.at(s).point).norm())
}

/// The farthest that what the made-up printer makes of the corrected STL of a run is from the tube as stated, mm, and how
/// many vertices were measured.
fn farthest(text: &str, index: usize) -> (f64, usize) {
    let stages = Stages::of(text).unwrap();
    let run = &stages.design.runs[index];
    let line = stages.lines[index].line.as_ref().unwrap();
    let profile = stages.profile(index, line.length);
    let steps = (line.length / 0.5) as usize;
    let samples: Vec<(f64, Vec3)> =
        (0..=steps).map(|step| step as f64 * line.length / steps as f64).map(|s| (s, line.at(s).point)).collect();
    let request = json!({"kind": "stl", "run": run.name, "deviation": 0.004}).to_string();
    let file = stl_io::read_stl(&mut Cursor::new(export_file(text, &request).unwrap())).unwrap();
    let mut worst: f64 = 0.0;
    for vertex in &file.vertices {
        // The printer shrinks the way that the tube takes; diameters come out off by what was read of the coupon.
        let point = Vec3::new(vertex[0].into(), vertex[1].into(), vertex[2].into()) * LENGTH;
        let (s, distance) = beside(line, &samples, &point);
        let in_file = distance / LENGTH;
        let middle = (profile.outer.radius(s) + profile.bore.radius(s)) / 2.0;
        let off = if in_file > middle {
            in_file + OUTER / 2.0 - profile.outer.radius(s)
        } else {
            in_file + BORE / 2.0 - profile.bore.radius(s)
        };
        worst = worst.max(off.abs());
    }
    (worst, file.vertices.len())
}

#[test]
fn a_corrected_file_prints_to_the_tube_as_stated() {
    let presets: Value = serde_json::from_str(&tubewright_core::engine::presets()).unwrap();
    let demos = presets["demos"].as_array().unwrap().iter().map(|demo| demo["design"].to_string());
    for text in [design(Value::Null, json!({}))].into_iter().chain(demos) {
        let text = printed(&text);
        let stages = Stages::of(&text).unwrap();
        for index in 0..stages.design.runs.len() {
            if stages.design.runs[index].dress.as_ref().is_some_and(|dress| dress.lobes > 0) {
                continue;
            }
            let (worst, count) = farthest(&text, index);
            println!("{}: {worst} over {count}", stages.design.runs[index].name);
            assert!(count > 1_000 && worst < 0.01, "{}: {worst}", stages.design.runs[index].name);
        }
    }
}

#[test]
fn a_file_without_the_correction_would_not() {
    let text = printed(&design(Value::Null, json!({})));
    let plain = json!({"kind": "stl", "run": "r", "deviation": 0.004, "compensated": false}).to_string();
    let file = stl_io::read_stl(&mut Cursor::new(export_file(&text, &plain).unwrap())).unwrap();
    // Its first end lies at z = 8 mm, and the corrected one higher by what the printer takes away.
    let lowest = |vertices: &[stl_io::Vertex]| vertices.iter().map(|vertex| vertex[2]).fold(f32::MAX, f32::min);
    assert!((lowest(&file.vertices) - 8.0).abs() < 1e-5);
    let corrected = json!({"kind": "stl", "run": "r", "deviation": 0.004}).to_string();
    let corrected = stl_io::read_stl(&mut Cursor::new(export_file(&text, &corrected).unwrap())).unwrap();
    assert!((f64::from(lowest(&corrected.vertices)) - 8.0 / LENGTH).abs() < 1e-5);
}

#[test]
fn grooves_and_lobes_keep_their_depth() {
    let lobed = json!({"runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": 20,
        "route": [{"corner": [0, 0, 90]}], "dress": {"diameter": 14, "blend": 5, "lobes": 6, "depth": 0.8, "twist_deg_per_mm": 2}}]});
    let text = printed(&design(Value::Null, lobed));
    let stages = Stages::of(&text).unwrap();
    let line = stages.lines[0].line.as_ref().unwrap();
    let by = tubewright_core::coupon::correction(&stages.design.process).unwrap().unwrap();
    let profile = stages.profile(0, line.length);
    let applied = by.applied(&stages.design.runs[0], &profile).unwrap();
    let (s, scale) = (line.length / 2.0, by.scale());
    for angle in [0.0, 0.3, 0.9] {
        let file = applied.outer_at(s, angle) * scale;
        assert!((file + OUTER / 2.0 - profile.outer_at(s, angle)).abs() < 1e-9, "{angle}");
    }
    let mesh = stages.corrected_mesh(&stages.whole(0).unwrap(), 0.01, &by).unwrap();
    assert!(tubewright_core::mesh::is_solid(&mesh));
}

#[test]
fn the_preview_and_the_report_stay_as_stated() {
    let plain = design(Value::Null, json!({}));
    let text = printed(&plain);
    assert_eq!(tube_mesh(&text, "r", 0.01).unwrap(), tube_mesh(&plain, "r", 0.01).unwrap());
    let (before, after) = (told(&plain), told(&text));
    for key in ["length_mm", "material_mm3", "bore_mm3", "bounds_mm", "bend_table"] {
        assert_eq!(before["runs"][0][key], after["runs"][0][key], "{key}");
    }
    let off = json!({"kind": "stl", "run": "r", "compensated": false}).to_string();
    assert_eq!(export_file(&text, &off).unwrap(), export_file(&plain, &off).unwrap());
}

#[test]
fn means_and_scatter_are_those_of_the_handbooks() {
    // Offs of 0.06, 0.08 and 0.10: mean 0.08, standard deviation 0.02; Student's t of two degrees of freedom is 4.303.
    let text = design(
        fit(&[[12.0, 12.06], [12.0, 12.08], [11.9, 12.0]], &[[8.0, 7.94], [8.0, 7.96]], &[[60.0, 59.7], [20.0, 19.98]]),
        json!({}),
    );
    let fit = told(&text)["fit"].clone();
    assert_eq!((fit["state"].as_str(), fit["outer"]["readings"].as_u64()), (Some("applied"), Some(3)));
    near(&fit["outer"]["off_mm"], 0.08, 1e-12);
    near(&fit["outer"]["deviation_mm"], 0.02, 1e-12);
    near(&fit["outer"]["within_mm"], 4.303 * 0.02 * (4.0_f64 / 3.0).sqrt(), 1e-12);
    near(&fit["bore"]["off_mm"], -0.05, 1e-12);
    assert_eq!(
        (&fit["bore"]["deviation_mm"], &fit["bore"]["within_mm"]),
        (&Value::Null, &Value::Null),
        "two say no scatter"
    );
    near(&fit["length"]["off_percent"], (79.68 / 80.0 - 1.0) * 100.0, 1e-9);
    near(&fit["runs"][0]["file_outer_mm"], 11.92, 1e-12);
    near(&fit["runs"][0]["file_bore_mm"], 8.05, 1e-12);
    // Readings that are all alike: calipers still read to two hundredths.
    let alike = self::fit(&[[12.0, 12.1]; 4], &[], &[]);
    near(&told(&design(alike, json!({})))["fit"]["outer"]["within_mm"], 0.02, 0.0);
}

#[test]
fn the_end_that_fitted_moves_the_aim_of_its_own_tubes() {
    let mut readings = fit(&[[12.0, 12.08], [12.0, 12.08]], &[], &[]);
    readings["fitted"] = json!({"outer_diameter": 12, "measured": 12.03});
    let run = &told(&design(readings.clone(), json!({})))["fit"]["runs"][0];
    near(&run["aim_mm"], 12.03, 0.0);
    // An end of 11.95 mm in the file measures 12.03 mm: so must the tube's file.
    near(&run["file_outer_mm"], 11.95, 1e-12);
    readings["fitted"]["outer_diameter"] = json!(12.5);
    near(&told(&design(readings.clone(), json!({})))["fit"]["runs"][0]["aim_mm"], 12.0, 0.0);
    // Without a reading of outer diameters nobody knows what file that end came from.
    readings["outer"] = json!([]);
    readings["bore"] = json!([{"nominal": 8, "measured": 8}]);
    readings["fitted"]["outer_diameter"] = json!(12);
    near(&told(&design(readings, json!({})))["fit"]["runs"][0]["aim_mm"], 12.0, 0.0);
}

#[test]
fn seals_are_held_to_the_scatter_that_was_measured() {
    let seal = |text: &str| told(text)["runs"][0]["service"]["seals"][0].clone();
    let stated = seal(&design(Value::Null, json!({})));
    assert_eq!((stated["tube_tolerance_from"].as_str(), &stated["tube_tolerance_mm"]), (Some("printer"), &json!(0.15)));
    let two = seal(&design(fit(&[[12.0, 12.1]; 2], &[], &[]), json!({})));
    assert_eq!((&two["tube_tolerance_from"], &two["squeeze_percent"]), (&json!("printer"), &stated["squeeze_percent"]));
    let close = seal(&design(fit(&[[12.0, 12.1]; 3], &[], &[]), json!({})));
    assert_eq!(close["tube_tolerance_from"], json!("coupon"));
    near(&close["tube_tolerance_mm"], 0.02, 0.0);
    // Squeeze by hand: the tube 0.02, the gland 0.05, the section 0.08 off, all against it.
    let worst = 1.0 - (15.25 - 11.98) / 2.0 / 1.92;
    near(&close["squeeze_percent"]["worst"][0], worst * 100.0, 1e-9);
    // A printer that scatters is found out, and the words say that the coupon did.
    let wild = design(fit(&[[12.0, 12.4], [12.0, 11.6], [12.0, 12.5], [12.0, 11.7]], &[], &[]), json!({}));
    let report = told(&wild);
    let found = report["findings"].as_array().unwrap().iter().find(|finding| finding["code"] == "seal").unwrap();
    assert!(found["message"].as_str().unwrap().contains("your coupon says of the tube"), "{found}");
    assert!(found["source"].as_str().unwrap().contains("as measured on the coupon"), "{found}");
}

#[test]
fn readings_are_found_out_that_cannot_be_used() {
    let none: [[f64; 2]; 0] = [];
    let good = [[12.0, 12.08]];
    assert_eq!(codes(&design(Value::Null, json!({}))), ["fit_unknown"]);
    assert_eq!(codes(&design(fit(&none, &none, &[[60.0, 59.8]]), json!({}))), ["fit_unknown"]);
    assert!(
        codes(&design(
            Value::Null,
            json!({"fittings": [{"name": "C12", "tube_diameter": 12, "height": 18,
        "socket_depth": 10, "collar_diameter": 19, "lead": 5}]})
        ))
        .is_empty(),
        "nothing is to seal"
    );
    assert!(codes(&design(fit(&good, &[[8.0, 7.95]], &[[60.0, 59.8]]), json!({}))).is_empty());
    let at = |text: &str, code: &str| {
        let report = told(text);
        let found = report["findings"].as_array().unwrap().iter().find(|finding| finding["code"] == code).cloned();
        found.unwrap_or_else(|| panic!("{code}: {report}"))
    };
    let slip = design(fit(&[[12.0, 12.08], [12.0, 10.28]], &[], &[]), json!({}));
    assert_eq!(at(&slip, "fit_reading")["where"], json!("/process/fit/outer/1/measured"));
    assert_eq!(told(&slip)["fit"]["state"], json!("doubtful"));
    assert_eq!(told(&slip)["fit"]["runs"][0]["file_outer_mm"], Value::Null);
    let small = design(fit(&good, &[[2.0, 2.3]], &[]), json!({}));
    assert_eq!(at(&small, "fit_reading")["limit"], json!(0.2), "a tenth of a small bore");
    assert!(
        codes(&design(fit(&good, &none, &[[100.0, 98.5]]), json!({}))).is_empty(),
        "a length may shrink by more than a diameter"
    );
    let exchanged = design(fit(&[[8.0, 7.95]], &[[8.0, 8.0], [12.0, 12.08]], &[]), json!({}));
    assert_eq!(at(&exchanged, "fit_exchanged")["where"], json!("/process/fit/bore"));
    let mut foreign = fit(&good, &none, &none);
    foreign["printer"] = json!("small resin");
    let foreign = design(foreign, json!({}));
    assert_eq!(at(&foreign, "fit_other")["where"], json!("/process/fit/printer"));
    assert_eq!(told(&foreign)["fit"]["state"], json!("other"));
    near(&told(&foreign)["fit"]["outer"]["off_mm"], 0.08, 1e-12);
}

#[test]
fn a_correction_that_leaves_no_wall_is_refused() {
    let thin = json!({"runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 10.6}, "bend_radius": 20,
        "route": [{"corner": [0, 0, 90]}], "ends": {"chamfer_length": 0.2, "edge_break": 0}}]});
    let text = design(fit(&[[12.0, 12.8]], &[[10.6, 10.0]], &[]), thin);
    let refusal = export_file(&text, r#"{"kind": "3mf", "run": "r"}"#).unwrap_err();
    assert_eq!(refusal.path, "/runs/0/tube");
    assert!(refusal.message.contains("of wall or bore left"), "{}", refusal.message);
    assert_eq!(codes(&text), ["fit_wall"]);
    assert!(export_file(&text, r#"{"kind": "3mf", "run": "r", "compensated": false}"#).is_ok());
}

#[test]
fn files_say_that_they_are_compensated() {
    let text = printed(&design(Value::Null, json!({})));
    let name = |request: &str| file_name(&text, request).unwrap();
    assert_eq!(name(r#"{"kind": "stl", "run": "r"}"#), "r compensated.stl");
    assert_eq!(name(r#"{"kind": "stl", "run": "r", "compensated": false}"#), "r.stl");
    assert_eq!(name(r#"{"kind": "all"}"#), "Puffin compensated.zip");
    assert_eq!(name(r#"{"kind": "coupon", "run": "r"}"#), "r coupon.3mf");
    let unpacked = |bytes: Vec<u8>| -> Vec<(String, Vec<u8>)> {
        let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).unwrap();
        (0..archive.len())
            .map(|index| {
                let mut file = archive.by_index(index).unwrap();
                let mut content = Vec::new();
                std::io::Read::read_to_end(&mut file, &mut content).unwrap();
                (file.name().unwrap().into_owned(), content)
            })
            .collect()
    };
    let parts = unpacked(export_file(&text, r#"{"kind": "3mf", "run": "r"}"#).unwrap());
    let model = String::from_utf8(parts[2].1.clone()).unwrap();
    let said = "Compensated by a measured coupon of tough resin on medium resin: outer diameters come out 0.08 mm off, bores come \
                out -0.05 mm off, lengths come out -0.4 % off.";
    assert!(model.contains(&format!("<metadata name=\"Description\">{said}</metadata>")), "{}", &model[..900]);
    let names: Vec<String> =
        unpacked(export_file(&text, r#"{"kind": "all"}"#).unwrap()).into_iter().map(|(name, _)| name).collect();
    assert!(
        names.contains(&"r compensated.stl".to_owned()) && names.contains(&"r compensated.3mf".to_owned()),
        "{names:?}"
    );
    assert!(names.contains(&"r.svg".to_owned()), "{names:?}: the drawing is of the stated tube");
}

#[test]
fn a_compensation_that_cannot_be_is_refused_in_its_place() {
    let refused = |text: &str, request: Value| export_file(text, &request.to_string()).unwrap_err();
    let plain = design(Value::Null, json!({}));
    for (request, says) in [
        (json!({"kind": "stl", "run": "r", "compensated": true}), "no coupon has been measured"),
        (json!({"kind": "stl", "run": "r", "compensated": 1}), "true or false"),
        (json!({"kind": "drawing", "run": "r", "compensated": true}), "leave it out"),
        (json!({"kind": "coupon", "run": "r", "compensated": false}), "leave it out"),
    ] {
        let refusal = refused(&plain, request);
        assert_eq!(refusal.path, "/compensated");
        assert!(refusal.message.contains(says), "{}", refusal.message);
    }
    let slip = design(fit(&[[12.0, 20.0]], &[], &[]), json!({}));
    let asked = json!({"kind": "stl", "run": "r", "compensated": true});
    assert!(refused(&slip, asked.clone()).message.contains("slip"));
    let mut other = fit(&[[12.0, 12.1]], &[], &[]);
    other["material"] = json!("PLA");
    assert!(refused(&design(other, json!({})), asked).message.contains("another printer"));
}

#[test]
fn the_document_keeps_readings_and_refuses_what_is_none() {
    let mut readings = fit(&[[12.0, 12.08]], &[], &[]);
    readings["outer"] = json!([{"nominal": 12, "measured": 12.08}, {"nominal": 12.05}]);
    let text = normalise(&design(readings.clone(), json!({}))).unwrap();
    assert_eq!(normalise(&text).unwrap(), text);
    let kept: Value = serde_json::from_str(&text).unwrap();
    assert_eq!(kept["process"]["fit"]["outer"][1], json!({"nominal": 12.05, "measured": null}));
    assert_eq!(kept["process"]["fit"]["fitted"], Value::Null);
    for (key, value, path) in [
        ("material", json!(null), "/process/fit/material"),
        ("outer", json!([{"nominal": 0}]), "/process/fit/outer/0/nominal"),
        ("outer", json!([{"nominal": 12, "measured": -1}]), "/process/fit/outer/0/measured"),
        ("bore", json!({}), "/process/fit/bore"),
        ("length", json!([{"nominal": 60, "is": 59}]), "/process/fit/length/0/is"),
        ("outer", Value::from(vec![json!({"nominal": 12}); 101]), "/process/fit/outer"),
        ("fitted", json!({"measured": 12}), "/process/fit/fitted/outer_diameter"),
        ("steps", json!(1), "/process/fit/steps"),
    ] {
        let mut changed = readings.clone();
        changed[key] = value;
        let found: Vec<Value> = serde_json::from_str(&problems(&design(changed, json!({})))).unwrap();
        assert_eq!(found[0]["path"], json!(path), "{found:?}");
    }
}

#[test]
fn a_corrected_file_stands_where_the_tube_would() {
    // Far from the datum, where four thousandths of the way are more than a lift.
    let far = json!({"ports": [
        {"name": "a", "at": [500, 300, 400], "facing": [0, 0, 1], "fitting": "C12"},
        {"name": "b", "at": [590, 300, 490], "facing": [-1, 0, 0], "fitting": "C12"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": 20,
                  "route": [{"corner": [500, 300, 490]}]}]});
    let text = printed(&design(Value::Null, far));
    let spans = |compensated: bool| {
        let request =
            json!({"kind": "stl", "run": "r", "deviation": "fit", "stance": true, "compensated": compensated});
        let file = stl_io::read_stl(&mut Cursor::new(export_file(&text, &request.to_string()).unwrap())).unwrap();
        [0, 1, 2].map(|axis| {
            let all = file.vertices.iter().map(|vertex| f64::from(vertex[axis]));
            [all.clone().fold(f64::MAX, f64::min), all.fold(f64::MIN, f64::max)]
        })
    };
    let (tube, file) = (spans(false), spans(true));
    assert!((tube[2][0] - file[2][0]).abs() < 0.02, "{tube:?} {file:?}");
    for axis in [0, 1] {
        let middle = |spans: &[[f64; 2]; 3]| (spans[axis][0] + spans[axis][1]) / 2.0;
        assert!((middle(&tube) - middle(&file)).abs() < 0.02, "{tube:?} {file:?}");
    }
    assert!(file[2][1] > tube[2][1] + 0.1, "it is longer in the file");
}
