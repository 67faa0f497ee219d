//! What tubes cost: their material for who prints it, or what a print service asks for.

use crate::design::{Material, ServicePrices};

/// Cubic millimetres in a litre.
const MM3_IN_L: f64 = 1e6;
/// Cubic millimetres in a cubic centimetre.
const MM3_IN_CM3: f64 = 1e3;

/// Share of what is printed that is used up beside it at most: prints that fail, what drips off, purges and leftovers.
/// Common practice, no source.
pub const WASTE: f64 = 0.2;

/// What `volume` mm3 of a material cost, in the money that its price per litre is stated in; none where no price is
/// stated. Supports and waste are not in it.
pub fn material_cost(material: &Material, volume: f64) -> Option<f64> {
    material.price_per_l.map(|price| price * volume / MM3_IN_L)
}

/// What a print costs in material, from the tube alone to all of its supports and [`WASTE`] on top: `volume` is the tube's,
/// `supports` that of its supports at least and at most, mm3.
pub fn print_cost(material: &Material, volume: f64, supports: [f64; 2]) -> Option<[f64; 2]> {
    let most = (volume + supports[1]) * (1.0 + WASTE);
    Some([material_cost(material, volume)?, material_cost(material, most)?])
}

/// What a print service asks for a piece of `volume` mm3, before its least order; none where its price is not known.
pub fn piece_price(prices: &ServicePrices, volume: f64) -> Option<f64> {
    prices.price_per_cm3.map(|price| price * volume / MM3_IN_CM3 + prices.setup)
}

/// What a print service asks for an order of pieces whose prices are `pieces`; none where there is none, or one of them is
/// not known.
pub fn order_price(prices: &ServicePrices, pieces: impl IntoIterator<Item = Option<f64>>) -> Option<f64> {
    let pieces = pieces.into_iter().collect::<Option<Vec<f64>>>().filter(|pieces| !pieces.is_empty())?;
    Some(pieces.iter().sum::<f64>().max(prices.minimum))
}
