//! The physics at random points, in a file, for the judges of `tests/oracle`.

use crate::native;
use anyhow::{Context, Result, bail};
use std::path::absolute;

/// `OUT [--count N] [--seed S]`.
pub fn physics(options: &[&str]) -> Result<()> {
    let (mut file, mut count, mut seed) = (None, "2500", "1");
    let mut left = options.iter();
    while let Some(option) = left.next() {
        let mut number = || left.next().copied().with_context(|| format!("{option} needs a number"));
        match *option {
            "--count" => count = number()?,
            "--seed" => seed = number()?,
            other if file.is_none() && !other.starts_with('-') => file = Some(absolute(other)?),
            other => bail!("physics does not know `{other}`; it knows OUT --count N --seed S"),
        }
    }
    let file = file.context("name a file to write: cargo xtask physics OUT")?;
    native::example("physics", &[&file.to_string_lossy(), count, seed]).run()
}
