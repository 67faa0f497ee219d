//! The sweep: made-up designs and what the engine makes of them, in a folder, for the judges of `tests/oracle`.

use crate::native;
use anyhow::{Context, Result, bail};
use std::path::absolute;

/// `OUT [--count N] [--seed S]`.
pub fn sweep(options: &[&str]) -> Result<()> {
    let (mut folder, mut count, mut seed) = (None, "240", "1");
    let mut left = options.iter();
    while let Some(option) = left.next() {
        let mut number = || left.next().copied().with_context(|| format!("{option} needs a number"));
        match *option {
            "--count" => count = number()?,
            "--seed" => seed = number()?,
            other if folder.is_none() && !other.starts_with('-') => folder = Some(absolute(other)?),
            other => bail!("sweep does not know `{other}`; it knows OUT --count N --seed S"),
        }
    }
    let folder = folder.context("name a folder to write into: cargo xtask sweep OUT")?;
    native::example("sweep", &[&folder.to_string_lossy(), count, seed]).run()
}
