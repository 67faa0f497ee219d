//! Words about ports, and about getting the tubes in.

use super::{Limit, Words};

pub(super) const WORDS: &[Words] = &[
    Words {
        code: "port_unused",
        title: "Port without a tube",
        meaning: "An open port leaks. It needs a tube or a plug.",
        messages: &["no tube starts or ends at {port}. Add a run, or close the port with a plug."],
        limit: Limit::Exact,
    },
    Words {
        code: "port_used_twice",
        title: "Port used more than once",
        meaning: "A port takes one fitting, and a fitting one tube.",
        messages: &["{port} is used by {runs}. A port takes one tube: choose another port for one of them."],
        limit: Limit::Exact,
    },
    Words {
        code: "fitting_unused",
        title: "Fitting in no port",
        meaning: "It is in the list of fittings but no port carries it. That does no harm.",
        messages: &["no port carries {fitting}."],
        limit: Limit::Exact,
    },
    Words {
        code: "play_angle",
        title: "Short tube between rough measurements",
        meaning: "The ports may be off by so much, for so short a tube, that its ends lean in their sockets.",
        messages: &[
            "if both ports are off by as much as you said, one mouth is {aside} beside the tube's line and the tube \
             leans by {value}; a socket takes {limit}. Measure the two ports from each other.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "play_offset",
        title: "Port measured roughly",
        meaning: "A tube that ends beside its socket loads the ring from one side.",
        messages: &[
            "{port} is known to {value} only; {limit} is what a ring takes. Measure it again, or print a test piece.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "trim_short",
        title: "Ports further off than the tube can make up",
        meaning: "A tube that comes out too short does not reach the stop in its socket. Trim is spare length at each end, \
                  cut or sanded off until the tube fits.",
        messages: &[
            "the ports may be {off} off along the tube's ends, and it has {none}. A trim of {limit} covers it; or \
             measure the two ports from each other.",
            "the ports may be {off} off along the tube's ends; a trim of {value} does not cover it. {limit} does; or \
             measure the two ports from each other.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "trim_covers",
        title: "Trim covers what the ports may be off by",
        meaning: "Cut the tube's ends back until it fits; what is spare is marked by a ring.",
        messages: &[
            "the ports may be {off} off along the tube's ends; the trim of {value} at each end covers it. Cut to fit.",
        ],
        limit: Limit::Least,
    },
    Words {
        code: "goes_straight_in",
        title: "Goes straight in",
        meaning: "Both ends leave their sockets the same way, so a stiff tube goes into both at once, and no part has to \
                  move for it.",
        messages: &[
            "hold it {value} off, straight in front of both sockets, and push both ends home at once. No part has to move.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "part_stands_back",
        title: "One part comes last",
        meaning: "A stiff tube that sits in one socket can only slide along it, so it cannot be slid into a second one that \
                  points another way: one of the two parts is brought on to the tube's end last. A fitting that is \
                  screwed into its part with the tube already in it needs only the length of its thread instead.",
        messages: &[
            "{relation}, so it cannot slide into both sockets. Push it home at {first} with the part at {last} {value} \
             back, then bring that part on; or at {last} with the part at {first} {instead} back.",
            "{relation}, so it cannot slide into both sockets. Push it home at {either} with the part at the other {value} \
             back, then bring that part on.",
            "{relation}, so it cannot slide into both sockets. Push it home at {first} with the part at {last} {value} \
             back, then bring that part on.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "both_on_one_part",
        title: "Stiff tube between two ports of one part",
        meaning: "A stiff tube slides into two sockets only if its ends leave them the same way. Here they do not, and both \
                  sockets are on one part, so neither can be brought on last.",
        messages: &[
            "{relation}, and both ports are on {keep_out}: neither can stand back by the {value} that it takes. Let the \
             ends leave the same way, or use a fitting that is screwed in with the tube already in it.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "strikes_going_in",
        title: "In the way when the tube goes in",
        meaning: "The tube is clear once it is home, but something stands where it passes while it is pushed in.",
        messages: &[
            "on its way into the sockets it strikes {what}, by {value}. Put that in after the tube, or move a corner.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "order_of_assembly",
        title: "Order of assembly",
        meaning: "Tubes whose part must come last are put in while parts can still be moved; a tube that goes straight in \
                  can wait until every part stands. No tube comes after one that would be in its way.",
        messages: &[
            "fit the tubes in this order: {order}. {dropping} straight in, when every part stands.",
            "fit the tubes in this order: {order}. None goes straight in, so the part that is brought on last takes all \
             its tubes at once; they must leave it the same way.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "no_order",
        title: "Tubes in each other's way",
        meaning: "Each of these tubes, once in place, is in the way of another one going in.",
        messages: &[
            "{runs} are in each other's way while they are pushed in. Move a corner of one, or put one in from another \
             side.",
        ],
        limit: Limit::Exact,
    },
];
