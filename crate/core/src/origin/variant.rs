//! The table of variants: each number is the report's of the design after the variant's change.

use super::{GEOMETRY, Origin, PRACTICE, origin};

const REPORT: &str = "as the report of the changed design";
const ALL: &str = "Over all tubes of the design, changed or not.";

pub(super) const ROWS: &[Origin] = &[
    origin("/variants/*/outer_diameter", "Outer diameter", "mm")
        .by("As asked for", GEOMETRY)
        .holds(ALL)
        .of(&["/runs/*/tube/outer_diameter"]),
    origin("/variants/*/bore", "Bore", "mm").by("As asked for", GEOMETRY).holds(ALL).of(&["/runs/*/tube/bore"]),
    origin("/variants/*/wall_mm", "Wall", "mm")
        .by("(Outer diameter − bore) ÷ 2", GEOMETRY)
        .holds("The thinnest of the tubes that are changed; a dressed body's grooves are not in it.")
        .of(&["/runs/*/tube/outer_diameter", "/runs/*/tube/bore"]),
    origin("/variants/*/fits", "Fits the fitting", "")
        .by("Outer diameter against what each fitting takes", PRACTICE)
        .holds("Within 0.05 mm: more shows on calipers and costs squeeze.")
        .of(&["/runs/*/tube/outer_diameter", "/fittings/*/tube_diameter"]),
    origin("/variants/*/squeeze_percent", "Squeeze", "%")
        .by("The least and the most of all rings", REPORT)
        .holds(ALL)
        .of(&["/runs/*/service/seals/*/squeeze_percent"]),
    origin("/variants/*/utilisation", "Strength used", "")
        .by("Of the tube that uses most", REPORT)
        .holds("1 is all of what is allowed.")
        .of(&["/runs/*/service/strength/utilisation"]),
    origin("/variants/*/allowed_kpa", "Pressure allowed", "kPa")
        .by("Of the tube that holds least", REPORT)
        .holds(ALL)
        .of(&["/runs/*/service/strength/allowed_kpa"]),
    origin("/variants/*/heat_margin_k", "Heat margin", "K")
        .by("Warmest coolant that the material stands − the hottest that it gets", PRACTICE)
        .holds("Below zero a stopped pump softens it.")
        .of(&["/runs/*/service/heat/limit_c", "/loop/fault_c"]),
    origin("/variants/*/loss_kpa", "Loss in the tubes", "kPa")
        .by("Added up, at the stated flow", REPORT)
        .holds(ALL)
        .of(&["/runs/*/service/flow/loss_kpa"]),
    origin("/variants/*/operating_l_per_h", "Flow driven", "L/h")
        .by("Where pump and loop agree", REPORT)
        .holds(ALL)
        .of(&["/loop/operating/flow_l_per_h"]),
    origin("/variants/*/coolant_ml", "Coolant in the tubes", "mL")
        .by("Added up", REPORT)
        .holds(ALL)
        .of(&["/totals/bore_mm3"]),
    origin("/variants/*/material_cm3", "Material", "cm³")
        .by("Added up", REPORT)
        .holds("Supports and waste are not in it.")
        .of(&["/totals/material_mm3"]),
    origin("/variants/*/mass_g", "Mass", "g")
        .by("Added up", REPORT)
        .holds("Supports and waste are not in it.")
        .of(&["/totals/mass_g"]),
    origin("/variants/*/cost", "Cost", "")
        .by("Material × price a litre", PRACTICE)
        .holds("In the money of the price; supports, waste, shipping and a service's least order are not in it.")
        .of(&["/variants/*/material_cm3", "/process/material/price_per_l"]),
    origin("/variants/*/findings/stop", "Stops", "").by("Counted", REPORT).holds(ALL).of(&[]),
    origin("/variants/*/findings/care", "Cares", "").by("Counted", REPORT).holds(ALL).of(&[]),
    origin("/variants/*/findings/note", "Notes", "").by("Counted", REPORT).holds(ALL).of(&[]),
];
