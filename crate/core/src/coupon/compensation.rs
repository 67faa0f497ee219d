//! From readings to what the files are corrected by.

use super::readings::{MeanOff, doubtful, lengths, sizes};
use crate::design::{Fit, Process, Reading, Run};
use crate::tube::{LEAST_TIP_WALL, Profile};

/// What is known of how this printer prints this material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Compensation {
    /// Outer diameters.
    pub outer: Option<MeanOff>,
    /// Bores.
    pub bore: Option<MeanOff>,
    /// Printed lengths over stated ones, and of how many readings.
    pub length: Option<(f64, usize)>,
    /// The outer diameter, mm, of the tubes that an end was found for which fits best, and what that end measures, mm; none
    /// without readings of outer diameters.
    pub fitted: Option<[f64; 2]>,
}

/// Why readings are not used.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeldBack {
    /// They belong to another printer or another material.
    Other,
    /// One of them is no reading of such a print.
    Doubtful,
    /// Nothing has been read yet.
    Nothing,
}

impl Compensation {
    /// What the readings of a coupon say.
    pub fn of(fit: &Fit) -> Self {
        let outer = sizes(&fit.outer);
        // What an end measures says how to print its like only where it is known how prints come out.
        let fitted = fit.fitted.filter(|_| outer.is_some());
        Self {
            outer,
            bore: sizes(&fit.bore),
            length: lengths(&fit.length),
            fitted: fitted.and_then(|fitted| Some([fitted.outer_diameter, fitted.measured?])),
        }
    }

    /// The outer diameter that a run's tube is to measure once printed, mm: that of the end that fitted best, where one is
    /// known for its size; else as stated.
    pub fn aim(&self, run: &Run) -> f64 {
        let stated = run.tube.outer_diameter;
        self.fitted.filter(|[outer, _]| (outer - stated).abs() < 1e-9).map_or(stated, |[_, measured]| measured)
    }

    /// What is added to the outer diameters of a run's files, mm: what its aim is over the stated size, less what prints come
    /// out over.
    pub fn outer_change(&self, run: &Run) -> f64 {
        self.aim(run) - run.tube.outer_diameter - self.outer.map_or(0.0, |outer| outer.off)
    }

    /// What is added to the bores of the files, mm.
    pub fn bore_change(&self) -> f64 {
        -self.bore.map_or(0.0, |bore| bore.off)
    }

    /// The skins of a run's file: radii changed by half of what diameters are, and everything enlarged by `1 / scale()`, so that
    /// the mesh along the run's own centreline, scaled by [`Compensation::scale`], has the changed radii and prints to the
    /// stated lengths. A joint's spigot and socket keep their gap. Chamfers, rings and grooves keep their depths; the bore's and the outer skin's places along the tube
    /// go with the lengths.
    ///
    /// # Errors
    /// The wall, mm, where less than [`LEAST_TIP_WALL`] would be left of it, or of the bore.
    pub fn applied(&self, run: &Run, profile: &Profile) -> Result<Profile, f64> {
        // A spigot is printed as the tube is, to its aim: the socket for it goes along, so that the gap stays as stated.
        let aside = (self.aim(run) - run.tube.outer_diameter) / 2.0;
        let changed = profile.changed([self.outer_change(run) / 2.0, self.bore_change() / 2.0]);
        let changed = changed.with_socket_changed(aside);
        let least = changed.tip_wall().min(changed.least_wall().wall).min(changed.least_bore());
        if least < LEAST_TIP_WALL {
            return Err(least);
        }
        Ok(changed.enlarged(1.0 / self.scale()))
    }

    /// What lengths of the files are multiplied by.
    pub fn scale(&self) -> f64 {
        self.length.map_or(1.0, |(ratio, _)| 1.0 / ratio)
    }

    fn is_empty(&self) -> bool {
        self.outer.is_none() && self.bore.is_none() && self.length.is_none()
    }
}

/// What files are corrected by; `None` where no coupon is told of.
///
/// # Errors
/// [`HeldBack`] for readings that are kept but not used.
pub fn correction(process: &Process) -> Option<Result<Compensation, HeldBack>> {
    let fit = process.fit.as_ref()?;
    let compensation = Compensation::of(fit);
    Some(if compensation.is_empty() {
        Err(HeldBack::Nothing)
    } else if fit.material != process.material.name || fit.printer != process.printer.name {
        Err(HeldBack::Other)
    } else if !fit.slips().is_empty() || fit.exchanged().is_some() {
        Err(HeldBack::Doubtful)
    } else {
        Ok(compensation)
    })
}

/// A reading that is none of such a print.
#[derive(Debug, Clone, PartialEq)]
pub struct Slip {
    /// JSON Pointer to it, below the fit.
    pub path: String,
    /// The reading, mm.
    pub measured: f64,
    /// The size it is of, mm.
    pub nominal: f64,
    /// How far it may be off, mm.
    pub most: f64,
}

impl Fit {
    /// Every reading that is off by more than a print is.
    pub fn slips(&self) -> Vec<Slip> {
        let lists = [("outer", &self.outer, false), ("bore", &self.bore, false), ("length", &self.length, true)];
        let mut slips: Vec<Slip> = lists
            .into_iter()
            .flat_map(|(name, readings, is_length)| {
                readings.iter().enumerate().filter_map(move |(index, reading)| {
                    let most = doubtful(reading, is_length)?;
                    Some(Slip {
                        path: format!("/{name}/{index}/measured"),
                        most,
                        measured: reading.measured?,
                        nominal: reading.nominal,
                    })
                })
            })
            .collect();
        slips.extend(self.fitted.as_ref().and_then(|fitted| {
            let reading = fitted.as_reading();
            let most = doubtful(&reading, false)?;
            let path = "/fitted/measured".to_owned();
            Some(Slip { path, most, measured: reading.measured?, nominal: reading.nominal })
        }));
        slips
    }

    /// Whether outer diameters and bores look exchanged: the widest tube is no wider than the narrowest bore.
    pub fn exchanged(&self) -> Option<[f64; 2]> {
        let read =
            |readings: &[Reading]| -> Vec<f64> { readings.iter().filter_map(|reading| reading.measured).collect() };
        let (outer, bore) = (read(&self.outer), read(&self.bore));
        let widest = outer.into_iter().reduce(f64::max)?;
        let narrowest = bore.into_iter().reduce(f64::min)?;
        (widest <= narrowest).then_some([widest, narrowest])
    }
}
