//! What must hold of a run's loss whatever its numbers: it grows with the flow, falls with the bore, is Hagen and
//! Poiseuille's where it is laminar, and does not jump where one formula gives way to another.

use core::f64::consts::PI;
use proptest::prelude::*;
use tubewright_core::flow::{
    Bend, Conditions, Course, Estimate, Fluid, Stretch, curved_friction, run_loss, straight_friction, water,
};

/// Steps of a sweep over a range, each by the same small factor.
fn sweep(from: f64, to: f64, steps: u32) -> impl Iterator<Item = f64> {
    let ratio = libm::log(to / from);
    (0..=steps).map(move |step| from * libm::exp(ratio * f64::from(step) / f64::from(steps)))
}

/// The largest relative change from one place of a sweep to the next.
fn jump(values: impl Iterator<Item = f64>) -> f64 {
    let values: Vec<f64> = values.collect();
    values.windows(2).map(|pair| (pair[1] / pair[0] - 1.0).abs()).fold(0.0, f64::max)
}

/// Reynolds numbers 0.03 % apart: friction that goes with no more than their first power changes as little, so a jump
/// of 2 % would show.
fn reynolds() -> impl Iterator<Item = f64> {
    sweep(50.0, 1e6, 33_000)
}

#[test]
fn friction_of_a_straight_does_not_jump() {
    for rough in [0.0, 1e-4, 5e-3, 0.05] {
        let found = jump(reynolds().map(|re| straight_friction(re, rough).expect("on the chart").nominal));
        assert!(found < 1e-3, "{rough}: {found}");
    }
}

#[test]
fn friction_of_a_coil_does_not_jump() {
    for ratio in [1e-6, 1e-4, 0.00116, 0.01, 0.067, 0.14, 0.3, 0.9] {
        for rough in [0.0, 0.01] {
            let found = jump(reynolds().map(|re| curved_friction(re, ratio, rough).expect("a coil").nominal));
            assert!(found < 1e-3, "{ratio} {rough}: {found}");
        }
    }
    // Nor as it straightens out, at any Reynolds number, down to the straight itself.
    for re in [500.0, 2300.0, 2500.0, 3999.0, 4001.0, 9000.0, 3e4, 3e5] {
        let found =
            jump(sweep(0.9, 1e-14, 40_000).map(|ratio| curved_friction(re, ratio, 1e-3).expect("a coil").nominal));
        assert!(found < 2e-3, "{re}: {found}");
        let (nearly, straight) = (curved_friction(re, 1e-14, 1e-3), straight_friction(re, 1e-3));
        let (nearly, straight) = (nearly.expect("a coil").nominal, straight.expect("on the chart").nominal);
        assert!((nearly / straight - 1.0).abs() < 1e-6, "{re}: {nearly} {straight}");
    }
}

#[test]
fn loss_of_a_bend_does_not_jump() {
    for slenderness in [0.51, 0.7, 1.0, 1.5, 2.0, 3.0, 5.0, 9.8, 10.0, 20.5, 30.0, 60.0, 1000.0] {
        for degrees in [5.0, 45.0, 70.0, 90.0, 135.0, 180.0, 300.0] {
            let bend = Bend { radius: 10.0 * slenderness, angle: f64::to_radians(degrees) };
            let found = jump(reynolds().map(|re| bend.factor(10.0, re, 1e-3).expect("a bend").nominal));
            assert!(found < 0.008, "R/d {slenderness}, {degrees}°: {found}");
        }
    }
    // Nor over the radius, nor over the angle.
    for re in [800.0, 2500.0, 6000.0, 3e4, 3e5] {
        let over_radius = sweep(5.1, 5000.0, 40_000).map(|radius| Bend { radius, angle: 1.9 });
        let over_angle = sweep(0.01, 6.2, 40_000).map(|angle| Bend { radius: 25.0, angle });
        for found in [
            jump(over_radius.map(|bend| bend.factor(10.0, re, 1e-3).expect("a bend").nominal)),
            jump(over_angle.map(|bend| bend.factor(10.0, re, 1e-3).expect("a bend").nominal)),
        ] {
            assert!(found < 0.008, "{re}: {found}");
        }
    }
}

/// A gentle bend, a coil and a curve of hardly any curvature are straights, laminar or not.
#[test]
fn the_laminar_limit_is_exact() {
    let fluid = water(20.0).expect("liquid");
    for (bore, flow, length) in [(8.0, 10.0, 300.0), (10.0, 40.0, 1234.5), (12.7, 0.01, 50.0)] {
        let conditions = Conditions { fluid, flow, bore, roughness: 0.1, bore_before: None, bore_after: None };
        // Hagen and Poiseuille: 128 mu L Q / (pi d^4), all in SI.
        let exact = 128.0 * fluid.viscosity * (length * 1e-3) * (flow / 3.6e6) / (PI * libm::pow(bore * 1e-3, 4.0));
        for stretch in [
            Stretch::Straight { length },
            Stretch::Coil { length, curvature: 1e-7 },
            Stretch::Curve { length, curvature: 1e-7 },
            Stretch::Bend(Bend { radius: 1e7, angle: length / 1e7 }),
        ] {
            let loss = run_loss(&Course { stretches: vec![stretch] }, &conditions).expect("a loss").total;
            assert!((loss.nominal / exact - 1.0).abs() < 1e-9, "{stretch:?}: {} {exact}", loss.nominal);
            assert!(loss.trusted && loss.low == loss.high);
        }
    }
}

fn stretches() -> impl Strategy<Value = Stretch> {
    prop_oneof![
        (1.0..500.0).prop_map(|length| Stretch::Straight { length }),
        (15.0..900.0, 0.05..3.1).prop_map(|(radius, angle)| Stretch::Bend(Bend { radius, angle })),
        (10.0..500.0, 0.001..0.05).prop_map(|(length, curvature)| Stretch::Coil { length, curvature }),
        (10.0..500.0, 0.0..0.05).prop_map(|(length, curvature)| Stretch::Curve { length, curvature }),
    ]
}

fn fluids() -> impl Strategy<Value = Fluid> {
    (950.0..1100.0, 3e-4..5e-3, 3000.0..4300.0).prop_map(|(density, viscosity, specific_heat)| Fluid {
        density,
        viscosity,
        specific_heat,
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    /// A tenth of a per cent more flow never costs less, in any regime; nor do its least and most.
    #[test]
    fn loss_grows_with_flow(fluid in fluids(), stretch in stretches(), bore in 6.0..14.0f64, roughness in 0.0..0.15f64,
                            before in 4.0..20.0f64) {
        let course = Course { stretches: vec![stretch] };
        let mut last = [0.0; 3];
        for flow in sweep(1.0, 900.0, 700) {
            let conditions = Conditions { fluid, flow, bore, roughness, bore_before: Some(before), bore_after: Some(before) };
            let Estimate { nominal, low, high, .. } = run_loss(&course, &conditions).expect("a loss").total;
            prop_assert!(low <= nominal && nominal <= high);
            prop_assert!(nominal > last[0], "{flow}: {nominal} after {last:?}");
            last = [nominal, low, high];
        }
    }

    /// Half a per cent more bore never costs more.
    #[test]
    fn loss_falls_with_bore(fluid in fluids(), stretch in stretches(), flow in 5.0..600.0f64, roughness in 0.0..0.15f64) {
        let course = Course { stretches: vec![stretch] };
        let mut last = f64::INFINITY;
        for bore in sweep(6.0, 14.0, 170) {
            let conditions = Conditions { fluid, flow, bore, roughness, bore_before: None, bore_after: None };
            let found = run_loss(&course, &conditions).expect("a loss").total.nominal;
            prop_assert!(found < last, "{bore}: {found} after {last}");
            last = found;
        }
    }

    /// Twice the course costs twice as much, and no flow costs nothing.
    #[test]
    fn loss_adds_up(fluid in fluids(), stretch in stretches(), flow in 5.0..600.0f64) {
        let conditions = Conditions { fluid, flow, bore: 10.0, roughness: 0.01, bore_before: None, bore_after: None };
        let loss = |count: usize, conditions: &Conditions| {
            run_loss(&Course { stretches: vec![stretch; count] }, conditions).expect("a loss")
        };
        let (one, two) = (loss(1, &conditions).total.nominal, loss(2, &conditions).total.nominal);
        prop_assert!((two / one - 2.0).abs() < 1e-12);
        prop_assert_eq!(loss(1, &Conditions { flow: 0.0, ..conditions }).total, Estimate::ZERO);
    }
}

#[test]
fn what_is_no_flow_or_no_bore_is_refused() {
    let fluid = water(40.0).expect("liquid");
    let straight = Course { stretches: vec![Stretch::Straight { length: 100.0 }] };
    let good = Conditions { fluid, flow: 100.0, bore: 10.0, roughness: 0.0, bore_before: None, bore_after: None };
    for bad in [
        Conditions { flow: -1.0, ..good },
        Conditions { flow: f64::NAN, ..good },
        Conditions { bore: 0.0, ..good },
        Conditions { bore: -3.0, ..good },
        Conditions { roughness: -0.1, ..good },
        Conditions { roughness: 2.0, ..good },
        Conditions { bore_before: Some(0.0), ..good },
        Conditions { bore_after: Some(f64::NAN), ..good },
        Conditions { fluid: Fluid { viscosity: 0.0, ..fluid }, ..good },
    ] {
        assert!(run_loss(&straight, &bad).is_err(), "{bad:?}");
    }
    let tight = Course { stretches: vec![Stretch::Bend(Bend { radius: 4.0, angle: 1.0 })] };
    let told = run_loss(&tight, &good).expect_err("no bend").to_string();
    assert_eq!(told, "bend radius is 4 mm; it must be 5 mm or more");
}
