//! What calipers read of a fit coupon.

use super::super::making::{Fit, Fitted, Reading};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader};
use super::{each, optional};
use crate::quantity::{self as q, Quantity};

const KEYS: &[&str] = &["material", "printer", "outer", "bore", "length", "fitted"];

/// The readings.
pub(super) fn read(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<Fit> {
    let keys = reader.keys(node, place, "The fit coupon", KEYS)?;
    let material = reader.text(&keys, &q::FIT_MATERIAL);
    let printer = reader.text(&keys, &q::FIT_PRINTER);
    let outer = readings(reader, &keys, "outer", [&q::FIT_OUTER, &q::FIT_OUTER_MEASURED]);
    let bore = readings(reader, &keys, "bore", [&q::FIT_BORE, &q::FIT_BORE_MEASURED]);
    let length = readings(reader, &keys, "length", [&q::FIT_LENGTH, &q::FIT_LENGTH_MEASURED]);
    let fitted = optional(reader, &keys, "fitted", fitted);
    Some(Fit { material: material?, printer: printer?, outer: outer?, bore: bore?, length: length?, fitted: fitted? })
}

fn readings(
    reader: &mut Reader,
    fit: &Keys<'_, '_>,
    key: &str,
    [nominal, measured]: [&Quantity; 2],
) -> Option<Vec<Reading>> {
    each(reader, fit, (key, q::MOST_READINGS, "readings"), |reader, node, place| {
        let keys = reader.keys(node, place, "A reading", &["nominal", "measured"])?;
        let nominal = reader.number(&keys, nominal);
        let measured = reader.known_number(&keys, measured);
        Some(Reading { nominal: nominal?, measured: measured? })
    })
}

fn fitted(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<Fitted> {
    let keys = reader.keys(node, place, "The end that fitted", &["outer_diameter", "measured"])?;
    let outer_diameter = reader.number(&keys, &q::FITTED_OUTER);
    let measured = reader.known_number(&keys, &q::FITTED_MEASURED);
    Some(Fitted { outer_diameter: outer_diameter?, measured: measured? })
}
