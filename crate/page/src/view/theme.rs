//! The picture's colours, light and dark: one ink on the page's own paper, clay tubes, steel fittings, teal coolant.

use super::stroke::INKS;

/// Colours, sRGB, each channel 0 to 1.
#[derive(Debug, Clone, PartialEq)]
pub struct Theme {
    /// Behind everything.
    pub paper: [f32; 3],
    /// One an [`super::stroke::Ink`], in its order, with opacity.
    pub inks: [[f32; 4]; INKS],
    /// Outlines of the selected run.
    pub chosen_outline: [f32; 4],
    /// Tubes.
    pub tube: [f32; 3],
    /// The selected tube.
    pub chosen: [f32; 3],
    /// Fittings.
    pub fitting: [f32; 3],
    /// Port faces.
    pub seat: [f32; 3],
    /// Keep-outs' faces, with opacity.
    pub keep_out: [f32; 4],
    /// Cut tube, and its hatching.
    pub cut: [[f32; 3]; 2],
    /// Cut fitting, and its hatching.
    pub cut_fitting: [[f32; 3]; 2],
    /// The bore, wetted.
    pub coolant: [f32; 3],
    /// The coolant as a solid of its own.
    pub liquid: [f32; 3],
    /// The edge of a wall that is seen through: what the paper is not, for there the light comes from far aside.
    pub verge: [f32; 3],
    /// Light from below.
    pub shade: [f32; 3],
}

impl Theme {
    /// The theme of that name, or none.
    pub fn named(name: &str) -> Option<Self> {
        match name {
            "light" => Some(Self::light()),
            "dark" => Some(Self::dark()),
            _ => None,
        }
    }

    /// Drawn on white paper.
    pub fn light() -> Self {
        let ink = 0x1d2a30;
        Self {
            paper: rgb(0xffffff),
            inks: [
                rgba(ink, 1.0),
                rgba(0x4c4640, 1.0),
                rgba(0x5b6a70, 0.20),
                rgba(0x5b6a70, 0.42),
                rgba(ink, 0.95),
                rgba(0x6a4b7a, 0.85),
                rgba(0xa8321e, 1.0),
                rgba(0x0f4a63, 1.0),
                rgba(0xeeeeeb, 1.0),
                rgba(0xffffff, 1.0),
            ],
            chosen_outline: rgba(0x0f4a63, 1.0),
            tube: rgb(0xd39a6a),
            chosen: rgb(0xf0cf9f),
            fitting: rgb(0x8d989e),
            seat: rgb(0xc3c7c5),
            keep_out: rgba(0x6a4b7a, 0.09),
            cut: [rgb(0xf7e6d2), rgb(0x8a5a34)],
            cut_fitting: [rgb(0xdfe4e6), rgb(0x5f6b72)],
            coolant: rgb(0x74b9bd),
            liquid: rgb(0x3fa3ab),
            verge: rgb(0x33474d),
            shade: rgb(0x8f8b86),
        }
    }

    /// Drawn on near-black paper; shadows are lighter than it, for nothing darker shows.
    pub fn dark() -> Self {
        let ink = 0xe9ecea;
        Self {
            paper: rgb(0x101415),
            inks: [
                rgba(0x05080a, 1.0),
                rgba(0x2a2019, 1.0),
                rgba(0x9fb0b6, 0.13),
                rgba(0x9fb0b6, 0.30),
                rgba(ink, 0.95),
                rgba(0xc3a3d6, 0.9),
                rgba(0xff8a70, 1.0),
                rgba(0x9be3f5, 1.0),
                rgba(0x1a2022, 1.0),
                rgba(0x101415, 1.0),
            ],
            chosen_outline: rgba(0x9be3f5, 1.0),
            tube: rgb(0xc98f60),
            chosen: rgb(0xf2d3a6),
            fitting: rgb(0x7f8b92),
            seat: rgb(0x66727a),
            keep_out: rgba(0xc3a3d6, 0.10),
            cut: [rgb(0xf3dfc8), rgb(0x7d5230)],
            cut_fitting: [rgb(0xb9c2c7), rgb(0x424c52)],
            coolant: rgb(0x56aab0),
            liquid: rgb(0x37a0a9),
            verge: rgb(0xdff1ee),
            shade: rgb(0x5d6366),
        }
    }
}

/// A colour as the shader reckons with light: linear.
pub fn linear(colour: [f32; 3]) -> [f32; 3] {
    colour.map(|channel| libm::powf(channel, 2.2))
}

fn rgb(hex: u32) -> [f32; 3] {
    [16, 8, 0].map(|shift| (hex >> shift & 0xff) as f32 / 255.0)
}

fn rgba(hex: u32, opacity: f32) -> [f32; 4] {
    let [red, green, blue] = rgb(hex);
    [red, green, blue, opacity]
}
