//! Words about the way a tube goes: radii, corners, curves, coils, links.

use super::{Limit, Words};

pub(super) const WORDS: &[Words] = &[
    Words {
        code: "bend_radius",
        title: "Bend radius too small",
        meaning: "The radius is that of the tube's middle line. At half the outer diameter or less the inside of the \
                  bend would fold into itself, so no such tube exists.",
        messages: &["a bend radius of {value} folds a tube of {diameter} into itself. Use at least {limit}; {usual} \
                     is usual."],
        limit: Limit::Least,
    },
    Words {
        code: "bend_tight",
        title: "Bend radius below the outer diameter",
        meaning: "It can be printed, but so tight a bend slows the coolant and is hard to support and to clean.",
        messages: &["the bend radius {value} is less than the outer diameter, {limit}; {usual} is usual."],
        limit: Limit::Exact,
    },
    Words {
        code: "coil_tight",
        title: "Coil too tight",
        meaning: "The tube's middle line is bent too sharply in the coil. At half the outer diameter or less the tube's \
                  inside would fold into itself.",
        messages: &[
            "{station} bends the tube of {diameter} to a radius of {value}, which folds it into itself. At least {limit} is \
             needed: open the coil.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "curve_tight",
        title: "Smooth curve too tight",
        meaning: "The points leave the curve too little room to turn. At half the outer diameter or less the tube's \
                  inside would fold into itself.",
        messages: &[
            "near {station} the curve bends the tube of {diameter} to a radius of {value}; at least {limit} is needed. Move \
             {point} by {by}, to {to}.",
            "near {station} the curve bends the tube of {diameter} to a radius of {value}; at least {limit} is needed. \
             Spread the points out, or take one away.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "curve_below_diameter",
        title: "Bent to less than the outer diameter",
        meaning: "It can be printed, but so tight a bend slows the coolant and is hard to support and to clean.",
        messages: &["near {station} the tube is bent to a radius of {value}, less than its outer diameter, {limit}."],
        limit: Limit::Exact,
    },
    Words {
        code: "no_room_to_share",
        title: "Too little room to share",
        meaning: "Bends share the straights between their corners, but what this one is left is less than a tube needs.",
        messages: &["{corner} is left a bend radius of {value}; at least {limit} is needed. Move the corners apart."],
        limit: Limit::Least,
    },
    Words {
        code: "bends_fitted",
        title: "Bends made as large as fits",
        meaning: "You asked for bends as large as fits. Where corners are close together they share the room, so their \
                  radii are smaller than the one stated.",
        messages: &["{bends} less than the radius asked for; the smallest, at {corner}, has {smallest} of {limit}."],
        limit: Limit::Exact,
    },
    Words {
        code: "corners_too_close",
        title: "Corners too close together",
        meaning: "Each bend takes up some of the straight on both sides of its corner. These two want more than there is.",
        messages: &[
            "{before} and {after} leave {value} for their bends, which need {limit}. A bend radius of {largest} or \
             less fits, or move them apart.",
            "{before} and {after} leave {value} for their bends, which need {limit}. No bend radius that a tube can \
             have fits: move them to at least {apart} apart.",
            "{before} and {after} leave {value} for their bends, which need {limit}. Move them apart.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "lead_too_short",
        title: "Bend too close to the fitting",
        meaning: "The tube must come straight out of the fitting for a while, or the ring seals badly and the tube cannot \
                  be pushed in.",
        messages: &[
            "{corner} begins to bend {inside} inside the fitting at {port}, which wants {limit} of straight tube outside \
             first. A bend radius of {largest} or less leaves it, or move the corner further out.",
            "{corner} begins to bend {inside} inside the fitting at {port}, which wants {limit} of straight tube outside \
             first. Move the corner at least {further} further out.",
            "{corner} begins to bend {inside} inside the fitting at {port}, which wants {limit} of straight tube outside \
             first. Move the corner, or the one after it.",
            "{corner} begins to bend {outside} from the fitting at {port}, which wants {limit} of straight tube \
             first. A bend radius of {largest} or less leaves it, or move the corner further out.",
            "{corner} begins to bend {outside} from the fitting at {port}, which wants {limit} of straight tube \
             first. Move the corner at least {further} further out.",
            "{corner} begins to bend {outside} from the fitting at {port}, which wants {limit} of straight tube \
             first. Move the corner, or the one after it.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "corner_out_of_reach",
        title: "Corner out of reach",
        meaning: "A corner that is not straight in front of its port is reached by one more bend after the fitting. \
                  This one lies inside that bend's circle.",
        messages: &[
            "{corner} is too close beside {port} for a bend radius of {value}. {limit} or less reaches it, or move the \
             corner away.",
            "{corner} is too close beside {port} for any bend. Move the corner away.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "turns_back",
        title: "Corner turns straight back",
        meaning: "The way on leads back over the way in. A tube needs room beside itself to turn round.",
        messages: &["{corner} turns the tube straight back over itself. Delete it, or use two corners, {apart} or \
                     more apart."],
        limit: Limit::Exact,
    },
    Words {
        code: "same_point",
        title: "Same point twice",
        meaning: "Two points in a row are the same, so there is no direction from one to the next.",
        messages: &["{corner} is the same point as {other}. Delete one, or move it."],
        limit: Limit::Exact,
    },
    Words {
        code: "link_too_tight",
        title: "Ports too close for the bend radius",
        meaning: "Without corners the tube takes the shortest way of one bend, a straight and one bend. These ports are so \
                  close, or face so, that it would have to loop.",
        messages: &[
            "a bend radius of {value} does not lead from {joins} without a loop. {limit} or less does; or move the coil, \
             or turn its start angle.",
            "no bend radius leads from {joins} without a loop. Move the coil, turn its start angle, or lead the tube \
             there with a corner.",
            "a bend radius of {value} does not fit between these two ports without a loop. {limit} or less fits; \
             or lead the tube round with corners.",
            "no bend radius fits between these two ports without a loop. Lead the tube round with corners, or move a port.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "loops",
        title: "Tube makes a loop",
        meaning: "The tube turns more than half round to get where it is going. It can be made, but it wastes tube and \
                  traps air.",
        messages: &[
            "the bend at {port} turns through {value}, more than half round. A bend radius of {largest} or less makes \
             a shorter way, or move the corner next to it.",
            "the bend at {port} turns through {value}, more than half round. Move the corner next to it, or add one.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "misaligned",
        title: "Corner just off its port's line",
        meaning: "The corner next to a fitting is not quite in line with it, so the tube gets a tiny extra bend that \
                  nobody meant. Corners tied to the port stay in line when it is measured again.",
        messages: &[
            "{corner} is {value} beside the line straight out of the fitting at {port}. Move it onto the line.",
        ],
        limit: Limit::Exact,
    },
];
