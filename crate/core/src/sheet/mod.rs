//! The sheet of a pack: one page of HTML that tells a print service what to print, and the builder what to do with it.
//!
//! It stands alone: no script, nothing fetched, and it is XML as well as HTML, so that any reader of either takes it.

mod build;
mod html;
mod joining;
mod order;
mod quantities;
mod style;
mod words;

use crate::accept::Asked;
use crate::check::{Finding, Severity, words::message_in};
use crate::design::{Design, Fitting, Run};
use crate::service::SealAtEnd;
use crate::tongue::Tongue;
use crate::tube::Joint;
use html::Html;

/// Everything that is told.
#[derive(Debug)]
pub struct Sheet<'a> {
    /// The design.
    pub design: &'a Design,
    /// Its name, or what stands for it.
    pub title: &'a str,
    /// What the files are corrected by; empty for those of the stated sizes.
    pub note: &'a str,
    /// What is to be printed.
    pub pieces: &'a [Piece<'a>],
    /// Names of runs that are left out, and why.
    pub left_out: &'a [(&'a str, String)],
    /// Files of coupons in the pack, and the tubes that each is for.
    pub coupons: &'a [(String, Vec<&'a str>)],
    /// Names of runs whose tube has no coupon, and why.
    pub without_coupon: &'a [(&'a str, String)],
    /// What is found about the design.
    pub findings: &'a [Finding],
    /// The language that it is told in.
    pub tongue: &'a Tongue,
}

/// A tube of the pack, or a piece of one. Lengths mm.
#[derive(Debug)]
pub struct Piece<'a> {
    /// The run as stated.
    pub run: &'a Run,
    /// What it is called: the run's name, and which piece of it.
    pub name: String,
    /// The joints that it begins and ends with; none where it is the run's own end.
    pub joints: [Option<Joint>; 2],
    /// Its STL and 3MF in the pack, without their endings.
    pub file: String,
    /// Sides of the box round the file's mesh.
    pub sides: [f64; 3],
    /// Lowest height of the file's mesh.
    pub low: f64,
    /// How it stands on the plate; none where it fits in no way, the file then being in the datum.
    pub stood: Option<Stood>,
    /// Number of the plate that it lies on with others; none where it fits in no way.
    pub plate: Option<usize>,
    /// Volume of material, mm3.
    pub material: f64,
    /// Volume of the bore, mm3.
    pub bore: f64,
    /// How far the mesh may leave the exact skin.
    pub deviation: f64,
    /// Triangles of the mesh.
    pub triangles: usize,
    /// What a print service asks of the file.
    pub questions: Vec<Asked>,
    /// Its start and its end; none where there is a joint.
    pub ends: [Option<End<'a>>; 2],
}

/// A stance, as far as it is told.
#[derive(Debug, Clone, Copy)]
pub struct Stood {
    /// Whether the builder chose it.
    pub own: bool,
    /// Layers of its height; none where the printer states no layer.
    pub layers: Option<f64>,
    /// Hours that they take; none where that is not known.
    pub hours: Option<f64>,
    /// Area of skin that wants support, mm2.
    pub support: f64,
    /// Volume of its supports at least and at most, mm3; none where that is not known.
    pub supports: Option<[f64; 2]>,
    /// Length of the sealing bands at the start and the end that wants support all the same, mm.
    pub bands: [f64; 2],
}

/// An end of a tube. Lengths mm.
#[derive(Debug)]
pub struct End<'a> {
    /// Name of the port.
    pub port: &'a str,
    /// The fitting there.
    pub fitting: &'a Fitting,
    /// From the end face to the edge of the sealing band.
    pub band: f64,
    /// What is cut off after printing.
    pub trim: f64,
    /// Whether there is a seating mark.
    pub mark: bool,
    /// The ring; none where it is not stated, or does not fit.
    pub seal: Option<SealAtEnd>,
}

/// Everything that the sheet says in words of its own: what another language has rows for.
pub(crate) fn templates() -> Vec<&'static str> {
    words::all()
}

/// The sheet as HTML. The same design in the same language gives the same text.
pub fn sheet(sheet: &Sheet<'_>) -> String {
    let tongue = sheet.tongue;
    let mut html = Html::new(tongue);
    html.raw(&format!("<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\"/>\n", tongue.language()));
    html.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    html.element("title", &tongue.say(words::TITLE, &[sheet.title]));
    html.raw("<style>");
    html.raw(style::STYLE);
    html.raw("</style>\n</head>\n<body>\n<main>\n");
    html.title(sheet.title);
    html.said("p", words::SUBTITLE);
    warnings(&mut html, sheet);
    html.said("p", words::ABOUT);
    order::told(&mut html, sheet);
    quantities::told(&mut html, sheet);
    build::told(&mut html, sheet);
    html.raw("</main>\n</body>\n</html>\n");
    html.finish()
}

/// Most findings of a kind that are told.
const MOST_TOLD: usize = 40;

/// What speaks against printing, before anything else.
fn warnings(html: &mut Html, sheet: &Sheet<'_>) {
    let of = |severity| told(sheet.tongue, sheet.findings.iter().filter(|found| found.severity == severity));
    let (stops, cares) = (of(Severity::Stop), of(Severity::Care));
    if !stops.is_empty() {
        html.raw("<section class=\"stop\">\n");
        html.said("h2", words::STOPS);
        html.said("p", words::STOPS_MEAN);
        html.list("ul", stops);
        html.raw("</section>\n");
    }
    if !sheet.left_out.is_empty() {
        html.raw("<section class=\"stop\">\n");
        html.said("h2", words::LEFT_OUT);
        let tongue = sheet.tongue;
        let line = |(name, why): &(&str, String)| tongue.say(words::LEFT_OUT_IS, &[name, &tongue.tell(why)]);
        html.list("ul", sheet.left_out.iter().map(line));
        html.raw("</section>\n");
    }
    if !cares.is_empty() {
        html.raw("<section class=\"care\">\n");
        html.said("h2", words::CARES);
        html.list("ul", cares);
        html.raw("</section>\n");
    }
}

/// The first of some findings in words, and how many more there are.
fn told<'f>(tongue: &Tongue, found: impl Iterator<Item = &'f Finding> + Clone) -> Vec<String> {
    let more = found.clone().count().saturating_sub(MOST_TOLD);
    let mut lines: Vec<String> = found.take(MOST_TOLD).map(|found| message_in(found, tongue)).collect();
    if more > 0 {
        lines.push(tongue.say(words::MORE, &[&more.to_string()]));
    }
    lines
}

/// Sides of a box, or a point.
fn times(tongue: &Tongue, sides: [f64; 3]) -> String {
    sides.map(|side| tongue.fixed(side, 1)).join(" × ")
}
