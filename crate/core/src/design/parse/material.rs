//! A printing material of the builder's own; figures that are left out or null are not known.

use super::super::making::{Material, Way};
use super::super::node::Node;
use super::super::place::Place;
use super::super::reader::Reader;
use super::process::one_of;
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
        cautions: cautions?,
        source: source?,
    })
}
