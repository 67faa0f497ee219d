//! What tubes cost: a print service's prices, and what a stance adds to the material.

use super::{Origin, PRACTICE, origin};

pub(super) const ROWS: &[Origin] = &[
    origin("/runs/*/pieces/*/service_price", "Print service, for the piece", "")
        .by("Material × price a cm³ + set-up", "the service's own prices, as stated")
        .holds("As good as the prices, and in their money; least order, finishing, tax and shipping are not in it.")
        .of(&["/runs/*/pieces/*/material_mm3", "/process/service/price_per_cm3", "/process/service/setup"]),
    origin("/totals/service_price", "Print service, for all pieces", "")
        .by("Sum over the pieces, or the least order where that is more", "the service's own prices, as stated")
        .holds("One of each piece in one order. As good as the prices, and in their money; finishing, tax and shipping are not in it.")
        .of(&["/runs/*/pieces/*/service_price", "/process/service/minimum"]),
    origin("/runs/*/stances/*/support_mm3", "Supports", "mm³")
        .by("Skin that needs support × its mean height above the plate × 5 to 20 % with resin, 10 to 30 % with filament", PRACTICE)
        .holds("A rough band: how dense supports are is set where the print is prepared. Feet, brims and supports inside the bore are not in it. Powder needs none.")
        .of(&["/runs/*/stance", "/process/printer/overhang_deg", "/process/printer/margin", "/process/material/way"]),
    origin("/runs/*/stances/*/material_cost", "Material with supports and waste", "")
        .by("From material × price of a litre to (material + most supports) × 1.2 × price of a litre", PRACTICE)
        .holds("A fifth of waste at most is common practice, no source: a print that fails costs as much again.")
        .of(&["/runs/*/pieces/*/material_mm3", "/runs/*/stances/*/support_mm3", "/process/material/price_per_l"]),
];
