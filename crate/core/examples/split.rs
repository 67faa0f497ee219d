//! Writes made-up runs in pieces, for the judges: each piece, and the run put together.
//!
//!     cargo run --release --example split -- OUT COUNT SEED
//!
//! OUT gets an STL of each piece and of each run put together, and `manifest.json`:
//! `{ "runs": [ { "kind", "seed", "deviation", "pieces", "joined", "joints" } ] }`. A piece is `{ "file", "material" }`, a joint
//! `{ "length", "clearance", "key", "step", "lead_in", "tip", "points" }`, points being eleven of its axis from the socket's mouth to
//! the seam, each with its tangent.

use serde_json::{Value, json};
use std::fs;
use std::path::{Path, PathBuf};
use tubewright_core::engine::{Stages, export_file};
use tubewright_core::layout::Vec3;
use tubewright_core::strategies::{Generated, cut};

type Fault = Box<dyn std::error::Error>;

/// Deviation of the meshes, mm: well below any glue gap.
const DEVIATION: f64 = 0.004;
/// Longest run that is written, mm.
const LONGEST: f64 = 600.0;

fn main() -> Result<(), Fault> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [folder, count, seed] = &args[..] else {
        return Err("name a folder to write into, how many runs, and a seed".into());
    };
    let (folder, count, seed) = (PathBuf::from(folder), count.parse::<usize>()?, seed.parse()?);
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    let mut runs = Vec::new();
    // Not all have room for a joint.
    for design in cut(seed, 20 * count) {
        if runs.len() == count {
            break;
        }
        runs.extend(
            run(&folder, runs.len(), &design)
                .map_err(|fault| format!("{}, seed {}: {fault}", design.kind, design.seed))?,
        );
    }
    fs::write(folder.join("manifest.json"), json!({ "runs": runs }).to_string())?;
    println!("{} runs in {}", runs.len(), folder.display());
    Ok(())
}

/// A design's first run; none where it cannot be made, has no joint or is too long or too far out for such fine meshes.
fn run(folder: &Path, index: usize, design: &Generated) -> Result<Option<Value>, Fault> {
    let stages = Stages::of(&design.text)?;
    let (Some(line), true) = (&stages.lines[0].line, stages.is_made(0)) else { return Ok(None) };
    let joints = stages.cutting(0).joints;
    if joints.is_empty() || line.length > LONGEST || line.reach() > LONGEST {
        return Ok(None);
    }
    let name = &stages.design.runs[0].name;
    let write = |called: String, piece: Value| -> Result<String, Fault> {
        let request = json!({ "kind": "stl", "run": name, "piece": piece, "deviation": DEVIATION });
        fs::write(folder.join(&called), export_file(&design.text, &request.to_string())?)?;
        Ok(called)
    };
    let mut pieces = Vec::new();
    for piece in stages.pieces(0) {
        let file = write(format!("{index:03}-{}.stl", piece.index + 1), json!(piece.index + 1))?;
        pieces.push(json!({ "file": file, "material": piece.profile.material_volume() }));
    }
    let joint = |joint: &tubewright_core::tube::Joint| {
        let points: Vec<Value> = (0..=10)
            .map(|step| line.at(joint.mouth() + joint.size.length * f64::from(step) / 10.0))
            .map(|there| json!([list(&there.point), list(&there.tangent)]))
            .collect();
        let size = &joint.size;
        json!({ "length": size.length, "clearance": size.clearance, "key": size.key, "ramp": size.ramp(), "step": size.step,
            "lead_in": size.lead_in, "tip": size.tip, "catch": size.catch, "collar": size.collar(), "points": points })
    };
    Ok(Some(json!({
        "kind": design.kind, "seed": design.seed, "deviation": DEVIATION, "pieces": pieces,
        "joined": { "file": write(format!("{index:03}-joined.stl"), Value::Null)?,
            "material": stages.profile(0, line.length).material_volume() },
        "joints": joints.iter().map(joint).collect::<Vec<_>>(),
    })))
}

fn list(v: &Vec3) -> [f64; 3] {
    [v.x, v.y, v.z]
}
