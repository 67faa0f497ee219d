//! The engine as the page loads it: compiled, bound to JavaScript, shrunk; kept by what went in.

use crate::step::{remark, step};
use crate::wasm_rust::{self, WasmRust};
use crate::{install, place, tree};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};
use wasm_bindgen_cli_support::Bindgen;

/// The bindings change with wasm-bindgen's version, which the manifest of xtask pins.
const BINDGEN: &[u8] = include_bytes!("../Cargo.toml");
const PACKAGE: &str = "tubewright-page";

/// How much is done to the engine.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Effort {
    /// As it ships: one unit, shrunk by wasm-opt.
    Shipped,
    /// As soon as possible after an edit.
    Quick,
}

/// What current browsers and Node 20 understand and rustc uses; nothing newer is let in.
const OPTIMISE: [&str; 8] = [
    "-O3",
    "--mvp-features",
    "--enable-bulk-memory",
    "--enable-mutable-globals",
    "--enable-nontrapping-float-to-int",
    "--enable-sign-ext",
    "--enable-reference-types",
    "--enable-multivalue",
];

/// Makes `engine.js`, `engine.d.ts` and `engine_bg.wasm`; answers the folder that holds them.
pub fn engine_module(effort: Effort) -> Result<PathBuf> {
    let (profile, options) = match effort {
        Effort::Shipped => ("wasm", &OPTIMISE[..]),
        Effort::Quick => ("quick", &[][..]),
    };
    let compiled = step("compile", &format!("the engine to WebAssembly (profile {profile})"), || {
        WasmRust::find()?.cargo("build").args(["--quiet", "--package", PACKAGE, "--profile", profile]).run()?;
        Ok(wasm_rust::module(PACKAGE, profile))
    })?;
    let binaryen = place::at("crate/xtask/node");
    let lock = fs::read(binaryen.join("package-lock.json")).context("crate/xtask/node has no package-lock.json")?;
    let module = fs::read(&compiled).with_context(|| format!("no {}", compiled.display()))?;
    let print = tree::fingerprint([&module[..], &lock, options.join(" ").as_bytes(), BINDGEN]);
    let kept = place::target("engine").join(&print[..16]);
    if kept.exists() {
        remark("engine.js and engine_bg.wasm: unchanged");
        return Ok(kept);
    }
    let fresh = place::target("engine.new");
    tree::remove(&fresh)?;
    step("bind", "JavaScript bindings with wasm-bindgen, names and producers taken out", || bind(&compiled, &fresh))?;
    if effort == Effort::Shipped {
        step("shrink", "wasm-opt -O3 (npm package binaryen)", || optimise(&binaryen, &fresh.join("engine_bg.wasm")))?;
    }
    tree::remove(&place::target("engine"))?;
    fs::create_dir_all(place::target("engine"))?;
    tree::swap(&fresh, &kept)?;
    Ok(kept)
}

fn bind(module: &Path, folder: &Path) -> Result<()> {
    Bindgen::new()
        .input_path(module)
        .out_name("engine")
        .web(true)?
        .typescript(true)
        .remove_name_section(true)
        .remove_producers_section(true)
        .generate(folder)
}

fn optimise(list: &Path, module: &Path) -> Result<()> {
    let modules = install::npm_in_target(list, "build")?;
    let before = fs::metadata(module)?.len();
    let output = module.with_extension("opt");
    let wasm_opt = modules.join("binaryen/bin/wasm-opt");
    install::node().args([&wasm_opt]).args(OPTIMISE).args([module]).args(["-o"]).args([&output]).quietly()?;
    fs::rename(&output, module)?;
    remark(format!("{} kB, was {} kB", fs::metadata(module)?.len() / 1000, before / 1000));
    Ok(())
}
