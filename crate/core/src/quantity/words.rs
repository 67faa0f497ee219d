//! What is said about a quantity: its range in words, its unit in words, and what would work.

use super::{Kind, Quantity, Range};

impl Range {
    /// The range in words: "from 0.5 to 500 mm", "above 0 and below 180°".
    pub fn words(&self) -> String {
        let (min, max) = (plain(self.min), plain(self.max));
        match (self.min_open, self.max_open) {
            (false, false) => format!("from {min} to {}", self.with_unit(&max)),
            (true, false) => format!("above {min} and at most {}", self.with_unit(&max)),
            (false, true) => format!("at least {min} and below {}", self.with_unit(&max)),
            (true, true) => format!("above {min} and below {}", self.with_unit(&max)),
        }
    }

    /// A number with the range's unit: "12 mm", "15°".
    pub fn with_unit(&self, number: &str) -> String {
        match self.unit {
            "" => number.to_owned(),
            "°" => format!("{number}°"),
            unit => format!("{number} {unit}"),
        }
    }
}

impl Quantity {
    /// What would work: "Give a number in mm, such as 8."
    pub fn wanted(&self) -> String {
        match &self.kind {
            Kind::Number(Range { unit: "", example, .. }) => format!("Give a number, such as {}.", plain(*example)),
            Kind::Number(Range { unit, example, .. }) => {
                format!("Give a number in {}, such as {}.", unit_words(unit), plain(*example))
            }
            Kind::Text { most, .. } => format!("Give a text of at most {most} characters, in quotes."),
            Kind::Flag { .. } => "Give true or false.".to_owned(),
            Kind::Group => "Give all its keys.".to_owned(),
            Kind::Choice { of, .. } => format!("Give the name of a {of}, in quotes."),
        }
    }
}

/// A unit as read out: "degrees" for "°"; those that read as they are written stay.
pub fn unit_words(unit: &str) -> &str {
    match unit {
        "°" => "degrees",
        "°C" => "degrees Celsius",
        other => other,
    }
}

/// A number of a range as a person writes it: no exponent, no trailing zeros.
fn plain(value: f64) -> String {
    let digits = format!("{value}");
    if value.abs() < 10_000.0 || value.fract() != 0.0 {
        return digits;
    }
    let (sign, digits) = if value < 0.0 { ("-", &digits[1..]) } else { ("", &digits[..]) };
    let groups: Vec<&str> =
        digits.as_bytes().rchunks(3).rev().map(|group| std::str::from_utf8(group).unwrap_or("")).collect();
    format!("{sign}{}", groups.join(","))
}
