//! Writes what the native engine answers to many calls, so that the module built for the page can be held against it.
//!
//!     cargo run --example golden -- OUT TEXT...
//!
//! The texts are the given files (folders: every file in them), the demo designs that ship, and a made-up design of each
//! kind of the danger zone. OUT gets `calls.json`,
//! a list of `{ "text", "call", "args", "answer" | "refused" }`; `text` and `answer` name files beside it.

use serde_json::{Map, Value, json};
use std::fs;
use std::path::{Path, PathBuf};
use tubewright_core::design::Refusal;
use tubewright_core::engine;
use tubewright_core::mesh::Mesh;
use tubewright_core::strategies::{KINDS, designs};

const DEVIATIONS: [f64; 2] = [0.01, 0.05];
const SEED: u64 = 3;

type Fault = Box<dyn std::error::Error>;

fn main() -> Result<(), Fault> {
    let mut args = std::env::args_os().skip(1).map(PathBuf::from);
    let folder = args.next().ok_or("name a folder to write into, then the texts")?;
    fs::create_dir_all(&folder)?;
    let mut record = Record { folder, calls: Vec::new(), files: 0 };
    record.plain()?;
    for text in demos()? {
        record.design(text, &DEVIATIONS)?;
    }
    record.design(measured(&demos()?[0])?, &DEVIATIONS)?;
    record.pieces(in_pieces())?;
    for made_up in designs(SEED, KINDS.len()) {
        record.design(made_up.text, &[made_up.deviation])?;
    }
    for path in args {
        for file in files(&path)? {
            // The engine takes text; what is not UTF-8 never reaches it.
            if let Ok(text) = fs::read_to_string(&file) {
                record.design(text, &DEVIATIONS)?;
            }
        }
    }
    let calls = serde_json::to_string_pretty(&record.calls)?;
    fs::write(record.folder.join("calls.json"), calls)?;
    println!("{} calls recorded", record.calls.len());
    Ok(())
}

struct Record {
    folder: PathBuf,
    calls: Vec<Value>,
    files: usize,
}

impl Record {
    /// The calls that take no design.
    fn plain(&mut self) -> Result<(), Fault> {
        self.keep(None, "vocabulary", json!([]), Ok(engine::vocabulary().into()))?;
        self.keep(None, "presets", json!([]), Ok(engine::presets().into()))?;
        for text in ["TUBE 12".to_owned(), "https://example.org/#design=1.".repeat(40), "é".repeat(1_500)] {
            self.keep(None, "codeOf", json!([text]), Ok(engine::code_of(&text).into()))?;
        }
        Ok(())
    }

    /// Every call on one text; meshes at each of the deviations, files at the first.
    fn design(&mut self, text: String, deviations: &[f64]) -> Result<(), Fault> {
        let file = self.write("text", text.as_bytes())?;
        let of = Some(file.as_str());
        self.keep(of, "normalise", json!([]), engine::normalise(&text).map(String::into_bytes))?;
        self.keep(of, "problems", json!([]), Ok(engine::problems(&text).into()))?;
        self.keep(of, "scene", json!([]), engine::scene(&text).map(String::into_bytes))?;
        let report = engine::report(&text);
        self.keep(of, "report", json!([]), report.clone().map(String::into_bytes))?;
        let report: Value = report.map_or(Value::Null, |text| serde_json::from_str(&text).unwrap_or_default());
        for run in listed(&report, "/runs").iter().filter_map(|run| run["name"].as_str()) {
            for &deviation in deviations {
                let mesh = engine::tube_mesh(&text, run, deviation).map(|mesh| bytes(&mesh));
                self.keep(of, "tubeMesh", json!([run, deviation]), mesh)?;
            }
            self.keep(of, "stances", json!([run]), engine::stances(&text, run).map(String::into_bytes))?;
            self.file(of, &text, json!({ "kind": "stl", "run": run, "deviation": deviations.last(), "stance": true }))?;
            let asked = json!({ "run": run, "deviation": "fit" }).to_string();
            self.keep(of, "inspect", json!([asked]), engine::inspect(&text, &asked).map(String::into_bytes))?;
            for kind in ["stl", "3mf", "bend-table", "points", "drawing"] {
                self.file(of, &text, json!({ "kind": kind, "run": run, "deviation": deviations.first() }))?;
            }
            self.file(of, &text, json!({ "kind": "coupon", "run": run, "deviation": 0.05 }))?;
            self.file(
                of,
                &text,
                json!({ "kind": "coupon", "run": run, "format": "stl", "count": 3, "step": 0.1, "deviation": 0.05 }),
            )?;
        }
        for kind in ["3mf", "design", "all", "pack"] {
            self.file(of, &text, json!({ "kind": kind, "deviation": deviations.last() }))?;
        }
        for kind in ["loss-plot", "margins-plot", "stiffness-plot"] {
            for width in [320, 760] {
                self.file(of, &text, json!({ "kind": kind, "width": width }))?;
            }
        }
        self.keep(of, "plates", json!([]), engine::plates(&text).map(String::into_bytes))?;
        self.file(of, &text, json!({ "kind": "plate", "plate": 1, "deviation": deviations.last() }))?;
        let variants = json!({ "outer_diameters": [12, 14.5], "bores": [7, 12.1], "materials": ["PLA"] }).to_string();
        let table = engine::variants(&text, &variants).map(String::into_bytes);
        self.keep(of, "variants", json!([variants]), table)?;
        for finding in listed(&report, "/findings").iter().filter(|finding| !finding["fix"].is_null()) {
            let patch = finding["fix"].to_string();
            let patched = engine::apply(&text, &patch).map(String::into_bytes);
            self.keep(of, "apply", json!([patch]), patched)?;
        }
        Ok(())
    }

    /// What is asked of a run in pieces, and where to cut it.
    fn pieces(&mut self, text: String) -> Result<(), Fault> {
        self.design(text.clone(), &[0.05])?;
        let file = self.write("text", text.as_bytes())?;
        let of = Some(file.as_str());
        self.keep(of, "cuts", json!(["long"]), engine::cuts(&text, "long").map(String::into_bytes))?;
        self.file(of, &text, json!({ "kind": "pack", "deviation": 0.05, "words": in_brackets()? }))?;
        for piece in 1..=3 {
            let stances = engine::piece_stances(&text, "long", piece).map(String::into_bytes);
            self.keep(of, "stances", json!(["long", piece]), stances)?;
            let asked = json!({ "run": "long", "piece": piece, "deviation": 0.05 }).to_string();
            self.keep(of, "inspect", json!([asked]), engine::inspect(&text, &asked).map(String::into_bytes))?;
            for stance in [false, true] {
                let of_it =
                    json!({ "kind": "stl", "run": "long", "piece": piece, "deviation": 0.05, "stance": stance });
                self.file(of, &text, of_it)?;
            }
        }
        Ok(())
    }

    fn file(&mut self, of: Option<&str>, text: &str, request: Value) -> Result<(), Fault> {
        let request = request.to_string();
        self.keep(of, "exportFile", json!([request]), engine::export_file(text, &request))?;
        self.keep(of, "fileName", json!([request]), engine::file_name(text, &request).map(String::into_bytes))
    }

    fn keep(
        &mut self,
        text: Option<&str>,
        call: &str,
        args: Value,
        answer: Result<Vec<u8>, Refusal>,
    ) -> Result<(), Fault> {
        let mut entry = json!({ "text": text, "call": call, "args": args });
        match answer {
            Ok(bytes) => entry["answer"] = self.write("answer", &bytes)?.into(),
            Err(refusal) => entry["refused"] = json!({ "path": refusal.path, "message": refusal.message }),
        }
        self.calls.push(entry);
        Ok(())
    }

    fn write(&mut self, kind: &str, bytes: &[u8]) -> Result<String, Fault> {
        self.files += 1;
        let name = format!("{kind}-{:05}", self.files);
        fs::write(self.folder.join(&name), bytes)?;
        Ok(name)
    }
}

/// A language made up from all that the engine says in files, as a request brings it along.
fn in_brackets() -> Result<Value, Fault> {
    let vocabulary: Value = serde_json::from_str(&engine::vocabulary())?;
    let steps = listed(&vocabulary, "/first_fill").iter().flat_map(|step| listed(step, ""));
    let rows: Map<String, Value> = listed(&vocabulary, "/files")
        .iter()
        .chain(listed(&vocabulary, "/cautions"))
        .chain(steps)
        .chain(vocabulary["findings"].as_object().into_iter().flatten().flat_map(|(_, row)| listed(row, "/messages")))
        .filter_map(Value::as_str)
        .map(|english| (english.to_owned(), format!("«{english}»").into()))
        .collect();
    Ok(json!({ "language": "qaa", "decimal": ",", "quotes": ["‹", "›"], "words": rows }))
}

/// A design whose files are corrected by a coupon.
fn measured(text: &str) -> Result<String, Fault> {
    let mut design: Value = serde_json::from_str(&engine::normalise(text).map_err(|refusal| refusal.message)?)?;
    let process = &mut design["process"];
    process["fit"] = json!({
        "material": process["material"]["name"], "printer": process["printer"]["name"],
        "outer": [{"nominal": 12, "measured": 12.07}, {"nominal": 12, "measured": 12.1}, {"nominal": 12.05, "measured": 12.13}],
        "bore": [{"nominal": 8, "measured": 7.94}], "length": [{"nominal": 60, "measured": 59.77}],
        "fitted": {"outer_diameter": 12, "measured": 12.03}
    });
    Ok(design.to_string())
}

/// Two legs and a wide bend, cut on a leg and in the bend.
fn in_pieces() -> String {
    json!({"format": "tubewright-design", "version": 1, "name": "in pieces",
        "fittings": [{"name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [1, 0.2, 0.1], "fitting": "F"},
                  {"name": "b", "at": [200, 170, 30], "facing": [0, -1, 0], "fitting": "F"}],
        "runs": [{"name": "long", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": 60,
            "route": [{"corner": [200, 0, 30]}], "cuts": [{"at": 80}, {"at": 190}]}],
        "process": {"printer": "small resin"}})
    .to_string()
}

fn demos() -> Result<Vec<String>, Fault> {
    let shipped: Value = serde_json::from_str(&engine::presets())?;
    Ok(listed(&shipped, "/demos").iter().map(|demo| demo["design"].to_string()).collect())
}

fn listed<'a>(value: &'a Value, pointer: &str) -> &'a [Value] {
    value.pointer(pointer).and_then(Value::as_array).map_or(&[], Vec::as_slice)
}

/// The file itself, or the files of a folder in the order of their names.
fn files(path: &Path) -> Result<Vec<PathBuf>, Fault> {
    if !path.is_dir() {
        return Ok(vec![path.to_path_buf()]);
    }
    let mut found = Vec::new();
    for entry in fs::read_dir(path)? {
        found.push(entry?.path());
    }
    found.retain(|path| path.is_file());
    found.sort();
    Ok(found)
}

/// Positions, then indices, little-endian: as they lie in the arrays that the page gets.
fn bytes(mesh: &Mesh) -> Vec<u8> {
    let positions = mesh.positions.iter().flat_map(|value| value.to_le_bytes());
    positions.chain(mesh.indices.iter().flat_map(|value| value.to_le_bytes())).collect()
}
