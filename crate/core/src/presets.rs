//! What ships with the engine: fittings, tube sizes, materials, printers, coolants and demo designs, compiled in from
//! `presets/`. Every figure there carries its source.

use serde::Deserialize;

use crate::design::{Coolant, Material, Printer};

const FITTINGS: &str = include_str!("../../../presets/fittings.json");
const TUBES: &str = include_str!("../../../presets/tubes.json");
const MATERIALS: &str = include_str!("../../../presets/materials.json");
const PRINTERS: &str = include_str!("../../../presets/printers.json");
const COOLANTS: &str = include_str!("../../../presets/coolants.json");
const THREADS: &str = include_str!("../../../presets/threads.json");
const DEMOS: [&str; 7] = [
    include_str!("../../../presets/demos/right-angle.json"),
    include_str!("../../../presets/demos/loop.json"),
    include_str!("../../../presets/demos/coil.json"),
    include_str!("../../../presets/demos/spiral.json"),
    include_str!("../../../presets/demos/lazy-curve.json"),
    include_str!("../../../presets/demos/shared-room.json"),
    include_str!("../../../presets/demos/dressed.json"),
];

/// Everything that ships, as one JSON object with the lists `fittings`, `tubes`, `materials`, `printers`,
/// `coolants`, `threads` and `demos`.
pub fn all() -> String {
    format!(
        "{{\"fittings\":{FITTINGS},\"tubes\":{TUBES},\"materials\":{MATERIALS},\"printers\":{PRINTERS},\
         \"coolants\":{COOLANTS},\"threads\":{THREADS},\"demos\":[{}]}}",
        DEMOS.join(",")
    )
}

/// The shipped materials.
pub fn materials() -> Vec<Material> {
    let rows: Vec<Substance> = rows(MATERIALS);
    rows.into_iter()
        .map(|Substance { name, density_g_per_cm3, source }| Material { name, density_g_per_cm3, source })
        .collect()
}

/// The shipped coolants.
pub fn coolants() -> Vec<Coolant> {
    let rows: Vec<Substance> = rows(COOLANTS);
    rows.into_iter()
        .map(|Substance { name, density_g_per_cm3, source }| Coolant { name, density_g_per_cm3, source })
        .collect()
}

/// The shipped classes of printers.
pub fn printers() -> Vec<Printer> {
    let rows: Vec<Machine> = rows(PRINTERS);
    rows.into_iter()
        .map(|Machine { name, build_volume, least_wall, source }| Printer { name, build_volume, least_wall, source })
        .collect()
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Substance {
    name: String,
    density_g_per_cm3: f64,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Machine {
    name: String,
    build_volume: [f64; 3],
    least_wall: f64,
    source: String,
}

/// The rows of a compiled-in file; a test holds that each file can be read, so an empty list is never seen.
fn rows<T: for<'de> Deserialize<'de>>(file: &str) -> Vec<T> {
    serde_json::from_str(file).unwrap_or_default()
}
