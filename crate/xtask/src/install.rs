//! What xtask fetches for itself: Debian packages, npm packages, a Python environment. Each says so when it does.

use crate::program::{Program, exists};
use crate::step::remark;
use crate::{place, tree};
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::{Path, PathBuf};

/// Installs Debian packages as root or through a sudo that asks nothing.
pub fn debian(packages: &[&str]) -> Result<()> {
    let wanted = packages.join(" ");
    if !exists("apt-get") {
        bail!("this is no Debian system; what is needed: {wanted}");
    }
    let root = Program::new("id", "install coreutils").args(["-u"]).quietly()?.trim() == "0";
    let by_hand = format!("run `apt-get update && apt-get install --no-install-recommends {wanted}` as root");
    if !root {
        let sudo = Program::new("sudo", "no sudo").args(["-n", "true"]).quietly();
        sudo.ok().with_context(|| by_hand.clone())?;
    }
    let apt = |args: &[&str]| {
        let program = if root { Program::new("apt-get", "") } else { Program::new("sudo", "").args(["-n", "apt-get"]) };
        program.args(args).env("DEBIAN_FRONTEND", "noninteractive").quietly()
    };
    remark(format!("installing Debian packages: {wanted}"));
    apt(&["update", "-qq"]).context(by_hand.clone())?;
    let install = ["install", "-y", "-qq", "--no-install-recommends"];
    apt(&[&install[..], packages].concat()).context(by_hand)?;
    Ok(())
}

const NODE: &str = "install Node.js 20 or newer with npm (Debian: apt-get install nodejs npm)";

/// A call of Node.js.
pub fn node() -> Program {
    Program::new("node", NODE)
}

/// Brings the pinned npm packages of `folder` into its `node_modules`, unless those of this very lock are there.
pub fn npm(folder: &Path) -> Result<PathBuf> {
    let modules = folder.join("node_modules");
    let lock = fs::read(folder.join("package-lock.json"))
        .with_context(|| format!("{} has no package-lock.json", folder.display()))?;
    let stamp = modules.join(".of-lock");
    let print = tree::fingerprint([lock.as_slice()]);
    if fs::read_to_string(&stamp).is_ok_and(|old| old == print) {
        return Ok(modules);
    }
    remark(format!("npm ci in {}", folder.display()));
    Program::new("npm", NODE).args(["ci", "--no-audit", "--no-fund"]).within(folder).quietly()?;
    fs::create_dir_all(&modules)?;
    fs::write(&stamp, print)?;
    Ok(modules)
}

/// The same for a package list kept under `crate/xtask`, installed under `target/` so that the sources stay clean.
pub fn npm_in_target(list: &Path, name: &str) -> Result<PathBuf> {
    let folder = place::target("npm").join(name);
    for file in ["package.json", "package-lock.json"] {
        tree::copy(&list.join(file), &folder.join(file))?;
    }
    npm(&folder)
}

/// The Python of an environment in `target/` that holds exactly what the requirements file pins.
pub fn python(requirements: &Path) -> Result<PathBuf> {
    const PYTHON: &str = "install Python 3.11 or newer with its venv module (Debian: apt-get install python3-venv)";
    let folder = place::target("python");
    let python = folder.join("bin/python");
    let list = fs::read(requirements).with_context(|| format!("cannot read {}", requirements.display()))?;
    let print = tree::fingerprint([list.as_slice()]);
    let stamp = folder.join(".of-list");
    if python.exists() && fs::read_to_string(&stamp).is_ok_and(|old| old == print) {
        return Ok(python);
    }
    remark(format!("a Python environment in {} with {}", folder.display(), requirements.display()));
    tree::remove(&folder)?;
    Program::new("python3", PYTHON).args(["-m", "venv"]).args([&folder]).quietly().context(PYTHON)?;
    let pip = Program::new(&python, PYTHON).args(["-m", "pip", "install", "--quiet", "-r"]).args([requirements]);
    pip.quietly()?;
    fs::write(&stamp, print)?;
    Ok(python)
}

/// A Chromium to drive: the one that `CHROMIUM` names, one in PATH, or Debian's.
pub fn chromium() -> Result<PathBuf> {
    browser("CHROMIUM", &["chromium", "chromium-browser", "google-chrome"], &["chromium", "fonts-dejavu-core"])
}

/// A Chromium without windows for the tests: the one that `CHROMIUM` names, one in PATH, Debian's, else any Chromium.
///
/// It lays out, runs and draws a page with the same code. What it lacks is the window round it, which the plain one
/// builds for every profile that a test opens, seen or not, in more time than the page takes.
pub fn windowless_chromium() -> Result<PathBuf> {
    let packages = ["chromium-headless-shell", "fonts-dejavu-core"];
    browser("CHROMIUM", &["chromium-headless-shell", "chrome-headless-shell"], &packages).or_else(|fault| {
        remark(format!("the plain Chromium instead, which takes longer: {fault:#}"));
        chromium()
    })
}

/// A Firefox to drive: the one that `FIREFOX` names, one in PATH, or Debian's.
pub fn firefox() -> Result<PathBuf> {
    browser("FIREFOX", &["firefox-esr", "firefox"], &["firefox-esr", "fonts-dejavu-core"])
}

fn browser(variable: &str, names: &[&str], packages: &[&str]) -> Result<PathBuf> {
    if let Some(named) = std::env::var_os(variable) {
        return Ok(PathBuf::from(named));
    }
    let find = || {
        let path = std::env::var_os("PATH")?;
        let mut places =
            std::env::split_paths(&path).flat_map(|folder| names.iter().map(move |name| folder.join(name)));
        places.find(|place| place.is_file())
    };
    if let Some(found) = find() {
        return Ok(found);
    }
    debian(packages)?;
    find().with_context(|| format!("{} was installed but is not in PATH; name it in the variable {variable}", names[0]))
}
