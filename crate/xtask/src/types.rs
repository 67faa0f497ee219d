//! The page's types: what `www` says of itself, and what it says of the engine against what was really built.

use crate::{install, place};
use anyhow::Result;

/// `tsc` over `www` as its own settings say.
pub fn check() -> Result<()> {
    let www = place::at("www");
    let tsc = install::npm(&www)?.join("typescript/bin/tsc");
    install::node().args([&tsc]).args(["--noEmit", "-p"]).args([&www]).run()
}
