//! What the print service reads: files, finish, sealing bands, its own questions.

use super::html::{Html, Row};
use super::{End, Piece, Sheet, Stood, times, words};
use crate::design::wording::shown;
use crate::service::TubeKnown;
use crate::tongue::Tongue;

pub(super) fn told(html: &mut Html, sheet: &Sheet<'_>) {
    let tongue = html.tongue;
    html.said("h2", words::SERVICE);
    html.said("p", words::ALL_ABOUT_FILES);
    if !sheet.note.is_empty() {
        html.element("p", &tongue.say(words::COMPENSATED, &[sheet.note]));
    }
    let rows: Vec<Row> = sheet.pieces.iter().map(|piece| ordered(sheet, piece)).collect();
    html.table(words::ORDER, words::ORDER_COLUMNS, &rows);
    html.remark_said(words::PLATES_ARE);
    html.said("h3", words::STANCE);
    html.list("ul", sheet.pieces.iter().map(|piece| stance(sheet, piece)));
    html.said("h3", words::FINISH);
    let cut = sheet.pieces.iter().any(|piece| piece.joints.iter().any(Option::is_some));
    html.list_said("ul", words::WISHES.iter().chain(cut.then_some(&words::JOINT_WISH)));
    let bands: Vec<Row> =
        sheet.pieces.iter().flat_map(|piece| (0..2).filter_map(|end| band(tongue, piece, end))).collect();
    html.table(words::BANDS, words::BAND_COLUMNS, &bands);
    html.remark_said(words::SEAL_TAKES);
    let questions: Vec<Row> = sheet.pieces.iter().flat_map(|piece| questions(tongue, piece)).collect();
    html.table(words::QUESTIONS, words::QUESTION_COLUMNS, &questions);
    let sources: Vec<String> = sources(sheet).into_iter().map(|source| tongue.tell(source)).collect();
    html.remark(&tongue.say(words::LIMITS, &[&sources.join("; ")]));
}

fn ordered(sheet: &Sheet<'_>, piece: &Piece<'_>) -> Row {
    let (tongue, process) = (sheet.tongue, &sheet.design.process);
    let cm3 = piece.material / 1e3;
    let [x, y, z] = piece.sides;
    Row {
        cells: vec![
            tongue.say(words::FILES, &[&piece.file]),
            piece.name.clone(),
            piece.plate.map_or(tongue.word_of(words::NO_PLATE).to_owned(), |plate| plate.to_string()),
            times(tongue, piece.sides),
            tongue.fixed(cm3, 2),
            tongue.fixed(cm3 * process.material.density_g_per_cm3, 1),
            piece.triangles.to_string(),
            tongue.number(&shown(piece.deviation)),
            "1".to_owned(),
            tongue.word(&process.material.name).to_owned(),
            tongue.word(&process.printer.name).to_owned(),
        ],
        data: vec![
            ("file", piece.file.clone()),
            ("box", format!("{x} {y} {z}")),
            ("low", piece.low.to_string()),
            ("cm3", cm3.to_string()),
            ("triangles", piece.triangles.to_string()),
            ("stands", piece.stood.is_some().to_string()),
            ("plate", piece.plate.map_or(String::new(), |plate| plate.to_string())),
        ],
    }
}

fn stance(sheet: &Sheet<'_>, piece: &Piece<'_>) -> String {
    let (tongue, name) = (sheet.tongue, piece.name.as_str());
    let Some(stood) = &piece.stood else {
        let volume = sheet.design.process.printer.build_volume.map(|side| tongue.number(&shown(side))).join(" × ");
        return tongue.say(words::FITS_NOT, &[name, &volume]);
    };
    let low = if piece.low == 0.0 {
        tongue.word(words::ON_PLATE).to_owned()
    } else {
        tongue.say(words::ABOVE_PLATE, &[&tongue.fixed(piece.low, 1)])
    };
    let mut told = vec![tongue.say(if stood.own { words::AS_CHOSEN } else { words::AS_FOUND }, &[name, &low])];
    told.extend(supports(tongue, stood, &piece.ends));
    told.join(" ")
}

fn supports(tongue: &Tongue, stood: &Stood, ends: &[Option<End<'_>>; 2]) -> Vec<String> {
    let skin = (stood.support > 0.0).then(|| tongue.say(words::WANTS_SUPPORT, &[&tongue.fixed(stood.support, 0)]));
    let bands = stood.bands.iter().zip(ends).filter(|(band, _)| **band > 0.0);
    let overhanging = bands.map(|(band, end)| {
        let band = tongue.fixed(*band, 1);
        match end {
            Some(end) => tongue.say(words::BAND_OVERHANGS, &[&band, end.port]),
            None => tongue.say(words::SPIGOT_OVERHANGS, &[&band]),
        }
    });
    skin.into_iter().chain(overhanging).collect()
}

fn band(tongue: &Tongue, piece: &Piece<'_>, end: usize) -> Option<Row> {
    let (which, at) = (["start", "end"][end], piece.ends[end].as_ref()?);
    let not_known = || tongue.word(words::NOT_KNOWN).to_owned();
    let reach = tongue.fixed(at.band, 1);
    let reach = if at.trim > 0.0 {
        tongue.say(words::BAND_TRIMMED, &[&reach, &tongue.number(&shown(at.trim))])
    } else {
        tongue.say(words::BAND, &[&reach])
    };
    let takes = match at.seal.as_ref().map(|seal| seal.outer_range()) {
        None => not_known(),
        Some(None) => tongue.word(words::NO_SIZE).to_owned(),
        Some(Some(sizes)) => {
            let [least, most] = sizes.map(|size| tongue.fixed(size, 2));
            tongue.say(words::FROM_TO, &[&least, &most])
        }
    };
    let expected = at.seal.as_ref().map_or_else(not_known, |seal| {
        tongue.say(off(seal.tube_known), &[&tongue.fixed(seal.tolerances.outer_diameter, 2)])
    });
    let outer = piece.run.tube.outer_diameter;
    Some(Row {
        cells: vec![
            piece.name.clone(),
            tongue.say(words::ENDS[end], &[at.port]),
            reach,
            tongue.fixed(outer, 2),
            takes,
            expected,
        ],
        data: vec![("band", at.band.to_string()), ("end", which.to_owned())],
    })
}

/// Where the limits come from, each once.
fn sources<'s>(sheet: &Sheet<'s>) -> Vec<&'s str> {
    let mut all: Vec<&str> = Vec::new();
    for asked in sheet.pieces.iter().flat_map(|piece| &piece.questions) {
        if !asked.source.is_empty() && !all.contains(&asked.source.as_str()) {
            all.push(&asked.source);
        }
    }
    all
}

/// How far a diameter may be off, by where that is known from.
fn off(known: TubeKnown) -> &'static str {
    match known {
        TubeKnown::Measured => words::OFF_MEASURED,
        TubeKnown::Printer => words::OFF_PRINTER,
        TubeKnown::Usual => words::OFF_USUAL,
    }
}

fn questions<'s>(tongue: &'s Tongue, piece: &'s Piece<'_>) -> impl Iterator<Item = Row> + 's {
    piece.questions.iter().map(|asked| Row {
        cells: vec![
            piece.name.clone(),
            tongue.word(if asked.passes { words::PASSED } else { words::FAILED }).to_owned(),
            tongue.tell(&asked.message),
        ],
        data: vec![("passed", asked.passes.to_string())],
    })
}
