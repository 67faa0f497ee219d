//! What is written for the judges of `tests/oracle`: made-up designs, tubes as they stand, the physics at random points.

use crate::native;
use anyhow::{Context, Result, bail};
use std::path::absolute;

/// Made-up designs and what the engine makes of them, into a folder: `OUT [--count N] [--seed S]`.
pub fn sweep(options: &[&str]) -> Result<()> {
    write("sweep", "240", options)
}

/// Tubes as they stand on a plate, and what liquid they are told to hold, into a folder: `OUT [--count N] [--seed S]`.
pub fn standing(options: &[&str]) -> Result<()> {
    write("standing", "400", options)
}

/// The physics at random points, into a file: `OUT [--count N] [--seed S]`.
pub fn physics(options: &[&str]) -> Result<()> {
    write("physics", "2500", options)
}

/// Runs the example of that name, which makes `count` of its things where nothing else is asked.
fn write<'a>(what: &'static str, mut count: &'a str, options: &[&'a str]) -> Result<()> {
    let (mut out, mut seed) = (None, "1");
    let mut left = options.iter();
    while let Some(option) = left.next() {
        let mut number = || left.next().copied().with_context(|| format!("{option} needs a number"));
        match *option {
            "--count" => count = number()?,
            "--seed" => seed = number()?,
            other if out.is_none() && !other.starts_with('-') => out = Some(absolute(other)?),
            other => bail!("{what} does not know `{other}`; it knows OUT --count N --seed S"),
        }
    }
    let out = out.with_context(|| format!("name where to write: cargo xtask {what} OUT"))?;
    native::example(what, &[&out.to_string_lossy(), count, seed]).run()
}
