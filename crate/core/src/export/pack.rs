//! The pack: files in folders, and a checksum of each.

use core::fmt::Write;

use sha2::{Digest, Sha256};

use super::archive::Archive;

/// A file of the pack.
#[derive(Debug, Clone)]
pub struct PackFile {
    /// Where it is in the pack, folders before it with a slash.
    pub path: String,
    /// What it holds.
    pub bytes: Vec<u8>,
}

/// Name of the list of checksums.
pub(super) const CHECKSUMS: &str = "checksums.txt";

/// A zip archive of files, in their order, and `checksums.txt` of them. What is an archive itself is not packed again.
pub fn pack(files: &[PackFile]) -> Vec<u8> {
    let mut archive = Archive::new();
    for PackFile { path, bytes } in files {
        if path.ends_with(".3mf") || path.ends_with(".zip") {
            archive.store(path, bytes);
        } else {
            archive.deflate(path, bytes);
        }
    }
    archive.deflate(CHECKSUMS, checksums(files).as_bytes());
    archive.finish()
}

/// A line for each file: its SHA-256 (FIPS 180-4) in hexadecimal digits, two spaces, its path, as `sha256sum -c` of the
/// GNU core utilities reads it. No path has a backslash or a line's end, which that format would want escaped.
pub fn checksums(files: &[PackFile]) -> String {
    let mut list = String::new();
    for PackFile { path, bytes } in files {
        for byte in Sha256::digest(bytes) {
            let _ = write!(list, "{byte:02x}");
        }
        let _ = writeln!(list, "  {path}");
    }
    list
}
