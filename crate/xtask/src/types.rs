//! The page's types: what `www` says of itself, and what it says of the engine against what was really built.

use crate::{install, place};
use anyhow::Result;
use std::fs;
use std::path::Path;

/// `tsc` over `www` as its own settings say.
pub fn check() -> Result<()> {
    let www = place::at("www");
    tsc(&["--noEmit", "-p", &www.to_string_lossy()])
}

/// The page is checked against `www/types/engine.d.ts`; the engine that was built must be all that this says.
pub fn check_bindings(engine: &Path) -> Result<()> {
    let folder = place::target("types");
    fs::create_dir_all(&folder)?;
    let (built, said) = (engine.join("engine.js"), place::at("www/types/engine.js"));
    let text = format!(
        "import type * as built from {:?};\nimport type * as said from {:?};\ndeclare const engine: typeof built;\n\
         export const kept: typeof said = engine;\n",
        built.to_string_lossy(),
        said.to_string_lossy()
    );
    let file = folder.join("bindings.ts");
    fs::write(&file, text)?;
    let settings = "--noEmit --strict --target es2023 --module es2022 --moduleResolution bundler --types";
    let mut args: Vec<&str> = settings.split(' ').collect();
    let file = file.to_string_lossy();
    args.extend(["", "--lib", "es2023,dom,esnext.disposable", &file]);
    tsc(&args)
}

fn tsc(args: &[&str]) -> Result<()> {
    let tsc = install::npm(&place::at("www"))?.join("typescript/bin/tsc");
    install::node().args([&tsc]).args(args).run()
}
