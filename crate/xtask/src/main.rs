//! Builds, serves, tests and measures the project: `cargo xtask help`.

mod bench;
mod engine_module;
mod install;
mod made_up;
mod native;
mod parts;
mod place;
mod program;
mod serve;
mod single_file;
mod site;
mod step;
mod test;
mod tree;
mod types;
mod wasm_facts;
mod wasm_rust;

use anyhow::{Result, bail};
use engine_module::Effort;
use std::process::ExitCode;

const HELP: &str = "\
cargo xtask help                 this list
cargo xtask build                the whole static site into target/site/
      --quick                    sooner after an edit, but a larger and slower engine than what ships
cargo xtask serve                build, then serve it on 127.0.0.1:8080, or on a free port where 8080 is taken
      --port N                   on that port and no other
      --quick                    built as by `build --quick`
      --no-build                 what is in target/site/ as it is
      --open                     and open it in the browser
cargo xtask lint                 formatting, clippy, types
cargo xtask bench                times and memory, beside general-purpose libraries on the same tubes
cargo xtask sweep OUT            made-up designs of the danger zone with report, STL and 3MF of each
      --count N                  how many (513)
      --seed S                   which (20); the same seed gives the same designs
cargo xtask standing OUT         made-up tubes as they stand on a plate, and what liquid they hold, for the judges
      --count N                  how many (400)
      --seed S                   which (7)
cargo xtask split OUT            made-up runs in pieces, and put together, for the judges
      --count N                  how many (40)
      --seed S                   which (11)
cargo xtask packs OUT            packs of made-up designs, of every way to print, for the judges
      --count N                  how many (200)
      --seed S                   which (29)
cargo xtask physics OUT          the physics at random points, for the judges
      --count N                  how many (3000)
      --seed S                   which (4)
cargo xtask test                 everything that proves the project; installs what it needs and says so
";

/// What failed has been said already; only the exit code is left to set.
#[derive(Debug)]
pub struct Told;

impl std::fmt::Display for Told {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("see above")
    }
}

impl std::error::Error for Told {}

fn main() -> ExitCode {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let args: Vec<&str> = args.iter().map(String::as_str).collect();
    match run(&args) {
        Ok(()) => ExitCode::SUCCESS,
        Err(fault) => {
            if !fault.is::<Told>() {
                eprintln!("xtask: {fault:#}");
            }
            ExitCode::FAILURE
        }
    }
}

fn run(args: &[&str]) -> Result<()> {
    match args {
        [] | ["help" | "--help" | "-h"] => {
            print!("{HELP}{}", test::help());
            Ok(())
        }
        ["build"] => build(Effort::Shipped),
        ["build", "--quick"] => build(Effort::Quick),
        ["serve", options @ ..] => serve::serve(options),
        ["bench"] => bench::bench(),
        ["lint"] => test::test(&["lint"]),
        [set @ ("sweep" | "standing" | "split" | "packs" | "physics"), options @ ..] => made_up::write(set, options),
        ["test", parts @ ..] => test::test(parts),
        [other, ..] => bail!("there is no `{other}`; this is what there is:\n{HELP}"),
    }
}

fn build(effort: Effort) -> Result<()> {
    let built = site::build(effort)?;
    println!("built {}", built.site.display());
    Ok(())
}
