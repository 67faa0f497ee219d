//! A design taken through all stages, and the questions the calls ask of them.

use crate::centreline::{self, RunLine};
use crate::check::{self, Finding, Severity, words};
use crate::coupon::{Compensation, Coupon, CouponFault, Ladder};
use crate::design::wording::{listed, quoted, shown};
use crate::design::{self, Design, Refusal};
use crate::layout::{self, Layout};
use crate::mesh::{self, Fault, Mesh};
use crate::quantity::{LEAST_DEVIATION, MOST_DEVIATION, MOST_TUBE};
use crate::tongue::Tongue;
use crate::tube::{Cutting, Profile};

/// A design with everything placed and every centreline drawn.
#[derive(Debug, Clone)]
pub struct Stages<'t> {
    /// The text, as given.
    pub text: &'t str,
    /// What the builder stated.
    pub design: Design,
    /// Ports, fittings and ends, placed.
    pub layout: Layout,
    /// The runs' centrelines.
    pub lines: Vec<RunLine>,
}

/// What is printed in one go: a run, or a part of one that is cut.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// Index of its run.
    pub run: usize,
    /// Its place among the run's pieces, from 0.
    pub index: usize,
    /// How many pieces the run has.
    pub of: usize,
    /// Index of the cut that it begins at among the run's; none for the first piece.
    pub cut: Option<usize>,
    /// Its skins, in the run's arc lengths.
    pub profile: Profile,
}

/// A piece's name, as [`Piece::called_in`] has it.
pub(super) const PIECE_OF: &str = "{0}, piece {1} of {2}";

impl Piece {
    /// What follows a run's name for it, "piece 1 of 3"; none where the run is in one piece.
    pub fn part(&self) -> Option<String> {
        (self.of > 1).then(|| format!("piece {} of {}", self.index + 1, self.of))
    }

    /// What it is called: the run's name, and which piece of it.
    pub fn called(&self, run: &str) -> String {
        self.called_in(run, &Tongue::english())
    }

    /// The same in another language.
    pub fn called_in(&self, run: &str, tongue: &Tongue) -> String {
        let [number, of] = [self.index + 1, self.of].map(|count| count.to_string());
        if self.of > 1 { tongue.say(PIECE_OF, &[run, &number, &of]) } else { run.to_owned() }
    }

    /// What its files' names have after the run's: "-piece-1-of-3".
    pub fn suffix(&self) -> String {
        self.part().map_or(String::new(), |part| format!(" {part}").replace(' ', "-"))
    }

    /// JSON Pointer to what is stated of its stance.
    pub fn stance_path(&self) -> String {
        match self.cut {
            None => format!("/runs/{}/stance", self.run),
            Some(cut) => format!("/runs/{}/cuts/{cut}/stance", self.run),
        }
    }
}

impl<'t> Stages<'t> {
    /// Reads a text and takes it through the stages.
    ///
    /// # Errors
    /// A text that is no design, or one with more than 100 m of tube.
    pub fn of(text: &'t str) -> Result<Self, Refusal> {
        let design = design::parse(text)?;
        let layout = layout::place(&design);
        let lines = centreline::lines(&design, &layout);
        let stages = Self { text, design, layout, lines };
        stages.within_bounds()?;
        Ok(stages)
    }

    /// What is found about the design, in order.
    pub fn findings(&self) -> Vec<Finding> {
        check::findings(check::Subject { design: &self.design, layout: &self.layout, lines: &self.lines })
    }

    /// The index of the run of that name; `path` is where the name was given.
    ///
    /// # Errors
    /// No such run.
    pub fn run_named(&self, name: &str, path: &str) -> Result<usize, Refusal> {
        let runs = &self.design.runs;
        runs.iter().position(|run| run.name == name).ok_or_else(|| {
            let message = if runs.is_empty() {
                "The design has no run yet. Add one first.".to_owned()
            } else {
                let has = listed(runs.iter().map(|run| run.name.as_str()));
                format!("There is no run named {}. The design has {has}.", quoted(name))
            };
            Refusal::at(path, message)
        })
    }

    /// Whether a run's tube exists: it has a centreline, and nothing keeps it from having a mesh.
    pub fn is_made(&self, run: usize) -> bool {
        let line = self.lines[run].line.as_ref();
        line.is_some_and(|line| mesh::fault(&self.design.runs[run], &self.profile(run, line.length), line).is_none())
    }

    /// The sections of a run whose centreline has `length` mm: put together, where it is cut.
    pub fn profile(&self, run: usize, length: f64) -> Profile {
        let (stated, placed) = (&self.design.runs[run], &self.layout.runs[run]);
        Profile::of_run(&self.design, stated, placed, self.lines[run].line.as_ref(), length)
    }

    /// The joints of a run, and the cuts that have no room for one.
    pub fn cutting(&self, run: usize) -> Cutting {
        Cutting::of(&self.design, &self.design.runs[run], &self.layout.runs[run], self.lines[run].line.as_ref())
    }

    /// What is printed of a run, piece by piece; one where it is not cut, none where it has no centreline.
    pub fn pieces(&self, run: usize) -> Vec<Piece> {
        let Some(line) = &self.lines[run].line else { return Vec::new() };
        let cutting = self.cutting(run);
        let profiles = cutting.pieces(&self.uncut(run, line.length));
        let of = profiles.len();
        let cut = |index: usize| Some(cutting.joints[index.checked_sub(1)?].cut);
        let pieces = profiles.into_iter().enumerate();
        pieces.map(|(index, profile)| Piece { run, index, of, cut: cut(index), profile }).collect()
    }

    /// The sections of a run as though it were not cut.
    pub fn uncut(&self, run: usize, length: f64) -> Profile {
        Profile::of(&self.design.runs[run], &self.layout.runs[run], &self.design.process.printer, length)
    }

    /// The coupon of a run's tube, for the deeper of its two sockets.
    ///
    /// # Errors
    /// As [`Coupon::of`].
    pub fn coupon(&self, run: usize, ladder: Ladder) -> Result<Coupon, CouponFault> {
        let (design, stated) = (&self.design, &self.design.runs[run]);
        let socket = |port: &str| design.fitting_at(port).map_or(0.0, |fitting| fitting.socket_depth);
        let deeper = socket(&stated.from).max(socket(&stated.to));
        Coupon::of(stated, deeper, design.process.printer.least_wall, ladder)
    }

    /// The indices of the runs that are made.
    pub fn made(&self) -> Vec<usize> {
        (0..self.design.runs.len()).filter(|run| self.is_made(*run)).collect()
    }

    /// The triangles of a run.
    ///
    /// # Errors
    /// A run that cannot be made: what is found about it.
    pub fn mesh(&self, run: usize, deviation: f64) -> Result<Mesh, Refusal> {
        self.piece_mesh(&self.whole(run)?, deviation)
    }

    /// The piece of a run of that number, counted from 1; `path` is where it was given.
    ///
    /// # Errors
    /// No such piece, a run that cannot be made.
    pub fn piece(&self, run: usize, number: usize, path: &str) -> Result<Piece, Refusal> {
        let mut pieces = self.pieces(run);
        if pieces.is_empty() {
            return Err(self.not_made(run));
        }
        let count = pieces.len();
        match number.checked_sub(1).filter(|index| *index < count) {
            Some(index) => Ok(pieces.swap_remove(index)),
            None => {
                let has = if count == 1 { "one piece".to_owned() } else { format!("{count} pieces, counted from 1") };
                let message = format!("{}: there is no piece {number}. It is in {has}.", self.design.runs[run].name);
                Err(Refusal::at(path, message))
            }
        }
    }

    /// A run as one piece: put together, where it is cut.
    ///
    /// # Errors
    /// A run that cannot be made: what is found about it.
    pub fn whole(&self, run: usize) -> Result<Piece, Refusal> {
        match &self.lines[run].line {
            Some(line) => Ok(Piece { run, index: 0, of: 1, cut: None, profile: self.profile(run, line.length) }),
            None => Err(self.not_made(run)),
        }
    }

    /// The triangles of one piece of a run.
    ///
    /// # Errors
    /// A run that cannot be made: what is found about it.
    pub fn piece_mesh(&self, piece: &Piece, deviation: f64) -> Result<Mesh, Refusal> {
        let run = piece.run;
        let (stated, Some(line)) = (&self.design.runs[run], &self.lines[run].line) else {
            return Err(self.not_made(run));
        };
        mesh::run_mesh(stated, &piece.profile, line, deviation).map_err(|fault| self.refused(run, &fault))
    }

    /// The triangles of a piece's file, corrected by what a coupon said: sections changed, and all of it scaled about the
    /// datum, so that the pieces stay placed to each other.
    ///
    /// # Errors
    /// A run that cannot be made, or that the correction leaves without a wall.
    pub fn corrected_mesh(&self, piece: &Piece, deviation: f64, by: &Compensation) -> Result<Mesh, Refusal> {
        let corrected = self.corrected(piece, by)?;
        let scale = by.scale();
        Ok(self.piece_mesh(&corrected, deviation / scale)?.scaled(scale))
    }

    /// A piece's file before it is scaled, corrected by what a coupon said.
    ///
    /// # Errors
    /// A run that the correction leaves without a wall.
    pub fn corrected(&self, piece: &Piece, by: &Compensation) -> Result<Piece, Refusal> {
        let run = piece.run;
        let stated = &self.design.runs[run];
        let profile = by.applied(stated, &piece.profile).map_err(|wall| {
            let message = format!(
                "{}: corrected by the coupon, its file would have {} mm of wall or bore left. Check the readings, make the \
                 wall thicker, or ask for the file without the correction.",
                stated.name,
                shown(wall)
            );
            Refusal::at(format!("/runs/{run}/tube"), message)
        })?;
        Ok(Piece { profile, ..piece.clone() })
    }

    /// Why a run is not made: what the mesher says of its tube, else what is found about it.
    pub fn not_made(&self, run: usize) -> Refusal {
        let name = &self.design.runs[run].name;
        if let Some(line) = &self.lines[run].line
            && let Some(fault) = mesh::fault(&self.design.runs[run], &self.profile(run, line.length), line)
        {
            return self.refused(run, &fault);
        }
        let findings = self.findings();
        let mut stops = findings.iter().filter(|finding| finding.severity == Severity::Stop);
        match stops.find(|finding| finding.run.as_ref() == Some(name)) {
            Some(finding) => Refusal::at(finding.place.clone(), words::message(finding)),
            None => Refusal::at(format!("/runs/{run}"), format!("{name}: it cannot be made as it is.")),
        }
    }

    fn refused(&self, run: usize, fault: &Fault) -> Refusal {
        let message = format!("{}: {}.", self.design.runs[run].name, fault.message);
        Refusal::at(format!("/runs/{run}{}", fault.path), message)
    }

    fn within_bounds(&self) -> Result<(), Refusal> {
        let length = |line: &RunLine| line.line.as_ref().map_or(0.0, |line| line.length);
        let total: f64 = self.lines.iter().map(length).sum();
        if total <= MOST_TUBE {
            return Ok(());
        }
        let longest = (0..self.lines.len()).max_by(|a, b| length(&self.lines[*a]).total_cmp(&length(&self.lines[*b])));
        let longest = longest.unwrap_or_default();
        Err(Refusal::at(
            format!("/runs/{longest}"),
            format!(
                "The design has {} m of tube; 100 m is the most. The longest run, {}, has {} m. Is a port or a corner \
                 mistyped?",
                shown(total / 1e3),
                quoted(&self.design.runs[longest].name),
                shown(length(&self.lines[longest]) / 1e3)
            ),
        ))
    }
}

/// The deviation if it is in range; `path` is where it was given.
pub(super) fn checked_deviation(deviation: f64, path: &str) -> Result<f64, Refusal> {
    if (LEAST_DEVIATION..=MOST_DEVIATION).contains(&deviation) {
        return Ok(deviation);
    }
    let found = if deviation.is_finite() { format!("{} mm", shown(deviation)) } else { "no number".to_owned() };
    Err(Refusal::at(
        path,
        format!("Deviation: {found} is out of range. Give a number from 0.001 to 1 mm; 0.01 is usual."),
    ))
}
