//! The margins in words.

use super::super::figures::percent;
use super::super::letters::{quoted, tamed};
use super::super::words;
use super::{MarginRow, MarginsPlot, Standing};
use crate::tongue::Tongue;

pub(super) fn tell(plot: &MarginsPlot, tongue: &Tongue) -> String {
    let mut told = vec![tongue.say(words::MARGINS_ARE, &[&tamed(&plot.title)])];
    if plot.rows.is_empty() {
        told.push(format!("{}.", tongue.word(words::NOTHING)));
        return told.join(" ");
    }
    let over = plot.rows.iter().filter(|row| row.standing() == Standing::Over).count();
    let of = plot.rows.len().to_string();
    told.push(match over {
        0 => tongue.say(words::NONE_OVER, &[&of]),
        1 => tongue.say(words::ONE_OVER, &[&of]),
        more => tongue.say(words::MORE_OVER, &[&more.to_string(), &of]),
    });
    let rows = plot.rows.iter().take(super::MOST_ROWS);
    told.extend(rows.map(|row| format!("{}: {}.", quoted(&row.label, tongue), share(row, tongue))));
    told.join(" ")
}

/// How much of the limit a row uses, in words: what stands beside its bar.
fn share(row: &MarginRow, tongue: &Tongue) -> String {
    let mut told = beside(row, tongue);
    if let Some(range) = row.range {
        let [low, high] = range.map(|share| percent(share, tongue));
        told = format!("{told} {}", tongue.say(words::BETWEEN, &[&low, &high]));
    }
    let text = tamed(&row.text);
    if text.is_empty() { told } else { format!("{told}: {text}") }
}

/// The share, and whether that is over the limit.
pub(super) fn beside(row: &MarginRow, tongue: &Tongue) -> String {
    let used = percent(row.used, tongue);
    match row.standing() {
        Standing::Within => used,
        Standing::MayBeOver => format!("{used}, {}", tongue.word(words::MAY_BE_OVER)),
        Standing::Over => format!("{} {used}", tongue.word(words::OVER)),
    }
}
