//! The exact skin of a tube as a cloud of foot points: how far a mesh is from it, and it from a mesh.
//!
//! The centreline is sampled finely with a frame carried by the least turn from tangent to tangent, step by step, which
//! is the definition of not twisting. A point's distance from the skin is bounded by the distance from the skin's points straight above and
//! around its foot, so what is measured is never too small by more than rounding, and too large where the skin slants.

use super::Case;
use super::near::Near;
use tubewright_core::layout::{Vec3, perpendicular, reference_perpendicular};
use tubewright_core::mesh::Mesh;
use tubewright_core::tube::{Lobes, Profile, Section};

/// Way between feet, mm.
const STEP: f64 = 0.05;
/// Ways shorter than this from face to face stay on one turn of the tube, mm.
const SAME_TURN: f64 = 3.0;
/// Edge of the cells that faces are sorted into, mm.
const CELL: f64 = 1.5;
/// Of so many feet one is sorted into the cells; from it steps along the curve lead to a point's own.
const SORTED: usize = 20;

struct Foot {
    s: f64,
    point: Vec3,
    tangent: Vec3,
    bend: Vec3,
    across: [Vec3; 2],
}

pub struct Skin<'a> {
    profile: &'a Profile,
    span: [f64; 2],
    feet: Vec<Foot>,
    near: Near,
}

impl<'a> Skin<'a> {
    pub fn of(case: &'a Case) -> Self {
        let mut feet: Vec<Foot> = Vec::new();
        for piece in &case.line.pieces {
            let steps = (piece.length / STEP).ceil() as usize;
            for step in 0..=steps {
                let local = piece.length * step as f64 / steps as f64;
                let there = piece.at(local);
                let first =
                    feet.last().map_or(reference_perpendicular(&there.tangent), |foot| carried(foot, &there.tangent));
                let first = perpendicular(&there.tangent, &first);
                let across = [first, there.tangent.cross(&first)];
                feet.push(Foot {
                    s: piece.from + local,
                    point: there.point,
                    tangent: there.tangent,
                    bend: there.curvature,
                    across,
                });
            }
        }
        let sorted = feet.iter().enumerate().step_by(SORTED);
        let near = Near::of(4.0, sorted.map(|(index, foot)| (index as u32, foot.point, foot.point)));
        Self { profile: &case.profile, span: case.profile.span(), feet, near }
    }

    /// Largest distance of the mesh from the exact skin, mm: of corners, of points on sides and of points inside faces.
    pub fn farthest_of(&self, mesh: &Mesh) -> f64 {
        let (mut farthest, mut last) = (0.0_f64, None::<(Vec3, usize)>);
        for [a, b, c] in faces(mesh) {
            let long = (b - a).norm().max((c - a).norm()).max((c - b).norm());
            let parts = ((long / 4.0).ceil() as usize * 4).clamp(4, 24);
            // Faces come in order along a ring, so one near the last looked up lies on the same turn of the tube.
            let middle = (a + b + c) / 3.0;
            let near = match last.filter(|(there, _)| (there - middle).norm() < SAME_TURN) {
                Some(near) => near,
                None => match self.foot_near(&middle) {
                    Some(foot) => (middle, foot),
                    None => return f64::INFINITY,
                },
            };
            last = Some(near);
            let first = near.1;
            for i in 0..=parts {
                for j in 0..=parts - i {
                    let (u, v) = (i as f64 / parts as f64, j as f64 / parts as f64);
                    farthest = self.farther(farthest, &(a + (b - a) * u + (c - a) * v), first);
                }
            }
        }
        farthest
    }

    /// Largest distance of points of the exact skin from the mesh, mm; all that is beyond `reach` counts as that far.
    pub fn farthest_from(&self, mesh: &Mesh, reach: f64) -> f64 {
        let faces = faces(mesh);
        let mut boxed = Vec::new();
        for (index, face) in faces.iter().enumerate() {
            put_boxes(&mut boxed, index as u32, face);
        }
        let near = Near::of(CELL, boxed.into_iter());
        let mut farthest = 0.0_f64;
        let [from, to] = self.span;
        let on_it = self.feet.iter().enumerate().filter(|(_, foot)| foot.s >= from && foot.s <= to);
        for (index, foot) in on_it.step_by(13) {
            for look in 0..16 {
                let angle = (look as f64 + 0.137 * index as f64) / 16.0 * core::f64::consts::TAU;
                let (sin, cos) = libm::sincos(angle);
                let out = foot.across[0] * cos + foot.across[1] * sin;
                for radius in [self.profile.outer_at(foot.s, angle), self.profile.bore_at(foot.s, angle)] {
                    let point = foot.point + out * radius;
                    let there = near.about(&point, reach);
                    let mut distance = reach;
                    for face in there {
                        distance = distance.min(to_triangle(&point, &faces[face as usize]));
                        if distance <= farthest {
                            break;
                        }
                    }
                    farthest = farthest.max(distance);
                }
            }
        }
        farthest
    }

    /// The foot nearest to a point among those sorted into cells.
    fn foot_near(&self, point: &Vec3) -> Option<usize> {
        let square = |index: u32| (self.feet[index as usize].point - point).norm_squared();
        let about = self.near.about(point, self.profile.largest_outer() + 2.0);
        about.into_iter().min_by(|a, b| square(*a).total_cmp(&square(*b))).map(|index| index as usize)
    }

    /// The larger of `farthest` and how far a point is from the skin at most, mm, from a foot near its own on.
    fn farther(&self, farthest: f64, point: &Vec3, first: usize) -> f64 {
        let mut nearest = first;
        for _ in 0..8 {
            let foot = &self.feet[nearest];
            let off = point - foot.point;
            let along = off.dot(&foot.tangent) / (1.0 - off.dot(&foot.bend));
            let next = self.at(foot.s + along);
            if next.abs_diff(nearest) <= 1 {
                nearest = next;
                break;
            }
            nearest = next;
        }
        let foot = &self.feet[nearest];
        let off = point - foot.point;
        // One step along the curve to the true foot, where the point is straight across.
        let along = off.dot(&foot.tangent) / (1.0 - off.dot(&foot.bend));
        let s = foot.s + along;
        let across = off - foot.tangent * off.dot(&foot.tangent);
        let radius = across.norm();
        let angle = libm::atan2(across.dot(&foot.across[1]), across.dot(&foot.across[0]));
        let lean = 1.0 - across.dot(&foot.bend);
        // Whatever is near enough straight above needs no closer look.
        let straight =
            (self.profile.outer_at(s, angle) - radius).abs().min((self.profile.bore_at(s, angle) - radius).abs());
        if straight <= farthest && (self.span[0]..=self.span[1]).contains(&s) {
            return farthest;
        }
        let mut distance = self.skins(s, radius, angle, lean);
        // On the end faces, between the skins' edges.
        for end in self.span {
            let [outer, bore] = [self.profile.outer_at(end, angle), self.profile.bore_at(end, angle)];
            let beyond = (bore - radius).max(radius - outer).max(0.0);
            distance = distance.min(libm::hypot(s - end, beyond));
        }
        farthest.max(distance)
    }

    /// The foot nearest to an arc length.
    fn at(&self, s: f64) -> usize {
        let next = self.feet.partition_point(|foot| foot.s < s).clamp(1, self.feet.len() - 1);
        if s - self.feet[next - 1].s < self.feet[next].s - s { next - 1 } else { next }
    }

    /// Distance from the nearer of the skins' points above and around a foot.
    fn skins(&self, s: f64, radius: f64, angle: f64, lean: f64) -> f64 {
        let outer = waved((&self.profile.outer, self.profile.lobes.as_ref()), s, radius, angle, lean);
        outer.min(waved((&self.profile.bore, self.profile.bore_lobes.as_ref()), s, radius, angle, lean))
    }
}

/// Distance from one skin: straight above a foot, then along the skin's own slope both ways.
fn waved((section, lobes): (&Section, Option<&Lobes>), s: f64, radius: f64, angle: f64, lean: f64) -> f64 {
    let Some(lobes) = lobes else { return slanted(section, s, radius, lean) };
    let at = |s: f64, angle: f64| {
        let (half, phase) = lobes.wave(s);
        section.radius(s) - half * (1.0 - libm::cos(f64::from(lobes.count) * angle - phase))
    };
    let straight = (at(s, angle) - radius).abs();
    if lobes.half.radius(s) == 0.0 {
        return straight.min(slanted(section, s, radius, lean));
    }
    let mut best = straight;
    for k in -4..=4 {
        for l in -4..=4 {
            let (ds, da) = (straight * f64::from(k) / 8.0, straight * f64::from(l) / 8.0 / radius);
            let other = at(s + ds, angle + da);
            best = best.min(libm::hypot(libm::hypot(ds * lean, radius * da), other - radius));
        }
    }
    if lobes.count == 1 {
        // Along a joint's steps the wave is a slant at each angle, which a single lobe hardly leans.
        let here = Section::breaks_of([section, &lobes.half]).into_iter().map(|s| [s, at(s, angle)]);
        best = best.min(slanted(&Section { breaks: here.collect() }, s, radius, lean));
    }
    best
}

/// Boxes that hold a face: of its parts, where it is long, so that they fill few cells.
fn put_boxes(boxes: &mut Vec<(u32, Vec3, Vec3)>, index: u32, &[a, b, c]: &[Vec3; 3]) {
    let (low, high) = (a.inf(&b).inf(&c), a.sup(&b).sup(&c));
    if (high - low).amax() <= 2.0 * CELL {
        boxes.push((index, low, high));
        return;
    }
    // Halved across its longest side.
    let sides = [(a, b, c), (b, c, a), (c, a, b)];
    let (p, q, apex) = sides.into_iter().fold(sides[0], |longest, side| {
        if (side.1 - side.0).norm() > (longest.1 - longest.0).norm() { side } else { longest }
    });
    let middle = (p + q) / 2.0;
    put_boxes(boxes, index, &[p, middle, apex]);
    put_boxes(boxes, index, &[middle, q, apex]);
}

/// The first direction across a foot, turned the least way that takes the foot's tangent to the next. Projecting it
/// instead would turn it about the travel by up to a quarter of the square of each step's turn, which adds up.
fn carried(foot: &Foot, tangent: &Vec3) -> Vec3 {
    let first = &foot.across[0];
    first - (foot.tangent + tangent) * (first.dot(tangent) / (1.0 + foot.tangent.dot(tangent)))
}

/// The corners of a mesh's faces.
fn faces(mesh: &Mesh) -> Vec<[Vec3; 3]> {
    let corner =
        |index: u32| Vec3::from_iterator(mesh.positions[index as usize * 3..][..3].iter().map(|x| f64::from(*x)));
    mesh.indices.as_chunks::<3>().0.iter().map(|face| face.map(corner)).collect()
}

/// Distance from a section, as a chain of slants along the tube.
fn slanted(section: &Section, s: f64, radius: f64, lean: f64) -> f64 {
    let mut best = f64::INFINITY;
    for pair in section.breaks.windows(2) {
        let [[s0, r0], [s1, r1]] = [pair[0], pair[1]];
        if s0 > s + 2.0 || s1 < s - 2.0 {
            continue;
        }
        let (x, y) = ((s1 - s0) * lean, r1 - r0);
        let t = (((s - s0) * lean * x + (radius - r0) * y) / (x * x + y * y)).clamp(0.0, 1.0);
        best = best.min(libm::hypot((s - s0) * lean - t * x, radius - r0 - t * y));
    }
    best
}

/// Distance of a point from a triangle, by the regions of its plane (Ericson 2005, Real-Time Collision Detection, 5.1.5).
fn to_triangle(p: &Vec3, [a, b, c]: &[Vec3; 3]) -> f64 {
    let (ab, ac, ap) = (b - a, c - a, p - a);
    let (d1, d2) = (ab.dot(&ap), ac.dot(&ap));
    let (bp, cp) = (p - b, p - c);
    let (d3, d4, d5, d6) = (ab.dot(&bp), ac.dot(&bp), ab.dot(&cp), ac.dot(&cp));
    let (va, vb, vc) = (d3 * d6 - d5 * d4, d5 * d2 - d1 * d6, d1 * d4 - d3 * d2);
    let nearest = if d1 <= 0.0 && d2 <= 0.0 {
        *a
    } else if d3 >= 0.0 && d4 <= d3 {
        *b
    } else if vc <= 0.0 && d1 >= 0.0 && d3 <= 0.0 {
        a + ab * (d1 / (d1 - d3))
    } else if d6 >= 0.0 && d5 <= d6 {
        *c
    } else if vb <= 0.0 && d2 >= 0.0 && d6 <= 0.0 {
        a + ac * (d2 / (d2 - d6))
    } else if va <= 0.0 && d4 >= d3 && d5 >= d6 {
        b + (c - b) * ((d4 - d3) / ((d4 - d3) + (d5 - d6)))
    } else {
        let sum = va + vb + vc;
        a + ab * (vb / sum) + ac * (vc / sum)
    };
    (p - nearest).norm()
}
