//! Folders: every file under one, copied whole, replaced in one go, and fingerprinted by content.

use anyhow::{Context, Result};
use sha2::{Digest, Sha256};
use std::fs;
use std::path::{Path, PathBuf};

/// Every file under `folder` for which `wanted` says yes (folders are asked too), sorted, relative to it.
pub fn files(folder: &Path, wanted: &dyn Fn(&Path) -> bool) -> Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    let mut waiting = vec![PathBuf::new()];
    while let Some(inner) = waiting.pop() {
        let here = folder.join(&inner);
        for entry in fs::read_dir(&here).with_context(|| format!("cannot list {}", here.display()))? {
            let entry = entry?;
            let path = inner.join(entry.file_name());
            if !wanted(&path) {
                continue;
            }
            if entry.file_type()?.is_dir() {
                waiting.push(path);
            } else {
                found.push(path);
            }
        }
    }
    found.sort();
    Ok(found)
}

/// Copies one file, making the folders above it.
pub fn copy(from: &Path, to: &Path) -> Result<()> {
    if let Some(parent) = to.parent() {
        fs::create_dir_all(parent)?;
    }
    fs::copy(from, to).with_context(|| format!("cannot copy {} to {}", from.display(), to.display()))?;
    Ok(())
}

/// Puts the finished folder `fresh` where `place` is: whoever reads sees the old one or the new one, never a mixture.
pub fn swap(fresh: &Path, place: &Path) -> Result<()> {
    let old = place.with_extension("old");
    remove(&old)?;
    if place.exists() {
        fs::rename(place, &old)?;
    }
    fs::rename(fresh, place).with_context(|| format!("cannot put {} in place", place.display()))?;
    remove(&old)
}

/// Removes a folder, if it is there.
pub fn remove(folder: &Path) -> Result<()> {
    match fs::remove_dir_all(folder) {
        Err(fault) if fault.kind() != std::io::ErrorKind::NotFound => {
            Err(fault).with_context(|| format!("cannot remove {}", folder.display()))
        }
        _ => Ok(()),
    }
}

/// SHA-256 over the given parts, each with its length, as hexadecimal.
pub fn fingerprint<'a>(parts: impl IntoIterator<Item = &'a [u8]>) -> String {
    let mut hash = Sha256::new();
    for part in parts {
        hash.update((part.len() as u64).to_le_bytes());
        hash.update(part);
    }
    hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
}

/// SHA-256 over the names and contents of every file under `folder`.
pub fn fingerprint_of(folder: &Path) -> Result<String> {
    let mut parts = Vec::new();
    for file in files(folder, &|_| true)? {
        parts.push(file.to_string_lossy().into_owned().into_bytes());
        parts.push(fs::read(folder.join(&file))?);
    }
    Ok(fingerprint(parts.iter().map(Vec::as_slice)))
}
