//! The picture in plain words, for those who do not see it.

use super::look::Clarity;
use super::scene::Scene;

/// What the picture shows; `drawn` names the runs whose tubes it holds, `square` is the spacing of its paper, mm.
pub fn description(scene: &Scene, drawn: &[String], selected: Option<&str>, section: bool, square: f64) -> String {
    if scene.ports.is_empty() && scene.runs.is_empty() && scene.keep_outs.is_empty() {
        return "Preview of an empty design: squared paper and the axes x, y and z.".to_string();
    }
    let unmade: Vec<&str> = scene.runs.iter().filter(|run| !run.made).map(|run| run.name.as_str()).collect();
    let mut words = format!("Preview of {}", listed("tube", "tubes", drawn));
    let counts = [("port", "ports", scene.ports.len()), ("keep-out", "keep-outs", scene.keep_outs.len())];
    for (one, many, count) in counts.into_iter().filter(|(.., count)| *count > 0) {
        words += &format!(", {}", counted(one, many, count));
    }
    words += ".";
    if !unmade.is_empty() {
        words += &format!(" Not made, shown as a dashed line: {}.", unmade.join(", "));
    }
    if let Some(name) = selected {
        words += &format!(" Selected: {name}.");
    }
    if section {
        words += " The tubes are cut open along the bore.";
    }
    words + &format!(" Squares of {square} mm.")
}

/// What the tubes' material lets be seen; starts with a space where it is not empty.
pub fn shown(clarity: Option<Clarity>, coolant: bool) -> &'static str {
    match (clarity, coolant) {
        (Some(Clarity::Clear), true) => " The tubes are clear and the coolant in them shows.",
        (Some(Clarity::Clear), false) => " The tubes are clear.",
        (Some(Clarity::Translucent), true) => " The tubes are translucent and the coolant in them shows.",
        (Some(Clarity::Translucent), false) => " The tubes are translucent.",
        (_, true) => " The coolant in the tubes is shown.",
        (_, false) => "",
    }
}

fn listed(one: &str, many: &str, names: &[String]) -> String {
    let count = counted(one, many, names.len());
    if names.is_empty() { count } else { format!("{count} ({})", names.join(", ")) }
}

fn counted(one: &str, many: &str, count: usize) -> String {
    match count {
        0 => format!("no {many}"),
        1 => format!("1 {one}"),
        _ => format!("{count} {many}"),
    }
}
