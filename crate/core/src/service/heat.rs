//! How warm the material may get.

use crate::design::{Loop, Material};
use crate::heat::{MARGIN, ServiceLimit, service_limit};

/// Kelvin below softening within which a tube must not be run.
pub const STOP_MARGIN: f64 = MARGIN[0];
/// Kelvin below softening within which it had better not be.
pub const CARE_MARGIN: f64 = MARGIN[1];

/// A material's limits. Temperatures degrees C.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heat {
    /// The warmest it must ever be, and what sets it.
    pub limit: ServiceLimit,
    /// The warmest that leaves the larger of the usual margins.
    pub easy: f64,
}

impl Heat {
    /// The limits of a material; none where its figures say nothing. A semi-crystalline one carries load above its glass
    /// transition, so that its deflection temperature alone counts (common practice, no source).
    pub fn of(material: &Material) -> Option<Self> {
        let glass = material.glass_c.filter(|_| !material.semicrystalline || material.hdt_180_c.is_none());
        let limit = service_limit(glass, material.hdt_180_c, STOP_MARGIN).ok().flatten()?;
        Some(Self { limit, easy: limit.limit - (CARE_MARGIN - STOP_MARGIN) })
    }
}

/// How much longer a run of a length, mm, is at the fault temperature than when it was fitted, mm; none where the
/// material's expansion is not known.
pub fn growth(length: f64, material: &Material, working: &Loop) -> Option<f64> {
    crate::heat::growth(length, material.expansion_um_per_m_k?, working.fault_c - working.cold_c).ok()
}
