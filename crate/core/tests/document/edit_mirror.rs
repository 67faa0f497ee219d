//! Runs mirrored about planes across the axes. The judge is the mirror itself: every point of the twin's centreline is
//! the mirror image of the run's.

use crate::edit_support::{apart, canonical, design, edited, fitting, line, points, port, rich, run};
use nalgebra::Vector3;
use serde_json::{Value, json};

fn image(p: &Vector3<f64>, across: usize, at: f64) -> Vector3<f64> {
    let mut p = *p;
    p[across] = 2.0 * at - p[across];
    p
}

fn mirror(design: &Value, run: &str, across: usize, at: f64) -> Value {
    let axis = ["x", "y", "z"][across];
    edited(design, json!({ "edit": "mirror", "run": run, "across": axis, "at": at }))
}

#[test]
fn every_point_of_the_twin_is_the_mirror_image() {
    for across in 0..3 {
        for at in [-40.0, 500.0, 77.125] {
            let before = rich();
            let after = mirror(&before, "pump to block", across, at);
            assert_eq!(after["runs"][1]["name"], "pump to block mirrored");
            let (here, there) = (line(&after, 0), line(&after, 1));
            assert!((here.length - there.length).abs() < 1e-9, "{across}, {at}: {} {}", here.length, there.length);
            let images: Vec<_> = points(&here, 601).iter().map(|p| image(p, across, at)).collect();
            let off = apart(&images, &points(&there, 601));
            assert!(off < 1e-9, "across {across} at {at}: {off}");
            assert_eq!(after["runs"][0], canonical(&before)["runs"][0], "the run itself is not touched");
        }
    }
}

#[test]
fn the_twin_is_tied_to_its_own_ports() {
    let after = mirror(&rich(), "pump to block", 0, 500.0);
    let route = &after["runs"][1]["route"];
    assert_eq!(
        route[0]["corner"],
        json!([{ "of": "pump mirrored", "plus": 0 }, { "of": "pump mirrored", "plus": 0 }, 130])
    );
    // The offset changes its sign on the mirrored axis and there alone.
    assert_eq!(route[1]["coil"]["centre"][0], json!({ "of": "pump mirrored", "plus": -130.25 }));
    assert_eq!(route[2]["through"][1], json!({ "of": "block mirrored", "plus": 20 }));
    assert_eq!(route[1]["coil"]["hand"], "right");
    assert_eq!(after["runs"][1]["dress"]["twist_deg_per_mm"], -1.5);
    let ports = after["ports"].as_array().unwrap();
    assert_eq!(ports.len(), 6);
    assert_eq!(ports[4]["at"], json!([970, 20, 60]));
    assert_eq!(ports[5]["facing"], json!([-0.3, 0, 1]));
    assert_eq!(ports[4]["fitting"], "C12", "a straight fitting is its own mirror image");
    assert_eq!(ports[5]["fitting"], "E12 mirrored");
    let turn = |fitting: usize| after["fittings"][fitting]["elbow"]["turn_deg"].as_f64().unwrap();
    assert_eq!((turn(1), turn(2)), (40.0, -40.0));
}

#[test]
fn mirroring_the_twin_comes_back_to_the_same_ports_and_curve() {
    for across in 0..3 {
        let once = mirror(&rich(), "pump to block", across, 123.5);
        let twice = mirror(&once, "pump to block mirrored", across, 123.5);
        assert_eq!(twice["ports"], once["ports"], "no port is made twice");
        assert_eq!(twice["fittings"], once["fittings"], "nor a fitting");
        let back = &twice["runs"][2];
        assert_eq!(back["name"], "pump to block mirrored mirrored");
        for key in ["from", "to", "tube", "bend_radius", "dress", "ends"] {
            assert_eq!(back[key], twice["runs"][0][key], "{key}");
        }
        let off = apart(&points(&line(&twice, 0), 401), &points(&line(&twice, 2), 401));
        assert!(off < 1e-9, "across {across}: {off}");
        // With whole numbers the statement itself comes back.
        assert_eq!(back["route"], twice["runs"][0]["route"], "across {across}");
    }
}

#[test]
fn ports_that_are_there_already_are_used() {
    // Built as a mirror image of itself about x = 100.
    let ports = [
        port("left low", [40.0, 0.0, 0.0], [0.0, 0.0, 1.0], "C12"),
        port("left high", [0.0, 90.0, 80.0], [1.0, 0.0, 0.0], "C12"),
        port("right low", [160.0, 0.0, 0.0], [0.0, 0.0, 2.0], "C12"),
        port("right high", [200.0, 90.0, 80.0], [-1.0, 0.0, 0.0], "C12"),
        port("middle", [100.0, 300.0, 0.0], [0.0, 0.0, 1.0], "C12"),
    ];
    let route = json!([{ "corner": [40, 0, { "of": "middle", "plus": 80 }] },
        { "corner": [{ "of": "left low", "plus": 0 }, { "of": "left high", "plus": 0 }, 80] }]);
    let before = design(&[fitting("C12")], &ports, &[run("left", "left low", "left high", route)]);
    let after = mirror(&before, "left", 0, 100.0);
    assert_eq!(after["ports"], canonical(&before)["ports"]);
    let twin = &after["runs"][1];
    assert_eq!([&twin["from"], &twin["to"]], ["right low", "right high"]);
    // A port on the plane is its own twin.
    assert_eq!(twin["route"][0]["corner"], json!([160, 0, { "of": "middle", "plus": 80 }]));
    assert_eq!(
        twin["route"][1]["corner"],
        json!([{ "of": "right low", "plus": 0 }, { "of": "right high", "plus": 0 }, 80])
    );
}

#[test]
fn a_tie_to_a_port_without_a_twin_stays_where_it_can() {
    let mut before = rich();
    before["runs"][0]["route"] =
        json!([{ "corner": [{ "of": "spare a", "plus": 4 }, { "of": "spare a", "plus": -300 }, 150] }]);
    let after = mirror(&before, "pump to block", 0, 200.0);
    assert_eq!(after["runs"][1]["route"][0]["corner"], json!([366, { "of": "spare a", "plus": -300 }, 150]));
}

#[test]
fn elbows_point_where_the_mirror_says_about_every_axis_and_facing() {
    let facings =
        [[0.0, 0.0, 1.0], [0.0, 0.0, -1.0], [1.0, 0.0, 0.0], [0.0, -2.0, 0.0], [0.5, 0.4, -0.7], [0.01, 0.0, 1.0]];
    for facing in facings {
        for turn in [0.0, 90.0, 180.0, -35.0, 250.0] {
            for across in 0..3 {
                let mut elbow = fitting("E12");
                elbow["elbow"] = json!({ "angle_deg": 60, "rise": 14, "reach": 12, "turn_deg": turn });
                let ports =
                    [port("a", [0.0; 3], facing, "E12"), port("b", [200.0, 130.0, 260.0], [0.0, 0.0, -1.0], "C12")];
                let before = design(&[fitting("C12"), elbow], &ports, &[run("r", "a", "b", json!([]))]);
                let after = mirror(&before, "r", across, 40.0);
                let scene: Value =
                    serde_json::from_str(&tubewright_core::engine::scene(&after.to_string()).unwrap()).unwrap();
                let mouth = |port: usize, key: &str| {
                    Vector3::from([0, 1, 2].map(|k| scene["ports"][port][key][k].as_f64().unwrap()))
                };
                let told = format!("facing {facing:?}, turn {turn}, across {across}");
                assert!((image(&mouth(0, "mouth"), across, 40.0) - mouth(2, "mouth")).norm() < 1e-9, "{told}");
                assert!((image(&mouth(0, "out"), across, 0.0) - mouth(2, "out")).norm() < 1e-12, "{told}");
                let written =
                    after["fittings"].as_array().unwrap().last().unwrap()["elbow"]["turn_deg"].as_f64().unwrap();
                assert!(written > -180.0 && written <= 180.0 || written == turn, "{told}: {written}");
            }
        }
    }
}
