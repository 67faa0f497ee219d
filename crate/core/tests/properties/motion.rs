//! Documents moved, mirrored and told from their other end, by what their keys mean.

use crate::answers::point;
use nalgebra::Vector3;
use serde_json::{Value, json};
use tubewright_core::layout::{reference_perpendicular, rotate, unit};

/// A map of space that keeps lengths: where points and directions go, and whether it is a mirror.
pub struct Motion<'a> {
    pub at: &'a dyn Fn(Vector3<f64>) -> Vector3<f64>,
    pub along: &'a dyn Fn(Vector3<f64>) -> Vector3<f64>,
    pub mirrors: bool,
}

impl Motion<'_> {
    /// The document with every point, direction, turn and hand mapped.
    pub fn of(&self, document: &Value) -> Value {
        let mut mapped = document.clone();
        let up = (self.along)(Vector3::z());
        mapped["loop"]["up"] = json!([up.x, up.y, up.z]);
        for port in mapped["ports"].as_array_mut().expect("ports") {
            self.put(&mut port["at"], self.at);
            self.put(&mut port["facing"], self.along);
        }
        for run in mapped["runs"].as_array_mut().expect("runs") {
            for station in run["route"].as_array_mut().expect("a route") {
                match station {
                    station if station["corner"].is_array() => self.put(&mut station["corner"], self.at),
                    station if station["through"].is_array() => self.put(&mut station["through"], self.at),
                    station => self.coil(&mut station["coil"]),
                }
            }
            if self.mirrors
                && let Some(twist) = run["dress"]["twist_deg_per_mm"].as_f64()
            {
                run["dress"]["twist_deg_per_mm"] = json!(-twist);
            }
        }
        mapped
    }

    fn put(&self, value: &mut Value, map: &dyn Fn(Vector3<f64>) -> Vector3<f64>) {
        let v = map(Vector3::from(point(value)));
        *value = json!([v.x, v.y, v.z]);
    }

    fn coil(&self, coil: &mut Value) {
        let axis = direction(&coil["axis"]);
        let out = (self.along)(outward(&axis, coil["start_deg"].as_f64().unwrap_or(0.0)));
        self.put(&mut coil["centre"], self.at);
        self.put(&mut coil["axis"], self.along);
        coil["start_deg"] = json!(degrees_about(&direction(&coil["axis"]), &out));
        if self.mirrors {
            coil["hand"] = json!(if left(coil) { "right" } else { "left" });
        }
    }
}

/// The document with every run told from its other end: a coil begins where it ended, climbs the other way, and keeps
/// its hand.
pub fn turned_round(document: &Value) -> Value {
    let mut turned = document.clone();
    for run in turned["runs"].as_array_mut().expect("runs") {
        let (from, to) = (run["from"].clone(), run["to"].clone());
        (run["from"], run["to"]) = (to, from);
        let plain = run["tube"]["outer_diameter"].clone();
        if let Some(dress) = run["dress"].as_object_mut()
            && let Some(last) = dress.get("end_diameter").cloned()
        {
            let first = dress.insert("diameter".into(), last).unwrap_or(plain);
            dress.insert("end_diameter".into(), first);
        }
        let route = run["route"].as_array_mut().expect("a route");
        route.reverse();
        for coil in route.iter_mut().filter_map(|station| station.get_mut("coil")) {
            let axis = direction(&coil["axis"]);
            let [turns, pitch] = ["turns", "pitch"].map(|key| coil[key].as_f64().expect("a number"));
            let swept = 360.0 * turns * if left(coil) { -1.0 } else { 1.0 };
            let out = outward(&axis, coil["start_deg"].as_f64().unwrap_or(0.0) + swept);
            let top = Vector3::from(point(&coil["centre"])) + axis * (pitch * turns);
            coil["centre"] = json!([top.x, top.y, top.z]);
            coil["axis"] = json!([-axis.x, -axis.y, -axis.z]);
            coil["start_deg"] = json!(degrees_about(&-axis, &out));
            if coil["end_radius"].is_number() {
                let radius = coil["radius"].clone();
                coil["radius"] = coil["end_radius"].clone();
                coil["end_radius"] = radius;
            }
        }
    }
    turned
}

fn left(coil: &Value) -> bool {
    coil["hand"] == "left"
}

fn direction(value: &Value) -> Vector3<f64> {
    unit(&Vector3::from(point(value)))
}

/// The direction at an angle about an axis, which counts from the axis's reference perpendicular.
fn outward(axis: &Vector3<f64>, degrees: f64) -> Vector3<f64> {
    rotate(&reference_perpendicular(axis), axis, degrees.to_radians())
}

fn degrees_about(axis: &Vector3<f64>, out: &Vector3<f64>) -> f64 {
    let reference = reference_perpendicular(axis);
    libm::atan2(reference.cross(out).dot(axis), reference.dot(out)).to_degrees()
}
