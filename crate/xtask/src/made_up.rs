//! What is written for the judges of `tests/oracle`: made-up designs, tubes as they stand, packs, the physics at random points.

use crate::{native, place};
use anyhow::{Context, Result, bail};
use std::path::{PathBuf, absolute};

/// Something that is written, and how much of it with which seed where nothing else is asked: what the judges are given.
struct Set {
    name: &'static str,
    /// Names to the judges where it has been written.
    variable: &'static str,
    count: &'static str,
    seed: &'static str,
}

const SETS: [Set; 5] = [
    // Nine rounds of all kinds and nine more of coils, curves, bodies and ends alone: 306 designs of these.
    Set { name: "sweep", variable: "TUBEWRIGHT_SWEEP", count: "513", seed: "20" },
    Set { name: "standing", variable: "TUBEWRIGHT_STANDING", count: "400", seed: "7" },
    Set { name: "split", variable: "TUBEWRIGHT_SPLIT", count: "24", seed: "11" },
    Set { name: "packs", variable: "TUBEWRIGHT_PACKS", count: "200", seed: "29" },
    Set { name: "physics", variable: "TUBEWRIGHT_PHYSICS", count: "3000", seed: "4" },
];

/// Writes one of the sets: `OUT [--count N] [--seed S]`.
pub fn write(name: &str, options: &[&str]) -> Result<()> {
    let set = SETS.iter().find(|set| set.name == name).with_context(|| format!("nothing is called `{name}`"))?;
    let (mut out, mut count, mut seed) = (None, set.count, set.seed);
    let mut left = options.iter();
    while let Some(option) = left.next() {
        let mut number = || left.next().copied().with_context(|| format!("{option} needs a number"));
        match *option {
            "--count" => count = number()?,
            "--seed" => seed = number()?,
            other if out.is_none() && !other.starts_with('-') => out = Some(absolute(other)?),
            other => bail!("{name} does not know `{other}`; it knows OUT --count N --seed S"),
        }
    }
    let out = out.with_context(|| format!("name where to write: cargo xtask {name} OUT"))?;
    native::example(name, &[&out.to_string_lossy(), count, seed]).run()
}

/// Writes all of them under `target/`; the variables that name them to the judges, and where they are.
pub fn for_the_judges() -> Result<Vec<(&'static str, PathBuf)>> {
    let written = |set: &Set| {
        let out = place::target(&format!("oracle-{}", set.name));
        write(set.name, &[&out.to_string_lossy()])?;
        Ok((set.variable, out))
    };
    SETS.iter().map(written).collect()
}
