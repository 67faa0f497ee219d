//! Where things are: the repository's root and the folders that xtask writes.
//!
//! Everything xtask makes is under the workspace's own `target/`, whatever `CARGO_TARGET_DIR` says: the site's place is
//! a promise to the reader of the README, and a `cargo clean` takes all of it away.

use std::path::{Path, PathBuf};

/// The repository's root.
pub fn root() -> PathBuf {
    let xtask = Path::new(env!("CARGO_MANIFEST_DIR"));
    xtask.ancestors().nth(2).unwrap_or(xtask).to_path_buf()
}

/// A path from the repository's root.
pub fn at(path: &str) -> PathBuf {
    root().join(path)
}

/// `target/`, with `path` under it.
pub fn target(path: &str) -> PathBuf {
    root().join("target").join(path)
}

/// The finished static site.
pub fn site() -> PathBuf {
    target("site")
}
