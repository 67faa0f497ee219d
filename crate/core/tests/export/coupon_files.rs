//! The fit coupon's files: measured as calipers and a finger would, from the triangles alone.

use serde_json::{Value, json};
use std::io::{Cursor, Read};
use tubewright_core::engine::{export_file, file_name};
use tubewright_core::mesh::{Mesh, is_solid};

const CORE: &str = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

fn design(changes: Value) -> String {
    let mut design = json!({
        "format": "tubewright-design", "version": 1, "name": "Puffin",
        "fittings": [
            {"name": "C12", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5},
            {"name": "deep", "tube_diameter": 12, "height": 20, "socket_depth": 13, "collar_diameter": 19, "lead": 5}
        ],
        "ports": [
            {"name": "a", "at": [0, 0, 0], "facing": [0, 0, 1], "fitting": "C12"},
            {"name": "b", "at": [90, 0, 90], "facing": [-1, 0, 0], "fitting": "deep"}
        ],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": 20,
                  "route": [{"corner": [0, 0, 90]}]}]
    });
    json_patch::merge(&mut design, &changes);
    design.to_string()
}

fn unpack(bytes: &[u8]) -> Vec<(String, Vec<u8>)> {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).unwrap();
    (0..archive.len())
        .map(|index| {
            let mut file = archive.by_index(index).unwrap();
            let mut content = Vec::new();
            file.read_to_end(&mut content).unwrap();
            (file.name().unwrap().into_owned(), content)
        })
        .collect()
}

/// Name and mesh of each object of a 3MF.
fn objects(bytes: &[u8]) -> Vec<(String, Mesh)> {
    let parts = unpack(bytes);
    let model = parts.iter().find(|(name, _)| name == "3D/3dmodel.model").unwrap();
    let text = String::from_utf8(model.1.clone()).unwrap();
    let document = roxmltree::Document::parse(&text).unwrap();
    let read = |node: roxmltree::Node<'_, '_>, tag: &str, keys: [&str; 3]| -> Vec<String> {
        let rows = node.descendants().filter(|child| child.has_tag_name((CORE, tag)));
        rows.flat_map(|row| keys.map(|key| row.attribute(key).unwrap().to_owned())).collect()
    };
    let found = document.descendants().filter(|node| node.has_tag_name((CORE, "object")));
    found
        .map(|object| {
            let positions = read(object, "vertex", ["x", "y", "z"]).iter().map(|x| x.parse().unwrap()).collect();
            let indices = read(object, "triangle", ["v1", "v2", "v3"]).iter().map(|x| x.parse().unwrap()).collect();
            (object.attribute("name").unwrap().to_owned(), Mesh { positions, indices })
        })
        .collect()
}

/// What calipers read at each height of a stick: outer radius and bore, each with its height, from the bottom up.
struct Measured {
    outer: Vec<[f64; 2]>,
    bore: Vec<[f64; 2]>,
    length: f64,
}

fn measured(mesh: &Mesh) -> Measured {
    let points: Vec<[f64; 3]> = mesh.positions.as_chunks::<3>().0.iter().map(|point| point.map(f64::from)).collect();
    let middle = |axis: usize| {
        let [low, high] = points
            .iter()
            .fold([f64::MAX, f64::MIN], |[low, high], point| [low.min(point[axis]), high.max(point[axis])]);
        [(low + high) / 2.0, high - low]
    };
    let [[x, _], [y, _], [_, length]] = [middle(0), middle(1), middle(2)];
    let mut all: Vec<[f64; 2]> =
        points.iter().map(|point| [point[2], libm::hypot(point[0] - x, point[1] - y)]).collect();
    all.sort_by(|a, b| a[0].total_cmp(&b[0]));
    let [mut outer, mut bore] = [Vec::new(), Vec::new()];
    for ring in all.chunk_by(|a, b| (a[0] - b[0]).abs() < 1e-4) {
        // Between the two skins lies half the wall at least.
        for (skin, keep) in [(&mut outer, true), (&mut bore, false)] {
            let on: Vec<f64> =
                ring.iter().map(|[_, radius]| *radius).filter(|radius| (*radius > 5.0) == keep).collect();
            if !on.is_empty() {
                skin.push([ring[0][0], on.iter().sum::<f64>() / on.len() as f64]);
            }
        }
    }
    Measured { outer, bore, length }
}

/// The radius at a height, between the rings beside it.
fn at(skin: &[[f64; 2]], height: f64) -> f64 {
    let next = skin.iter().position(|[z, _]| *z >= height).unwrap().max(1);
    let [[z0, r0], [z1, r1]] = [skin[next - 1], skin[next]];
    r0 + (r1 - r0) * (height - z0) / (z1 - z0)
}

/// Grooves felt between two heights: places where the skin turns from falling to rising.
fn grooves(skin: &[[f64; 2]], from: f64, to: f64) -> usize {
    let inside = skin.windows(3).filter(|three| three[1][0] > from && three[1][0] < to);
    inside.filter(|three| three[1][1] < three[0][1] - 0.05 && three[1][1] < three[2][1] - 0.05).count()
}

#[test]
fn each_end_has_its_size_its_finish_and_its_count_of_rings() {
    let sticks = objects(&export_file(&design(json!({})), r#"{"kind": "coupon", "run": "r"}"#).unwrap());
    assert_eq!(sticks.len(), 4, "seven sizes and one more of the middle one");
    let mut seen = Vec::new();
    for (name, mesh) in &sticks {
        assert!(is_solid(mesh), "{name}");
        let stick = measured(mesh);
        assert!((stick.length % 5.0).abs() < 1e-4, "{}", stick.length);
        let (outer, bore, length) = (&stick.outer, &stick.bore, stick.length);
        for (bottom, turned) in [(true, 1.0), (false, -1.0)] {
            let from_end = |distance: f64| if bottom { distance } else { length - distance };
            let size = 2.0 * at(outer, from_end(8.0));
            let bored = 2.0 * at(bore, from_end(8.0));
            // The deeper socket takes 13 mm; nothing is scribed there.
            let socket = [from_end(2.5), from_end(13.5)];
            assert_eq!(grooves(outer, socket[0].min(socket[1]), socket[0].max(socket[1])), 0, "{name}");
            let half = if bottom { [13.5, length / 2.0] } else { [length / 2.0, length - 13.5] };
            let rings = grooves(outer, half[0], half[1]);
            // Chamfer and edge break as a run has them where it says nothing: 15 degrees over 2 mm, 0.3 mm.
            let drop = libm::tan(15_f64.to_radians()) * 2.0;
            assert!((2.0 * at(outer, from_end(0.0)) - (size - 2.0 * drop)).abs() < 0.02, "{name} {turned}");
            assert!(2.0 * at(bore, from_end(0.0)) > bored + 0.3, "{name} {turned}");
            assert!((size - bored - 4.0).abs() < 0.02, "{name}: the wall is the run's");
            assert!(name.contains(&format!("with {rings} ring")), "{name}: {rings}");
            seen.push((rings, size));
        }
    }
    let rings: Vec<usize> = seen.iter().map(|(rings, _)| *rings).collect();
    assert_eq!(rings, [1, 2, 3, 4, 5, 6, 7, 4]);
    for (rings, size) in seen {
        let aim = 12.0 + 0.05 * (rings as f64 - 4.0);
        assert!((size - aim).abs() < 0.02, "{rings} rings: {size}, not {aim}");
    }
}

#[test]
fn an_archive_of_stls_holds_the_same_sticks() {
    let text = design(json!({}));
    let request = r#"{"kind": "coupon", "run": "r", "format": "stl", "count": 5, "step": 0.1}"#;
    let files = unpack(&export_file(&text, request).unwrap());
    let names: Vec<&str> = files.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(
        names,
        [
            "stick 1, 11.8 mm with 1 ring, 11.9 mm with 2 rings.stl",
            "stick 2, 12 mm with 3 rings, 12.1 mm with 4 rings.stl",
            "stick 3, 12.2 mm with 5 rings, 12 mm with 3 rings.stl"
        ]
    );
    let boxed = objects(&export_file(&text, r#"{"kind": "coupon", "run": "r", "count": 5, "step": 0.1}"#).unwrap());
    for ((_, bytes), (_, mesh)) in files.iter().zip(&boxed) {
        let stl = stl_io::read_stl(&mut Cursor::new(bytes)).unwrap();
        assert_eq!(stl.faces.len(), mesh.indices.len() / 3);
    }
    assert_eq!(file_name(&text, request).unwrap(), "r coupon.zip");
    assert_eq!(file_name(&text, r#"{"kind": "coupon", "run": "r"}"#).unwrap(), "r coupon.3mf");
}

#[test]
fn rings_stand_out_where_the_wall_is_too_thin_to_scribe() {
    let thin = json!({"runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 10},
        "bend_radius": 20, "route": [{"corner": [0, 0, 90]}], "ends": {"chamfer_length": 1}}]});
    let sticks = objects(&export_file(&design(thin), r#"{"kind": "coupon", "run": "r"}"#).unwrap());
    let stick = measured(&sticks[3].1);
    let widest = stick.outer.iter().map(|[_, radius]| *radius).fold(0.0, f64::max);
    assert!((2.0 * widest - 12.65).abs() < 0.03, "{widest}");
    let ridges =
        stick.outer.windows(3).filter(|three| three[1][1] > three[0][1] + 0.1 && three[1][1] > three[2][1] + 0.1);
    assert_eq!(ridges.count(), 7 + 4);
}

#[test]
fn what_no_coupon_can_be_is_refused_in_its_place() {
    let refused = |changes: Value, request: Value| {
        let refusal = export_file(&design(changes), &request.to_string()).unwrap_err();
        (refusal.path, refusal.message)
    };
    let with = |more: Value| {
        let mut request = json!({"kind": "coupon", "run": "r"});
        json_patch::merge(&mut request, &more);
        request
    };
    for (more, path) in [
        (json!({"run": null}), "/run"),
        (json!({"run": "s"}), "/run"),
        (json!({"count": 4}), "/count"),
        (json!({"count": 17}), "/count"),
        (json!({"count": "7"}), "/count"),
        (json!({"step": 0}), "/step"),
        (json!({"step": 0.3}), "/step"),
        (json!({"format": "obj"}), "/format"),
        (json!({"width": 3}), "/width"),
        (json!({"kind": "stl", "step": 0.05}), "/step"),
    ] {
        let (found, message) = refused(json!({}), with(more.clone()));
        assert_eq!(found, path, "{more} {message}");
    }
    let tube = |tube: Value| json!({"runs": [{"name": "r", "from": "a", "to": "b", "bend_radius": 20, "route": [{"corner": [0, 0, 90]}], "tube": tube}]});
    let (path, message) =
        refused(tube(json!({"outer_diameter": 3, "bore": 1})), with(json!({"count": 15, "step": 0.2})));
    assert_eq!((path.as_str(), message.contains("-0.4 mm")), ("/step", true), "{message}");
    let (path, message) = refused(tube(json!({"outer_diameter": 12, "bore": 11})), with(json!({})));
    assert_eq!(path, "/runs/0/ends/chamfer_length", "{message}");
}

#[test]
fn a_run_that_has_no_way_yet_still_has_a_coupon() {
    let stuck = json!({"runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8},
        "bend_radius": 90, "route": [{"corner": [0, 0, 90]}]}]});
    assert!(export_file(&design(stuck.clone()), r#"{"kind": "stl", "run": "r"}"#).is_err());
    assert_eq!(objects(&export_file(&design(stuck), r#"{"kind": "coupon", "run": "r"}"#).unwrap()).len(), 4);
}
