//! A run's shape: lengths, volumes, masses.

use super::{EXACT, GEOMETRY, Origin, origin};

const WAY: &[&str] = &["/ports/*/at/*", "/ports/*/facing/*", "/runs/*/bend_radius", "/runs/*/route"];
const TUBE: &[&str] =
    &["/runs/*/length_mm", "/runs/*/tube/outer_diameter", "/runs/*/tube/bore", "/runs/*/ends/chamfer_length"];

pub(super) const ROWS: &[Origin] = &[
    origin("/runs/*/length_mm", "Length", "mm")
        .by("Straights + bend radius × angle + coils + curves, along the centreline", GEOMETRY)
        .holds("Exact; conical coils and smooth curves by Gauss and Legendre's rule, to 1e-9.")
        .of(WAY),
    origin("/runs/*/material_mm3", "Material", "mm³")
        .by("Pappus and Guldin: π/4 (OD² − bore²) × length, less chamfers and rings, with the collars of joints and their adhesive", GEOMETRY)
        .holds(EXACT)
        .of(TUBE),
    origin("/runs/*/bore_mm3", "Coolant inside", "mm³")
        .by("Pappus and Guldin: π/4 bore² × length, and the breaks of its edges", GEOMETRY)
        .holds(EXACT)
        .of(TUBE),
    origin("/runs/*/mass_g", "Mass", "g")
        .by("Material × density", GEOMETRY)
        .holds("As good as the density; supports and waste are not in it.")
        .of(&["/runs/*/material_mm3", "/process/material/density_g_per_cm3"]),
    origin("/runs/*/cost", "Cost of the material", "")
        .by("Material × price of a litre", GEOMETRY)
        .holds(
            "As good as the price, and in its money; supports, waste and what a service asks for beside are not in it.",
        )
        .of(&["/runs/*/material_mm3", "/process/material/price_per_l"]),
    origin("/runs/*/coolant_g", "Mass of coolant", "g")
        .by("Coolant inside × density", GEOMETRY)
        .holds("As good as the density.")
        .of(&["/runs/*/bore_mm3", "/loop/coolant/density_g_per_cm3"]),
    origin("/totals/length_mm", "Length of all tubes", "mm")
        .by("Sum over the runs that are made", GEOMETRY)
        .holds(EXACT)
        .of(&["/runs/*/length_mm"]),
    origin("/totals/material_mm3", "Material of all tubes", "mm³")
        .by("Sum over the runs that are made", GEOMETRY)
        .holds(EXACT)
        .of(&["/runs/*/material_mm3"]),
    origin("/totals/bore_mm3", "Coolant in all tubes", "mm³")
        .by("Sum over the runs that are made", GEOMETRY)
        .holds(EXACT)
        .of(&["/runs/*/bore_mm3"]),
    origin("/totals/mass_g", "Mass of all tubes", "g")
        .by("Sum over the runs that are made", GEOMETRY)
        .holds("As good as the density.")
        .of(&["/runs/*/mass_g"]),
    origin("/totals/cost", "Cost of the material of all tubes", "")
        .by("Material of all tubes × price of a litre", GEOMETRY)
        .holds(
            "As good as the price, and in its money; supports, waste and what a service asks for beside are not in it.",
        )
        .of(&["/totals/material_mm3", "/process/material/price_per_l"]),
    origin("/totals/coolant_g", "Mass of coolant in all tubes", "g")
        .by("Sum over the runs that are made", GEOMETRY)
        .holds("As good as the density.")
        .of(&["/runs/*/coolant_g"]),
];
