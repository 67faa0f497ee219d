//! Heat. Sources: glass transitions and deflection temperatures at 1.8 MPa of a generic resin database, a commercial
//! materials database and data pages; the rule itself is common practice, no source.

use tubewright_core::heat::{MARGIN, SetBy, growth, service_limit};

/// What is known of common materials: it fails at 60 degrees C, or it does not.
#[test]
fn who_stands_a_stopped_pump() {
    for (material, glass, deflection, fails) in [
        ("PLA", 55.0, 48.0, true),
        ("PLA at its best", 60.0, 50.0, true),
        ("PETG", 75.0, 63.0, true),
        ("ABS", 105.0, 77.0, false),
        ("PC", 147.0, 127.0, false),
        ("PMMA", 101.0, 74.0, true),
    ] {
        let limit = service_limit(Some(glass), Some(deflection), MARGIN[1]).expect("in range").expect("known");
        assert_eq!(limit.limit < 60.0, fails, "{material}: {limit:?}");
        assert_eq!(limit.limit, deflection - 15.0, "{material}");
    }
}

#[test]
fn the_lower_of_the_two_sets_the_limit() {
    let limit = |glass, deflection| service_limit(glass, deflection, 10.0).expect("in range");
    let told = limit(Some(41.0), Some(86.0)).expect("known");
    assert_eq!((told.limit, told.set_by), (31.0, SetBy::GlassTransition));
    let told = limit(Some(105.0), Some(77.0)).expect("known");
    assert_eq!((told.limit, told.set_by), (67.0, SetBy::Deflection));
    assert_eq!(limit(None, Some(77.0)).expect("known").limit, 67.0);
    assert_eq!(limit(Some(105.0), None).expect("known").limit, 95.0);
    assert_eq!(limit(None, None), None);
    assert!(service_limit(Some(f64::NAN), None, 10.0).is_err() && service_limit(None, None, -1.0).is_err());
}

/// 300 mm by 30 K at 100e-6/K: 0.90 mm.
#[test]
fn growth_in_length() {
    assert!((growth(300.0, 100.0, 30.0).expect("in range") - 0.90).abs() < 1e-12);
    assert!(growth(300.0, 100.0, -30.0).expect("in range") < 0.0 && growth(-1.0, 100.0, 30.0).is_err());
}
