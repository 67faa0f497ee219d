//! A printing material of the builder's own; figures that are left out or null are not known.

use super::super::making::{Clarity, Look, Material, Way};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::{Keys, Reader};
use super::super::wording::quoted;
use super::process::one_of;
use crate::presets;
use crate::quantity as q;

const KEYS: &[&str] = &[
    "name",
    "way",
    "density_g_per_cm3",
    "glass_c",
    "semicrystalline",
    "hdt_045_c",
    "hdt_180_c",
    "strength_mpa",
    "modulus_mpa",
    "elongation_percent",
    "expansion_um_per_m_k",
    "water_uptake_percent",
    "across_layers",
    "tight_from_mm",
    "roughness_um",
    "price_per_l",
    "look",
    "cautions",
    "source",
];

/// A material.
pub(super) fn read(reader: &mut Reader, node: &Node, place: &Place<'_>) -> Option<Material> {
    let keys = reader.keys(node, place, "A material", KEYS)?;
    let name = reader.text(&keys, &q::MATERIAL_NAME);
    let way = one_of(reader, &keys, &q::MATERIAL_WAY, &Way::ALL.map(|way| (way.word(), way)));
    let density = reader.number(&keys, &q::MATERIAL_DENSITY);
    let semicrystalline = reader.flag(&keys, &q::SEMICRYSTALLINE);
    let mut known = |quantity| reader.known_number(&keys, quantity);
    let [glass, hdt_045, hdt_180] = [&q::GLASS, &q::HDT_045, &q::HDT_180].map(&mut known);
    let [strength, modulus, elongation] = [&q::STRENGTH, &q::MODULUS, &q::ELONGATION].map(&mut known);
    let [expansion, water_uptake, across_layers] = [&q::EXPANSION, &q::WATER_UPTAKE, &q::ACROSS_LAYERS].map(&mut known);
    let [tight_from, roughness, price] = [&q::TIGHT_FROM, &q::ROUGHNESS, &q::PRICE].map(&mut known);
    let look = look(reader, &keys, name.as_deref());
    let cautions = reader.text(&keys, &q::CAUTIONS);
    let source = reader.text(&keys, &q::MATERIAL_SOURCE);
    Some(Material {
        name: name?,
        way: way?,
        density_g_per_cm3: density?,
        glass_c: glass?,
        semicrystalline: semicrystalline?,
        hdt_045_c: hdt_045?,
        hdt_180_c: hdt_180?,
        strength_mpa: strength?,
        modulus_mpa: modulus?,
        elongation_percent: elongation?,
        expansion_um_per_m_k: expansion?,
        water_uptake_percent: water_uptake?,
        across_layers: across_layers?,
        tight_from_mm: tight_from?,
        roughness_um: roughness?,
        price_per_l: price?,
        look: look?,
        cautions: cautions?,
        source: source?,
    })
}

/// How it looks. Left out, as the shipped material of its name does: a design of before materials had looks is drawn
/// as one of today.
fn look(reader: &mut Reader, material: &Keys<'_, '_>, name: Option<&str>) -> Option<Option<Look>> {
    let place = material.place.key("look");
    let node = match material.get("look") {
        None => return Some(presets::look_of(name?)),
        Some(Node::Null) => return Some(None),
        Some(node) => node,
    };
    let keys = reader.keys(node, &place, "A look", &["clarity", "colour"])?;
    let words = Clarity::ALL.map(|clarity| (clarity.word(), clarity));
    let clarity = one_of(reader, &keys, &q::LOOK_CLARITY, &words);
    let colour = reader.text(&keys, &q::LOOK_COLOUR).and_then(|word| {
        let colour = Look::colour_of(&word);
        if colour.is_none() {
            let message = format!(
                "{}: {} is no colour. Give six hexadecimal digits after a number sign, such as \"#d8e6e2\".",
                q::LOOK_COLOUR.label,
                quoted(&word)
            );
            reader.refuse(&place.key("colour"), message);
        }
        colour
    });
    Some(Some(Look { clarity: clarity?.unwrap_or(Clarity::Opaque), colour: colour? }))
}
