//! How the pieces of cut tubes are put together: which spigot goes into which socket, and how it is bonded.

use super::html::{Html, Row};
use super::{Sheet, words};
use crate::tongue::Tongue;

pub(super) fn told(html: &mut Html, sheet: &Sheet<'_>) {
    let tongue = html.tongue;
    let pairs = sheet.pieces.iter().zip(sheet.pieces.iter().skip(1));
    let joint = |(before, after): (&super::Piece<'_>, &super::Piece<'_>)| {
        let joint = after.joints[0]?;
        Some(Row {
            cells: vec![
                before.name.clone(),
                after.name.clone(),
                rings(tongue, joint.number),
                tongue.fixed(joint.size.length, 1),
                tongue.fixed(joint.size.clearance, 2),
            ],
            data: vec![("joint", joint.number.to_string()), ("at", joint.at.to_string())],
        })
    };
    let rows: Vec<Row> = pairs.filter_map(joint).collect();
    if rows.is_empty() {
        return;
    }
    html.said("h3", words::JOINING);
    html.table(words::JOINTS, words::JOINT_COLUMNS, &rows);
    html.raw("<section class=\"care\">\n");
    html.list_said("ul", words::JOINT_CAUTIONS);
    html.raw("</section>\n");
    html.list_said("ol", words::JOINT_STEPS);
    html.remark_said(words::PRACTICE);
}

/// A joint's marks in words: a wide ring counts five.
fn rings(tongue: &Tongue, number: u32) -> String {
    let count = |count: u32, [one, many]: [&str; 2]| match count {
        0 => None,
        1 => Some(tongue.word(one).to_owned()),
        _ => Some(tongue.say(many, &[&count.to_string()])),
    };
    match (count(number / 5, words::WIDE), count(number % 5, words::NARROW)) {
        (Some(wide), Some(narrow)) => tongue.say(words::BOTH, &[&wide, &narrow]),
        (wide, narrow) => wide.or(narrow).unwrap_or_default(),
    }
}
