//! What each part of the proofs does, step by step.

use crate::engine_module::Effort;
use crate::program::Program;
use crate::site::{self, Built};
use crate::step::{Tally, remark};
use crate::wasm_rust::WasmRust;
use crate::{install, made_up, native, place, tree, types, wasm_facts};
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

/// Formatting, lints and types.
pub fn lint(tally: &mut Tally) {
    tally.step("format", "cargo fmt --check", || cargo(&["fmt", "--all", "--check"]));
    // The profile of xtask, so that what it was compiled from is not compiled once more.
    let clippy = ["clippy", "--quiet", "--profile", "tool", "--workspace", "--all-targets", "--", "-D", "warnings"];
    tally.step("clippy", "every crate, every warning an error", || cargo(&clippy));
    tally.step("clippy-wasm", "what is compiled for WebAssembly alone", || match WasmRust::find()? {
        WasmRust::Debian => {
            remark("not linted: the Rust that builds for wasm32 here comes without clippy");
            Ok(())
        }
        rust => {
            let page = ["--quiet", "--package", "tubewright-page", "--profile", "quick"];
            rust.cargo("clippy").args(page).args(["--", "-D", "warnings"]).run()
        }
    });
    tally.step("types", "tsc over www", types::check);
}

/// All native tests of the engine and the preview.
pub fn core(tally: &mut Tally) {
    // In one go, so that what both are built from is compiled once.
    let both = ["test", "--quiet", "--package", "tubewright-core", "--package", "tubewright-page"];
    tally.step("core", "the tests of the engine and the preview, native", || cargo(&both));
}

/// Published values alone.
pub fn handbook(tally: &mut Tally) {
    tally.step("handbook", "published values", || suite("handbook"));
}

/// The kept corpus alone.
pub fn fuzz(tally: &mut Tally) {
    tally.step("fuzz", "the kept corpus through every call", || suite("fuzz"));
}

fn suite(name: &str) -> Result<()> {
    cargo(&["test", "--quiet", "--package", "tubewright-core", "--test", name])
}

/// This tool's own tests.
pub fn xtask(tally: &mut Tally) {
    tally.step("xtask", "this tool's own tests", || cargo(&["test", "--quiet", "--profile", "tool", "-p", "xtask"]));
}

/// The site builds.
pub fn build(tally: &mut Tally) {
    tally.step("build", "the whole site", || match built() {
        Ok(_) => Ok(()),
        Err(words) => bail!("{words}"),
    });
}

/// The built engine.
pub fn page(tally: &mut Tally) {
    let Some(built) = needed(tally, "page") else { return };
    tally.step("module", "size, imports and features of engine_bg.wasm; size of every file", wasm_facts::check);
    tally.step("bindings", "the engine's types as built and as the page takes them", || {
        types::check_bindings(&built.engine)
    });
    tally.step("golden", "what the native engine answers, for comparison", || {
        let folder = place::target("golden");
        tree::remove(&folder)?;
        let texts = ["crate/xtask/bench/desk.json", "crate/xtask/bench/long.json", "tests/fuzz/corpus"];
        native::example("golden", &[&[&*folder.to_string_lossy()][..], &texts].concat()).run()
    });
    tally.step("engine", "the built engine under node: contract, and native's very bytes", || {
        node_tests(&place::at("tests/page"), &[])
    });
}

/// General-purpose libraries as judges.
pub fn oracle(tally: &mut Tally) {
    tally.step("oracle", "general-purpose libraries judge the files of a sweep", || {
        let python = install::python(&place::at("tests/oracle/requirements.txt"))?;
        // Two workers take a file at a time, in the order that conftest.py gives.
        let workers = ["-n", "2", "--dist", "loadfile", "--no-loadscope-reorder"];
        let args = ["-m", "pytest", "tests/oracle", "-q", "-p", "no:cacheprovider"].into_iter().chain(workers);
        let judges = Program::new(python, "").args(args).within(place::root());
        let sets = made_up::for_the_judges()?;
        sets.iter().fold(judges, |judges, (variable, place)| judges.env(variable, place)).run()
    });
}

/// The page in a real browser.
pub fn browser(tally: &mut Tally) {
    let Some(_) = needed(tally, "browser") else { return };
    tally.step("browser", "the page in a real Chromium and a real Firefox", || {
        let tests = place::at("tests/browser");
        install::npm(&tests)?;
        node_tests(&tests, &[("CHROMIUM", install::windowless_chromium()?), ("FIREFOX", install::firefox()?)])
    });
}

/// The site as the sources stand, built once however many parts ask.
fn built() -> &'static Result<Built, String> {
    static BUILT: OnceLock<Result<Built, String>> = OnceLock::new();
    BUILT.get_or_init(|| site::build(Effort::Shipped).map_err(|fault| format!("{fault:#}")))
}

/// A part that needs the site is not tried on an older one.
fn needed(tally: &mut Tally, part: &str) -> Option<&'static Built> {
    match built() {
        Ok(built) => Some(built),
        Err(_) => {
            tally.skip(part, "the site does not build");
            None
        }
    }
}

/// Every `*.test.mjs` of a folder; none at all is a fault, never a pass.
fn node_tests(folder: &Path, variables: &[(&str, PathBuf)]) -> Result<()> {
    let entries = fs::read_dir(folder).with_context(|| format!("cannot list {}", folder.display()))?;
    let mut files: Vec<PathBuf> = entries.filter_map(|entry| Some(entry.ok()?.path())).collect();
    files.retain(|path| path.to_string_lossy().ends_with(".test.mjs"));
    files.sort();
    if files.is_empty() {
        bail!("{} holds no tests", folder.display());
    }
    // Two files at a time: a browser waits more than it works.
    let node = install::node().args(["--test", "--test-concurrency=2", "--test-reporter", "spec"]);
    let node = node.args(&files).within(place::root());
    variables.iter().fold(node, |node, (name, value)| node.env(name, value)).run()
}

fn cargo(args: &[&str]) -> Result<()> {
    native::cargo(args).run()
}
