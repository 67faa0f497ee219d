//! What a bonded joint is asked to hold.

use core::f64::consts::PI;

use super::strength::{allowable, side_load};
use crate::design::{Design, Run};
use crate::layout::PlacedRun;
use crate::strength::Wall;
use crate::tube::Joint;

/// MPa in a kPa.
const MPA: f64 = 1e-3;

/// A joint against the run's pressure and a crooked fit. Stresses MPa.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct JointLoad {
    /// The pressure, kPa: that of the test or of the work, whichever is more.
    pub pressure: f64,
    /// Shear in the bond by the pressure's end thrust, p pi/4 OD^2, over pi OD times the glued length.
    pub thrust: f64,
    /// Shear by the moment M of a crooked fit: a ring of radius r under M carries at most M / (pi r^2) along its edge, a
    /// handbook's line load of a ring of weld. None where the material's modulus is not known.
    pub bending: Option<f64>,
    /// How far the run's ports may be off together, mm.
    pub off: f64,
    /// The shear that is allowed: the bond's strength over the safety factor.
    pub allowed: f64,
    /// Hoop stress at the inside of the socket, should the coolant get there, by Lame.
    pub hoop: f64,
    /// The material's allowed stress; none where its strength is not known.
    pub hoop_allowed: Option<f64>,
}

impl JointLoad {
    /// Of a run's joint. None for sizes that are none.
    pub fn of(design: &Design, run: &Run, placed: &PlacedRun, joint: &Joint) -> Option<Self> {
        let (process, size) = (&design.process, &joint.size);
        let apart = (placed.start.mouth - placed.end.mouth).norm();
        let off = [placed.from, placed.to].map(|port| design.ports[port].measured_to).iter().sum();
        let pressure = design.working.test_kpa.max(design.working.pressure_kpa);
        let glued = size.length - size.tip - size.lead_in;
        let (outer, bore) = (2.0 * size.outer, 2.0 * size.bore);
        let thrust = pressure * MPA * PI / 4.0 * outer * outer / (PI * outer * glued);
        let bending = side_load(process, run, apart, off, libm::atan2(off, apart)).map(|stress| {
            // Of the section modulus pi (OD^4 - bore^4) / (32 OD).
            let [out, inn] = [outer * outer, bore * bore];
            let moment = stress * PI * (out + inn) * (out - inn) / (32.0 * outer);
            moment / (PI * size.outer * size.outer * glued)
        });
        let collar = size.collar() - size.marks[1].max(0.0);
        Some(Self {
            pressure,
            thrust,
            bending,
            off,
            allowed: process.joint.bond_mpa / process.factors.safety,
            hoop: Wall::under(pressure * MPA, 2.0 * collar, 2.0 * size.socket()).ok()?.hoop_at_bore,
            hoop_allowed: allowable(process).and_then(|allowable| allowable.stress().ok()),
        })
    }

    /// Both loads on the bond together, MPa.
    pub fn shear(&self) -> f64 {
        self.thrust + self.bending.unwrap_or(0.0)
    }
}
