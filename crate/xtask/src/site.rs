//! The whole static site: the page's files, the engine, the pinned libraries; put in place in one go.

use crate::engine_module::{Effort, engine_module};
use crate::step::{remark, step};
use crate::{install, place, single_file, tree};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};

/// What a build leaves.
pub struct Built {
    /// The whole site.
    pub site: PathBuf,
    /// The folder that the engine's files came from, its types among them.
    pub engine: PathBuf,
}

/// Builds `target/site/`; does as little as what changed allows.
pub fn build(effort: Effort) -> Result<Built> {
    fs::create_dir_all(place::target(""))?;
    let lock = fs::File::create(place::target("xtask.lock"))?;
    lock.lock().context("cannot wait for another build to end")?;
    let engine = engine_module(effort)?;
    step("site", "page, engine and libraries into target/site", || assemble(&engine))?;
    Ok(Built { site: place::site(), engine })
}

fn assemble(engine: &Path) -> Result<()> {
    let www = place::at("www");
    let fresh = place::target("site.new");
    tree::remove(&fresh)?;
    for file in tree::files(&www, &served)? {
        tree::copy(&www.join(&file), &fresh.join(&file))?;
    }
    for file in ["engine.js", "engine_bg.wasm"] {
        tree::copy(&engine.join(file), &fresh.join(file))?;
    }
    vendor(&install::npm(&www)?, &fresh.join("vendor"))?;
    let print = tree::fingerprint_of(&fresh)?;
    let index = fs::read_to_string(fresh.join("index.html"))?;
    let build = format!("<meta name=\"build\" content=\"{}\">", &print[..16]);
    fs::write(fresh.join("index.html"), index.replace("<meta name=\"build\" content=\"\">", &build))?;
    fs::write(fresh.join("sw.js"), service_worker(&fresh)?)?;
    single_file::write(&fresh)?;
    let site = place::site();
    if site.exists() && tree::fingerprint_of(&site)? == tree::fingerprint_of(&fresh)? {
        remark("unchanged");
        return tree::remove(&fresh);
    }
    tree::swap(&fresh, &site)
}

/// The service worker, with what it keeps written in front: every file of the site but itself, and a print of them all, so
/// that each build keeps its own.
fn service_worker(site: &Path) -> Result<String> {
    let path = site.join("sw.js");
    let code = fs::read_to_string(&path).context("no sw.js in www")?;
    let own = Path::new("sw.js");
    let listed = tree::files(site, &|file| file != own)?;
    let mut files: Vec<String> = listed.iter().map(|file| file.to_string_lossy().replace('\\', "/")).collect();
    files.sort_unstable();
    files.insert(0, "./".to_owned());
    let print = tree::fingerprint_of(site)?;
    Ok(format!("const VERSION = {:?};\nconst FILES = {};\n{code}", &print[..16], serde_json::to_string(&files)?))
}

/// What of `www` a browser is given: no package lists, no settings of tools, no tests, no notes.
fn served(path: &Path) -> bool {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    let ours = ["node_modules", "package.json", "package-lock.json", "tests"].contains(&&*name);
    let kind = [".d.ts", ".test.js", ".md"].iter().any(|end| name.ends_with(end));
    // Its module goes into the single file alone.
    let single = path == Path::new("single");
    !(ours || kind || single || name.starts_with('.') || name.starts_with("tsconfig") || path == Path::new("vendor"))
}

/// lit-html as its package ships it, so that its own relative imports hold: `vendor/*.js`, `vendor/directives/*.js`.
fn vendor(modules: &Path, vendor: &Path) -> Result<()> {
    let package = modules.join("lit-html");
    let wanted = |path: &Path| {
        let folder = path.parent().unwrap_or(Path::new(""));
        let top = folder == Path::new("") && !["node", "development"].iter().any(|name| path == Path::new(name));
        top || folder == Path::new("directives")
    };
    let unneeded = ["polyfill-support.js", "private-ssr-support.js"];
    for file in tree::files(&package, &wanted)? {
        let script = file.extension().is_some_and(|end| end == "js");
        if script && !unneeded.iter().any(|name| file == Path::new(name)) {
            tree::copy(&package.join(&file), &vendor.join(&file))?;
        }
    }
    tree::copy(&package.join("LICENSE"), &vendor.join("LICENSE"))
}
