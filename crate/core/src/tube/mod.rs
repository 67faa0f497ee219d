//! The tube round a centreline: outer radius and bore as functions of arc length, and the volumes they enclose.

mod dress;
mod joint;
mod marks;
mod reach;
mod section;
mod stick;

pub use dress::Lobes;
pub use joint::{BEYOND_SOCKET, Cutting, Joint, JointRoom, JointSize, LeftOut, MARK};
pub use marks::{Marks, RingWidths};
pub use section::Section;
pub use stick::{StickEnd, groove};

use crate::design::{Printer, Run};
use crate::layout::PlacedRun;
use core::f64::consts::PI;

/// A mesh keeps at least this much between a bend's centre and the skin inside it, mm; see [`least_inner_radius`].
pub const LEAST_INNER_RADIUS: f64 = 0.001;
/// Least wall at the tip that still makes a tube, mm: chamfer and edge break must leave it.
pub const LEAST_TIP_WALL: f64 = 0.05;

/// Shortest chamfer or edge break that is made, mm: a mesh has no rings nearer to each other than about half of it.
pub const LEAST_END: f64 = 0.002;

/// What a bend radius must exceed half the outer diameter by, so that the skin inside the bend stays in order when
/// its coordinates, up to `reach` mm from the datum, are rounded to 32 bits.
pub fn least_inner_radius(reach: f64) -> f64 {
    LEAST_INNER_RADIUS.max(128.0 * f64::from(rounding(reach)))
}

/// Spacing of 32-bit floats at `reach` mm.
pub fn rounding(reach: f64) -> f32 {
    let near = (reach.abs() as f32).max(f32::MIN_POSITIVE);
    f32::from_bits(near.to_bits() + 1) - near
}

/// The tube's two skins.
#[derive(Debug, Clone, PartialEq)]
pub struct Profile {
    /// Outer radius; where there are lobes, of their crests.
    pub outer: Section,
    /// Bore radius; where it has lobes, of their crests.
    pub bore: Section,
    /// Grooves between lobes on the outer skin; none for a round one.
    pub lobes: Option<Lobes>,
    /// The wave round the bore, of whose crests `bore` is; only a socket has one.
    pub bore_lobes: Option<Lobes>,
    /// Arc length, mm, up to which the bore is a socket; none where the piece begins as the run does.
    pub socket: Option<f64>,
    /// The rings scribed into the outer skin.
    pub marks: Marks,
    /// Whether the body between the leads has a shape of its own.
    dressed: bool,
    /// Length of the finish at each end, mm: beyond it, chamfer and edge break are over.
    finish: [f64; 2],
}

/// A wall and where it is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wall {
    /// Its thickness, across the centreline, mm; not above zero where the skins meet.
    pub wall: f64,
    /// Arc length, mm.
    pub at: f64,
}

impl Profile {
    /// The profile of a run whose centreline has `length` mm: outer lead-in chamfers and inner edge breaks at both ends,
    /// the rings that its ends ask for, and its dressed body between the leads. Chamfers longer than half the tube are
    /// cut short there; those shorter than [`LEAST_END`] are left off.
    pub fn of(run: &Run, placed: &PlacedRun, printer: &Printer, length: f64) -> Self {
        let ends = &run.ends;
        let finished = |end: f64| Some(end.min(length / 2.0)).filter(|end| *end >= LEAST_END).unwrap_or(0.0);
        let (chamfer, edge_break) = (finished(ends.chamfer_length), finished(ends.edge_break));
        let slope = libm::tan(ends.chamfer_deg.to_radians());
        let outer = Section::with_ends(run.outer_radius(), chamfer, -slope, length);
        let bore = Section::with_ends(run.tube.bore / 2.0, edge_break, 1.0, length);
        let mut profile = Self {
            outer,
            bore,
            lobes: None,
            bore_lobes: None,
            socket: None,
            marks: Marks::default(),
            dressed: false,
            finish: [chamfer.max(edge_break); 2],
        };
        if !length.is_finite() {
            // A run without a centreline is asked for its tips alone.
            return profile;
        }
        marks::scribe(&mut profile, run, [&placed.start, &placed.end], printer, length);
        let body = [placed.start.straight.max(chamfer), length - placed.end.straight.max(chamfer)];
        let plain = profile.outer.clone();
        profile.lobes = dress::put_on(run, &mut profile.outer, body, length);
        profile.dressed = profile.lobes.is_some() || profile.outer != plain;
        profile
    }

    /// Whether the body between the leads has a shape of its own.
    pub fn is_dressed(&self) -> bool {
        self.dressed
    }

    /// The arc lengths of its ends, mm: from 0 to the run's length, but for a piece of a run.
    pub fn span(&self) -> [f64; 2] {
        self.outer.span()
    }

    /// Least wall left at an end face, mm; negative where chamfer and edge break meet before it.
    pub fn tip_wall(&self) -> f64 {
        let [from, to] = self.span();
        self.wall(from).min(self.wall(to))
    }

    /// The thinnest wall between the ends' chamfers and edge breaks: under rings, in grooves, along tapers.
    pub fn least_wall(&self) -> Wall {
        let [from, to] = self.span();
        let ends = [from + self.finish[0], to - self.finish[1]];
        let inside = self.breaks().into_iter().filter(|s| *s > ends[0] && *s < ends[1]);
        let walls = ends.into_iter().chain(inside).map(|at| Wall { wall: self.wall(at), at });
        walls.min_by(|a, b| a.wall.total_cmp(&b.wall)).unwrap_or(Wall { wall: self.wall(0.0), at: 0.0 })
    }

    /// The wall at an arc length, mm, at its thinnest round the tube.
    pub fn wall(&self, s: f64) -> f64 {
        let groove = self.lobes.as_ref().map_or(0.0, |lobes| 2.0 * lobes.half.radius(s));
        self.outer.radius(s) - groove - self.bore.radius(s)
    }

    /// The largest outer radius anywhere, mm: what clearances and bends must allow for.
    pub fn largest_outer(&self) -> f64 {
        self.outer.largest()
    }

    /// Outer radius at an arc length and an angle about the travel from the untwisted frame, mm; see [`Lobes`].
    pub fn outer_at(&self, s: f64, angle: f64) -> f64 {
        waved(&self.outer, self.lobes.as_ref(), s, angle)
    }

    /// Bore radius at an arc length and an angle, as [`Self::outer_at`], mm.
    pub fn bore_at(&self, s: f64, angle: f64) -> f64 {
        waved(&self.bore, self.bore_lobes.as_ref(), s, angle)
    }

    /// The narrowest radius of the bore, mm.
    pub fn least_bore(&self) -> f64 {
        self.bore.breaks.iter().map(|[_, radius]| *radius).fold(f64::INFINITY, f64::min)
    }

    /// With the outer skin's and the bore's radii changed by so much, mm; what is taken off at the ends, in rings and in
    /// grooves keeps its depth.
    pub fn changed(&self, [outer, bore]: [f64; 2]) -> Self {
        let mut changed = self.clone();
        for (skin, by) in [(&mut changed.outer, outer), (&mut changed.bore, bore)] {
            skin.breaks.iter_mut().for_each(|[_, radius]| *radius += by);
        }
        changed
    }

    /// With every distance from the centreline multiplied by `times`; places along it stay.
    pub fn enlarged(&self, times: f64) -> Self {
        let mut enlarged = self.clone();
        let lobes = [&mut enlarged.lobes, &mut enlarged.bore_lobes].into_iter().flatten();
        let halves = lobes.map(|lobes| &mut lobes.half);
        for skin in [&mut enlarged.outer, &mut enlarged.bore].into_iter().chain(halves) {
            skin.breaks.iter_mut().for_each(|[_, distance]| *distance *= times);
        }
        enlarged
    }

    /// With the radii of its socket changed by so much more, mm.
    pub fn with_socket_changed(&self, by: f64) -> Self {
        let mut changed = self.clone();
        if let Some(to) = self.socket {
            changed.bore.breaks.iter_mut().filter(|[at, _]| *at <= to).for_each(|[_, radius]| *radius += by);
        }
        changed
    }

    /// Material between the skins, mm3: exact, since a section's centroid runs on the centreline (Pappus), that of two
    /// lobes or more too, and since a joint's one lobe stands square to the bend.
    pub fn material_volume(&self) -> f64 {
        self.outer_volume() - self.bore_volume()
    }

    /// What the bore holds, mm3.
    pub fn bore_volume(&self) -> f64 {
        enclosed(&self.bore, self.bore_lobes.as_ref(), &self.breaks())
    }

    /// What the outer skin encloses, mm3.
    pub fn outer_volume(&self) -> f64 {
        enclosed(&self.outer, self.lobes.as_ref(), &self.breaks())
    }

    /// The same with arc lengths that count from its own beginning.
    pub fn from_its_start(&self) -> Self {
        let mut shifted = self.clone();
        let [by, _] = self.span();
        let mut lobes: Vec<&mut Lobes> = [&mut shifted.lobes, &mut shifted.bore_lobes].into_iter().flatten().collect();
        lobes.iter_mut().for_each(|lobes| lobes.from -= by);
        let halves = lobes.into_iter().map(|lobes| &mut lobes.half);
        for skin in [&mut shifted.outer, &mut shifted.bore].into_iter().chain(halves) {
            skin.breaks.iter_mut().for_each(|[at, _]| *at -= by);
        }
        shifted.socket = self.socket.map(|to| to - by);
        shifted
    }

    /// Where a radius of either skin, or the depth of the grooves, changes its course, in order.
    fn breaks(&self) -> Vec<f64> {
        let grooves = self.lobes.iter().chain(&self.bore_lobes).map(|lobes| &lobes.half);
        Section::breaks_of([&self.outer, &self.bore].into_iter().chain(grooves))
    }
}

fn waved(section: &Section, lobes: Option<&Lobes>, s: f64, angle: f64) -> f64 {
    let crest = section.radius(s);
    lobes.map_or(crest, |lobes| {
        let (half, phase) = lobes.wave(s);
        crest - half * (1.0 - libm::cos(f64::from(lobes.count) * angle - phase))
    })
}

/// What a skin encloses, mm3. A wave of half depth e round a mean radius m encloses pi (m^2 + e^2 / 2).
fn enclosed(section: &Section, lobes: Option<&Lobes>, breaks: &[f64]) -> f64 {
    let Some(lobes) = lobes else { return section.volume() };
    let at = |s: f64| {
        let half = lobes.half.radius(s);
        (section.radius(s) - half, half)
    };
    breaks
        .windows(2)
        .map(|pair| {
            let [(m0, e0), (m1, e1)] = [at(pair[0]), at(pair[1])];
            let squares = (m0 * m0 + m0 * m1 + m1 * m1) / 3.0 + (e0 * e0 + e0 * e1 + e1 * e1) / 6.0;
            PI * squares * (pair[1] - pair[0])
        })
        .sum()
}
