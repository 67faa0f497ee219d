//! What the tubes are made of and on.

use super::super::{Quantity, choice, flag, group, number, text};
use super::NAME;

rows! {
    /// Material.
    MATERIAL = choice("/process/material", "Material", "material", Some("high-temperature resin"),
        "What the tubes are printed in: its mass, heat, strength and tightness.");
    /// Name of an own material.
    MATERIAL_NAME = text("/process/material/name", "Material name", NAME, None,
        "What is written on the bottle, spool or order.");
    /// Density of an own material.
    MATERIAL_DENSITY = number("/process/material/density_g_per_cm3", "Density", "g/cm³",
        "Mass of one cubic centimetre of the printed part, from the maker's data sheet.")
        .above(0.0).to(25.0).step(0.01, 1.12);
    /// How an own material is printed.
    MATERIAL_WAY = choice("/process/material/way", "Printed from", "way", None,
        "Resin, powder or filament; it tells how rough and how tight the wall is.");
    /// Glass transition of an own material.
    GLASS = number("/process/material/glass_c", "Glass transition", "°C",
        "Where it begins to turn from glassy to soft, from the maker's data sheet.")
        .from(-150.0).to(500.0).step(1.0, 60.0);
    /// Whether an own material is semi-crystalline.
    SEMICRYSTALLINE = flag("/process/material/semicrystalline", "Semi-crystalline", false,
        "Polyamides are: they carry load above their glass transition, so that only heat deflection counts.");
    /// Heat deflection under the smaller load.
    HDT_045 = number("/process/material/hdt_045_c", "Heat deflection at 0.45 MPa", "°C",
        "ISO 75 method B, or ASTM D648 at 66 psi, from the maker's data sheet.")
        .from(-50.0).to(500.0).step(1.0, 60.0);
    /// Heat deflection under the larger load.
    HDT_180 = number("/process/material/hdt_180_c", "Heat deflection at 1.8 MPa", "°C",
        "ISO 75 method A, or ASTM D648 at 264 psi, from the maker's data sheet.")
        .from(-50.0).to(500.0).step(1.0, 50.0);
    /// Tensile strength.
    STRENGTH = number("/process/material/strength_mpa", "Tensile strength", "MPa",
        "At break or yield, whichever is less, in the direction that it is strongest.")
        .above(0.0).to(2_000.0).step(1.0, 40.0);
    /// Tensile modulus.
    MODULUS = number("/process/material/modulus_mpa", "Tensile modulus", "MPa",
        "How stiff it is, from the maker's data sheet; 2.2 GPa is 2200 MPa.")
        .above(0.0).to(500_000.0).step(50.0, 2_200.0);
    /// Elongation at break.
    ELONGATION = number("/process/material/elongation_percent", "Elongation at break", "%",
        "How far it stretches before it breaks; below 5 it is brittle.")
        .above(0.0).to(1_000.0).step(1.0, 8.0);
    /// Linear expansion.
    EXPANSION = number("/process/material/expansion_um_per_m_k", "Linear expansion", "µm/(m·K)",
        "How much it grows with heat; most plastics 60 to 150.")
        .from(0.0).to(1_000.0).step(5.0, 100.0);
    /// Water uptake.
    WATER_UPTAKE = number("/process/material/water_uptake_percent", "Water uptake", "%",
        "Mass of water that it takes up until it takes no more; it swells and softens.")
        .from(0.0).to(100.0).step(0.1, 1.0);
    /// Strength across the layers.
    ACROSS_LAYERS = number("/process/material/across_layers", "Strength across layers", "",
        "Strength across the layers as a share of that along them: 1 is the same in all directions.")
        .above(0.0).to(1.0).step(0.05, 0.8);
    /// Wall from which it is tight.
    TIGHT_FROM = number("/process/material/tight_from_mm", "Tight from a wall of", "mm",
        "The wall from which it holds water as printed; leave it empty where it weeps at any wall.")
        .above(0.0).to(100.0).step(0.1, 1.0);
    /// Roughness of the bore.
    ROUGHNESS = number("/process/material/roughness_um", "Roughness of the bore", "µm",
        "How uneven the bore is as printed: resin 2 to 10, powder 20 to 60, filament 50 to 150.")
        .from(0.0).to(5_000.0).step(1.0, 10.0);
    /// Price.
    PRICE = number("/process/material/price_per_l", "Price a litre", "",
        "What a litre of it costs you, in your own money; by weight, multiply the price of a kilogram by the density.")
        .from(0.0).to(1e6).step(5.0, 50.0);
    /// How a material looks.
    LOOK = group("/process/material/look", "Look",
        "How the material looks, for the picture alone; nothing is reckoned with it.");
    /// How clear a material is.
    LOOK_CLARITY = choice("/process/material/look/clarity", "Clarity", "clarity", Some("opaque"),
        "Clear and translucent tubes show their bore and the coolant in it.");
    /// The colour of a material.
    LOOK_COLOUR = text("/process/material/look/colour", "Colour", (0, 7), Some("#d39a6a"),
        "The colour of the finished tube by daylight: six hexadecimal digits after a number sign.");
    /// What to mind with an own material.
    CAUTIONS = text("/process/material/cautions", "Mind", (0, 2_000), Some(""),
        "What to mind with this material.");
    /// Source of the figures of an own material.
    MATERIAL_SOURCE = text("/process/material/source", "Source", (0, 2_000), Some(""),
        "Where the figures come from.");
    /// Strength left in warm coolant.
    FACTOR_WARM = number("/process/factors/warm", "Strength left when warm", "",
        "Share of its strength that a printed tube keeps at 50 °C; common practice, no source.")
        .above(0.0).to(1.0).step(0.05, 0.5).or(0.5);
    /// Strength left under a lasting load.
    FACTOR_LASTING = number("/process/factors/lasting", "Strength left over years", "",
        "Share of its strength that is left under a load that lasts; 0.3 to 0.5 is common practice, no source.")
        .above(0.0).to(1.0).step(0.05, 0.4).or(0.4);
    /// Safety factor.
    FACTOR_SAFETY = number("/process/factors/safety", "Safety factor", "",
        "What the tube must hold beside all that; 4 or more for printed parts is common practice, no source.")
        .from(1.0).to(100.0).step(0.5, 4.0).or(4.0);
    /// Printer.
    PRINTER = choice("/process/printer", "Printer", "printer", Some("medium resin"),
        "The class of printer the tubes are printed on.");
    /// Name of an own printer.
    PRINTER_NAME = text("/process/printer/name", "Printer name", NAME, None,
        "A name for your printer, or the service's.");
    /// Room in an own printer.
    BUILD_VOLUME = number("/process/printer/build_volume/*", "Build volume", "mm",
        "The largest part it takes: width, depth and height.")
        .above(0.0).to(100_000.0).step(1.0, 200.0);
    /// Least wall of an own printer.
    LEAST_WALL = number("/process/printer/least_wall", "Least wall", "mm",
        "The thinnest wall that it prints well.")
        .above(0.0).to(100.0).step(0.1, 1.0);
    /// How far a printed diameter is off.
    PRINTER_TOLERANCE = number("/process/printer/tolerance", "Tolerance", "mm",
        "How far a printed diameter may be off, plus or minus; print a ring and measure it.")
        .from(0.0).to(10.0).step(0.01, 0.15);
    /// Free room along the sides of the build volume.
    PRINTER_MARGIN = number("/process/printer/margin", "Margin", "mm",
        "Kept free along each side of the build volume, and under the part for its supports; 5 is common practice.")
        .from(0.0).to(1_000.0).step(0.5, 5.0).or(5.0);
    /// Height of a layer.
    LAYER = number("/process/printer/layer_mm", "Layer height", "mm",
        "How thick a layer is: resin 0.025 to 0.1, powder 0.08 to 0.12, filament 0.08 to 0.3.")
        .above(0.0).to(10.0).step(0.01, 0.05);
    /// Finest thing that is drawn.
    SPOT = number("/process/printer/spot_mm", "Pixel, spot or nozzle", "mm",
        "The width that it draws with: a screen's pixel, a laser's spot, the nozzle.")
        .above(0.0).to(10.0).step(0.01, 0.05);
    /// Overhang that needs no support.
    OVERHANG = number("/process/printer/overhang_deg", "Overhang from", "°",
        "Least angle from level of a skin that faces the plate and needs no support: resin 19, filament 45; empty for powder.")
        .from(0.0).to(90.0).step(1.0, 19.0);
    /// Bore that needs no support.
    BORE_ANGLE = number("/process/printer/bore_deg", "Bore from", "°",
        "Least angle from level of a bore that is printed without support inside: 30 for resin is common practice.")
        .from(0.0).to(90.0).step(1.0, 30.0);
    /// Gap that is printed over.
    BRIDGE = number("/process/printer/bridge_mm", "Longest bridge", "mm",
        "The longest gap that it prints over without support.")
        .from(0.0).to(1_000.0).step(1.0, 21.0);
    /// Time for one layer.
    LAYER_TIME = number("/process/printer/seconds_per_layer", "Time a layer", "s",
        "Exposure and lift together; look it up in the settings of your last print.")
        .above(0.0).to(100_000.0).step(0.5, 8.0);
    /// Most triangles of a file.
    MOST_TRIANGLES = number("/process/printer/most_triangles", "Most triangles", "",
        "How many triangles a file may have before the printer or the service is slow or refuses it.")
        .from(1_000.0).to(1e9).step(100_000.0, 1_000_000.0);
    /// Largest file.
    MOST_FILE = number("/process/printer/most_mb", "Largest file", "MB",
        "The largest file that the service takes.")
        .from(1.0).to(100_000.0).step(10.0, 100.0);
    /// Source of the figures of an own printer.
    PRINTER_SOURCE = text("/process/printer/source", "Source", (0, 2_000), Some(""),
        "Where the figures come from.");
}
