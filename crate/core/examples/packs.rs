//! Writes packs of made-up designs, of all ways to print, cut and whole, for the judges.
//!
//!     cargo run --example packs -- OUT COUNT SEED
//!
//! OUT gets, for each of COUNT designs, its pack and its report, and for each run in pieces an STL in the datum of each piece and
//! of the run put together; and `manifest.json`: `{ "packs": [ { "kind", "seed", "way", "deviation", "pack", "design", "report", "cut" } ] }`,
//! "cut" listing `{ "run", "pieces", "joined", "joints" }` as the split set does. Runs longer than 300 mm are left out. Three
//! designs of four say how each piece stands, so that no search is needed.

use serde_json::{Value, json};
use std::fs;
use std::path::{Path, PathBuf};
use std::thread;
use tubewright_core::engine::{self, Stages, export_file};
use tubewright_core::layout::Vec3;
use tubewright_core::strategies::{Chance, Generated, cut, designs};
use tubewright_core::tube::Joint;

type Fault = Box<dyn std::error::Error + Send + Sync>;

/// Longest run, and farthest from the datum, that is written, mm.
const LONGEST: f64 = 300.0;
/// Most runs of a design.
const MOST_RUNS: usize = 3;
/// Deviation of the meshes, mm: coarse, but for runs in pieces, where it is a share of the glue gap.
const COARSE: f64 = 0.1;
const OF_THE_GAP: f64 = 0.2;
/// Glue gaps, mm: wide ones, so that meshes may be coarse; narrow ones are the split set's.
const GAPS: [f64; 2] = [0.15, 0.4];
/// One design in so many has its stances looked for.
const SEARCHED: usize = 4;
/// Designs are written two at a time.
const WORKERS: usize = 2;

fn main() -> Result<(), Fault> {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [folder, count, seed] = &args[..] else {
        return Err("name a folder to write into, how many packs, and a seed".into());
    };
    let (folder, count, seed) = (PathBuf::from(folder), count.parse::<usize>()?, seed.parse::<u64>()?);
    if folder.exists() {
        fs::remove_dir_all(&folder)?;
    }
    fs::create_dir_all(&folder)?;
    let chosen = chosen(count, seed)?;
    let folder = &folder;
    let written: Vec<Result<Vec<Value>, Fault>> = thread::scope(|scope| {
        let workers: Vec<_> = (0..WORKERS)
            .map(|worker| {
                let mine = chosen.iter().enumerate().skip(worker).step_by(WORKERS);
                scope.spawn(move || mine.map(|(index, one)| one.write(folder, index)).collect())
            })
            .collect();
        workers.into_iter().map(|worker| worker.join().unwrap_or_else(|_| Err("a worker panicked".into()))).collect()
    });
    let packs: Vec<Value> = written.into_iter().collect::<Result<Vec<_>, _>>()?.concat();
    fs::write(folder.join("manifest.json"), json!({ "packs": packs }).to_string())?;
    println!("{} packs in {}", packs.len(), folder.display());
    Ok(())
}

/// A design with its way of printing and its stances stated.
struct Chosen {
    kind: &'static str,
    seed: u64,
    way: &'static str,
    text: String,
}

/// Designs that can be made and are small, cut ones and whole ones in turn.
fn chosen(count: usize, seed: u64) -> Result<Vec<Chosen>, Fault> {
    let mut chance = Chance::of(seed);
    let many = 8 * count;
    let mut found: Vec<Chosen> = Vec::new();
    for (whole, cut) in designs(seed, many).into_iter().zip(cut(seed, many)) {
        for design in [whole, cut] {
            if found.len() < count
                && let Some(one) = Chosen::of(&design, found.len(), &mut chance)
                    .map_err(|fault| format!("{}, seed {}: {fault}", design.kind, design.seed))?
            {
                found.push(one);
            }
        }
    }
    Ok(found)
}

/// What it is printed in and on: material, printer, way.
const PRINTED: [[&str; 3]; 7] = [
    ["tough resin", "medium resin", "resin"],
    ["PETG", "filament", "filament"],
    ["PA12, jet-fused", "jet-fusion powder", "powder"],
    ["clear resin", "small resin", "resin"],
    ["ASA", "filament", "filament"],
    ["PA12, laser-sintered", "laser-sintering powder", "powder"],
    ["high-temperature resin", "large resin", "resin"],
];

impl Chosen {
    /// A design made ready; none where nothing of it can be made, or where it is large.
    fn of(design: &Generated, index: usize, chance: &mut Chance) -> Result<Option<Self>, Fault> {
        let mut stated: Value = serde_json::from_str(&design.text)?;
        let [material, printer, way] = PRINTED[index % PRINTED.len()];
        stated["process"]["material"] = json!(material);
        stated["process"]["printer"] = json!(printer);
        if stated["process"]["joint"].is_object() {
            stated["process"]["joint"]["clearance"] = json!(chance.from(GAPS[0], GAPS[1]));
        }
        if !index.is_multiple_of(SEARCHED) {
            for run in stated["runs"].as_array_mut().into_iter().flatten() {
                run["stance"] = stance(chance);
                let cuts = run.get_mut("cuts").and_then(Value::as_array_mut).into_iter().flatten();
                cuts.for_each(|cut| cut["stance"] = stance(chance));
            }
        }
        let text = stated.to_string();
        let stages = Stages::of(&text)?;
        let small = stages
            .lines
            .iter()
            .all(|run| run.line.as_ref().is_none_or(|line| line.length <= LONGEST && line.reach() <= LONGEST));
        let few = (1..=MOST_RUNS).contains(&stages.lines.len()) && !stages.made().is_empty();
        Ok((small && few).then_some(Self { kind: design.kind, seed: design.seed, way, text }))
    }

    fn write(&self, folder: &Path, index: usize) -> Result<Value, Fault> {
        self.written(folder, index).map_err(|fault| format!("{}, seed {}: {fault}", self.kind, self.seed).into())
    }

    fn written(&self, folder: &Path, index: usize) -> Result<Value, Fault> {
        let stages = Stages::of(&self.text)?;
        let keep = |ending: &str, bytes: &[u8]| {
            let name = format!("{index:03}-{ending}");
            fs::write(folder.join(&name), bytes).map(|()| name)
        };
        let gap = stages.design.process.joint.clearance;
        let cut: Vec<usize> = stages.made().into_iter().filter(|run| !stages.cutting(*run).joints.is_empty()).collect();
        let deviation = if cut.is_empty() { COARSE } else { OF_THE_GAP * gap };
        let mut in_pieces = Vec::new();
        for run in cut {
            let name = &stages.design.runs[run].name;
            let mesh = |ending: String, piece: Value| -> Result<String, Fault> {
                let request = json!({ "kind": "stl", "run": name, "piece": piece, "deviation": deviation });
                Ok(keep(&ending, &export_file(&self.text, &request.to_string())?)?)
            };
            let pieces = stages.pieces(run).into_iter().map(|piece| -> Result<Value, Fault> {
                let file = mesh(format!("{run}-{}.stl", piece.index + 1), json!(piece.index + 1))?;
                Ok(json!({ "file": file, "material": piece.profile.material_volume() }))
            });
            let whole = stages.whole(run)?.profile.material_volume();
            in_pieces.push(json!({
                "run": name, "pieces": pieces.collect::<Result<Vec<_>, Fault>>()?,
                "joined": { "file": mesh(format!("{run}-joined.stl"), Value::Null)?, "material": whole },
                "joints": stages.cutting(run).joints.iter().map(|one| joint(&stages, run, one)).collect::<Vec<_>>(),
            }));
        }
        let pack = export_file(&self.text, &json!({ "kind": "pack", "deviation": deviation }).to_string())?;
        Ok(json!({
            "kind": self.kind, "seed": self.seed, "way": self.way, "deviation": deviation, "cut": in_pieces,
            "pack": keep("pack.zip", &pack)?,
            "design": keep("design.json", engine::normalise(&self.text)?.as_bytes())?,
            "report": keep("report.json", engine::report(&self.text)?.as_bytes())?,
        }))
    }
}

fn stance(chance: &mut Chance) -> Value {
    json!({ "up": list(&chance.direction()), "turn_deg": chance.from(-180.0, 180.0) })
}

/// As the split set tells of a joint.
fn joint(stages: &Stages<'_>, run: usize, joint: &Joint) -> Value {
    let size = &joint.size;
    let line = stages.lines[run].line.as_ref();
    let points: Vec<Value> = (0..=10)
        .filter_map(|step| line.map(|line| line.at(joint.mouth() + size.length * f64::from(step) / 10.0)))
        .map(|there| json!([list(&there.point), list(&there.tangent)]))
        .collect();
    json!({ "length": size.length, "clearance": size.clearance, "key": size.key, "ramp": size.ramp(), "step": size.step,
        "lead_in": size.lead_in, "tip": size.tip, "catch": size.catch, "collar": size.collar(), "points": points })
}

fn list(v: &Vec3) -> [f64; 3] {
    [v.x, v.y, v.z]
}
