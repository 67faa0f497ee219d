//! Everything in one download.

use super::archive::Archive;
use super::{Kind, Meta, NamedMesh, file_stem, file_stem_ending, stl, three_mf, unique_stems};

/// What files tell of the design that they are made from.
#[derive(Debug, Clone, Copy)]
pub struct DesignTold<'a> {
    /// Its name, or what stands for it.
    pub title: &'a str,
    /// Its canonical text.
    pub text: &'a str,
    /// The name of the material.
    pub material: &'a str,
    /// What meshes are compensated by; empty for those of the stated sizes.
    pub note: &'a str,
}

impl<'a> DesignTold<'a> {
    /// What a 3MF file of that title says.
    pub fn meta(&self, title: &'a str) -> Meta<'a> {
        Meta { title, material: Some(self.material), design: Some(self.text), note: self.note }
    }
}

/// A file that is made already, of a kind.
pub type Paper = (Kind, Vec<u8>);

/// What an archive holds of one run.
#[derive(Debug, Clone)]
pub struct RunFiles<'a> {
    /// Its name.
    pub name: &'a str,
    /// What is printed of it, each with what its files' names have after the run's.
    pub solids: Vec<(&'a str, NamedMesh<'a>)>,
    /// Its tables and drawing.
    pub papers: Vec<Paper>,
}

/// A zip archive with an STL and a 3MF of each solid of each of `runs`, each run's tables and drawing, the design's `plots`, and the design as canonical text. Names in it are safe on every system and differ even where case does
/// not count; runs whose names come out the same are numbered. The names of meshes that are compensated say so.
pub fn zip(design: &DesignTold<'_>, runs: &[RunFiles<'_>], plots: &[Paper]) -> Vec<u8> {
    let mut archive = Archive::new();
    let meshed = |stem: &str| called(stem, !design.note.is_empty());
    // A run may be called what a plot or another's piece is: all names are told apart together.
    let plot_names: Vec<String> = plots.iter().map(|(kind, _)| kind.called(design.title)).collect();
    let parts = |run: &RunFiles<'_>| {
        let endings = run.solids.iter().filter(|(suffix, _)| !suffix.is_empty());
        endings.map(|(suffix, _)| file_stem_ending(run.name, suffix)).collect::<Vec<_>>()
    };
    let piece_names: Vec<String> = runs.iter().flat_map(parts).collect();
    let names = runs.iter().map(|run| run.name).chain(plot_names.iter().chain(&piece_names).map(String::as_str));
    let stems = unique_stems(names);
    let mut piece_stems = stems[runs.len() + plots.len()..].iter();
    for (run, stem) in runs.iter().zip(&stems) {
        for (suffix, solid) in &run.solids {
            let own = if suffix.is_empty() { None } else { piece_stems.next() };
            let stem = own.unwrap_or(stem);
            archive.deflate(&Kind::Stl.file_name(&meshed(stem)), &stl(solid.mesh, &meshed(solid.name)));
            archive.store(&Kind::ThreeMf.file_name(&meshed(stem)), &three_mf(&[*solid], &design.meta(solid.name)));
        }
        for (kind, bytes) in &run.papers {
            archive.deflate(&kind.file_name(stem), bytes);
        }
    }
    for ((kind, bytes), stem) in plots.iter().zip(&stems[runs.len()..]) {
        archive.deflate(&format!("{stem}.{}", kind.extension()), bytes);
    }
    archive.deflate(&Kind::Design.file_name(&file_stem(design.title)), design.text.as_bytes());
    archive.finish()
}

/// What a mesh of that name is called, corrected by what a coupon said or not.
pub fn called(name: &str, compensated: bool) -> String {
    if compensated { format!("{name} compensated") } else { name.to_owned() }
}

/// A zip archive with an STL of each part, for services that take one body a file.
pub fn zip_of_stls(parts: &[NamedMesh<'_>]) -> Vec<u8> {
    let mut archive = Archive::new();
    let stems = unique_stems(parts.iter().map(|part| part.name));
    for (part, stem) in parts.iter().zip(&stems) {
        archive.deflate(&Kind::Stl.file_name(stem), &stl(part.mesh, part.name));
    }
    archive.finish()
}
