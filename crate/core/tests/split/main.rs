//! Runs cut into pieces: stated, proposed, made, joined, checked and filed.

mod checks;
mod cuts;
mod document;
mod files;
#[path = "../mesh_judge/mod.rs"]
mod mesh_judge;
mod meshes;
