//! What a print service asks of a file, asked of its own bytes: what is whole passes, and each fault is told as itself.

use serde_json::{Value, json};
use tubewright_core::accept::{Asked, Limits, Question, Solid, questions, read_stl};
use tubewright_core::engine;
use tubewright_core::export::stl;
use tubewright_core::mesh::Mesh;

const EXAMPLE: &str = include_str!("../document/example-canonical.json");
const RUN: &str = "pump to block";

fn file(deviation: Value) -> Vec<u8> {
    let request = json!({ "kind": "stl", "run": RUN, "deviation": deviation });
    engine::export_file(EXAMPLE, &request.to_string()).expect("a file")
}

fn inspected(design: &str, deviation: Value) -> Value {
    let request = json!({ "run": RUN, "deviation": deviation });
    serde_json::from_str(&engine::inspect(design, &request.to_string()).expect("an answer")).unwrap()
}

/// A design with limits of its printer changed.
fn with_printer(text: &str, triangles: f64, mb: f64) -> String {
    let mut design: Value = serde_json::from_str(&engine::normalise(text).unwrap()).unwrap();
    let printer = &mut design["process"]["printer"];
    (printer["most_triangles"], printer["most_mb"]) = (json!(triangles), json!(mb));
    design.to_string()
}

fn failed(asked: &[Asked]) -> Vec<Question> {
    asked.iter().filter(|asked| !asked.passes).map(|asked| asked.code).collect()
}

/// A cube of 10 mm, its corners at 0 and 10.
fn cube() -> Mesh {
    let positions = (0..8).flat_map(|corner| [1, 2, 4].map(|bit| if corner & bit == 0 { 0.0 } else { 10.0 })).collect();
    let faces = [[0, 2, 3, 1], [4, 5, 7, 6], [0, 1, 5, 4], [2, 6, 7, 3], [0, 4, 6, 2], [1, 3, 7, 5]];
    let indices = faces.iter().flat_map(|&[a, b, c, d]| [a, b, c, a, c, d]).collect();
    Mesh { positions, indices }
}

fn limits() -> Limits<'static> {
    Limits { material: 1000.0, wall: 2.0, least_wall: 1.0, room: [100.0; 3], fits: true, ..Limits::default() }
}

fn asked_of(mesh: &Mesh, limits: &Limits<'_>) -> Vec<Asked> {
    questions(&read_stl(&stl(mesh, "cube")).expect("binary STL"), limits)
}

#[test]
fn a_whole_file_passes_what_is_asked_of_its_own_bytes() {
    let told = inspected(EXAMPLE, json!(0.05));
    let bytes = file(json!(0.05));
    assert_eq!(told["bytes"], bytes.len());
    assert_eq!(told["triangles"].as_u64(), Some(u64::from(u32::from_le_bytes(bytes[80..84].try_into().unwrap()))));
    assert_eq!(told["deviation_mm"], 0.05);
    for asked in told["questions"].as_array().unwrap() {
        // The example's box is 120 x 75 x 70 mm and more, for which one service wants 2 mm; its tube has them, its seat mark not.
        assert_eq!(asked["passes"] == true, asked["code"] != "wall_for_size", "{asked}");
        assert!(asked["source"].as_str().is_some_and(|source| !source.is_empty()), "{asked}");
    }
    assert_eq!(told["questions"].as_array().unwrap().len(), 9);
}

#[test]
fn what_is_read_back_is_what_was_written() {
    let Solid { mesh, header, bytes } = read_stl(&stl(&cube(), "a cube")).expect("binary STL");
    assert_eq!((mesh.positions.len(), mesh.indices.len(), bytes), (24, 36, 84 + 50 * 12));
    assert!(header.contains("unit mm"), "{header}");
    assert!(read_stl(b"solid cube").is_none());
    assert!(read_stl(&stl(&cube(), "a cube")[..300]).is_none());
}

#[test]
fn each_fault_is_told_as_itself_and_hides_no_other() {
    assert_eq!(failed(&asked_of(&cube(), &limits())), []);
    let mut open = cube();
    open.indices.truncate(33);
    let found = asked_of(&open, &limits());
    assert!(failed(&found).contains(&Question::Closed));
    assert!(!failed(&found).contains(&Question::OneBody));

    let mut two = cube();
    two.positions.extend(cube().positions.iter().map(|x| x + 20.0));
    two.indices.extend(cube().indices.iter().map(|index| index + 8));
    let found = asked_of(&two, &Limits { material: 2000.0, ..limits() });
    assert_eq!(failed(&found), [Question::OneBody]);
    assert_eq!(found.iter().find(|asked| asked.code == Question::OneBody).unwrap().value, 2.0);

    let mut inward = cube();
    inward.indices.as_chunks_mut::<3>().0.iter_mut().for_each(|face| face.swap(1, 2));
    assert_eq!(failed(&asked_of(&inward, &limits())), [Question::Volume]);
    // 0.05 % of the volume is what a mesh may be off.
    assert_eq!(failed(&asked_of(&cube(), &Limits { material: 1000.4, ..limits() })), []);
    assert_eq!(failed(&asked_of(&cube(), &Limits { material: 1000.6, ..limits() })), [Question::Volume]);

    assert_eq!(failed(&asked_of(&cube(), &Limits { wall: 0.99, ..limits() })), [Question::Wall]);
    assert_eq!(failed(&asked_of(&cube(), &Limits { fits: false, ..limits() })), [Question::Room]);
    assert_eq!(failed(&asked_of(&cube(), &Limits { most_triangles: Some(11.0), ..limits() })), [Question::Triangles]);
    assert_eq!(failed(&asked_of(&cube(), &Limits { most_triangles: Some(12.0), ..limits() })), []);
    assert_eq!(failed(&asked_of(&cube(), &Limits { most_mb: Some(684e-6), ..limits() })), []);
    assert_eq!(failed(&asked_of(&cube(), &Limits { most_mb: Some(683e-6), ..limits() })), [Question::Size]);
}

/// One print service's guide: 1 mm up to 200 mm of sides, 2 mm up to 400, 3 mm beyond. Asked of resin alone.
#[test]
fn larger_parts_of_resin_are_asked_for_thicker_walls() {
    let sized = |side: f32| Mesh { positions: cube().positions.iter().map(|x| x * side / 10.0).collect(), ..cube() };
    for (side, wall, passes) in [
        (66.0, 1.0, true),
        (67.0, 1.9, false),
        (67.0, 2.0, true),
        (133.0, 2.0, true),
        (134.0, 2.9, false),
        (134.0, 3.0, true),
    ] {
        let limits = Limits { wall, resin: true, material: f64::from(side * side * side), ..limits() };
        let found = failed(&asked_of(&sized(side), &limits));
        assert_eq!(found.is_empty(), passes, "sides {side}, wall {wall}: {found:?}");
    }
}

/// The finest of the usual steps whose file is within the limits, by the sizes of the files themselves.
#[test]
fn fit_takes_the_finest_file_that_the_printer_takes() {
    let long = include_str!("../../../xtask/bench/long.json");
    let steps = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0];
    let run = serde_json::from_str::<Value>(long).unwrap()["runs"][0]["name"].clone();
    let bytes = |text: &str, deviation: Value| {
        let request = json!({ "kind": "stl", "run": run, "deviation": deviation });
        engine::export_file(text, &request.to_string()).expect("a file").len()
    };
    let sizes = steps.map(|step| bytes(long, json!(step)));
    let mut chosen = Vec::new();
    for (triangles, mb) in [(1e9, 1e5), (1e9, 4.0), (1e9, 1.0), (((sizes[2] - 84) / 50) as f64, 1e5), (1e3, 1e5)] {
        let design = with_printer(long, triangles, mb);
        let request = json!({ "run": run, "deviation": "fit" }).to_string();
        let told: Value = serde_json::from_str(&engine::inspect(&design, &request).unwrap()).unwrap();
        let fits = |size: usize| size as f64 <= mb * 1e6 && ((size - 84) / 50) as f64 <= triangles;
        let expected = sizes.iter().position(|size| fits(*size));
        assert_eq!(told["deviation_mm"], steps[expected.unwrap_or(6)], "{triangles} triangles, {mb} MB");
        assert_eq!(told["bytes"], sizes[expected.unwrap_or(6)]);
        assert_eq!(told["bytes"], bytes(&design, json!("fit")), "the file itself");
        let failed = told["questions"].as_array().unwrap().iter().filter(|asked| asked["passes"] == false);
        let limits = failed.filter(|asked| asked["code"] == "triangles" || asked["code"] == "size").count();
        assert_eq!(limits == 0, expected.is_some(), "{triangles} triangles, {mb} MB");
        chosen.push(expected);
    }
    assert_eq!(chosen, [Some(0), Some(0), Some(2), Some(2), None], "the limits decide, not the words of the request");
}

/// A file that is corrected by a coupon holds another volume than the tube is to have: it is held against its own.
#[test]
fn a_compensated_file_is_judged_as_it_is_sent() {
    let mut design: Value = serde_json::from_str(EXAMPLE).unwrap();
    design["process"]["fit"] = json!({
        "material": design["process"]["material"]["name"], "printer": design["process"]["printer"]["name"],
        "outer": [{ "nominal": 12, "measured": 12.1 }, { "nominal": 12, "measured": 12.1 }, { "nominal": 12, "measured": 12.1 }],
        "bore": [{ "nominal": 8, "measured": 7.9 }, { "nominal": 8, "measured": 7.9 }, { "nominal": 8, "measured": 7.9 }],
        "length": [{ "nominal": 60, "measured": 59.7 }],
    });
    let design = design.to_string();
    let told = inspected(&design, json!(0.02));
    let request = json!({ "kind": "stl", "run": RUN, "deviation": 0.02 }).to_string();
    let bytes = engine::export_file(&design, &request).unwrap();
    assert_ne!(bytes[84..], file(json!(0.02))[84..], "the file is compensated");
    assert_eq!(told["bytes"], bytes.len());
    let volume = told["questions"].as_array().unwrap().iter().find(|asked| asked["code"] == "volume").unwrap();
    assert_eq!(volume["passes"], true, "{volume}");
}

#[test]
fn a_request_that_makes_no_sense_is_refused_at_its_place() {
    for (request, path) in [
        ("[]", ""),
        (r#"{ "run": "pump to block", "fine": 1 }"#, "/fine"),
        (r#"{ "deviation": 0.1 }"#, "/run"),
        (r#"{ "run": "none" }"#, "/run"),
        (r#"{ "run": "pump to block", "deviation": "best" }"#, "/deviation"),
        (r#"{ "run": "pump to block", "deviation": 7 }"#, "/deviation"),
    ] {
        assert_eq!(engine::inspect(EXAMPLE, request).expect_err(request).path, path, "{request}");
    }
}
