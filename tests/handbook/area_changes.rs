//! Sudden changes of bore. Sources: Borda and Carnot; Crane TP-410; Rennels and Hudson, Pipe Flow, by an open-source library.

use tubewright_core::flow::{Conditions, Course, contraction, contraction_factor, expansion_factor, run_loss, water};

/// Smaller bore, larger bore, expansion, contraction by Crane, contraction by Rennels and Hudson.
const ROWS: [[f64; 5]; 3] = [
    [8.0, 10.0, 0.12960, 0.18000, 0.23034],
    [10.0, 12.0, 0.09336, 0.15278, 0.18479],
    [9.0, 13.0, 0.27114, 0.26036, 0.35889],
];

#[test]
fn each_row_of_the_area_table() {
    for [smaller, larger, widening, narrowing, other] in ROWS {
        assert!((expansion_factor(smaller / larger) - widening).abs() < 6e-6, "{smaller} {larger}");
        assert!((contraction_factor(smaller / larger) - narrowing).abs() < 6e-6, "{smaller} {larger}");
        let banded = contraction(smaller, larger, 1e4);
        assert!(banded.low < other && other < banded.high, "{banded:?} {other}");
    }
    // Into a large room, and out of one.
    assert_eq!((expansion_factor(0.0), contraction_factor(0.0)), (1.0, 0.5));
}

/// On the smaller bore's dynamic pressure, whichever way the coolant goes.
#[test]
fn a_run_between_fittings_of_other_bores() {
    let fluid = water(40.0).expect("liquid");
    let loss = |bore, bore_before, bore_after| {
        let conditions = Conditions { fluid, flow: 200.0, bore, roughness: 0.0, bore_before, bore_after };
        run_loss(&Course { stretches: Vec::new() }, &conditions).expect("a loss").total.nominal
    };
    let pressure = fluid.dynamic_pressure(200.0, 8.0);
    let close = |found: f64, expected: f64| assert!((found / expected - 1.0).abs() < 1e-9, "{found} {expected}");
    close(loss(10.0, Some(8.0), None), 0.1296 * pressure);
    close(loss(10.0, None, Some(8.0)), 0.18 * pressure);
    close(loss(8.0, Some(10.0), Some(10.0)), 0.3096 * pressure);
    assert_eq!(loss(8.0, Some(8.0), Some(8.0)), 0.0);
}
