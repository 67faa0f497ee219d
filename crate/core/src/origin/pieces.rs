//! The pieces of a cut run, and their joints.

use super::{EXACT, GEOMETRY, Origin, PRACTICE, origin};

const CUTS: &[&str] = &["/runs/*/cuts/*/at", "/process/joint/length"];
const SOCKET: &[&str] =
    &["/runs/*/tube/outer_diameter", "/process/joint/key_depth", "/process/joint/clearance", "/process/joint/wall"];

pub(super) const ROWS: &[Origin] = &[
    origin("/runs/*/pieces/*/from_mm", "Piece from", "mm").by("Seam − joint length", GEOMETRY).holds(EXACT).of(CUTS),
    origin("/runs/*/pieces/*/to_mm", "Piece to", "mm").by("As stated", GEOMETRY).holds(EXACT).of(&["/runs/*/cuts/*/at", "/runs/*/length_mm"]),
    origin("/runs/*/pieces/*/material_mm3", "Material of the piece", "mm³")
        .by("Pappus and Guldin, section by section: tube, spigot, socket and collar", GEOMETRY)
        .holds("Exact on a straight or an even bend: the key stands square to the bend. Adhesive is not in it.")
        .of(&["/runs/*/tube/outer_diameter", "/runs/*/tube/bore", "/runs/*/pieces/*/from_mm", "/runs/*/pieces/*/to_mm"]),
    origin("/runs/*/pieces/*/mass_g", "Mass of the piece", "g")
        .by("Material × density", GEOMETRY)
        .holds("As good as the density; supports and waste are not in it.")
        .of(&["/runs/*/pieces/*/material_mm3", "/process/material/density_g_per_cm3"]),
    origin("/runs/*/pieces/*/joint/number", "Joint", "").by("Counted from the run's start", GEOMETRY).holds(EXACT).of(CUTS),
    origin("/runs/*/pieces/*/joint/seam_mm", "Seam", "mm").by("As stated", GEOMETRY).holds(EXACT).of(&["/runs/*/cuts/*/at"]),
    origin("/runs/*/pieces/*/joint/length_mm", "Joint length", "mm").by("As stated", PRACTICE).holds(EXACT).of(&["/process/joint/length"]),
    origin("/runs/*/pieces/*/joint/clearance_mm", "Glue gap", "mm")
        .by("As stated", PRACTICE)
        .holds("As the files have it; prints differ by the printer's tolerance.")
        .of(&["/process/joint/clearance"]),
    origin("/runs/*/pieces/*/joint/collar_diameter_mm", "Collar", "mm")
        .by("OD + 2 × (key + gap + the largest of stated wall, tube's wall and printer's least)", GEOMETRY)
        .holds(EXACT)
        .of(SOCKET),
    origin("/runs/*/pieces/*/joint/shear_mpa", "Shear in the bond", "MPa")
        .by(
            "(p π/4 OD² ÷ (π OD) + M ÷ (π r²)) ÷ glued length: the pressure's thrust, and the moment M of ports as far off as they may be",
            "equilibrium; the moment as a ring of weld carries it, any handbook of machine elements",
        )
        .holds("Evenly spread along the joint; a real bond is stressed more at its ends, which the safety factor is for.")
        .of(&["/loop/test_kpa", "/loop/pressure_kpa", "/runs/*/tube/outer_diameter", "/process/joint/length", "/ports/*/measured_to"]),
    origin("/runs/*/pieces/*/joint/shear_allowed_mpa", "Shear allowed", "MPa")
        .by("Bond strength ÷ safety", PRACTICE)
        .holds("As good as the strength, which is from memory, unverified, until you put in your adhesive's.")
        .of(&["/process/joint/bond_mpa", "/process/factors/safety"]),
    origin("/runs/*/pieces/*/joint/hoop_mpa", "Stress round the socket", "MPa")
        .by("Lamé: p (ro² + ri²)/(ro² − ri²), inside the socket, should coolant get there", "Lamé and Clapeyron, 1833; any handbook of strength")
        .holds("Under the marks, where the collar is thinnest; the spigot inside it bears nothing then.")
        .of(&["/runs/*/service/strength/pressure_kpa", "/runs/*/pieces/*/joint/collar_diameter_mm"]),
];
