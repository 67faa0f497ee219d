//! Names at the tops of upright lines: each like a flag to one side of its line, at heights at which no line runs through
//! a name.

/// Px between a line and its name, and between names.
const GAP: f64 = 4.0;

/// Where a name stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Flag {
    /// Left end of the name, px.
    pub left: f64,
    /// How many names high, 0 being the lowest.
    pub level: usize,
}

/// A flag for each line at `x` with a name of `width`, between the two ends; as low in all as can be. Where there is no
/// such arrangement, names stand one above the other inside the ends. At most six lines: all arrangements are tried.
pub(super) fn hoisted(lines: &[[f64; 2]], [left, right]: [f64; 2]) -> Vec<Flag> {
    let best = (0..1_u32 << lines.len().min(6))
        .filter_map(|sides| {
            let spans: Vec<[f64; 2]> =
                lines.iter().enumerate().map(|(place, line)| span(*line, sides >> place & 1 == 1)).collect();
            let inside = spans.iter().all(|[from, to]| *from >= left && *to <= right);
            let levels = if inside { levels(lines, &spans)? } else { return None };
            Some((levels.iter().copied().max().unwrap_or(0), spans, levels))
        })
        .min_by_key(|(most, ..)| *most);
    match best {
        Some((_, spans, levels)) => {
            spans.iter().zip(levels).map(|([left, _], level)| Flag { left: *left, level }).collect()
        }
        None => stacked(lines, [left, right]),
    }
}

fn span([x, width]: [f64; 2], to_the_left: bool) -> [f64; 2] {
    if to_the_left { [x - GAP - width, x - GAP] } else { [x + GAP, x + GAP + width] }
}

/// The level of each name: above every line that runs under it, beside no other on its own. `None` where that goes round
/// in a circle.
fn levels(lines: &[[f64; 2]], spans: &[[f64; 2]]) -> Option<Vec<usize>> {
    let under = |name: usize, line: usize| {
        name != line && lines[line][0] > spans[name][0] - GAP && lines[line][0] < spans[name][1] + GAP
    };
    let apart = |a: usize, b: usize| spans[a][1] + GAP < spans[b][0] || spans[b][1] + GAP < spans[a][0];
    let mut levels: Vec<Option<usize>> = vec![None; lines.len()];
    for _ in 0..lines.len() {
        // Of those whose lines underneath all have their level, the first.
        let next = (0..lines.len()).find(|&name| {
            levels[name].is_none() && (0..lines.len()).all(|line| !under(name, line) || levels[line].is_some())
        })?;
        let mut level = (0..lines.len()).filter(|&line| under(next, line)).filter_map(|line| levels[line]).max();
        level = Some(level.map_or(0, |below| below + 1));
        while (0..lines.len()).any(|other| levels[other] == level && !apart(next, other)) {
            level = level.map(|level| level + 1);
        }
        levels[next] = level;
    }
    levels.into_iter().collect()
}

fn stacked(lines: &[[f64; 2]], [left, right]: [f64; 2]) -> Vec<Flag> {
    let mut order: Vec<usize> = (0..lines.len()).collect();
    order.sort_by(|&a, &b| lines[b][0].total_cmp(&lines[a][0]));
    let mut flags = vec![Flag { left, level: 0 }; lines.len()];
    for (level, place) in order.into_iter().enumerate() {
        let [x, width] = lines[place];
        flags[place] = Flag { left: (x + GAP).min(right - width).max(left), level };
    }
    flags
}

#[cfg(test)]
mod tests {
    use super::{GAP, hoisted};

    /// No line that reaches up to its own name's level runs through another's name, and no two names touch.
    #[test]
    fn no_line_runs_through_a_name() {
        for lines in [
            vec![[100.0, 60.0], [130.0, 60.0], [160.0, 60.0]],
            vec![[380.0, 90.0], [385.0, 90.0], [390.0, 20.0]],
            vec![[100.0, 60.0], [100.0, 60.0]],
            vec![[20.0, 80.0], [200.0, 120.0], [210.0, 120.0], [390.0, 60.0]],
        ] {
            let flags = hoisted(&lines, [0.0, 400.0]);
            for (a, flag) in flags.iter().enumerate() {
                let to = flag.left + lines[a][1];
                assert!(flag.left >= 0.0 && to <= 400.0);
                for (b, other) in flags.iter().enumerate().filter(|(b, _)| *b != a) {
                    let x = lines[b][0];
                    let through = other.level >= flag.level && x > flag.left - GAP && x < to + GAP;
                    assert!(!through || x == lines[a][0], "{lines:?}: line {b} through name {a}");
                    let beside = other.level != flag.level || to < other.left || other.left + lines[b][1] < flag.left;
                    assert!(beside, "{lines:?}: names {a} and {b}");
                }
            }
        }
    }

    #[test]
    fn names_with_no_room_are_stacked_inside() {
        let flags = hoisted(&[[50.0, 90.0], [60.0, 90.0]], [0.0, 100.0]);
        assert_ne!(flags[0].level, flags[1].level);
        assert!(flags.iter().all(|flag| flag.left >= 0.0 && flag.left + 90.0 <= 100.0));
    }
}
