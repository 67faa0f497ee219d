//! Words about how a tube stands on the printer's plate.

use super::{Limit, Words};

pub(super) const WORDS: &[Words] = &[
    Words {
        code: "print_size",
        title: "Does not fit the printer",
        meaning: "What is longer than the printer's room cannot be printed in one go on it, however it is turned.",
        messages: &[
            "its {diameter} of {value} has no room between the margins of {printer}; {limit} is the most that has.",
            "it is {value} from one place to another, and the room of {printer} is {limit} from corner to corner. Choose a \
             printer with more room.",
            "as it is to stand, it sticks out of the room of {printer} by {value}. The best stance that is found {best}.",
            "it sticks out of the room of {printer} by {value} as it fits best; its box is {box} mm then. Cut into {pieces} pieces \
             it fits: they are bonded together after printing.",
            "it sticks out of the room of {printer} by {value} as it fits best; its box is {box} mm then. Choose a printer \
             with more room.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "print_bore",
        title: "Bore flatter than it prints well",
        meaning: "A bore that lies flat needs support inside, which cannot be taken out again, or its ceiling sags into it.",
        messages: &[
            "as it is to stand, {value} of its bore is flatter than {angle}. The best stance that is found has {best}.",
            "{value} of its bore is flatter than {angle} even as it stands best. Look at those parts' ceilings before it is used.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "print_bridge",
        title: "Ceiling of the bore wider than a bridge",
        meaning: "Where the bore lies flat, the top of it is printed over nothing from side to side. Wider than the printer \
                  bridges, it sags into the bore, and what hangs from it narrows the way or comes off into the coolant.",
        messages: &[
            "as it is to stand, the ceiling of its bore is {value} wide with nothing below it, over {length} of its length; the \
             printer bridges {limit}. The best stance that is found has {best}.",
            "the ceiling of its bore is {value} wide with nothing below it even as it stands best, over {length} of its length; the \
             printer bridges {limit}. It would do at {slope} from level and more, or with a bore of up to {bore}.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "print_cup",
        title: "Bore closes into a cup",
        meaning: "Where the bore sags towards the plate, or an end is shut by the plate, resin is trapped while it prints \
                  and each layer pulls a vacuum as it is lifted off: walls tear or bulge.",
        messages: &[
            "as it is to stand, its bore traps {volume} of resin in {count}. The best stance that is found has {best}.",
            "its bore traps {volume} of resin in {count} even as it stands best. A hole to vent it, or a way without a dip, would help.",
        ],
        limit: Limit::Exact,
    },
    Words {
        code: "print_band",
        title: "Support on a sealing band",
        meaning: "Where supports are broken off they leave scars, and an O-ring does not seal on a scar.",
        messages: &[
            "as it is to stand, {value} of its sealing bands need support. The best stance that is found has {best}.",
            "{value} of its sealing bands need support even as it stands best. Sand them smooth and measure them before use.",
        ],
        limit: Limit::Most,
    },
    Words {
        code: "print_powder",
        title: "Powder is hard to get out",
        meaning: "Loose powder that is left in the bore goes into the coolant, and into the pump.",
        messages: &[
            "its bore is {value} times as long as it is wide; up to {limit} times it can be cleared. Ask the service to clear \
             it, or print a chain inside that is pulled through.",
        ],
        limit: Limit::Most,
    },
];
