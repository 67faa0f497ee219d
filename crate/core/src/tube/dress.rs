//! The body between the leads: thicker or thinner than the tube, tapered, with lobes that turn about it.

use super::Section;
use crate::design::Run;

/// Shortest body that is made, mm; a shorter one leaves the tube plain.
const LEAST_BODY: f64 = 1.0;
/// Most of the body that one blend takes: between the blends something of the body itself is left.
const MOST_BLEND: f64 = 0.45;

/// Grooves along a body, as a wave round it. At arc length `s` and angle `a` from the frame that starts at the first
/// end's reference perpendicular and does not twist, by the right-hand rule about the travel, the skin lies at
/// `outer(s) - half(s) * (1 - cos(count * (a - start - twist * (s - from))))`. A joint's key is a wave of one lobe.
#[derive(Debug, Clone, PartialEq)]
pub struct Lobes {
    /// Lobes round the body, at least 2; round a joint, 1.
    pub count: u32,
    /// Angle at which a crest stands where the body begins, radians.
    pub start: f64,
    /// How far they turn, radians per mm.
    pub twist: f64,
    /// Arc length where the first lobe's crest stands at `start`, mm: where the body begins.
    pub from: f64,
    /// Half the depth of the grooves along the tube, mm: 0 up to the body, growing over the blend.
    pub half: Section,
}

/// Where the body lies, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Body {
    from: f64,
    to: f64,
    blend: f64,
}

/// Puts the run's body on the outer section of a plain tube, between the two arc lengths, and gives its lobes. Where the
/// blends end the body has its stated diameters; it runs straight between them.
pub(super) fn put_on(run: &Run, outer: &mut Section, [from, to]: [f64; 2], length: f64) -> Option<Lobes> {
    let dress = run.dress.as_ref()?;
    if to - from < LEAST_BODY {
        return None;
    }
    let body = Body { from, to, blend: dress.blend.min(MOST_BLEND * (to - from)) };
    let diameters = dress.diameters(run.tube.outer_diameter);
    if diameters != [run.tube.outer_diameter; 2] {
        let [first, last] = diameters.map(|diameter| diameter / 2.0);
        outer.put(&body.course([outer.radius(from), first, last, outer.radius(to)]));
    }
    if dress.lobes < 2 || dress.depth <= 0.0 {
        return None;
    }
    let mut half = Section { breaks: vec![[0.0, 0.0], [length, 0.0]] };
    half.put(&body.course([0.0, dress.depth / 2.0, dress.depth / 2.0, 0.0]));
    Some(Lobes { count: dress.lobes, start: 0.0, twist: dress.twist_deg_per_mm.to_radians(), from, half })
}

impl Body {
    fn course(&self, values: [f64; 4]) -> [[f64; 2]; 4] {
        let at = [self.from, self.from + self.blend, self.to - self.blend, self.to];
        core::array::from_fn(|i| [at[i], values[i]])
    }
}

impl Lobes {
    /// The arc lengths between which there are grooves, mm.
    pub fn span(&self) -> Option<[f64; 2]> {
        let grooved = |pair: &&[[f64; 2]]| pair[0][1] > 0.0 || pair[1][1] > 0.0;
        let first = self.half.breaks.windows(2).find(grooved)?;
        let last = self.half.breaks.windows(2).rfind(grooved)?;
        Some([first[0][0], last[1][0]])
    }

    /// Half the depth of the grooves, mm, and the wave's phase, radians, at arc length `s`: the wave is
    /// `cos(count * a - phase)`.
    pub fn wave(&self, s: f64) -> (f64, f64) {
        (self.half.radius(s), f64::from(self.count) * (self.start + self.twist * (s - self.from)))
    }
}
