//! Another builder's measurements in the place of one's own: the ports move, the shape stays tied to them.

use crate::design::{Design, Refusal};

/// The design with every port that `other` has under the same name where it is there: position, facing and how well it
/// was measured. Fittings, runs and everything else stay; tied coordinates follow their ports.
///
/// # Errors
/// Two designs that have no port in common.
pub fn with_ports_of(design: &Design, other: &Design) -> Result<Design, Refusal> {
    let mut after = design.clone();
    let mut taken = 0;
    for port in &mut after.ports {
        let Some(theirs) = other.ports.iter().find(|theirs| theirs.name == port.name) else { continue };
        (port.at, port.facing, port.measured_to) = (theirs.at, theirs.facing, theirs.measured_to);
        taken += 1;
    }
    if taken > 0 {
        return Ok(after);
    }
    let message = "The two designs have no port of the same name. Give the ports the same names in both first.";
    Err(Refusal::at("/design", message))
}
