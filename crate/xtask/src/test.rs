//! The proofs: every step of `cargo xtask test`, and its parts by name for quick rounds.

use crate::parts;
use crate::step::Tally;
use anyhow::{Result, bail};

/// One part of the whole, runnable by its name.
struct Part {
    name: &'static str,
    about: &'static str,
    run: fn(&mut Tally),
    /// Contained in another part, so the whole leaves it out.
    inner: bool,
}

const PARTS: [Part; 9] = [
    Part { name: "lint", about: "formatting, clippy, the page's types", run: parts::lint, inner: false },
    Part { name: "core", about: "all tests of the engine and the preview, native", run: parts::core, inner: false },
    Part { name: "handbook", about: "published values; in core", run: parts::handbook, inner: true },
    Part { name: "fuzz", about: "the kept corpus through every call; in core", run: parts::fuzz, inner: true },
    Part { name: "xtask", about: "this tool's own tests", run: parts::xtask, inner: false },
    Part { name: "build", about: "the whole site", run: parts::build, inner: false },
    Part {
        name: "page",
        about: "the built engine: its facts, its contract, native's bytes",
        run: parts::page,
        inner: false,
    },
    Part { name: "oracle", about: "general-purpose libraries judge the files", run: parts::oracle, inner: false },
    Part { name: "browser", about: "the page in a real Chromium and Firefox", run: parts::browser, inner: false },
];

/// Runs everything, or the named parts; an error when anything failed.
pub fn test(names: &[&str]) -> Result<()> {
    let mut wanted = Vec::new();
    for name in names {
        match PARTS.iter().find(|part| part.name == *name) {
            Some(part) => wanted.push(part),
            None => bail!("there is no part `{name}`; these are the parts:\n{}", help()),
        }
    }
    if wanted.is_empty() {
        wanted.extend(PARTS.iter().filter(|part| !part.inner));
    }
    let mut tally = Tally::default();
    wanted.iter().for_each(|part| (part.run)(&mut tally));
    tally.close()
}

/// One line a part.
pub fn help() -> String {
    PARTS.iter().map(|part| format!("cargo xtask test {:<15} {}\n", part.name, part.about)).collect()
}
