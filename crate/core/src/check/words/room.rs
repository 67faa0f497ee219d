//! Words about room: what a tube or a fitting meets.

use super::{Limit, Words};

pub(super) const WORDS: &[Words] = &[
    Words {
        code: "meets_itself",
        title: "Tube meets itself",
        meaning: "Two parts of the same tube come closer than the clearance you asked for, or into each other.",
        messages: &[
            "the tube runs into itself by {overlap}, {along} and {further} along from {from}. Move a corner, or \
             give a coil more pitch.",
            "the tube comes within {value} of itself, {along} and {further} along from {from}; you asked for {limit}. \
             Move a corner, or give a coil more pitch.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "meets_run",
        title: "Tube meets another tube",
        meaning: "Two tubes come closer than the clearance you asked for, or into each other.",
        messages: &[
            "the tube runs into {other} by {overlap}, {along} along from {from} and {along_other} along the other from \
             {from_other}. Move a corner of either.",
            "the tube comes within {value} of {other}, {along} along from {from} and {along_other} along the other from \
             {from_other}; you asked for {limit}. Move a corner of either.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "meets_fitting",
        title: "Tube meets a fitting",
        meaning: "The tube comes into the room that a fitting's collar needs to be turned.",
        messages: &[
            "the tube runs into the fitting at {port} by {overlap}, {along} along from {from}. Move a corner.",
            "the tube comes within {value} of the fitting at {port}, {along} along from {from}; you asked for {limit}. \
             Move a corner.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "meets_keep_out",
        title: "Tube meets a keep-out",
        meaning: "The tube comes into space that you said must stay free, or closer to it than the clearance.",
        messages: &[
            "the tube runs into {keep_out} by {overlap}, {along} along from {from}. Lead it round with a corner.",
            "the tube comes within {value} of {keep_out}, {along} along from {from}; you asked for {limit}. Lead it \
             round with a corner.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "fittings_close",
        title: "Fittings close together",
        meaning: "A fitting is turned in by hand or with a wrench, which wants a gap round its collar.",
        messages: &[
            "the fittings at {port} and {other} leave {value} between their collars; {limit} is wanted to turn \
                     them. Measure both collars, or use narrower fittings.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "fitting_meets_keep_out",
        title: "Fitting close to a keep-out",
        meaning: "The collar comes into space that you said must stay free, or closer to it than the clearance.",
        messages: &[
            "the fitting at {port} comes within {value} of {keep_out}; you asked for {limit}. Can it still be turned?",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "not_all_checked",
        title: "Not all gaps checked",
        meaning: "The design has more tubes close together than can be held against one another in a moment. Gaps that \
                  are not told may still be too small.",
        messages: &["not every gap could be checked. Split the design into two to have them all checked."],
        limit: Limit::Exact,
    },
    Words {
        code: "more_findings",
        title: "More findings",
        meaning: "There is so much to say about this design that only the worst of it is told.",
        messages: &["{count} more findings are not told. Mend some of the others, and they will be."],
        limit: Limit::Exact,
    },
];
