//! Writes made-up designs with what the engine makes of them, for judges that know nothing of the engine.
//!
//!     cargo run --example sweep -- OUT COUNT SEED
//!
//! OUT gets, for each design, the design, its report, and an STL and a 3MF file of each run that can be made, and
//! `manifest.json`: `{ "cases": [ { "kind", "seed", "expect", "design", "canonical", "report", "runs": [ { "name", "made",
//! "deviation", "stl", "3mf", "outer_diameter", "bore", "length_mm", "material_mm3", "known_length_mm" } ] } ] }`.
//! Of every so many designs that can be made there is a `coupon` too, `{ "3mf", "outer_diameter", "bore", "ends", "corrected" }`, the
//! last the STL of its first run corrected by a made-up coupon. `packs` lists a pack of each demo that ships, `{ "pack", "report", "design" }`. File names are relative to OUT; those of a run that is not made are null. Some designs' runs are listed once for
//! each deviation of a series, so that a judge can see the error follow what was asked for.

use serde_json::{Value, json};
use std::fs;
use std::path::{Path, PathBuf};
use tubewright_core::engine;
use tubewright_core::strategies::{Expect, Generated, swept};

type Fault = Box<dyn std::error::Error>;

/// The designs, of the first, that are meshed at each of [`SERIES`], mm: with bends and without, wide and close.
const IN_SERIES: [usize; 6] = [1, 4, 7, 10, 13, 16];
/// Of every so many designs the coupon is judged too.
const WITH_COUPON: usize = 16;
/// Deviation of the packs' meshes, mm.
const PACK_DEVIATION: f64 = 0.02;
const SERIES: [f64; 4] = [0.04, 0.02, 0.01, 0.005];

fn main() -> Result<(), Fault> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [folder, count, seed] = &args[..] else {
        return Err("name a folder to write into, how many designs, and a seed".into());
    };
    let folder = PathBuf::from(folder);
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    let (mut cases, mut coupons) = (Vec::new(), Vec::new());
    for (number, design) in swept(seed.parse()?, count.parse()?).iter().enumerate() {
        let deviations: &[f64] = if IN_SERIES.contains(&number) { &SERIES } else { &[design.deviation] };
        let case = case(&folder, &format!("{:04}", number + 1), design, deviations)
            .map_err(|fault| format!("design {} ({}, seed {}): {fault}", number + 1, design.kind, design.seed))?;
        cases.push(case);
        if number % WITH_COUPON == 0
            && let Some(coupon) = coupon(&folder, &format!("{:04}", number + 1), design)?
        {
            coupons.push(coupon);
        }
    }
    let packs = packs(&folder)?;
    let made =
        cases.iter().flat_map(|case| case["runs"].as_array()).flatten().filter(|run| run["made"] == true).count();
    fs::write(
        folder.join("manifest.json"),
        serde_json::to_string_pretty(&json!({ "cases": cases, "coupons": coupons, "packs": packs }))?,
    )?;
    println!("{} designs and {made} made runs in {}", cases.len(), folder.display());
    Ok(())
}

fn case(folder: &Path, number: &str, design: &Generated, deviations: &[f64]) -> Result<Value, Fault> {
    let keep = |name: String, bytes: &[u8]| fs::write(folder.join(&name), bytes).map(|()| name);
    let canonical = engine::normalise(&design.text).map_err(|refusal| refusal.to_string())?;
    let report = engine::report(&design.text).map_err(|refusal| refusal.to_string())?;
    let (stated, found): (Value, Value) = (serde_json::from_str(&design.text)?, serde_json::from_str(&report)?);
    let mut runs = Vec::new();
    let entries = found["runs"].as_array().into_iter().flatten().enumerate();
    for ((place, entry), deviation) in entries.flat_map(|entry| deviations.iter().map(move |each| (entry, each))) {
        let (name, tube) = (&entry["name"], &stated["runs"][place]["tube"]);
        let mut run = json!({
            "name": name, "made": entry["made"], "deviation": deviation, "stl": null, "3mf": null,
            "outer_diameter": tube["outer_diameter"], "bore": tube["bore"],
            "length_mm": entry["length_mm"], "material_mm3": entry["material_mm3"],
            "known_length_mm": design.lengths.get(place).copied().flatten(),
        });
        if entry["made"] == true {
            for kind in ["stl", "3mf"] {
                let request = json!({ "kind": kind, "run": name, "deviation": deviation }).to_string();
                let bytes = engine::export_file(&design.text, &request).map_err(|refusal| refusal.to_string())?;
                run[kind] = keep(format!("{number}-{}.{kind}", runs.len() + 1), &bytes)?.into();
            }
        }
        runs.push(run);
    }
    let expect = match design.expect {
        Expect::Made => "made",
        Expect::Stopped => "stopped",
        Expect::Either => "either",
    };
    Ok(json!({
        "kind": design.kind, "seed": design.seed, "expect": expect, "runs": runs,
        "design": keep(format!("{number}-design.json"), design.text.as_bytes())?,
        "canonical": keep(format!("{number}-canonical.json"), canonical.as_bytes())?,
        "report": keep(format!("{number}-report.json"), report.as_bytes())?,
    }))
}

/// The pack of each demo that ships.
fn packs(folder: &Path) -> Result<Vec<Value>, Fault> {
    let presets: Value = serde_json::from_str(&engine::presets())?;
    let demos = presets["demos"].as_array().into_iter().flatten().zip(1..);
    demos
        .map(|(demo, number)| {
            let keep = |ending: &str, bytes: &[u8]| {
                let name = format!("demo-{number}-{ending}");
                fs::write(folder.join(&name), bytes).map(|()| name)
            };
            let text = demo["design"].to_string();
            let asked = json!({ "kind": "pack", "deviation": PACK_DEVIATION }).to_string();
            let pack = engine::export_file(&text, &asked).map_err(|refusal| refusal.to_string())?;
            let report = engine::report(&text).map_err(|refusal| refusal.to_string())?;
            Ok(json!({
                "pack": keep("pack.zip", &pack)?,
                "report": keep("report.json", report.as_bytes())?,
                "design": keep("design.json", engine::normalise(&text)?.as_bytes())?,
            }))
        })
        .collect()
}

/// The coupon of a design's first run, and that run corrected by a coupon; none where the run cannot be made.
fn coupon(folder: &Path, number: &str, design: &Generated) -> Result<Option<Value>, Fault> {
    let mut stated: Value = serde_json::from_str(&engine::normalise(&design.text)?)?;
    let run = stated["runs"][0].clone();
    if engine::tube_mesh(&design.text, run["name"].as_str().unwrap_or_default(), 0.05).is_err() {
        return Ok(None);
    }
    let request = json!({ "kind": "coupon", "run": run["name"], "deviation": 0.01 }).to_string();
    let file = format!("{number}-coupon.3mf");
    fs::write(folder.join(&file), engine::export_file(&design.text, &request)?)?;
    let process = &stated["process"];
    stated["process"]["fit"] = json!({
        "material": process["material"]["name"], "printer": process["printer"]["name"],
        "outer": [{ "nominal": 12, "measured": 12.06 }], "bore": [{ "nominal": 8, "measured": 7.96 }],
        "length": [{ "nominal": 60, "measured": 59.8 }],
    });
    let request = json!({ "kind": "stl", "run": run["name"], "deviation": 0.02, "compensated": true }).to_string();
    let corrected = format!("{number}-corrected.stl");
    fs::write(folder.join(&corrected), engine::export_file(&stated.to_string(), &request)?)?;
    Ok(Some(json!({
        "kind": design.kind, "seed": design.seed, "3mf": file, "corrected": corrected,
        "outer_diameter": run["tube"]["outer_diameter"], "bore": run["tube"]["bore"], "ends": run["ends"],
    })))
}
