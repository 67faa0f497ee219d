//! A Rust that can build for wasm32: the one at hand, the one at hand with its target fetched, or Debian's.
//!
//! Debian has no ready standard library for wasm32-unknown-unknown but ships its source, so there the library is built
//! along, which stable compilers allow only with `RUSTC_BOOTSTRAP`.

use crate::program::{Program, exists};
use crate::step::remark;
use crate::{install, place};
use anyhow::{Result, bail};
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

const TARGET: &str = "wasm32-unknown-unknown";
const DEBIAN: [&str; 5] = ["rustc-web", "cargo-web", "rust-web-src", "rust-web-llvm", "lld-22"];
const DEBIAN_CARGO: &str = "/usr/bin/cargo";
const DEBIAN_RUSTC: &str = "/usr/bin/rustc";

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
        let forced = std::env::var("TUBEWRIGHT_WASM_RUST").unwrap_or_default();
        if forced != "debian" {
            if has_target() {
                remark(format!("wasm32 library: the one of {}", version("rustc")));
                return Ok(Self::AtHand);
            }
            match fetch_target() {
                Ok(()) => {
                    remark(format!("wasm32 library: fetched with rustup for {}", version("rustc")));
                    return Ok(Self::AtHand);
                }
                Err(fault) => remark(format!("wasm32 library: not from rustup ({})", first_line(&fault))),
            }
        }
        if !debian_ready()
            && let Err(fault) = install::debian(&DEBIAN)
        {
            bail!(
                "no Rust here can build for {TARGET}. Install its standard library with `rustup target add {TARGET}`, \
                 or on Debian the packages {}. The last try said: {fault:#}",
                DEBIAN.join(" ")
            );
        }
        if !debian_ready() {
            bail!("Debian's packages {} are installed but {DEBIAN_RUSTC} cannot build for {TARGET}", DEBIAN.join(" "));
        }
        remark(format!("wasm32 library: built from source by Debian's {}", version(DEBIAN_RUSTC)));
        Ok(Self::Debian)
    }

    /// `cargo build` for wasm32 in a clean environment, output under `target/wasm`.
    pub fn cargo_build(&self) -> Program {
        let mut command = match self {
            Self::AtHand => Command::new(std::env::var_os("CARGO").unwrap_or("cargo".into())),
            Self::Debian => debian_cargo(),
        };
        for key in ["RUSTFLAGS", "CARGO_ENCODED_RUSTFLAGS", "CARGO_BUILD_TARGET", "CARGO_TARGET_DIR"] {
            command.env_remove(key);
        }
        command.arg("build");
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
    let linker = debian_linker();
    source.exists() && linker.is_some() && Path::new(DEBIAN_CARGO).exists() && Path::new(DEBIAN_RUSTC).exists()
}

/// rust-lld, or any of Debian's lld by its wasm name.
fn debian_linker() -> Option<PathBuf> {
    let names = ["/usr/bin/rust-lld", "/usr/bin/wasm-ld-22", "/usr/bin/wasm-ld"];
    names.iter().map(PathBuf::from).find(|path| path.exists())
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
    if let Some(linker) = debian_linker() {
        command.env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", linker);
    }
    command
}

fn version(rustc: &str) -> String {
    let answer = Program::new(rustc, "").args(["--version"]).quietly();
    answer.map_or("an unknown rustc".to_string(), |words| words.trim().to_string())
}

fn first_line(fault: &anyhow::Error) -> String {
    fault.to_string().lines().find(|line| line.contains("error")).unwrap_or("it failed").trim().to_string()
}
