//! What holds of every made-up design.

mod answers;
#[path = "../../../../tests/fuzz/every_call.rs"]
mod every_call;
mod made;
#[path = "../mesh_judge/mod.rs"]
mod mesh_judge;
mod meshes;
mod motion;
mod motions;
mod pieces;
mod texts;
