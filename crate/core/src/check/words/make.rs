//! Words about what can be made: sizes, walls, chamfers, dressed bodies.

use super::{Limit, Words};

pub(super) const WORDS: &[Words] = &[
    Words {
        code: "tube_diameter",
        title: "Tube does not fit its fitting",
        meaning: "A fitting seals on one outer diameter only: a thinner tube leaks, a thicker one does not go in.",
        messages: &["the tube is {value}, but {fitting} at {port} takes {limit}."],
        limit: Limit::Exact,
    },
    Words {
        code: "thin_wall",
        title: "Wall too thin",
        meaning: "A wall under what the printer makes well comes out with holes or breaks when the tube is pushed in.",
        messages: &[
            "the wall is {value}; {limit} is the least for {printer}. A bore of {bore} or less leaves it.",
            "the wall is {value}; {limit} is the least for {printer}.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "thin_tip",
        title: "Chamfer leaves too little wall",
        meaning: "The chamfer and the inner edge break take wall away at the tube's very end, where it is pushed hardest.",
        messages: &[
            "the chamfer and the inner edge break meet before the tube's end: they go {missing} deeper than the wall. A \
             chamfer length of {chamfer} or less leaves the least wall, {limit}.",
            "the chamfer and the inner edge break meet before the tube's end: they go {missing} deeper than the wall. Use a \
             smaller bore, a flatter chamfer or a smaller edge break.",
            "the chamfer leaves {value} of wall at the tube's end; {limit} is the least. A chamfer length of {chamfer} \
             or less leaves it.",
            "the chamfer leaves {value} of wall at the tube's end; {limit} is the least. Use a smaller bore or a \
             flatter chamfer.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "too_fine",
        title: "Finer than the printer draws",
        meaning: "What is narrower than two of the printer's pixels, spots or nozzle widths may be drawn as one, or not at all: a wall \
                  then leaks, and a mark does not show.",
        messages: &[
            "{feature} {value}; the printer surely draws {limit} and more. {instead}.",
            "{feature} {value}; the printer surely draws {limit} and more.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "joint_room",
        title: "No room for a joint",
        meaning: "A bonded joint needs plain tube on a straight or an even bend, outside the fittings' bands and leads, as long as \
                  its spigot, its collar and its marks.",
        messages: &[
            "no joint has room with its seam at {value}; the nearest place that has is {limit}. It is left uncut there.",
            "no joint has room with its seam at {value}, nor anywhere else that is left. It is left uncut there.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "dress_wall",
        title: "Body's wall too thin",
        meaning: "Grooves and a slimmer body take wall away. A wall under what the printer makes well comes out with holes, \
                  or bursts.",
        messages: &[
            "the body's wall is {value} at its thinnest; {limit} is the least. Make the grooves shallower or the body \
                     wider.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "dress_room",
        title: "No room for the body's shape",
        meaning: "The body's shape begins after the one fitting's lead and ends before the other's. Between them the tube \
                  is too short for it to come and go.",
        messages: &[
            "the leads leave {value} for the body, and its blends of {blend} at both ends need more than {limit}. \
                     Shorten the blend, or leave the tube plain.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "chamfer_long",
        title: "Chamfer too long",
        meaning: "The chamfer reaches to where the tube must be round and full: the ring's place, or the first bend.",
        messages: &["the chamfer is {value} long, but only {limit} of tube sits in the fitting at {port}. Make it \
                     shorter; {usual} is usual."],
        limit: Limit::Most,
    },
    Words {
        code: "fit_unknown",
        title: "Fit not measured",
        meaning: "A ring seals on tenths of a millimetre, and no two printers print them alike. A coupon costs a few grams and \
                  shows it before the tubes are printed.",
        messages: &[
            "how {printer} really prints is not measured. Print a coupon, try its ends in the fitting and put in what \
             your calipers read: the files are corrected by it.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "fit_reading",
        title: "Reading looks like a slip",
        meaning: "No print is that far off. A slip among the readings would spoil every file, so none is corrected until it is \
                  put right.",
        messages: &[
            "{value} was read where the file has {nominal}; more than {limit} off is a slip of the jaws or the keys. No file \
             is corrected until it is put right.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "fit_exchanged",
        title: "Outer diameters and bores exchanged",
        meaning: "A tube is wider than its bore. No file is corrected until the readings say so.",
        messages: &[
            "the widest outer diameter read is {value}, no wider than a bore of {limit}. Were the two exchanged? No file is \
             corrected until it is put right.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "fit_other",
        title: "Coupon of another printer or material",
        meaning: "What one printer does with one material says nothing about another.",
        messages: &[
            "the coupon was of {was}, and the design is of {is}. The readings are kept, but no file is corrected by them: \
             print another coupon.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "fit_wall",
        title: "Correction leaves no wall",
        meaning: "The files make up for how the printer prints: a thicker tube by a thinner file. Here nothing is left of it.",
        messages: &[
            "corrected by the coupon, its file would have {value} of wall or bore left; {limit} is the least. Check \
                     the readings, or make the wall thicker.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "far_from_datum",
        title: "Far from the datum",
        meaning: "The files hold coordinates with seven digits. So far out they move the skin noticeably; a machine is a \
                  metre or two at most, so it may also be a slip of the keys.",
        messages: &[
            "the tube reaches {value} from the datum; from {limit} on, files round its skin by up to {moved}. Put \
                     the datum nearer, or look for a slip of the keys.",
        ],
        limit: Limit::Exact,
    },
];
