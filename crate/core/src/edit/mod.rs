//! Edits of a design as a whole: a run copied, turned round or mirrored, a friend's measurements taken over; and what
//! sets two designs apart. All are pure functions of what the builder stated; none looks at a centreline, but for the length that a
//! cut run is turned round by.

mod copy;
mod difference;
mod mirror;
mod names;
mod ports;
mod request;
mod reverse;

pub use copy::copied;
pub use difference::difference;
pub use mirror::{Plane, mirrored};
pub use ports::with_ports_of;
pub use reverse::reversed;

use crate::centreline;
use crate::design::{Design, Refusal, canonical, parse};
use crate::layout;
use request::Request;

/// The design after an edit. `request` is JSON, one of
/// `{ "edit": "copy", "run": "pump to block" }`, `{ "edit": "reverse", "run": ... }`,
/// `{ "edit": "mirror", "run": ..., "across": "x", "at": 120 }` and `{ "edit": "ports", "design": "..." }`, where
/// `design` is another design's text.
///
/// # Errors
/// A text that is no design; a request that cannot be met: its `path` then points into the request.
pub fn edited(text: &str, request: &str) -> Result<Design, Refusal> {
    let design = parse(text)?;
    let after = match Request::read(request, &design)? {
        Request::Copy { run } => copied(&design, run)?,
        Request::Reverse { run } => {
            let mut after = design;
            let is_cut = !after.runs[run].cuts.is_empty();
            let drawn = || centreline::line_of(&after.runs[run], &layout::place(&after).runs[run]).line;
            let length = if is_cut { drawn().map(|line| line.length) } else { None };
            after.runs[run] = reversed(&after.runs[run], length, after.process.joint.length);
            after
        }
        Request::Mirror { run, plane } => mirrored(&design, run, plane)?,
        Request::Ports { other } => with_ports_of(&design, &other)?,
    };
    // Coordinates that an edit has moved must still be ones that could have been typed.
    parse(&canonical(&after)).map_err(|refusal| Refusal::at("", refusal.message))
}

/// A length or an angle without what rounding leaves behind: 12 decimals are a millionth of a nanometre, and where a
/// number has no room for so many, it stays as it is. Never minus zero.
fn tidy(value: f64) -> f64 {
    // 2^52: from there on numbers have no decimals left to round.
    let scaled = value * 1e12;
    let rounded = if scaled.abs() < 4_503_599_627_370_496.0 { libm::round(scaled) / 1e12 } else { value };
    rounded + 0.0
}

/// Degrees brought into (-180, 180].
fn within_half_turn(degrees: f64) -> f64 {
    let within = tidy(degrees - 360.0 * libm::round(degrees / 360.0));
    if within <= -180.0 { within + 360.0 } else { within }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounding_is_tidied_away_and_nothing_else() {
        assert_eq!(tidy(0.1 + 0.2), 0.3);
        assert_eq!(tidy(-1e-14).to_bits(), 0.0_f64.to_bits());
        assert_eq!(tidy(123_456.789), 123_456.789);
        assert_eq!(tidy(1.0 + 1e-11), 1.0 + 1e-11);
    }

    #[test]
    fn angles_come_within_half_a_turn() {
        let cases = [(-180.0, 180.0), (180.0, 180.0), (-810.0, -90.0), (0.0, 0.0), (540.0, 180.0), (359.0, -1.0)];
        for (given, within) in cases {
            assert_eq!(within_half_turn(given), within, "{given}");
        }
    }
}
