//! The proofs: every step of `cargo xtask test`, and its parts by name for quick rounds.

use crate::engine_module::Effort;
use crate::program::Program;
use crate::step::Tally;
use crate::{install, place, site, tree, types, wasm_facts};
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// One part of the whole, runnable by its name.
struct Part {
    name: &'static str,
    about: &'static str,
    run: fn(&mut Tally),
    /// Contained in another part, so the whole leaves it out.
    within: Option<&'static str>,
}

const PARTS: [Part; 9] = [
    Part { name: "lint", about: "formatting, clippy, the page's types", run: lint, within: None },
    Part { name: "core", about: "all tests of the engine, native", run: core, within: None },
    Part { name: "handbook", about: "published values", run: handbook, within: Some("core") },
    Part { name: "fuzz", about: "the kept corpus through every call", run: fuzz, within: Some("core") },
    Part { name: "xtask", about: "this tool's own tests", run: xtask, within: None },
    Part { name: "build", about: "the whole site", run: build, within: None },
    Part {
        name: "page",
        about: "the built engine: facts of the module, contract, same bytes",
        run: page,
        within: None,
    },
    Part { name: "oracle", about: "general-purpose libraries judge the files", run: oracle, within: None },
    Part { name: "browser", about: "the page in a real Chromium", run: browser, within: None },
];

/// Runs everything, or the named part; an error when anything failed.
pub fn test(names: &[&str]) -> Result<()> {
    let mut tally = Tally::default();
    if names.is_empty() {
        PARTS.iter().filter(|part| part.within.is_none()).for_each(|part| (part.run)(&mut tally));
    }
    for name in names {
        let Some(part) = PARTS.iter().find(|part| part.name == *name) else {
            bail!("there is no part `{name}`; these are the parts:\n{}", help());
        };
        (part.run)(&mut tally);
    }
    tally.close()
}

/// One line a part.
pub fn help() -> String {
    PARTS.iter().map(|part| format!("cargo xtask test {:<15} {}\n", part.name, part.about)).collect()
}

/// Formatting, lints and types; the part that `cargo xtask lint` names.
pub fn lint(tally: &mut Tally) {
    tally.step("format", "cargo fmt --check", || cargo(&["fmt", "--all", "--check"]));
    // The profile of xtask, so that what it was compiled from is not compiled once more.
    let clippy = ["clippy", "--quiet", "--profile", "tool", "--workspace", "--all-targets", "--", "-D", "warnings"];
    tally.step("clippy", "every crate, every warning an error", || cargo(&clippy));
    tally.step("types", "tsc over www", types::check);
}

fn core(tally: &mut Tally) {
    tally.step("core", "the engine's tests, native", || cargo(&["test", "--quiet", "--package", "tubewright-core"]));
    tally.step("view", "the preview's tests, native", || cargo(&["test", "--quiet", "--package", "tubewright-page"]));
}

fn handbook(tally: &mut Tally) {
    tally.step("handbook", "published values", || suite("handbook"));
}

fn fuzz(tally: &mut Tally) {
    tally.step("fuzz", "the kept corpus through every call", || suite("fuzz"));
}

fn suite(name: &str) -> Result<()> {
    cargo(&["test", "--quiet", "--package", "tubewright-core", "--test", name])
}

fn xtask(tally: &mut Tally) {
    tally.step("xtask", "this tool's own tests", || cargo(&["test", "--quiet", "--profile", "tool", "-p", "xtask"]));
}

fn build(tally: &mut Tally) {
    tally.step("build", "the whole site", || site::build(Effort::Shipped).map(drop));
}

fn page(tally: &mut Tally) {
    if !built(tally, "page") {
        return;
    }
    tally.step("module", "size, imports and features of engine_bg.wasm; size of every file", wasm_facts::check);
    tally.step("golden", "the native engine's bytes, for comparison", || {
        let folder = place::target("golden");
        tree::remove(&folder)?;
        let texts = ["crate/xtask/bench/desk.json", "crate/xtask/bench/long.json", "tests/corpus", "tests/fuzz/corpus"];
        let there: Vec<&str> = texts.into_iter().filter(|text| place::at(text).exists()).collect();
        native("golden", &[&[&*folder.to_string_lossy()][..], &there].concat()).run()
    });
    tally.step("engine", "the built engine under node: contract, and the same bytes as native", || {
        node_tests(&place::at("tests/page"), None)
    });
}

fn oracle(tally: &mut Tally) {
    tally.step("oracle", "general-purpose libraries judge the files of a sweep", || {
        let python = install::python(&place::at("tests/oracle/requirements.txt"))?;
        let args = ["-m", "pytest", "tests/oracle", "-q", "-p", "no:cacheprovider"];
        Program::new(python, "").args(args).within(place::root()).run()
    });
}

fn browser(tally: &mut Tally) {
    if !built(tally, "browser") {
        return;
    }
    tally.step("browser", "the page in a real Chromium", || {
        let tests = place::at("tests/browser");
        install::npm(&tests)?;
        node_tests(&tests, Some(&install::chromium()?))
    });
}

/// The site as the sources stand; parts that need it are not tried on an older one.
fn built(tally: &mut Tally, part: &str) -> bool {
    match site::build(Effort::Shipped) {
        Ok(_) => true,
        Err(fault) => {
            tally.skip(part, &format!("the site does not build: {fault:#}"));
            false
        }
    }
}

/// Every `*.test.mjs` and `*.test.js` of a folder; none at all is a fault, never a pass.
fn node_tests(folder: &Path, chromium: Option<&Path>) -> Result<()> {
    let entries = fs::read_dir(folder).with_context(|| format!("cannot list {}", folder.display()))?;
    let mut files: Vec<PathBuf> = entries.filter_map(|entry| Some(entry.ok()?.path())).collect();
    files.retain(|path| [".test.mjs", ".test.js"].iter().any(|end| path.to_string_lossy().ends_with(end)));
    files.sort();
    if files.is_empty() {
        bail!("{} holds no tests", folder.display());
    }
    let node = install::node().args(["--test", "--test-reporter", "spec"]).args(&files).within(place::root());
    match chromium {
        Some(path) => node.env("CHROMIUM", path).run(),
        None => node.run(),
    }
}

/// An example of the core, optimised: the engine as a native program.
pub fn native(example: &str, args: &[&str]) -> Program {
    let build = ["run", "--quiet", "--release", "--package", "tubewright-core", "--example", example, "--"];
    cargo_program(&[&build, args].concat())
}

fn cargo(args: &[&str]) -> Result<()> {
    cargo_program(args).run()
}

/// The cargo that runs xtask.
fn cargo_program(args: &[&str]) -> Program {
    let command = Command::new(std::env::var_os("CARGO").unwrap_or("cargo".into()));
    let install = "install Rust with rustup, then `rustup component add rustfmt clippy`";
    Program::of(command, install).args(args).within(place::root())
}
