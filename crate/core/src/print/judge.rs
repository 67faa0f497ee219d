//! A stance judged.

use super::body::{Body, FINE, Fineness, ROUGH};
use super::ceiling;
use super::cost::{BANDS, BORE, BRIDGES, CUPS, Cost, FOOT, HEIGHT, NO_FIT, POOLS, SUPPORTS};
use super::pools::Basin;
use super::room::{FITS_WITHIN, Room, best_turn, width};
use super::skin;
use super::standing::FlatSpan;
use crate::centreline::Centreline;
use crate::design::{Printer, Way};
use crate::layout::Vec3;
use crate::tube::Profile;

/// A bore below this needs no support at any angle, mm: a resin design page asks for it in level holes above 5 mm.
const SMALL_BORE: f64 = 5.0;
/// Cosine of a tenth of a degree: an end face that leans less lies flat.
const FLAT: f64 = 0.999_998_476_913_288;

/// What the printer asks for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rules {
    /// How it prints; none is taken for resin, which asks for most.
    pub way: Option<Way>,
    /// Cosine of the least angle from level of a skin without support; none where none is needed.
    pub overhang: Option<f64>,
    /// Sine of the least angle from level of a bore; none where any will do.
    pub bore: Option<f64>,
    /// The longest bridge over the bore, mm; none where its ceiling is no wider at any angle, or where that is not known.
    pub bridge: Option<f64>,
}

/// What a stance comes to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Figures {
    /// The turn about up that leaves most room, radians.
    pub turned: f64,
    /// Least room left at that turn, mm; negative where it sticks out.
    pub slack: f64,
    /// From its lowest to its highest point, mm.
    pub height: f64,
    /// Length of bore that cups fill, mm.
    pub cups: f64,
    /// Length of bore that pools fill, mm.
    pub pools: f64,
    /// Length of bore flatter than it may be, mm.
    pub flat: f64,
    /// Length of bore whose ceiling is wider than the longest bridge, mm.
    pub bridged: f64,
    /// Outer skin that needs support, mm2.
    pub support: f64,
    /// Length of the sealing bands that needs support, mm.
    pub bands: f64,
    /// Whether an end face lies flat on what is below.
    pub foot: bool,
    /// What is held against it.
    pub cost: Cost,
}

/// Judges stances of one tube.
#[derive(Debug, Clone)]
pub struct Judge {
    pub(super) body: Body,
    /// The printer's room.
    pub room: Room,
    /// What it asks for.
    pub rules: Rules,
    across: f64,
    /// The same tube cut roughly, for the first looks.
    rough: Option<Box<Judge>>,
}

impl Rules {
    /// The rules of a printer for a bore, mm.
    pub fn of(printer: &Printer, way: Option<Way>, bore: f64) -> Self {
        let bound = way != Some(Way::Powder);
        let overhang = printer.overhang_deg.filter(|_| bound).map(|angle| libm::cos(angle.to_radians()));
        let too_wide =
            |bridge: &f64| overhang.is_some_and(|overhang| ceiling::least_slope(bore, *bridge, overhang).is_some());
        Self {
            way,
            overhang,
            bridge: printer.bridge_mm.filter(too_wide),
            bore: printer
                .bore_deg
                .filter(|angle| bound && bore >= SMALL_BORE && *angle > 0.0)
                .map(|angle| libm::sin(angle.to_radians())),
        }
    }

    /// Sine of the least angle from level of a bore whose ceiling is no wider than the longest bridge.
    pub fn least_slope(&self, bore: f64) -> Option<f64> {
        ceiling::least_slope(bore, self.bridge?, self.overhang?)
    }

    /// Whether liquid is held in a vat.
    pub fn is_resin(&self) -> bool {
        !matches!(self.way, Some(Way::Powder | Way::Filament))
    }
}

impl Figures {
    /// Whether it fits the room.
    pub fn fits(&self) -> bool {
        self.slack >= -FITS_WITHIN
    }
}

impl Judge {
    /// Of a tube along `line`; `bands` are the lengths of the sealing bands from its start and its end, mm.
    pub fn of(
        line: &Centreline,
        profile: &Profile,
        bore: f64,
        bands: [f64; 2],
        printer: &Printer,
        way: Option<Way>,
    ) -> Self {
        let cut = |fineness: Fineness, rough: Option<Box<Self>>| {
            let body = Body::of(line, profile, bore, bands, fineness);
            let across = body.across();
            Self { room: Room::of(printer, way), rules: Rules::of(printer, way, bore), across, body, rough }
        };
        cut(FINE, Some(Box::new(cut(ROUGH, None))))
    }

    /// The same tube cut roughly.
    pub(super) fn rough(&self) -> &Self {
        self.rough.as_deref().unwrap_or(self)
    }

    /// How many stretches a look goes through.
    pub(super) fn stretches(&self) -> usize {
        self.body.stretches.len()
    }

    /// A stance whose unit direction `up` points away from the plate, at its best turn.
    pub fn look(&self, up: &Vec3) -> Figures {
        self.figures(up, best_turn(&self.body.rim, up, &self.room, self.across, false))
    }

    /// The turn of [`Self::look`], radians, looked for closely, and the slack that a look sees there.
    pub(super) fn turned_closely(&self, up: &Vec3) -> (f64, f64) {
        best_turn(&self.body.rim, up, &self.room, self.across, true)
    }

    /// A stance at a turn whose slack is known.
    pub(super) fn figures(&self, up: &Vec3, (turned, slack): (f64, f64)) -> Figures {
        let body = &self.body;
        let height = width(&body.rim, up);
        let footing = self.footing(up);
        let foot = footing[0] || footing[1];
        let (cups, pools) = if self.rules.is_resin() { self.liquid(up, footing) } else { (0.0, 0.0) };
        let (mut support, mut bands, mut scarred, mut flat, mut flatness) = (0.0, 0.0, 0.0, 0.0, 0.0);
        let (mut bridged, mut wideness) = (0.0, 0.0);
        let too_level = self.rules.least_slope(body.bore);
        for (i, stretch) in body.stretches.iter().enumerate() {
            if let Some(cosine) = self.rules.overhang {
                let area = skin::support(stretch, up, cosine);
                support += area;
                if area > 0.0 && stretch.sealing {
                    bands += stretch.length;
                    scarred += stretch.length / 2.0 + area / (2.0 * core::f64::consts::PI * stretch.radius);
                }
            }
            for (limit, length, weight) in
                [(self.rules.bore, &mut flat, &mut flatness), (too_level, &mut bridged, &mut wideness)]
            {
                let Some(sine) = limit else { continue };
                let ends = [body.discs[i].tangent.dot(up), body.discs[i + 1].tangent.dot(up)];
                let share = share_within(ends, sine);
                if share > 0.0 {
                    *length += share * stretch.length;
                    let lean = (1.0 - stretch.tangent.dot(up).abs() / sine).max(0.0);
                    *weight += share * stretch.length * (0.5 + 0.5 * lean);
                }
            }
        }
        let whole_bands = (body.bands[0] + body.bands[1]).max(f64::MIN_POSITIVE);
        let no_foot = self.rules.way == Some(Way::Filament) && !foot;
        let cost = Cost {
            fit: if slack >= -FITS_WITHIN { 0.0 } else { NO_FIT - slack },
            cups: CUPS * cups / body.length,
            bore: BORE * flatness / body.length,
            bridges: BRIDGES * wideness / body.length,
            bands: BANDS * scarred / whole_bands,
            supports: SUPPORTS * support / body.skin,
            foot: if no_foot { FOOT } else { 0.0 },
            height: HEIGHT * height / self.room.size[2].max(1.0),
            pools: POOLS * pools / body.length,
        };
        Figures { turned, slack, height, cups, pools, flat, bridged, support, bands, foot, cost }
    }

    /// Whether each end's face lies flat and lowest.
    pub(super) fn footing(&self, up: &Vec3) -> [bool; 2] {
        let down = -up;
        let lowest = self.body.reach(&down);
        let (Some(first), Some(last)) = (self.body.discs.first(), self.body.discs.last()) else { return [false; 2] };
        [first, last].map(|end| end.tangent.dot(up).abs() > FLAT && end.reach(&down) >= lowest - 1e-3)
    }

    /// Lengths of bore filled by cups and by pools, mm.
    fn liquid(&self, up: &Vec3, footing: [bool; 2]) -> (f64, f64) {
        let cups = self.basin(up, footing);
        (cups.filled(), cups.turned_over().filled())
    }

    /// The bore as liquid finds it while it is printed.
    pub(super) fn basin(&self, up: &Vec3, footing: [bool; 2]) -> Basin<'_> {
        Basin::of(&self.body, up, self.closed(footing))
    }

    /// Heights of the axis at evenly spaced places along the tube, from the lowest of them, mm.
    pub(super) fn heights(&self, up: &Vec3) -> Vec<f64> {
        const PLACES: u32 = 32;
        let discs = &self.body.discs;
        let height = |place: u32| {
            let s = self.body.length * f64::from(place) / f64::from(PLACES);
            let next = discs.partition_point(|disc| disc.s < s).clamp(1, discs.len().max(2) - 1);
            let (Some(a), Some(b)) = (discs.get(next - 1), discs.get(next)) else { return 0.0 };
            let share = ((s - a.s) / (b.s - a.s)).clamp(0.0, 1.0);
            (a.point + (b.point - a.point) * share).dot(up)
        };
        let heights: Vec<f64> = (0..=PLACES).map(height).collect();
        let lowest = heights.iter().copied().fold(f64::INFINITY, f64::min);
        heights.into_iter().map(|height| height - lowest).collect()
    }

    /// Farthest distance between two points of it, at most, mm.
    pub(super) fn across(&self) -> f64 {
        self.across
    }

    /// Section of the bore, mm2.
    pub fn bore_area(&self) -> f64 {
        core::f64::consts::FRAC_PI_4 * self.body.bore * self.body.bore
    }

    /// The widest ceiling over a part of the bore that is printed over nothing, mm; 0 where the printer's overhang is not known.
    pub fn ceiling(&self, part: &FlatSpan) -> f64 {
        self.rules.overhang.map_or(0.0, |overhang| ceiling::width(self.body.bore, libm::cos(part.flattest), overhang))
    }

    /// The widest bore whose ceiling, where that part of it lies, is no wider than the longest bridge, mm; none where any is.
    pub fn widest_bore(&self, part: &FlatSpan) -> Option<f64> {
        let share = self.ceiling(part) / self.body.bore;
        self.rules.bridge.filter(|_| share > 0.0).map(|bridge| bridge / share)
    }

    /// Which ends the plate closes: those that stand on it without a gap.
    fn closed(&self, footing: [bool; 2]) -> [bool; 2] {
        footing.map(|flat| flat && self.room.lift == 0.0)
    }
}

/// Share of the way from one value to another on which it lies within plus and minus `limit`.
pub(super) fn share_within([from, to]: [f64; 2], limit: f64) -> f64 {
    let (low, high) = if from <= to { (from, to) } else { (to, from) };
    if high - low < 1e-12 {
        return if low.abs() < limit { 1.0 } else { 0.0 };
    }
    ((high.min(limit) - low.max(-limit)) / (high - low)).clamp(0.0, 1.0)
}
