//! Where the bore holds liquid, as rain water lies between hills, bounded by the bore's own wall.
//!
//! Whatever runs out of the bore passes every disc across it on its way, and none lower than at the disc's lowest point,
//! r c below the axis, c being the sine of the angle between axis and upright; along these points there is a way. So liquid
//! stands up to the highest of them on the better of the two ways out, exactly. At a mouth that is the lip.

use super::body::Body;
use crate::layout::Vec3;
use core::f64::consts::PI;

/// A part of the bore that holds liquid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Pool {
    /// Arc lengths between which the bore's floor lies below the level, mm.
    pub span: [f64; 2],
    /// Arc length of the lowest place, mm.
    pub at: f64,
    /// Level above its floor there, mm; the highest ceiling above it where both ends are closed, so that nothing runs out.
    pub depth: f64,
    /// Length of bore that it would fill, mm.
    pub filled: f64,
}

/// A bore as liquid finds it.
#[derive(Debug, Clone)]
pub(super) struct Basin<'a> {
    body: &'a Body,
    /// Unit direction against the pull.
    up: Vec3,
    /// Heights of the axis at the discs, mm.
    axis: Vec<f64>,
    /// How far the wall lies below and above the axis there, mm.
    reach: Vec<f64>,
    /// Which ends are walled up.
    closed: [bool; 2],
}

impl<'a> Basin<'a> {
    /// With liquid falling against the unit direction `up`.
    pub fn of(body: &'a Body, up: &Vec3, closed: [bool; 2]) -> Self {
        let axis = body.discs.iter().map(|disc| disc.point.dot(up)).collect();
        let reach = body.discs.iter().map(|disc| disc.bore * slant(&disc.tangent, up)).collect();
        Self { body, up: *up, axis, reach, closed }
    }

    /// Turned over, both ends open.
    pub fn turned_over(mut self) -> Self {
        self.axis.iter_mut().for_each(|height| *height = -*height);
        Self { up: -self.up, closed: [false; 2], ..self }
    }

    /// Length of bore that all of it would fill, mm.
    pub fn filled(&self) -> f64 {
        let floors = self.floors();
        let levels = levels(&floors, self.closed);
        // Most stretches hold nothing, and this is asked at every look.
        let holds = |stretch: usize| levels[stretch] - floors[stretch].min(floors[stretch + 1]) > LEAST_DEPTH;
        let filled = (0..levels.len()).filter(|stretch| holds(*stretch)).map(|at| self.filled_in(at, levels[at]));
        filled.fold(0.0, |all, part| all + part)
    }

    /// The parts that hold liquid, in order.
    pub fn pools(&self) -> Vec<Pool> {
        let floors = self.floors();
        let levels = levels(&floors, self.closed);
        let ceilings = self.axis.iter().zip(&self.reach).map(|(axis, reach)| axis + reach);
        let highest = ceilings.fold(f64::NEG_INFINITY, f64::max);
        let mut pools: Vec<Pool> = Vec::new();
        let mut open = false;
        for i in 0..levels.len() {
            let [s0, s1] = [self.body.discs[i].s, self.body.discs[i + 1].s];
            let (level, [f0, f1]) = (levels[i], [floors[i], floors[i + 1]]);
            let (d0, d1) = (level - f0, level - f1);
            if d0.max(d1) <= LEAST_DEPTH {
                open = false;
                continue;
            }
            let crossing = |outside: f64, inside: f64| outside / (outside - inside);
            let from = if d0 < 0.0 { s0 + (s1 - s0) * crossing(d0, d1) } else { s0 };
            let to = if d1 < 0.0 { s1 + (s0 - s1) * crossing(d1, d0) } else { s1 };
            if !open || d0 <= 0.0 {
                pools.push(Pool { span: [from, to], at: from, depth: 0.0, filled: 0.0 });
            }
            open = d1 > 0.0;
            if let Some(pool) = pools.last_mut() {
                pool.span[1] = to;
                let (low, at) = if f0 <= f1 { (f0, s0) } else { (f1, s1) };
                let depth = level.min(highest) - low;
                if depth > pool.depth {
                    (pool.depth, pool.at) = (depth, at);
                }
                pool.filled += self.filled_in(i, level);
            }
        }
        pools
    }

    fn floors(&self) -> Vec<f64> {
        self.axis.iter().zip(&self.reach).map(|(axis, reach)| axis - reach).collect()
    }

    /// Length of the stated bore that a stretch holds up to a level, mm.
    ///
    /// Of a disc of radius r, its axis x r c below the level, the share that lies below it is (acos(-x) + x w) / pi with
    /// w = sqrt(1 - x^2); in a bend of curvature k, where an element's length is 1 - u k.e at u up the section, 2 r (k.e) w^3
    /// / (3 pi) comes to that. Both are integrated in closed form over the axis's height, which changes evenly in a stretch.
    fn filled_in(&self, stretch: usize, level: f64) -> f64 {
        let part = &self.body.stretches[stretch];
        let [a, b] = [self.axis[stretch], self.axis[stretch + 1]].map(|height| level - height);
        let slant = slant(&part.tangent, &self.up);
        let reach = part.bore * slant;
        let wide = 2.0 * part.bore / self.body.bore;
        let length = part.length * wide * wide;
        if a.max(b) <= -reach {
            return 0.0;
        }
        if a.min(b) >= reach {
            return length;
        }
        let uphill = if slant > 0.0 { part.curvature.dot(&self.up) / slant } else { 0.0 };
        let bent = 2.0 * part.bore * uphill / (3.0 * PI);
        length * mean_share([a, b], reach, bent)
    }
}

/// The levels to which liquid stands between neighbouring places, from the floors' heights there: the lower of the highest
/// on the two ways out. A closed end is a wall.
fn levels(floors: &[f64], closed: [bool; 2]) -> Vec<f64> {
    let wall = |closed: bool| if closed { f64::INFINITY } else { f64::NEG_INFINITY };
    let stretches = floors.len().saturating_sub(1);
    let mut levels = vec![0.0; stretches];
    let mut high = wall(closed[1]);
    for i in (0..stretches).rev() {
        high = high.max(floors[i + 1]);
        levels[i] = high;
    }
    let mut high = wall(closed[0]);
    for i in 0..stretches {
        high = high.max(floors[i]);
        levels[i] = high.min(levels[i]);
    }
    levels
}

/// Shallower than this nothing is held, mm: far above what rounding does, far below what tilts.
const LEAST_DEPTH: f64 = 1e-6;

/// Sine of the angle between two unit directions.
fn slant(tangent: &Vec3, up: &Vec3) -> f64 {
    let along = tangent.dot(up);
    (1.0 - along * along).max(0.0).sqrt()
}

/// Share of the section that lies below the level, on the mean while the level's height above the axis goes evenly from
/// one value to another; `bent` is the factor of w^3.
fn mean_share([a, b]: [f64; 2], reach: f64, bent: f64) -> f64 {
    if (b - a).abs() < 1e-6 {
        let middle = f64::midpoint(a, b);
        if reach <= middle.abs() {
            return if middle > 0.0 { 1.0 } else { 0.0 };
        }
        let x = middle / reach;
        let w = (1.0 - x * x).max(0.0).sqrt();
        return (PI / 2.0 + libm::asin(x) + x * w) / PI + bent * w * w * w;
    }
    let sum = |height: f64| {
        if height.abs() >= reach {
            let beyond = if height > 0.0 { height } else { 0.0 };
            return beyond + bent * reach * 3.0 * PI / 16.0 * height.signum();
        }
        let x = height / reach;
        let (w, angle) = ((1.0 - x * x).max(0.0).sqrt(), libm::asin(x));
        let plain = (x * (PI / 2.0 + angle) + w - w * w * w / 3.0) / PI;
        reach * (plain + bent * (x * (5.0 - 2.0 * x * x) * w + 3.0 * angle) / 8.0)
    };
    (sum(b) - sum(a)) / (b - a)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Sills of 40 and 60 about a low place of 10, and a closed end.
    #[test]
    fn liquid_stands_up_to_the_lower_sill_and_a_closed_end_is_a_wall() {
        let floors = [40.0, 10.0, 60.0];
        assert_eq!(levels(&floors, [false; 2]), [40.0, 40.0]);
        assert_eq!(levels(&floors, [true, false]), [60.0, 60.0]);
        assert_eq!(levels(&floors, [true; 2]), [f64::INFINITY; 2]);
        assert_eq!(levels(&[0.0, 50.0], [false; 2]), [0.0]);
        assert_eq!(levels(&[0.0, 50.0], [true, false]), [50.0]);
    }

    /// Against a sum over strips of the disc, level by level, each weighed by its length in the bend.
    #[test]
    fn the_share_of_a_section_below_a_level_is_what_its_strips_say() {
        let (radius, strips, steps) = (4.0, 2_000, 400);
        for (slant, uphill) in [(1.0, 0.0), (0.3, 0.0), (0.8, 0.1), (0.8, -0.15)] {
            let reach = radius * slant;
            for [a, b] in [[-5.0, 6.0], [-0.5, 0.5], [1.0, -7.0], [0.4, 0.4]] {
                let mut sum = 0.0;
                for step in 0..steps {
                    let height = a + (b - a) * (f64::from(step) + 0.5) / f64::from(steps);
                    for strip in 0..strips {
                        let u = radius * (2.0 * (f64::from(strip) + 0.5) / f64::from(strips) - 1.0);
                        if u * slant < height {
                            let width = 2.0 * (radius * radius - u * u).sqrt();
                            sum += width * (1.0 - u * uphill) * 2.0 * radius / f64::from(strips);
                        }
                    }
                }
                let expected = sum / f64::from(steps) / (PI * radius * radius);
                let found = mean_share([a, b], reach, 2.0 * radius * uphill / (3.0 * PI));
                assert!((found - expected).abs() < 2e-3, "{slant} {uphill} {a} {b}: {found} {expected}");
            }
        }
    }

    /// An upright bore is cut off at the level, which no wedge blurs.
    #[test]
    fn an_upright_section_is_below_the_level_or_is_not() {
        assert_eq!(mean_share([-3.0, 7.0], 0.0, 0.0), 0.7);
        assert_eq!(mean_share([2.0, 2.0], 0.0, 0.0), 1.0);
        assert_eq!(mean_share([-2.0, -2.0], 0.0, 0.0), 0.0);
    }
}
