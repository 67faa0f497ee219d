//! What a tube's material costs.

use crate::design::Material;

/// Cubic millimetres in a litre.
const MM3_IN_L: f64 = 1e6;

/// What `volume` mm3 of a material cost, in the money that its price per litre is stated in; none where no price is
/// stated. Supports and waste are not in it.
pub fn material_cost(material: &Material, volume: f64) -> Option<f64> {
    material.price_per_l.map(|price| price * volume / MM3_IN_L)
}
