//! Leak tests with air. Sources: the law of the ideal gas; 1 sccm is 1 cm3 a minute at 101.325 kPa.

use tubewright_core::leak::{AIR, LeakTest, fall_per_kelvin, stored_energy};

const TEST: LeakTest = LeakTest {
    volume: 0.8,
    start: 500.0,
    end: 495.0,
    start_temperature: 19.85,
    end_temperature: 19.85,
    seconds: 600.0,
    air: AIR,
};

/// 5 mbar in ten minutes out of 0.8 l: 6.7e-3 mbar l/s, 0.395 sccm.
#[test]
fn what_the_usual_limit_means() {
    let leak = TEST.read().expect("readings");
    assert!((leak.rate - 6.7e-3).abs() < 5e-5 && (leak.rate_sccm - 0.395).abs() < 5e-4, "{leak:?}");
    assert!((leak.by_leak - 5.0).abs() < 1e-9 && leak.by_temperature.abs() < 1e-9);
    assert!(leak.passes(600.0, 5.0 + 1e-9, 600.0) && !leak.passes(600.0, 4.99, 600.0));
    assert!(!leak.passes(600.0, 5.0, 660.0));
}

/// 1 K at 0.5 bar over the air's pressure and 293 K looks like 5.2 mbar.
#[test]
fn what_a_kelvin_looks_like() {
    let fall = fall_per_kelvin(500.0, AIR, 19.85).expect("in range");
    assert!((fall - 5.2).abs() < 0.05, "{fall}");
    let cooled = LeakTest { end: 500.0 - fall, end_temperature: 18.85, ..TEST };
    let leak = cooled.read().expect("readings");
    assert!(leak.by_leak.abs() < 1e-9 && leak.rate.abs() < 1e-12, "{leak:?}");
    assert!((leak.by_temperature - fall).abs() < 1e-9 && (leak.fall - fall).abs() < 1e-9);
    // Warming hides a leak.
    let hidden = LeakTest { end: 500.0, end_temperature: 20.85, ..TEST }.read().expect("readings");
    assert!(hidden.fall == 0.0 && hidden.by_leak > 5.0 && hidden.by_temperature < -5.0, "{hidden:?}");
    let warmed = LeakTest { end: 500.0, end_temperature: 20.85, ..TEST };
    for test in [cooled, TEST, warmed] {
        let leak = test.read().expect("readings");
        let kelvin = (test.end_temperature + 273.15) / (test.start_temperature + 273.15);
        assert!((leak.by_temperature + leak.by_leak * kelvin - leak.fall).abs() < 1e-9);
    }
}

#[test]
fn what_is_no_reading_is_refused() {
    for bad in [
        LeakTest { volume: 0.0, ..TEST },
        LeakTest { seconds: 0.0, ..TEST },
        LeakTest { start: -1100.0, ..TEST },
        LeakTest { end: f64::NAN, ..TEST },
        LeakTest { end_temperature: -300.0, ..TEST },
        LeakTest { air: 0.0, ..TEST },
    ] {
        assert!(bad.read().is_err(), "{bad:?}");
    }
}

/// A litre at 0.5 bar holds 10.7 J, by Brode's bound 125 J.
#[test]
fn what_compressed_air_holds() {
    let [slow, brode] = stored_energy(1.0, 500.0, AIR).expect("in range");
    assert!((slow - 10.7).abs() < 0.05 && (brode - 125.0).abs() < 1e-9, "{slow} {brode}");
    assert_eq!(stored_energy(1.0, 0.0, AIR), Ok([0.0, 0.0]));
    assert!(stored_energy(-1.0, 500.0, AIR).is_err() && stored_energy(1.0, -1.0, AIR).is_err());
}
