//! What an edit is asked to do, read from JSON.

use serde_json::{Map, Value};

use super::Plane;
use crate::design::wording::{listed, quoted, shown};
use crate::design::{Design, Refusal, parse};
use crate::quantity::FURTHEST;
use crate::request;

/// An edit that can be made; runs are named by their index.
pub(super) enum Request {
    Copy { run: usize },
    Reverse { run: usize },
    Mirror { run: usize, plane: Plane },
    Ports { other: Box<Design> },
}

const EXAMPLE: &str = "{ \"edit\": \"mirror\", \"run\": \"pump to block\", \"across\": \"x\", \"at\": 120 }";

impl Request {
    /// # Errors
    /// Anything but a known edit of a run that the design has, with just the keys that it needs.
    pub(super) fn read(text: &str, design: &Design) -> Result<Self, Refusal> {
        let keys = request::object(text, EXAMPLE)?;
        let edit = keys.get("edit").and_then(Value::as_str).unwrap_or_default();
        match edit {
            "copy" => {
                request::knows(&keys, &["edit", "run"], "this edit")?;
                Ok(Self::Copy { run: run(&keys, design)? })
            }
            "reverse" => {
                request::knows(&keys, &["edit", "run"], "this edit")?;
                Ok(Self::Reverse { run: run(&keys, design)? })
            }
            "mirror" => {
                request::knows(&keys, &["edit", "run", "across", "at"], "this edit")?;
                Ok(Self::Mirror { run: run(&keys, design)?, plane: plane(&keys)? })
            }
            "ports" => {
                request::knows(&keys, &["edit", "design"], "this edit")?;
                Ok(Self::Ports { other: Box::new(other(&keys)?) })
            }
            _ => Err(Refusal::at("/edit", "The edit must be one of \"copy\", \"reverse\", \"mirror\" and \"ports\".")),
        }
    }
}

fn run(keys: &Map<String, Value>, design: &Design) -> Result<usize, Refusal> {
    let refused = |message: String| Err(Refusal::at("/run", message));
    let Some(name) = keys.get("run").and_then(Value::as_str) else {
        return refused("Say which run by its name: \"run\": \"...\".".to_owned());
    };
    match design.runs.iter().position(|run| run.name == name) {
        Some(index) => Ok(index),
        None if design.runs.is_empty() => refused("The design has no run yet. Add one first.".to_owned()),
        None => {
            let has = listed(design.runs.iter().map(|run| run.name.as_str()));
            refused(format!("There is no run named {}. The design has {has}.", quoted(name)))
        }
    }
}

fn plane(keys: &Map<String, Value>) -> Result<Plane, Refusal> {
    let across = keys.get("across").and_then(Value::as_str);
    let Some(across) = ["x", "y", "z"].iter().position(|axis| across == Some(axis)) else {
        return Err(Refusal::at("/across", "A run is mirrored across \"x\", \"y\" or \"z\"."));
    };
    match keys.get("at").and_then(Value::as_f64) {
        Some(at) if at.abs() <= FURTHEST => Ok(Plane { across, at }),
        Some(at) => {
            let message = format!("The plane at {} mm is too far from the datum. Stay within 1,000,000 mm.", shown(at));
            Err(Refusal::at("/at", message))
        }
        None => Err(Refusal::at("/at", "Say where the plane is: a number in mm, such as 120.")),
    }
}

fn other(keys: &Map<String, Value>) -> Result<Design, Refusal> {
    let Some(text) = keys.get("design").and_then(Value::as_str) else {
        return Err(Refusal::at("/design", "Give the other design's text, in quotes."));
    };
    parse(text).map_err(|refusal| {
        let at = if refusal.path.is_empty() { String::new() } else { format!(" (at {})", refusal.path) };
        Refusal::at("/design", format!("The other design cannot be read: {}{at}", refusal.message))
    })
}
