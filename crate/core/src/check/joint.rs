//! Has each cut room for its joint, and does the joint hold?

use super::finding::{GEOMETRY, PRACTICE};
use super::round::{down, up};
use super::{Finding, OneRun, PatchStep, Severity, Subject, words};
use crate::design::wording;
use crate::distance::Budget;
use crate::service::JointLoad;
use crate::tube::{Joint, LeftOut};

/// Share of what is allowed above which a look is worth while; common practice, no source.
const MUCH: f64 = 0.7;
/// Longest spigot that is proposed, in outer diameters; common practice, no source.
const LONGEST: f64 = 3.0;

/// `joint_room` (stop): a cut at which no joint has room; the run is left uncut there. `joint` (stop): the pressure uses
/// more than the bond or the socket may bear; (care) much of it, or more together with a crooked fit.
pub(super) fn findings(subject: Subject<'_>, _: &mut Budget) -> Vec<Finding> {
    let of_run = |run: OneRun<'_>| {
        let cutting = run.cutting();
        let room = cutting.left_out.iter().map(|left_out| no_room(&run, left_out)).collect::<Vec<_>>();
        let held = cutting.joints.iter().filter_map(|joint| holds(subject, &run, joint)).collect::<Vec<_>>();
        room.into_iter().chain(worst(held))
    };
    subject.runs().filter(|run| !run.run.cuts.is_empty()).flat_map(of_run).collect()
}

fn no_room(run: &OneRun<'_>, left_out: &LeftOut) -> Finding {
    let at = run.run.cuts[left_out.cut].at;
    let place = run.at(&format!("/cuts/{}", left_out.cut));
    let nearest = left_out.nearest.map(|nearest| if nearest > at { up(nearest) } else { down(nearest) });
    let moved = nearest.map(|nearest| vec![PatchStep::replace(format!("{place}/at"), nearest)]);
    let finding = run.finding("joint_room", Severity::Stop, format!("{place}/at")).value(at, "mm");
    let finding = match run.drawn.line.as_ref() {
        Some(line) => finding.at(&line.at(at).point),
        None => finding,
    };
    let finding = match nearest {
        Some(nearest) => finding.limit(nearest, GEOMETRY),
        None => finding,
    };
    finding.ways(moved).ways([vec![PatchStep::remove(place)]])
}

/// The joint that uses most of what it may, of a run's: the others are made alike.
fn worst(held: Vec<(f64, Finding)>) -> Option<Finding> {
    held.into_iter().max_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, finding)| finding)
}

fn holds(subject: Subject<'_>, run: &OneRun<'_>, joint: &Joint) -> Option<(f64, Finding)> {
    let load = JointLoad::of(subject.design, run.run, run.placed, joint)?;
    let at = run.drawn.line.as_ref()?.at(joint.at).point;
    let about = |used: f64, severity: Severity, place: &str| {
        let finding = run.finding("joint", severity, place.to_owned()).at(&at).word("joint", joint.number.to_string());
        let finding = finding.word("used", words::number(used * 100.0, "%"));
        finding.word("pressure", words::number(load.pressure, "kPa"))
    };
    let [alone, together] = [load.thrust, load.shear()].map(|shear| shear / load.allowed);
    let bond = (together > MUCH).then(|| {
        let severity = if alone > 1.0 { Severity::Stop } else { Severity::Care };
        let needed = joint.size.length * together / MUCH;
        let longer = (needed <= LONGEST * run.run.tube.outer_diameter)
            .then(|| vec![PatchStep::set("/process/joint/length", libm::ceil(needed))]);
        let finding = about(together, severity, "/process/joint/length")
            .value(load.shear(), "MPa")
            .limit(load.allowed, PRACTICE)
            .word("off", words::number(load.off, "mm"))
            .ways(longer);
        (together, finding)
    });
    let hoop = load.hoop_allowed.map(|allowed| (load.hoop / allowed, allowed)).filter(|(used, _)| *used > MUCH);
    let socket = hoop.map(|(used, allowed)| {
        let severity = if used > 1.0 { Severity::Stop } else { Severity::Care };
        // Of Lame's formula the wall at which the pressure uses just that share: k = stress / pressure.
        let k = allowed * MUCH / (load.pressure * 1e-3);
        let wall = (k > 1.0).then(|| joint.size.socket() * (((k + 1.0) / (k - 1.0)).sqrt() - 1.0));
        let thicker =
            wall.map(|wall| vec![PatchStep::set("/process/joint/wall", up(wall + joint.size.marks[1].max(0.0)))]);
        let finding = about(used, severity, "/process/joint/wall")
            .value(load.hoop, "MPa")
            .limit(allowed, "Lamé's thick cylinder, the material's strength and the design's own factors")
            .word("material", wording::quoted(&subject.design.process.material.name))
            .ways(thicker);
        (used, finding)
    });
    bond.into_iter().chain(socket).max_by(|a, b| a.0.total_cmp(&b.0))
}
