//! What is told of a run's stances, as JSON text.

use std::borrow::Cow;

use serde::Serialize;

use super::cuts::quick_fix;
use super::{FlatSpan, Found, Frame, Judge, Pocket, Standing, search};
use crate::centreline::Centreline;
use crate::check::{self, StoodPiece, of_stance};
use crate::design::{Process, Refusal};
use crate::engine::{Piece, Stages};
use crate::layout::Vec3;
use crate::report::fix::{Source, on_text};
use crate::report::{BoundsMm, FindingReport, degrees, point};
use crate::service::{piece_price, print_cost};
use crate::tube::{BEYOND_SOCKET, Profile};

/// Points that a stance's path is drawn with at most.
const MOST_DRAWN: usize = 400;

/// A made run, or a piece of one, with its judge.
#[derive(Debug, Clone)]
pub struct Subject<'s> {
    line: Cow<'s, Centreline>,
    profile: Profile,
    /// Arc length of the run where it begins, mm.
    from: f64,
    /// Judges its stances.
    pub judge: Judge,
    /// Its own stance, where it has one.
    pub own: Option<Frame>,
}

impl<'s> Subject<'s> {
    /// A run of a design: put together, where it is cut.
    ///
    /// # Errors
    /// A run that cannot be made: what is found about it.
    pub fn of(stages: &'s Stages<'_>, run: usize) -> Result<Self, Refusal> {
        Self::of_piece(stages, &stages.whole(run)?)
    }

    /// A piece of a run.
    ///
    /// # Errors
    /// A run that cannot be made: what is found about it.
    pub fn of_piece(stages: &'s Stages<'_>, piece: &Piece) -> Result<Self, Refusal> {
        let run = piece.run;
        let stated = &stages.design.runs[run];
        let placed = &stages.layout.runs[run];
        let (Some(line), true) = (&stages.lines[run].line, stages.is_made(run)) else {
            return Err(stages.not_made(run));
        };
        let whole = piece.of == 1;
        let span = piece.profile.span();
        let (line, profile) = if whole {
            (Cow::Borrowed(line), piece.profile.clone())
        } else {
            (Cow::Owned(line.part(span)), piece.profile.along_its_part(line))
        };
        let process = &stages.design.process;
        // A spigot is glued all over: it is to be without scars as a sealing band is. A socket is glued inside.
        let band = |first: bool, last: bool| match (first, last) {
            (true, _) => placed.start.inside + BEYOND_SOCKET,
            (_, true) => placed.end.inside + BEYOND_SOCKET,
            _ => 0.0,
        };
        let [begins, ends] = [piece.index == 0, piece.index + 1 == piece.of];
        let bands = [band(begins, false), if ends { band(false, true) } else { process.joint.length }];
        let judge = Judge::of(&line, &profile, stated.tube.bore, bands, &process.printer, process.material.way);
        let own = stated.stance_from(piece.cut).as_ref().map(Frame::stated);
        Ok(Self { line, profile, from: span[0], judge, own })
    }

    /// A stance in full.
    pub fn standing(&self, frame: Frame) -> Standing {
        Standing::of(&self.judge, &self.line, &self.profile, frame)
    }

    /// The best stances in full, the best first.
    pub fn best(&self) -> Vec<Standing> {
        search(&self.judge).into_iter().map(|Found { frame, .. }| self.standing(frame)).collect()
    }

    /// The run's own stance; where it has none, the best that is found.
    pub fn chosen(&self) -> Option<Standing> {
        let frame = self.own.or_else(|| search(&self.judge).first().map(|found| found.frame));
        frame.map(|frame| self.standing(frame))
    }
}

/// The best ways for a piece of a run, counted from 1, to stand on the printer's plate, as JSON text, the best first: up to
/// five that differ by 20 degrees and more, each with every figure it was judged by; its own stance, where it states one;
/// and the room. Arc lengths are the run's.
///
/// # Errors
/// A run that cannot be made: what is found about it; a piece that it does not have.
pub fn stances(stages: &Stages<'_>, run: usize, piece: usize) -> Result<String, Refusal> {
    let piece = stages.piece(run, piece, "")?;
    let subject = Subject::of_piece(stages, &piece)?;
    let process = &stages.design.process;
    let printer = &process.printer;
    let told = |standing: &Standing| subject.told(standing, process);
    let best = subject.best();
    let own = subject.own.map(|own| subject.standing(own));
    let answer = Answer {
        run: &stages.design.runs[run].name,
        piece: piece.index + 1,
        pieces: piece.of,
        from_mm: subject.from,
        length_mm: subject.line.length,
        outer_diameter: stages.design.runs[run].tube.outer_diameter,
        bore: stages.design.runs[run].tube.bore,
        way: process.material.way.map(|way| way.word()),
        volume_mm: subject.judge.room.volume,
        room_mm: subject.judge.room.size,
        overhang_deg: subject.judge.rules.overhang.and(printer.overhang_deg),
        bore_deg: subject.judge.rules.bore.and(printer.bore_deg),
        bridge_mm: subject.judge.rules.bridge,
        service_price: process
            .service
            .as_ref()
            .and_then(|prices| piece_price(prices, subject.profile.material_volume())),
        stances: best.iter().map(told).collect(),
        own: own.as_ref().map(told),
        findings: found(stages, &piece, &subject, own.as_ref().or(best.first()), best.first()),
    };
    Ok(serde_json::to_string(&answer).unwrap_or_default())
}

#[derive(Serialize)]
struct Answer<'a> {
    run: &'a str,
    piece: usize,
    pieces: usize,
    from_mm: f64,
    length_mm: f64,
    outer_diameter: f64,
    bore: f64,
    way: Option<&'static str>,
    volume_mm: [f64; 3],
    room_mm: [f64; 3],
    overhang_deg: Option<f64>,
    bore_deg: Option<f64>,
    /// The longest bridge, where the bore's ceiling may be wider.
    bridge_mm: Option<f64>,
    /// What the print service asks for the piece, before its least order.
    service_price: Option<f64>,
    stances: Vec<Told>,
    own: Option<Told>,
    findings: Vec<FindingReport>,
}

/// What is found about the run as it is to stand.
fn found(
    stages: &Stages<'_>,
    piece: &Piece,
    subject: &Subject<'_>,
    chosen: Option<&Standing>,
    best: Option<&Standing>,
) -> Vec<FindingReport> {
    let (Some(chosen), Some(best)) = (chosen, best) else { return Vec::new() };
    let checked = check::Subject { design: &stages.design, layout: &stages.layout, lines: &stages.lines };
    let source = Source::of(stages.text);
    let told =
        |finding: &check::Finding| FindingReport::of(finding, finding.fix.as_ref().map(|fix| on_text(fix, &source)));
    let place = piece.stance_path();
    let stood = StoodPiece { run: piece.run, place: &place, from: subject.from, judge: &subject.judge };
    let mut found = of_stance(checked, &stood, chosen, best);
    // What no stance fits may fit in pieces.
    if let Some(size) = found.iter_mut().find(|finding| finding.code == "print_size" && finding.fix.is_none())
        && let Some((fix, pieces)) = quick_fix(stages, piece.run)
    {
        size.fix = Some(fix);
        size.words.push(("pieces", pieces.to_string()));
    }
    found.iter().map(told).collect()
}

#[derive(Serialize)]
struct Told {
    up: [f64; 3],
    turn_deg: f64,
    lift_mm: f64,
    fits: bool,
    slack_mm: f64,
    box_mm: BoundsMm,
    height_mm: f64,
    layers: Option<f64>,
    hours: Option<f64>,
    cups: Vec<PocketMm>,
    cups_mm3: f64,
    pools: Vec<PocketMm>,
    pools_mm3: f64,
    flat_mm: f64,
    flats: Vec<FlatMm>,
    bridged_mm: f64,
    bridges: Vec<BridgeMm>,
    support_mm2: f64,
    /// Volume of its supports, at least and at most.
    support_mm3: Option<[f64; 2]>,
    /// From the tube alone to supports and waste on top.
    material_cost: Option<[f64; 2]>,
    bands_mm: [f64; 2],
    foot: [bool; 2],
    cost: CostParts,
    why: Vec<&'static str>,
    path: Vec<PathPoint>,
}

#[derive(Serialize)]
struct PocketMm {
    from_mm: f64,
    to_mm: f64,
    at_mm: [f64; 3],
    depth_mm: f64,
    volume_mm3: f64,
}

#[derive(Serialize)]
struct FlatMm {
    from_mm: f64,
    to_mm: f64,
    flattest_deg: f64,
}

/// Where the bore's ceiling is printed over more than the longest bridge, and how wide it is at most.
#[derive(Serialize)]
struct BridgeMm {
    from_mm: f64,
    to_mm: f64,
    width_mm: f64,
}

/// What is held against it, part by part, and the sum.
#[derive(Serialize)]
struct CostParts {
    fit: f64,
    cups: f64,
    bore: f64,
    bridges: f64,
    bands: f64,
    supports: f64,
    foot: f64,
    height: f64,
    pools: f64,
    total: f64,
}

/// Arc length, and the point on the plate.
#[derive(Serialize)]
struct PathPoint {
    s_mm: f64,
    at_mm: [f64; 3],
}

impl Subject<'_> {
    fn told(&self, standing: &Standing, process: &Process) -> Told {
        let printer = &process.printer;
        let figures = &standing.figures;
        let cost = &figures.cost;
        let area = self.judge.bore_area();
        let codes = [
            (!standing.fits(), "size"),
            (!standing.cups.is_empty(), "cup"),
            (figures.flat > 0.0, "bore"),
            (figures.bridged > 0.0, "bridge"),
            (figures.bands > 0.0, "band"),
            (figures.support > 0.0, "support"),
            (cost.foot > 0.0, "foot"),
            (!standing.pools.is_empty(), "pool"),
        ];
        Told {
            up: point(&standing.frame.up()),
            turn_deg: degrees(standing.frame.turned()),
            lift_mm: self.judge.room.lift,
            fits: standing.fits(),
            slack_mm: figures.slack,
            box_mm: BoundsMm::of(&standing.bounds),
            height_mm: figures.height,
            layers: standing.layers(printer),
            hours: standing.hours(printer),
            cups: standing.cups.iter().map(|cup| self.pocket(cup)).collect(),
            cups_mm3: figures.cups * area,
            pools: standing.pools.iter().map(|pool| self.pocket(pool)).collect(),
            pools_mm3: figures.pools * area,
            flat_mm: figures.flat,
            flats: standing.flats.iter().map(|span| self.flat(span)).collect(),
            bridged_mm: figures.bridged,
            bridges: standing.bridges.iter().map(|span| self.bridge(span)).collect(),
            support_mm2: figures.support,
            support_mm3: standing.supports,
            material_cost: standing
                .supports
                .and_then(|supports| print_cost(&process.material, self.profile.material_volume(), supports)),
            bands_mm: standing.bands,
            foot: standing.footing,
            cost: CostParts {
                fit: cost.fit,
                cups: cost.cups,
                bore: cost.bore,
                bridges: cost.bridges,
                bands: cost.bands,
                supports: cost.supports,
                foot: cost.foot,
                height: cost.height,
                pools: cost.pools,
                total: cost.total(),
            },
            why: codes.into_iter().filter(|(there, _)| *there).map(|(_, code)| code).collect(),
            path: self.path(standing),
        }
    }

    fn pocket(&self, pocket: &Pocket) -> PocketMm {
        PocketMm {
            from_mm: pocket.span[0] + self.from,
            to_mm: pocket.span[1] + self.from,
            at_mm: point(&pocket.at),
            depth_mm: pocket.depth,
            volume_mm3: pocket.volume,
        }
    }

    fn flat(&self, span: &FlatSpan) -> FlatMm {
        let [from_mm, to_mm] = span.span.map(|s| s + self.from);
        FlatMm { from_mm, to_mm, flattest_deg: degrees(span.flattest) }
    }

    fn bridge(&self, span: &FlatSpan) -> BridgeMm {
        let [from_mm, to_mm] = span.span.map(|s| s + self.from);
        BridgeMm { from_mm, to_mm, width_mm: self.judge.ceiling(span) }
    }

    /// The centreline on the plate, thinned to what can be drawn.
    fn path(&self, standing: &Standing) -> Vec<PathPoint> {
        let discs = &self.judge.body.discs;
        let stride = discs.len().div_ceil(MOST_DRAWN).max(1);
        let last = discs.len().saturating_sub(1);
        let drawn = discs.iter().enumerate().filter(|(index, _)| index % stride == 0 || *index == last);
        drawn
            .map(|(_, disc)| PathPoint { s_mm: disc.s + self.from, at_mm: point(&standing.place(&disc.point)) })
            .collect()
    }
}

/// A stance as typed in a request: `{ "up": [x, y, z], "turn_deg": a }`, the direction of any length above zero.
pub fn frame_of(up: [f64; 3], turn_deg: f64) -> Frame {
    let up = crate::layout::unit(&Vec3::from(up));
    Frame::of(&up, turn_deg.to_radians())
}
