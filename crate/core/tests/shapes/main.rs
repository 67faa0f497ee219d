//! Centrelines and meshes: coils, curves, links and the skins round them.

mod coils;
mod curves;
mod link_cases;
mod link_search;
mod mesh_desk;
#[path = "../mesh_judge/mod.rs"]
mod mesh_judge;
mod mesh_shapes;
#[path = "../shapes_support/mod.rs"]
mod shapes_support;
