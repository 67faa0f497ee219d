//! What calipers read of a coupon: how far a kind of size comes out off, and how much it scatters.

use crate::design::Reading;

/// Most that a reading may be off its size before it is taken for a slip, mm for diameters.
const MOST_OFF: f64 = 1.0;
/// Most that a reading may be off as a share of its size.
const MOST_SHARE: f64 = 0.1;

/// Fewest readings that say how much a printer scatters; common practice, no source.
pub const FEWEST: usize = 3;

/// Calipers tell no finer than this, plus or minus mm; common practice, no source.
pub const CALIPERS: f64 = 0.02;

/// How far a kind of size is off its stated one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeanOff {
    /// How many readings it is of.
    pub count: usize,
    /// Their mean: measured less stated, mm.
    pub off: f64,
    /// Sample standard deviation, mm; none where there are too few readings.
    pub deviation: Option<f64>,
    /// What nearly every further print keeps, plus or minus mm; none where there are too few readings.
    pub within: Option<f64>,
}

/// How far diameters come out off; none without a reading. One further print lies within `t s sqrt(1 + 1/n)` of the mean
/// with a chance of 95 %, if sizes scatter by the normal distribution: the prediction interval of any handbook of statistics, t
/// being Student's of n - 1 degrees of freedom. It is never told closer than calipers read.
pub fn sizes(readings: &[Reading]) -> Option<MeanOff> {
    let offs: Vec<f64> = read(readings).map(|[nominal, measured]| measured - nominal).collect();
    let count = offs.len();
    if count == 0 {
        return None;
    }
    let n = count as f64;
    let off = offs.iter().sum::<f64>() / n;
    let squares: f64 = offs.iter().map(|one| (one - off) * (one - off)).sum();
    let deviation = (count >= FEWEST).then(|| (squares / (n - 1.0)).sqrt());
    let within = deviation.map(|s| (student(count - 1) * s * (1.0 + 1.0 / n).sqrt()).max(CALIPERS));
    Some(MeanOff { count, off, deviation, within })
}

/// All measured lengths over all stated ones, and how many there are; none without a reading. The longest counts most, as
/// calipers are off by as much on a long part as on a short one.
pub fn lengths(readings: &[Reading]) -> Option<(f64, usize)> {
    let [nominal, measured, count] = read(readings).fold([0.0; 3], |[nominals, all, count], [nominal, measured]| {
        [nominals + nominal, all + measured, count + 1.0]
    });
    (count > 0.0).then_some((measured / nominal, count as usize))
}

/// How far a reading may be off, plus or minus mm, if it is off by more: then it is a slip rather than a print.
pub fn doubtful(reading: &Reading, is_length: bool) -> Option<f64> {
    let most = MOST_SHARE * reading.nominal;
    let most = if is_length { most } else { most.min(MOST_OFF) };
    reading.measured.filter(|measured| (measured - reading.nominal).abs() > most).map(|_| most)
}

/// Stated and measured, of what has been measured.
fn read(readings: &[Reading]) -> impl Iterator<Item = [f64; 2]> {
    readings.iter().filter_map(|reading| Some([reading.nominal, reading.measured?]))
}

/// Student's t for 95 % on both sides, of 1 to 30 degrees of freedom. Source: NIST/SEMATECH e-Handbook of Statistical Methods,
/// 1.3.6.7.2.
const STUDENT: [f64; 30] = [
    12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160, 2.145, 2.131, 2.120,
    2.110, 2.101, 2.093, 2.086, 2.080, 2.074, 2.069, 2.064, 2.060, 2.056, 2.052, 2.048, 2.045, 2.042,
];

/// Student's t; beyond the table that of 30, which is a little more.
fn student(freedom: usize) -> f64 {
    STUDENT[freedom.clamp(1, STUDENT.len()) - 1]
}
