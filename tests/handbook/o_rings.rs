//! O-rings. Sources: ISO 3601-1 class B, quoted by an O-ring tolerance page; a groove table; two lead-in tables; a seal
//! textbook's chapter (ISBN 9780203744109, ch. 4, abstract). Squeeze, fill and the cost of a thin tube by own arithmetic.

use tubewright_core::seal::{
    Gland, Stack, Tolerances, best_outer_diameter, chamfer, inside_diameter_tolerance, mean_squeeze, section_tolerance,
};

/// Section, groove depth, groove width, squeeze and fill in per cent.
const GROOVES: [[f64; 5]; 5] = [
    [1.78, 1.30, 2.40, 27.0, 79.8],
    [2.00, 1.50, 2.70, 25.0, 77.6],
    [2.50, 1.90, 3.30, 24.0, 78.3],
    [2.62, 2.00, 3.50, 23.7, 77.0],
    [3.53, 2.70, 4.70, 23.5, 77.1],
];

#[test]
fn each_groove_of_the_table() {
    for [section, depth, width, squeeze, fill] in GROOVES {
        for outer in [10.0, 12.0, 16.0] {
            let gland = Gland::of(outer, outer + 2.0 * depth, section).expect("a gland");
            assert!((gland.squeeze() * 100.0 - squeeze).abs() < 0.051, "{section}: {}", gland.squeeze());
            let filled = gland.fill(width).expect("a groove") * 100.0;
            assert!((filled - fill).abs() < 0.051, "{section}: {filled}");
            assert!(filled <= 85.0);
            // The tube that gives this squeeze is the one that it was worked out for.
            let found = best_outer_diameter(outer + 2.0 * depth, section, gland.squeeze()).expect("a tube");
            assert!((found - outer).abs() < 1e-12);
        }
    }
}

#[test]
fn each_tolerance_of_class_b() {
    for [section, tolerance] in [
        [1.5, 0.08],
        [1.78, 0.08],
        [2.0, 0.08],
        [2.25, 0.08],
        [2.26, 0.09],
        [2.5, 0.09],
        [2.62, 0.09],
        [3.0, 0.09],
        [3.15, 0.09],
        [3.16, 0.10],
        [3.53, 0.10],
        [4.50, 0.10],
        [4.51, 0.13],
        [5.33, 0.13],
        [6.30, 0.13],
        [6.31, 0.15],
        [6.99, 0.15],
        [8.40, 0.15],
    ] {
        assert_eq!(section_tolerance(section), Ok(tolerance), "{section}");
    }
    assert!(section_tolerance(9.0).is_err() && section_tolerance(0.0).is_err());
    // ID 10: 0.19.
    assert!((inside_diameter_tolerance(10.0).expect("a ring") - 0.19).abs() < 5e-3);
}

#[test]
fn the_mean_squeeze_of_a_static_seal() {
    assert!((mean_squeeze(1.78) - 0.27).abs() < 1e-12 && (mean_squeeze(6.99) - 0.18).abs() < 1e-12);
    // Over the five sections of the standard it is 20.5 % on average by the chapter.
    let sections = [1.78, 2.62, 3.53, 5.33, 6.99];
    let mean = sections.map(mean_squeeze).iter().sum::<f64>() / 5.0;
    assert!((mean - 0.205).abs() < 0.012, "{mean}");
}

/// A tube 0.1 mm thin costs 0.05 / section: 2.8, 2.5 and 2.0 points.
#[test]
fn what_a_thin_tube_costs() {
    for [section, points] in [[1.78, 2.8], [2.0, 2.5], [2.5, 2.0]] {
        let squeeze = |outer: f64| Gland::of(outer, 15.2, section).expect("a gland").squeeze() * 100.0;
        assert!((squeeze(12.0) - squeeze(11.9) - points).abs() < 0.051, "{section}");
        assert!((squeeze(12.0) - squeeze(11.8) - 2.0 * points).abs() < 0.11, "{section}");
    }
}

#[test]
fn squeeze_grows_with_tube_and_section_and_falls_with_the_gland() {
    let squeeze = |outer: f64, wall: f64, section: f64| Gland::of(outer, wall, section).expect("a gland").squeeze();
    for step in 0..200 {
        let (at, next) = (f64::from(step) * 0.005, f64::from(step + 1) * 0.005);
        assert!(squeeze(11.5 + next, 15.2, 2.0) > squeeze(11.5 + at, 15.2, 2.0));
        assert!(squeeze(12.0, 15.2, 1.6 + next) > squeeze(12.0, 15.2, 1.6 + at));
        assert!(squeeze(12.0, 14.9 + next, 2.0) < squeeze(12.0, 14.9 + at, 2.0));
    }
}

/// Every corner of the stack: worst cases are the corners', and the
/// likely spread is the standard deviation of independent errors of that size.
#[test]
fn the_stack_is_that_of_its_corners_and_of_its_spread() {
    let gland = Gland::of(12.0, 15.2, 2.0).expect("a gland");
    let tolerances = Tolerances { outer_diameter: 0.15, gland_diameter: 0.05, section: 0.08 };
    let squeeze = Stack::of_squeeze(&gland, &tolerances).expect("a stack");
    let fill = Stack::of_fill(&gland, 2.7, &tolerances).expect("a stack");
    let corner = |a: f64, b: f64, c: f64| Gland::of(12.0 + 0.15 * a, 15.2 + 0.05 * b, 2.0 + 0.08 * c).expect("a gland");
    let ways = [-1.0, 1.0];
    let corners: Vec<Gland> =
        ways.iter().flat_map(|a| ways.iter().flat_map(move |b| ways.map(|c| corner(*a, *b, c)))).collect();
    let ends = |of: &dyn Fn(&Gland) -> f64| {
        let values: Vec<f64> = corners.iter().map(of).collect();
        [values.iter().copied().fold(f64::INFINITY, f64::min), values.iter().copied().fold(f64::NEG_INFINITY, f64::max)]
    };
    assert_eq!(squeeze.worst, ends(&Gland::squeeze));
    assert_eq!(fill.worst, ends(&|gland| gland.fill(2.7).expect("a groove")));
    // By hand: slopes 1/4, 1/4 and 1.6/4 per mm.
    let by_hand = ((0.15f64 / 4.0) * (0.15 / 4.0) + (0.05 / 4.0) * (0.05 / 4.0) + (0.08 * 0.4) * (0.08 * 0.4)).sqrt();
    assert!((squeeze.likely[1] - 0.2 - by_hand).abs() < 1e-12 && (0.2 - squeeze.likely[0] - by_hand).abs() < 1e-12);
    // Slopes by differences, for the fill.
    let slope = |from: Gland, to: Gland| (to.fill(2.7).expect("a groove") - from.fill(2.7).expect("a groove")) / 2e-3;
    let step = 1e-3;
    let parts = [
        slope(corner(-step / 0.15, 0.0, 0.0), corner(step / 0.15, 0.0, 0.0)) * 0.15,
        slope(corner(0.0, -step / 0.05, 0.0), corner(0.0, step / 0.05, 0.0)) * 0.05,
        slope(corner(0.0, 0.0, -step / 0.08), corner(0.0, 0.0, step / 0.08)) * 0.08,
    ];
    let by_differences = parts.iter().map(|part| part * part).sum::<f64>().sqrt();
    assert!(((fill.likely[1] - fill.nominal) / by_differences - 1.0).abs() < 1e-5, "{fill:?} {by_differences}");
    for stack in [squeeze, fill] {
        assert!(stack.worst[0] < stack.likely[0] && stack.likely[1] < stack.worst[1]);
    }
    let wide = Tolerances { outer_diameter: 4.0, ..tolerances };
    assert!(Stack::of_squeeze(&gland, &wide).is_err());
}

/// Section, and what the two tables of lead-ins give for it (0 where one has no row).
#[test]
fn each_lead_in_of_the_tables() {
    for [section, slim, steep] in [[1.78, 2.10, 1.5], [2.62, 3.10, 2.0], [3.53, 4.00, 2.5], [2.0, 0.0, 2.0]] {
        let gland = Gland::of(12.0, 12.0 + 1.5 * section, section).expect("a gland");
        let found = chamfer(2.0, f64::to_radians(15.0), &gland).expect("a chamfer");
        assert_eq!(found.length_advised, steep, "{section}");
        assert!(slim == 0.0 || found.length_ample == slim, "{section}: {found:?}");
        // A chamfer of 15 to 20 degrees and 2 mm takes in 0.5 to 0.7 mm; a squeeze of a quarter of the section is needed.
        assert!((0.5..=0.75).contains(&found.drop), "{found:?}");
        assert!((found.drop_needed - section / 4.0).abs() < 1e-12, "{found:?}");
    }
}
