//! The sections of a cut run: put together, and of each of its pieces.

use super::size::marks;
use super::{Cutting, Joint};
use crate::centreline::Centreline;
use crate::design::{Design, Run};
use crate::layout::PlacedRun;
use crate::tube::{Lobes, Marks, Profile, Section};

impl Cutting {
    /// The skins of the run put together, of its skins without cuts: a collar at each joint, one bore. Where the mouth
    /// stands square on the tube there is a cone of one step before it, such as adhesive fills.
    pub fn joined(&self, plain: &Profile) -> Profile {
        let mut joined = plain.clone();
        for joint in &self.joints {
            joint.mark(&mut joined.outer, joint.span()[0], joint.size.marks[0]);
            let (size, mouth) = (&joint.size, joint.mouth());
            let end = joint.at + size.collar_end(joint.number);
            joined.outer.put(&[
                [mouth - size.step, size.outer],
                [mouth, size.collar()],
                [end, size.collar()],
                [end + size.collar() - size.outer, size.outer],
            ]);
            joint.mark(&mut joined.outer, mouth + size.first_mark(), size.marks[1]);
        }
        joined
    }

    /// What the bore of a run put together, of those skins, holds between the seams about a piece, mm3.
    pub fn bore_between_seams(&self, joined: &Profile, piece: usize) -> f64 {
        let [from, to] = joined.span();
        let seam = |joint: usize| self.joints.get(joint).map(|joint| joint.at);
        let first = piece.checked_sub(1).and_then(seam).unwrap_or(from);
        joined.bore.between(first, seam(piece).unwrap_or(to)).volume()
    }

    /// The skins of each piece in order, in the run's arc lengths; the run's own where it is not cut.
    pub fn pieces(&self, plain: &Profile) -> Vec<Profile> {
        if self.joints.is_empty() {
            return vec![plain.clone()];
        }
        let joined = self.joined(plain);
        let [_, length] = plain.span();
        let last = self.joints.len();
        self.spans(length)
            .into_iter()
            .enumerate()
            .map(|(index, span)| {
                let before = index.checked_sub(1).and_then(|before| self.joints.get(before));
                let after = self.joints.get(index);
                let ends = [index == 0, index == last];
                let kept = |marks: [bool; 2]| [marks[0] && ends[0], marks[1] && ends[1]];
                let mut piece = Profile {
                    outer: joined.outer.clone(),
                    bore: joined.bore.clone(),
                    lobes: plain.lobes.clone().filter(|_| after.is_none()),
                    bore_lobes: None,
                    socket: None,
                    marks: Marks { trim: kept(plain.marks.trim), seat: kept(plain.marks.seat) },
                    ..joined
                };
                if let Some(joint) = after {
                    piece.end_in_spigot(joint, span);
                }
                if let Some(joint) = before {
                    piece.begin_in_socket(joint, span);
                }
                piece.outer = piece.outer.between(span[0], span[1]);
                piece.bore = piece.bore.between(span[0], span[1]);
                piece
            })
            .collect()
    }
}

impl Joint {
    /// Scribes the joint's marks from an arc length on.
    fn mark(&self, outer: &mut Section, from: f64, depth: f64) {
        for [begins, width] in marks(self.number) {
            let at = from + begins;
            let radius = outer.radius(at);
            outer.put(&[[at, radius], [at + width / 2.0, radius - depth], [at + width, radius]]);
        }
    }

    /// The wave of the key between two arc lengths, its depth by `half`.
    fn key(&self, half: Vec<[f64; 2]>) -> Option<Lobes> {
        let lobes =
            Lobes { count: 1, start: self.key_angle, twist: 0.0, from: self.mouth(), half: Section { breaks: half } };
        (self.size.key > 0.0).then_some(lobes)
    }
}

impl Profile {
    /// The skins of a run of `length` mm put together, where it is cut; `line` is its centreline, if it has one.
    pub fn of_run(design: &Design, run: &Run, placed: &PlacedRun, line: Option<&Centreline>, length: f64) -> Self {
        let plain = Self::of(run, placed, &design.process.printer, length);
        if run.cuts.is_empty() { plain } else { Cutting::of(design, run, placed, line).joined(&plain) }
    }

    /// The key rises inside the socket's mouth, so that the spigot goes in; near the tip a shallow ring takes up what
    /// adhesive the tip wipes along, before it gets to the bore. The bore is open, so air needs no way out.
    fn end_in_spigot(&mut self, joint: &Joint, [from, _]: [f64; 2]) {
        let (size, at, mouth) = (&joint.size, joint.at, joint.mouth());
        let crest = size.outer + size.key;
        // What stands before the mouth in the joined tube is the socket's.
        self.outer = self.outer.between(from, mouth - size.step);
        let mut breaks = vec![[mouth, size.outer]];
        if size.key > 0.0 {
            breaks.push([mouth + size.ramp(), crest]);
        }
        if let Some((ring, depth)) = size.catch_ring() {
            breaks.extend([[at - ring[0], crest], [at - ring[1], crest - depth], [at - ring[2], crest]]);
        }
        breaks.extend([[at - size.tip, crest], [at, crest - size.tip]]);
        self.outer.breaks.extend(breaks);
        let half = size.key / 2.0;
        self.lobes = joint.key(vec![[from, 0.0], [mouth, 0.0], [mouth + size.ramp(), half], [at, half]]);
        self.finish[1] = size.tip;
    }

    fn begin_in_socket(&mut self, joint: &Joint, [_, to]: [f64; 2]) {
        let (size, at, mouth) = (&joint.size, joint.at, joint.mouth());
        let (inner, floor) = (size.socket(), at + size.floor());
        let beyond = self.bore.between(floor, to);
        let mut breaks =
            vec![[mouth, inner + size.lead_in], [mouth + size.lead_in, inner], [at + size.clearance, inner]];
        breaks.extend(beyond.breaks);
        self.bore = Section { breaks };
        let half = size.key / 2.0;
        let wave = vec![[mouth, half], [at + size.clearance, half], [floor, 0.0], [to, 0.0]];
        self.bore_lobes = joint.key(wave);
        self.socket = Some(at + size.clearance);
        self.finish[0] = size.lead_in;
    }
}
