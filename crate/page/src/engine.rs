//! The engine's calls under the names that JavaScript uses.

use wasm_bindgen::prelude::*;

/// The version of the engine, as its package states it.
#[wasm_bindgen]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_string()
}
