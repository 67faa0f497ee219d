//! High and low points against closed forms and against a fine walk along the centreline.

use proptest::prelude::*;
use proptest::test_runner::TestCaseError;
use serde_json::{Value, json};
use tubewright_core::bleed::{Keeps, Profile, Trap, profile};
use tubewright_core::centreline::{Centreline, lines};
use tubewright_core::design::Design;
use tubewright_core::layout::{Vec3, place};

/// The centreline of a bare tube along a route.
fn line(
    from: [f64; 3],
    facing: [f64; 3],
    to: [f64; 3],
    to_facing: [f64; 3],
    radius: f64,
    route: Value,
) -> Option<Centreline> {
    let text = json!({
        "format": "tubewright-design", "version": 1,
        "fittings": [{ "name": "F", "tube_diameter": 8, "height": 3, "socket_depth": 3, "collar_diameter": 9, "lead": 0 }],
        "ports": [
            { "name": "a", "at": from, "facing": facing, "fitting": "F" },
            { "name": "b", "at": to, "facing": to_facing, "fitting": "F" }],
        "runs": [{ "name": "r", "from": "a", "to": "b", "tube": { "outer_diameter": 8, "bore": 6 },
            "bend_radius": radius, "route": route }]
    });
    let design: Design = tubewright_core::design::parse(&text.to_string()).expect("a design");
    let layout = place(&design);
    lines(&design, &layout).remove(0).line
}

fn arch() -> Centreline {
    let route = json!([{ "corner": [0, 0, 100] }, { "corner": [80, 0, 100] }]);
    line([0.0; 3], [0.0, 0.0, 1.0], [80.0, 0.0, 20.0], [0.0, 0.0, 1.0], 20.0, route).expect("a line")
}

fn of(line: &Centreline, up: [f64; 3]) -> Profile {
    profile(line, &Vec3::from(up)).expect("a way up")
}

/// Up 100, over 80, down to 20, with bends of R 20: a level top of 40 mm that keeps air down to the end at 20.
#[test]
fn an_arch_with_a_level_top() {
    let found = of(&arch(), [0.0, 0.0, 3.0]);
    assert_eq!(found.ends, [0.0, 20.0]);
    let [trap] = &found.traps[..] else { panic!("{found:?}") };
    let quarter = 20.0 * core::f64::consts::FRAC_PI_2;
    let close = |found: f64, expected: f64| assert!((found - expected).abs() < 1e-9, "{found} {expected}");
    assert_eq!(trap.keeps, Keeps::Air);
    close(trap.height, 100.0);
    close(trap.spill, 20.0);
    close(trap.depth, 80.0);
    close(trap.place[0], 80.0 + quarter);
    close(trap.place[1], 80.0 + quarter + 40.0);
    close((trap.at - Vec3::new(40.0, 0.0, 100.0)).norm(), 0.0);
    // All of it from 20 mm up.
    close(trap.held[0], 20.0);
    close(trap.held[1], 180.0 + 2.0 * quarter);
    close(trap.volume(10.0), core::f64::consts::PI * 25.0 * (160.0 + 2.0 * quarter));
    assert_eq!(found.levels.len(), 1);
    close(found.levels[0].place[1] - found.levels[0].place[0], 40.0);
    // Upside down it is a bath.
    let bath = of(&arch(), [0.0, 0.0, -1.0]);
    assert_eq!(bath.traps.len(), 1);
    assert_eq!((bath.traps[0].keeps, bath.traps[0].depth), (Keeps::Coolant, trap.depth));
    // On its side all of it is level, and it keeps nothing.
    let flat = of(&arch(), [0.0, 1.0, 0.0]);
    assert!(flat.traps.is_empty() && flat.levels.len() == 1, "{flat:?}");
    close(flat.levels[0].place[1], arch().length);
}

/// Tilted by 0.3 radians about y the top is a bend's: 20 mm from its centre at (20, 80).
#[test]
fn a_tilted_arch_is_highest_inside_a_bend() {
    let (sin, cos) = libm::sincos(0.3);
    let found = of(&arch(), [-sin, 0.0, cos]);
    let [trap] = &found.traps[..] else { panic!("{found:?}") };
    let expected = -20.0 * sin + 80.0 * cos + 20.0;
    assert!((trap.height - expected).abs() < 1e-12, "{trap:?} {expected}");
    assert_eq!(trap.place[0], trap.place[1]);
    assert!(found.levels.is_empty());
}

/// A coil lying on its side has a high and a low point in each turn: the heights are centre and radius, closed form.
#[test]
fn a_lying_coil_traps_in_every_turn() {
    let coil = |end_radius: f64| {
        json!([{ "coil": { "centre": [0, 0, 0], "axis": [1, 0, 0], "radius": 30, "end_radius": end_radius, "pitch": 16,
            "turns": 4, "hand": "right", "start_deg": 90 } }])
    };
    let made = |end_radius: f64| {
        line([-60.0, 0.0, -70.0], [0.0, 0.0, 1.0], [130.0, 0.0, -70.0], [0.0, 0.0, 1.0], 20.0, coil(end_radius))
    };
    let found = of(&made(30.0).expect("a line"), [0.0, 0.0, 1.0]);
    let on = |keeps: Keeps, height: f64| {
        found.traps.iter().filter(|trap| trap.keeps == keeps && (trap.height - height).abs() < 1e-9).count()
    };
    // The ends of the coil may add to the first and last of them, but not take.
    assert!(on(Keeps::Air, 30.0) >= 3 && on(Keeps::Coolant, -30.0) >= 3, "{:#?}", found.traps);
    // Between two full turns coolant stands to the top; towards the ends it may run off sooner.
    let depths: Vec<f64> = found.traps.iter().filter(|t| (t.height + 30.0).abs() < 1e-9).map(|t| t.depth).collect();
    assert!(depths.iter().filter(|depth| (**depth - 60.0).abs() < 1e-9).count() >= 2, "{depths:?}");
    assert!(depths.iter().all(|depth| *depth < 60.0 + 1e-9), "{depths:?}");
    // One that widens has each high point above the one before.
    let found = of(&made(40.0).expect("a line"), [0.0, 0.0, 1.0]);
    let highs: Vec<f64> =
        found.traps.iter().filter(|t| t.keeps == Keeps::Air && t.height > 30.0).map(|t| t.height).collect();
    assert!(highs.len() >= 3 && highs.windows(2).all(|pair| pair[1] > pair[0]), "{highs:?}");
}

#[test]
fn no_way_up_is_refused() {
    assert!(profile(&arch(), &Vec3::zeros()).is_err() && profile(&arch(), &Vec3::repeat(f64::NAN)).is_err());
}

/// What a walk in short steps finds: turning heights that stand out from their neighbours.
fn walked(line: &Centreline, up: &Vec3) -> Vec<(Keeps, f64)> {
    let up = up / up.norm();
    let steps = 6000;
    let heights: Vec<f64> =
        (0..=steps).map(|step| line.at(line.length * f64::from(step) / f64::from(steps)).point.dot(&up)).collect();
    heights
        .windows(3)
        .filter_map(|h| match () {
            () if h[1] > h[0] && h[1] > h[2] => Some((Keeps::Air, h[1])),
            () if h[1] < h[0] && h[1] < h[2] => Some((Keeps::Coolant, h[1])),
            () => None,
        })
        .collect()
}

fn coordinate() -> impl Strategy<Value = f64> {
    -120.0..120.0f64
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, failure_persistence: None, ..ProptestConfig::default() })]

    /// Along smooth curves and corners through any points, with any way up, a walk finds the same turns in the same order,
    /// a little short of their heights, and each trap holds what the walk says it does.
    #[test]
    fn a_walk_finds_the_same_turns(points in prop::collection::vec([coordinate(), coordinate(), coordinate()], 2..5),
                                   up in [-1.0..1.0f64, -1.0..1.0f64, -1.0..1.0f64], smooth in any::<bool>()) {
        let up = Vec3::from(up);
        prop_assume!(up.norm() > 0.1);
        let key = if smooth { "through" } else { "corner" };
        let route = Value::from(points.iter().map(|point| json!({ key: point })).collect::<Vec<_>>());
        let made = line([-300.0, 0.0, 0.0], [1.0, 0.0, 0.0], [300.0, 0.0, 0.0], [-1.0, 0.0, 0.0], 6.0, route);
        let Some(made) = made else { return Ok(()) };
        as_walked(&made, &up)?;
    }

    /// So it is along coils, lying or tilted, that keep their radius or widen, of either hand.
    #[test]
    fn a_walk_finds_the_same_turns_of_a_coil(radius in 20.0..40.0f64, widening in prop_oneof![Just(0.0), 0.0..20.0f64],
                                             pitch in 12.0..40.0f64, turns in 0.5..5.0f64, right in any::<bool>(),
                                             up in [-1.0..1.0f64, -1.0..1.0f64, -1.0..1.0f64]) {
        let up = Vec3::from(up);
        prop_assume!(up.norm() > 0.1);
        let coil = json!([{ "coil": { "centre": [0, 0, 0], "axis": [1, 0, 0], "radius": radius,
            "end_radius": radius + widening, "pitch": pitch, "turns": turns, "hand": if right { "right" } else { "left" },
            "start_deg": 30 } }]);
        let made = line([-150.0, 0.0, -70.0], [1.0, 0.0, 0.0], [350.0, 0.0, -70.0], [-1.0, 0.0, 0.0], 10.0, coil);
        let Some(made) = made else { return Ok(()) };
        as_walked(&made, &up)?;
    }
}

/// Fails where a walk along the centreline finds other turns than its profile tells, or a trap holds other than it says.
fn as_walked(made: &Centreline, up: &Vec3) -> Result<(), TestCaseError> {
    let found = profile(made, up).expect("a way up");
    let step = made.length / 6000.0;
    // A walk may miss what is shorter than its steps, and must find the rest.
    let standing = |trap: &&Trap| trap.depth > 1e-3;
    let ours: Vec<&Trap> = found.traps.iter().filter(standing).collect();
    let theirs = walked(made, up);
    let alike =
        |keeps: Keeps, height: f64| ours.iter().any(|trap| trap.keeps == keeps && (trap.height - height).abs() < step);
    for trap in &ours {
        prop_assert!(
            theirs.iter().any(|(keeps, height)| *keeps == trap.keeps && (height - trap.height).abs() < step),
            "not met on a walk: {trap:?}"
        );
        // Beyond the spill's height throughout, and on it or at an end of the run where that ends.
        let sign = if trap.keeps == Keeps::Air { 1.0 } else { -1.0 };
        let beyond = |s: f64| (made.at(s).point.dot(up) / up.norm() - trap.spill) * sign;
        for part in 0..=200 {
            let s = trap.held[0] + (trap.held[1] - trap.held[0]) * f64::from(part) / 200.0;
            prop_assert!(beyond(s) > -1e-6 && beyond(s) < trap.depth + 1e-6, "{trap:?} at {s}: {}", beyond(s));
        }
        let outs = trap.held.map(|s| beyond(s).abs() < 1e-6 || s == 0.0 || s == made.length);
        prop_assert!(outs[0] && outs[1], "{trap:?}");
    }
    let missed = theirs.iter().filter(|(keeps, height)| {
        !alike(*keeps, *height)
            && !found.traps.iter().any(|trap| trap.keeps == *keeps && (trap.height - height).abs() < step)
    });
    prop_assert_eq!(missed.count(), 0);
    Ok(())
}
