//! Nearest distances against closed forms of analytic geometry, and against dense sampling as an independent judge:
//! it evaluates the curves and solids at many points and compares all pairs, and shares no search code with the engine.

use crate::check_support::Random;
use core::f64::consts::{FRAC_PI_2, PI};
use tubewright_core::centreline::{Bounds, Centreline, Piece, Shape};
use tubewright_core::distance::{Body, Budget, SETTLED, Solid, apart, between, to_solid, within_itself};
use tubewright_core::layout::{Vec3, perpendicular, unit};

fn point(random: &mut Random, size: f64) -> Vec3 {
    Vec3::from_fn(|_, _| random.in_range(-size, size))
}

/// One step of a curve: a straight, or an arc of a radius and angle towards a direction.
enum Step {
    Straight(f64),
    Arc { radius: f64, angle: f64, towards: Vec3 },
}

fn curve(start: Vec3, direction: Vec3, steps: &[Step]) -> Centreline {
    let (mut start, mut direction, mut from) = (start, unit(&direction), 0.0);
    let mut pieces = Vec::new();
    for step in steps {
        let (length, shape) = match step {
            Step::Straight(length) => (*length, Shape::Straight),
            Step::Arc { radius, angle, towards } => {
                let normal = perpendicular(&direction, towards);
                (radius * angle, Shape::Arc { radius: *radius, angle: *angle, normal, station: None })
            }
        };
        let piece = Piece { from, length, start, direction, shape };
        let end = piece.at(length);
        (start, direction, from) = (end.point, unit(&end.tangent), from + length);
        pieces.push(piece);
    }
    Centreline { pieces, length: from }
}

fn random_curve(random: &mut Random) -> Centreline {
    let count = 1 + (random.next() * 6.0) as usize;
    let steps: Vec<Step> = (0..count)
        .map(|_| {
            if random.next() < 0.5 {
                Step::Straight(random.in_range(0.1, 60.0))
            } else {
                let angle = if random.next() < 0.2 { random.in_range(3.0, 6.2) } else { random.in_range(1e-7, 2.5) };
                Step::Arc { radius: random.in_range(2.0, 40.0), angle, towards: point(random, 1.0) }
            }
        })
        .collect();
    curve(point(random, 40.0), point(random, 1.0), &steps)
}

fn plenty() -> Budget {
    Budget::of(50_000_000)
}

const EVERYWHERE: f64 = f64::INFINITY;

fn whole(line: &Centreline) -> [f64; 2] {
    [0.0, line.length]
}

fn least(a: &Centreline, b: &Centreline) -> f64 {
    between((&Body::new(a), whole(a)), (&Body::new(b), whole(b)), EVERYWHERE, &mut plenty()).unwrap().distance
}

fn samples(line: &Centreline, count: usize) -> Vec<(f64, Vec3)> {
    (0..=count).map(|k| line.length * k as f64 / count as f64).map(|s| (s, line.at(s).point)).collect()
}

#[test]
fn parallel_runs_keep_their_gap_through_bends() {
    // Two runs round one corner about one centre: radii 20 and 33, so 13 apart everywhere.
    let turn = |radius: f64| {
        [Step::Straight(80.0), Step::Arc { radius, angle: FRAC_PI_2, towards: Vec3::x() }, Step::Straight(70.0)]
    };
    let inner = curve(Vec3::new(-20.0, 0.0, -80.0), Vec3::z(), &turn(20.0));
    let outer = curve(Vec3::new(-33.0, 0.0, -80.0), Vec3::z(), &turn(33.0));
    assert!((least(&inner, &outer) - 13.0).abs() < 1e-9);
    // Three hundred bends side by side must not take long: a budget of 100 looks a piece is plenty.
    let wave: Vec<Step> = (0..300)
        .map(|k| Step::Arc { radius: 12.0, angle: PI, towards: if k % 2 == 0 { Vec3::x() } else { -Vec3::x() } })
        .collect();
    let first = curve(Vec3::zeros(), Vec3::z(), &wave);
    let shifted = curve(Vec3::new(0.0, 12.5, 0.0), Vec3::z(), &wave);
    let mut budget = Budget::of(300 * 1_000);
    let near = between((&Body::new(&first), whole(&first)), (&Body::new(&shifted), whole(&shifted)), 13.0, &mut budget);
    assert!((near.unwrap().distance - 12.5).abs() < 1e-9 && !budget.is_spent());
}

#[test]
fn skew_lines_keep_the_distance_of_the_formula() {
    let mut random = Random(7);
    for _ in 0..200 {
        let (p, q) = (point(&mut random, 50.0), point(&mut random, 50.0));
        let (u, v) = (unit(&point(&mut random, 1.0)), unit(&point(&mut random, 1.0)));
        // Analytic geometry: lines p + s u and q + t v are |(p - q) . (u x v)| / |u x v| apart.
        let across = u.cross(&v);
        let expected = (p - q).dot(&across).abs() / across.norm();
        let long = 20_000.0;
        let a = curve(p - u * long, u, &[Step::Straight(2.0 * long)]);
        let b = curve(q - v * long, v, &[Step::Straight(2.0 * long)]);
        if across.norm() > 0.05 {
            assert!((least(&a, &b) - expected).abs() < 1e-9, "{expected}");
        }
    }
}

#[test]
fn legs_of_a_hairpin_are_two_radii_apart() {
    for radius in [6.5, 7.0, 30.0] {
        let hairpin = curve(
            Vec3::zeros(),
            Vec3::z(),
            &[Step::Straight(100.0), Step::Arc { radius, angle: PI, towards: Vec3::x() }, Step::Straight(60.0)],
        );
        let body = Body::new(&hairpin);
        let near = within_itself(&body, whole(&hairpin), FRAC_PI_2 * 13.0, 200.0, &mut plenty()).unwrap();
        // Points a quarter of the circumference of 13 mm apart along it are nearest on the bend if it is wide.
        let on_bend = 2.0 * radius * libm::sin((FRAC_PI_2 * 13.0 / (2.0 * radius)).min(FRAC_PI_2));
        assert!((near.distance - on_bend.min(2.0 * radius)).abs() < 1e-6, "{radius}: {near:?}");
    }
}

#[test]
fn a_circle_round_a_cylinder_and_past_one() {
    let ring = curve(
        Vec3::new(30.0, 0.0, 0.0),
        Vec3::y(),
        &[Step::Arc { radius: 30.0, angle: 1.999 * PI, towards: -Vec3::x() }],
    );
    let body = Body::new(&ring);
    let nearest = |solid: &Solid| to_solid(&body, whole(&ring), solid, EVERYWHERE, &mut plenty()).unwrap().distance;
    // About one axis: 30 - 18 all round.
    let inside = Solid::cylinder(&Vec3::new(0.0, 0.0, -9.0), &Vec3::new(0.0, 0.0, 4.0), 18.0);
    assert!((nearest(&inside) - 12.0).abs() < 1e-9);
    // Axis beside it, parallel: 50 - 30 - 7.
    let beside = Solid::cylinder(&Vec3::new(30.0, -40.0, -9.0), &Vec3::new(30.0, -40.0, 9.0), 7.0);
    assert!((nearest(&beside) - 13.0).abs() < 1e-9);
    // Axis parallel to x at height 11 over y = 35, beyond the circle: sqrt(5^2 + 11^2) - 3.
    let across = Solid::cylinder(&Vec3::new(-90.0, 35.0, 11.0), &Vec3::new(90.0, 35.0, 11.0), 3.0);
    assert!((nearest(&across) - (146.0_f64.sqrt() - 3.0)).abs() < 1e-9);
    // The circle pierces a solid: deepest on its axis plane.
    let pierced = Solid::cylinder(&Vec3::new(30.0, -50.0, 0.0), &Vec3::new(30.0, 50.0, 0.0), 4.0);
    assert!((nearest(&pierced) + 4.0).abs() < 1e-6);
}

#[test]
fn a_tube_over_the_corner_and_edge_of_a_box() {
    let bounds = Bounds { min: Vec3::new(-10.0, -10.0, -10.0), max: Vec3::zeros() };
    let solid = Solid::Box(bounds);
    let distance = |from: Vec3, to: Vec3| {
        let line = curve(from, to - from, &[Step::Straight((to - from).norm())]);
        to_solid(&Body::new(&line), whole(&line), &solid, EVERYWHERE, &mut plenty()).unwrap().distance
    };
    // Past the corner (0, 0, 0) along (1, -1, 0) at (3, 3, 4): sqrt(34).
    let past = distance(Vec3::new(-47.0, 53.0, 4.0), Vec3::new(53.0, -47.0, 4.0));
    assert!((past - 34.0_f64.sqrt()).abs() < 1e-9);
    // Along the edge y = z = 0, 3 and 4 off: 5, however long the plateau.
    assert!((distance(Vec3::new(-8.0, 3.0, 4.0), Vec3::new(-2.0, 3.0, 4.0)) - 5.0).abs() < 1e-12);
    // Through the middle: 5 deep.
    assert!((distance(Vec3::new(-50.0, -5.0, -5.0), Vec3::new(50.0, -5.0, -5.0)) + 5.0).abs() < 1e-9);
}

/// All pairs of 500 by 500 points, the best followed by a pattern search (Hooke and Jeeves 1961) on the two arc lengths.
fn sampled_distance(a: &Centreline, b: &Centreline) -> f64 {
    let (on_a, on_b) = (samples(a, 500), samples(b, 500));
    let mut best = (f64::INFINITY, 0.0, 0.0);
    for (s, p) in &on_a {
        for (t, q) in &on_b {
            let distance = (p - q).norm();
            if distance < best.0 {
                best = (distance, *s, *t);
            }
        }
    }
    let mut step = (a.length + b.length) / 500.0;
    while step > 1e-9 {
        let (_, s, t) = best;
        let tries = [
            (step, 0.0),
            (-step, 0.0),
            (0.0, step),
            (0.0, -step),
            (step, step),
            (-step, -step),
            (step, -step),
            (-step, step),
        ];
        for (ds, dt) in tries {
            let (s, t) = ((s + ds).clamp(0.0, a.length), (t + dt).clamp(0.0, b.length));
            let distance = (a.at(s).point - b.at(t).point).norm();
            if distance < best.0 {
                best = (distance, s, t);
            }
        }
        if (best.1, best.2) == (s, t) {
            step /= 2.0;
        }
    }
    best.0
}

#[test]
fn dense_sampling_never_finds_a_nearer_pair() {
    let mut random = Random(11);
    for case in 0..300 {
        let (a, b) = (random_curve(&mut random), random_curve(&mut random));
        let near =
            between((&Body::new(&a), whole(&a)), (&Body::new(&b), whole(&b)), EVERYWHERE, &mut plenty()).unwrap();
        let [p, q] = [a.at(near.along[0]).point, b.at(near.along[1]).point];
        assert!(((p - q).norm() - near.distance).abs() < 1e-9, "case {case}: not on the curves");
        let judged = sampled_distance(&a, &b);
        assert!(near.distance <= judged + SETTLED, "case {case}: {} against {judged}", near.distance);
        let beyond =
            between((&Body::new(&a), whole(&a)), (&Body::new(&b), whole(&b)), near.distance * 0.999, &mut plenty());
        assert!(beyond.is_none(), "case {case}: nearer than its own answer");
    }
}

#[test]
fn dense_sampling_never_finds_a_nearer_pair_on_one_curve() {
    let mut random = Random(13);
    let mut found = 0;
    for case in 0..300 {
        let line = random_curve(&mut random);
        let apart = random.in_range(1.0, 40.0);
        let near = within_itself(&Body::new(&line), whole(&line), apart, EVERYWHERE, &mut plenty());
        let Some(near) = near else {
            assert!(line.length < apart + 1e-9, "case {case}: nothing found");
            continue;
        };
        found += 1;
        let [p, q] = near.along.map(|s| line.at(s).point);
        assert!(((p - q).norm() - near.distance).abs() < 1e-9 && near.along[1] - near.along[0] >= apart - 1e-6);
        let points = samples(&line, 900);
        let mut judged = f64::INFINITY;
        for (i, (s, p)) in points.iter().enumerate() {
            for (t, q) in points[i..].iter().filter(|(t, _)| t - s >= apart) {
                let _ = t;
                judged = judged.min((p - q).norm());
            }
        }
        // Across the limit of arc length the search stops at stretches of a hundredth.
        assert!(near.distance <= judged + 0.02, "case {case}: {} against {judged}", near.distance);
    }
    assert!(found > 200);
}

#[test]
fn dense_sampling_never_finds_a_deeper_point_in_a_solid() {
    let mut random = Random(17);
    for case in 0..300 {
        let line = random_curve(&mut random);
        let solid = random_solid(&mut random);
        let near = to_solid(&Body::new(&line), whole(&line), &solid, EVERYWHERE, &mut plenty()).unwrap();
        assert!((solid.signed_distance(&line.at(near.along).point) - near.distance).abs() < 1e-9);
        let judged =
            samples(&line, 5_000).iter().fold(f64::INFINITY, |least, (_, p)| least.min(solid.signed_distance(p)));
        assert!(near.distance <= judged + SETTLED, "case {case}: {} against {judged}", near.distance);
    }
}

fn random_solid(random: &mut Random) -> Solid {
    let middle = point(random, 45.0);
    if random.next() < 0.5 {
        let half = Vec3::from_fn(|_, _| random.in_range(0.5, 25.0));
        Solid::Box(Bounds { min: middle - half, max: middle + half })
    } else {
        let along = point(random, 20.0);
        Solid::cylinder(&(middle - along), &(middle + along), random.in_range(0.5, 20.0))
    }
}

/// Points all over the surface of a solid, from its support function: its farthest points in many directions, and
/// their midpoints, which lie inside it.
fn points_of(solid: &Solid, random: &mut Random) -> Vec<Vec3> {
    let rims: Vec<Vec3> = (0..600).map(|_| solid.farthest(&point(random, 1.0))).collect();
    let between = rims.windows(2).map(|pair| (pair[0] + pair[1]) / 2.0).collect::<Vec<_>>();
    rims.into_iter().chain(between).collect()
}

#[test]
fn gaps_of_solids_against_sampled_points() {
    let mut random = Random(19);
    let mut separate = 0;
    for case in 0..300 {
        let (a, b) = (random_solid(&mut random), random_solid(&mut random));
        let gap = apart(&a, &b, EVERYWHERE).unwrap();
        assert!(a.signed_distance(&gap.points[0]) < 1e-9 && b.signed_distance(&gap.points[1]) < 1e-9);
        assert!(((gap.points[0] - gap.points[1]).norm() - gap.distance).abs() < 2e-6);
        let judged = points_of(&a, &mut random)
            .iter()
            .map(|p| b.signed_distance(p).max(0.0))
            .chain(points_of(&b, &mut random).iter().map(|p| a.signed_distance(p).max(0.0)))
            .fold(f64::INFINITY, f64::min);
        assert!(gap.distance <= judged + 2e-6, "case {case}: {} against {judged}", gap.distance);
        if gap.distance > 0.0 {
            separate += 1;
            assert!(apart(&a, &b, gap.distance * 0.999).is_none());
        }
    }
    assert!(separate > 100);
}

#[test]
fn parallel_collars_are_their_axes_less_their_radii_apart() {
    let first = Solid::cylinder(&Vec3::zeros(), &Vec3::new(0.0, 0.0, 18.0), 9.5);
    for pitch in [19.5, 20.0, 24.0, 80.0] {
        let from = Vec3::new(0.6 * pitch, 0.8 * pitch, 3.0);
        let second = Solid::cylinder(&from, &(from + Vec3::new(0.0, 0.0, 18.0)), 9.5);
        assert!((apart(&first, &second, EVERYWHERE).unwrap().distance - (pitch - 19.0)).abs() < 1e-6);
        assert!(apart(&first, &second, pitch - 19.0 - 1e-3).is_none());
    }
}
