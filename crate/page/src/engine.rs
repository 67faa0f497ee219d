//! The engine's calls under the names that JavaScript uses; texts and arrays go in and out as copies.
//!
//! A refused call throws an `Error` with a plain `message` and, as `path`, a JSON Pointer (RFC 6901) to what was wrong.
//! A thrown `Error` without `path` means that the engine itself gave way: its instance must be replaced by a new one.

use js_sys::{Error, Float32Array, Function, JsString, Object, Reflect, Uint8Array, Uint32Array};
use serde_json::json;
use tubewright_core::design::{LONGEST_TEXT, Refusal, too_long};
use tubewright_core::engine;
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
extern "C" {
    /// A string that is still JavaScript's: a huge one is refused before it is copied, for memory never shrinks again.
    #[wasm_bindgen(extends = JsString, typescript_type = "string")]
    pub type Text;
}

/// The same design as canonical JSON text: defaults filled in, keys in order.
#[wasm_bindgen]
pub fn normalise(text: Text) -> Result<String, Error> {
    read(&text).and_then(|text| engine::normalise(&text)).map_err(thrown)
}

/// The design in a file's bytes, as canonical JSON text: a saved design, a 3MF file of it, the archive of everything.
#[wasm_bindgen(js_name = designIn)]
pub fn design_in(bytes: &Uint8Array) -> Result<String, Error> {
    // A huge file is refused before it is copied, for memory never shrinks again.
    if bytes.length() > LARGEST_FILE {
        let message =
            format!("The file has more than {} MB; one with a design is far smaller.", LARGEST_FILE / 1_000_000);
        return Err(thrown(Refusal::at("", message)));
    }
    engine::design_in(&bytes.to_vec()).map_err(thrown)
}

/// Largest file that is looked into for a design, bytes: an archive of hundreds of fine tubes is smaller.
const LARGEST_FILE: u32 = 400_000_000;

/// Everything that makes the text no design: a JSON list of `{ "path", "message" }`, empty for a design.
#[wasm_bindgen]
pub fn problems(text: Text) -> String {
    match read(&text) {
        Ok(text) => engine::problems(&text),
        Err(refusal) => json!([{ "path": refusal.path, "message": refusal.message }]).to_string(),
    }
}

/// A text as a QR code, as JSON text: `{ "size", "path" }`, both null where it is too long for one.
#[wasm_bindgen(js_name = codeOf)]
pub fn code_of(text: Text) -> Result<String, Error> {
    read(&text).map(|text| engine::code_of(&text)).map_err(thrown)
}

/// Lengths, volumes, mass, bounds and bend table of each run, totals, and the findings, as JSON text.
#[wasm_bindgen]
pub fn report(text: Text) -> Result<String, Error> {
    read(&text).and_then(|text| engine::report(&text)).map_err(thrown)
}

/// What there is to draw besides the tubes' meshes, as JSON text.
#[wasm_bindgen]
pub fn scene(text: Text) -> Result<String, Error> {
    read(&text).and_then(|text| engine::scene(&text)).map_err(thrown)
}

/// The triangles of one run, mm, outward, closed, within `deviation` mm of the exact skin.
#[wasm_bindgen(js_name = tubeMesh, unchecked_return_type = "{ positions: Float32Array; indices: Uint32Array }")]
pub fn tube_mesh(
    text: Text,
    #[wasm_bindgen(js_name = runName)] run_name: Text,
    deviation: f64,
) -> Result<Object, Error> {
    let mesh = both(&text, &run_name).and_then(|(text, run)| engine::tube_mesh(&text, &run, deviation));
    let mesh = mesh.map_err(thrown)?;
    let object = Object::new();
    set(&object, "positions", &Float32Array::from(mesh.positions.as_slice()));
    set(&object, "indices", &Uint32Array::from(mesh.indices.as_slice()));
    Ok(object)
}

/// The bytes of the file that the JSON text `request` asks for. `watch`, where there is one, is called with how much is
/// done, 0 to 1, each time that a run of many is; the bytes are the same whoever watches.
#[wasm_bindgen(js_name = exportFile)]
pub fn export_file(text: Text, request: Text, watch: Option<Function>) -> Result<Vec<u8>, Error> {
    let mut told = |share: f64| {
        if let Some(watch) = &watch {
            // Who watches cannot stop the work by throwing.
            let _ = watch.call1(&JsValue::NULL, &share.into());
        }
    };
    let (text, request) = both(&text, &request).map_err(thrown)?;
    engine::export_file_watched(&text, &request, &mut told).map_err(thrown)
}

/// What a print service asks of the STL of a run, each question with its answer, as JSON text; `request` is JSON text, such
/// as `{ "run": "pump to block", "deviation": "fit" }`.
#[wasm_bindgen]
pub fn inspect(text: Text, request: Text) -> Result<String, Error> {
    both(&text, &request).and_then(|(text, request)| engine::inspect(&text, &request)).map_err(thrown)
}

/// A safe name for that file.
#[wasm_bindgen(js_name = fileName)]
pub fn file_name(text: Text, request: Text) -> Result<String, Error> {
    both(&text, &request).and_then(|(text, request)| engine::file_name(&text, &request)).map_err(thrown)
}

/// The design after a JSON Patch (RFC 6902), as canonical text.
#[wasm_bindgen]
pub fn apply(text: Text, patch: Text) -> Result<String, Error> {
    both(&text, &patch).and_then(|(text, patch)| engine::apply(&text, &patch)).map_err(thrown)
}

/// The design after an edit of a whole run, or with another design's ports, as canonical text; `request` is JSON text,
/// such as `{ "edit": "mirror", "run": "pump to block", "across": "x", "at": 120 }`.
#[wasm_bindgen]
pub fn edit(text: Text, request: Text) -> Result<String, Error> {
    both(&text, &request).and_then(|(text, request)| engine::edit(&text, &request)).map_err(thrown)
}

/// The design in other sizes and materials, side by side, as JSON text; `request` is JSON text, such as
/// `{ "outer_diameters": [12, 14], "bores": [8, 10], "materials": ["PETG"] }`.
#[wasm_bindgen]
pub fn variants(text: Text, request: Text) -> Result<String, Error> {
    both(&text, &request).and_then(|(text, request)| engine::variants(&text, &request)).map_err(thrown)
}

/// The best ways for a run, or for a piece of a cut one, counted from 1, to stand on the printer's plate, as JSON text.
#[wasm_bindgen]
pub fn stances(
    text: Text,
    #[wasm_bindgen(js_name = runName)] run_name: Text,
    piece: Option<u32>,
) -> Result<String, Error> {
    both(&text, &run_name)
        .and_then(|(text, run)| engine::piece_stances(&text, &run, piece.unwrap_or(1)))
        .map_err(thrown)
}

/// The fewest pieces that a run is to be cut into for the printer, with a patch that states them, as JSON text.
#[wasm_bindgen]
pub fn cuts(text: Text, #[wasm_bindgen(js_name = runName)] run_name: Text) -> Result<String, Error> {
    both(&text, &run_name).and_then(|(text, run)| engine::cuts(&text, &run)).map_err(thrown)
}

/// All pieces of the design on as few plates of the printer as they are found to take, as JSON text.
#[wasm_bindgen]
pub fn plates(text: Text) -> Result<String, Error> {
    read(&text).and_then(|text| engine::plates(&text)).map_err(thrown)
}

/// What sets two designs apart, from `before` to `after`, as JSON text.
#[wasm_bindgen]
pub fn difference(before: Text, after: Text) -> Result<String, Error> {
    both(&before, &after).and_then(|(before, after)| engine::difference(&before, &after)).map_err(thrown)
}

/// The words and ranges that the form is made of, as JSON text.
#[wasm_bindgen]
pub fn vocabulary() -> String {
    engine::vocabulary()
}

/// Everything that ships: fittings, tubes, materials, printers, coolants, demo designs, as JSON text.
#[wasm_bindgen]
pub fn presets() -> String {
    engine::presets()
}

/// Runs once when the module is started: from then on a panic becomes an `Error` with words, not a bare trap.
#[wasm_bindgen(start)]
fn start() {
    std::panic::set_hook(Box::new(|panic| {
        let error = Error::new(&format!("The engine gave way: {panic}"));
        error.set_name("EngineFault");
        wasm_bindgen::throw_val(error.into());
    }));
}

fn both(text: &Text, other: &Text) -> Result<(String, String), Refusal> {
    Ok((read(text)?, read(other)?))
}

fn read(text: &Text) -> Result<String, Refusal> {
    let not_text = || Refusal::at("", "The engine was given something that is not text.");
    if !text.is_string() {
        return Err(not_text());
    }
    // Each of JavaScript's units of two bytes takes at least one byte in UTF-8.
    let units = text.length() as usize;
    if units > LONGEST_TEXT {
        return Err(too_long(units));
    }
    text.as_string().ok_or_else(not_text)
}

fn thrown(refusal: Refusal) -> Error {
    let error = Error::new(&refusal.message);
    set(&error, "path", &JsValue::from_str(&refusal.path));
    error
}

fn set(object: &Object, key: &str, value: &JsValue) {
    // Setting a key of a fresh plain object cannot fail.
    Reflect::set(object, &JsValue::from_str(key), value).ok();
}
