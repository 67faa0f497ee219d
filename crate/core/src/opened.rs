//! A design out of the bytes of a file: its own text, or an archive that holds it.

use rawzip::{CompressionMethod, ZipArchive};

use crate::design::{FORMAT, LONGEST_TEXT, Refusal, too_long};
use crate::export::{DESIGN_PART, STL_HEADER, stl_size};

/// Most texts of an archive that are looked into; ours holds one.
const MOST_TEXTS: usize = 8;

/// The text of the design in a file: a design as it was saved, a 3MF file that bears it, or the archive of everything.
/// What it says is not judged here.
///
/// # Errors
/// A file that holds none, or a damaged one. Nothing is unpacked beyond the size that a design may have.
pub fn design_text(bytes: &[u8]) -> Result<String, Refusal> {
    if bytes.is_empty() {
        return refused("The file is empty. Choose a design saved by this page.");
    }
    if bytes.starts_with(b"PK") {
        return in_archive(bytes);
    }
    if bytes.len() > LONGEST_TEXT {
        return Err(too_long(bytes.len()));
    }
    match core::str::from_utf8(bytes) {
        // Some editors put a byte order mark before the text.
        Ok(text) => Ok(text.strip_prefix('\u{feff}').unwrap_or(text).to_owned()),
        Err(_) if is_stl(bytes) => {
            refused("An STL holds triangles alone, no design. Open the 3MF file of the same tube, or the saved design.")
        }
        Err(_) => {
            refused("The file is neither text nor an archive. Choose a design saved by this page, or a 3MF file of it.")
        }
    }
}

/// Binary STL: a count after the header, and as many triangles after it.
fn is_stl(bytes: &[u8]) -> bool {
    let count = bytes.get(STL_HEADER..STL_HEADER + 4).and_then(|count| count.try_into().ok()).map(u32::from_le_bytes);
    count.is_some_and(|count| bytes.len() as u64 == stl_size(u64::from(count)))
}

fn in_archive(bytes: &[u8]) -> Result<String, Refusal> {
    const DAMAGED: &str = "The file is damaged: it begins as an archive, and cannot be read as one. Fetch it again.";
    let Ok(archive) = ZipArchive::from_slice(bytes) else { return refused(DAMAGED) };
    let mut entries = archive.entries();
    let mut looked = 0;
    loop {
        let entry = match entries.next_entry() {
            Ok(Some(entry)) => entry,
            Ok(None) => break,
            Err(_) => return refused(DAMAGED),
        };
        let Ok(path) = entry.file_path().try_normalize() else { continue };
        // The archive of everything has the design beside the tubes' files, under the design's own name.
        let attached = path.as_ref() == DESIGN_PART;
        if !attached && (path.as_ref().contains('/') || !path.as_ref().ends_with(".json")) {
            continue;
        }
        looked += 1;
        if looked > MOST_TEXTS {
            break;
        }
        let Ok(found) = archive.get_entry(entry.wayfinder()) else { return refused(DAMAGED) };
        let text = unpacked(found.data(), entry.compression_method())?.map(String::from_utf8);
        let Some(Ok(text)) = text else { return refused(DAMAGED) };
        if attached || text.contains(FORMAT) {
            return Ok(text);
        }
    }
    refused("The archive holds no design. Choose one that this page has made, or a saved design (.json).")
}

/// The bytes of an entry; none where it is damaged.
fn unpacked(data: &[u8], method: CompressionMethod) -> Result<Option<Vec<u8>>, Refusal> {
    use miniz_oxide::inflate::{TINFLStatus, decompress_to_vec_with_limit};
    if method == CompressionMethod::STORE {
        return if data.len() > LONGEST_TEXT { Err(too_long(data.len())) } else { Ok(Some(data.to_vec())) };
    }
    if method != CompressionMethod::DEFLATE {
        return Ok(None);
    }
    match decompress_to_vec_with_limit(data, LONGEST_TEXT) {
        Ok(text) => Ok(Some(text)),
        Err(fault) if fault.status == TINFLStatus::HasMoreOutput => Err(too_long(LONGEST_TEXT + 1)),
        Err(_) => Ok(None),
    }
}

fn refused(words: &str) -> Result<String, Refusal> {
    Err(Refusal::at("", words))
}
