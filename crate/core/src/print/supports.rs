//! How much material a stance's supports take, as a band: what a printer's own software sets up is not known here.

use super::body::Stretch;
use super::judge::Judge;
use super::skin;
use crate::design::Way;
use crate::layout::Vec3;

/// Volume of the supports at least and at most, mm3: the skin that needs support times its mean height above the plate,
/// times the share of that room which supports fill. What it stands on, brims and supports inside the bore are not in it.
/// None where the printer does not say what needs support; powder needs none.
pub(super) fn volume(judge: &Judge, up: &Vec3, above: impl Fn(&Vec3) -> f64) -> Option<[f64; 2]> {
    let Some(shares) = shares(judge.rules.way) else { return Some([0.0; 2]) };
    let cosine = judge.rules.overhang?;
    let heights: Vec<f64> = judge.body.discs.iter().map(|disc| above(&disc.point)).collect();
    let rooms = judge.body.stretches.iter().zip(heights.windows(2));
    let room: f64 = rooms.map(|(stretch, ends)| below(stretch, up, cosine, (ends[0] + ends[1]) / 2.0)).sum();
    Some(shares.map(|share| share * room))
}

/// Share of the room under a skin that its supports fill, least and most; none where there are no supports. Common practice,
/// no source: thin pillars of resin, sparse walls of filament.
fn shares(way: Option<Way>) -> Option<[f64; 2]> {
    match way {
        Some(Way::Powder) => None,
        Some(Way::Filament) => Some([0.1, 0.3]),
        // A material whose way is not stated is judged as resin, as everywhere.
        Some(Way::Resin) | None => Some([0.05, 0.2]),
    }
}

/// Room between the skin of a stretch that needs support and the plate, mm3; `height` is its axis's above the plate.
fn below(stretch: &Stretch, up: &Vec3, cosine: f64, height: f64) -> f64 {
    skin::support(stretch, up, cosine) * (height - skin::sunk(stretch, up, cosine)).max(0.0)
}
