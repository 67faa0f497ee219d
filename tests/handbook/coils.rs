//! Coils. Sources: Ito 1959, Schmidt 1967 and Srinivasan for the critical Reynolds number; White 1929, Mori and Nakayama, and
//! Mishra and Gupta 1979 for the friction. By own arithmetic; White's and the critical numbers also by an open-source library.

use tubewright_core::flow::{
    critical_reynolds, critical_reynolds_ito, critical_reynolds_schmidt, critical_reynolds_srinivasan, curved_friction,
    developed_diameter, ito_curved_friction, mishra_gupta_laminar, mishra_gupta_turbulent, mori_nakayama_laminar,
    white_laminar,
};

#[test]
fn each_critical_reynolds_number() {
    for [ratio, ito, schmidt, srinivasan] in
        [[0.05, 7668.3, 7437.6, 7734.9], [0.10, 9572.6, 9318.2, 10068.9], [0.20, 11949.8, 11887.2, 13369.8]]
    {
        let close = |found: f64, expected: f64| assert!((found - expected).abs() < 0.06, "{ratio}: {found} {expected}");
        close(critical_reynolds_ito(ratio), ito);
        close(critical_reynolds(ratio), ito);
        close(critical_reynolds_schmidt(ratio), schmidt);
        close(critical_reynolds_srinivasan(ratio), srinivasan);
    }
}

/// Re, d/D, Dean number, White, Mori and Nakayama, Mishra and Gupta.
const LAMINAR: [[f64; 6]; 5] = [
    [250.0, 0.2, 111.80, 0.406328, 0.422246, 0.404751],
    [500.0, 0.1, 158.11, 0.228703, 0.234491, 0.226765],
    [1000.0, 0.1, 316.23, 0.147469, 0.150433, 0.146500],
    [2000.0, 0.1, 632.46, 0.096712, 0.099826, 0.097003],
    [1000.0, 0.05, 223.61, 0.129529, 0.132095, 0.128355],
];

#[test]
fn each_row_of_the_laminar_coil_table() {
    for [re, ratio, dean, white, mori, mishra] in LAMINAR {
        let close =
            |found: f64, expected: f64| assert!((found - expected).abs() < 6e-7, "{re} {ratio}: {found} {expected}");
        assert!((re * f64::sqrt(ratio) - dean).abs() < 6e-3);
        close(white_laminar(re, ratio), white);
        close(mori_nakayama_laminar(re, ratio), mori);
        close(mishra_gupta_laminar(re, ratio), mishra);
        let found = curved_friction(re, ratio, 0.0).expect("a coil");
        close(found.nominal, white);
        assert!(found.trusted && found.low == found.high);
    }
}

/// Re, d/D, Ito's, Mishra and Gupta's.
const TURBULENT: [[f64; 4]; 4] = [
    [1e4, 0.1, 0.039571, 0.041127],
    [2e4, 0.1, 0.034734, 0.036093],
    [5e4, 0.1, 0.029500, 0.030646],
    [2e4, 0.05, 0.032048, 0.033314],
];

/// With Darcy's factor the term of the curvature is 0.03 sqrt(d/D), not 0.0075.
#[test]
fn each_row_of_the_turbulent_coil_table() {
    for [re, ratio, ito, mishra] in TURBULENT {
        let close =
            |found: f64, expected: f64| assert!((found - expected).abs() < 6e-7, "{re} {ratio}: {found} {expected}");
        close(ito_curved_friction(re, 1.0 / (2.0 * ratio)), ito);
        close(mishra_gupta_turbulent(re, ratio), mishra);
        // What a run is reckoned with lies between the published two, or within 2.5 % of one.
        let found = curved_friction(re, ratio, 0.0).expect("a coil").nominal;
        assert!(found > ito.min(mishra) * 0.975 && found < ito.max(mishra) * 1.025, "{re} {ratio}: {found}");
    }
}

/// Bore 10, coil 60 across, pitch 20.
#[test]
fn a_coil_with_a_pitch() {
    let across = developed_diameter(60.0, 20.0);
    assert!((across - 60.6755).abs() < 6e-5, "{across}");
    assert!((mishra_gupta_turbulent(2e4, 10.0 / across) - 0.038785).abs() < 6e-7);
    assert!((1000.0 * f64::sqrt(10.0 / across) - 405.97).abs() < 6e-3);
    assert!((mishra_gupta_laminar(1000.0, 10.0 / across) - 0.161781).abs() < 6e-7);
}
