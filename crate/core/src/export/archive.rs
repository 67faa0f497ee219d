//! A zip archive whose bytes depend on nothing but what is put in.

use rawzip::time::UtcDateTime;
use rawzip::{CompressionMethod, DataDescriptorOutput, ZipArchiveWriter};

/// 1980-01-01, the first day a zip archive can tell, in seconds since 1970: every entry bears it.
const FIRST_DAY: i64 = 315_532_800;

/// Deflate's level: 3 and above find little more in a mesh's text, and 6 takes eight times as long.
const LEVEL: u8 = 2;

/// An archive being written to memory, which refuses nothing: names are short and checked, sizes are far below 4 GiB.
pub(super) struct Archive(ZipArchiveWriter<Vec<u8>>);

impl Archive {
    pub fn new() -> Self {
        Self(ZipArchiveWriter::new(Vec::new()))
    }

    /// Adds a file that deflate makes smaller.
    pub fn deflate(&mut self, name: &str, content: &[u8]) {
        self.add(name, CompressionMethod::DEFLATE, content, &miniz_oxide::deflate::compress_to_vec(content, LEVEL));
    }

    /// Adds a file as it is, for one that is compressed already.
    pub fn store(&mut self, name: &str, content: &[u8]) {
        self.add(name, CompressionMethod::STORE, content, content);
    }

    /// The archive's bytes.
    pub fn finish(self) -> Vec<u8> {
        self.0.finish().expect("memory refuses no byte")
    }

    fn add(&mut self, name: &str, method: CompressionMethod, content: &[u8], stored: &[u8]) {
        let entry = self.0.new_file(name).compression_method(method).last_modified(UtcDateTime::from_unix(FIRST_DAY));
        let written = entry.start().and_then(|(mut entry, _)| {
            std::io::Write::write_all(&mut entry, stored)?;
            entry.finish(DataDescriptorOutput::new(rawzip::crc32(content), content.len() as u64))
        });
        written.expect("memory refuses no byte");
    }
}
