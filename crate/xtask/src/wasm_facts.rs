//! What must hold of the shipped module and of every other file of the site.
//!
//! The module computes from what it is given and draws on the canvas it is given: it has no way to the network, to a
//! clock, to chance or to storage, and an import of such a thing fails here before anyone has to find it.

use crate::step::remark;
use crate::{place, single_file, tree};
use anyhow::{Context, Result, bail};
use flate2::{Compression, write::GzEncoder};
use std::fs;
use std::io::Write;
use wasmparser::{Parser, Payload, Validator, WasmFeatures};

/// The engine's size on the wire, bytes: the project's own budget.
const MOST_ENGINE: usize = 1_050_000;
/// Any other file of the site, bytes as it lies.
const MOST_OTHER: u64 = 200_000;
/// The page in one file, bytes as it lies.
const MOST_SINGLE: u64 = 2_500_000;
/// The glue that wasm-bindgen writes; the module may import from nowhere else.
const GLUE: &str = "./engine_bg.js";
/// Words that no import's name may hold.
const FORBIDDEN: [&str; 19] = [
    "fetch",
    "xmlhttp",
    "websocket",
    "eventsource",
    "beacon",
    "worker",
    "importscripts",
    "eval",
    "newnoargs",
    "date",
    "performance",
    "now",
    "random",
    "crypto",
    "storage",
    "indexeddb",
    "cookie",
    "history",
    "navigator",
];

/// Checks all of it and says the sizes.
pub fn check() -> Result<()> {
    let site = place::site();
    let module = fs::read(site.join("engine_bg.wasm")).context("no engine in target/site; run `cargo xtask build`")?;
    let faults = [module_faults(&module)?, size_faults(&module)?, file_faults()?].concat();
    if !faults.is_empty() {
        bail!("{}", faults.join("\n"));
    }
    Ok(())
}

fn module_faults(module: &[u8]) -> Result<Vec<String>> {
    let mut faults = Vec::new();
    for payload in Parser::new(0).parse_all(module) {
        match payload? {
            Payload::ImportSection(imports) => {
                for import in imports.into_imports() {
                    let import = import?;
                    faults.extend(import_fault(import.module, import.name));
                }
            }
            Payload::CustomSection(section) if ["name", "producers"].contains(&section.name()) => {
                faults.push(format!("the section `{}` was left in", section.name()));
            }
            _ => {}
        }
    }
    let mut known = WasmFeatures::WASM1 | WasmFeatures::BULK_MEMORY | WasmFeatures::SIGN_EXTENSION;
    known |= WasmFeatures::SATURATING_FLOAT_TO_INT | WasmFeatures::MULTI_VALUE | WasmFeatures::REFERENCE_TYPES;
    if let Err(fault) = Validator::new_with_features(known).validate_all(module) {
        faults.push(format!("it needs what older browsers do not have: {fault}"));
    }
    Ok(faults)
}

fn import_fault(module: &str, name: &str) -> Option<String> {
    if module != GLUE {
        return Some(format!("it imports `{name}` from `{module}`, not from its own glue"));
    }
    let plain = name.to_lowercase();
    let word = FORBIDDEN.iter().find(|word| plain.contains(*word))?;
    Some(format!("it imports `{name}`: an engine has no use for `{word}`"))
}

fn size_faults(module: &[u8]) -> Result<Vec<String>> {
    let mut gzip = GzEncoder::new(Vec::new(), Compression::best());
    gzip.write_all(module)?;
    let wire = gzip.finish()?.len();
    remark(format!("engine_bg.wasm: {} bytes, {wire} gzipped of at most {MOST_ENGINE}", module.len()));
    Ok((wire > MOST_ENGINE)
        .then(|| format!("{wire} bytes gzipped are over the budget of {MOST_ENGINE}"))
        .into_iter()
        .collect())
}

fn file_faults() -> Result<Vec<String>> {
    let site = place::site();
    let mut faults = Vec::new();
    for file in tree::files(&site, &|_| true)? {
        let size = fs::metadata(site.join(&file))?.len();
        let most = match &*file.to_string_lossy() {
            "engine_bg.wasm" => continue,
            single_file::NAME => MOST_SINGLE,
            _ => MOST_OTHER,
        };
        if size > most {
            faults.push(format!("{} has {size} bytes, more than {most}", file.display()));
        }
    }
    Ok(faults)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn imports_from_elsewhere_and_of_the_network_are_faults() {
        assert!(import_fault("./engine_bg.js", "__wbg_drawElements_12ab").is_none());
        assert!(import_fault("env", "__wbg_drawElements_12ab").is_some());
        assert!(import_fault("./engine_bg.js", "__wbg_fetch_12ab").is_some());
        assert!(import_fault("./engine_bg.js", "__wbg_now_12ab").is_some());
    }
}
