//! The engine's calls and the preview, bound for the page.

mod engine;
pub mod view;
