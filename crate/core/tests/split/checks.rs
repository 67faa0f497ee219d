//! What is found about a cut run, and what is told of its pieces: room for joints, what they hold, what they cost the pump,
//! and what their collars meet. Judges: closed forms written out here.

use core::f64::consts::PI;

use serde_json::{Value, json};
use tubewright_core::engine;

/// A straight tube of 300 mm along x.
fn straight() -> Value {
    json!({"format": "tubewright-design", "version": 1,
        "fittings": [{"name": "F", "tube_diameter": 12, "height": 18, "socket_depth": 10, "collar_diameter": 19, "lead": 5}],
        "ports": [{"name": "a", "at": [0, 0, 0], "facing": [1, 0, 0], "fitting": "F"},
                  {"name": "b", "at": [316, 0, 0], "facing": [-1, 0, 0], "fitting": "F"}],
        "runs": [{"name": "r", "from": "a", "to": "b", "tube": {"outer_diameter": 12, "bore": 8}, "bend_radius": 24}],
        "process": {"material": "tough resin", "printer": "large resin"}})
}

fn cut(mut design: Value, places: &[f64]) -> Value {
    design["runs"][0]["cuts"] = places.iter().map(|at| json!({"at": at})).collect();
    design
}

fn report(design: &Value) -> Value {
    let text = engine::report(&design.to_string()).unwrap_or_else(|refusal| panic!("{refusal}"));
    serde_json::from_str(&text).unwrap()
}

fn found<'r>(report: &'r Value, code: &str) -> Vec<&'r Value> {
    report["findings"].as_array().unwrap().iter().filter(|finding| finding["code"] == json!(code)).collect()
}

/// The one finding about room, and the design with its fix.
fn no_room(design: &Value) -> (Value, Value) {
    let told = report(design);
    let rooms = found(&told, "joint_room");
    let [finding] = rooms[..] else { panic!("{}", told["findings"]) };
    assert_eq!(finding["severity"], json!("stop"));
    // The run is left uncut there, and can be looked at all the same.
    assert_eq!(told["runs"][0]["made"], json!(true));
    let mended = engine::apply(&design.to_string(), &finding["fix"].to_string()).unwrap();
    let mended: Value = serde_json::from_str(&mended).unwrap();
    assert_eq!(found(&report(&mended), "joint_room"), Vec::<&Value>::new());
    (finding.clone(), mended)
}

#[test]
fn a_cut_beyond_the_tube_goes_to_the_nearest_place_with_room() {
    let design = cut(straight(), &[150.0, 900.0]);
    let (finding, mended) = no_room(&design);
    assert_eq!((&finding["where"], &finding["value"]), (&json!("/runs/0/cuts/1/at"), &json!(900.0)));
    let nearest = finding["limit"].as_f64().unwrap();
    // Before the end's socket and lead of 15 mm: the collar of 17.2 mm and its cone, and the corner of its floor.
    let cone = 8.6 - 6.0;
    assert!((nearest - (300.0 - 15.0 - (0.1 + 0.05 + 0.42 * 2.0) - cone)).abs() < 1e-3, "{nearest}");
    assert!((mended["runs"][0]["cuts"][1]["at"].as_f64().unwrap() - nearest).abs() < 1e-3);
    assert_eq!(report(&design)["runs"][0]["pieces"].as_array().unwrap().len(), 2);
    assert_eq!(report(&mended)["runs"][0]["pieces"].as_array().unwrap().len(), 3);
}

#[test]
fn cuts_nearer_than_a_joint_or_in_a_fitting_are_told() {
    let (finding, mended) = no_room(&cut(straight(), &[150.0, 155.0]));
    assert_eq!(finding["where"], json!("/runs/0/cuts/1/at"));
    assert!(mended["runs"][0]["cuts"][1]["at"].as_f64().unwrap() > 160.0);
    let (finding, mended) = no_room(&cut(straight(), &[12.0]));
    assert!(finding["message"].as_str().unwrap().contains("nearest place"), "{finding}");
    assert!(mended["runs"][0]["cuts"][0]["at"].as_f64().unwrap() > 15.0 + 8.0);
}

#[test]
fn a_coil_tighter_than_a_collar_has_no_joint() {
    let mut design = straight();
    design["runs"][0]["route"] = json!([{"coil": {"centre": [140, 0, -8.2], "axis": [1, 0, 0], "radius": 8.2, "pitch": 30,
        "turns": 2, "start_deg": 0}}]);
    design["runs"][0]["bend_radius"] = json!(12);
    // The coil bends at 11 mm; the collar has a radius of 11.6.
    design["process"]["joint"] = json!({"wall": 5});
    let told = report(&design);
    assert_eq!(told["runs"][0]["made"], json!(true), "{}", told["findings"]);
    let length = told["runs"][0]["length_mm"].as_f64().unwrap();
    let text = cut(design.clone(), &[length / 2.0]);
    let (finding, mended) = no_room(&text);
    assert!((finding["limit"].as_f64().unwrap() - length / 2.0).abs() > 20.0, "{finding}");
    // A wider coil of the same pitch takes one: it slides along itself.
    design["runs"][0]["route"][0]["coil"]["radius"] = json!(30);
    design["runs"][0]["route"][0]["coil"]["centre"] = json!([140, 0, -30]);
    let length = report(&design)["runs"][0]["length_mm"].as_f64().unwrap();
    assert_eq!(found(&report(&cut(design, &[length / 2.0])), "joint_room"), Vec::<&Value>::new());
    assert_eq!(mended["runs"][0]["cuts"].as_array().unwrap().len(), 1);
}

#[test]
fn a_lobed_body_has_no_room_anywhere_and_the_cut_is_taken_out() {
    let mut design = cut(straight(), &[150.0]);
    design["runs"][0]["dress"] = json!({"diameter": 15, "blend": 8, "lobes": 6, "depth": 0.8, "twist_deg_per_mm": 1});
    let (finding, mended) = no_room(&design);
    assert!(
        finding["limit"].is_null() && finding["message"].as_str().unwrap().contains("nor anywhere else"),
        "{finding}"
    );
    assert_eq!(mended["runs"][0]["cuts"], json!([]));
    // A thicker round one has, with a collar of its own size.
    design["runs"][0]["dress"] = json!({"diameter": 15, "blend": 8});
    let told = report(&design);
    assert_eq!(found(&told, "joint_room"), Vec::<&Value>::new());
    let collar = told["runs"][0]["pieces"][0]["joint"]["collar_diameter_mm"].as_f64().unwrap();
    assert!((collar - (15.0 + 2.0 * (0.5 + 0.1 + 3.5))).abs() < 1e-9, "{collar}");
}

#[test]
fn pieces_are_told_with_their_joints() {
    let told = report(&cut(straight(), &[100.0, 200.0]));
    let pieces = told["runs"][0]["pieces"].as_array().unwrap();
    let spans: Vec<[f64; 2]> =
        pieces.iter().map(|piece| ["from_mm", "to_mm"].map(|end| piece[end].as_f64().unwrap())).collect();
    assert_eq!(spans, [[0.0, 100.0], [92.0, 200.0], [192.0, 300.0]]);
    assert_eq!(pieces[1]["joint"]["number"], json!(2));
    assert!(pieces[2]["joint"].is_null());
    for (piece, [from, to]) in pieces.iter().zip(spans) {
        // Along x from the stop, 8 mm above the seat.
        assert!((piece["bounds_mm"]["min"][0].as_f64().unwrap() - from - 8.0).abs() < 1e-9);
        assert!((piece["bounds_mm"]["max"][0].as_f64().unwrap() - to - 8.0).abs() < 1e-9);
        let grams = piece["material_mm3"].as_f64().unwrap() / 1e3 * 1.12;
        assert!((piece["mass_g"].as_f64().unwrap() - grams).abs() < 1e-9);
    }
    // Put together there is a little more: the adhesive.
    let sum: f64 = pieces.iter().map(|piece| piece["material_mm3"].as_f64().unwrap()).sum();
    let whole = told["runs"][0]["material_mm3"].as_f64().unwrap();
    assert!(whole > sum && whole < sum + 2.0 * 120.0, "{whole} {sum}");
    assert_eq!(report(&straight())["runs"][0]["pieces"].as_array().unwrap().len(), 1);
}

/// Thrust p pi/4 OD^2 and moment M over a ring of the glued length; by hand for the tube above.
#[test]
fn a_bond_is_held_against_thrust_and_a_crooked_fit() {
    let mut design = cut(straight(), &[150.0]);
    let joint = |design: &Value| report(design)["runs"][0]["pieces"][0]["joint"].clone();
    let told = joint(&design);
    let glued = 8.0 - 0.5 - 0.5;
    let pressure = 100.0 * 1e-3;
    let thrust = pressure * PI / 4.0 * 144.0 / (PI * 12.0 * glued);
    // Mouths 280 mm apart, ports known to 0.5 mm each where nothing is said.
    let (apart, modulus) = (280.0, 1600.0);
    let off: f64 = engine::normalise(&design.to_string())
        .map(|text| serde_json::from_str::<Value>(&text).unwrap()["ports"][0]["measured_to"].as_f64().unwrap() * 2.0)
        .unwrap();
    let sideways = 3.0 * modulus * 12.0 * off / (apart * apart);
    let leaning = 2.0 * modulus * 12.0 * libm::atan2(off, apart) / apart;
    let stress = f64::max(sideways, leaning);
    let moment = stress * PI / 32.0 * (libm::pow(12.0, 4.0) - libm::pow(8.0, 4.0)) / 12.0;
    let shear = thrust + moment / (PI * 36.0 * glued);
    assert!((told["shear_mpa"].as_f64().unwrap() / shear - 1.0).abs() < 1e-9, "{told} {shear}");
    assert_eq!(told["shear_allowed_mpa"], json!(5.0 / 4.0));
    let (inner, outer) = (6.6_f64, 8.6 - 0.25);
    let hoop = pressure * (outer * outer + inner * inner) / (outer * outer - inner * inner);
    assert!((told["hoop_mpa"].as_f64().unwrap() / hoop - 1.0).abs() < 1e-9, "{told} {hoop}");
    assert_eq!(found(&report(&design), "joint"), Vec::<&Value>::new());
    // A bond as weak as the thrust alone asks for, and the safety factor of 4.
    design["process"]["joint"] = json!({"bond_mpa": 4.0 * thrust * 0.99});
    let weak = report(&design);
    let finding = found(&weak, "joint")[0];
    assert_eq!(finding["severity"], json!("stop"), "{finding}");
    design["process"]["joint"] = json!({"bond_mpa": 4.0 * shear * 0.99});
    let much = report(&design);
    let finding = found(&much, "joint")[0];
    assert_eq!(finding["severity"], json!("care"), "{finding}");
    let mended = engine::apply(&design.to_string(), &finding["fix"].to_string()).unwrap();
    assert_eq!(found(&report(&serde_json::from_str(&mended).unwrap()), "joint"), Vec::<&Value>::new());
}

#[test]
fn a_socket_under_pressure_asks_for_its_wall() {
    let mut design = cut(straight(), &[150.0]);
    design["loop"] = json!({"test_kpa": 600});
    design["process"]["joint"] = json!({"bond_mpa": 100});
    let told = report(&design);
    let finding = found(&told, "joint")[0];
    assert_eq!(finding["where"], json!("/process/joint/wall"), "{finding}");
    assert!(finding["message"].as_str().unwrap().contains("thicker socket"), "{finding}");
}

/// Borda and Carnot at each joint: (1 - (d1/d2)^2)^2 of the dynamic pressure in the narrower bore, once a joint.
#[test]
fn each_joint_costs_the_pump_a_step_of_the_printers_tolerance() {
    let mut design = cut(straight(), &[100.0, 200.0]);
    design["process"]["printer"] =
        json!({"name": "p", "build_volume": [400, 400, 400], "least_wall": 1, "margin": 5, "tolerance": 0.4});
    let flow = |design: &Value| report(design)["runs"][0]["service"]["flow"].clone();
    let told = flow(&design);
    let (narrow, wide) = (7.6_f64, 8.4_f64);
    let density = report(&design)["loop"]["fluid"]["density_kg_per_m3"].as_f64().unwrap();
    let velocity = 120.0 / 3.6e6 / (PI / 4.0 * narrow * narrow * 1e-6);
    let share = 1.0 - (narrow / wide) * (narrow / wide);
    let expected = 2.0 * share * share * density * velocity * velocity / 2.0 * 1e-3;
    let found = told["joints_kpa"].as_f64().unwrap();
    assert!((found / expected - 1.0).abs() < 1e-9, "{found} {expected}");
    let parts = ["straights_kpa", "bends_kpa", "coils_kpa", "curves_kpa", "ends_kpa", "joints_kpa"];
    let sum: f64 = parts.iter().map(|part| told[part].as_f64().unwrap()).sum();
    assert!((told["loss_kpa"]["nominal"].as_f64().unwrap() / sum - 1.0).abs() < 1e-12);
    // The table of variants says the same of the same tube.
    let request = json!({"bores": [8]}).to_string();
    let table: Value = serde_json::from_str(&engine::variants(&design.to_string(), &request).unwrap()).unwrap();
    let row = table["rows"].as_array().unwrap().iter().find(|row| row["bore"] == json!(8.0)).unwrap();
    assert_eq!(row["loss_kpa"], told["loss_kpa"]["nominal"]);
    let uncut = flow(&cut(design, &[]));
    assert_eq!(uncut["joints_kpa"], json!(0.0));
}

/// A tube 15.5 mm beside this one is 3.5 mm from its skin, and 0.9 from a collar of 17.2 mm: too near by a clearance of 1.
#[test]
fn a_collar_counts_where_it_is_and_nowhere_else() {
    let beside = |places: &[f64], x: [f64; 2]| {
        let mut design = cut(straight(), places);
        design["ports"].as_array_mut().unwrap().extend([
            json!({"name": "c", "at": [x[0], 15.5, 0], "facing": [1, 0, 0], "fitting": "F"}),
            json!({"name": "d", "at": [x[1], 15.5, 0], "facing": [-1, 0, 0], "fitting": "F"}),
        ]);
        design["runs"].as_array_mut().unwrap().push(json!({"name": "s", "from": "c", "to": "d",
            "tube": {"outer_diameter": 12, "bore": 8}}));
        let told = report(&design);
        found(&told, "meets_run").first().map(|finding| finding["value"].as_f64().unwrap())
    };
    let gap = beside(&[150.0], [60.0, 260.0]).unwrap();
    assert!((gap - (15.5 - 6.0 - 8.6)).abs() < 1e-6, "{gap}");
    assert_eq!(beside(&[], [60.0, 260.0]), None);
    // The collar is where the other tube is not.
    assert_eq!(beside(&[60.0], [120.0, 300.0]), None);
    let with_box = |places: &[f64]| {
        let mut design = cut(straight(), places);
        design["keep_outs"] = json!([{"name": "k", "box": {"min": [140, 9, -50], "max": [170, 50, 50]}}]);
        let told = report(&design);
        found(&told, "meets_keep_out").first().map(|finding| finding["value"].as_f64().unwrap())
    };
    // 3 mm from the tube; 0.4 mm from a collar from 150 to 158 of the run, 8 mm on in x.
    assert_eq!(with_box(&[]), None);
    assert_eq!(with_box(&[80.0]), None);
    assert!((with_box(&[150.0]).unwrap() - 0.4).abs() < 1e-6);
}

#[test]
fn what_does_not_fit_the_printer_is_asked_of_each_piece() {
    let mut design = straight();
    design["process"]["printer"] = json!({"name": "p", "build_volume": [150, 150, 150], "least_wall": 1, "margin": 5});
    assert_eq!(found(&report(&design), "print_size").len(), 1);
    assert_eq!(found(&report(&cut(design, &[150.0])), "print_size"), Vec::<&Value>::new());
}
