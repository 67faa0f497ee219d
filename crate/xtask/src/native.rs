//! The cargo that runs xtask, and the engine as native programs: the examples of the core, optimised.

use crate::place;
use crate::program::Program;
use std::process::Command;

/// A call of cargo on this workspace.
pub fn cargo(args: &[&str]) -> Program {
    let command = Command::new(std::env::var_os("CARGO").unwrap_or("cargo".into()));
    let install = "install Rust with rustup, then `rustup component add rustfmt clippy`";
    Program::of(command, install).args(args).within(place::root())
}

/// One of the core's examples.
pub fn example(name: &str, args: &[&str]) -> Program {
    let build = ["run", "--quiet", "--release", "--package", "tubewright-core", "--example", name, "--"];
    cargo(&[&build, args].concat())
}
