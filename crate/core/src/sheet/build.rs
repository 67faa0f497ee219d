//! What the builder does with the prints: coupon, finishing, assembly, seating, leak test, first fill.

use super::html::{Html, Row};
use super::{Sheet, fixed, joining, words};
use crate::cautions::{CAUTIONS, FIRST_FILL};
use crate::check::words::message;

/// Findings that say in which order and which way tubes go in.
const ORDER: [&str; 2] = ["order_of_assembly", "no_order"];
const WAY_IN: [&str; 4] = ["goes_straight_in", "part_stands_back", "both_on_one_part", "strikes_going_in"];

pub(super) fn told(html: &mut Html, sheet: &Sheet<'_>) {
    html.element("h2", words::BUILDER);
    cautions(html, sheet);
    coupons(html, sheet);
    html.element("h3", words::FINISHING);
    html.list("ol", words::finishing(sheet.design.process.material.way));
    html.remark(words::PRACTICE);
    joining::told(html, sheet);
    assembly(html, sheet);
    seating(html, sheet);
    html.element("h3", words::FIRST);
    html.list(
        "ol",
        FIRST_FILL.iter().map(|[step, mind]| match *mind {
            "" => (*step).to_owned(),
            mind => format!("{step} Care: {mind}"),
        }),
    );
    html.remark(words::PRACTICE);
}

fn cautions(html: &mut Html, sheet: &Sheet<'_>) {
    html.raw("<section class=\"care\">\n");
    html.element("h3", words::CAUTIONS);
    let material = &sheet.design.process.material;
    let own = (!material.cautions.is_empty()).then(|| format!("{}: {}", material.name, material.cautions));
    html.list("ul", own.into_iter().chain(CAUTIONS.iter().map(|caution| (*caution).to_owned())));
    html.raw("</section>\n");
}

fn coupons(html: &mut Html, sheet: &Sheet<'_>) {
    html.element("h3", words::COUPON);
    if !sheet.coupons.is_empty() {
        html.element("p", words::COUPON_IS);
    }
    let have = sheet.coupons.iter().map(|(file, runs)| format!("{file}: for {}", runs.join(", ")));
    let lack = sheet.without_coupon.iter().map(|(name, why)| format!("No coupon for {name}: {why}"));
    html.list("ul", have.chain(lack));
}

/// The order, then each tube's way in, in the words of the findings.
fn assembly(html: &mut Html, sheet: &Sheet<'_>) {
    html.element("h3", words::ASSEMBLY);
    let of = |codes: &'static [&'static str]| sheet.findings.iter().filter(move |found| codes.contains(&found.code));
    let order: Vec<String> = of(&ORDER).map(message).collect();
    if order.is_empty() {
        html.element("p", words::ALONE);
    }
    for line in order {
        html.element("p", &line);
    }
    let ways: Vec<String> = of(&WAY_IN).map(message).collect();
    if !ways.is_empty() {
        html.list("ul", super::shortened(ways));
    }
}

fn seating(html: &mut Html, sheet: &Sheet<'_>) {
    html.element("h3", words::SEATING);
    let rows = sheet.pieces.iter().flat_map(|piece| {
        piece.ends.iter().zip(["start", "end"]).filter_map(|(end, which)| {
            let end = end.as_ref()?;
            Some(Row::of(vec![
                piece.name.clone(),
                format!("{which}, at {}", end.port),
                end.fitting.name.clone(),
                fixed(end.fitting.socket_depth, 1),
                if end.trim > 0.0 { fixed(end.trim, 1) } else { "nothing".to_owned() },
                if end.mark { words::SEAT_VANISHES } else { words::SEAT_NONE }.to_owned(),
            ]))
        })
    });
    html.table(words::DEPTHS, words::SEAT_COLUMNS, &rows.collect::<Vec<_>>());
    html.list("ol", words::SEATING_STEPS);
}
