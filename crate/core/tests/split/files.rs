//! A cut run's stances, files, pack and sheet: everything of each piece, and what joins them.

use std::io::{Cursor, Read};

use serde_json::{Value, json};
use tubewright_core::design::Refusal;
use tubewright_core::engine::{self, Stages, export_file, file_name};
use tubewright_core::mesh::{signed_volume, solidity};
use tubewright_core::print::Subject;

/// Two legs of a tube and a bend, cut into three.
fn design() -> Value {
    json!({"format": "tubewright-design", "version": 1, "name": "cut",
        "fittings": [{"name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [1, 0, 0], "fitting": "F"},
                  {"name": "b", "at": [260, 230, 0], "facing": [0, -1, 0], "fitting": "F"}],
        "runs": [{"name": "long", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": 30,
            "route": [{"corner": [260, 0, 0]}],
            "cuts": [{"at": 150}, {"at": 330, "stance": {"up": [0, 0, 1], "turn_deg": 90}}]}],
        "process": {"material": "tough resin", "printer": "medium resin"}})
}

fn text() -> String {
    design().to_string()
}

fn asked(text: &str, request: Value) -> Result<Vec<u8>, Refusal> {
    export_file(text, &request.to_string())
}

fn unpacked(bytes: &[u8]) -> Vec<(String, Vec<u8>)> {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).expect("zip opens it");
    (0..archive.len())
        .map(|index| {
            let mut file = archive.by_index(index).expect("an entry");
            let mut content = Vec::new();
            file.read_to_end(&mut content).expect("its checksum holds");
            (file.name().expect("a name").into_owned(), content)
        })
        .collect()
}

fn json_of(text: Result<String, Refusal>) -> Value {
    serde_json::from_str(&text.unwrap_or_else(|refusal| panic!("{refusal}"))).unwrap()
}

#[test]
fn each_piece_has_its_own_stances() {
    let text = text();
    let of = |piece: u32| json_of(engine::piece_stances(&text, "long", piece));
    let all: Vec<Value> = (1..=3).map(of).collect();
    assert_eq!(json_of(engine::stances(&text, "long")), all[0]);
    let length = json_of(engine::report(&text))["runs"][0]["length_mm"].as_f64().unwrap();
    // Each piece reaches from its socket's mouth to the end of its spigot.
    let spans = [[0.0, 150.0], [142.0, 330.0], [322.0, length]];
    for ((told, [from, to]), piece) in all.iter().zip(spans).zip(1..) {
        assert_eq!((&told["piece"], &told["pieces"]), (&json!(piece), &json!(3)));
        assert_eq!(told["from_mm"], json!(from));
        assert!((told["length_mm"].as_f64().unwrap() - (to - from)).abs() < 1e-9);
        let path = told["stances"][0]["path"].as_array().unwrap();
        assert_eq!(path[0]["s_mm"].as_f64().unwrap(), from);
        assert!((path.last().unwrap()["s_mm"].as_f64().unwrap() - to).abs() < 1e-9);
        assert_eq!(told["stances"][0]["fits"], json!(true), "{piece}");
    }
    assert!(all[0]["own"].is_null() && all[1]["own"].is_null() && all[2]["own"]["turn_deg"].as_f64().is_some());
    let refusal = engine::piece_stances(&text, "long", 4).unwrap_err();
    assert!(refusal.message.contains("no piece 4") && refusal.message.contains("3 pieces"), "{refusal}");
    assert!(engine::piece_stances(&text, "long", 0).is_err());
}

#[test]
fn what_is_found_about_a_piece_points_to_its_own_stance() {
    let mut design = design();
    // Level in a printer that is too low for it any other way: its bore lies flat, which the best stance avoids.
    design["runs"][0]["cuts"][1]["stance"] = json!({"up": [0, 0, 1]});
    let told = json_of(engine::piece_stances(&design.to_string(), "long", 3));
    let found = told["findings"].as_array().unwrap().iter().find(|found| found["code"] == json!("print_bore"));
    let found = found.unwrap_or_else(|| panic!("{}", told["findings"]));
    assert_eq!(found["where"], json!("/runs/0/cuts/1/stance"));
    assert_eq!(found["fix"][0]["path"], json!("/runs/0/cuts/1/stance"));
}

#[test]
fn a_file_of_a_cut_run_is_of_one_piece_or_of_all() {
    let text = text();
    let stages = Stages::of(&text).unwrap();
    let read = |bytes: Vec<u8>| stl_io::read_stl(&mut Cursor::new(bytes)).unwrap();
    let whole = read(asked(&text, json!({"kind": "stl", "run": "long", "deviation": 0.1})).unwrap());
    assert_eq!(whole.faces.len(), stages.mesh(0, 0.1).unwrap().indices.len() / 3);
    for (piece, number) in stages.pieces(0).iter().zip(1..) {
        let mesh = stages.piece_mesh(piece, 0.1).unwrap();
        let found =
            read(asked(&text, json!({"kind": "stl", "run": "long", "piece": number, "deviation": 0.1})).unwrap());
        assert_eq!(found.faces.len(), mesh.indices.len() / 3);
        let stood =
            asked(&text, json!({"kind": "stl", "run": "long", "piece": number, "deviation": 0.1, "stance": true}));
        let lowest = read(stood.unwrap()).vertices.iter().map(|at| at[2]).fold(f32::INFINITY, f32::min);
        // The mesh may leave the skin by its deviation.
        assert!((lowest - 5.0).abs() < 0.1, "{lowest}");
        let request = json!({"kind": "3mf", "run": "long", "piece": number}).to_string();
        assert_eq!(file_name(&text, &request).unwrap(), format!("long-piece-{number}-of-3.3mf"));
    }
    let objects = |request: Value| {
        let bytes = asked(&text, request).unwrap();
        let model = unpacked(&bytes).into_iter().find(|(name, _)| name == "3D/3dmodel.model").unwrap().1;
        let model = String::from_utf8(model).unwrap();
        let document = roxmltree::Document::parse(&model).unwrap();
        let named = document.descendants().filter(|node| node.has_tag_name_local("object"));
        named.filter_map(|node| node.attribute("name").map(str::to_owned)).collect::<Vec<_>>()
    };
    let all: Vec<String> = (1..=3).map(|piece| format!("long, piece {piece} of 3")).collect();
    assert_eq!(objects(json!({"kind": "3mf", "run": "long", "deviation": 0.1})), all);
    assert_eq!(objects(json!({"kind": "3mf", "deviation": 0.1})), all);
    assert_eq!(objects(json!({"kind": "3mf", "run": "long", "piece": 2, "deviation": 0.1})), all[1..2]);
}

trait LocalName {
    fn has_tag_name_local(&self, name: &str) -> bool;
}

impl LocalName for roxmltree::Node<'_, '_> {
    fn has_tag_name_local(&self, name: &str) -> bool {
        self.tag_name().name() == name
    }
}

#[test]
fn requests_that_name_no_piece_are_refused_in_words() {
    let text = text();
    let refused = |request: Value, path: &str, words: &str| {
        let refusal = asked(&text, request).unwrap_err();
        assert!(refusal.path == path && refusal.message.contains(words), "{refusal}");
    };
    refused(json!({"kind": "stl", "run": "long", "piece": 4}), "/piece", "no piece 4");
    refused(json!({"kind": "stl", "run": "long", "piece": 0}), "/piece", "no piece 0");
    refused(json!({"kind": "stl", "run": "long", "piece": 1.5}), "/piece", "counted from 1");
    refused(json!({"kind": "stl", "run": "long", "piece": "first"}), "/piece", "counted from 1");
    refused(json!({"kind": "drawing", "run": "long", "piece": 1}), "/piece", "Only an STL or a 3MF");
    refused(json!({"kind": "3mf", "piece": 1}), "/piece", "of one run");
    refused(json!({"kind": "stl", "run": "long", "stance": true}), "/piece", "3 pieces");
}

#[test]
fn an_inspection_is_of_the_piece_that_is_asked_for() {
    let text = text();
    let inspected = |request: Value| json_of(engine::inspect(&text, &request.to_string()));
    let whole = inspected(json!({"run": "long", "deviation": 0.1}));
    assert!(whole["piece"].is_null());
    // The whole tube is longer than the printer's room; its pieces are not.
    let room = |told: &Value| {
        let asked = told["questions"].as_array().unwrap().iter().find(|asked| asked["code"] == json!("room"));
        asked.unwrap()["passes"] == json!(true)
    };
    assert!(!room(&whole));
    for piece in 1..=3 {
        let told = inspected(json!({"run": "long", "piece": piece, "deviation": 0.1}));
        assert!(told["piece"] == json!(piece) && room(&told), "{told}");
        let failed = told["questions"].as_array().unwrap().iter().filter(|asked| asked["passes"] == json!(false));
        // One service asks for a thicker wall for its size, rings and all, as it does of the tube in one piece.
        assert!(failed.clone().all(|asked| asked["code"] == json!("wall_for_size")), "{told}");
    }
}

#[test]
fn a_pack_and_a_bundle_hold_every_piece_and_say_how_to_join_them() {
    let text = text();
    let names = |kind: &str| -> Vec<String> {
        let bytes = asked(&text, json!({"kind": kind, "deviation": 0.2})).unwrap();
        unpacked(&bytes).into_iter().map(|(name, _)| name).collect()
    };
    let (all, pack) = (names("all"), names("pack"));
    for piece in 1..=3 {
        for end in ["stl", "3mf"] {
            let file = format!("long-piece-{piece}-of-3.{end}");
            assert!(all.contains(&file), "{all:?}");
            assert!(pack.contains(&format!("long/{file}")), "{pack:?}");
        }
    }
    assert_eq!(pack.iter().filter(|name| name.ends_with("bends.csv")).count(), 1);
    let bytes = asked(&text, json!({"kind": "pack", "deviation": 0.2})).unwrap();
    let sheet = unpacked(&bytes).into_iter().find(|(name, _)| name == "sheet.html").unwrap().1;
    let sheet = String::from_utf8(sheet).unwrap();
    let options = roxmltree::ParsingOptions { allow_dtd: true, ..Default::default() };
    let document = roxmltree::Document::parse_with_options(&sheet, options).unwrap();
    let rows =
        |attribute: &str| document.descendants().filter(|node| node.has_attribute(attribute)).collect::<Vec<_>>();
    assert_eq!(rows("data-file").len(), 3);
    // The run's two ends alone have sealing bands.
    assert_eq!(rows("data-band").len(), 2);
    let cells = |row: &roxmltree::Node<'_, '_>| -> Vec<String> {
        row.children().filter(roxmltree::Node::is_element).filter_map(|cell| cell.text().map(str::to_owned)).collect()
    };
    let joints: Vec<Vec<String>> = rows("data-joint").iter().map(cells).collect();
    let joint = |a: u32, b: u32, rings: &str| {
        vec![
            format!("long, piece {a} of 3"),
            format!("long, piece {b} of 3"),
            rings.to_owned(),
            "8.0".into(),
            "0.10".into(),
        ]
    };
    assert_eq!(joints, [joint(1, 2, "1 narrow ring"), joint(2, 3, "2 narrow rings")]);
    for words in ["gloves", "data sheet", "cure", "leak-test the joined tube"] {
        assert!(sheet.contains(words), "{words}");
    }
    // The coolant of the whole bore, counted once: 8 mm over the run's length.
    let sum = rows("data-sum")[0].children().filter(roxmltree::Node::is_element).nth(5).unwrap();
    let told: f64 = sum.text().unwrap().parse().unwrap();
    let bore = json_of(engine::report(&text))["runs"][0]["bore_mm3"].as_f64().unwrap() / 1e3;
    assert!((told - bore).abs() < 0.051, "{told} {bore}");
}

/// What is sheet and words of joints is not in a pack without cuts.
#[test]
fn a_pack_without_cuts_says_nothing_of_joints() {
    let mut design = design();
    design["runs"][0]["cuts"] = json!([]);
    let bytes = asked(&design.to_string(), json!({"kind": "pack", "deviation": 0.2})).unwrap();
    let sheet = unpacked(&bytes).into_iter().find(|(name, _)| name == "sheet.html").unwrap().1;
    let sheet = String::from_utf8(sheet).unwrap();
    assert!(!sheet.contains("Joining the pieces") && !sheet.contains("Spigots and sockets"));
}

/// Printed by a printer that makes everything off as the coupon read, spigot and socket keep their gap, and lengths come out
/// as stated.
#[test]
fn corrected_pieces_keep_the_gap_of_their_joints() {
    let mut design = design();
    let normal = json_of(engine::normalise(&design.to_string()));
    let (material, printer) = (&normal["process"]["material"]["name"], &normal["process"]["printer"]["name"]);
    design["process"]["fit"] = json!({"material": material, "printer": printer,
        "outer": [{"nominal": 12, "measured": 12.1}, {"nominal": 12, "measured": 12.1}],
        "bore": [{"nominal": 8, "measured": 7.9}], "length": [{"nominal": 60, "measured": 59.7}],
        "fitted": {"outer_diameter": 12, "measured": 12.06}});
    let text = design.to_string();
    let stages = Stages::of(&text).unwrap();
    let by = tubewright_core::coupon::correction(&stages.design.process).unwrap().unwrap();
    let joint = stages.cutting(0).joints[0];
    let pieces: Vec<_> = stages.pieces(0).iter().map(|piece| stages.corrected(piece, &by).unwrap()).collect();
    // The printer: outer diameters 0.1 over, bores 0.1 under, lengths 0.995 of what the file has.
    let [times, shrinks] = [by.scale(), 59.7 / 60.0];
    let printed = |radius: f64, off: f64| radius * times * shrinks / (times * shrinks) + off / 2.0;
    for step in 0..=60 {
        let s = joint.mouth() + joint.size.length * f64::from(step) / 60.0;
        for look in 0..8 {
            let angle = f64::from(look);
            let file = [pieces[0].profile.outer_at(s, angle), pieces[1].profile.bore_at(s, angle)].map(|r| r * times);
            let stated = stages.pieces(0);
            let before = stated[1].profile.bore_at(s, angle) - stated[0].profile.outer_at(s, angle);
            let gap = printed(file[1], -0.1) - printed(file[0], 0.1);
            assert!((gap - before).abs() < 1e-9, "{s} {angle}: {gap} for {before}");
        }
    }
    // The tube's own end is printed to what fitted best, 12.06, chamfer and all.
    let file = pieces[0].profile.outer.radius(40.0) * times;
    assert!((2.0 * printed(file, 0.1) - 12.06).abs() < 1e-9, "{file}");
    for piece in &stages.pieces(0) {
        let mesh = stages.corrected_mesh(piece, 0.05, &by).unwrap();
        assert_eq!(solidity(&mesh), []);
        let exact = stages.corrected(piece, &by).unwrap().profile.material_volume() * times * times * times;
        assert!((signed_volume(&mesh) / exact - 1.0).abs() < 5e-4);
    }
}

/// The bands that are kept free of support: the fitting's at the run's own ends, and the spigot.
#[test]
fn a_spigot_is_kept_free_of_support_as_a_sealing_band_is() {
    let text = text();
    let stages = Stages::of(&text).unwrap();
    let pieces = stages.pieces(0);
    let subject = Subject::of_piece(&stages, &pieces[0]).unwrap();
    // Lying level, all of the first piece's bands overhang: 10 mm of socket and 2 beyond, and the spigot's 8.
    let standing = subject.standing(tubewright_core::print::frame_of([0.0, 0.0, 1.0], 0.0));
    assert!((standing.bands[0] - 12.0).abs() < 1e-9 && (standing.bands[1] - 8.0).abs() < 1e-9, "{:?}", standing.bands);
    let last = Subject::of_piece(&stages, &pieces[2]).unwrap();
    let standing = last.standing(tubewright_core::print::frame_of([0.0, 0.0, 1.0], 0.0));
    assert!(standing.bands[0] == 0.0 && (standing.bands[1] - 12.0).abs() < 1e-9, "{:?}", standing.bands);
}
