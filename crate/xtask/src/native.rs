//! The cargo that runs xtask, and the engine as native programs: the examples of the core.

use crate::place;
use crate::program::Program;
use std::process::Command;

/// A call of cargo on this workspace.
pub fn cargo(args: &[&str]) -> Program {
    let command = Command::new(std::env::var_os("CARGO").unwrap_or("cargo".into()));
    let install = "install Rust with rustup, then `rustup component add rustfmt clippy`";
    Program::of(command, install).args(args).within(place::root())
}

/// One of the core's examples as the tests are compiled, which have compiled it along: what it answers is the same.
pub fn example(name: &str, args: &[&str]) -> Program {
    cargo(&[&["run", "--quiet"], &EXAMPLE[..], &[name, "--"], args].concat())
}

/// One of them with all optimisation, to be timed.
pub fn fast_example(name: &str, args: &[&str]) -> Program {
    cargo(&[&["run", "--quiet", "--release"], &EXAMPLE[..], &[name, "--"], args].concat())
}

const EXAMPLE: [&str; 3] = ["--package", "tubewright-core", "--example"];
