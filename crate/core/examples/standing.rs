//! Writes made-up tubes as they stand on a resin printer's plate, with the cups and pools that are told of them.
//!
//!     cargo run --example standing -- OUT COUNT SEED
//!
//! OUT gets, for each of COUNT tubes, an STL on the plate and one in the datum, both of few triangles, and `manifest.json`:
//! `{ "tubes": [ { "kind", "seed", "up", "turn_deg", "lift_mm", "bore", "length_mm", "meets_itself", "stood", "datum", "ends",
//! "cups", "pools" } ] }`. A cup or pool is `{ "span", "at", "depth", "volume" }`, its place in
//! the datum; "ends" are the centreline's first and last points with their tangents, in the datum. Runs longer than 120
//! bores are left out. Every third tube stands on one of its ends, without a lift, so that the plate closes it.

use serde_json::{Value, json};
use std::fs;
use std::path::{Path, PathBuf};
use tubewright_core::engine::{Stages, export_file};
use tubewright_core::layout::Vec3;
use tubewright_core::print::{Pocket, Subject, frame_of};
use tubewright_core::quantity::{LEAST_DEVIATION, MOST_DEVIATION};
use tubewright_core::strategies::{Chance, Generated, designs};

type Fault = Box<dyn std::error::Error>;

/// Longest run that is written, in bores.
const LONGEST: f64 = 120.0;
/// Deviation of the meshes, in bores.
const COARSE: f64 = 0.01;
/// One tube in so many stands on an end.
const ON_AN_END: usize = 3;

fn main() -> Result<(), Fault> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [folder, count, seed] = &args[..] else {
        return Err("name a folder to write into, how many tubes, and a seed".into());
    };
    let (folder, count, seed) = (PathBuf::from(folder), count.parse::<usize>()?, seed.parse()?);
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    let mut chance = Chance::of(seed);
    let mut tubes = Vec::new();
    // Not all can be made, and some are too long.
    for design in designs(seed, 5 * count) {
        if tubes.len() == count {
            break;
        }
        let stood = tube(&folder, tubes.len(), &design, &mut chance)
            .map_err(|fault| format!("{}, seed {}: {fault}", design.kind, design.seed))?;
        tubes.extend(stood);
    }
    fs::write(folder.join("manifest.json"), json!({ "tubes": tubes }).to_string())?;
    println!("{} tubes in {}", tubes.len(), folder.display());
    Ok(())
}

/// A design's first run on the plate; none where it cannot be made or is too long.
fn tube(folder: &Path, index: usize, design: &Generated, chance: &mut Chance) -> Result<Option<Value>, Fault> {
    let mut stated: Value = serde_json::from_str(&design.text)?;
    let on_an_end = index.is_multiple_of(ON_AN_END);
    stated["process"] = json!({ "material": "tough resin", "printer": { "name": "p", "build_volume": [400, 400, 400],
        "least_wall": 1, "margin": if on_an_end { 0 } else { 5 }, "layer_mm": 0.05, "overhang_deg": 19, "bore_deg": 30,
        "seconds_per_layer": 8 } });
    let text = stated.to_string();
    let stages = Stages::of(&text)?;
    let bore = stages.design.runs[0].tube.bore;
    let (Some(line), true) = (&stages.lines[0].line, stages.is_made(0)) else { return Ok(None) };
    if line.length > LONGEST * bore {
        return Ok(None);
    }
    let ends = [0.0, line.length].map(|s| line.at(s)).map(|there| [there.point, there.tangent]);
    let up = match (on_an_end, chance.once_in(2)) {
        (true, first) => {
            if first {
                ends[0][1]
            } else {
                -ends[1][1]
            }
        }
        (false, _) => chance.direction(),
    };
    let turn_deg = chance.from(-180.0, 180.0);
    let subject = Subject::of(&stages, 0)?;
    let standing = subject.standing(frame_of(list(&up), turn_deg));
    let name = &stages.design.runs[0].name;
    let file = |called: &str, stance: Value| -> Result<String, Fault> {
        let request = json!({ "kind": "stl", "run": name, "deviation": (COARSE * bore).clamp(LEAST_DEVIATION, MOST_DEVIATION), "stance": stance });
        let called = format!("{index:04}-{called}.stl");
        fs::write(folder.join(&called), export_file(&text, &request.to_string())?)?;
        Ok(called)
    };
    let meets_itself = stages.findings().iter().any(|finding| finding.code == "meets_itself");
    Ok(Some(json!({
        "kind": design.kind, "seed": design.seed, "up": list(&up), "turn_deg": turn_deg,
        "lift_mm": subject.judge.room.lift, "bore": bore, "length_mm": line.length, "meets_itself": meets_itself,
        "stood": file("stood", json!({ "up": list(&up), "turn_deg": turn_deg }))?, "datum": file("datum", json!(false))?,
        "ends": ends.map(|end| end.map(|v| list(&v))),
        "cups": standing.cups.iter().map(pocket).collect::<Vec<_>>(),
        "pools": standing.pools.iter().map(pocket).collect::<Vec<_>>(),
    })))
}

fn pocket(pocket: &Pocket) -> Value {
    json!({ "span": pocket.span, "at": list(&pocket.at), "depth": pocket.depth, "volume": pocket.volume })
}

fn list(v: &Vec3) -> [f64; 3] {
    [v.x, v.y, v.z]
}
