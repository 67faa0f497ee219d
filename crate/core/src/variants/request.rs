//! What is asked for, read from JSON.

use serde_json::{Map, Value};

use super::shared::Place;
use super::variant::Variant;
use crate::design::wording::{listed, quoted};
use crate::design::{Design, Refusal};
use crate::{presets, request};

/// Most combinations of one request.
const MOST: usize = 1_000;

/// Combinations that can be tried.
pub(super) struct Request {
    /// The runs that are changed.
    pub runs: Vec<usize>,
    outer_diameters: Vec<f64>,
    bores: Vec<f64>,
    materials: Vec<String>,
}

impl Request {
    /// # Errors
    /// Anything but lists of sizes, names of shipped materials and the name of a run that the design has.
    pub fn read(text: &str, design: &Design) -> Result<Self, Refusal> {
        const EXAMPLE: &str = "{ \"outer_diameters\": [12, 14], \"bores\": [8, 10], \"materials\": [\"PETG\"] }";
        let keys = request::object(text, EXAMPLE)?;
        request::knows(&keys, &["outer_diameters", "bores", "materials", "run"], "it")?;
        let request = Self {
            runs: runs(&keys, design)?,
            outer_diameters: sizes(&keys, "outer_diameters")?,
            bores: sizes(&keys, "bores")?,
            materials: materials(&keys)?,
        };
        let count = [request.outer_diameters.len(), request.bores.len(), request.materials.len()];
        let count = count.iter().fold(1_usize, |all, some| all.saturating_mul((*some).max(1)));
        if count > MOST {
            return Err(Refusal::at("", format!("These are {count} variants; at most {MOST} can be tried at once.")));
        }
        Ok(request)
    }

    /// Every combination, outer diameters outermost, then bores, then materials.
    pub fn combinations(&self) -> Vec<Variant> {
        let choices = |length: usize| 0..length.max(1);
        let mut combinations = Vec::new();
        for outer_diameter in choices(self.outer_diameters.len()) {
            for bore in choices(self.bores.len()) {
                for material in choices(self.materials.len()) {
                    combinations.push(Variant {
                        outer_diameter: self.outer_diameters.get(outer_diameter).copied(),
                        bore: self.bores.get(bore).copied(),
                        material: self.materials.get(material).cloned(),
                        place: Place { outer_diameter, bore, material },
                    });
                }
            }
        }
        combinations
    }
}

fn runs(keys: &Map<String, Value>, design: &Design) -> Result<Vec<usize>, Refusal> {
    let name = match keys.get("run") {
        None | Some(Value::Null) => return Ok((0..design.runs.len()).collect()),
        Some(Value::String(name)) => name,
        Some(_) => return Err(Refusal::at("/run", "Say which run by its name: \"run\": \"...\".")),
    };
    match design.runs.iter().position(|run| run.name == *name) {
        Some(index) => Ok(vec![index]),
        None => {
            let has = listed(design.runs.iter().map(|run| run.name.as_str()));
            Err(Refusal::at("/run", format!("There is no run named {}. The design has {has}.", quoted(name))))
        }
    }
}

/// A list of lengths; whether a tube can have them is the design's to say.
fn sizes(keys: &Map<String, Value>, key: &str) -> Result<Vec<f64>, Refusal> {
    let refused = |place: String| Err(Refusal::at(place, "Give numbers in mm, such as [8, 9.5, 10]."));
    match keys.get(key) {
        None | Some(Value::Null) => Ok(Vec::new()),
        Some(Value::Array(items)) => items
            .iter()
            .enumerate()
            .map(|(index, item)| item.as_f64().map_or_else(|| refused(format!("/{key}/{index}")), Ok))
            .collect(),
        Some(_) => refused(format!("/{key}")).map(|size: f64| vec![size]),
    }
}

fn materials(keys: &Map<String, Value>) -> Result<Vec<String>, Refusal> {
    let shipped = presets::materials();
    let refused = |place: String, found: &str| {
        let has = listed(shipped.iter().map(|material| material.name.as_str()));
        Err(Refusal::at(place, format!("{found} There is {has}.")))
    };
    let items = match keys.get("materials") {
        None | Some(Value::Null) => return Ok(Vec::new()),
        Some(Value::Array(items)) => items,
        Some(_) => return refused("/materials".into(), "Give a list of materials' names."),
    };
    let mut names = Vec::with_capacity(items.len());
    for (index, item) in items.iter().enumerate() {
        match item.as_str() {
            Some(name) if shipped.iter().any(|material| material.name == name) => names.push(name.to_owned()),
            Some(name) => {
                return refused(format!("/materials/{index}"), &format!("No material {} ships.", quoted(name)));
            }
            None => return refused(format!("/materials/{index}"), "Give a material's name in quotes."),
        }
    }
    Ok(names)
}
