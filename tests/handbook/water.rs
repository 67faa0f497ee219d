//! Water and mixtures. Sources: density and specific heat of IAPWS R6-95 and viscosity of IAPWS R12-08 at 101.325 kPa, as
//! an open-source implementation of both gives them. The engine has the
//! short formulas of IAPWS SR6-08(2011).

use tubewright_core::flow::{Coolant, Glycol, water};

/// degrees C, kg/m3, mPa s, mm2/s, kJ/(kg K).
const ROWS: [[f64; 5]; 6] = [
    [20.0, 998.207, 1.0016, 1.0034, 4.1841],
    [25.0, 997.048, 0.89002, 0.89266, 4.1813],
    [30.0, 995.649, 0.79722, 0.80071, 4.1798],
    [40.0, 992.216, 0.65273, 0.65785, 4.1794],
    [50.0, 988.035, 0.54652, 0.55313, 4.1813],
    [60.0, 983.196, 0.46604, 0.47400, 4.1850],
];

#[test]
fn water_is_as_the_formulations_of_iapws_give_it() {
    for [celsius, density, viscosity, kinematic, heat] in ROWS {
        let fluid = water(celsius).expect("in range");
        let close = |found: f64, expected: f64, share: f64| {
            assert!((found / expected - 1.0).abs() < share, "{celsius} °C: {found}, not {expected}");
        };
        close(fluid.density, density, 2e-6);
        // The viscosity at the pressure of the air is a fit to the whole formulation: to one unit of the table's last place.
        close(fluid.viscosity * 1e3, viscosity, 1.2e-4);
        close(fluid.kinematic_viscosity() * 1e6, kinematic, 1.2e-4);
        close(fluid.specific_heat * 1e-3, heat, 5e-5);
    }
}

/// IAPWS R12-08 prints 889.7351 uPa s for 298.15 K and 998 kg/m3: 2 MPa above the air's pressure, of which water's
/// viscosity hardly knows.
#[test]
fn water_is_as_thick_as_the_release_prints_it() {
    let fluid = water(25.0).expect("in range");
    assert!((fluid.viscosity * 1e6 / 889.735_1 - 1.0).abs() < 5e-4, "{}", fluid.viscosity);
}

#[test]
fn water_that_freezes_or_boils_is_refused() {
    for celsius in [-5.0, 0.0, 99.5, 120.0, f64::NAN] {
        assert!(water(celsius).is_err(), "{celsius}");
    }
    assert_eq!(
        water(120.0).expect_err("boils").to_string(),
        "water temperature is 120 °C; it must be from 0.01 to 99 °C"
    );
}

/// What is said of ready-mixed coolants of 25 % to 30 %: 1.8 to 2.5 times as viscous as water from 20 to 40 degrees C
/// (remembered, no source; propylene glycol at 20 degrees C is a little above); and at the share of its own middle, the constant terms of Melinder 2010.
#[test]
fn mixtures_are_as_thick_as_said() {
    for glycol in [Glycol::Ethylene, Glycol::Propylene] {
        for celsius in [20.0, 30.0, 40.0] {
            for mass_fraction in [0.25, 0.3] {
                let mixture = Coolant::Mixture { glycol, mass_fraction }.at(celsius).expect("in range");
                let times = mixture.viscosity / water(celsius).expect("in range").viscosity;
                assert!((1.7..=3.0).contains(&times), "{glycol:?} {mass_fraction} {celsius}: {times}");
            }
        }
    }
    let middle = Coolant::Mixture { glycol: Glycol::Ethylene, mass_fraction: 0.308_462 }.at(31.728).expect("in range");
    assert!((middle.density - 1034.0).abs() < 1e-6 && (middle.specific_heat - 3737.0).abs() < 1e-6, "{middle:?}");
    assert!((middle.viscosity * 1e3 - 1.600_79).abs() < 1e-4, "{middle:?}");
    let frozen = Coolant::Mixture { glycol: Glycol::Ethylene, mass_fraction: 0.3 }.at(-20.0);
    assert!(frozen.is_err(), "{frozen:?}");
    assert!(Coolant::Mixture { glycol: Glycol::Ethylene, mass_fraction: 0.7 }.at(20.0).is_err());
}
