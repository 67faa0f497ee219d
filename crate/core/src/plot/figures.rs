//! Numbers as they are shown.

use super::words;
use crate::tongue::Tongue;

/// A number with four significant digits and no idle zeros; very large and very small ones with a power of ten.
/// Not a number is said in words, for a text alternative is told before anything is refused.
pub(super) fn figure(value: f64, tongue: &Tongue) -> String {
    if value.is_finite() { tongue.number(&digits(value)) } else { tongue.word(words::NO_NUMBER).into() }
}

fn digits(value: f64) -> String {
    let size = value.abs();
    if size == 0.0 {
        return "0".into();
    }
    if !(1e-3..1e6).contains(&size) {
        let text = format!("{value:.3e}");
        let (digits, power) = text.split_once('e').unwrap_or((&text, "0"));
        return signed(format!("{}e{power}", idle_off(digits)));
    }
    let decimals = (3.0 - libm::floor(libm::log10(size))).clamp(0.0, 7.0) as usize;
    let text = format!("{value:.decimals$}");
    signed(idle_off(&text).into())
}

/// A share as whole percent, with one decimal below ten and next to the limit, where 99.9 is not 100.
pub(super) fn percent(share: f64, tongue: &Tongue) -> String {
    let value = share * 100.0;
    if value.abs() < 10.0 || (value - 100.0).abs() < 2.0 {
        format!("{} %", figure(libm::round(value * 10.0) / 10.0, tongue))
    } else {
        format!("{} %", figure(libm::round(value), tongue))
    }
}

/// A number as a tick of an axis with that step.
pub(super) fn tick(value: f64, step: f64) -> String {
    if !(1e-3..1e6).contains(&step.abs()) || value.abs() >= 1e6 {
        return digits(value);
    }
    let decimals = (-libm::floor(libm::log10(step) + 1e-9)).max(0.0) as usize;
    // Adding zero turns a negative zero into a plain one.
    signed(format!("{:.decimals$}", value + 0.0))
}

fn idle_off(text: &str) -> &str {
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { text }
}

/// A minus sign that is as wide as a figure, instead of a hyphen.
fn signed(text: String) -> String {
    match text.strip_prefix('-') {
        Some(rest) => format!("−{rest}"),
        None => text,
    }
}
