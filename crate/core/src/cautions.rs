//! What a builder must know before printing and filling, in words: for the page and for the sheet of a pack.

/// What a builder must know. Common practice where no source is named.
pub(crate) const CAUTIONS: &[&str] = &[
    "The results are estimates from the numbers you typed. You test the tubes, and you carry the risk; there is no warranty.",
    "Measure your own fittings and ports. The shipped figures are middling ones and no maker's.",
    "Print a short piece first and try it in the fitting before you print the whole loop.",
    "Pressure-test every tube outside the machine, filled with water, before it goes in; then run the loop for a day with \
     only the pump powered and paper towels underneath.",
    "Unplug the mains while you fill or test. After a spill, let everything dry for a day or two.",
    "With air, stay at or below 0.5 bar, use a regulator and eye protection, and never a compressor alone.",
    "Many resins and PLA soften at or below 60 °C. Compare the material's own data sheet with your fault temperature.",
    "Liquid resin can cause a lasting skin allergy: wear nitrile gloves, and wash skin with soap and water, not solvent.",
    "Isopropyl alcohol burns: its flash point is 12 °C (NIOSH Pocket Guide). Keep flames and sparks away and air the room.",
    "Cure resin tubes fully, inside and outside, and flush the bore: uncured resin goes into the coolant.",
    "Coolants with glycol, alcohol, biocide or dye can crack some plastics: soak a test piece for three days first.",
    "Tubes printed by this are not for drinking water.",
];

/// Each step of a leak test and first fill, and what to mind at it. Common practice, no source.
pub(crate) const FIRST_FILL: &[[&str; 2]] = &[
    [
        "Unplug the machine from the mains and leave it so until the loop is dry and tested.",
        "No power to anything but the pump before the last step.",
    ],
    [
        "Put on eye protection. Close the loop, with a plug or valve at every open port.",
        "A part that lets go under air pressure flies.",
    ],
    [
        "Put air in by a hand pump, or by a regulator with a relief valve set to half a bar (50 kPa) at most.",
        "Air stores energy where coolant does not. Never connect a compressor directly.",
    ],
    [
        "Wait 5 minutes, so that rings settle and the air takes the loop's temperature; then read gauge and thermometer.",
        "",
    ],
    [
        "Hold it for 15 to 60 minutes out of sun and draught, then read both again; the page reckons with the readings.",
        "",
    ],
    [
        "Where it loses more than it may, brush soapy water on one joint after another and watch for bubbles; dry them well.",
        "Let the pressure out before you turn a fitting.",
    ],
    ["Let the air out slowly. Fill the reservoir with coolant, below its rim.", ""],
    [
        "Power the pump alone, from a separate supply, in pulses of a few seconds; fill up in between.",
        "Never let the pump run dry.",
    ],
    ["Tilt and turn the machine until no more bubbles come, and fill up to the mark.", ""],
    ["Let the pump run alone for 24 hours with paper towels under every joint, and look at each of them.", ""],
    ["Check the level once more. Only then plug in the machine; look again after its first warm hours.", ""],
];
