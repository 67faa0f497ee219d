//! How a tube fares in service, on small designs whose answers can be worked out by hand. Sources: Lamé's thick cylinder and
//! the torus factor as worked beside each value; design guides' squeeze; the facts of common practice are named so.

use crate::check_support::{all, design, fitting, mends, one, port, run, single};
use serde_json::{Value, json};
use tubewright_core::check::Severity;
use tubewright_core::engine;

/// A quarter turn out of one port into another: 12/8 mm tube, bend radius 24.
fn elbow() -> Value {
    single([100.0, 0.0, 60.0], [-1.0, 0.0, 0.0], 24.0, &[[0.0, 0.0, 60.0]])
}

/// A straight tube between two ports that face each other, 400 mm of it.
fn straight(outer: f64, bore: f64) -> Value {
    let mut fitting = fitting("C12");
    fitting["tube_diameter"] = json!(outer);
    fitting["collar_diameter"] = json!(outer + 7.0);
    let ports = [port("a", [0.0; 3], [1.0, 0.0, 0.0]), port("b", [416.0, 0.0, 0.0], [-1.0, 0.0, 0.0])];
    let mut run = run("r", "a", "b", 40.0, &[]);
    run["tube"] = json!({"outer_diameter": outer, "bore": bore});
    let mut whole = design(&ports, &[run]);
    whole["fittings"] = json!([fitting]);
    whole
}

fn with(mut design: Value, part: &str, key: &str, value: Value) -> Value {
    design[part][key] = value;
    design
}

/// A material with nothing against it but what a test puts there.
fn material(changes: Value) -> Value {
    let mut material = json!({"name": "m", "way": "resin", "density_g_per_cm3": 1.1, "glass_c": 120, "hdt_180_c": 100,
        "strength_mpa": 40, "modulus_mpa": 2000, "elongation_percent": 20, "expansion_um_per_m_k": 100,
        "across_layers": 0.8, "tight_from_mm": 1});
    for (key, value) in changes.as_object().unwrap() {
        material[key] = value.clone();
    }
    material
}

fn made_of(design: Value, changes: Value) -> Value {
    with(design, "process", "material", material(changes))
}

fn report(design: &Value) -> Value {
    serde_json::from_str(&engine::report(&design.to_string()).unwrap()).unwrap()
}

fn near(found: &Value, expected: f64, by: f64) {
    let found = found.as_f64().unwrap_or_else(|| panic!("{found} is no number"));
    assert!((found - expected).abs() <= by, "{found}, not {expected}");
}

/// Common practice, no source: PLA does not stand the 60 degrees of a stopped pump. Its sheet: glass transition 55,
/// deflection 48; ten kelvin below the lower is 38, which the working temperature of 40 already passes.
#[test]
fn pla_stops_at_the_temperature_of_a_stopped_pump() {
    let text = with(elbow(), "process", "material", json!("PLA"));
    let finding = one(&text, "heat");
    assert_eq!((finding.severity, finding.value, finding.limit), (Severity::Stop, Some(40.0), Some(38.0)));
    let mended: Value = serde_json::from_str(&mends(&text.to_string(), &finding)).unwrap();
    let of = &mended["process"]["material"];
    let softens = of["hdt_180_c"].as_f64().unwrap();
    assert!(softens - 15.0 >= 60.0, "{of}");
}

#[test]
fn a_margin_of_ten_kelvin_stops_and_one_of_fifteen_is_asked_for() {
    let at = |hdt: f64| all(&made_of(elbow(), json!({"hdt_180_c": hdt})), "heat");
    assert_eq!(at(75.0), []);
    for (hdt, severity, limit) in
        [(74.9, Severity::Care, 59.9), (70.0, Severity::Care, 55.0), (69.9, Severity::Stop, 59.9)]
    {
        let found = at(hdt);
        assert_eq!((found[0].severity, found[0].value), (severity, Some(60.0)), "{hdt}");
        assert!((found[0].limit.unwrap() - limit).abs() < 1e-9, "{hdt}: {:?}", found[0]);
    }
    // The lower of glass transition and deflection counts; above its glass transition a semi-crystalline one still carries.
    let glass = |semi: bool| all(&made_of(elbow(), json!({"glass_c": 45, "semicrystalline": semi})), "heat").len();
    assert_eq!((glass(false), glass(true)), (1, 0));
}

#[test]
fn figures_that_are_not_known_are_said_to_be_missing() {
    let bare = with(elbow(), "process", "material", json!({"name": "m", "density_g_per_cm3": 1.1}));
    let finding = one(&bare, "material_unknown");
    assert_eq!(finding.severity, Severity::Note);
    let service = &report(&bare)["runs"][0]["service"];
    assert_eq!((&service["heat"]["limit_c"], &service["strength"]), (&Value::Null, &Value::Null));
}

/// 400 mm at 100 um/(m K) from 20 to 60 degrees: 0.4 * 100 * 40 = 1600 um.
#[test]
fn growth_is_length_times_expansion_times_warming() {
    let text = made_of(straight(12.0, 8.0), json!({}));
    near(&report(&text)["runs"][0]["service"]["heat"]["growth_mm"], 1.6, 1e-9);
    assert_eq!(one(&text, "heat_growth").value, Some(1.6));
    let cool = with(text, "loop", "cold_c", json!(50));
    assert_eq!(all(&cool, "heat_growth"), []);
}

/// 40 MPa x 0.8 x 0.5 x 0.4 / 4 = 1.6 MPa; 16/12 mm at 0.1 MPa: 0.1 (8^2 + 6^2)/(8^2 - 6^2) = 0.357143 MPa, 0.223 of it; and
/// 1.6 MPa at 448 kPa.
#[test]
fn a_straight_tube_holds_what_lame_says() {
    let text = made_of(straight(16.0, 12.0), json!({}));
    let strength = &report(&text)["runs"][0]["service"]["strength"];
    near(&strength["hoop_mpa"], 10.0 / 28.0, 1e-12);
    near(&strength["allowed_mpa"], 1.6, 1e-12);
    near(&strength["utilisation"], 10.0 / 28.0 / 1.6, 1e-12);
    near(&strength["allowed_kpa"], 448.0, 1e-9);
    near(&strength["bend_factor"], 1.0, 0.0);
    let product: f64 = strength["factors"].as_array().unwrap().iter().map(|f| f["times"].as_f64().unwrap()).product();
    assert!((product - 0.04).abs() < 1e-12, "{strength}");
    assert_eq!(all(&text, "strength"), []);
    // At 400 kPa 0.893 of it is used: much. At 500 kPa too much; the largest bore that holds is k = 3.2, (k-1)/(k+1).
    let at = |kpa: f64| one(&with(text.clone(), "loop", "test_kpa", json!(kpa)), "strength");
    assert_eq!(at(400.0).severity, Severity::Care);
    let over = with(text.clone(), "loop", "test_kpa", json!(500));
    let finding = one(&over, "strength");
    assert_eq!((finding.severity, finding.value), (Severity::Stop, Some(500.0)));
    assert!((finding.limit.unwrap() - 448.0).abs() < 1e-9);
    let mended: Value = serde_json::from_str(&mends(&over.to_string(), &finding)).unwrap();
    let bore = mended["runs"][0]["tube"]["bore"].as_f64().unwrap();
    assert!(bore < 16.0 * (2.2f64 / 4.2).sqrt(), "{bore}");
}

/// The inside of a bend: mean radius of 14/10 mm is 6, so (R - r/2)/(R - r) at R 24 is 21/18.
#[test]
fn a_bend_is_worse_off_on_its_inside() {
    let mut text = made_of(elbow(), json!({}));
    text["fittings"][0]["tube_diameter"] = json!(14);
    text["runs"][0]["tube"] = json!({"outer_diameter": 14, "bore": 10});
    let strength = &report(&text)["runs"][0]["service"]["strength"];
    near(&strength["bend_factor"], 21.0 / 18.0, 1e-12);
    near(&strength["utilisation"], 0.1 * 74.0 / 24.0 * (21.0 / 18.0) / 1.6, 1e-12);
}

/// A beam held in both collars, one of them moved aside by d: the moment 6 E I d / L^2 makes a stress of 3 E OD d / L^2 at the
/// collar. Ports are each 0.1 mm off; the mouths are 380 mm apart.
#[test]
fn a_brittle_tube_names_the_stress_of_a_crooked_fit() {
    assert_eq!(all(&made_of(straight(12.0, 8.0), json!({})), "side_load"), []);
    let text = made_of(straight(12.0, 8.0), json!({"elongation_percent": 3}));
    let finding = one(&text, "side_load");
    assert_eq!(finding.severity, Severity::Care);
    let sideways = 3.0 * 2000.0 * 12.0 * 0.2 / (380.0 * 380.0);
    assert!(finding.value.unwrap() >= sideways * (1.0 - 1e-9), "{finding:?}, at least {sideways}");
    assert!((finding.limit.unwrap() - 40.0 * 0.8 * 0.4 / 4.0).abs() < 1e-12);
}

#[test]
fn a_wall_below_the_tight_one_is_made_thicker_and_filament_weeps() {
    let text = made_of(straight(12.0, 9.0), json!({"tight_from_mm": 2}));
    let finding = one(&text, "tight");
    assert_eq!((finding.severity, finding.value, finding.limit), (Severity::Care, Some(1.5), Some(2.0)));
    let mended: Value = serde_json::from_str(&mends(&text.to_string(), &finding)).unwrap();
    assert_eq!(mended["runs"][0]["tube"]["bore"], json!(8));
    let weeps = one(&with(straight(12.0, 8.0), "process", "material", json!("PETG")), "tight");
    assert_eq!((weeps.severity, weeps.value), (Severity::Care, None));
}

/// A ring of 2.0 mm in a gland 1.6 mm deep is squeezed by 20 %; each 0.1 mm of tube diameter is 2.5 points of it.
#[test]
fn the_ring_is_squeezed_by_what_the_gland_leaves() {
    let sealed = |gland: f64| {
        let mut text = straight(12.0, 8.0);
        text["fittings"][0]["seal"] = json!({"section": 2.0, "gland_diameter": gland});
        text["process"]["printer"] =
            json!({"name": "p", "build_volume": [500, 500, 500], "least_wall": 1, "tolerance": 0.1});
        text
    };
    let good = sealed(15.2);
    assert_eq!(all(&good, "seal"), []);
    let seals = &report(&good)["runs"][0]["service"]["seals"];
    for end in [0, 1] {
        near(&seals[end]["squeeze_percent"]["nominal"], 20.0, 1e-9);
        near(&seals[end]["best_outer_diameter"], 12.0, 1e-9);
        // Worst: tube 0.1, gland 0.05 and section 0.08 all against it: (2 - 0.08 - 1.675)/(2 - 0.08) and (2.08 - 1.525)/2.08.
        near(&seals[end]["squeeze_percent"]["worst"][0], 24.5 / 1.92, 1e-6);
        near(&seals[end]["squeeze_percent"]["worst"][1], 55.5 / 2.08, 1e-6);
        let [low, high] = [0, 1].map(|i| seals[end]["squeeze_percent"]["likely"][i].as_f64().unwrap());
        assert!(24.5 / 1.92 < low && low < 20.0 && 20.0 < high && high < 55.5 / 2.08, "{low} {high}");
    }
    let loose = one_of_two(&sealed(15.6));
    assert_eq!(loose, (Severity::Care, 10.0));
    assert_eq!(one_of_two(&sealed(15.7)).0, Severity::Stop);
    assert_eq!(one_of_two(&sealed(14.0)).0, Severity::Stop);
    // A gland that the tube fills altogether.
    assert_eq!(all(&sealed(12.0), "seal").len(), 2);
}

fn one_of_two(text: &Value) -> (Severity, f64) {
    let both = all(text, "seal");
    assert_eq!(both.len(), 2, "{both:?}");
    (both[0].severity, (both[0].value.unwrap() * 1e9).round() / 1e9)
}

/// Water of 40 degrees C in a smooth bore of 8 mm at 120 L/h: 892.2 Pa a metre (Colebrook and White, by a general-purpose
/// library). A tenth of a 3 m head of that water is 0.3 * 992.2 * 9.80665 = 2919 Pa.
#[test]
fn a_narrow_tube_is_found_to_choke() {
    let smooth = made_of(straight(12.0, 8.0), json!({"roughness_um": 0}));
    let flow = &report(&smooth)["runs"][0]["service"]["flow"];
    near(&flow["loss_kpa"]["nominal"], 0.8922 * 0.4, 0.02 * 0.8922 * 0.4);
    near(&flow["velocity_m_per_s"], 120.0 / 3.6e6 / (std::f64::consts::PI * 16e-6), 1e-9);
    assert_eq!(all(&smooth, "flow"), []);
    let sweep = flow["sweep"].as_array().unwrap();
    assert_eq!((sweep.len(), &sweep[3]["loss_kpa"], &sweep[7]["flow_l_per_h"]), (8, &flow["loss_kpa"], &json!(240.0)));
    let losses: Vec<f64> = sweep.iter().map(|at| at["loss_kpa"]["nominal"].as_f64().unwrap()).collect();
    assert!(losses.is_sorted() && losses[0] > 0.0, "{losses:?}");
    let narrow = made_of(straight(12.0, 4.0), json!({"roughness_um": 0}));
    let finding = one(&narrow, "flow");
    assert_eq!(finding.severity, Severity::Care);
    assert!((finding.limit.unwrap() - 0.3 * 0.992216 * 9.80665).abs() < 1e-4, "{finding:?}");
}

/// Contraction 0.5 (1 - b^2) and expansion (1 - b^2)^2 with b = 6/8 on the narrow bore's speed pressure (Crane TP-410;
/// Borda and Carnot): from a fitting of 6 mm into 8 mm of tube and back.
#[test]
fn a_fitting_that_is_narrower_than_the_tube_costs_at_both_ends() {
    let mut text = made_of(straight(12.0, 8.0), json!({"roughness_um": 0}));
    text["fittings"][0]["bore"] = json!(6);
    let speed = 120.0 / 3.6e6 / (std::f64::consts::PI * 9e-6);
    let pressure = 992.216 / 2.0 * speed * speed;
    let (b, ends) = (0.5625, &report(&text)["runs"][0]["service"]["flow"]["ends_kpa"]);
    near(ends, ((1.0 - b) * 0.5 + (1.0 - b) * (1.0 - b)) * pressure * 1e-3, 1e-6);
}

#[test]
fn a_coolant_that_freezes_or_states_nothing_is_said_so() {
    let icy = with(elbow(), "loop", "working_c", json!(-10));
    let finding = one(&icy, "flow_unknown");
    assert_eq!((finding.severity, finding.place.as_str()), (Severity::Note, "/loop/working_c"));
    let mystery = with(elbow(), "loop", "coolant", json!({"name": "c", "density_g_per_cm3": 1.0}));
    assert_eq!(one(&mystery, "flow_unknown").place, "/loop/coolant");
    assert_eq!(report(&mystery)["runs"][0]["service"]["flow"], Value::Null);
}

/// Up, over and down again: the tube's top lies 60 above where it leaves, so that air stays.
#[test]
fn a_tube_that_goes_up_and_over_keeps_air_and_upside_down_coolant() {
    let over = single([120.0, 0.0, 0.0], [0.0, 0.0, 1.0], 24.0, &[[0.0, 0.0, 68.0], [120.0, 0.0, 68.0]]);
    let finding = one(&over, "bleed");
    // The ends sit on the stops, 8 above the seats.
    assert!((finding.value.unwrap() - 60.0).abs() < 1e-9, "{finding:?}");
    assert_eq!(all(&over, "drain"), []);
    let under = with(over, "loop", "up", json!([0, 0, -2]));
    assert!((one(&under, "drain").value.unwrap() - 60.0).abs() < 1e-9);
    assert_eq!(all(&under, "bleed"), []);
    let slanted = with(elbow(), "loop", "up", json!([1, 0, 1]));
    assert_eq!((all(&slanted, "bleed").len(), all(&slanted, "drain").len()), (0, 0));
}

/// A 2.0 mm ring has pi mm2 of rubber; a groove 1.6 deep and 2.7 wide has 4.32: 72.7 %. In 2.2 of width it is 89 %.
#[test]
fn a_ring_needs_room_in_its_groove() {
    let grooved = |width: f64| {
        let mut text = straight(12.0, 8.0);
        text["fittings"][0]["seal"] = json!({"section": 2.0, "gland_diameter": 15.2, "gland_width": width});
        text
    };
    near(&report(&grooved(2.7))["runs"][0]["service"]["seals"][0]["fill_percent"]["nominal"], 72.722, 1e-3);
    assert_eq!(all(&grooved(2.7), "gland_full"), []);
    let full = all(&grooved(2.2), "gland_full");
    assert_eq!((full.len(), full[0].severity, full[0].limit), (2, Severity::Care, Some(85.0)));
    assert!((full[0].value.unwrap() - std::f64::consts::PI / (1.6 * 2.2) * 100.0).abs() < 1e-9);
}

/// The ring reaches 2.0 - 1.6 = 0.4 mm in; 1 mm of chamfer at 15 degrees draws in by 0.268.
#[test]
fn a_chamfer_must_reach_under_the_ring() {
    let chamfered = |length: f64| {
        let mut text = straight(12.0, 8.0);
        text["fittings"][0]["seal"] = json!({"section": 2.0, "gland_diameter": 15.2});
        text["runs"][0]["ends"] = json!({"chamfer_deg": 15, "chamfer_length": length});
        text
    };
    assert_eq!(all(&chamfered(2.0), "ring_caught"), []);
    let short = chamfered(1.0);
    let found = all(&short, "ring_caught");
    assert_eq!(found.len(), 2);
    assert!((found[0].value.unwrap() - 0.267_949).abs() < 1e-6 && (found[0].limit.unwrap() - 0.4).abs() < 1e-9);
    let mended: Value = serde_json::from_str(&mends(&short.to_string(), &found[0])).unwrap();
    let length = mended["runs"][0]["ends"]["chamfer_length"].as_f64().unwrap();
    assert!(length * 0.267_949 >= 0.4 && length < 1.5, "{length}");
}
