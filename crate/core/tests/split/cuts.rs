//! The fewest pieces of a run that fit the printer. Judges: the room's own diagonal, every other count tried by hand, and the
//! stance search of each piece.

use serde_json::{Value, json};
use tubewright_core::engine::{self, Stages};
use tubewright_core::print::Subject;

/// A straight tube of that length on a resin printer of that build volume; a margin of 5 mm.
fn straight(length: f64, volume: [f64; 3]) -> Value {
    json!({"format": "tubewright-design", "version": 1,
        "fittings": [{"name": "F", "tube_diameter": 12, "height": 10, "socket_depth": 10, "collar_diameter": 19, "lead": 0}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [1, 0, 0], "fitting": "F"},
                  {"name": "b", "at": [length, 0, 0], "facing": [-1, 0, 0], "fitting": "F"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": 24,
            "ends": {"chamfer_length": 0, "edge_break": 0, "seat_mark": false}}],
        "process": {"material": "tough resin", "printer": {"name": "p", "build_volume": volume, "least_wall": 1, "margin": 5,
            "layer_mm": 0.05, "overhang_deg": 19, "bore_deg": 30, "seconds_per_layer": 8}}})
}

fn routed(length: f64, route: Value, end: [f64; 3], facing: [f64; 3], volume: [f64; 3]) -> Value {
    let mut design = straight(length, volume);
    design["runs"][0]["route"] = route;
    design["ports"][1]["at"] = json!(end);
    design["ports"][1]["facing"] = json!(facing);
    design
}

fn cuts(design: &Value) -> Value {
    serde_json::from_str(&engine::cuts(&design.to_string(), "r").unwrap()).unwrap()
}

/// What the patch makes of the design, and that each of its pieces fits by the search that stances come from.
fn patched(design: &Value, told: &Value) -> String {
    let text = engine::apply(&design.to_string(), &told["patch"].to_string()).unwrap();
    let stages = Stages::of(&text).unwrap();
    assert_eq!(stages.cutting(0).left_out, []);
    let pieces = stages.pieces(0);
    assert_eq!(json!(pieces.len()), told["pieces"]);
    for piece in &pieces {
        let standing = Subject::of_piece(&stages, piece).unwrap().chosen().unwrap();
        assert!(standing.fits(), "piece {} of {told}", piece.index + 1);
    }
    text
}

/// The longest stick of a disc's diameter in a room: its axis along the diagonal, less what its end discs take. Here the room
/// is so long that a stick upright in it is the longest but for a little: 190 mm between the margins.
#[test]
fn a_tube_as_long_as_the_room_stays_whole_and_a_longer_one_is_cut() {
    // A room of a tube's own diameter leaves no diagonal: 12 x 12 x 190 between the margins.
    let narrow = [22.0, 22.0, 200.0];
    let whole = cuts(&straight(190.0, narrow));
    assert_eq!((&whole["pieces"], &whole["cuts"], &whole["patch"]), (&json!(1), &json!([]), &json!([])));
    assert_eq!(whole["parts"][0]["fits"], json!(true));
    // Longer by more than the room forgives; the collar of 17.2 mm has no room there, so nothing can be done.
    let none = cuts(&straight(191.0, narrow));
    assert!(none["pieces"].is_null());
    assert!(none["why"].as_str().unwrap().contains("printer with more room"), "{none}");
    // With room for the collar it is cut into two.
    let wide = [32.0, 32.0, 200.0];
    let told = cuts(&straight(240.0, wide));
    assert_eq!(told["pieces"], json!(2), "{told}");
    patched(&straight(240.0, wide), &told);
}

/// Sticks of the tube's outer diameter d fit a cube of side a along its diagonal to a length of sqrt(3) a - sqrt(2) d: each end
/// disc takes d sqrt(1 - 1/3) along each axis, and so sqrt(3) times half of that at each end.
#[test]
fn the_rooms_diagonal_says_which_straight_tubes_are_cut() {
    let side = 100.0;
    let longest = 3f64.sqrt() * side - 2f64.sqrt() * 12.0;
    let volume = [side + 10.0; 3];
    let pieces = |length: f64| cuts(&straight(length, volume))["pieces"].clone();
    assert_eq!(pieces(longest - 0.3), json!(1));
    assert_eq!(pieces(longest + 0.3), json!(2));
}

/// The count by hand: a straight run is cut so that each piece is at most the longest stick, spigots included. With the collar
/// at one end a stick is shorter than without, and longer than if it had the collar's diameter all along.
#[test]
fn a_long_straight_takes_as_few_pieces_as_its_length_asks_for() {
    let side = 100.0;
    let stick = |diameter: f64| 3f64.sqrt() * side - 2f64.sqrt() * diameter;
    let (most, least) = (stick(12.0), stick(17.2));
    for length in [200.0, 430.0, 700.0] {
        let design = straight(length, [side + 10.0; 3]);
        let told = cuts(&design);
        let found = told["pieces"].as_u64().unwrap() as f64;
        // n sticks of which n - 1 go in by 8 mm make n (stick - 8) + 8.
        let (fewest, enough) = (((length - 8.0) / (most - 8.0)).ceil(), ((length - 8.0) / (least - 8.0)).ceil());
        assert!((fewest..=enough).contains(&found), "{length}: {found}, {fewest} to {enough}");
        patched(&design, &told);
    }
}

/// Every way to cut in one piece fewer, on a net of places as near as the search comes, has a piece that does not fit.
#[test]
fn no_way_of_fewer_pieces_is_overlooked() {
    let corner = |x: f64, y: f64, z: f64| json!({"corner": [x, y, z]});
    let cases = [
        routed(0.0, json!([corner(150.0, 0.0, 0.0)]), [150.0, 160.0, 0.0], [0.0, -1.0, 0.0], [110.0; 3]),
        routed(
            0.0,
            json!([corner(120.0, 0.0, 0.0), corner(120.0, 90.0, 0.0)]),
            [120.0, 90.0, 130.0],
            [0.0, 0.0, -1.0],
            [100.0, 90.0, 120.0],
        ),
    ];
    for design in cases {
        let told = cuts(&design);
        let count = told["pieces"].as_u64().unwrap_or_else(|| panic!("{told}")) as usize;
        assert!((2..=4).contains(&count), "{told}");
        patched(&design, &told);
        let length = told["length_mm"].as_f64().unwrap();
        // One cut fewer, all over the run in steps of 12 mm.
        let places: Vec<f64> = (1..).map(|step| 12.0 * f64::from(step)).take_while(|at| *at < length).collect();
        let fits = |at: &[f64]| {
            let mut cut = design.clone();
            cut["runs"][0]["cuts"] = at.iter().map(|at| json!({"at": at})).collect();
            let text = cut.to_string();
            let stages = Stages::of(&text).unwrap();
            let pieces = stages.pieces(0);
            pieces.len() == at.len() + 1
                && pieces.iter().all(|piece| Subject::of_piece(&stages, piece).unwrap().chosen().unwrap().fits())
        };
        if count == 2 {
            assert!(!fits(&[]));
        } else {
            for at in &places {
                assert!(!fits(&[*at]), "{at} of {told}");
            }
        }
    }
}

/// A cut anywhere within its span leaves as few pieces.
#[test]
fn each_cut_may_lie_anywhere_in_its_span() {
    let design = straight(240.0, [32.0, 32.0, 200.0]);
    let told = cuts(&design);
    let [from, to] = ["earliest_mm", "latest_mm"].map(|end| told["cuts"][0][end].as_f64().unwrap());
    assert!(from < to && (from..=to).contains(&told["cuts"][0]["at_mm"].as_f64().unwrap()));
    for at in [from, f64::midpoint(from, to), to] {
        let told = json!({"pieces": 2, "patch": [{"op": "add", "path": "/runs/0/cuts", "value": [{"at": at}]}]});
        patched(&design, &told);
    }
}

#[test]
fn cuts_lie_on_straights_where_there_are_some_in_reach() {
    let route = json!([{"corner": [150, 0, 0], "bend_radius": 60}]);
    let design = routed(0.0, route, [150.0, 160.0, 0.0], [0.0, -1.0, 0.0], [130.0; 3]);
    let told = cuts(&design);
    let text = patched(&design, &told);
    let stages = Stages::of(&text).unwrap();
    let line = stages.lines[0].line.as_ref().unwrap();
    for joint in stages.cutting(0).joints {
        assert!(line.at(joint.mouth()).curvature.norm() == 0.0 && line.at(joint.at).curvature.norm() == 0.0, "{told}");
    }
}

/// Two cuts that are stated already are taken out where the run fits whole.
#[test]
fn a_run_that_fits_is_left_whole() {
    let mut design = straight(150.0, [200.0; 3]);
    design["runs"][0]["cuts"] = json!([{"at": 70}]);
    let told = cuts(&design);
    assert_eq!(told["pieces"], json!(1));
    assert_eq!(told["patch"][0]["value"], json!([]));
    patched(&design, &told);
}

#[test]
fn a_tube_that_fits_in_no_stance_has_its_cuts_as_the_fix() {
    let design = straight(240.0, [32.0, 32.0, 200.0]);
    let told: Value = serde_json::from_str(&engine::stances(&design.to_string(), "r").unwrap()).unwrap();
    let found = told["findings"].as_array().unwrap().iter().find(|found| found["code"] == json!("print_size")).unwrap();
    assert!(found["message"].as_str().unwrap().contains("Cut into 2 pieces it fits"), "{found}");
    patched(&design, &json!({"pieces": 2, "patch": found["fix"]}));
}

#[test]
fn a_run_that_is_not_there_or_not_made_has_no_cuts() {
    let mut design = straight(150.0, [200.0; 3]);
    assert!(engine::cuts(&design.to_string(), "other").unwrap_err().message.contains("no run named"));
    design["runs"][0]["route"] = json!([{"corner": [50, 0, 0]}, {"corner": [50, 3, 0]}]);
    assert!(engine::cuts(&design.to_string(), "r").is_err());
}
