//! Whether a run's end seals in its fitting.

use crate::coupon::correction;
use crate::design::{Fitting, Process, Run};
use crate::out_of_range::OutOfRange;
use crate::seal::{Chamfer, Gland, Stack, Tolerances, best_outer_diameter, chamfer, section_tolerance};

/// How far a printed diameter is taken to be off where the printer says nothing, either way, mm: what sellers of rigid tube
/// aim at; common practice, no source.
pub const TUBE_TOLERANCE: f64 = 0.1;
/// How far a gland's diameter is taken to be off, either way, mm; common practice, no source.
pub const GLAND_TOLERANCE: f64 = 0.05;
/// Squeeze to aim at; common practice, no source.
pub const AIM: f64 = 0.2;

/// Squeeze that a ring is accepted with over what its sizes may be off; common practice, no source.
pub const ACCEPTED: [f64; 2] = [0.12, 0.30];

/// The ring at one end of a run. Lengths mm; a squeeze of 0.2 is 20 %.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SealAtEnd {
    /// Tube, ring and gland.
    pub gland: Gland,
    /// What each may be off.
    pub tolerances: Tolerances,
    /// Where it is known from how far the tube's outer diameter may be off.
    pub tube_known: TubeKnown,
    /// The squeeze, as stated and over the stack.
    pub squeeze: Stack,
    /// How full the groove is, as stated and over the stack; none where its width is not known.
    pub fill: Option<Stack>,
    /// What the tube's chamfer is, and what the ring needs.
    pub chamfer: Option<Chamfer>,
    /// The tube that would squeeze the ring by the share to aim at.
    pub best_outer: f64,
}

/// Where it is known from how far a printed outer diameter may be off.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TubeKnown {
    /// Measured: the scatter of a coupon's readings, for which the files are corrected.
    Measured,
    /// The printer's figures.
    Printer,
    /// Neither: what is usual.
    Usual,
}

impl TubeKnown {
    /// How the report writes it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Measured => "coupon",
            Self::Printer => "printer",
            Self::Usual => "usual",
        }
    }
}

/// How far a printed outer diameter may be off either way, mm: what a coupon's readings scatter by, if there are enough of
/// them for this printer and material; else what the printer's figures say, or what is usual.
pub fn tube_tolerance(process: &Process) -> (f64, TubeKnown) {
    let measured = correction(process).and_then(Result::ok).and_then(|compensation| compensation.outer?.within);
    match (measured, process.printer.tolerance) {
        (Some(within), _) => (within, TubeKnown::Measured),
        (None, Some(tolerance)) => (tolerance, TubeKnown::Printer),
        (None, None) => (TUBE_TOLERANCE, TubeKnown::Usual),
    }
}

/// Why there is nothing to tell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SealFault {
    /// The fitting's ring and gland are not stated.
    NotStated,
    /// The tube is as wide as the gland, so that no ring has room.
    NoRoom,
    /// A size that no ring has.
    Size(OutOfRange),
}

impl SealAtEnd {
    /// The outer diameters, mm, with which the ring is squeezed as is accepted whatever ring and gland are within their
    /// tolerances; none where these alone leave no room for that.
    pub fn outer_range(&self) -> Option<[f64; 2]> {
        let (Gland { gland_diameter: gland, section, .. }, off) = (self.gland, &self.tolerances);
        let least = best_outer_diameter(gland + off.gland_diameter, section - off.section, ACCEPTED[0]).ok()?;
        let most = best_outer_diameter(gland - off.gland_diameter, section + off.section, ACCEPTED[1]).ok()?;
        (least <= most).then_some([least, most])
    }

    /// The ring of a fitting on a run's end, the tube at its stated diameter.
    ///
    /// # Errors
    /// [`SealFault`].
    pub fn of(run: &Run, fitting: &Fitting, process: &Process) -> Result<Self, SealFault> {
        let seal = fitting.seal.as_ref().ok_or(SealFault::NotStated)?;
        let outer = run.tube.outer_diameter;
        let (outer_diameter, tube_known) = tube_tolerance(process);
        let tolerances = Tolerances {
            outer_diameter,
            gland_diameter: GLAND_TOLERANCE,
            section: section_tolerance(seal.section).map_err(SealFault::Size)?,
        };
        let gland = Gland::of(outer, seal.gland_diameter, seal.section).map_err(|_| SealFault::NoRoom)?;
        Ok(Self {
            gland,
            tolerances,
            tube_known,
            fill: seal.gland_width.and_then(|width| Stack::of_fill(&gland, width, &tolerances).ok()),
            chamfer: chamfer(run.ends.chamfer_length, run.ends.chamfer_deg.to_radians(), &gland).ok(),
            squeeze: Stack::of_squeeze(&gland, &tolerances).map_err(|_| SealFault::NoRoom)?,
            best_outer: best_outer_diameter(seal.gland_diameter, seal.section, AIM).map_err(SealFault::Size)?,
        })
    }
}
