//! Made-up designs whose first run is cut into pieces: where joints have room, where they have not, and joints of any size.

use serde_json::{Value, json};

use super::{Chance, Generated, KINDS, generate};

/// Kinds that a joint may have room in: straights, bends, coils, curves, round bodies.
const CUT: [&str; 9] = [
    "near-straight corners",
    "many corners",
    "long run",
    "end corners off the ports' axes",
    "link of ports anywhere",
    "coil in line with its ports",
    "conical coil",
    "smooth curve between ports",
    "tapered and swollen bodies",
];
/// Cuts of a run at most.
const MOST: usize = 4;
/// Where the length is not known, cuts lie within this, mm.
const NEAR: f64 = 250.0;

/// `count` designs from `seed`, cut at random places, about half of which have no room.
pub fn cut(seed: u64, count: usize) -> Vec<Generated> {
    let mut chance = Chance::of(seed);
    let kinds = KINDS.iter().filter(|kind| CUT.contains(&kind.name));
    kinds.cycle().take(count).map(|kind| with_cuts(generate(kind, chance.word()), &mut chance)).collect()
}

fn with_cuts(design: Generated, chance: &mut Chance) -> Generated {
    let mut text: Value = serde_json::from_str(&design.text).unwrap_or_default();
    let length = design.lengths.first().copied().flatten().unwrap_or(NEAR);
    let mut places: Vec<f64> = (0..chance.whole(1, MOST)).map(|_| length * chance.from(0.02, 0.98)).collect();
    places.sort_by(f64::total_cmp);
    places.dedup();
    text["runs"][0]["cuts"] = places.iter().map(|at| json!({ "at": at })).collect();
    let key = if chance.once_in(4) { 0.0 } else { chance.scale(0.05, 2.0) };
    text["process"]["joint"] = json!({ "length": chance.from(2.0, 14.0), "clearance": chance.scale(0.02, 0.4),
        "wall": chance.from(0.5, 3.0), "key_depth": key });
    Generated { text: text.to_string(), ..design }
}
