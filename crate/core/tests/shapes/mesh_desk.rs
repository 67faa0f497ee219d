//! A desk-size tube of eight bends: the mesh is a solid, holds the exact volume, and is small.

use tubewright_core::centreline::lines;
use tubewright_core::design::parse;
use tubewright_core::layout::place;
use tubewright_core::mesh::{run_mesh, signed_volume, solidity};
use tubewright_core::tube::Profile;

const DESK: &str = r#"{ "format": "tubewright-design", "version": 1,
  "fittings": [ { "name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5 } ],
  "ports": [ { "name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "F" },
             { "name": "b", "at": [190, 180, 100], "facing": [0, 0, 1], "fitting": "F" } ],
  "runs": [ { "name": "r", "from": "a", "to": "b", "tube": { "outer_diameter": 12, "bore": 10 }, "bend_radius": 12,
    "ends": { "chamfer_deg": 45, "chamfer_length": 0.5, "edge_break": 0.2 },
    "route": [ { "corner": [0, 0, 60] }, { "corner": [60, 0, 60] }, { "corner": [60, 60, 60] }, { "corner": [60, 60, 120] },
      { "corner": [130, 60, 160] }, { "corner": [130, 120, 160] }, { "corner": [190, 180, 160] } ] } ] }"#;

#[test]
fn desk_tube() {
    let design = parse(DESK).unwrap();
    let layout = place(&design);
    let lines = lines(&design, &layout);
    assert_eq!(lines[0].obstacles, []);
    let line = lines[0].line.as_ref().unwrap();
    let profile = Profile::of(&design.runs[0], &layout.runs[0], &design.process.printer, line.length);
    for deviation in [0.5, 0.05, 0.01, 0.002] {
        let mesh = run_mesh(&design.runs[0], &profile, line, deviation).unwrap();
        assert_eq!(solidity(&mesh), []);
        let exact = profile.material_volume();
        let error = signed_volume(&mesh) / exact - 1.0;
        println!("{deviation}: {} triangles, volume {error:e}, length {}", mesh.indices.len() / 3, line.length);
        assert!(error.abs() < 1e-5);
    }
}
