//! The search for the best stance, held against every direction of a fine spiral, and fitting against closed forms.

use crate::print_support::{design, judged, straight};
use tubewright_core::engine::Stages;
use tubewright_core::layout::Vec3;
use tubewright_core::print::{Subject, search};
use tubewright_core::strategies::{KINDS, designs};

/// Five thousand directions, spread by a rule of their own: rings of latitude.
fn directions() -> Vec<Vec3> {
    let rings = 63;
    let mut all = Vec::new();
    for ring in 0..rings {
        let polar = std::f64::consts::PI * (f64::from(ring) + 0.5) / f64::from(rings);
        let (sin, cos) = libm::sincos(polar);
        let count = (2.0 * f64::from(rings) * sin).round().max(1.0) as u32;
        for k in 0..count {
            let (s, c) = libm::sincos(2.0 * std::f64::consts::PI * (f64::from(k) + 0.37) / f64::from(count));
            all.push(Vec3::new(sin * c, sin * s, cos));
        }
    }
    all
}

/// One made-up tube of each kind, printed in each way in turn.
#[test]
fn no_direction_of_five_thousand_is_better_by_more_than_a_fiftieth() {
    let all = directions();
    assert!((4_900..5_200).contains(&all.len()), "{}", all.len());
    let mut judged_runs = 0;
    for (index, made_up) in designs(11, KINDS.len()).iter().enumerate() {
        let text = judged(&made_up.text, ["resin", "filament", "resin", "powder"][index % 4]);
        let Ok(stages) = Stages::of(&text) else { continue };
        let Some(run) = stages.made().into_iter().next() else { continue };
        let subject = Subject::of(&stages, run).unwrap();
        let best = search(&subject.judge)[0].figures.cost.total();
        let cost = |up: &Vec3| subject.judge.look(up).cost.total();
        let (least, up) = all.iter().map(|up| (cost(up), up)).min_by(|a, b| a.0.total_cmp(&b.0)).unwrap();
        assert!(best <= 1.02 * least, "{}: {best}, but {least} at {up:?}", made_up.kind);
        judged_runs += 1;
    }
    assert!(judged_runs > 30, "{judged_runs}");
}

#[test]
fn a_tube_as_long_as_the_rooms_diagonal_fits_and_a_longer_one_does_not() {
    for (volume, diameter) in [
        ([200.0, 125.0, 220.0], 12.0),
        ([130.0, 80.0, 160.0], 16.0),
        ([300.0, 300.0, 300.0], 10.0),
        ([60.0, 400.0, 90.0], 14.0),
    ] {
        let longest = longest_straight(volume.map(|side| side - 10.0), diameter);
        for (more, fits) in [(-0.05, true), (0.05, false)] {
            let text = design(straight(longest + more, diameter, 8.0), volume);
            let stages = Stages::of(&text).unwrap();
            let subject = Subject::of(&stages, 0).unwrap();
            let best = subject.best();
            assert_eq!(best[0].fits(), fits, "{volume:?} {diameter} {more}: {}", best[0].figures.slack);
        }
    }
}

/// The longest cylinder of that diameter in a box: its axis (a, b, c) has L a + d sqrt(1 - a^2) no more than each side.
/// The length that a direction allows is the least over the sides; its largest is looked for by cutting the octant ever
/// finer about the best.
fn longest_straight(room: [f64; 3], diameter: f64) -> f64 {
    let allowed = |u: f64, v: f64| {
        let (sin, cos) = libm::sincos(u);
        let (s, c) = libm::sincos(v);
        [sin * c, sin * s, cos]
            .iter()
            .zip(room)
            .map(|(a, side)| (side - diameter * (1.0 - a * a).max(0.0).sqrt()) / a.max(1e-12))
            .fold(f64::INFINITY, f64::min)
    };
    let quarter = std::f64::consts::FRAC_PI_2;
    let (mut middle, mut half) = ((quarter / 2.0, quarter / 2.0), quarter / 2.0);
    let mut best = f64::NEG_INFINITY;
    for _ in 0..60 {
        let mut at = middle;
        for i in -20..=20 {
            for j in -20..=20 {
                let (u, v) = (middle.0 + half * f64::from(i) / 20.0, middle.1 + half * f64::from(j) / 20.0);
                if (0.0..=quarter).contains(&u) && (0.0..=quarter).contains(&v) && allowed(u, v) > best {
                    best = allowed(u, v);
                    at = (u, v);
                }
            }
        }
        middle = at;
        half *= 0.6;
    }
    best
}
