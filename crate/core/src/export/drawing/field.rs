//! A view's own paper, and what stands on it besides the tube: its axes, its name, its scale.

use super::dimensions::WORDS;
use super::paper::{Anchor, FIGURES, Paper, Pen, shown, width_of};
use super::room::{Patch, Room};
use super::sheet::Area;
use super::view::{Flat, Placed};
use super::words;
use crate::layout::Vec3;
use crate::tongue::Tongue;

/// A view on the sheet with the paper that belongs to it.
pub(super) struct Field {
    pub placed: Placed,
    pub area: Area,
}

impl Field {
    /// How much of a length along a unit direction the view shows: 1 is all of it.
    pub fn shows(&self, direction: &Vec3) -> f64 {
        let [x, y] = self.placed.view.flat(direction);
        libm::hypot(x, y)
    }

    /// Whether a patch lies on the view's own paper.
    pub fn within(&self, patch: &Patch) -> bool {
        let reach = [0, 1].map(|axis| {
            let [along, aside] = patch.half;
            let [way, turned] = if axis == 0 { [patch.way[0], patch.way[1]] } else { [patch.way[1], patch.way[0]] };
            along * way.abs() + aside * turned.abs()
        });
        (0..2).all(|axis| {
            patch.middle[axis] - reach[axis] >= self.area.at[axis]
                && patch.middle[axis] + reach[axis] <= self.area.at[axis] + self.area.size[axis]
        })
    }
}

/// How a coordinate axis is marked beside a view.
pub(super) fn axes(paper: &mut Paper, room: &mut Room, field: &Field, corner: Flat, tongue: &Tongue) {
    let [across, up] = field.placed.view.axes;
    let long = 8.0;
    let ends = [([long, 0.0], across), ([0.0, -long], up)];
    for ([x, y], name) in ends {
        let end = [corner[0] + x, corner[1] + y];
        paper.line(Pen::Thin, corner, end);
        paper.arrow(end, [x / long, y / long]);
        let at = [end[0] + 0.18 * x, end[1] + 0.12 * y + if x > 0.0 { 0.9 } else { 0.0 }];
        paper.words(at, FIGURES, Anchor::Middle, 0.0, name);
    }
    let words = tongue.say(words::VIEW, &[tongue.word(field.placed.view.name), across, up]);
    paper.words([corner[0] + 3.0, corner[1] - 2.0], FIGURES, Anchor::Start, 0.0, &words);
    let wide = 4.0 + width_of(&words, FIGURES);
    room.take(&Patch::upright([corner[0] - 1.0, corner[1] - long - 4.0], [12.0, long + 5.0]), WORDS);
    room.take(&Patch::upright([corner[0], corner[1] - 5.5], [wide, 5.5]), WORDS);
}

/// Said of the isometric.
pub(super) fn scale_words(name: &str, scale: &str) -> String {
    format!("{name}, {scale}")
}

/// A scale in words: "1:2".
pub(super) fn ratio(of: u32) -> String {
    format!("1:{}", shown(f64::from(of)))
}
