//! Any text into every call ends in a value or a refusal, and every fix that is offered mends what it was offered for.

use crate::answers::{findings, report, told};
use crate::every_call::every_call;
use serde_json::Value;
use std::panic::{AssertUnwindSafe, catch_unwind};
use tubewright_core::engine;
use tubewright_core::strategies::{Chance, KINDS, designs, spoiled};

const ROUNDS: usize = 25;

#[test]
fn made_up_designs_get_an_answer_from_every_call() {
    for design in designs(0xca11, 4 * KINDS.len()) {
        answered(&design.text, &told(&design));
    }
}

#[test]
fn spoiled_designs_get_an_answer_from_every_call() {
    let mut chance = Chance::of(0x5901);
    let mut still_designs = 0;
    for design in designs(0x5901, ROUNDS * KINDS.len()) {
        // The far and the many take their time; smaller designs reach as many corners of the code.
        let seed = chance.word();
        let text = spoiled(&design.text, &mut Chance::of(seed));
        still_designs += usize::from(engine::normalise(&text).is_ok());
        answered(&text, &format!("spoiled with seed {seed}: {}", told(&design)));
    }
    let all = ROUNDS * KINDS.len();
    assert!(still_designs > all / 10 && still_designs < all * 9 / 10, "{still_designs} of {all} are designs still");
}

/// Names the text that a call fails on.
fn answered(text: &str, told: &str) {
    if catch_unwind(AssertUnwindSafe(|| every_call(text))).is_err() {
        panic!("{told}\n{text}");
    }
}

#[test]
fn every_fix_mends_what_it_is_offered_for() {
    let mut fixes = 0;
    for design in designs(0xf17, ROUNDS * KINDS.len()) {
        let told = told(&design);
        let before = report(&design.text, &told);
        for finding in findings(&before).iter().filter(|finding| !finding["fix"].is_null()) {
            fixes += 1;
            let mended = engine::apply(&design.text, &finding["fix"].to_string())
                .unwrap_or_else(|refusal| panic!("{told}: the fix is refused: {refusal}\n{finding}"));
            let after = report(&mended, &told);
            let alike = |report: &Value| findings(report).iter().filter(|other| is_alike(other, finding)).count();
            assert!(alike(&after) < alike(&before), "{told}: not mended:\n{finding:#}\n{:#}", after["findings"]);
        }
    }
    assert!(fixes > 2 * ROUNDS, "{fixes}");
}

/// The same but for its numbers: of one kind, about one run, at one place, naming the same things.
fn is_alike(a: &Value, b: &Value) -> bool {
    let names = |finding: &Value| {
        let message = finding["message"].as_str().unwrap_or_default().to_owned();
        message.split(['“', '”']).skip(1).step_by(2).map(str::to_owned).collect::<Vec<_>>()
    };
    // Places in lists shift when a fix takes something out.
    let removes = b["fix"].as_array().is_some_and(|steps| steps.iter().any(|step| step["op"] == "remove"));
    a["code"] == b["code"] && a["run"] == b["run"] && (removes || (a["where"] == b["where"] && names(a) == names(b)))
}
