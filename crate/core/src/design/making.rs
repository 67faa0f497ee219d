//! What the tubes are made of and on, as the builder states it. A figure that is none is not known.

/// What the tubes are made of and on.
#[derive(Debug, Clone, PartialEq)]
pub struct Process {
    /// The material, whole.
    pub material: Material,
    /// The printer, whole.
    pub printer: Printer,
    /// What strength is lessened by.
    pub factors: Factors,
    /// What calipers read of a coupon; none where none was measured.
    pub fit: Option<Fit>,
    /// How pieces of a cut run are joined.
    pub joint: JointSizes,
    /// What a print service asks for; none where none prints, or where its prices are not known.
    pub service: Option<ServicePrices>,
}

/// What a print service asks for, in the builder's own money.
#[derive(Debug, Clone, PartialEq)]
pub struct ServicePrices {
    /// For a cubic centimetre of material; none where it is not known.
    pub price_per_cm3: Option<f64>,
    /// For each piece beside its material.
    pub setup: f64,
    /// For the whole order at least.
    pub minimum: f64,
    /// Where the prices come from.
    pub source: String,
}

/// A bonded joint of two pieces: a spigot in a socket. Common practice, no source, but where said.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointSizes {
    /// Length of the spigot, mm.
    pub length: f64,
    /// Gap for the adhesive, mm: all round the spigot, and beyond its tip.
    pub clearance: f64,
    /// Least wall of the socket, mm.
    pub wall: f64,
    /// How far the key stands out of the spigot, mm; 0 for none.
    pub key_depth: f64,
    /// Shear strength of the bond, MPa; from memory, unverified.
    pub bond_mpa: f64,
}

/// What calipers read of a fit coupon, or of other prints of known sizes.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// Name of the material that it was printed in.
    pub material: String,
    /// Name of the printer that it was printed on.
    pub printer: String,
    /// Outer diameters.
    pub outer: Vec<Reading>,
    /// Bores.
    pub bore: Vec<Reading>,
    /// Lengths.
    pub length: Vec<Reading>,
    /// The end that fitted best; none where none was tried.
    pub fitted: Option<Fitted>,
}

/// One size, as stated and as printed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// As the file had it, mm.
    pub nominal: f64,
    /// As calipers read it, mm; none where it is not read yet.
    pub measured: Option<f64>,
}

/// The end of a coupon that fitted best.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fitted {
    /// Outer diameter that tubes for that fitting are stated with, mm.
    pub outer_diameter: f64,
    /// What that end measures over its outside, mm; none where it is not read yet.
    pub measured: Option<f64>,
}

/// A printing material. Figures are of the printed and cured part at 23 degrees C, dry, unless said.
#[derive(Debug, Clone, PartialEq)]
pub struct Material {
    /// Its generic name.
    pub name: String,
    /// How it is printed.
    pub way: Option<Way>,
    /// Density of the printed part, g/cm3.
    pub density_g_per_cm3: f64,
    /// Glass transition, degrees C.
    pub glass_c: Option<f64>,
    /// Whether it carries load above its glass transition, as semi-crystalline polymers do.
    pub semicrystalline: bool,
    /// Heat deflection temperature at 0.45 MPa (ISO 75 method B), degrees C.
    pub hdt_045_c: Option<f64>,
    /// Heat deflection temperature at 1.80 MPa (ISO 75 method A), degrees C.
    pub hdt_180_c: Option<f64>,
    /// Tensile strength in the best direction, MPa.
    pub strength_mpa: Option<f64>,
    /// Tensile modulus, MPa.
    pub modulus_mpa: Option<f64>,
    /// Elongation at break, percent.
    pub elongation_percent: Option<f64>,
    /// Linear expansion, micrometres per metre and kelvin.
    pub expansion_um_per_m_k: Option<f64>,
    /// Water taken up when saturated, percent of mass.
    pub water_uptake_percent: Option<f64>,
    /// Strength across the layers over that along them, (0, 1].
    pub across_layers: Option<f64>,
    /// Wall from which it prints tight, mm; none where no wall is known to be.
    pub tight_from_mm: Option<f64>,
    /// Roughness of a bore as printed, micrometres.
    pub roughness_um: Option<f64>,
    /// Price of a litre of printed part, in the builder's money.
    pub price_per_l: Option<f64>,
    /// How it is to be drawn; none where nothing is said.
    pub look: Option<Look>,
    /// What to mind with it; may be empty.
    pub cautions: String,
    /// Where the figures come from.
    pub source: String,
}

/// How a material looks: for pictures alone, nothing is reckoned with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Look {
    /// How much of what is behind it shows.
    pub clarity: Clarity,
    /// Its colour by daylight: red, green, blue, sRGB.
    pub colour: [u8; 3],
}

/// How much of what is behind a wall of a material shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Clarity {
    /// Nothing.
    Opaque,
    /// Shades of it.
    Translucent,
    /// All of it.
    Clear,
}

/// How a material is printed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// Liquid resin cured by light (vat photopolymerisation, ISO/ASTM 52900).
    Resin,
    /// Powder fused by heat (powder bed fusion).
    Powder,
    /// Filament laid down (material extrusion).
    Filament,
}

/// What the strength of a printed part is lessened by, beside its direction. Common practice, no source.
#[derive(Debug, Clone, PartialEq)]
pub struct Factors {
    /// Strength left in warm coolant, (0, 1].
    pub warm: f64,
    /// Strength left under a load that lasts for years, (0, 1].
    pub lasting: f64,
    /// What is asked for beside all that, at least 1.
    pub safety: f64,
}

/// A class of printer.
#[derive(Debug, Clone, PartialEq)]
pub struct Printer {
    /// Its generic name.
    pub name: String,
    /// Room for a part: x, y, z, mm.
    pub build_volume: [f64; 3],
    /// Least wall it prints reliably, mm.
    pub least_wall: f64,
    /// How far a printed diameter is off, plus or minus mm; none where it is not known.
    pub tolerance: Option<f64>,
    /// Kept free along each side of the build volume, mm.
    pub margin: f64,
    /// Height of a layer, mm.
    pub layer_mm: Option<f64>,
    /// Its pixel, its laser's spot or its nozzle, mm.
    pub spot_mm: Option<f64>,
    /// Least angle from level, degrees, of a skin that faces the plate and needs no support; none where it needs none at
    /// any angle, or where that is not known.
    pub overhang_deg: Option<f64>,
    /// Least angle of a bore's axis from level, degrees, at which the bore needs no support inside; none as above.
    pub bore_deg: Option<f64>,
    /// Longest gap that is printed over without support, mm.
    pub bridge_mm: Option<f64>,
    /// Time for one layer, seconds.
    pub seconds_per_layer: Option<f64>,
    /// Most triangles that a file may have.
    pub most_triangles: Option<f64>,
    /// Most that a file may hold, MB of a million bytes.
    pub most_mb: Option<f64>,
    /// Where the figures come from.
    pub source: String,
}

impl Fitted {
    /// It as a reading of the tube's size.
    pub fn as_reading(&self) -> Reading {
        Reading { nominal: self.outer_diameter, measured: self.measured }
    }
}

impl Way {
    /// Every way.
    pub const ALL: [Self; 3] = [Self::Resin, Self::Powder, Self::Filament];

    /// How the document writes it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Resin => "resin",
            Self::Powder => "powder",
            Self::Filament => "filament",
        }
    }
}

impl Clarity {
    /// Every clarity.
    pub const ALL: [Self; 3] = [Self::Opaque, Self::Translucent, Self::Clear];

    /// How the document writes it.
    pub fn word(self) -> &'static str {
        match self {
            Self::Opaque => "opaque",
            Self::Translucent => "translucent",
            Self::Clear => "clear",
        }
    }
}

impl Look {
    /// The colour as the document writes it: `#d8e6e2`.
    pub fn colour_word(&self) -> String {
        let [red, green, blue] = self.colour;
        format!("#{red:02x}{green:02x}{blue:02x}")
    }

    /// The colour of six hexadecimal digits after a number sign, or none.
    pub fn colour_of(word: &str) -> Option<[u8; 3]> {
        let digits =
            word.strip_prefix('#').filter(|it| it.len() == 6 && it.bytes().all(|it| it.is_ascii_hexdigit()))?;
        let all = u32::from_str_radix(digits, 16).ok()?;
        let [_, red, green, blue] = all.to_be_bytes();
        Some([red, green, blue])
    }
}

impl Material {
    /// Whether it breaks before it gives: less than 5 percent of elongation at break (common practice, no source).
    pub fn is_brittle(&self) -> bool {
        self.elongation_percent.is_some_and(|elongation| elongation < 5.0)
    }
}
