//! All pieces on plates: what must hold of any layout, one of closed form, and the file of a plate read back.

use crate::print_support::design;
use serde_json::{Value, json};
use std::io::{Cursor, Read};
use tubewright_core::engine;
use tubewright_core::print::{GAP, Spot, packed};

/// A lean generator of its own: the layouts must not hang on the sizes that designs happen to have.
fn numbers(seed: u64) -> impl FnMut(i64) -> i64 {
    let mut state = seed;
    move |below| {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (state >> 33) as i64 % below
    }
}

fn edges(spot: &Spot, sides: &[[i64; 2]]) -> [[i64; 2]; 2] {
    let [x, y] = sides[spot.item];
    let size = if spot.turned { [y, x] } else { [x, y] };
    [0, 1].map(|axis| [spot.at[axis], spot.at[axis] + size[axis]])
}

#[test]
fn every_box_that_has_room_is_on_one_plate_in_the_room_and_apart_from_the_others() {
    for seed in 0..300 {
        let mut below = numbers(seed);
        let room = [20_000 + below(200_000), 20_000 + below(200_000)];
        let gap = below(5_000);
        let sides: Vec<[i64; 2]> = (0..1 + below(60)).map(|_| [1 + below(120_000), 1 + below(60_000)]).collect();
        let plates = packed(&sides, room, gap);
        assert_eq!(plates, packed(&sides, room, gap), "the same boxes, the same plates");
        let mut seen = vec![0; sides.len()];
        for plate in &plates {
            assert!(!plate.is_empty());
            for (index, spot) in plate.iter().enumerate() {
                seen[spot.item] += 1;
                let here = edges(spot, &sides);
                assert!((0..2).all(|axis| here[axis][0] >= 0 && here[axis][1] <= room[axis]), "seed {seed}");
                for other in &plate[..index] {
                    let there = edges(other, &sides);
                    let apart =
                        |axis: usize| here[axis][0] - there[axis][1] >= gap || there[axis][0] - here[axis][1] >= gap;
                    assert!(apart(0) || apart(1), "seed {seed}: {here:?} {there:?}");
                }
            }
        }
        for (side, times) in sides.iter().zip(seen) {
            let fits = (side[0] <= room[0] && side[1] <= room[1]) || (side[1] <= room[0] && side[0] <= room[1]);
            assert_eq!(times, usize::from(fits), "seed {seed}: {side:?}");
        }
    }
}

/// Of boxes that are at most a quarter of the room's sides another plate is begun only once a quarter and more is full.
#[test]
fn small_boxes_leave_no_plate_nearly_empty() {
    for seed in 0..100 {
        let mut below = numbers(1_000 + seed);
        let room = [100_000, 100_000];
        let sides: Vec<[i64; 2]> = (0..400).map(|_| [2_000 + below(23_000), 2_000 + below(23_000)]).collect();
        let plates = packed(&sides, room, 0);
        for plate in &plates[..plates.len() - 1] {
            let area: i64 = plate.iter().map(|spot| sides[spot.item][0] * sides[spot.item][1]).sum();
            assert!(4 * area > room[0] * room[1], "seed {seed}: {area}");
        }
    }
}

/// So many upright straight tubes: each has a box of its diameter, and as many lie on a plate as rows times columns.
fn upright(count: usize, outer: f64, volume: [f64; 3]) -> String {
    let run = json!({"ports": [[0, 0, 0], [0, 0, 1], [0, 0, 80], [0, 0, -1]], "route": [],
        "tube": {"outer_diameter": outer, "bore": 8}});
    let mut text: Value = serde_json::from_str(&design(run, volume)).unwrap();
    let (run, ports) = (text["runs"][0].clone(), text["ports"].clone());
    text["runs"] = json!([]);
    text["ports"] = json!([]);
    for index in 0..count {
        let mut run = run.clone();
        run["name"] = json!(format!("run {index}"));
        run["stance"] = json!({"up": [0, 0, 1], "turn_deg": 0});
        for (end, port) in ["from", "to"].into_iter().zip(0..2) {
            let mut port = ports[port].clone();
            let name = format!("{end} {index}");
            (port["name"], port["at"][0]) = (json!(name), json!(100 * index));
            run[end] = json!(name);
            text["ports"].as_array_mut().unwrap().push(port);
        }
        text["runs"].as_array_mut().unwrap().push(run);
    }
    text.to_string()
}

/// Rods of 80 by 10 that lie at 45 degrees to the sides: each box is 90 / sqrt 2 = 63.6 wide and deep, so that a room of 110 by 110
/// has one of them; along its sides it has eight, 3 mm apart.
#[test]
fn rods_that_lie_aslant_are_turned_where_fewer_plates_do_so() {
    for (count, turn, expected) in [(1, 45.0, 45.0), (7, 0.0, 0.0), (8, 45.0, 45.0)] {
        let mut text: Value = serde_json::from_str(&upright(count, 10.0, [120.0, 120.0, 120.0])).unwrap();
        for run in text["runs"].as_array_mut().unwrap() {
            run["stance"] = json!({"up": [0, 1, 0], "turn_deg": turn});
        }
        let told = plates(&text.to_string());
        assert_eq!(told["plates"].as_array().unwrap().len(), 1, "{count}");
        for piece in told["plates"][0]["pieces"].as_array().unwrap() {
            let turned = piece["turned_deg"].as_f64().unwrap();
            let [wide, deep] = [0, 1].map(|axis| piece["box_mm"][axis].as_f64().unwrap());
            if count == 1 {
                assert!(turned == 0.0 && (wide - 90.0 / 2f64.sqrt()).abs() < 0.01, "{piece}");
            } else {
                let off = (turned - expected).rem_euclid(90.0);
                assert!(off.min(90.0 - off) < 0.01 && (wide.min(deep) - 10.0).abs() < 0.01, "{piece}");
                assert!((wide.max(deep) - 80.0).abs() < 0.01, "{piece}");
            }
        }
    }
}

fn plates(text: &str) -> Value {
    serde_json::from_str(&engine::plates(text).unwrap()).unwrap()
}

#[test]
fn upright_tubes_lie_in_rows_and_columns_and_one_more_takes_another_plate() {
    // Margins of 5 mm: 60 by 45 mm hold four columns of 12 mm and 3 mm between them, and three rows.
    let volume = [70.0, 55.0, 120.0];
    for (count, expected) in [(1, 1), (12, 1), (13, 2)] {
        let told = plates(&upright(count, 12.0, volume));
        assert_eq!(told["plates"].as_array().unwrap().len(), expected, "{count}");
        assert_eq!(told["gap_mm"], GAP);
        let first = &told["plates"][0];
        assert!((first["height_mm"].as_f64().unwrap() - 80.0).abs() < 1e-6);
        // 80 mm in layers of 0.05 mm at 8 s each.
        let layers = first["layers"].as_f64().unwrap();
        assert!((layers - 1600.0).abs() <= 1.0 && first["hours"] == layers * 8.0 / 3600.0);
    }
}

#[test]
fn one_piece_stands_where_its_own_file_has_it() {
    let text = upright(1, 12.0, [70.0, 55.0, 120.0]);
    let piece = &plates(&text)["plates"][0]["pieces"][0];
    assert_eq!((&piece["run"], &piece["piece"], &piece["pieces"]), (&json!("run 0"), &json!(1), &json!(1)));
    for (axis, middle) in [35.0, 27.5].into_iter().enumerate() {
        let (at, side) = (piece["at_mm"][axis].as_f64().unwrap(), piece["box_mm"][axis].as_f64().unwrap());
        assert!((at + side / 2.0 - middle).abs() <= 2e-3 && (side - 12.0).abs() <= 2e-3, "{at} {side}");
    }
}

#[test]
fn what_has_no_room_is_left_out_with_words_and_without_a_made_run_there_is_no_plate() {
    let told = plates(&upright(2, 12.0, [70.0, 55.0, 60.0]));
    assert_eq!(told["plates"], json!([]));
    assert_eq!(told["left_out"].as_array().unwrap().len(), 2);
    assert_eq!((&told["left_out"][1]["run"], &told["left_out"][1]["piece"]), (&json!("run 1"), &json!(1)));
    assert!(told["left_out"][0]["why"].as_str().unwrap().contains("sticks out of the printer’s room by 30 mm"));
    let refused = |text: &str, request: Value| engine::export_file(text, &request.to_string()).unwrap_err();
    let small = upright(2, 12.0, [70.0, 55.0, 60.0]);
    let refusal = refused(&small, json!({"kind": "plate", "plate": 1}));
    assert_eq!(refusal.path, "/plate");
    assert!(refusal.message.starts_with("No piece fits on a plate. run 0: "), "{}", refusal.message);
    let one = upright(1, 12.0, [70.0, 55.0, 120.0]);
    for (request, words) in [
        (json!({"kind": "plate"}), "Say which plate"),
        (json!({"kind": "plate", "plate": 0}), "Say which plate"),
        (json!({"kind": "plate", "plate": "1"}), "Say which plate"),
        (json!({"kind": "plate", "plate": 2}), "There is no plate 2: all pieces lie on one."),
        (json!({"kind": "3mf", "plate": 1}), "Only a file of kind \"plate\""),
    ] {
        let refusal = refused(&one, request);
        assert!(refusal.path == "/plate" && refusal.message.starts_with(words), "{refusal:?}");
    }
    assert_eq!(refused(&one, json!({"kind": "plate", "plate": 1, "run": "run 0"})).path, "/run");
    let mut none: Value = serde_json::from_str(&one).unwrap();
    none["runs"] = json!([]);
    assert!(engine::plates(&none.to_string()).unwrap_err().message.contains("nothing to lay on a plate"));
}

/// Names and boxes of a 3MF's objects, low and high.
fn objects(bytes: &[u8]) -> Vec<(String, [[f64; 3]; 2])> {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).unwrap();
    let mut text = String::new();
    archive.by_name("3D/3dmodel.model").unwrap().read_to_string(&mut text).unwrap();
    let model = roxmltree::Document::parse(&text).unwrap();
    let found = model
        .descendants()
        .filter(|node| node.has_tag_name((model.root_element().tag_name().namespace().unwrap(), "object")));
    found
        .map(|object| {
            let mut ends = [[f64::INFINITY; 3], [f64::NEG_INFINITY; 3]];
            for vertex in object.descendants().filter(|node| node.tag_name().name() == "vertex") {
                for (axis, key) in ["x", "y", "z"].into_iter().enumerate() {
                    let value: f64 = vertex.attribute(key).unwrap().parse().unwrap();
                    ends[0][axis] = ends[0][axis].min(value);
                    ends[1][axis] = ends[1][axis].max(value);
                }
            }
            (object.attribute("name").unwrap().to_owned(), ends)
        })
        .collect()
}

/// A loop of four tubes; one in pieces; and the same corrected by a coupon that makes files larger.
fn designs() -> Vec<String> {
    let presets: Value = serde_json::from_str(&engine::presets()).unwrap();
    let demos = presets["demos"].as_array().unwrap();
    let four = demos.iter().map(|demo| &demo["design"]).find(|design| design["runs"].as_array().unwrap().len() == 4);
    let mut pieces = four.unwrap().clone();
    let report: Value = serde_json::from_str(&engine::report(&pieces.to_string()).unwrap()).unwrap();
    let half = (report["runs"][0]["length_mm"].as_f64().unwrap() / 2.0).round();
    pieces["runs"][0]["cuts"] = json!([{"at": half}]);
    let mut corrected: Value = serde_json::from_str(&engine::normalise(&four.unwrap().to_string()).unwrap()).unwrap();
    let process = &mut corrected["process"];
    process["fit"] = json!({"material": process["material"]["name"], "printer": process["printer"]["name"],
        "outer": [], "bore": [], "length": [{"nominal": 60, "measured": 59.5}], "fitted": null});
    vec![four.unwrap().to_string(), pieces.to_string(), corrected.to_string()]
}

#[test]
fn the_files_of_the_plates_hold_every_piece_once_inside_its_box_and_bear_the_design() {
    for text in designs() {
        let told = plates(&text);
        let normal: Value = serde_json::from_str(&engine::normalise(&text).unwrap()).unwrap();
        let printer = &normal["process"]["printer"];
        let report: Value = serde_json::from_str(&engine::report(&text).unwrap()).unwrap();
        let runs = report["runs"].as_array().unwrap();
        let mut count = told["left_out"].as_array().unwrap().len();
        for (index, plate) in told["plates"].as_array().unwrap().iter().enumerate() {
            let request = json!({"kind": "plate", "plate": index + 1, "deviation": 0.02}).to_string();
            let bytes = engine::export_file(&text, &request).unwrap();
            assert!(engine::file_name(&text, &request).unwrap().contains(&format!("-plate-{}", index + 1)));
            assert_eq!(engine::design_in(&bytes), engine::normalise(&text));
            let (solids, pieces) = (objects(&bytes), plate["pieces"].as_array().unwrap());
            assert_eq!(solids.len(), pieces.len());
            count += pieces.len();
            for ((name, [low, high]), piece) in solids.iter().zip(pieces) {
                assert!(name.starts_with(piece["run"].as_str().unwrap()));
                let volume = |axis: usize| printer["build_volume"][axis].as_f64().unwrap();
                let margin = printer["margin"].as_f64().unwrap();
                // A corrected file is higher than the tube that comes of it: the margin above takes that, as of a single file.
                assert!(low[2] >= margin - 0.03 && high[2] <= volume(2), "{name}: {low:?} {high:?}");
                for axis in 0..2 {
                    assert!(low[axis] >= margin - 0.03 && high[axis] <= volume(axis) - margin + 0.03, "{name}");
                }
                for axis in 0..2 {
                    let (at, side) = (piece["at_mm"][axis].as_f64().unwrap(), piece["box_mm"][axis].as_f64().unwrap());
                    assert!(
                        low[axis] >= at - 0.03 && high[axis] <= at + side + 0.03,
                        "{name}: {low:?} {high:?} {piece}"
                    );
                    assert!(high[axis] - low[axis] >= side - 2.0, "{name}: the box is not much too large");
                }
            }
            for (at, (_, one)) in solids.iter().enumerate() {
                for (_, other) in &solids[..at] {
                    let apart = |axis: usize| (one[0][axis] - other[1][axis]).max(other[0][axis] - one[1][axis]);
                    assert!(apart(0).max(apart(1)) >= GAP - 0.05, "{} {}", apart(0), apart(1));
                }
            }
        }
        assert_eq!(count, runs.iter().map(|run| run["pieces"].as_array().unwrap().len()).sum::<usize>());
        assert!(told["plates"].as_array().unwrap().len() <= count);
    }
}

#[test]
fn a_pack_holds_the_same_plates_and_its_sheet_says_which_piece_is_on_which() {
    let text = &designs()[1];
    let pack = engine::export_file(text, r#"{"kind": "pack", "deviation": 0.2}"#).unwrap();
    let mut archive = zip::ZipArchive::new(Cursor::new(pack)).unwrap();
    let told = plates(text);
    let mut sheet = String::new();
    archive.by_name("sheet.html").unwrap().read_to_string(&mut sheet).unwrap();
    let mut on = Vec::new();
    for (index, plate) in told["plates"].as_array().unwrap().iter().enumerate() {
        let number = index + 1;
        let mut bytes = Vec::new();
        archive.by_name(&format!("plates/plate-{number}.3mf")).unwrap().read_to_end(&mut bytes).unwrap();
        let request = json!({"kind": "plate", "plate": number, "deviation": 0.2}).to_string();
        assert_eq!(bytes, engine::export_file(text, &request).unwrap(), "plate {number}");
        on.extend(plate["pieces"].as_array().unwrap().iter().map(|_| number));
        let rows = sheet.matches(&format!("data-plate=\"{number}\"")).count();
        assert_eq!(rows, plate["pieces"].as_array().unwrap().len());
    }
    let files = archive.file_names().filter(|name| name.as_ref().is_ok_and(|name| name.starts_with("plates/"))).count();
    assert_eq!(files, *on.last().unwrap());
}
