//! A Rust that can build for wasm32: the one at hand, the one at hand with its target fetched, or Debian's.
//!
//! Debian has no ready standard library for wasm32-unknown-unknown but ships its source, so there the library is built
//! along, which stable compilers allow only with `RUSTC_BOOTSTRAP`.

use crate::program::{Program, exists};
use crate::step::remark;
use crate::{install, place};
use anyhow::{Context, Result, bail};
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

const TARGET: &str = "wasm32-unknown-unknown";
const DEBIAN: [&str; 4] = ["rustc-web", "cargo-web", "rust-web-src", "rust-web-llvm"];
const DEBIAN_CARGO: &str = "/usr/bin/cargo";
const DEBIAN_RUSTC: &str = "/usr/bin/rustc";
const DEBIAN_LINKER: &str = "/usr/bin/rust-lld";

/// Which Rust builds for wasm32.
pub enum WasmRust {
    /// The one that runs xtask; it has the target.
    AtHand,
    /// Debian's, which builds the standard library along.
    Debian,
}

impl WasmRust {
    /// Finds one, or makes one; an error says what to install.
    pub fn find() -> Result<Self> {
        // Debian's way can be asked for, so that it can be tried where the other would do.
        let debian_asked_for = std::env::var("TUBEWRIGHT_WASM_RUST").is_ok_and(|way| way == "debian");
        if !debian_asked_for && has_target() {
            remark(format!("wasm32 library: the one of {}", version("rustc")));
            return Ok(Self::AtHand);
        }
        // What is installed comes before what would have to be fetched: a machine without a way out is not kept waiting.
        if !debian_asked_for && !debian_ready() {
            match fetch_target() {
                Ok(()) => {
                    remark(format!("wasm32 library: fetched with rustup for {}", version("rustc")));
                    return Ok(Self::AtHand);
                }
                Err(fault) => remark(format!("wasm32 library: not from rustup ({})", first_line(&fault))),
            }
        }
        if !debian_ready() {
            install_debian().with_context(no_rust)?;
        }
        if !debian_ready() {
            bail!(no_rust());
        }
        remark(format!("wasm32 library: built from source by Debian's {}", version(DEBIAN_RUSTC)));
        Ok(Self::Debian)
    }

    /// Cargo's `task` for wasm32 in a clean environment, output under `target/wasm`.
    pub fn cargo(&self, task: &str) -> Program {
        let mut command = match self {
            Self::AtHand => Command::new(std::env::var_os("CARGO").unwrap_or("cargo".into())),
            Self::Debian => debian_cargo(),
        };
        for key in ["RUSTFLAGS", "CARGO_ENCODED_RUSTFLAGS", "CARGO_BUILD_TARGET", "CARGO_TARGET_DIR"] {
            command.env_remove(key);
        }
        command.arg(task);
        if matches!(self, Self::Debian) {
            command.arg("-Zbuild-std=std,panic_abort");
        }
        command.args(["--target", TARGET, "--target-dir"]).arg(place::target("wasm")).current_dir(place::root());
        Program::of(command, "install Rust with rustup")
    }
}

/// Where the linked module of a package lies after a build with `profile`.
pub fn module(package: &str, profile: &str) -> PathBuf {
    place::target("wasm").join(TARGET).join(profile).join(format!("{}.wasm", package.replace('-', "_")))
}

fn no_rust() -> String {
    let packages = DEBIAN.join(" ");
    format!(
        "no Rust here can build for {TARGET}; install its standard library with `rustup target add {TARGET}`, or on \
         Debian the packages {packages} and the lld that they name"
    )
}

fn has_target() -> bool {
    let ask = Program::new("rustc", "").args(["--print", "target-libdir", "--target", TARGET]).quietly();
    let entries = ask.ok().and_then(|folder| std::fs::read_dir(folder.trim()).ok());
    entries.is_some_and(|mut files| {
        files.any(|file| file.is_ok_and(|file| file.file_name().to_string_lossy().starts_with("libstd-")))
    })
}

fn fetch_target() -> Result<()> {
    if !exists("rustup") {
        bail!("there is no rustup");
    }
    let limit = Duration::from_secs(120);
    Program::new("rustup", "").args(["target", "add", TARGET]).within_time(limit)?;
    if !has_target() {
        bail!("rustup added it for another Rust than the one in PATH");
    }
    Ok(())
}

fn debian_ready() -> bool {
    let source = Path::new("/usr/lib/rustlib/src/rust/library/std/Cargo.toml");
    source.exists() && [DEBIAN_CARGO, DEBIAN_RUSTC, DEBIAN_LINKER].iter().all(|program| Path::new(program).exists())
}

/// The compiler first; then the linker, whose package is the one that the compiler's link to it names: `lld-22` today.
fn install_debian() -> Result<()> {
    install::debian(&DEBIAN)?;
    match std::fs::read_link(DEBIAN_LINKER) {
        Ok(named) if !Path::new(DEBIAN_LINKER).exists() => {
            install::debian(&[&named.file_name().unwrap_or_default().to_string_lossy()])
        }
        _ => Ok(()),
    }
}

/// Debian's cargo with everything taken away that rustup's cargo tells its children.
fn debian_cargo() -> Command {
    let mut command = Command::new(DEBIAN_CARGO);
    let inherited = std::env::vars_os().map(|(key, _)| key);
    let told = |key: &OsString| {
        let key = key.to_string_lossy();
        ["CARGO", "RUSTC", "RUSTUP", "RUSTDOC"].iter().any(|start| key.starts_with(start)) || key == "LD_LIBRARY_PATH"
    };
    for key in inherited.filter(told).filter(|key| key != "CARGO_HOME") {
        command.env_remove(key);
    }
    command.env("RUSTC_BOOTSTRAP", "1").env("RUSTC", DEBIAN_RUSTC).env("PATH", "/usr/bin:/bin");
    command.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", DEBIAN_LINKER);
    command
}

fn version(rustc: &str) -> String {
    let answer = Program::new(rustc, "").args(["--version"]).quietly();
    answer.map_or("an unknown rustc".to_string(), |words| words.trim().to_string())
}

fn first_line(fault: &anyhow::Error) -> String {
    fault.to_string().lines().find(|line| line.contains("error")).unwrap_or("it failed").trim().to_string()
}
