//! The loop as a whole.

use super::{EXACT, GEOMETRY, Origin, PRACTICE, origin};

const PARTS: &[&str] = &[
    "/runs/*/service/flow/loss_kpa",
    "/loop/parts/*/drop_kpa",
    "/loop/parts/*/at_l_per_h",
    "/loop/pump/points/*/head_m",
];
const PUMP: &str = "A data sheet's two numbers make the parabola that is level at no flow (common practice, no source); points \
                    are joined by Fritsch and Carlson's monotone cubic (SIAM J. Numer. Anal. 17 (1980) 238).";
const SQUARE: &str = "Parts go with the flow's square (common practice, no source): fine channels cost more than that at small \
                      flows. All stand one after the other.";

pub(super) const ROWS: &[Origin] = &[
    origin("/loop/coolant_ml", "Coolant in the loop", "mL")
        .by("Coolant in the tubes + what the stated parts hold", GEOMETRY)
        .holds("Without parts that are not stated.")
        .of(&["/totals/bore_mm3", "/loop/parts/*/volume_ml"]),
    origin("/loop/fluid/density_kg_per_m3", "Density", "kg/m³")
        .by("Water: IAPWS SR6-08; mixtures: Melinder's polynomials", "IAPWS SR6-08(2011); Melinder, IIR 2010")
        .holds("Water 0.01 to 99 °C at the air's pressure; mixtures to 60 %, above their freezing point.")
        .of(&["/loop/working_c", "/loop/coolant/base", "/loop/coolant/glycol_percent"]),
    origin("/loop/fluid/viscosity_mpa_s", "Viscosity", "mPa·s")
        .by(
            "As stated; else water by IAPWS SR6-08, mixtures by Melinder's polynomials",
            "IAPWS SR6-08(2011); Melinder, IIR 2010",
        )
        .holds("Dyes and additives are not in it: the bottle's own figure goes first.")
        .of(&[
            "/loop/coolant/viscosity_mpa_s",
            "/loop/working_c",
            "/loop/coolant/base",
            "/loop/coolant/glycol_percent",
        ]),
    origin("/loop/fluid/specific_heat_j_per_kg_k", "Specific heat", "J/(kg·K)")
        .by("Water: IAPWS SR6-08; mixtures: Melinder's polynomials", "IAPWS SR6-08(2011); Melinder, IIR 2010")
        .holds("Of a coolant of which only the viscosity is known it is water's; glycol takes up to a tenth.")
        .of(&["/loop/working_c", "/loop/coolant/base", "/loop/coolant/glycol_percent"]),
    origin("/loop/stated/flow_l_per_h", "Stated flow", "L/h")
        .by("As stated", GEOMETRY)
        .holds(EXACT)
        .of(&["/loop/flow_l_per_h"]),
    origin("/loop/stated/loss_kpa", "Loop's loss at the stated flow", "kPa")
        .by("Tubes and parts, added up", "see the tubes' losses")
        .holds(SQUARE)
        .of(PARTS),
    origin("/loop/stated/head_kpa", "Pump's head there", "kPa")
        .by("The pump's curve at the stated flow; ρ g h", PUMP)
        .holds("From no flow to the curve's last point.")
        .of(&["/loop/pump/points/*/flow_l_per_h", "/loop/pump/points/*/head_m", "/loop/flow_l_per_h"]),
    origin("/loop/stated/reserve_kpa", "Head in reserve", "kPa")
        .by("Pump's head − loop's loss", GEOMETRY)
        .holds("Below zero the pump does not drive the stated flow.")
        .of(&["/loop/stated/head_kpa", "/loop/stated/loss_kpa"]),
    origin("/loop/stated/rise_k", "Coolant warms up by", "K")
        .by("Heat ÷ (density × specific heat × flow)", "first law of thermodynamics")
        .holds("All heat in one round; what the tubes give off is not in it.")
        .of(&[
            "/loop/heat_w",
            "/loop/flow_l_per_h",
            "/loop/fluid/density_kg_per_m3",
            "/loop/fluid/specific_heat_j_per_kg_k",
        ]),
    origin("/loop/operating/flow_l_per_h", "Flow that the pump drives", "L/h")
        .by(
            "Where the pump's curve and the loop's loss cross, by Chandrupatla's method",
            "Adv. Eng. Softw. 28 (1997) 145, from memory",
        )
        .holds("The band is that of the tubes' losses. Parts that are not stated make it too large.")
        .of(PARTS),
    origin("/loop/operating/pressure_kpa", "at a pressure of", "kPa")
        .by("The pump's curve at that flow", PUMP)
        .holds(SQUARE)
        .of(PARTS),
    origin("/loop/operating/rise_k", "and warms up by", "K")
        .by("Heat ÷ (density × specific heat × flow)", "first law of thermodynamics")
        .holds("All heat in one round; what the tubes give off is not in it.")
        .of(&[
            "/loop/heat_w",
            "/loop/operating/flow_l_per_h",
            "/loop/fluid/density_kg_per_m3",
            "/loop/fluid/specific_heat_j_per_kg_k",
        ]),
    origin("/loop/shares/*/loss_kpa", "Takes", "kPa")
        .by("Tubes as their losses; parts: drop × (flow ÷ flow of the drop)²", PRACTICE)
        .holds(SQUARE)
        .of(PARTS),
    origin("/loop/shares/*/share_percent", "of the loop", "%")
        .by("What it takes ÷ what all take", GEOMETRY)
        .holds("At the flow that the pump drives, or the stated one where there is none.")
        .of(&["/loop/shares/*/loss_kpa"]),
];
