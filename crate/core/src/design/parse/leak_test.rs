//! What was read at a leak test with air.

use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::Reader;
use super::super::wording::shown;
use super::super::working::LeakReadings;
use crate::quantity as q;

const KEYS: &[&str] =
    &["volume_ml", "start_kpa", "end_kpa", "start_c", "end_c", "minutes", "air_kpa", "limit_kpa", "limit_minutes"];

/// The readings.
pub(super) fn read(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<LeakReadings> {
    let keys = reader.keys(node, place, "A leak test", KEYS)?;
    let volume_ml = reader.known_number(&keys, &q::LEAK_VOLUME);
    let end_kpa = reader.known_number(&keys, &q::LEAK_END);
    let mut number = |quantity| reader.number(&keys, quantity);
    let start_kpa = number(&q::LEAK_START);
    let [start_c, end_c] = [&q::LEAK_START_WARM, &q::LEAK_END_WARM].map(&mut number);
    let [minutes, air_kpa] = [&q::LEAK_MINUTES, &q::LEAK_AIR].map(&mut number);
    let [limit_kpa, limit_minutes] = [&q::LEAK_LIMIT, &q::LEAK_LIMIT_MINUTES].map(&mut number);
    let (end, air) = (end_kpa?, air_kpa?);
    if let Some(end) = end.filter(|end| *end <= -air) {
        let message =
            format!("Pressure at the end: {} kPa is below a vacuum. It is over the air's: 0 is open.", shown(end));
        reader.refuse(&place.key("end_kpa"), message);
        return None;
    }
    Some(LeakReadings {
        volume_ml: volume_ml?,
        start_kpa: start_kpa?,
        end_kpa: end,
        start_c: start_c?,
        end_c: end_c?,
        minutes: minutes?,
        air_kpa: air,
        limit_kpa: limit_kpa?,
        limit_minutes: limit_minutes?,
    })
}
