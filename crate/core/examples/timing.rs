//! Times the native engine on designs: from the text to the report, the mesh, the bytes of an STL file.
//!
//!     cargo run --release --example timing -- REPEATS DESIGN.json...
//!
//! Prints JSON: `{ design: { deviation: { "report_ms", "mesh_ms", "stl_ms" } } }`, medians; each time is of one whole
//! call, text in and answer out, on the design's first run.

use serde_json::{Map, Value, json};
use std::hint::black_box;
use std::path::Path;
use std::time::Instant;
use tubewright_core::design::parse;
use tubewright_core::engine;

type Fault = Box<dyn std::error::Error>;

fn main() -> Result<(), Fault> {
    let mut args = std::env::args().skip(1);
    let repeats: usize = args.next().ok_or("say how often, then name the designs")?.parse()?;
    let mut table = Map::new();
    for path in args {
        let text = std::fs::read_to_string(&path)?;
        let stem = Path::new(&path).file_stem().unwrap_or_default().to_string_lossy().into_owned();
        table.insert(stem, timed(&text, repeats)?);
    }
    println!("{}", Value::from(table));
    Ok(())
}

fn timed(text: &str, repeats: usize) -> Result<Value, Fault> {
    let run = parse(text)?.runs.into_iter().next().ok_or("the design has no run")?.name;
    let mut rows = Map::new();
    for deviation in [0.01, 0.05] {
        let request = json!({ "kind": "stl", "run": run, "deviation": deviation }).to_string();
        let row = json!({
            "report_ms": median(repeats, || engine::report(text).map(drop))?,
            "mesh_ms": median(repeats, || engine::tube_mesh(text, &run, deviation).map(|mesh| drop(black_box(mesh))))?,
            "stl_ms": median(repeats, || engine::export_file(text, &request).map(|bytes| drop(black_box(bytes))))?,
        });
        rows.insert(deviation.to_string(), row);
    }
    Ok(rows.into())
}

/// Milliseconds, after as many calls to warm up.
fn median<E>(repeats: usize, call: impl Fn() -> Result<(), E>) -> Result<f64, E> {
    for _ in 0..repeats {
        call()?;
    }
    let mut times = Vec::with_capacity(repeats);
    for _ in 0..repeats {
        let start = Instant::now();
        call()?;
        times.push(start.elapsed().as_secs_f64() * 1e3);
    }
    times.sort_by(f64::total_cmp);
    Ok(times.get(repeats / 2).copied().unwrap_or(f64::NAN))
}
