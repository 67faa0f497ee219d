//! Where a point of a tube's skin is along the tube: its nearest point on the centreline's polyline.

use tubewright_core::layout::Vec3;

use super::scene::Run;

/// How far a polyline's arc lengths may be from its curve's, mm, for the lobes' sake.
const LOBED_WITHIN: f64 = 0.5;

/// A tube's centreline as the scene gives it, ready to be asked.
#[derive(Debug, Clone)]
pub struct Guide {
    points: Vec<Vec3>,
    /// Unit direction of each segment.
    directions: Vec<Vec3>,
    /// Length of each segment.
    lengths: Vec<f64>,
    /// Arc length at which each segment starts, and the whole length at the end.
    starts: Vec<f64>,
    /// Unit tangent at each point.
    tangents: Vec<Vec3>,
    /// Farthest that a point of a plain tube's skin can be from its centreline.
    reach: f64,
    /// Arc lengths between which the skin has lobes.
    lobed: Option<[f64; 2]>,
}

/// What is known from the point asked before.
#[derive(Debug, Clone, Copy, Default)]
pub struct Hint {
    /// The segment that it was on.
    pub segment: usize,
    /// How far from the centreline the skin has been found to be, mm: a dressed body is thicker than its tube.
    pub reach: f64,
}

/// A place on the centreline.
#[derive(Debug, Clone, Copy)]
pub struct Place {
    /// Which segment of the polyline.
    pub segment: usize,
    /// Arc length from the start, mm.
    pub along: f64,
    /// Unit vector from the centreline to the asked point, square to the tangent; zero for a point on it.
    pub radial: Vec3,
    /// Distance from the centreline, mm.
    pub distance: f64,
    /// Unit tangent.
    pub tangent: Vec3,
}

impl Guide {
    /// The guide of a run; none where its centreline is a point.
    pub fn of(run: &Run) -> Option<Self> {
        Some(Self::new(&run.centreline, run.outer_diameter)?.with_lobes(run.lobed))
    }

    /// A guide along `points` for a tube of `outer_diameter`; none where fewer than two points differ.
    pub fn new(points: &[[f64; 3]], outer_diameter: f64) -> Option<Self> {
        let mut kept: Vec<Vec3> = Vec::with_capacity(points.len());
        for point in points.iter().map(|point| Vec3::from(*point)) {
            if kept.last().is_none_or(|last| (point - last).norm() > 1e-9) {
                kept.push(point);
            }
        }
        if kept.len() < 2 {
            return None;
        }
        let spans: Vec<Vec3> = kept.windows(2).map(|pair| pair[1] - pair[0]).collect();
        let lengths: Vec<f64> = spans.iter().map(Vec3::norm).collect();
        let directions: Vec<Vec3> = spans.iter().zip(&lengths).map(|(span, length)| span / *length).collect();
        let mut starts = vec![0.0];
        for length in &lengths {
            starts.push(starts[starts.len() - 1] + length);
        }
        let last = directions.len() - 1;
        let tangents = (0..kept.len())
            .map(|point| {
                let (before, after) = (point.saturating_sub(1), point.min(last));
                // Beside a chord of an arc a much longer segment is a straight, and the tangent there is its own.
                if lengths[before] > 3.0 * lengths[after] {
                    return directions[before];
                }
                if lengths[after] > 3.0 * lengths[before] {
                    return directions[after];
                }
                (directions[before] + directions[after]).try_normalize(1e-9).unwrap_or(directions[after])
            })
            .collect();
        Some(Self {
            points: kept,
            directions,
            lengths,
            starts,
            tangents,
            reach: 0.55 * outer_diameter + 0.2,
            lobed: None,
        })
    }

    /// The same for a tube whose skin has lobes between two arc lengths, mm.
    pub fn with_lobes(self, lobed: Option<[f64; 2]>) -> Self {
        Self { lobed, ..self }
    }

    /// Whether the skin has lobes anywhere.
    pub fn is_lobed(&self) -> bool {
        self.lobed.is_some()
    }

    /// Whether the skin has lobes at an arc length; the polyline's is a little less than the curve's.
    pub fn is_lobed_at(&self, along: f64) -> bool {
        self.lobed.is_some_and(|[from, to]| along > from - LOBED_WITHIN && along < to + LOBED_WITHIN)
    }

    /// Length of the polyline, mm.
    pub fn length(&self) -> f64 {
        self.starts[self.lengths.len()]
    }

    /// Number of segments, at least one.
    pub fn segments(&self) -> usize {
        self.lengths.len()
    }

    /// Length of one segment, mm.
    pub fn segment_length(&self, segment: usize) -> f64 {
        self.lengths[segment]
    }

    /// Each point of the polyline: arc length, the point, the tangent there.
    pub fn stations(&self) -> impl Iterator<Item = (f64, Vec3, Vec3)> + '_ {
        self.starts
            .iter()
            .zip(&self.points)
            .zip(&self.tangents)
            .map(|((along, point), tangent)| (*along, *point, *tangent))
    }

    /// Each segment: its two ends and its unit direction.
    pub fn spans(&self) -> impl Iterator<Item = (Vec3, Vec3, Vec3)> + '_ {
        self.points.windows(2).zip(&self.directions).map(|(pair, direction)| (pair[0], pair[1], *direction))
    }

    /// The point and unit tangent at an arc length within one segment.
    pub fn on(&self, segment: usize, along: f64) -> (Vec3, Vec3) {
        let far = along - self.starts[segment];
        (self.points[segment] + self.directions[segment] * far, self.tangent(segment, far))
    }

    /// The place nearest to `point`. Meshes go ring by ring, so the search starts at `hint`, the segment of the point
    /// before, and looks at the whole centreline only where that ends too far away.
    pub fn nearest(&self, point: &Vec3, hint: usize) -> Place {
        self.nearest_after(point, &mut Hint { segment: hint, reach: 0.0 })
    }

    /// As [`Self::nearest`], for many points in a row: `hint` is carried from each to the next.
    pub fn nearest_after(&self, point: &Vec3, hint: &mut Hint) -> Place {
        let reach = self.reach.max(hint.reach);
        let mut middle = hint.segment.min(self.segments() - 1);
        let mut best = self.closest_of(point, middle, 2);
        // Most points are where the one before was: then no better one is near.
        while best.0 != middle {
            middle = best.0;
            let next = self.closest_of(point, middle, 2);
            if next.1 >= best.1 {
                break;
            }
            best = next;
        }
        if best.1 > reach {
            best = self.closest_of(point, 0, self.segments());
            // A little more than the widest so far: a taper then asks for the whole centreline a few times, not always.
            hint.reach = reach.max(1.05 * best.1);
        }
        hint.segment = best.0;
        self.place(point, best.0)
    }

    fn closest_of(&self, point: &Vec3, middle: usize, width: usize) -> (usize, f64) {
        let last = (middle + width).min(self.segments() - 1);
        (middle.saturating_sub(width)..=last)
            .map(|segment| (segment, (point - self.foot(point, segment).0).norm()))
            .fold((middle, f64::INFINITY), |best, next| if next.1 < best.1 { next } else { best })
    }

    fn foot(&self, point: &Vec3, segment: usize) -> (Vec3, f64) {
        let start = self.points[segment];
        let far = (point - start).dot(&self.directions[segment]).clamp(0.0, self.lengths[segment]);
        (start + self.directions[segment] * far, far)
    }

    fn place(&self, point: &Vec3, segment: usize) -> Place {
        let (foot, far) = self.foot(point, segment);
        let tangent = self.tangent(segment, far);
        let arm = point - foot;
        let radial = (arm - tangent * arm.dot(&tangent)).try_normalize(1e-6).unwrap_or_default();
        Place { segment, along: self.starts[segment] + far, radial, distance: arm.norm(), tangent }
    }

    /// Between its points a polyline's direction jumps where the real tangent turns evenly: blend it over as much of
    /// each segment as its shorter neighbour has, so that a long straight stays straight.
    fn tangent(&self, segment: usize, far: f64) -> Vec3 {
        let length = self.lengths[segment];
        let (end, room, to_end) = if far < length / 2.0 {
            (segment, self.lengths[segment.saturating_sub(1)].min(length) / 2.0, far)
        } else {
            let next = (segment + 1).min(self.segments() - 1);
            (segment + 1, self.lengths[next].min(length) / 2.0, length - far)
        };
        let share = (to_end / room).clamp(0.0, 1.0);
        let blend = self.tangents[end] * (1.0 - share) + self.directions[segment] * share;
        blend.try_normalize(1e-9).unwrap_or(self.directions[segment])
    }
}
