//! A number that a formula cannot take: what it is, what was given, and what would do.

use core::fmt;

/// A number outside the range for which a formula says anything.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutOfRange {
    /// What the number is, in the trade's words.
    pub what: &'static str,
    /// What was given.
    pub value: f64,
    /// Least that will do.
    pub min: f64,
    /// Most that will do; infinite where there is no such limit.
    pub max: f64,
    /// Unit of all three; empty for a bare number.
    pub unit: &'static str,
}

impl fmt::Display for OutOfRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { what, value, min, max, unit } = self;
        let space = if unit.is_empty() { "" } else { " " };
        if max.is_finite() {
            write!(f, "{what} is {value}{space}{unit}; it must be from {min} to {max}{space}{unit}")
        } else {
            write!(f, "{what} is {value}{space}{unit}; it must be {min}{space}{unit} or more")
        }
    }
}

impl std::error::Error for OutOfRange {}

/// The number, if it is finite and in `[min, max]`.
///
/// # Errors
/// [`OutOfRange`] with all of it; NaN is out of every range.
pub fn within(what: &'static str, value: f64, [min, max]: [f64; 2], unit: &'static str) -> Result<f64, OutOfRange> {
    if value.is_finite() && value >= min && value <= max {
        Ok(value)
    } else {
        Err(OutOfRange { what, value, min, max, unit })
    }
}

/// Least size of anything that has to have one: what is smaller is not a part but a slip of the finger, and quotients
/// of what is larger stay finite.
pub const LEAST: f64 = 1e-9;

/// The number, if it is finite and not below [`LEAST`].
///
/// # Errors
/// [`OutOfRange`] otherwise.
pub fn positive(what: &'static str, value: f64, unit: &'static str) -> Result<f64, OutOfRange> {
    within(what, value, [LEAST, f64::INFINITY], unit)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn says_what_would_do() {
        let told = |value, range| within("bore", value, range, "mm").map_err(|fault| fault.to_string());
        assert_eq!(told(8.0, [1.0, 100.0]), Ok(8.0));
        assert_eq!(told(0.5, [1.0, 100.0]), Err("bore is 0.5 mm; it must be from 1 to 100 mm".to_owned()));
        assert_eq!(told(0.5, [1.0, f64::INFINITY]), Err("bore is 0.5 mm; it must be 1 mm or more".to_owned()));
        assert!(told(f64::NAN, [1.0, f64::INFINITY]).is_err());
        assert!(told(f64::INFINITY, [1.0, f64::INFINITY]).is_err());
    }
}
