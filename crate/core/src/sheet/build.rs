//! What the builder does with the prints: coupon, finishing, assembly, seating, leak test, first fill.

use super::html::{Html, Row};
use super::{Sheet, joining, words};
use crate::cautions::{CAUTIONS, FIRST_FILL};
use crate::check::Finding;

/// Findings that say in which order and which way tubes go in.
const ORDER: [&str; 2] = ["order_of_assembly", "no_order"];
const WAY_IN: [&str; 4] = ["goes_straight_in", "part_stands_back", "both_on_one_part", "strikes_going_in"];

pub(super) fn told(html: &mut Html, sheet: &Sheet<'_>) {
    html.said("h2", words::BUILDER);
    cautions(html, sheet);
    coupons(html, sheet);
    html.said("h3", words::FINISHING);
    html.list_said("ol", words::finishing(sheet.design.process.material.way));
    html.remark_said(words::PRACTICE);
    joining::told(html, sheet);
    assembly(html, sheet);
    seating(html, sheet);
    html.said("h3", words::FIRST);
    let tongue = html.tongue;
    html.list(
        "ol",
        FIRST_FILL.iter().map(|[step, mind]| match *mind {
            "" => tongue.word(step).to_owned(),
            mind => tongue.say(words::CARE, &[tongue.word(step), tongue.word(mind)]),
        }),
    );
    html.remark_said(words::PRACTICE);
}

fn cautions(html: &mut Html, sheet: &Sheet<'_>) {
    html.raw("<section class=\"care\">\n");
    html.said("h3", words::CAUTIONS);
    let material = &sheet.design.process.material;
    let tongue = html.tongue;
    let own = (!material.cautions.is_empty())
        .then(|| format!("{}: {}", tongue.word(&material.name), tongue.word(&material.cautions)));
    html.list("ul", own.into_iter().chain(CAUTIONS.iter().map(|caution| tongue.word(caution).to_owned())));
    html.raw("</section>\n");
}

fn coupons(html: &mut Html, sheet: &Sheet<'_>) {
    html.said("h3", words::COUPON);
    if !sheet.coupons.is_empty() {
        html.said("p", words::COUPON_IS);
    }
    let tongue = html.tongue;
    let have = sheet.coupons.iter().map(|(file, runs)| tongue.say(words::COUPON_FOR, &[file, &runs.join(", ")]));
    let lack = sheet.without_coupon.iter().map(|(name, why)| tongue.say(words::NO_COUPON, &[name, &tongue.tell(why)]));
    html.list("ul", have.chain(lack));
}

/// The order, then each tube's way in, in the words of the findings.
fn assembly(html: &mut Html, sheet: &Sheet<'_>) {
    html.said("h3", words::ASSEMBLY);
    let of = |codes: &'static [&'static str]| {
        let among = move |found: &&Finding| codes.contains(&found.code);
        super::told(sheet.tongue, sheet.findings.iter().filter(among))
    };
    let order = of(&ORDER);
    if order.is_empty() {
        html.said("p", words::ALONE);
    }
    for line in order {
        html.element("p", &line);
    }
    let ways = of(&WAY_IN);
    if !ways.is_empty() {
        html.list("ul", ways);
    }
}

fn seating(html: &mut Html, sheet: &Sheet<'_>) {
    html.said("h3", words::SEATING);
    let tongue = html.tongue;
    let rows = sheet.pieces.iter().flat_map(|piece| {
        piece.ends.iter().zip(words::ENDS).filter_map(|(end, at)| {
            let end = end.as_ref()?;
            Some(Row::of(vec![
                piece.name.clone(),
                tongue.say(at, &[end.port]),
                end.fitting.name.clone(),
                tongue.fixed(end.fitting.socket_depth, 1),
                if end.trim > 0.0 { tongue.fixed(end.trim, 1) } else { tongue.word(words::NO_TRIM).to_owned() },
                tongue.word(if end.mark { words::SEAT_VANISHES } else { words::SEAT_NONE }).to_owned(),
            ]))
        })
    });
    html.table(words::DEPTHS, words::SEAT_COLUMNS, &rows.collect::<Vec<_>>());
    html.list_said("ol", words::SEATING_STEPS);
}
