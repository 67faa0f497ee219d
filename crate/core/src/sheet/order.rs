//! What the print service reads: files, finish, sealing bands, its own questions.

use super::html::{Html, Row};
use super::{End, Piece, Sheet, Stood, fixed, times, words};
use crate::design::wording::shown;

pub(super) fn told(html: &mut Html, sheet: &Sheet<'_>) {
    html.element("h2", words::SERVICE);
    html.element("p", words::ALL_ABOUT_FILES);
    if !sheet.note.is_empty() {
        html.element("p", &format!("{} Do not correct them again.", sheet.note));
    }
    let rows: Vec<Row> = sheet.pieces.iter().map(|piece| ordered(sheet, piece)).collect();
    html.table(words::ORDER, words::ORDER_COLUMNS, &rows);
    html.remark(words::PLATES_ARE);
    html.element("h3", words::STANCE);
    html.list("ul", sheet.pieces.iter().map(|piece| stance(sheet, piece)));
    html.element("h3", words::FINISH);
    let cut = sheet.pieces.iter().any(|piece| piece.joints.iter().any(Option::is_some));
    html.list("ul", words::WISHES.iter().chain(cut.then_some(&words::JOINT_WISH)));
    let bands: Vec<Row> = sheet.pieces.iter().flat_map(|piece| (0..2).filter_map(|end| band(piece, end))).collect();
    html.table(words::BANDS, words::BAND_COLUMNS, &bands);
    html.remark(words::SEAL_TAKES);
    let questions: Vec<Row> = sheet.pieces.iter().flat_map(questions).collect();
    html.table(words::QUESTIONS, words::QUESTION_COLUMNS, &questions);
    html.remark(&format!("{}{}.", words::LIMITS, sources(sheet).join("; ")));
}

fn ordered(sheet: &Sheet<'_>, piece: &Piece<'_>) -> Row {
    let process = &sheet.design.process;
    let cm3 = piece.material / 1e3;
    let [x, y, z] = piece.sides;
    Row {
        cells: vec![
            format!("{}.stl or .3mf", piece.file),
            piece.name.clone(),
            piece.plate.map_or("none".to_owned(), |plate| plate.to_string()),
            times(piece.sides),
            fixed(cm3, 2),
            fixed(cm3 * process.material.density_g_per_cm3, 1),
            piece.triangles.to_string(),
            shown(piece.deviation),
            "1".to_owned(),
            process.material.name.clone(),
            process.printer.name.clone(),
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
    let name = &piece.name;
    let Some(stood) = &piece.stood else {
        let volume = sheet.design.process.printer.build_volume.map(shown).join(" × ");
        return format!(
            "{name}: it fits a build volume of {volume} mm, less its margin, in no stance; its file is in the builder's own \
             axes. Take a larger printer, or ask for it in two pieces."
        );
    };
    let who = if stood.own { "stands as the builder chose" } else { "stands as was found best" };
    let low = if piece.low == 0.0 {
        "with its lowest point on the plate".to_owned()
    } else {
        format!("with its lowest point {} above the plate", super::fixed(piece.low, 1) + " mm")
    };
    format!("{name}: {who}, {low}.{}", supports(stood, &piece.ends))
}

fn supports(stood: &Stood, ends: &[Option<End<'_>>; 2]) -> String {
    let mut words = if stood.support > 0.0 {
        format!(" About {} mm² of its outer skin wants support.", fixed(stood.support, 0))
    } else {
        String::new()
    };
    for (band, end) in stood.bands.iter().zip(ends) {
        if *band > 0.0 {
            let what = end.as_ref().map_or("spigot".to_owned(), |end| format!("sealing band at {}", end.port));
            words += &format!(
                " Standing so, {} mm of the {what} overhang: turn it rather than support them, or ask.",
                fixed(*band, 1),
            );
        }
    }
    words
}

fn band(piece: &Piece<'_>, end: usize) -> Option<Row> {
    let (which, at) = (["start", "end"][end], piece.ends[end].as_ref()?);
    let trim = if at.trim > 0.0 { format!(", {} of them to be cut off", shown(at.trim)) } else { String::new() };
    let takes = match at.seal.as_ref().map(|seal| (seal, seal.outer_range())) {
        None => words::NOT_KNOWN.to_owned(),
        Some((_, None)) => "no size for sure: ring and gland alone are off by more than the seal takes".to_owned(),
        Some((_, Some([least, most]))) => format!("{} to {}", fixed(least, 2), fixed(most, 2)),
    };
    let expected = at.seal.as_ref().map_or(words::NOT_KNOWN.to_owned(), |seal| {
        format!("± {} ({})", fixed(seal.tolerances.outer_diameter, 2), words_of(seal.tube_known.word()))
    });
    let outer = piece.run.tube.outer_diameter;
    Some(Row {
        cells: vec![
            piece.name.clone(),
            format!("{which}, at {}", at.port),
            format!("0 to {}{trim}", fixed(at.band, 1)),
            fixed(outer, 2),
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

/// Where a tolerance is known from.
fn words_of(known: &str) -> &'static str {
    match known {
        "coupon" => "measured on a coupon",
        "printer" => "the printer's figures",
        _ => "usual",
    }
}

fn questions<'s>(piece: &'s Piece<'_>) -> impl Iterator<Item = Row> + 's {
    piece.questions.iter().map(|asked| Row {
        cells: vec![
            piece.name.clone(),
            if asked.passes { words::PASSED } else { words::FAILED }.to_owned(),
            asked.message.clone(),
        ],
        data: vec![("passed", asked.passes.to_string())],
    })
}
