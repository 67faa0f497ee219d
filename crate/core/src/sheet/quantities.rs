//! How much of everything: material, mass, money, coolant, layers, hours.

use super::html::{Html, Row};
use super::{Piece, Sheet, words};
use crate::service::{coolant_volume, material_cost, order_price, piece_price, print_cost};
use crate::tongue::Tongue;

pub(super) fn told(html: &mut Html, sheet: &Sheet<'_>) {
    html.said("h2", words::QUANTITIES);
    let mut rows: Vec<Row> = sheet.pieces.iter().map(|piece| of_piece(sheet, piece)).collect();
    rows.push(of_all(sheet));
    let service = sheet.design.process.service.is_some();
    let columns: Vec<&str> =
        words::QUANTITY_COLUMNS.iter().copied().chain(service.then_some(words::SERVICE_PRICE)).collect();
    html.table(words::OF_EACH, &columns, &rows);
    html.said("p", words::QUANTITIES_ARE);
    if service {
        html.said("p", words::SERVICE_PRICES_ARE);
    }
    let tubes: f64 = sheet.pieces.iter().map(|piece| piece.bore).sum();
    let all = coolant_volume(sheet.design, tubes);
    let tongue = html.tongue;
    html.element("p", &tongue.say(words::COOLANT, &[&tongue.fixed(all, 0)]));
}

fn of_piece(sheet: &Sheet<'_>, piece: &Piece<'_>) -> Row {
    let tongue = sheet.tongue;
    let not_known = || tongue.word(words::NOT_KNOWN).to_owned();
    let known = |value: Option<f64>, decimals| value.map_or_else(not_known, |value| tongue.fixed(value, decimals));
    let supports = supports(piece);
    let mut cells = vec![
        piece.name.clone(),
        tongue.fixed(piece.material / 1e3, 2),
        tongue.fixed(mass(sheet, piece.material), 1),
        supports.map_or_else(not_known, |volume| band(tongue, volume.map(|volume| volume / 1e3), 1)),
        cost(sheet, piece.material, supports),
        tongue.fixed(piece.bore / 1e3, 1),
        known(piece.stood.and_then(|stood| stood.layers), 0),
        known(piece.stood.and_then(|stood| stood.hours), 1),
    ];
    if let Some(prices) = &sheet.design.process.service {
        cells.push(known(piece_price(prices, piece.material), 2));
    }
    Row::of(cells)
}

fn of_all(sheet: &Sheet<'_>) -> Row {
    let tongue = sheet.tongue;
    let not_known = || tongue.word(words::NOT_KNOWN).to_owned();
    let sum = |of: fn(&Piece<'_>) -> f64| sheet.pieces.iter().map(of).sum::<f64>();
    let material = sum(|piece| piece.material);
    let hours: Option<Vec<f64>> = sheet.pieces.iter().map(|piece| piece.stood.and_then(|stood| stood.hours)).collect();
    let time = hours.map_or_else(not_known, |hours| {
        let (together, apart) = (hours.iter().copied().fold(0.0, f64::max), hours.iter().sum::<f64>());
        let apart = tongue.fixed(apart, 1);
        if hours.len() < 2 { apart } else { tongue.say(words::FROM_TO, &[&tongue.fixed(together, 1), &apart]) }
    });
    let each: Option<Vec<[f64; 2]>> = sheet.pieces.iter().map(supports).collect();
    let supports = each.map(|each| [0, 1].map(|end: usize| each.iter().map(|volume| volume[end]).sum::<f64>()));
    let mut cells = vec![
        tongue.word(words::ALL_TUBES).to_owned(),
        tongue.fixed(material / 1e3, 2),
        tongue.fixed(mass(sheet, material), 1),
        supports.map_or_else(not_known, |volume| band(tongue, volume.map(|volume| volume / 1e3), 1)),
        cost(sheet, material, supports),
        tongue.fixed(sum(|piece| piece.bore) / 1e3, 1),
        String::new(),
        time,
    ];
    if let Some(prices) = &sheet.design.process.service {
        let all = order_price(prices, sheet.pieces.iter().map(|piece| piece_price(prices, piece.material)));
        cells.push(all.map_or_else(not_known, |price| tongue.fixed(price, 2)));
    }
    Row { cells, data: vec![("sum", String::new()), ("cm3", (material / 1e3).to_string())] }
}

/// Of a volume of material in mm3, g.
fn mass(sheet: &Sheet<'_>, material: f64) -> f64 {
    material / 1e3 * sheet.design.process.material.density_g_per_cm3
}

/// Volume of a piece's supports, mm3; none where it has no stance, or that is not known.
fn supports(piece: &Piece<'_>) -> Option<[f64; 2]> {
    piece.stood?.supports
}

/// From the tubes alone to supports and waste; where supports are not known, from the tubes alone upwards.
fn cost(sheet: &Sheet<'_>, volume: f64, supports: Option<[f64; 2]>) -> String {
    let (tongue, material) = (sheet.tongue, &sheet.design.process.material);
    let Some(alone) = material_cost(material, volume) else { return tongue.word(words::NOT_KNOWN).to_owned() };
    match supports.and_then(|supports| print_cost(material, volume, supports)) {
        Some(whole) => band(tongue, whole, 2),
        None => tongue.say(words::FROM, &[&tongue.fixed(alone, 2)]),
    }
}

/// A band with as many decimals, or the one number that it comes to.
fn band(tongue: &Tongue, ends: [f64; 2], decimals: usize) -> String {
    let [low, high] = ends.map(|end| tongue.fixed(end, decimals));
    if low == high { low } else { tongue.say(words::FROM_TO, &[&low, &high]) }
}
