//! Everything in one download.

use super::archive::Archive;
use super::{Kind, Meta, NamedMesh, file_stem, stl, three_mf, unique_stems};

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

/// A zip archive with an STL and a 3MF of each of `runs`, each run's `papers` (its tables and drawing, in the order of
/// the runs), the design's `plots`, and the design as canonical text. Names in it are safe on every system and differ even where case does
/// not count; runs whose names come out the same are numbered. The names of meshes that are compensated say so.
pub fn zip(design: &DesignTold<'_>, runs: &[NamedMesh<'_>], papers: &[Vec<Paper>], plots: &[Paper]) -> Vec<u8> {
    let mut archive = Archive::new();
    let meshed = |stem: &str| called(stem, !design.note.is_empty());
    // A run may be called what a plot is: all names are told apart together.
    let plot_names: Vec<String> = plots.iter().map(|(kind, _)| kind.called(design.title)).collect();
    let names = runs.iter().map(|run| run.name).chain(plot_names.iter().map(String::as_str));
    let stems = unique_stems(names);
    for (index, (run, stem)) in runs.iter().zip(&stems).enumerate() {
        archive.deflate(&Kind::Stl.file_name(&meshed(stem)), &stl(run.mesh, &meshed(run.name)));
        archive.store(&Kind::ThreeMf.file_name(&meshed(stem)), &three_mf(&[*run], &design.meta(run.name)));
        for (kind, bytes) in papers.get(index).into_iter().flatten() {
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
