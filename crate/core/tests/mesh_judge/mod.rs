//! Judges of meshes that know nothing of the mesher: the exact skin, sampled.
#![allow(dead_code, reason = "each test file uses other parts")]

pub mod near;
pub mod skin;

use tubewright_core::centreline::{Centreline, lines};
use tubewright_core::design::{Run, parse};
use tubewright_core::engine::{Piece, Stages};
use tubewright_core::layout::place;
use tubewright_core::mesh::{Mesh, run_mesh, signed_volume, solidity};
use tubewright_core::tube::Profile;

/// A run taken through the stages before the mesh.
pub struct Case {
    pub run: Run,
    pub line: Centreline,
    pub profile: Profile,
}

impl Case {
    pub fn of(text: &str) -> Self {
        let design = parse(text).unwrap_or_else(|refusal| panic!("{refusal}\n{text}"));
        let layout = place(&design);
        let lines = lines(&design, &layout);
        assert_eq!(lines[0].obstacles, [], "{text}");
        let line = lines[0].line.clone().expect("a line");
        let profile = Profile::of(&design.runs[0], &layout.runs[0], &design.process.printer, line.length);
        Self { run: design.runs[0].clone(), line, profile }
    }

    /// The pieces of a design's first run, each as a case of its own.
    pub fn pieces(text: &str) -> Vec<Self> {
        let stages = Stages::of(text).unwrap_or_else(|refusal| panic!("{refusal}\n{text}"));
        let line = stages.lines[0].line.clone().expect("a line");
        let run = &stages.design.runs[0];
        let of = |piece: Piece| Self { run: run.clone(), line: line.clone(), profile: piece.profile };
        stages.pieces(0).into_iter().map(of).collect()
    }

    pub fn mesh(&self, deviation: f64) -> Mesh {
        run_mesh(&self.run, &self.profile, &self.line, deviation).unwrap_or_else(|fault| panic!("{fault:?}"))
    }

    /// A solid of the exact volume, nowhere farther from the exact skin than the deviation, nor the skin from it.
    pub fn holds(&self, told: &str, deviation: f64, volume: f64) {
        let mesh = self.mesh(deviation);
        let error = signed_volume(&mesh) / self.profile.material_volume() - 1.0;
        let skin = skin::Skin::of(self);
        let (out, back) = (skin.farthest_of(&mesh), skin.farthest_from(&mesh, 2.0 * deviation));
        println!("{told}, {deviation}: {} triangles, volume {error:e}, off {out} and {back}", mesh.indices.len() / 3);
        assert_eq!(solidity(&mesh), [], "{told}, {deviation}");
        assert!(error.abs() < volume, "{told}, {deviation}: volume {error:e}");
        assert!(out <= deviation && back <= deviation, "{told}, {deviation}: off {out} and {back}");
    }
}

/// A design of one run between two ports.
pub fn design(from: &str, out: &str, to: &str, back: &str, run: &str) -> String {
    format!(
        r#"{{ "format": "tubewright-design", "version": 1,
  "fittings": [ {{ "name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5 }} ],
  "ports": [ {{ "name": "a", "at": {from}, "facing": {out}, "fitting": "F" }},
             {{ "name": "b", "at": {to}, "facing": {back}, "fitting": "F" }} ],
  "runs": [ {{ "name": "r", "from": "a", "to": "b", {run} }} ] }}"#
    )
}

/// The rest of a run with short chamfers, and what else `more` says of it.
pub fn plain(outer: f64, bore: f64, bend: f64, route: &str, more: &str) -> String {
    format!(
        r#""tube": {{ "outer_diameter": {outer}, "bore": {bore} }}, "bend_radius": {bend}, "route": [{route}], {more}
        "ends": {{ "chamfer_deg": 45, "chamfer_length": 0.4, "edge_break": 0.2, "seat_mark": false }}"#
    )
}
