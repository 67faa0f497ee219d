//! Everything in one download.

use super::archive::Archive;
use super::{Kind, Meta, NamedMesh, file_stem, stl, three_mf, unique_stems};

/// A zip archive with an STL and a 3MF of each of `runs`, and the design as canonical text. Names in it are safe on
/// every system and differ even where case does not count; runs whose names come out the same are numbered.
pub fn zip(design_name: &str, design_text: &str, runs: &[NamedMesh<'_>]) -> Vec<u8> {
    let mut archive = Archive::new();
    for (run, stem) in runs.iter().zip(unique_stems(runs.iter().map(|run| run.name))) {
        archive.deflate(&name(&stem, Kind::Stl), &stl(run.mesh, run.name));
        archive.store(&name(&stem, Kind::ThreeMf), &three_mf(&[*run], &Meta { title: run.name }));
    }
    archive.deflate(&name(&file_stem(design_name), Kind::Design), design_text.as_bytes());
    archive.finish()
}

fn name(stem: &str, kind: Kind) -> String {
    format!("{stem}.{}", kind.extension())
}
