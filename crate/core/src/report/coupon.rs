//! What is told of the fit coupon: its ends for each run's tube, what its readings say, and what the files are given for it.

use serde::Serialize;

use crate::coupon::{Compensation, CouponEnd, HeldBack, Ladder, MeanOff, correction};
use crate::design::Run;
use crate::engine::Stages;

/// The fit.
#[derive(Serialize)]
pub(super) struct FitReport<'a> {
    /// `none` without a coupon, `nothing` where nothing has been read, `other` and `doubtful` where the readings are kept but
    /// not used, `applied` where the files are corrected by them.
    state: &'static str,
    outer: Option<SizeReport>,
    bore: Option<SizeReport>,
    length: Option<LengthReport>,
    /// In the order of the runs.
    runs: Vec<FitOfRun<'a>>,
}

#[derive(Serialize)]
struct SizeReport {
    readings: usize,
    off_mm: f64,
    /// Sample standard deviation; null with too few readings.
    deviation_mm: Option<f64>,
    /// What nearly every further print keeps; null with too few readings.
    within_mm: Option<f64>,
}

#[derive(Serialize)]
struct LengthReport {
    readings: usize,
    off_percent: f64,
}

#[derive(Serialize)]
struct FitOfRun<'a> {
    name: &'a str,
    /// What its tube is to measure once printed, and what its file is given for that; null where no file is corrected.
    aim_mm: Option<f64>,
    file_outer_mm: Option<f64>,
    file_bore_mm: Option<f64>,
    /// The usual coupon of its tube; null where its ends leave no wall.
    coupon: Option<CouponReport>,
}

#[derive(Serialize)]
struct CouponReport {
    length_mm: f64,
    /// Each by its two ends.
    sticks: Vec<[EndReport; 2]>,
}

#[derive(Serialize)]
struct EndReport {
    rings: u32,
    outer_mm: f64,
    bore_mm: f64,
}

impl<'a> FitReport<'a> {
    pub(super) fn of(stages: &'a Stages<'_>) -> Self {
        let process = &stages.design.process;
        let applied = correction(process);
        let said = process.fit.as_ref().map(Compensation::of);
        let used = applied.and_then(Result::ok);
        let runs = stages.design.runs.iter().enumerate();
        Self {
            state: match applied {
                None => "none",
                Some(Ok(_)) => "applied",
                Some(Err(HeldBack::Nothing)) => "nothing",
                Some(Err(HeldBack::Other)) => "other",
                Some(Err(HeldBack::Doubtful)) => "doubtful",
            },
            outer: said.and_then(|said| said.outer).map(SizeReport::of),
            bore: said.and_then(|said| said.bore).map(SizeReport::of),
            length: said
                .and_then(|said| said.length)
                .map(|(ratio, readings)| LengthReport { readings, off_percent: (ratio - 1.0) * 100.0 }),
            runs: runs.map(|(index, run)| FitOfRun::of(stages, index, run, used)).collect(),
        }
    }
}

impl SizeReport {
    fn of(size: MeanOff) -> Self {
        Self { readings: size.count, off_mm: size.off, deviation_mm: size.deviation, within_mm: size.within }
    }
}

impl<'a> FitOfRun<'a> {
    fn of(stages: &Stages<'_>, index: usize, run: &'a Run, used: Option<Compensation>) -> Self {
        let end = |end: CouponEnd| EndReport { rings: end.rings, outer_mm: end.outer, bore_mm: end.bore };
        let coupon = stages.coupon(index, Ladder::default()).ok().map(|coupon| CouponReport {
            length_mm: coupon.length,
            sticks: coupon.sticks.iter().map(|stick| stick.ends.map(end)).collect(),
        });
        Self {
            name: &run.name,
            aim_mm: used.map(|used| used.aim(run)),
            file_outer_mm: used.map(|used| run.tube.outer_diameter + used.outer_change(run)),
            file_bore_mm: used.map(|used| run.tube.bore + used.bore_change()),
            coupon,
        }
    }
}
