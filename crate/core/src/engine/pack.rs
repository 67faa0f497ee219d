//! The pack: everything that a print service and the builder need, gathered.

use std::collections::BTreeMap;

use super::coupon::{self, Asked};
use super::deviation::{Deviation, meshed};
use super::files::{Watch, nothing_made, papers, plots, sound};
use super::limits::limits;
use super::plate;
use super::stages::{Piece as Printed, Stages};
use super::stance::placed;
use crate::accept::{questions, read_stl};
use crate::coupon::Compensation;
use crate::design::{Fitting, Refusal};
use crate::export::{self, DesignTold, Kind, NamedMesh, PackFile, file_stem, unique_stems};
use crate::layout::EndPose;
use crate::mesh::Mesh;
use crate::print::{Standing, Subject, lay};
use crate::service::SealAtEnd;
use crate::sheet::{End, Piece, Sheet, Stood, sheet};
use crate::tongue::Tongue;
use crate::tube::{BEYOND_SOCKET, Cutting};

/// Where the sheet, the plots, the coupons and the plates are; no run's folder is called so.
const SHEET: &str = "sheet.html";
const OWN: [&str; 5] = [SHEET, "checksums.txt", "plots", "coupons", "plates"];

/// The pack of a design.
///
/// # Errors
/// A design of which no run can be made.
pub(super) fn file(
    stages: &Stages<'_>,
    deviation: Deviation,
    correction: Option<&Compensation>,
    design: &DesignTold<'_>,
    tongue: &Tongue,
    watch: &mut Watch<'_>,
) -> Result<Vec<u8>, Refusal> {
    let stated = &stages.design.runs;
    let json = Kind::Design.file_name(&file_stem(design.title));
    let names = OWN.into_iter().chain([json.as_str()]).chain(stated.iter().map(|run| run.name.as_str()));
    let stems = unique_stems(names).split_off(OWN.len() + 1);
    let (mut pieces, mut left_out, mut files, mut to_lay) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for (run, stem) in stems.iter().enumerate() {
        match of_run(stages, run, stem, deviation, correction, design, tongue) {
            Ok(of_it) => {
                let first = pieces.len();
                to_lay.extend(of_it.to_lay.into_iter().map(|(at, piece)| (first + at, piece)));
                pieces.extend(of_it.told);
                files.extend(of_it.files);
            }
            Err(refusal) => left_out.push((stated[run].name.as_str(), refusal.message)),
        }
        // The sheet, the coupons and the archive take about as long as one run more.
        watch((run + 1) as f64 / (stems.len() + 1) as f64);
    }
    if pieces.is_empty() {
        return Err(nothing_made());
    }
    let of_plates = plates(stages, to_lay, &mut pieces, correction.is_some(), design)?;
    let Coupons { files: of_coupons, told, lacking } = Coupons::of(stages, &stems, &pieces, deviation, design);
    let page = sheet(&Sheet {
        design: &stages.design,
        title: design.title,
        note: &coupon::note(correction, stages, tongue),
        pieces: &pieces,
        left_out: &left_out,
        coupons: &told,
        without_coupon: &lacking,
        findings: &stages.findings(),
        tongue,
    });
    let mut all = vec![
        PackFile { path: SHEET.to_owned(), bytes: page.into_bytes() },
        PackFile { path: json, bytes: design.text.as_bytes().to_vec() },
    ];
    all.extend(files);
    all.extend(of_plates);
    all.extend(of_coupons);
    all.extend(plots(stages, tongue).into_iter().map(|(kind, bytes)| PackFile {
        path: format!("plots/{}.{}", kind.called("").trim(), kind.extension()),
        bytes,
    }));
    Ok(export::pack(&all))
}

/// A piece that is to lie on a plate: which it is, how it stands, and its file's mesh in the datum.
struct ToLay {
    piece: Printed,
    standing: Standing,
    mesh: Mesh,
}

/// The files of the plates; the sheet's pieces, which `to_lay` counts, are told theirs.
fn plates(
    stages: &Stages<'_>,
    to_lay: Vec<(usize, ToLay)>,
    pieces: &mut [Piece<'_>],
    corrected: bool,
    design: &DesignTold<'_>,
) -> Result<Vec<PackFile>, Refusal> {
    let (mut stood, mut meshes) = (Vec::new(), BTreeMap::new());
    for (at, ToLay { piece, standing, mesh }) in to_lay {
        meshes.insert((piece.run, piece.index), (at, mesh));
        stood.push((piece, standing));
    }
    let mut files = Vec::new();
    for (index, plate) in lay(stages, stood).iter().enumerate() {
        let number = index + 1;
        let bytes = plate::bytes(stages, plate, number, corrected, design, |laid| {
            let run = laid.piece.run;
            let (at, mesh) = meshes.remove(&(run, laid.piece.index)).ok_or_else(|| stages.not_made(run))?;
            pieces[at].plate = Some(number);
            Ok(mesh)
        })?;
        files.push(PackFile { path: format!("plates/plate-{number}.3mf"), bytes });
    }
    Ok(files)
}

/// What is in a pack of one run.
struct OfRun<'s> {
    /// What the sheet tells of its pieces.
    told: Vec<Piece<'s>>,
    files: Vec<PackFile>,
    /// Which of its pieces are to lie on a plate.
    to_lay: Vec<(usize, ToLay)>,
}

fn of_run<'s>(
    stages: &'s Stages<'_>,
    run: usize,
    stem: &str,
    deviation: Deviation,
    correction: Option<&Compensation>,
    design: &DesignTold<'_>,
    tongue: &Tongue,
) -> Result<OfRun<'s>, Refusal> {
    let printed = stages.pieces(run);
    if printed.is_empty() {
        return Err(stages.not_made(run));
    }
    let cutting = stages.cutting(run);
    let (mut told, mut files, mut to_lay) = (Vec::new(), Vec::new(), Vec::new());
    for piece in &printed {
        let (made, datum) = Made::of(stages, piece, &cutting, deviation, correction)?;
        if let (Some(standing), Some(mesh)) = (made.standing.clone(), datum) {
            to_lay.push((told.len(), ToLay { piece: piece.clone(), standing, mesh }));
        }
        let (mut on_sheet, its_files) = made.told(stages, piece, &cutting, stem, correction, design);
        on_sheet.name = piece.called_in(&stages.design.runs[run].name, tongue);
        told.push(on_sheet);
        files.extend(its_files);
    }
    let papers = papers(stages, run, tongue)?.into_iter();
    files.extend(papers.map(|(kind, bytes)| PackFile { path: format!("{stem}/{}", kind.file_name(stem)), bytes }));
    Ok(OfRun { told, files, to_lay })
}

/// A made piece with its file's mesh.
struct Made {
    deviation: f64,
    /// On the plate; where no stance fits, in the datum.
    mesh: Mesh,
    /// The file of it, of which the questions are asked.
    stl: Vec<u8>,
    standing: Option<Standing>,
    own: bool,
    questions: Vec<crate::accept::Asked>,
    /// Volumes of the exact tube, mm3.
    material: f64,
    bore: f64,
    marks: [bool; 2],
}

impl Made {
    /// The piece as it stands, and its mesh in the datum where it is to lie on a plate too.
    fn of(
        stages: &Stages<'_>,
        piece: &Printed,
        cutting: &Cutting,
        deviation: Deviation,
        correction: Option<&Compensation>,
    ) -> Result<(Self, Option<Mesh>), Refusal> {
        let run = piece.run;
        let subject = Subject::of_piece(stages, piece)?;
        let standing = subject.chosen().filter(Standing::fits);
        let (deviation, mesh) = meshed(stages, piece, deviation, correction)?;
        let (mesh, datum) = match &standing {
            Some(standing) => (placed(stages, piece, standing, &mesh, correction.is_some())?, Some(mesh)),
            None => (mesh, None),
        };
        let mesh = sound(stages, run, mesh)?;
        let limits = limits(stages, piece, correction, standing.is_some())?;
        let name = piece.called(&stages.design.runs[run].name);
        let stl = export::stl(&mesh, &export::called(&name, correction.is_some()));
        let solid = read_stl(&stl).ok_or_else(|| stages.not_made(run))?;
        let made = Self {
            deviation,
            questions: questions(&solid, &limits),
            material: limits.material,
            bore: cutting.bore_between_seams(&stages.whole(run)?.profile, piece.index),
            marks: piece.profile.marks.seat,
            own: subject.own.is_some(),
            standing,
            mesh,
            stl,
        };
        Ok((made, datum))
    }

    /// What the sheet tells of it, and its files.
    fn told<'s>(
        self,
        stages: &'s Stages<'_>,
        printed: &Printed,
        cutting: &Cutting,
        stem: &str,
        correction: Option<&Compensation>,
        design: &DesignTold<'_>,
    ) -> (Piece<'s>, [PackFile; 2]) {
        let run = printed.run;
        let (stated, placed) = (&stages.design.runs[run], &stages.layout.runs[run]);
        let file = format!(
            "{stem}/{}",
            export::called(&export::file_stem_ending(stem, &printed.suffix()), correction.is_some())
        );
        let name = printed.called(&stated.name);
        let solid = NamedMesh { name: &name, mesh: &self.mesh };
        let files = [
            PackFile { path: format!("{file}.stl"), bytes: self.stl },
            PackFile { path: format!("{file}.3mf"), bytes: export::three_mf(&[solid], &design.meta(&name)) },
        ];
        let [low, high] = self.mesh.extremes();
        let end = |port: &'s str, fitting: &'s Fitting, pose: &EndPose, end: usize| End {
            port,
            fitting,
            band: pose.inside + BEYOND_SOCKET,
            trim: stated.ends.trim,
            mark: self.marks[end],
            seal: SealAtEnd::of(stated, fitting, &stages.design.process).ok(),
        };
        let fitting = |port: usize| &stages.design.fittings[stages.layout.ports[port].fitting];
        let printer = &stages.design.process.printer;
        let piece = Piece {
            run: stated,
            file,
            sides: core::array::from_fn(|axis| high[axis] - low[axis]),
            low: low[2],
            stood: self.standing.as_ref().map(|standing| Stood {
                own: self.own,
                layers: standing.layers(printer),
                hours: standing.hours(printer),
                support: standing.figures.support,
                supports: standing.supports,
                bands: standing.bands,
            }),
            // Known once all pieces are laid out.
            plate: None,
            material: self.material,
            bore: self.bore,
            deviation: self.deviation,
            triangles: self.mesh.indices.len() / 3,
            questions: self.questions,
            joints: [printed.index.checked_sub(1), Some(printed.index)]
                .map(|joint| cutting.joints.get(joint?).copied()),
            ends: [
                (printed.index == 0).then(|| end(&stated.from, fitting(placed.from), &placed.start, 0)),
                (printed.index + 1 == printed.of).then(|| end(&stated.to, fitting(placed.to), &placed.end, 1)),
            ],
            name,
        };
        (piece, files)
    }
}

/// A coupon of the first run of each tube and pair of fittings.
#[derive(Default)]
struct Coupons<'s> {
    files: Vec<PackFile>,
    /// Path, and names of the runs that it is for.
    told: Vec<(String, Vec<&'s str>)>,
    /// Names of the runs that have none, and why.
    lacking: Vec<(&'s str, String)>,
}

impl<'s> Coupons<'s> {
    fn of(
        stages: &'s Stages<'_>,
        stems: &[String],
        pieces: &[Piece<'s>],
        deviation: Deviation,
        design: &DesignTold<'_>,
    ) -> Self {
        let mut found = Self::default();
        // Of the tube's sizes, its ends' finish and its fittings: where to put further runs of the same.
        let mut seen: BTreeMap<String, Result<usize, String>> = BTreeMap::new();
        // One piece of each run has its start.
        for piece in pieces.iter().filter(|piece| piece.ends[0].is_some()) {
            let run = piece.run;
            let Some(index) = stages.design.runs.iter().position(|other| other.name == run.name) else { continue };
            let placed = &stages.layout.runs[index];
            let fitting = |port: usize| &stages.design.fittings[stages.layout.ports[port].fitting].name;
            let mut fittings = [fitting(placed.from), fitting(placed.to)];
            fittings.sort();
            let key = format!("{:?} {:?} {fittings:?}", run.tube, run.ends);
            let place = seen.entry(key).or_insert_with(|| {
                // What a coupon tells of the printer is what corrects the files: it is never corrected itself.
                let stated = DesignTold { note: "", ..*design };
                match coupon::file(stages, index, &Asked::usual(), deviation.finest(), &stated) {
                    Ok(bytes) => {
                        let path = format!("coupons/{}", Kind::Coupon.file_name(&stems[index]));
                        found.files.push(PackFile { path: path.clone(), bytes });
                        found.told.push((path, Vec::new()));
                        Ok(found.told.len() - 1)
                    }
                    Err(refusal) => Err(refusal.message),
                }
            });
            match place {
                Ok(place) => found.told[*place].1.push(&run.name),
                Err(why) => found.lacking.push((&run.name, why.clone())),
            }
        }
        found
    }
}
