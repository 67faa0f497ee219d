//! The margins in words.

use super::super::figures::percent;
use super::super::letters::{quoted, tamed};
use super::super::words;
use super::{MarginRow, MarginsPlot, Standing};
use std::fmt::Write;

pub(super) fn tell(plot: &MarginsPlot) -> String {
    let mut told = format!("{}: share of each limit that is used.", tamed(&plot.title));
    if plot.rows.is_empty() {
        return told + " " + words::NOTHING + ".";
    }
    let over = plot.rows.iter().filter(|row| row.standing() == Standing::Over).count();
    // Writing into a string has no way to fail.
    let _ = match over {
        0 => write!(told, " None of {} is over its limit.", plot.rows.len()),
        1 => write!(told, " 1 of {} is over its limit.", plot.rows.len()),
        more => write!(told, " {more} of {} are over their limits.", plot.rows.len()),
    };
    for row in plot.rows.iter().take(super::MOST_ROWS) {
        let _ = write!(told, " {}: {}.", quoted(&row.label), share(row));
    }
    told
}

/// How much of the limit a row uses, in words: what stands beside its bar.
pub(super) fn share(row: &MarginRow) -> String {
    let mut told = percent(row.used);
    match row.standing() {
        Standing::Within => {}
        Standing::MayBeOver => told = format!("{told}, {}", words::MAY_BE_OVER),
        Standing::Over => told = format!("{} {told}", words::OVER),
    }
    if let Some([low, high]) = row.range {
        let _ = write!(told, " ({} to {})", percent(low), percent(high));
    }
    let text = tamed(&row.text);
    if text.is_empty() { told } else { format!("{told}: {text}") }
}
