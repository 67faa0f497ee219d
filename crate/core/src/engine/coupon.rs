//! The fit coupon on request: of which run's tube, in which sizes, as which file.

use serde_json::{Map, Value};

use super::stages::Stages;
use crate::coupon::{self, COUNT, Compensation, CouponFault, HeldBack, Ladder, STEP};
use crate::design::Refusal;
use crate::design::wording::shown;
use crate::export::{self, DesignTold, Kind, NamedMesh};
use crate::mesh::is_solid;
use crate::tongue::{Tongue, worded};

/// What a coupon is asked to be.
#[derive(Clone, Copy)]
pub(super) struct Asked {
    ladder: Ladder,
    format: Format,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Format {
    /// One 3MF with an object a stick.
    ThreeMf,
    /// An archive with an STL a stick.
    Stl,
}

impl Asked {
    /// The usual coupon.
    pub fn usual() -> Self {
        Self { ladder: Ladder::default(), format: Format::ThreeMf }
    }

    /// What follows the last dot of the file's name.
    pub fn extension(&self) -> &'static str {
        match self.format {
            Format::ThreeMf => "3mf",
            Format::Stl => "zip",
        }
    }
}

/// What a request says of the coupon; other kinds have no say in it.
pub(super) fn asked(kind: Kind, keys: &Map<String, Value>) -> Result<Asked, Refusal> {
    if let Some(key) = ["format", "count", "step"].into_iter().find(|key| keys.contains_key(*key))
        && kind != Kind::Coupon
    {
        let message = format!("Only a coupon has \"{key}\"; leave it out for a file of kind \"{}\".", kind.word());
        return Err(Refusal::at(format!("/{key}"), message));
    }
    let format = match keys.get("format").map(|value| value.as_str().unwrap_or_default()) {
        None | Some("3mf") => Format::ThreeMf,
        Some("stl") => Format::Stl,
        Some(_) => return Err(Refusal::at("/format", "The format of a coupon must be \"3mf\" or \"stl\".")),
    };
    let usual = Ladder::default();
    let odd = (COUNT[0]..=COUNT[1]).step_by(2);
    let count = match keys.get("count") {
        None => usual.count,
        Some(value) => odd.clone().find(|count| value.as_f64() == Some(f64::from(*count))).ok_or_else(|| {
            let all: Vec<String> = odd.map(|count| count.to_string()).collect();
            Refusal::at(
                "/count",
                format!("A coupon's sizes lie evenly round the stated one: count them {}.", all.join(", ")),
            )
        })?,
    };
    let step = match keys.get("step") {
        None => usual.step,
        Some(value) => value.as_f64().filter(|step| (STEP[0]..=STEP[1]).contains(step)).ok_or_else(|| {
            let message = format!("The step between sizes must be a number from {} to {} mm.", STEP[0], STEP[1]);
            Refusal::at("/step", message)
        })?,
    };
    Ok(Asked { ladder: Ladder { count, step }, format })
}

/// What a file's meshes are corrected by; none where nothing was measured, or where the request wants the stated sizes.
pub(super) fn correction(
    kind: Kind,
    keys: &Map<String, Value>,
    stages: &Stages<'_>,
) -> Result<Option<Compensation>, Refusal> {
    const KEY: &str = "/compensated";
    let stated = keys.get("compensated");
    if !matches!(kind, Kind::Stl | Kind::ThreeMf | Kind::Plate | Kind::All | Kind::Pack) {
        let message = format!(
            "Only an \"stl\", a \"3mf\", a \"plate\", \"all\" and a \"pack\" can be compensated; leave it out for a file of kind \"{}\".",
            kind.word()
        );
        return if stated.is_some() { Err(Refusal::at(KEY, message)) } else { Ok(None) };
    }
    let why = match (stated, coupon::correction(&stages.design.process)) {
        (Some(Value::Bool(false)), _) => return Ok(None),
        (None | Some(Value::Bool(true)), Some(Ok(compensation))) => return Ok(Some(compensation)),
        (None, _) => return Ok(None),
        (Some(Value::Bool(true)), None | Some(Err(HeldBack::Nothing))) => "no coupon has been measured yet",
        (Some(Value::Bool(true)), Some(Err(HeldBack::Other))) => "the coupon was of another printer or material",
        (Some(Value::Bool(true)), Some(Err(HeldBack::Doubtful))) => "a reading of the coupon looks like a slip",
        (Some(_), _) => return Err(Refusal::at(KEY, "Whether a file is compensated must be true or false.")),
    };
    Err(Refusal::at(KEY, format!("No file can be compensated: {why}. See the findings.")))
}

/// What a compensated file says about itself; empty for another.
pub(super) fn note(correction: Option<&Compensation>, stages: &Stages<'_>, tongue: &Tongue) -> String {
    let Some(by) = correction else { return String::new() };
    let process = &stages.design.process;
    let sizes = [
        (OUTERS_OFF, by.outer.map(|size| size.off)),
        (BORES_OFF, by.bore.map(|size| size.off)),
        (LENGTHS_OFF, by.length.map(|(ratio, _)| (ratio - 1.0) * 100.0)),
    ];
    let off = |(words, off): (&str, Option<f64>)| Some(tongue.say(words, &[&tongue.number(&shown(off?))]));
    let offs: Vec<String> = sizes.into_iter().filter_map(off).collect();
    let [material, printer] = [&process.material.name, &process.printer.name].map(|name| tongue.word(name));
    tongue.say(COMPENSATED, &[material, printer, &offs.join(", ")])
}

/// Everything that [`note`] says: what another language has rows for.
pub(super) fn templates() -> Vec<&'static str> {
    all()
}

worded! {
    COMPENSATED: &str = "Compensated by a measured coupon of {0} on {1}: {2}.";
    OUTERS_OFF: &str = "outer diameters come out {0} mm off";
    BORES_OFF: &str = "bores come out {0} mm off";
    LENGTHS_OFF: &str = "lengths come out {0} % off";
}

/// The coupon's bytes.
pub(super) fn file(
    stages: &Stages<'_>,
    run: usize,
    asked: &Asked,
    deviation: f64,
    design: &DesignTold<'_>,
) -> Result<Vec<u8>, Refusal> {
    let stated = &stages.design.runs[run];
    let coupon = stages.coupon(run, asked.ladder).map_err(|fault| match fault {
        CouponFault::NoBore { bore } => Refusal::at(
            "/step",
            format!("The thinnest end would have a bore of {} mm. Take a smaller step or fewer sizes.", shown(bore)),
        ),
        CouponFault::NoWall { wall } => Refusal::at(
            format!("/runs/{run}/ends/chamfer_length"),
            format!(
                "{}: the chamfer and the inner edge break leave {} mm of wall at the tip; shorten them first.",
                stated.name,
                shown(wall)
            ),
        ),
    })?;
    let meshes = coupon.meshes(stated, deviation).map_err(|fault| {
        Refusal::at(format!("/runs/{run}{}", fault.path), format!("{}: {}.", stated.name, fault.message))
    })?;
    if !meshes.iter().all(is_solid) {
        let message = "The coupon's mesh has a flaw, so no file is made of it. The fault is Tubewright's; another \
                       deviation may do.";
        return Err(Refusal::at(format!("/runs/{run}"), message));
    }
    let names: Vec<String> = coupon
        .sticks
        .iter()
        .zip(1..)
        .map(|(stick, number)| {
            let [bottom, top] = stick.ends.map(|end| {
                format!("{} mm with {} ring{}", shown(end.outer), end.rings, if end.rings == 1 { "" } else { "s" })
            });
            format!("stick {number}, {bottom}, {top}")
        })
        .collect();
    let parts: Vec<NamedMesh<'_>> = names.iter().zip(&meshes).map(|(name, mesh)| NamedMesh { name, mesh }).collect();
    let title = format!("{}, coupon", stated.name);
    Ok(match asked.format {
        Format::ThreeMf => export::three_mf(&parts, &design.meta(&title)),
        Format::Stl => export::zip_of_stls(&parts),
    })
}
