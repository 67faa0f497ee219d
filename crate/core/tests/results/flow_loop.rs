//! Pumps and loops: closed forms, what a pump's curve promises, and losses of whole centrelines.

use crate::shapes_support::{design, line};
use proptest::prelude::*;
use serde_json::json;
use tubewright_core::centreline::{Centreline, Shape};
use tubewright_core::flow::{
    Bend, Conditions, Course, NoOperatingPoint, Pump, PumpFault, Stretch, curved_friction, operating_point,
    quadratic_drop, run_loss, water,
};
use tubewright_core::out_of_range::OutOfRange;

fn conditions(flow: f64, bore: f64) -> Conditions {
    let fluid = water(40.0).expect("liquid");
    Conditions { fluid, flow, bore, roughness: 0.005, bore_before: None, bore_after: None }
}

/// A parabola against a parabola: H (1 - (q/Q)^2) = k q^2 at q = sqrt(H / (k + H/Q^2)).
#[test]
fn two_numbers_against_a_square_law() {
    for [shut_off, open, k] in [[38_000.0, 1000.0, 0.1], [20_000.0, 800.0, 5.0], [70_000.0, 1500.0, 1e-3]] {
        let pump = Pump::of_two_numbers(shut_off, open).expect("a pump");
        for share in [0.0, 0.2, 0.5, 0.99, 1.0] {
            let head = pump.head(open * share).expect("on the curve");
            assert!((head - shut_off * (1.0 - share * share)).abs() < 1e-9 * shut_off, "{share}: {head}");
        }
        assert_eq!((pump.head(open * 1.01), pump.range()), (None, [0.0, open]));
        let found = operating_point(&pump, |flow| quadratic_drop(k, 1.0, flow)).expect("they meet");
        let expected = f64::sqrt(shut_off / (k + shut_off / (open * open)));
        assert!((found.flow / expected - 1.0).abs() < 1e-11, "{found:?} {expected}");
        assert!((found.pressure / (k * expected * expected) - 1.0).abs() < 1e-9, "{found:?}");
    }
}

#[test]
fn what_is_no_pump_is_refused() {
    let fault = |points: &[[f64; 2]]| Pump::of_points(points).expect_err("no pump");
    assert_eq!(fault(&[[0.0, 3e4]]), PumpFault::Points { count: 1 });
    assert_eq!(fault(&[[0.0, 3e4], [100.0, 3.1e4], [200.0, 0.0]]), PumpFault::Rises { point: 1 });
    assert_eq!(fault(&[[0.0, 3e4], [0.0, 2e4]]), PumpFault::FlowNotAbove { point: 1 });
    assert_eq!(fault(&[[0.0, 3e4], [200.0, 2e4], [100.0, 1e4]]), PumpFault::FlowNotAbove { point: 2 });
    assert_eq!(fault(&[[0.0, 3e4], [100.0, f64::NAN]]), PumpFault::NotANumber { point: 1 });
    assert_eq!(fault(&[[-1.0, 3e4], [100.0, 0.0]]), PumpFault::NotANumber { point: 0 });
    assert_eq!(fault(&[[0.0, 0.0], [100.0, 0.0]]), PumpFault::Nothing);
    for [head, flow] in [[0.0, 800.0], [3e4, 0.0], [-1.0, 800.0], [f64::NAN, 800.0], [3e4, f64::INFINITY]] {
        assert_eq!(Pump::of_two_numbers(head, flow), Err(PumpFault::Nothing));
    }
    assert_eq!(
        fault(&[[0.0, 3e4], [100.0, 3.1e4]]).to_string(),
        "the pump curve rises to point 2; its pressure must fall as the flow grows"
    );
}

#[test]
fn a_pump_and_a_loop_that_do_not_meet() {
    let pump = Pump::of_points(&[[100.0, 3e4], [200.0, 2.5e4]]).expect("a pump");
    let weak = operating_point(&pump, |flow| quadratic_drop(5e4, 100.0, flow)).expect_err("too weak");
    assert_eq!(weak, NoOperatingPoint::TooWeak { flow: 100.0, head: 3e4, loss: 5e4 });
    let ends = operating_point(&pump, |flow| quadratic_drop(1e4, 200.0, flow)).expect_err("the curve ends");
    assert_eq!(ends, NoOperatingPoint::CurveEnds { flow: 200.0, head: 2.5e4, loss: 1e4 });
    assert!(ends.to_string().contains("200 l/h") && ends.to_string().contains("25000 Pa"), "{ends}");
    let fault = OutOfRange { what: "bore", value: 0.0, min: 1.0, max: 2.0, unit: "mm" };
    assert_eq!(operating_point(&pump, |_| Err(fault)), Err(NoOperatingPoint::Loss(fault)));
    for bad in [[-1.0, 100.0, 10.0], [1.0, 0.0, 10.0], [1.0, 100.0, -10.0]] {
        assert!(quadratic_drop(bad[0], bad[1], bad[2]).is_err());
    }
}

fn pump_points() -> impl Strategy<Value = Vec<[f64; 2]>> {
    (prop::collection::vec((1.0..300.0f64, prop_oneof![Just(0.0), 0.0..20_000.0f64]), 2..9), 0.0..50.0f64).prop_map(
        |(steps, first)| {
            let highest: f64 = 100.0 + steps.iter().map(|(_, fall)| fall).sum::<f64>();
            let (mut flow, mut head) = (first, highest);
            steps.iter().fold(vec![[flow, head]], |mut points, (on, fall)| {
                flow += on;
                head -= fall;
                points.push([flow, head.max(0.0)]);
                points
            })
        },
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    /// A curve passes through its points and never rises between them.
    #[test]
    fn a_curve_keeps_to_its_points(points in pump_points()) {
        let pump = Pump::of_points(&points).expect("a pump");
        for [flow, head] in &points {
            prop_assert!((pump.head(*flow).expect("on the curve") - head).abs() <= 1e-9 * points[0][1]);
        }
        let [first, last] = pump.range();
        let mut before = f64::INFINITY;
        for step in 0..=2000 {
            let flow = (first + (last - first) * f64::from(step) / 2000.0).min(last);
            let head = pump.head(flow).expect("on the curve");
            prop_assert!(head <= before + 1e-9 * points[0][1], "{step}: {head} after {before}");
            before = head;
        }
    }

    /// Where they meet, the pump keeps up what the loop costs, and the runs' shares are all of it.
    #[test]
    fn they_meet_where_both_agree(points in pump_points(), drop in 100.0..60_000.0f64, length in 10.0..3000.0f64,
                                  bends in 0..12usize) {
        let mut points = points;
        let last = points[points.len() - 1][0];
        points.push([last + 100.0, 0.0]);
        let pump = Pump::of_points(&points).expect("a pump");
        let mut stretches = vec![Stretch::Bend(Bend { radius: 20.0, angle: 1.5 }); bends];
        stretches.push(Stretch::Straight { length });
        let course = Course { stretches };
        let of_tube = |flow: f64| Ok::<f64, OutOfRange>(run_loss(&course, &conditions(flow, 9.0))?.total.nominal);
        let met = operating_point(&pump, |flow| Ok(quadratic_drop(drop, 200.0, flow)? + of_tube(flow)?));
        match met {
            Ok(point) => {
                let loss = quadratic_drop(drop, 200.0, point.flow).expect("a drop") + of_tube(point.flow).expect("a loss");
                // A bend's loss may step by 0.6 %, and the pump then meets the step.
                prop_assert!((loss / point.pressure - 1.0).abs() < 7e-3, "{point:?} {loss}");
                let beside = 1e-9 * point.flow;
                let over = |flow: f64| {
                    pump.head(flow).unwrap_or_default() - quadratic_drop(drop, 200.0, flow).expect("a drop")
                        - of_tube(flow).expect("a loss")
                };
                prop_assert!(over(point.flow - beside) >= 0.0 && over(point.flow + beside) <= 0.0, "{point:?}");
            }
            Err(NoOperatingPoint::TooWeak { head, loss, .. }) => prop_assert!(loss > head && points[0][0] > 0.0),
            Err(fault) => prop_assert!(false, "{fault}"),
        }
    }
}

fn drawn(route: serde_json::Value) -> Centreline {
    line(&design(([0.0, 0.0, 0.0], [1.0, 0.0, 0.0]), ([400.0, 150.0, 120.0], [0.0, 0.0, 1.0]), route))
}

/// Along a coil of pitch p the loss is that of one circle of D (1 + (p / pi D)^2); beside it the run's straights and bends
/// are counted as they are.
#[test]
fn a_coil_is_reckoned_by_its_developed_circle() {
    let coil = json!([{ "coil": { "centre": [120, 60, 0], "axis": [0, 0, 1], "radius": 30, "pitch": 20, "turns": 3,
        "hand": "right", "start_deg": 0 } }]);
    let line = drawn(coil);
    let conditions = conditions(240.0, 10.0);
    let loss = run_loss(&Course::of(&line), &conditions).expect("a loss");
    let across = 60.0 * (1.0 + (20.0 / (core::f64::consts::PI * 60.0)) * (20.0 / (core::f64::consts::PI * 60.0)));
    let friction = curved_friction(loss.reynolds, 10.0 / across, 5e-4).expect("a coil").nominal;
    let length = 568.660_868;
    let expected = friction * length / 10.0 * conditions.fluid.dynamic_pressure(240.0, 10.0);
    assert!((loss.parts.coils.nominal / expected - 1.0).abs() < 1e-8, "{} {expected}", loss.parts.coils.nominal);
    let sum = [loss.parts.straights, loss.parts.bends, loss.parts.coils].iter().map(|part| part.nominal).sum::<f64>();
    assert!(loss.parts.straights.nominal > 0.0 && loss.parts.bends.nominal > 0.0 && loss.parts.curves.nominal == 0.0);
    assert!((sum / loss.total.nominal - 1.0).abs() < 1e-12);
}

/// Curves and spirals against forty thousand short steps along them.
#[test]
fn curves_are_integrated_by_their_arc_length() {
    for (route, flow) in [
        (
            json!([{ "through": [100, 25, 0] }, { "through": [180, 5, 30] }, { "through": [270, 40, 90] }, { "through": [360, 120, 190] }]),
            40.0,
        ),
        (
            json!([{ "through": [100, 25, 0] }, { "through": [180, 5, 30] }, { "through": [270, 40, 90] }, { "through": [360, 120, 190] }]),
            300.0,
        ),
        (
            json!([{ "coil": { "centre": [120, 60, 0], "axis": [0, 0, 1], "radius": 25, "end_radius": 45, "pitch": 20,
                "turns": 3, "hand": "left", "start_deg": 0 } }]),
            200.0,
        ),
    ] {
        let line = drawn(route);
        assert!(line.tightest_radius() > 10.0, "{}", line.tightest_radius());
        let conditions = conditions(flow, 10.0);
        let loss = run_loss(&Course::of(&line), &conditions).expect("a loss");
        let mut walked = 0.0;
        for piece in line.pieces.iter().filter(|piece| matches!(piece.shape, Shape::Curve(_))) {
            let steps = (piece.length * 60.0).ceil();
            for step in 0..steps as u32 {
                let at = piece.at(piece.length * (f64::from(step) + 0.5) / steps);
                let ratio = 10.0 * at.curvature.norm() / 2.0;
                let friction = curved_friction(loss.reynolds, ratio, 5e-4).expect("a curve").nominal;
                walked += friction * piece.length / steps / 10.0;
            }
        }
        walked *= conditions.fluid.dynamic_pressure(flow, 10.0);
        let found = loss.parts.curves.nominal + loss.parts.coils.nominal;
        assert!(walked > 0.0 && (found / walked - 1.0).abs() < 1e-3, "{found} {walked}");
    }
}
