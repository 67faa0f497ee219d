//! The sheet's words, in one place.

use crate::design::Way;
use crate::tongue::worded;

worded! {
    SUBTITLE: &str = "Printed coolant tubes: what to print, how to finish it, how to build it in";
    ABOUT: &str = "Made by Tubewright from the design that lies beside this sheet. Its numbers are estimates from \
        what the builder typed; whoever prints and builds carries the risk, and there is no warranty. The data sheets of material, \
        fittings and coolant, licensed practice and local codes go first.";
    ALL_ABOUT_FILES: &str = "Lengths are millimetres. STL and 3MF of a tube hold the same solid. checksums.txt holds a \
        SHA-256 of every other file; “sha256sum -c checksums.txt”, in the unpacked folder, tells whether one was damaged. The \
        page that made this pack opens it again as the design.";

    STOPS: &str = "Do not print this yet";
    STOPS_MEAN: &str = "The design has faults that keep it from being made, or from being used:";
    CARES: &str = "Look at this before you pay for it";
    LEFT_OUT: &str = "Left out, because it cannot be made";

    SERVICE: &str = "For the print service";
    ORDER: &str = "What to print";
    ORDER_COLUMNS: &[&str] = &[
        "File",
        "Tube",
        "Plate",
        "Box as it stands, mm",
        "Material, cm³",
        "Mass, g",
        "Triangles",
        "Deviation, mm",
        "Quantity",
        "Material",
        "Printer class",
    ];
    PLATES_ARE: &str = "Plate: the 3MF of that number in the folder “plates” holds the same solids side by side, each as it \
        stands, 3 mm and more between their boxes (common practice, no source). Print the plates or the single files, not both.";
    STANCE: &str = "Stance";
    FINISH: &str = "Finish wished";
    BANDS: &str = "Sealing bands: no supports and no scars here";
    BAND_COLUMNS: &[&str] =
        &["Tube", "End", "Band from the end face, mm", "Outer diameter, mm", "The seal takes, mm", "Expected, mm"];
    SEAL_TAKES: &str = "The seal takes the diameters that squeeze its ring by 12 to 30 % (common practice, no source), \
        whatever ring (ISO 3601-1, class B) and gland are within their tolerances. “Expected” is how far a print is taken to be off.";
    QUESTIONS: &str = "What a service checks, asked of the STL files";
    QUESTION_COLUMNS: &[&str] = &["Tube", "Answer", "What was found"];
    LIMITS: &str = "Limits come from: {0}.";
    PASSED: &str = "passed";
    FAILED: &str = "NOT passed";

    /// What is wished of the print service whatever it prints with.
    WISHES: &[&str] = &[
        "Print each tube in one piece, standing as its file has it; ask before turning it.",
        "Leave the bore and the sealing bands without supports. Rafts and supports may touch the skin anywhere else.",
        "Both ends stay open and square to the axis. The rings scribed near the ends are wanted: do not fill or sand them away.",
        "Bore clean and clear from end to end: no uncured resin, no loose powder, no supports, no threads of filament.",
        "Sealing bands: smooth, no layer steps to feel, Ra 1.6 µm; where that is not offered, leave the sanding to the builder and \
         take nothing off the diameter.",
    ];

    /// The same where tubes are in pieces.
    JOINT_WISH: &str = "Spigots and sockets, where the pieces of one tube are joined: no supports, no scars and nothing \
        left inside. The rings beside them number the joints.";

    JOINING: &str = "Joining the pieces";
    JOINTS: &str = "Which spigot goes into which socket";
    JOINT_COLUMNS: &[&str] =
        &["Spigot at the end of", "Socket at the start of", "Marks on both sides", "Goes in by, mm", "Glue gap, mm"];
    JOINT_CAUTIONS: &[&str] = &[
        "Wear nitrile gloves and eye protection and air the room: adhesives irritate, uncured epoxy and acrylate can cause a lasting \
         skin allergy, and vapours burn. The adhesive's own data sheet goes first.",
        "Take an adhesive that its data sheet gives for this plastic, for warm water and for your coolant, and that fills the gap. \
         Bond and prove a short sample first, soaked warm in the coolant for three days.",
        "A bonded joint is no stronger than its preparation. Prove every joined tube outside the machine, filled with water, before it \
         is used.",
    ];
    JOINT_STEPS: &[&str] = &[
        "Cure, clean and dry the pieces fully. Put them together dry, in the order of the rings: spigot and socket with the same marks go \
         together, in one position only, and the bore runs on smoothly. Look through it.",
        "Roughen both faces with fine paper, wet, and wipe them clean as the adhesive's data sheet says.",
        "Put adhesive thinly round the spigot, from its root to the ring near its tip and no further: what the tip wipes along would \
         get into the bore.",
        "Push the spigot straight home, all the way in. Wipe off what comes out at the mouth, and draw a soft brush through the \
         bore.",
        "Hold it still and let it cure for as long and as warm as the adhesive's data sheet says, before anything loads it.",
        "Rinse the bore, look through it against the light, and leak-test the joined tube as below before it is built in.",
    ];

    QUANTITIES: &str = "Quantities";
    OF_EACH: &str = "Of each tube";
    QUANTITY_COLUMNS: &[&str] = &[
        "Tube",
        "Material, cm³",
        "Mass, g",
        "Supports, cm³",
        "Cost of the material",
        "Coolant inside, mL",
        "Layers",
        "Print time, hours",
    ];
    /// The last column where the design states a print service's prices.
    SERVICE_PRICE: &str = "Print service";
    ALL_TUBES: &str = "All tubes";
    NOT_KNOWN: &str = "not known";
    QUANTITIES_ARE: &str = "Material and mass are those of the tubes alone, before supports, waste and fit coupons. \
        Supports are a rough band: the skin that needs them times its mean height above the plate, filled to 5 to 20 % with resin, 10 to \
        30 % with filament (common practice, no source); what a tube stands on is not in it, and powder needs none. The cost is in the \
        money that the design states its price per litre in: from the tubes alone to the most supports and a fifth of waste on top (common \
        practice, no source). Layers are those of the tube's own height. The \
        time is layers times the printer's seconds a layer, without warming up and clearing; from all tubes side by side on one plate, \
        where they fit, to one after another.";

    SERVICE_PRICES_ARE: &str = "The print service's price is what the design states of it: material by the cubic \
        centimetre and a set-up for each piece, and for all of them the least order where that is more. Supports and waste are the \
        service's own; finishing, tax and shipping come on top, and its offer is what counts.";

    BUILDER: &str = "For the builder";
    COUPON: &str = "First the fit coupon";
    COUPON_IS: &str = "Print the fit coupon on the same printer, in the same material and finish, and try its ends in the \
        fitting before anything else. Count its rings, measure it, type the readings in on the page, and make the pack again if they \
        ask for it.";
    FINISHING: &str = "Cleaning, curing and sanding";
    ASSEMBLY: &str = "Order of assembly";
    ALONE: &str = "One tube: there is no order to keep.";
    SEATING: &str = "Seating";
    DEPTHS: &str = "How deep each end goes";
    SEAT_COLUMNS: &[&str] =
        &["Tube", "End", "Fitting", "Goes in by, mm", "Cut off first, mm", "Seating mark"];
    SEAT_VANISHES: &str = "vanishes under the collar when the tube is home";
    SEAT_NONE: &str = "none: mark the depth with a pencil";
    SEATING_STEPS: &[&str] = &[
        "Cut or sand the trim off square, within 1°, and break the edges again so that no ring is cut.",
        "Wet the ring and the band with coolant. Push the tube straight in, in line with the fitting, turning it a little; never force \
         it, and never pull a tube askew into place.",
        "It is home when its end stands on the stop and the seating mark has vanished under the collar. Then turn the collar tight by \
         hand.",
    ];
    FIRST: &str = "Leak test and first fill";
    PRACTICE: &str =
        "Common practice, no source. Local codes, the data sheets of your parts and licensed practice go first.";
    CAUTIONS: &str = "Before you print and fill";

    TITLE: &str = "{0}: order and build sheet";
    COMPENSATED: &str = "{0} Do not correct them again.";
    LEFT_OUT_IS: &str = "{0} is not in this pack. {1}";
    MORE: &str = "and {0} more: open the design on the page.";
    FILES: &str = "{0}.stl or .3mf";
    /// What is on no plate; a key of its own, for what there is none of matters in other languages.
    NO_PLATE: &str = "plate:none";
    FITS_NOT: &str = "{0}: it fits a build volume of {1} mm, less its margin, in no stance; its file is in the builder's own \
        axes. Take a larger printer, or ask for it in two pieces.";
    AS_CHOSEN: &str = "{0}: stands as the builder chose, {1}.";
    AS_FOUND: &str = "{0}: stands as was found best, {1}.";
    ON_PLATE: &str = "with its lowest point on the plate";
    ABOVE_PLATE: &str = "with its lowest point {0} mm above the plate";
    WANTS_SUPPORT: &str = "About {0} mm² of its outer skin wants support.";
    BAND_OVERHANGS: &str = "Standing so, {0} mm of the sealing band at {1} overhang: turn it rather than support them, or ask.";
    SPIGOT_OVERHANGS: &str = "Standing so, {0} mm of the spigot overhang: turn it rather than support them, or ask.";
    /// The two ends of a tube, at their ports.
    ENDS: [&str; 2] = ["start, at {0}", "end, at {0}"];
    BAND: &str = "0 to {0}";
    BAND_TRIMMED: &str = "0 to {0}, {1} of them to be cut off";
    NO_SIZE: &str = "no size for sure: ring and gland alone are off by more than the seal takes";
    FROM_TO: &str = "{0} to {1}";
    FROM: &str = "from {0}";
    /// How far a diameter may be off, by where that is known from.
    OFF_MEASURED: &str = "± {0} (measured on a coupon)";
    OFF_PRINTER: &str = "± {0} (the printer's figures)";
    OFF_USUAL: &str = "± {0} (usual)";
    COOLANT: &str = "Coolant for the first fill: about {0} mL in the tubes of this pack and the loop's other parts as the design states \
        them. Have some more at hand.";
    CARE: &str = "{0} Care: {1}";
    COUPON_FOR: &str = "{0}: for {1}";
    NO_COUPON: &str = "No coupon for {0}: {1}";
    NO_TRIM: &str = "nothing";
    /// A joint's marks: a wide ring counts five.
    WIDE: [&str; 2] = ["1 wide ring", "{0} wide rings"];
    NARROW: [&str; 2] = ["1 narrow ring", "{0} narrow rings"];
    BOTH: &str = "{0} and {1}";

    SAND: &str = "Sand the sealing bands wet, along the circumference and never along the tube, to Ra 1.6 µm (3.2 at the very \
        most): scratches along the tube are paths for coolant. Measure the diameter at three places round each band while you go.";
    RINSE: &str =
        "Rinse the bore with clean water until nothing more comes, look through it against the light, and let it dry.";
    PROVE: &str = "Prove each tube outside the machine: filled with water and no air, at 1 bar for 30 minutes at room temperature, \
        then warm, with eye protection. A tube that weeps, cracks or whitens is not built in.";

    RESIN: &[&str] = &[
        "Wear nitrile gloves and eye protection and air the room: uncured resin can cause a lasting skin allergy, and washing alcohol \
         burns. No flame, no spark. Wash skin with soap and water, not solvent.",
        "Let resin drain out of the bore, both ends open. Wash outside and inside as the resin's data sheet says, and flush the bore with \
         fresh solvent until it comes out clear.",
        "Dry it fully, in the bore too, before it is cured.",
        "Cure outside and inside as the resin's data sheet says (usual: 405 nm, 10 to 60 minutes at 45 to 60 °C), turned about, with \
         light let in at both ends of the bore. Do not look into the lamp.",
        "Take supports off and sand their scars, wet, so that no dust is breathed.",
        SAND,
        RINSE,
        PROVE,
    ];
    POWDER: &[&str] = &[
        "Get the loose powder out of the bore, with a brush drawn through and then water. Wear a dust mask and eye protection.",
        "Sintered powder may weep through its wall: have it smoothed by vapour or seal it where the material's data sheet asks for it. \
         Smoothing takes something off the diameter: measure the bands afterwards.",
        SAND,
        RINSE,
        PROVE,
    ];
    FILAMENT: &[&str] = &[
        "Take supports off, and draw a brush through the bore so that no thread of filament stays in it.",
        "A print from filament is porous: seal it, inside if you can, with a coating that stands warm coolant, as its data sheet says \
         (Mireles et al., SFF Symposium 2011, held pressure only with sealed prints). Gloves, and air the room.",
        "Keep the coating off the sealing bands, or sand them to size once it is hard.",
        SAND,
        RINSE,
        PROVE,
    ];
    ANY: &[&str] = &[
        "Clean and finish it as the material's data sheet says, inside and outside, with the protection it asks for.",
        "Take supports off and sand their scars, wet, so that no dust is breathed.",
        SAND,
        RINSE,
        PROVE,
    ];
}

/// What is done to a print before it is built in, by how it was printed.
pub(super) fn finishing(way: Option<Way>) -> &'static [&'static str] {
    match way {
        Some(Way::Resin) => RESIN,
        Some(Way::Powder) => POWDER,
        Some(Way::Filament) => FILAMENT,
        None => ANY,
    }
}
