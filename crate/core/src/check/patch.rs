//! The steps that checks propose, made on a design in memory: what the engine does with the same steps on its text.

use super::PatchStep;
use crate::design::{Coordinate, Cut, Design, Station};
use crate::presets;
use serde_json::Value;

/// The design after the steps; none if a step is not of the kinds that checks propose or does not fit the design.
pub fn patched(design: &Design, steps: &[PatchStep]) -> Option<Design> {
    let mut design = design.clone();
    steps.iter().try_for_each(|step| make(&mut design, step))?;
    Some(design)
}

fn make(design: &mut Design, step: &PatchStep) -> Option<()> {
    if (step.op, step.path.as_str()) == ("add", "/process/material") {
        let name = step.value.as_ref()?.as_str()?;
        design.process.material = presets::materials().into_iter().find(|shipped| shipped.name == name)?;
        return Some(());
    }
    if let (("add", Some(key)), Some(value)) = ((step.op, step.path.strip_prefix("/process/joint/")), &step.value) {
        let joint = &mut design.process.joint;
        match key {
            "length" => joint.length = value.as_f64()?,
            "wall" => joint.wall = value.as_f64()?,
            _ => return None,
        }
        return Some(());
    }
    let mut keys = step.path.strip_prefix("/runs/")?.split('/');
    let run = design.runs.get_mut(keys.next()?.parse::<usize>().ok()?)?;
    let keys: Vec<&str> = keys.collect();
    let number = || step.value.as_ref().and_then(Value::as_f64);
    match (step.op, &keys[..]) {
        ("add", ["bend_radius"]) => run.bend_radius = number()?,
        ("add", ["tube", "outer_diameter"]) => run.tube.outer_diameter = number()?,
        ("add", ["tube", "bore"]) => run.tube.bore = number()?,
        ("add", ["ends", "chamfer_length"]) => run.ends.chamfer_length = number()?,
        ("add", ["dress", key]) => {
            let dress = run.dress.as_mut()?;
            match *key {
                "depth" => dress.depth = number()?,
                "blend" => dress.blend = number()?,
                "diameter" => dress.diameter = Some(number()?),
                "end_diameter" => dress.end_diameter = Some(number()?),
                _ => return None,
            }
        }
        ("add", ["ends", "trim"]) => run.ends.trim = number()?,
        ("add", ["ends", "edge_break"]) => run.ends.edge_break = number()?,
        ("remove", ["route", station]) => {
            let station = station.parse::<usize>().ok().filter(|station| *station < run.route.len())?;
            run.route.remove(station);
        }
        ("add", ["cuts"]) => {
            let places = step.value.as_ref()?.as_array()?.iter().map(|cut| cut.get("at")?.as_f64());
            run.cuts = places.map(|at| Some(Cut { at: at?, stance: None })).collect::<Option<_>>()?;
        }
        ("replace", ["cuts", cut, "at"]) => run.cuts.get_mut(cut.parse::<usize>().ok()?)?.at = number()?,
        ("remove", ["cuts", cut]) => {
            let cut = cut.parse::<usize>().ok().filter(|cut| *cut < run.cuts.len())?;
            run.cuts.remove(cut);
        }
        ("add", ["route", station, "bend_radius"]) => {
            let Station::Corner(corner) = run.route.get_mut(station.parse::<usize>().ok()?)? else { return None };
            corner.bend_radius = Some(number()?);
        }
        ("replace", ["route", station, "corner", axis]) => {
            let Station::Corner(corner) = run.route.get_mut(station.parse::<usize>().ok()?)? else { return None };
            *corner.at.get_mut(axis.parse::<usize>().ok()?)? = coordinate(step.value.as_ref()?)?;
        }
        ("replace", ["route", station, "through", axis]) => {
            let Station::Through(through) = run.route.get_mut(station.parse::<usize>().ok()?)? else { return None };
            *through.at.get_mut(axis.parse::<usize>().ok()?)? = coordinate(step.value.as_ref()?)?;
        }
        ("add", ["route", station, "coil", key]) => {
            let Station::Coil(coil) = run.route.get_mut(station.parse::<usize>().ok()?)? else { return None };
            match *key {
                "radius" => coil.radius = number()?,
                "end_radius" => coil.end_radius = Some(number()?),
                "pitch" => coil.pitch = number()?,
                "turns" => coil.turns = number()?,
                _ => return None,
            }
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
