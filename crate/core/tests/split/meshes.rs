//! The pieces of a cut run: solids of the exact volume and skin, that fit each other as the joint states, and put together
//! are the run. Judges: closed forms, and the exact skin sampled.

use crate::mesh_judge::skin::Skin;
use crate::mesh_judge::{Case, design, plain};
use core::f64::consts::PI;
use serde_json::{Value, json};
use tubewright_core::engine::Stages;
use tubewright_core::mesh::{run_mesh, signed_volume, solidity};
use tubewright_core::tube::{Joint, Profile};

/// A design's text, cut, and with other sizes of the joint.
fn cut(text: &str, places: &[f64], joint: Value) -> String {
    let mut design: Value = serde_json::from_str(text).unwrap();
    design["runs"][0]["cuts"] = places.iter().map(|at| json!({"at": at})).collect();
    design["process"]["joint"] = joint;
    design.to_string()
}

/// A straight tube of 300 mm.
fn straight() -> String {
    design("[0, 0, 0]", "[1, 0, 0]", "[316, 0, 0]", "[-1, 0, 0]", &plain(12.0, 8.0, 24.0, "", ""))
}

/// Two legs and a wide bend between them.
fn bent() -> String {
    design(
        "[0, 0, 0]",
        "[1, 0, 0]",
        "[200, 170, 0]",
        "[0, -1, 0]",
        &plain(12.0, 8.0, 60.0, r#"{"corner": [200, 0, 0]}"#, ""),
    )
}

/// A coil between two straights.
fn coiled() -> String {
    let coil = r#"{"coil": {"centre": [0, 0, 60], "axis": [0, 0, 1], "radius": 40, "pitch": 25, "turns": 1.5, "start_deg": 0}}"#;
    design("[40, -60, 50]", "[0, 1, 0.05]", "[-40, -80, 100]", "[0, 1, 0]", &plain(12.0, 8.0, 24.0, coil, ""))
}

fn joints(text: &str) -> Vec<Joint> {
    Stages::of(text).unwrap().cutting(0).joints
}

/// What the gaps of the joints hold, mm3, by cylinders and cones: socket less spigot, the ring beyond the spigot's tip, and
/// the cone before the mouth. A wave of half depth e on a mean radius m encloses pi (m^2 + e^2 / 2).
fn gap(joint: &Joint) -> f64 {
    let size = &joint.size;
    let cone = |[a, b]: [f64; 2], [e, f]: [f64; 2], length: f64| {
        let [m, n] = [a - e, b - f];
        PI * length * ((m * m + m * n + n * n) / 3.0 + (e * e + e * f + f * f) / 6.0)
    };
    let round = |a: f64, b: f64, length: f64| cone([a, b], [0.0; 2], length);
    let (half, crest, ramp) = (size.key / 2.0, size.outer + size.key, size.ramp());
    let inner = crest + size.clearance;
    let socket = cone([inner + size.lead_in, inner], [half; 2], size.lead_in)
        + cone([inner; 2], [half; 2], size.length - size.lead_in + size.clearance)
        + cone([inner, size.bore], [half, 0.0], size.step);
    let catch = size.catch.unwrap_or(0.0);
    let spigot = cone([size.outer, crest], [0.0, half], ramp)
        + cone([crest; 2], [half; 2], size.length - ramp - size.tip - 2.0 * catch)
        + 2.0 * cone([crest, crest - catch], [half; 2], catch)
        + cone([crest, crest - size.tip], [half; 2], size.tip);
    let bore = round(size.bore, size.bore, size.clearance + size.step);
    let mouth = round(size.outer, size.collar(), size.step) - round(size.outer, size.outer, size.step);
    socket - spigot - bore + mouth
}

/// Every promise of a mesh, for each piece and for the run put together.
fn holds(told: &str, text: &str, deviation: f64) {
    let joints = joints(text);
    let pieces = Case::pieces(text);
    assert_eq!(pieces.len(), joints.len() + 1, "{told}");
    let mut sum = 0.0;
    for (index, piece) in pieces.iter().enumerate() {
        piece.holds(&format!("{told}, piece {}", index + 1), deviation, 5e-4);
        sum += piece.profile.material_volume();
    }
    let stages = Stages::of(text).unwrap();
    let line = stages.lines[0].line.as_ref().unwrap();
    let joined = stages.profile(0, line.length);
    let gaps: f64 = joints.iter().map(gap).sum();
    assert!((joined.material_volume() - sum - gaps).abs() < 1e-9 * sum, "{told}: {gaps}");
    let mesh = run_mesh(&stages.design.runs[0], &joined, line, deviation).unwrap();
    assert_eq!(solidity(&mesh), [], "{told}");
    assert!((signed_volume(&mesh) / joined.material_volume() - 1.0).abs() < 5e-4, "{told}");
    let whole = Case { run: stages.design.runs[0].clone(), line: line.clone(), profile: joined };
    let off = Skin::of(&whole).farthest_of(&mesh);
    assert!(off <= deviation, "{told}: {off}");
}

#[test]
fn pieces_of_a_straight_are_solids_that_make_up_the_run() {
    for (places, joint) in [
        (&[150.0][..], json!({})),
        (&[90.0, 200.0], json!({"length": 12, "clearance": 0.05, "wall": 3})),
        (&[150.0], json!({"key_depth": 0})),
        (&[150.0], json!({"key_depth": 5, "length": 2, "clearance": 0.02})),
    ] {
        holds(&format!("{joint}"), &cut(&straight(), places, joint.clone()), 0.01);
    }
    holds("coarse", &cut(&straight(), &[150.0], json!({})), 0.1);
    holds("fine", &cut(&straight(), &[150.0], json!({})), 0.003);
}

#[test]
fn pieces_that_meet_in_a_bend_are_solids_that_make_up_the_run() {
    let text = cut(&bent(), &[80.0, 190.0], json!({}));
    let bend = Stages::of(&text).unwrap().lines[0].line.as_ref().unwrap().pieces[1].clone();
    let joints = joints(&text);
    assert!(joints[1].mouth() > bend.from && joints[1].at < bend.to(), "{joints:?} {bend:?}");
    holds("a bend", &text, 0.01);
    holds("a bend, coarse", &text, 0.1);
}

#[test]
fn pieces_that_meet_in_a_coil_are_solids_that_make_up_the_run() {
    let text = cut(&coiled(), &[150.0, 260.0], json!({}));
    assert_eq!(joints(&text).len(), 2);
    holds("a coil", &text, 0.02);
}

/// At each angle and place of the joint, the socket lies one clearance outside the spigot or, at the lead-ins, where the key
/// rises and in the ring for the adhesive, further.
#[test]
fn a_spigot_has_its_clearance_all_round_and_beyond_its_tip() {
    for joint in [json!({}), json!({"clearance": 0.2, "key_depth": 1.2, "length": 10}), json!({"key_depth": 0})] {
        let text = cut(&straight(), &[150.0], joint);
        let stages = Stages::of(&text).unwrap();
        let (pieces, joint) = (stages.pieces(0), joints(&text)[0]);
        let [spigot, socket] = [&pieces[0].profile, &pieces[1].profile];
        let (mut least, mut at_clearance, mut looks) = (f64::INFINITY, 0, 0);
        for step in 0..=400 {
            let s = joint.mouth() + joint.size.length * f64::from(step) / 400.0;
            for look in 0..32 {
                let angle = f64::from(look) / 32.0 * 2.0 * PI;
                let gap = socket.bore_at(s, angle) - spigot.outer_at(s, angle);
                least = least.min(gap);
                looks += 1;
                at_clearance += usize::from((gap - joint.size.clearance).abs() < 1e-9);
            }
        }
        assert!((least - joint.size.clearance).abs() < 1e-9, "{least}");
        assert!(at_clearance * 2 > looks, "{at_clearance} of {looks}");
        let floor = socket.bore.breaks.iter().find(|[s, _]| *s > joint.at).unwrap();
        assert!((floor[0] - joint.at - joint.size.clearance).abs() < 1e-12);
    }
}

/// Pushed home from outside, the spigot never meets the socket: whatever has passed the mouth is narrower than the way in.
#[test]
fn a_spigot_goes_in_and_only_one_way_round() {
    let text = cut(&straight(), &[150.0], json!({}));
    let (pieces, joint) = (Stages::of(&text).unwrap().pieces(0), joints(&text)[0]);
    let [spigot, socket] = [&pieces[0].profile, &pieces[1].profile];
    let meets = |turned: f64, out: f64| {
        (0..=200).any(|step| {
            let s = joint.mouth() + joint.size.length * f64::from(step) / 200.0;
            let place = s - out;
            place >= joint.mouth()
                && (0..64).any(|look| {
                    let angle = f64::from(look) / 64.0 * 2.0 * PI;
                    spigot.outer_at(s, angle + turned) >= socket.bore_at(place, angle)
                })
        })
    };
    for out in 0..=80 {
        assert!(!meets(0.0, f64::from(out) * 0.1), "{out}");
    }
    for turned in 2..=10 {
        assert!(meets(f64::from(turned) * PI / 6.0, 0.0), "{turned}");
    }
}

/// Of the tube itself and of nothing else: what is printed of a run without cuts is the run.
#[test]
fn a_run_without_cuts_is_one_piece_and_the_same_mesh() {
    for text in [straight(), bent(), coiled()] {
        let stages = Stages::of(&text).unwrap();
        let line = stages.lines[0].line.as_ref().unwrap();
        let [piece] = &stages.pieces(0)[..] else { panic!("one piece") };
        let plain =
            Profile::of(&stages.design.runs[0], &stages.layout.runs[0], &stages.design.process.printer, line.length);
        assert_eq!(piece.profile, plain);
        assert_eq!(stages.piece_mesh(piece, 0.05).unwrap(), stages.mesh(0, 0.05).unwrap());
    }
}

/// The bore is as wide all along, but for the gap beyond each spigot's tip.
#[test]
fn bores_are_one_all_along() {
    let text = cut(&straight(), &[90.0, 200.0], json!({}));
    let joints = joints(&text);
    for piece in Stages::of(&text).unwrap().pieces(0) {
        let [from, to] = piece.profile.span();
        for step in 0..=1000 {
            let s = from + (to - from) * f64::from(step) / 1000.0;
            let in_joint = joints
                .iter()
                .any(|joint| s < joint.at + joint.size.floor() && s >= joint.mouth() && joint.mouth() >= from);
            let near_end = !(0.3..=299.7).contains(&s);
            assert!(in_joint || near_end || (piece.profile.bore.radius(s) - 4.0).abs() < 1e-12, "{s}");
        }
    }
}

#[test]
fn a_joint_carries_its_number_in_rings_on_both_sides() {
    let places: Vec<f64> = (1..=7).map(|joint| 20.0 + 35.0 * f64::from(joint)).collect();
    let text = cut(&straight(), &places, json!({}));
    let stages = Stages::of(&text).unwrap();
    let joints = joints(&text);
    assert_eq!(joints.len(), 7);
    let outer = stages.profile(0, 300.0).outer;
    for joint in &joints {
        let count = |[from, to]: [f64; 2]| {
            let rings = outer.breaks.windows(3).filter(|ring| {
                ring[0][0] >= from && ring[2][0] <= to && ring[1][1] < ring[0][1] && ring[1][1] < ring[2][1]
            });
            rings.map(|ring| if ring[2][0] - ring[0][0] > 0.9 { 5 } else { 1 }).sum::<u32>()
        };
        assert_eq!(count([joint.span()[0], joint.mouth()]), joint.number);
        assert_eq!(count([joint.mouth(), joint.span()[1]]), joint.number);
    }
}
