//! How much of everything: material, mass, money, coolant, layers, hours.

use super::html::{Html, Row};
use super::{Piece, Sheet, fixed, words};
use crate::service::{coolant_volume, material_cost};

pub(super) fn told(html: &mut Html, sheet: &Sheet<'_>) {
    html.element("h2", words::QUANTITIES);
    let mut rows: Vec<Row> = sheet.pieces.iter().map(|piece| of_piece(sheet, piece)).collect();
    rows.push(of_all(sheet));
    html.table(words::OF_EACH, words::QUANTITY_COLUMNS, &rows);
    html.element("p", words::QUANTITIES_ARE);
    let tubes: f64 = sheet.pieces.iter().map(|piece| piece.bore).sum();
    let all = coolant_volume(sheet.design, tubes);
    html.element(
        "p",
        &format!(
            "Coolant for the first fill: about {} mL in the tubes of this pack and the loop's other parts as the design states \
             them. Have some more at hand.",
            fixed(all, 0)
        ),
    );
}

fn of_piece(sheet: &Sheet<'_>, piece: &Piece<'_>) -> Row {
    let known =
        |value: Option<f64>, decimals| value.map_or(words::NOT_KNOWN.to_owned(), |value| fixed(value, decimals));
    Row::of(vec![
        piece.name.clone(),
        fixed(piece.material / 1e3, 2),
        fixed(mass(sheet, piece.material), 1),
        known(cost(sheet, piece.material), 2),
        fixed(piece.bore / 1e3, 1),
        known(piece.stood.and_then(|stood| stood.layers), 0),
        known(piece.stood.and_then(|stood| stood.hours), 1),
    ])
}

fn of_all(sheet: &Sheet<'_>) -> Row {
    let sum = |of: fn(&Piece<'_>) -> f64| sheet.pieces.iter().map(of).sum::<f64>();
    let material = sum(|piece| piece.material);
    let hours: Option<Vec<f64>> = sheet.pieces.iter().map(|piece| piece.stood.and_then(|stood| stood.hours)).collect();
    let time = hours.map_or(words::NOT_KNOWN.to_owned(), |hours| {
        let (together, apart) = (hours.iter().copied().fold(0.0, f64::max), hours.iter().sum::<f64>());
        if hours.len() < 2 { fixed(apart, 1) } else { format!("{} to {}", fixed(together, 1), fixed(apart, 1)) }
    });
    Row {
        cells: vec![
            words::ALL_TUBES.to_owned(),
            fixed(material / 1e3, 2),
            fixed(mass(sheet, material), 1),
            cost(sheet, material).map_or(words::NOT_KNOWN.to_owned(), |cost| fixed(cost, 2)),
            fixed(sum(|piece| piece.bore) / 1e3, 1),
            String::new(),
            time,
        ],
        data: vec![("sum", String::new()), ("cm3", (material / 1e3).to_string())],
    }
}

/// Of a volume of material in mm3, g.
fn mass(sheet: &Sheet<'_>, material: f64) -> f64 {
    material / 1e3 * sheet.design.process.material.density_g_per_cm3
}

fn cost(sheet: &Sheet<'_>, material: f64) -> Option<f64> {
    material_cost(&sheet.design.process.material, material)
}
