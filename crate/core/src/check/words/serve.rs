//! Words about what a tube is in service: heat, pressure, tightness, seals, flow, air.

use super::{Limit, Words};

pub(super) const WORDS: &[Words] = &[
    Words {
        code: "heat",
        title: "Material softens",
        meaning: "A printed tube under pressure creeps well below the temperature at which it bends. When the pump stops, \
                  the coolant is at its hottest, and a soft tube lets go of its fitting.",
        messages: &[
            "{material} gives way at {softens} and must stay {margin} below, at {limit} or less; {state} brings it to \
             {value}. Choose a material that stands more heat.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "heat_growth",
        title: "Grows with heat",
        meaning: "Warm tubes are longer. What the sockets do not take up bends the tube and loads its rings.",
        messages: &[
            "from {cold} to {hot} it grows by {value}; two sockets take up about {limit}. Do not press it against both \
             stops when you fit it.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "material_unknown",
        title: "Material's figures missing",
        meaning: "Without the figures of its data sheet nothing can be told of how it stands heat and pressure.",
        messages: &["{material} does not state {missing}. Put in the data sheet's figures."],
        limit: Limit::Exact,
    },
    Words {
        code: "strength",
        title: "Pressure uses up the material's strength",
        meaning: "What a printed wall holds for years in warm coolant is a small part of its data sheet's strength.",
        messages: &[
            "{pressure} uses {used} of what the wall is allowed to carry inside its tightest bend; {limit} is the most. \
             Use a smaller bore, a larger bend radius or a stronger material.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "side_load",
        title: "Brittle material",
        meaning: "A brittle tube does not burst: it cracks at the collar's edge, along a layer, when it is clamped askew.",
        messages: &[
            "{material} is brittle. Where ports are {off} off, {worst} bends at its collar by {value}; {limit} is allowed. \
             Fit it without force, and never turn a collar that does not sit straight.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "joint",
        title: "Joint is loaded much",
        meaning: "A bonded joint that lets go lets all the coolant out at once.",
        messages: &[
            "joint {joint}: at {pressure}, and with the ports {off} off, its bond shears at {value}; {limit} is allowed, and {used} of \
             it is used. A longer joint or a stronger adhesive would do.",
            "joint {joint}: should coolant at {pressure} get into its socket, {material} there is stressed by {value}; {limit} is \
             allowed, and {used} of it is used. A thicker socket would do.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "tight",
        title: "Wall may weep",
        meaning: "Some processes leave fine ways through the wall: a drop a day is enough to kill a graphics card.",
        messages: &[
            "the wall is {value} at its thinnest; from {limit} it is known to hold water as printed. Make it thicker, or \
             seal it.",
            "no wall of {material} is known to hold water as printed. {remedy}, and test every tube with water.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "seal",
        title: "Ring does not seal for sure",
        meaning: "A ring seals by being squeezed: too little and it leaks, too much and it is torn when the tube goes in.",
        messages: &[
            "{fitting} at {port}: a tube of {tube} has no room in a gland of {value}. Measure the gland again.",
            "{fitting} at {port}: the ring is squeezed by {value}, and by {low} to {high} over what ring and gland are likely \
             to be off and what your coupon says of the tube, {scatter} either way; {limit} is the limit. Aim at an outer \
             diameter of {best} as printed.",
            "{fitting} at {port}: the ring is squeezed by {value}, and by {low} to {high} over what tube, ring and gland \
             are likely to be off; {limit} is the limit. Aim at an outer diameter of {best} as printed.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "gland_full",
        title: "Ring fills its groove",
        meaning: "Rubber gives way but does not shrink: a ring without room in its groove jams the tube, or is cut.",
        messages: &[
            "{fitting} at {port}: the ring fills {value} of its groove, and {high} by what ring and gland are likely to be off \
             and what your coupon says of the tube, {scatter} either way; {limit} is the most. Measure the groove again, or \
             take a thinner ring.",
            "{fitting} at {port}: the ring fills {value} of its groove, and {high} by what tube, ring and gland are likely to \
             be off; {limit} is the most. Measure the groove again, or take a thinner ring.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "ring_caught",
        title: "Chamfer too small for the ring",
        meaning: "The tube must be slimmer at its tip than the ring is wide, or its edge cuts the ring on the way in.",
        messages: &[
            "{fitting} at {port}: the chamfer takes {value} off the radius, and the ring reaches {limit} in. Make it {length} \
             long or more, smooth, and wet it with coolant before you push.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "flow",
        title: "Tube chokes the flow",
        meaning: "A tube should cost a small part of what the pump can give; the blocks need the rest.",
        messages: &[
            "{flow} costs {value} ({band}) in this tube, at {velocity}; {limit} is a tenth of a usual pump's head. Use a \
             wider bore or fewer bends.",
            "{flow} costs {value} in this tube, at {velocity}; {limit} is a tenth of a usual pump's head. Use a wider bore \
             or fewer bends.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "flow_none",
        title: "No flow",
        meaning: "Coolant that stands still cools nothing, and costs no pressure.",
        messages: &[
            "the stated flow is {value}: nothing can be told of losses. State the flow you mean to have; 60 to 300 L/h is usual.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "flow_unknown",
        title: "Flow cannot be reckoned",
        meaning: "What a tube costs the pump follows from the coolant's viscosity at its temperature.",
        messages: &[
            "no flow is reckoned: {fault}.",
            "no flow is reckoned: the coolant states neither what it is made of nor its viscosity.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "pump_weak",
        title: "Pump drives less than the stated flow",
        meaning: "Pump and loop agree on the flow at which the pump keeps up just what tubes and parts cost. At less flow the \
                  coolant leaves the blocks warmer.",
        messages: &[
            "the pump drives {value} through the tubes and the parts that are stated ({low} to {high} by what the losses may \
             be off); {limit} is stated. State the flow that you get, use a stronger pump or wider bores, or check the \
             parts' pressure drops.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "pump_unmet",
        title: "Pump's curve does not meet the loop",
        meaning: "The operating point lies where the pump's curve and what the loop costs cross.",
        messages: &[
            "the pump's curve {end} at {flow}, where it keeps up {value} and the loop costs {limit}: they never meet. Add \
             points to the curve, from no flow to no head.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "leak",
        title: "Leaks",
        meaning: "Air that is shut in loses pressure when it cools and when it leaks; only the second is held against the limit.",
        messages: &[
            "of the {fall} that the pressure fell, {cooled} is temperature. The rest comes to {value} in {minutes}, {rate}; \
             {limit} may leak. Do not fill it: find the leak with soapy water, joint by joint.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "leak_pressure",
        title: "Too much air",
        meaning: "Air under pressure is a spring: a part that bursts flies. A loop is tested with little.",
        messages: &[
            "{value} of air is more than a loop is tested with, {limit} at most. Let it off; use a regulator and eye \
             protection. To prove a tube at more, fill it with water.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "leak_short",
        title: "Test too short",
        meaning: "A pinhole takes its time, and so does the air until it is as warm as the loop.",
        messages: &[
            "{value} tells little: let it settle for five minutes, then wait {limit} or more between the readings.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "leak_unread",
        title: "Test cannot be read",
        meaning: "How fast it leaks follows from the volume of air and how far its pressure falls.",
        messages: &["the loop holds nothing that is known, and the readings state no volume of air. State it."],
        limit: Limit::Exact,
    },
    Words {
        code: "bleed",
        title: "Keeps air",
        meaning: "Air in a high point does not leave by itself: it chokes the flow and makes noise.",
        messages: &[
            "it rises {value} over its ends in between, {count} times, and can keep {volume} of air. Tilt the machine when \
             you fill it.",
            "it rises {value} over its lower way out in between, and can keep {volume} of air. Tilt the machine when you \
             fill it.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "drain",
        title: "Keeps coolant",
        meaning: "What stays in a low point runs out when the tube is taken off.",
        messages: &[
            "it sags {value} below its ends in between, {count} times, and keeps {volume} of coolant when it is drained.",
            "it sags {value} below its way out in between, and keeps {volume} of coolant when it is drained.",
        ],
        limit: Limit::Exact,
    },
];
