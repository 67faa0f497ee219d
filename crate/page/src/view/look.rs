//! How the tubes' material looks: its colour, and whether the bore shows through the wall.

use serde::Deserialize;

/// How much of what is behind a wall shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Clarity {
    /// Nothing.
    Opaque,
    /// Shades of it.
    Translucent,
    /// All of it.
    Clear,
}

/// A look as the scene has it.
#[derive(Debug, Clone, Copy, PartialEq, Deserialize)]
#[serde(try_from = "Stated")]
pub struct Look {
    /// How clear it is.
    pub clarity: Clarity,
    /// Its colour, sRGB, each channel 0 to 1.
    pub colour: [f32; 3],
}

#[derive(Deserialize)]
struct Stated {
    clarity: Clarity,
    colour: String,
}

impl TryFrom<Stated> for Look {
    type Error = String;

    fn try_from(stated: Stated) -> Result<Self, String> {
        let is_hex = |it: &&str| it.len() == 6 && it.bytes().all(|digit| digit.is_ascii_hexdigit());
        let digits = stated.colour.strip_prefix('#').filter(is_hex);
        let hex = digits.and_then(|it| u32::from_str_radix(it, 16).ok());
        let hex = hex.ok_or_else(|| format!("{} is no colour", stated.colour))?;
        let [_, red, green, blue] = hex.to_be_bytes();
        Ok(Self { clarity: stated.clarity, colour: [red, green, blue].map(|part| f32::from(part) / 255.0) })
    }
}

impl Look {
    /// Whether the bore shows through the wall.
    pub fn is_see_through(&self) -> bool {
        self.clarity != Clarity::Opaque
    }
}

/// A material's colour as it is drawn on paper of a colour: nearer to grey where it would otherwise be lost, in its own
/// outlines or in the paper.
pub fn on_paper(colour: [f32; 3], paper: [f32; 3]) -> [f32; 3] {
    const DARKEST: f32 = 0.30;
    const LIGHTEST: f32 = 0.90;
    let bright = brightness(colour);
    let least = if brightness(paper) < 0.5 { DARKEST + 0.08 } else { DARKEST };
    if bright < least {
        let share = (least - bright) / (1.0 - bright);
        return mixed(colour, [1.0; 3], share);
    }
    let share = if bright > LIGHTEST { 1.0 - LIGHTEST / bright } else { 0.0 };
    mixed(colour, [0.0; 3], share)
}

/// A share of the way from one colour to another.
pub fn mixed(from: [f32; 3], to: [f32; 3], share: f32) -> [f32; 3] {
    std::array::from_fn(|channel| from[channel] + (to[channel] - from[channel]) * share)
}

/// How bright a colour is, as sRGB codes it: the weights of ITU-R BT.709 on its coded channels.
fn brightness([red, green, blue]: [f32; 3]) -> f32 {
    0.2126 * red + 0.7152 * green + 0.0722 * blue
}
