//! What ships with the engine: fittings, tube sizes, materials, printers, coolants and demo designs, compiled in from
//! `presets/`. Every figure there carries its source.

use serde::Deserialize;

use crate::design::{Base, Clarity, Coolant, Look, Material, Printer, PumpPoint, PumpStated, Way};

const FITTINGS: &str = include_str!("../../../presets/fittings.json");
const TUBES: &str = include_str!("../../../presets/tubes.json");
const MATERIALS: &str = include_str!("../../../presets/materials.json");
const PRINTERS: &str = include_str!("../../../presets/printers.json");
const COOLANTS: &str = include_str!("../../../presets/coolants.json");
const PUMPS: &str = include_str!("../../../presets/pumps.json");
const PARTS: &str = include_str!("../../../presets/parts.json");
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
/// `coolants`, `pumps`, `parts` (of a loop), `threads` and `demos`.
pub fn all() -> String {
    format!(
        "{{\"fittings\":{FITTINGS},\"tubes\":{TUBES},\"materials\":{MATERIALS},\"printers\":{PRINTERS},\
         \"coolants\":{COOLANTS},\"pumps\":{PUMPS},\"parts\":{PARTS},\"threads\":{THREADS},\"demos\":[{}]}}",
        DEMOS.join(",")
    )
}

/// The shipped materials.
pub fn materials() -> Vec<Material> {
    let rows: Vec<Stuff> = rows(MATERIALS);
    rows.into_iter().map(Stuff::material).collect()
}

/// How the shipped material of that name looks; none where there is no such material, or nothing is said of its look.
pub fn look_of(material: &str) -> Option<Look> {
    materials().into_iter().find(|shipped| shipped.name == material).and_then(|shipped| shipped.look)
}

/// The shipped coolants.
pub fn coolants() -> Vec<Coolant> {
    let rows: Vec<Substance> = rows(COOLANTS);
    rows.into_iter()
        .map(|row| Coolant {
            name: row.name,
            density_g_per_cm3: row.density_g_per_cm3,
            base: Base::ALL.into_iter().find(|base| base.word() == row.base),
            glycol_percent: row.glycol_percent,
            viscosity_mpa_s: None,
            source: row.source,
        })
        .collect()
}

/// The shipped classes of printers.
pub fn printers() -> Vec<Printer> {
    let rows: Vec<Machine> = rows(PRINTERS);
    rows.into_iter()
        .map(|row| Printer {
            name: row.name,
            build_volume: row.build_volume,
            least_wall: row.least_wall,
            tolerance: row.tolerance,
            margin: row.margin,
            layer_mm: row.layer_mm,
            spot_mm: row.spot_mm,
            overhang_deg: row.overhang_deg,
            bore_deg: row.bore_deg,
            bridge_mm: row.bridge_mm,
            seconds_per_layer: row.seconds_per_layer,
            most_triangles: row.most_triangles,
            most_mb: row.most_mb,
            source: row.source,
        })
        .collect()
}

/// The shipped pumps.
pub fn pumps() -> Vec<PumpStated> {
    let rows: Vec<Curve> = rows(PUMPS);
    let point = |CurvePoint { flow_l_per_h, head_m }| PumpPoint { flow_l_per_h, head_m };
    rows.into_iter()
        .map(|Curve { name, points, source }| PumpStated {
            name,
            points: points.into_iter().map(point).collect(),
            source,
        })
        .collect()
}

/// A material as its file has it; `price` is per litre.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Stuff {
    name: String,
    way: String,
    density_g_per_cm3: f64,
    glass_c: Option<f64>,
    semicrystalline: bool,
    hdt_045_c: Option<f64>,
    hdt_180_c: Option<f64>,
    strength_mpa: Option<f64>,
    modulus_mpa: Option<f64>,
    elongation_percent: Option<f64>,
    expansion_um_per_m_k: Option<f64>,
    water_uptake_percent: Option<f64>,
    across_layers: Option<f64>,
    tight_from_mm: Option<f64>,
    roughness_um: Option<f64>,
    price_per_l: Option<f64>,
    #[serde(default)]
    look: Option<Seen>,
    cautions: String,
    source: String,
}

impl Stuff {
    fn material(self) -> Material {
        Material {
            way: Way::ALL.into_iter().find(|way| way.word() == self.way),
            name: self.name,
            density_g_per_cm3: self.density_g_per_cm3,
            glass_c: self.glass_c,
            semicrystalline: self.semicrystalline,
            hdt_045_c: self.hdt_045_c,
            hdt_180_c: self.hdt_180_c,
            strength_mpa: self.strength_mpa,
            modulus_mpa: self.modulus_mpa,
            elongation_percent: self.elongation_percent,
            expansion_um_per_m_k: self.expansion_um_per_m_k,
            water_uptake_percent: self.water_uptake_percent,
            across_layers: self.across_layers,
            tight_from_mm: self.tight_from_mm,
            roughness_um: self.roughness_um,
            price_per_l: self.price_per_l,
            look: self.look.and_then(Seen::look),
            cautions: self.cautions,
            source: self.source,
        }
    }
}

/// A look as the file has it.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Seen {
    clarity: String,
    colour: String,
}

impl Seen {
    fn look(self) -> Option<Look> {
        let clarity = Clarity::ALL.into_iter().find(|clarity| clarity.word() == self.clarity)?;
        Some(Look { clarity, colour: Look::colour_of(&self.colour)? })
    }
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Substance {
    name: String,
    density_g_per_cm3: f64,
    base: String,
    glycol_percent: f64,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Machine {
    name: String,
    build_volume: [f64; 3],
    least_wall: f64,
    tolerance: Option<f64>,
    margin: f64,
    layer_mm: Option<f64>,
    spot_mm: Option<f64>,
    overhang_deg: Option<f64>,
    bore_deg: Option<f64>,
    bridge_mm: Option<f64>,
    seconds_per_layer: Option<f64>,
    most_triangles: Option<f64>,
    most_mb: Option<f64>,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Curve {
    name: String,
    points: Vec<CurvePoint>,
    source: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct CurvePoint {
    flow_l_per_h: f64,
    head_m: f64,
}

/// The rows of a compiled-in file; a test holds that each file can be read, so an empty list is never seen.
fn rows<T: for<'de> Deserialize<'de>>(file: &str) -> Vec<T> {
    serde_json::from_str(file).unwrap_or_default()
}
