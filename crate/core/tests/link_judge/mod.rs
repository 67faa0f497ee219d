//! A judge of shortest links: excludes, cell by cell, that there is any shorter one.
//!
//! A link is given whole by how far its first arc turns (`turn`) and in which plane round the first heading
//! (`plane`): the straight's line follows, and whether that line is a tangent of a circle through the far pose is two
//! numbers that must be nothing:
//!
//! - `fit`: the far pose's distance from the line, less 1 - cos of the angle between their directions, which is how far
//!   an arc of radius 1 leads away from its own tangent;
//! - `twist`: the triple product of line, far heading and what is between them: line and far arc lie in one plane.
//!
//! Neither has a kink or a pole anywhere, half turns and turns of nothing among them, so over a cell they change by no
//! more than their slopes allow. A cell where one of them stays off nothing, or where every link is longer, or runs
//! backwards, holds no shorter link. What is left is halved, and where it has become small, polished.
//! Nothing here is shared with the solver: neither its unknowns nor its vectors. Radius 1 throughout.

use core::f64::consts::PI;

/// The problem in the frame of the first pose: heading along z, at the origin.
pub struct Judge {
    gap: [f64; 3],
    heading: [f64; 3],
}

/// How small a cell becomes before it is polished: what it moves the first arc's end and turns its direction.
const SMALL: f64 = 5e-2;
/// Misses this small are links.
const MET: f64 = 1e-11;

#[derive(Clone, Copy)]
struct Cell {
    turn: f64,
    plane: f64,
    half: [f64; 2],
}

/// What the line out of the first arc sees of the far pose.
struct Line {
    /// Distance from the first arc's end to the far pose.
    reach: f64,
    /// The same along the line.
    along: f64,
    aside: f64,
    /// Angle between line and far heading, 0 to pi.
    bend: f64,
    fit: f64,
    twist: f64,
    /// Above nothing where the far arc is shorter than a half turn.
    side: f64,
    fit_slope: [f64; 2],
    twist_slope: [f64; 2],
}

fn dot(a: [f64; 3], b: [f64; 3]) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

fn cross(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

fn times(a: [f64; 3], f: f64) -> [f64; 3] {
    a.map(|x| x * f)
}

fn less(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
}

fn unit(a: [f64; 3]) -> [f64; 3] {
    times(a, 1.0 / dot(a, a).sqrt())
}

/// The most that turning the plane moves the first arc's end or its direction, for turns this near.
fn swing(turn: f64, near: f64) -> f64 {
    let (sin, cos) = libm::sincos(turn);
    (sin.abs().max(1.0 - cos) + near).min(2.0)
}

pub struct Verdict {
    /// A shorter link that was found.
    pub shorter: Option<f64>,
    /// Cells that were looked at.
    pub cells: usize,
    pub polished: usize,
}

impl Judge {
    /// From heading and place to heading and place, for arcs of radius 1.
    pub fn new(from: [[f64; 3]; 2], to: [[f64; 3]; 2]) -> Self {
        let z = unit(from[1]);
        let least = if z[0].abs() < 0.6 { [1.0, 0.0, 0.0] } else { [0.0, 1.0, 0.0] };
        let x = unit(cross(least, z));
        let y = cross(z, x);
        let seen = |v: [f64; 3]| [dot(v, x), dot(v, y), dot(v, z)];
        Self { gap: seen(less(to[0], from[0])), heading: unit(seen(to[1])) }
    }

    /// Looks for a link shorter than `length`.
    pub fn look(&self, length: f64) -> Verdict {
        let mut verdict = Verdict { shorter: None, cells: 0, polished: 0 };
        let mut open = Vec::new();
        let [turns, planes] = [6u32, 6];
        for i in 0..turns {
            for j in 0..planes {
                let half = [PI / f64::from(turns), PI / f64::from(planes)];
                let middle = |k: u32, half: f64| half * f64::from(2 * k + 1);
                open.push(Cell { turn: middle(i, half[0]), plane: middle(j, half[1]), half });
            }
        }
        while let Some(cell) = open.pop() {
            verdict.cells += 1;
            let line = self.line(cell.turn, cell.plane);
            let Some(spread) = self.open(&cell, &line, length) else { continue };
            if cell.half[0] + cell.half[1] * swing(cell.turn, cell.half[0]) < SMALL {
                verdict.polished += 1;
                if let Some(found) = self.polish(cell.turn, cell.plane)
                    && found < length
                {
                    verdict.shorter = Some(found);
                    return verdict;
                }
                continue;
            }
            let axis = usize::from(spread[1] > spread[0]);
            let mut half = cell.half;
            half[axis] /= 2.0;
            for way in [-1.0, 1.0] {
                let [turn, plane] = if axis == 0 {
                    [cell.turn + way * half[0], cell.plane]
                } else {
                    [cell.turn, cell.plane + way * half[1]]
                };
                open.push(Cell { turn, plane, half });
            }
        }
        verdict
    }

    fn line(&self, turn: f64, plane: f64) -> Line {
        let (sin, cos) = libm::sincos(turn);
        let (b, a) = libm::sincos(plane);
        let (out, round) = ([a, b, 0.0], [-b, a, 0.0]);
        let line = [a * sin, b * sin, cos];
        let back = [a * cos, b * cos, -sin];
        let end = [a * (1.0 - cos), b * (1.0 - cos), sin];
        let _ = out;
        let far = less(self.gap, end);
        let along = dot(far, line);
        let aside = less(far, times(line, along));
        let distance = dot(aside, aside).sqrt();
        let cosine = dot(line, self.heading);
        let square = cross(far, self.heading);
        let bend = libm::atan2(dot(cross(line, self.heading), cross(line, self.heading)).sqrt(), cosine);
        // Rates of the line and of what is between, by turn and by plane.
        let towards = if distance > 0.0 { times(aside, 1.0 / distance) } else { [0.0; 3] };
        let fit_slope = [
            -along * dot(towards, back) + dot(back, self.heading),
            dot(towards, round) * (cos - 1.0 - along * sin) + sin * dot(round, self.heading),
        ];
        let swing = cross(line, round);
        let twist_slope =
            [dot(back, square), sin * dot(round, square) - (1.0 - cos) * dot(swing, self.heading)];
        Line {
            reach: dot(far, far).sqrt(),
            along,
            aside: distance,
            bend,
            fit: distance - (1.0 - cosine),
            twist: dot(line, square),
            side: dot(aside, self.heading),
            fit_slope,
            twist_slope,
        }
    }

    /// None where no link shorter than `length` has its first arc in the cell; else what the cell's sides do to length.
    fn open(&self, cell: &Cell, line: &Line, length: f64) -> Option<[f64; 2]> {
        let [dt, dp] = cell.half;
        let (sin, cos) = libm::sincos(cell.turn);
        let lift = (sin.abs() + dt).min(1.0);
        let swing = (1.0 - cos + dt).min(2.0);
        // How far the line's direction and the first arc's end move by either side of the cell.
        let turned = dt + lift * dp;
        let moved = dt + swing * dp;
        let reach = line.reach + moved;
        let along = line.along.abs() + moved + reach * turned;
        let fit = [(along.min(reach) + 1.0) * dt, (swing + along.min(reach) * lift + lift) * dp];
        if line.fit.abs() > fit[0] + fit[1] {
            return None;
        }
        let twist = [reach * dt, (lift * reach + swing) * dp];
        if line.twist.abs() > twist[0] + twist[1] {
            return None;
        }
        let aside = (line.aside + fit[0] + fit[1] + turned).min(reach);
        // Rate of turn + along: aside by the turn, reach * lift by the plane.
        let spread = [(aside + 2.0) * dt, (reach * lift + 2.0 * lift) * dp];
        let long = line.side < -(reach + 1.0) * turned - moved;
        let bend = if long { 2.0 * PI - line.bend } else { line.bend };
        let least = (bend - turned).max(0.0);
        let shortest = cell.turn + line.along - (aside * dt + reach * lift * dp) + least - libm::sin(least);
        if shortest > length {
            return None;
        }
        // The straight is the way along less the sine of the far arc.
        let short_sine = if long { -libm::sin(line.bend) } else { -1.0 };
        if line.along + dt + reach * turned - short_sine.min(libm::sin(line.bend)) + turned < 0.0 {
            return None;
        }
        Some(spread)
    }

    /// The length of a link whose first arc is near; Gauss-Newton on both misses.
    fn polish(&self, mut turn: f64, mut plane: f64) -> Option<f64> {
        let (from, loose) = ([turn, plane], swing(turn, 0.0));
        let mut damping = 1e-6;
        let mut line = self.line(turn, plane);
        let size = |line: &Line| line.fit * line.fit + line.twist * line.twist;
        for _ in 0..40 {
            if size(&line) < MET * MET * 1e-4 {
                break;
            }
            let [f, c] = [line.fit_slope, line.twist_slope];
            let (a, b, d) = (f[0] * f[0] + c[0] * c[0], f[0] * f[1] + c[0] * c[1], f[1] * f[1] + c[1] * c[1]);
            let (p, q) = (f[0] * line.fit + c[0] * line.twist, f[1] * line.fit + c[1] * line.twist);
            let (a, d) = (a * (1.0 + damping) + 1e-30, d * (1.0 + damping) + 1e-30);
            let whole = a * d - b * b;
            let step = [(d * p - b * q) / whole, (a * q - b * p) / whole];
            if (turn - step[0] - from[0]).abs() + (plane - step[1] - from[1]).abs() * loose > 1.0 {
                return None;
            }
            let next = self.line(turn - step[0], plane - step[1]);
            if size(&next) < size(&line) {
                (turn, plane, line) = (turn - step[0], plane - step[1], next);
                damping *= 0.1;
            } else {
                damping *= 10.0;
                if damping > 1e6 {
                    break;
                }
            }
        }
        let scale = 1.0 + line.reach;
        if size(&line).sqrt() > MET * scale || turn < -1e-9 {
            return None;
        }
        if std::env::var("DBG").is_ok() {println!("turn {turn} plane {plane} fit {} twist {} along {} bend {} aside {} side {} scale {scale}",line.fit,line.twist,line.along,line.bend,line.aside,line.side);}
        // Where the far arc is a half turn both ways are one.
        let bends = [line.bend, 2.0 * PI - line.bend];
        let half = line.bend > PI - 1e-6;
        let fits = |index: usize| half || (index == 0) == (line.side >= 0.0);
        (0..2)
            .filter(|&index| fits(index) && line.along - libm::sin(bends[index]) >= -1e-9)
            .map(|index| turn + bends[index] + line.along - libm::sin(bends[index]))
            .min_by(f64::total_cmp)
    }
}
