//! Friction in straight tubes. Sources: Hagen and Poiseuille; Colebrook and White 1939; Blasius 1913; Haaland 1983;
//! Churchill 1977. Their values by own arithmetic, Colebrook's also by an open-source library.

use tubewright_core::flow::{Regime, blasius, churchill, colebrook, haaland, straight_friction, velocity, water};

/// Re, e/d, Colebrook, Blasius (0 where outside its range), Haaland, Churchill.
const ROWS: [[f64; 6]; 10] = [
    [4e3, 0.0, 0.039907, 0.039785, 0.040423, 0.040590],
    [5e3, 0.0, 0.037393, 0.037627, 0.037730, 0.037887],
    [1e4, 0.0, 0.030883, 0.031640, 0.030886, 0.031002],
    [2e4, 0.0, 0.025883, 0.026606, 0.025749, 0.025836],
    [1e5, 0.0, 0.017990, 0.017792, 0.017825, 0.017875],
    [1e6, 0.0, 0.011645, 0.0, 0.011587, 0.011612],
    [1e4, 0.001, 0.032382, 0.0, 0.032175, 0.032690],
    [1e4, 0.005, 0.037630, 0.0, 0.037423, 0.038341],
    [1e5, 1e-3, 0.022175, 0.0, 0.021966, 0.022343],
    [1e6, 1e-4, 0.013441, 0.0, 0.013326, 0.013508],
];

#[test]
fn each_row_of_the_friction_table() {
    for [re, rough, by_colebrook, by_blasius, by_haaland, by_churchill] in ROWS {
        let close =
            |found: f64, expected: f64| assert!((found - expected).abs() < 6e-7, "{re} {rough}: {found} {expected}");
        close(colebrook(re, rough), by_colebrook);
        close(straight_friction(re, rough).expect("on the chart").nominal, by_colebrook);
        close(haaland(re, rough), by_haaland);
        close(churchill(re, rough), by_churchill);
        if by_blasius > 0.0 {
            close(blasius(re), by_blasius);
        }
    }
}

#[test]
fn laminar_is_64_over_re() {
    for (re, f) in [(1000.0, 0.064), (2000.0, 0.032), (1.0, 64.0)] {
        let found = straight_friction(re, 0.01).expect("on the chart");
        assert_eq!((found.nominal, found.low, found.high, found.trusted), (f, f, f, true), "{re}");
    }
}

/// Bore, flow, velocity, Re, f, Pa/m (0 where the source gives none), for smooth tubes and water of 40 degrees C.
const FLOWS: [[f64; 6]; 6] = [
    [10.0, 60.0, 0.2122, 3226.0, 0.0, 0.0],
    [10.0, 120.0, 0.4244, 6452.0, 0.03479, 310.9],
    [10.0, 240.0, 0.0, 12903.0, 0.02890, 1032.8],
    [12.0, 120.0, 0.0, 5376.0, 0.0, 131.5],
    [12.0, 240.0, 0.0, 0.0, 0.0, 435.2],
    [8.0, 120.0, 0.0, 8064.0, 0.0, 892.2],
];

#[test]
fn each_flow_of_the_loss_table() {
    let fluid = water(40.0).expect("liquid");
    for [bore, flow, speed, reynolds, factor, loss] in FLOWS {
        let re = fluid.reynolds(flow, bore);
        let friction = straight_friction(re, 0.0).expect("on the chart");
        let per_metre = friction.nominal / (bore * 1e-3) * fluid.dynamic_pressure(flow, bore);
        let close = |found: f64, expected: f64, places: f64| {
            assert!(expected == 0.0 || (found - expected).abs() <= places, "{bore} {flow}: {found} {expected}");
        };
        close(velocity(flow, bore), speed, 5e-5);
        // The viscosity's last place is one in ten thousand.
        close(re, reynolds, reynolds * 2e-4);
        close(friction.nominal, factor, 1e-5);
        close(per_metre, loss, 0.051 + loss * 2e-4);
    }
    assert_eq!(Regime::of(fluid.reynolds(60.0, 10.0)), Regime::Transition);
}

/// Flow at 100 l/h in each size of the trade: bore, area mm2, m/s.
#[test]
fn speed_in_each_size_of_the_trade() {
    for [bore, area, speed] in [
        [8.0, 50.27, 0.553],
        [9.0, 63.62, 0.437],
        [10.0, 78.54, 0.354],
        [9.525, 71.26, 0.390],
        [11.0, 95.03, 0.292],
        [12.0, 113.10, 0.246],
        [12.7, 126.68, 0.219],
        [13.0, 132.73, 0.209],
    ] {
        assert!((velocity(100.0, bore) - speed).abs() < 6e-4, "{bore}");
        assert!((100.0 / 3.6 / velocity(100.0, bore) - area).abs() < 6e-3, "{bore}");
    }
}
