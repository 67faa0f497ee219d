//! A run in service: heat, strength, seals, flow, traps.

use super::{EXACT, GEOMETRY, Origin, PRACTICE, origin};

const FLOW: &[&str] = &[
    "/loop/flow_l_per_h",
    "/runs/*/tube/bore",
    "/process/material/roughness_um",
    "/loop/fluid/density_kg_per_m3",
    "/loop/fluid/viscosity_mpa_s",
];
const GLAND: &[&str] = &["/runs/*/tube/outer_diameter", "/fittings/*/seal/section", "/fittings/*/seal/gland_diameter"];
const SQUEEZED: &[&str] = &[
    "/runs/*/tube/outer_diameter",
    "/fittings/*/seal/section",
    "/fittings/*/seal/gland_diameter",
    "/runs/*/service/seals/*/tube_tolerance_mm",
];
const STACK: &str = "Over the stack: tube as the coupon's scatter or the printer's tolerance says, section by ISO 3601-1 class B, gland 0.05 mm \
                     (common practice, no source); at worst all against it, likely the root of the sum of squares.";

pub(super) const ROWS: &[Origin] = &[
    origin("/runs/*/service/heat/limit_c", "Warmest coolant", "°C")
        .by("The lower of glass transition and heat deflection at 1.8 MPa (ISO 75), less 10 K", PRACTICE)
        .holds("Under lasting pressure; 15 K is better. A semi-crystalline material goes by heat deflection alone. Data sheets \
                are of dry test bars, printed and cured as the maker says.")
        .of(&["/process/material/glass_c", "/process/material/hdt_180_c", "/process/material/semicrystalline"]),
    origin("/runs/*/service/heat/growth_mm", "Growth from fitted to hottest", "mm")
        .by("Length × expansion × (fault temperature − fitted at)", "definition of linear expansion")
        .holds("As good as the expansion: sheets of one kind of resin differ by a quarter. What water uptake adds is not in it.")
        .of(&["/runs/*/length_mm", "/process/material/expansion_um_per_m_k", "/loop/fault_c", "/loop/cold_c"]),
    origin("/runs/*/service/strength/pressure_kpa", "Pressure held against", "kPa")
        .by("The larger of test pressure and working pressure", PRACTICE)
        .holds("Over the air's.")
        .of(&["/loop/test_kpa", "/loop/pressure_kpa"]),
    origin("/runs/*/service/strength/hoop_mpa", "in a straight", "MPa")
        .by("Lamé: p (ro² + ri²)/(ro² − ri²), at the bore", "Lamé and Clapeyron, 1833; any handbook of strength")
        .holds("Round, elastic, far from the ends; exact there. A dressed body counts at its thinnest wall.")
        .of(&["/runs/*/service/strength/pressure_kpa", "/runs/*/tube/outer_diameter", "/runs/*/tube/bore"]),
    origin("/runs/*/service/strength/bend_factor", "times that inside the tightest bend", "")
        .by("Torus membrane: (R − r/2)/(R − r), r the mean radius of the tube", "from memory, unverified")
        .holds("Thin walls; for thick ones an estimate.")
        .of(&["/runs/*/bend_radius", "/runs/*/tube/outer_diameter", "/runs/*/tube/bore"]),
    origin("/runs/*/service/strength/allowed_mpa", "Stress allowed", "MPa")
        .by("Strength × across layers × warm × lasting ÷ safety", PRACTICE)
        .holds("A judgement: no data of printed tubes over years in warm coolant were found. Each factor is yours to change.")
        .of(&[
            "/process/material/strength_mpa",
            "/process/material/across_layers",
            "/process/factors/warm",
            "/process/factors/lasting",
            "/process/factors/safety",
        ]),
    origin("/runs/*/service/strength/factors/*/times", "Factor", "")
        .by("As stated", PRACTICE)
        .holds("Each factor is yours to change.")
        .of(&["/process/factors/warm", "/process/factors/lasting", "/process/factors/safety"]),
    origin("/runs/*/service/strength/utilisation", "Strength used", "")
        .by("Hoop stress × bend factor ÷ stress allowed", GEOMETRY)
        .holds("1 is all of what is allowed. Brittle tubes break at the collar's edge by side load first.")
        .of(&[
            "/runs/*/service/strength/hoop_mpa",
            "/runs/*/service/strength/bend_factor",
            "/runs/*/service/strength/allowed_mpa",
        ]),
    origin("/runs/*/service/strength/allowed_kpa", "Pressure allowed", "kPa")
        .by("Lamé, solved for the pressure: σ (ro² − ri²)/(ro² + ri²) ÷ bend factor", "Lamé and Clapeyron, 1833")
        .holds("As good as the stress allowed.")
        .of(&["/runs/*/service/strength/allowed_mpa", "/runs/*/tube/outer_diameter", "/runs/*/tube/bore"]),
    origin("/runs/*/service/seals/*/squeeze_percent", "Squeeze of the ring", "%")
        .by("1 − (gland − tube)/2 ÷ section", "geometry; 12 to 30 % is common practice, no source; 10 to 40 % two design guides")
        .holds(STACK)
        .of(SQUEEZED),
    origin("/runs/*/service/seals/*/tube_tolerance_mm", "Tube may be off by, ±", "mm")
        .by("What the coupon's readings scatter by, if there are three or more; else the printer's tolerance", "own readings; \
             else the printer's figures, or 0.1 mm (common practice, no source)")
        .holds("About the stated diameter: the files are corrected for what the coupon says of the mean.")
        .of(&["/fit/outer/within_mm", "/process/printer/tolerance"]),
    origin("/runs/*/service/seals/*/fill_percent", "Fill of the groove", "%")
        .by("π/4 section² ÷ (depth × width)", "geometry; 85 % at most: two design guides")
        .holds(STACK)
        .of(&["/fittings/*/seal/section", "/fittings/*/seal/gland_diameter", "/fittings/*/seal/gland_width", "/runs/*/tube/outer_diameter"]),
    origin("/runs/*/service/seals/*/chamfer_drop_mm", "Chamfer draws in by", "mm")
        .by("Chamfer's length × tan(angle)", GEOMETRY)
        .holds(EXACT)
        .of(&["/runs/*/ends/chamfer_length", "/runs/*/ends/chamfer_deg"]),
    origin("/runs/*/service/seals/*/chamfer_drop_needed_mm", "ring reaches in by", "mm")
        .by("Section − gap", GEOMETRY)
        .holds("Guides ask for 15 to 20 degrees. Sand the sealing band round the tube, to Ra 1.6 µm or finer; no scars of supports.")
        .of(GLAND),
    origin("/runs/*/service/seals/*/best_outer_diameter", "best on a tube of", "mm")
        .by("Gland − 2 × section × (1 − 20 %)", PRACTICE)
        .holds("As printed and sanded. Textbook: 27 % at 1.78 mm down to 18 % at 6.99 mm, 20.5 % on average (ISBN 9780203744109, ch. 4).")
        .of(&["/fittings/*/seal/section", "/fittings/*/seal/gland_diameter"]),
    origin("/runs/*/service/flow/flow_l_per_h", "At a flow of", "L/h").by("As stated", GEOMETRY).holds(EXACT).of(&["/loop/flow_l_per_h"]),
    origin("/runs/*/service/flow/loss_kpa", "Pressure loss", "kPa")
        .by("Darcy and Weisbach: f (length/bore) ρv²/2 in straights, K ρv²/2 in bends, added up", "Weisbach 1845; see the parts")
        .holds("The band is ± 30 % where a formula is used outside its published range: at a loop's Reynolds numbers most bends are.")
        .of(FLOW),
    origin("/runs/*/service/flow/straights_kpa", "straights", "kPa")
        .by(
            "Laminar 64/Re below 2300, Colebrook and White from 4000, a straight line between",
            "J. Inst. Civ. Eng. 11 (1939) 133; transition: Gnielinski, Int. J. Heat Mass Transfer 63 (2013) 134, from memory",
        )
        .holds("Moody's chart; between 2300 and 4000 either may hold, and the band says so.")
        .of(FLOW),
    origin("/runs/*/service/flow/bends_kpa", "bends", "kPa")
        .by("Ito's loss of a bend, never less than White's laminar coil", "Ito, J. Basic Eng. 82 (1960) 131; White, Proc. R. Soc. A 123 (1929) 645")
        .holds("Published for smooth bends from Re 2e4 to 4e5; outside it ± 30 %.")
        .of(FLOW),
    origin("/runs/*/service/flow/coils_kpa", "coils", "kPa")
        .by(
            "White's laminar factor up to Ito's critical Reynolds number, then Mishra and Gupta's term over the straight tube's",
            "White 1929; Ito, J. Basic Eng. 81 (1959) 123; Mishra and Gupta, Ind. Eng. Chem. Process Des. Dev. 18 (1979) 130",
        )
        .holds("Dean numbers to 2000; turbulent Re to 1e5 and D/d from 6.7 to 346; outside it ± 30 %.")
        .of(FLOW),
    origin("/runs/*/service/flow/curves_kpa", "curves", "kPa")
        .by("As a coil of the curvature at each place, summed along the curve", "as coils")
        .holds("As coils; a curve that turns over is no coil, and the band is what covers it.")
        .of(FLOW),
    origin("/runs/*/service/flow/joints_kpa", "joints", "kPa")
        .by("Borda and Carnot: (1 − (d₁/d₂)²)² ρv²/2 at each joint, d₁ and d₂ the bore less and plus the printer's tolerance", "Borda 1766; any handbook of flow")
        .holds("At worst, one bore as narrow and the next as wide as the printer may make them; the gap at the seam is not in it.")
        .of(&["/loop/flow_l_per_h", "/runs/*/tube/bore", "/runs/*/cuts/*/at", "/process/printer/tolerance"]),
    origin("/runs/*/service/flow/ends_kpa", "changes of bore at the ends", "kPa")
        .by("Borda and Carnot (1 − β²)² where it widens, Crane 0.5 (1 − β²) where it narrows", "Borda 1766; Crane TP-410")
        .holds("Sharp steps, turbulent flow; β is the smaller bore over the larger.")
        .of(&["/runs/*/tube/bore", "/fittings/*/bore"]),
    origin("/runs/*/service/flow/sweep", "Pressure loss at other flows", "kPa")
        .by("As the pressure loss, from a quarter of the stated flow to twice of it", "see the parts")
        .holds("The band is ± 30 % where a formula is used outside its published range.")
        .of(FLOW),
    origin("/runs/*/service/flow/velocity_m_per_s", "Velocity", "m/s")
        .by("Flow ÷ (π/4 bore²)", GEOMETRY)
        .holds("The mean over the bore.")
        .of(&["/loop/flow_l_per_h", "/runs/*/tube/bore"]),
    origin("/runs/*/service/flow/reynolds", "Reynolds number", "")
        .by("Velocity × bore × density ÷ viscosity", "definition")
        .holds("Below 2300 a straight tube is laminar, from 4000 turbulent.")
        .of(&["/runs/*/service/flow/velocity_m_per_s", "/runs/*/tube/bore", "/loop/fluid/viscosity_mpa_s"]),
    origin("/runs/*/service/high_points", "Keeps air when filled", "mL")
        .by("High points of the centreline along up; what lies over the higher way out × π/4 bore²", GEOMETRY)
        .holds("An estimate: the true surface is level across the bore. Shallower than the bore, air passes beside.")
        .of(&["/loop/up/*", "/runs/*/tube/bore", "/runs/*/length_mm"]),
    origin("/runs/*/service/low_points", "Keeps coolant when drained", "mL")
        .by("Low points of the centreline along up; what lies under the lower way out × π/4 bore²", GEOMETRY)
        .holds("An estimate: the true surface is level across the bore.")
        .of(&["/loop/up/*", "/runs/*/tube/bore", "/runs/*/length_mm"]),
];
