//! How far two convex solids are from each other.

use super::Solid;
use super::body::box_gap;
use crate::layout::Vec3;

/// The gap between two solids.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SolidGap {
    /// Least distance, mm; 0 where they meet.
    pub distance: f64,
    /// The nearest point of each.
    pub points: [Vec3; 2],
}

/// Most steps; they end much sooner unless the solids just touch.
const STEPS: u32 = 2_000;
/// The distance is known this well when the steps end, mm.
const KNOWN_TO: f64 = 1e-6;

/// The gap, if below `within` mm.
///
/// Nearest points to and fro converge on the gap (Cheney and Goldstein 1959, Proc. AMS 10, 448), here with the momentum
/// of Beck and Teboulle (2009, SIAM J. Imaging Sci. 2, 183), restarted where it overshoots (O'Donoghue and Candes 2015,
/// Found. Comput. Math. 15, 715). Each step also has a proven least distance, between the planes across the present
/// gap that the solids do not pass; the steps end when both agree.
pub fn apart(a: &Solid, b: &Solid, within: f64) -> Option<SolidGap> {
    if box_gap(&a.bounds(), &b.bounds()) >= within {
        return None;
    }
    let mut x = a.nearest(&b.centre());
    let mut ahead = x;
    let mut momentum = 1.0_f64;
    let mut best = SolidGap { distance: f64::INFINITY, points: [x, x] };
    for _ in 0..STEPS {
        let other = b.nearest(&x);
        let across = x - other;
        let distance = across.norm();
        if distance < best.distance {
            best = SolidGap { distance, points: [x, other] };
        }
        if distance <= KNOWN_TO {
            break;
        }
        let direction = across / distance;
        let proven = (a.farthest(&-direction) - b.farthest(&direction)).dot(&direction);
        if proven >= within {
            return None;
        }
        if best.distance - proven <= KNOWN_TO {
            break;
        }
        let next = a.nearest(&b.nearest(&ahead));
        let overshot = (ahead - next).dot(&(next - x)) > 0.0;
        let grown = if overshot { 1.0 } else { (1.0 + (1.0 + 4.0 * momentum * momentum).sqrt()) / 2.0 };
        ahead = if overshot { next } else { next + (next - x) * ((momentum - 1.0) / grown) };
        (x, momentum) = (next, grown);
    }
    if best.distance <= KNOWN_TO {
        best.distance = 0.0;
    }
    (best.distance < within).then_some(best)
}
