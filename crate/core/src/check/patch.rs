//! The steps that checks propose, made on a design in memory: what the engine does with the same steps on its text.

use super::PatchStep;
use crate::design::{Coordinate, Design, Station};
use serde_json::Value;

/// The design after the steps; none if a step is not of the kinds that checks propose or does not fit the design.
pub fn patched(design: &Design, steps: &[PatchStep]) -> Option<Design> {
    let mut design = design.clone();
    steps.iter().try_for_each(|step| make(&mut design, step))?;
    Some(design)
}

fn make(design: &mut Design, step: &PatchStep) -> Option<()> {
    let mut keys = step.path.strip_prefix("/runs/")?.split('/');
    let run = design.runs.get_mut(keys.next()?.parse::<usize>().ok()?)?;
    let keys: Vec<&str> = keys.collect();
    let number = || step.value.as_ref().and_then(Value::as_f64);
    match (step.op, &keys[..]) {
        ("add", ["bend_radius"]) => run.bend_radius = number()?,
        ("add", ["tube", "outer_diameter"]) => run.tube.outer_diameter = number()?,
        ("add", ["tube", "bore"]) => run.tube.bore = number()?,
        ("add", ["ends", "chamfer_length"]) => run.ends.chamfer_length = number()?,
        ("add", ["ends", "edge_break"]) => run.ends.edge_break = number()?,
        ("remove", ["route", station]) => {
            let station = station.parse::<usize>().ok().filter(|station| *station < run.route.len())?;
            run.route.remove(station);
        }
        ("add", ["route", station, "bend_radius"]) => {
            let Station::Corner(corner) = run.route.get_mut(station.parse::<usize>().ok()?)?;
            corner.bend_radius = Some(number()?);
        }
        ("replace", ["route", station, "corner", axis]) => {
            let Station::Corner(corner) = run.route.get_mut(station.parse::<usize>().ok()?)?;
            *corner.at.get_mut(axis.parse::<usize>().ok()?)? = coordinate(step.value.as_ref()?)?;
        }
        _ => return None,
    }
    Some(())
}

fn coordinate(value: &Value) -> Option<Coordinate> {
    match value.as_f64() {
        Some(number) => Some(Coordinate::Fixed(number)),
        None => {
            Some(Coordinate::Tied { of: value.get("of")?.as_str()?.to_owned(), plus: value.get("plus")?.as_f64()? })
        }
    }
}
