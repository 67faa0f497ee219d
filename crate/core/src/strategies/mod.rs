//! Designs made up for the danger zone: where arcs nearly vanish, nearly double back, nearly touch their own axis, or
//! follow each other without a straight between.
//!
//! Property tests, the sweep of the judges in `tests/oracle`, the benchmarks and the fuzzer share them. The same seed
//! gives the same designs on every machine. Nothing in the engine calls this module, so it is not in the shipped wasm.

mod chance;
mod coils;
mod corners;
mod curves;
mod cuts;
mod dressed;
mod ends;
mod fitted;
mod links;
mod network;
mod refused;
mod sheet;
mod sizes;
mod spoil;
mod ties;
mod turns;
mod walk;

pub use chance::Chance;
pub use cuts::cut;
pub use spoil::spoiled;

use sheet::Sheet;

/// What the engine must make of a design.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Expect {
    /// Every run is made.
    Made,
    /// The first run is not made, and a finding says why.
    Stopped,
    /// Any answer that is not a refusal.
    Either,
}

/// A kind of design: a name to tell failures by, and how one is made.
#[derive(Debug, Clone, Copy)]
pub struct Kind {
    /// Its name.
    pub name: &'static str,
    /// What the engine must make of it.
    pub expect: Expect,
    make: fn(&mut Chance) -> Sheet,
}

/// A design that was made up.
#[derive(Debug, Clone, PartialEq)]
pub struct Generated {
    /// Name of its kind.
    pub kind: &'static str,
    /// With the kind's name, gives this design again by [`one`].
    pub seed: u64,
    /// What the engine must make of it.
    pub expect: Expect,
    /// The document, JSON.
    pub text: String,
    /// A deviation that suits its size, mm.
    pub deviation: f64,
    /// Length of each run's centreline in closed form, mm, where it is known.
    pub lengths: Vec<Option<f64>>,
}

const fn made(name: &'static str, make: fn(&mut Chance) -> Sheet) -> Kind {
    Kind { name, expect: Expect::Made, make }
}

const fn stopped(name: &'static str, make: fn(&mut Chance) -> Sheet) -> Kind {
    Kind { name, expect: Expect::Stopped, make }
}

const fn either(name: &'static str, make: fn(&mut Chance) -> Sheet) -> Kind {
    Kind { name, expect: Expect::Either, make }
}

/// How many of the kinds come first that have no coil, no curve, no body and no end of a shape of its own.
const PLAIN: usize = 23;

/// Every kind, the plain ones first.
pub const KINDS: &[Kind] = &[
    made("near-straight corners", corners::near_straight),
    made("hairpins", corners::hairpins),
    made("bend radius just above half the outer diameter", corners::tight),
    made("arcs with no straight between", corners::touching),
    made("long run", corners::long),
    made("many corners", corners::many),
    made("end corners off the ports' axes", corners::off_axis),
    made("small to large, thin to thick", sizes::any_size),
    made("far from the datum", sizes::far),
    made("trims and chamfers", ends::any_finish),
    made("link of ports facing each other", links::facing),
    made("link of ports nearly in line", links::nearly_in_line),
    made("link of ports side by side", links::side_by_side),
    made("link of ports back to back", links::back_to_back),
    made("link of ports anywhere", links::anywhere),
    made("link of elbows", links::elbows),
    either("link of ports close together", links::close),
    made("tied coordinates", ties::tied),
    either("loop with keep-outs", network::network),
    stopped("corners too close", refused::crowded),
    stopped("bend radius too small", refused::too_tight),
    stopped("turn straight back", refused::turns_back),
    stopped("corner repeated", refused::repeated),
    made("coil in line with its ports", coils::in_line),
    made("coil linked to ports", coils::linked),
    made("conical coil", coils::conical),
    made("part of a turn", coils::part),
    made("coil between corners", coils::between_corners),
    made("two coils", coils::two),
    made("smooth curve between ports", curves::between_ports),
    made("nearly straight smooth curve", curves::nearly_straight),
    made("smooth curve between corners", curves::between_corners),
    made("smooth curve into a coil", curves::into_a_coil),
    made("right angles that share their room", fitted::right_angles),
    made("bends that share their room", fitted::any_angles),
    made("tapered and swollen bodies", dressed::round),
    made("lobed straight bodies", dressed::straight_lobes),
    made("lobed bodies round bends", dressed::lobes_on_bends),
    made("lobed bodies on coils and curves", dressed::lobes_on_curves),
    made("marked ends", ends::marked),
];

/// `count` designs from `seed`, all kinds in turn.
pub fn designs(seed: u64, count: usize) -> Vec<Generated> {
    let mut seeds = Chance::of(seed);
    KINDS.iter().cycle().take(count).map(|kind| generate(kind, seeds.word())).collect()
}

/// `count` designs from `seed` for a long look: all kinds in turn, but every second round only those of a shape of its own.
pub fn swept(seed: u64, count: usize) -> Vec<Generated> {
    let mut seeds = Chance::of(seed);
    let rounds = KINDS.iter().chain(&KINDS[PLAIN..]);
    rounds.cycle().take(count).map(|kind| generate(kind, seeds.word())).collect()
}

/// The design of the kind named `kind` that `seed` gives; none where there is no such kind.
pub fn one(kind: &str, seed: u64) -> Option<Generated> {
    KINDS.iter().find(|known| known.name == kind).map(|kind| generate(kind, seed))
}

fn generate(kind: &Kind, seed: u64) -> Generated {
    let mut chance = Chance::of(seed);
    let sheet = (kind.make)(&mut chance);
    let deviation = sheet.suitable_deviation(&mut chance);
    let lengths = sheet.lengths.clone();
    Generated { kind: kind.name, seed, expect: kind.expect, text: sheet.text(kind.name), deviation, lengths }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_seed_gives_the_same_designs_and_others_differ() {
        let few = designs(7, 2 * KINDS.len());
        assert_eq!(few, designs(7, 2 * KINDS.len()));
        let again = one(few[30].kind, few[30].seed);
        assert_eq!(again.as_ref(), Some(&few[30]));
        assert_ne!(few[0].text, few[KINDS.len()].text);
        assert_ne!(few, designs(8, 2 * KINDS.len()));
    }

    #[test]
    fn a_sweep_looks_twice_at_shapes() {
        let swept = swept(7, 513);
        let count = |kind: &str| swept.iter().filter(|design| design.kind == kind).count();
        assert_eq!(KINDS[PLAIN].name, "coil in line with its ports");
        for (index, kind) in KINDS.iter().enumerate() {
            assert_eq!(count(kind.name), if index < PLAIN { 9 } else { 18 }, "{}", kind.name);
        }
        assert!((KINDS.len() - PLAIN) * 18 >= 300);
    }

    #[test]
    fn every_design_is_one() {
        for design in designs(1, 10 * KINDS.len()) {
            let parsed = crate::design::parse(&design.text);
            assert!(parsed.is_ok(), "{}, seed {}: {}\n{}", design.kind, design.seed, parsed.unwrap_err(), design.text);
        }
    }
}
