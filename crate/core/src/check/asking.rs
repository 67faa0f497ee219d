//! A check, and what of a tube its answer hangs on: what is the same in two variants of a design need not be asked twice.

use super::{Finding, Subject};
use crate::distance::Budget;

/// A question answered.
#[derive(Debug, Clone, Copy)]
pub struct Check {
    /// Asks it. Those that look at pairs of things take each look off the budget, which those before them have left: so
    /// all of them hang on the same, and are asked together or not at all.
    pub ask: fn(Subject<'_>, &mut Budget) -> Vec<Finding>,
    /// What its findings hang on, besides all that variants have in common.
    pub hangs_on: HangsOn,
}

/// Which of the things that variants of a design differ in an answer hangs on. Saying too much costs time; saying too
/// little tells of one variant what is true of another.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct HangsOn {
    /// The runs' outer diameters.
    pub outer_diameters: bool,
    /// The runs' bores.
    pub bores: bool,
    /// Any figure of the material.
    pub material: bool,
}

impl HangsOn {
    /// On everything: what a check says of which nothing else is known.
    pub const ALL: Self = Self { outer_diameters: true, bores: true, material: true };
    /// On where the outer skin lies.
    pub const SKIN: Self = Self { bores: false, material: false, ..Self::ALL };
    /// On how wide the way through is.
    pub const BORES: Self = Self { outer_diameters: false, material: false, ..Self::ALL };
    /// On what coolant flows through: the bores, and how rough the material prints them.
    pub const FLOW: Self = Self { outer_diameters: false, ..Self::ALL };
    /// On both sides of the wall, whatever it is made of.
    pub const SIZES: Self = Self { material: false, ..Self::ALL };
    /// On what the tube is made of, whatever its sizes.
    pub const MATERIAL: Self = Self { outer_diameters: false, bores: false, ..Self::ALL };
}
