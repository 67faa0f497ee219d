//! Numbers of whole loops. Sources: coolant rise P / (rho cp Q) with IAPWS R6-95 water at 40 degrees C; head rho g h.

use tubewright_core::flow::{coolant_rise, head_in_metres, head_in_pascals, water};

#[test]
fn each_coolant_rise() {
    let fluid = water(40.0).expect("liquid");
    for [watts, flow, kelvin] in [[500.0, 120.0, 3.62], [800.0, 120.0, 5.79], [1000.0, 240.0, 3.62]] {
        let found = coolant_rise(&fluid, flow, watts).expect("a flow");
        assert!((found - kelvin).abs() < 5.1e-3, "{watts} {flow}: {found}");
    }
    assert!(coolant_rise(&fluid, 0.0, 500.0).is_err() && coolant_rise(&fluid, 120.0, -1.0).is_err());
}

#[test]
fn each_head_in_pascals() {
    for [metres, kilopascals] in [[2.0, 19.6], [3.0, 29.4], [3.9, 38.2], [5.0, 48.9], [7.0, 68.5]] {
        let found = head_in_pascals(metres, 998.2);
        assert!((found * 1e-3 - kilopascals).abs() < 0.051, "{metres}: {found}");
        assert!((head_in_metres(found, 998.2) - metres).abs() < 1e-12);
    }
}
