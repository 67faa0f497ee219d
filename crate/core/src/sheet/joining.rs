//! How the pieces of cut tubes are put together: which spigot goes into which socket, and how it is bonded.

use super::html::{Html, Row};
use super::{Sheet, fixed, words};

pub(super) fn told(html: &mut Html, sheet: &Sheet<'_>) {
    let pairs = sheet.pieces.iter().zip(sheet.pieces.iter().skip(1));
    let joint = |(before, after): (&super::Piece<'_>, &super::Piece<'_>)| {
        let joint = after.joints[0]?;
        Some(Row {
            cells: vec![
                before.name.clone(),
                after.name.clone(),
                rings(joint.number),
                fixed(joint.size.length, 1),
                fixed(joint.size.clearance, 2),
            ],
            data: vec![("joint", joint.number.to_string()), ("at", joint.at.to_string())],
        })
    };
    let rows: Vec<Row> = pairs.filter_map(joint).collect();
    if rows.is_empty() {
        return;
    }
    html.element("h3", words::JOINING);
    html.table(words::JOINTS, words::JOINT_COLUMNS, &rows);
    html.raw("<section class=\"care\">\n");
    html.list("ul", words::JOINT_CAUTIONS);
    html.raw("</section>\n");
    html.list("ol", words::JOINT_STEPS);
    html.remark(words::PRACTICE);
}

/// A joint's marks in words: a wide ring counts five.
fn rings(number: u32) -> String {
    let count = |count: u32, what: &str| match count {
        0 => None,
        1 => Some(format!("1 {what} ring")),
        _ => Some(format!("{count} {what} rings")),
    };
    let both = [count(number / 5, "wide"), count(number % 5, "narrow")];
    both.into_iter().flatten().collect::<Vec<_>>().join(" and ")
}
