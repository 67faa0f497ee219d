//! Did the loop pass its leak test, and was it one?

use super::finding::PRACTICE;
use super::{Finding, Severity, Subject, words};
use crate::design::LeakReadings;
use crate::distance::Budget;
use crate::service::{LeakFound, coolant_volume};

/// The most pressure to test with air, kPa: half a bar; common practice, no source.
const MOST_AIR: f64 = 50.0;
/// The shortest test that tells something, minutes; common practice, no source.
const SHORTEST: f64 = 15.0;

/// `leak` (stop): more leaked than may. `leak_pressure` (care): more air pressure than a loop is tested with.
/// `leak_short` (note): the test was too short to tell. `leak_unread` (note): there is no volume to reckon with.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let Some(readings) = &subject.design.working.leak_test else { return Vec::new() };
    let tubes = subject.runs().filter_map(|run| {
        let length = run.drawn.line.as_ref()?.length;
        Some(run.profile(length).bore_volume())
    });
    let volume = coolant_volume(subject.design, tubes.sum());
    let read = match LeakFound::of(readings, volume) {
        Ok(found) => found.and_then(|found| leaks(readings, &found)),
        Err(_) => Some(at(Severity::Note, "leak_unread", "/volume_ml")),
    };
    read.into_iter().chain(pressure(readings)).chain(short(readings)).collect()
}

fn at(severity: Severity, code: &'static str, key: &str) -> Finding {
    Finding::new(code, severity, format!("/loop/leak_test{key}"))
}

fn leaks(readings: &LeakReadings, found: &LeakFound) -> Option<Finding> {
    (!found.passes).then(|| {
        at(Severity::Stop, "leak", "/end_kpa")
            .value(found.in_limit_time, "kPa")
            .limit(readings.limit_kpa, "the design's own limit")
            .word("minutes", words::number(readings.limit_minutes, "min"))
            .word("fall", words::number(found.fall, "kPa"))
            .word("cooled", words::number(found.by_temperature, "kPa"))
            .word("rate", words::number(found.rate_sccm, "cm³/min"))
    })
}

fn pressure(readings: &LeakReadings) -> Option<Finding> {
    (readings.start_kpa > MOST_AIR).then(|| {
        at(Severity::Care, "leak_pressure", "/start_kpa").value(readings.start_kpa, "kPa").limit(MOST_AIR, PRACTICE)
    })
}

fn short(readings: &LeakReadings) -> Option<Finding> {
    (readings.minutes < SHORTEST)
        .then(|| at(Severity::Note, "leak_short", "/minutes").value(readings.minutes, "min").limit(SHORTEST, PRACTICE))
}
