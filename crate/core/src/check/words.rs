//! The words of findings: one table from code to title, meaning and message, so that they can be translated, tested
//! and kept alike. The message of a finding about a run begins with the run's name; templates leave it out.

use super::{Finding, Severity};
use crate::design::wording;

/// The words of one kind of finding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Words {
    /// The finding's code.
    pub code: &'static str,
    /// A heading, a few words.
    pub title: &'static str,
    /// What it means for the builder, and why it matters: one or two sentences.
    pub meaning: &'static str,
    /// Templates of the message. The first whose `{placeholders}` all have a value is used: `{value}` and `{limit}`
    /// are the finding's numbers with their unit, the others its `words`.
    pub messages: &'static [&'static str],
    /// Which way the limit is rounded for showing, so that the shown number would really do.
    pub limit: Limit,
}

/// What a finding's limit is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limit {
    /// The most that would do: shown rounded down.
    Most,
    /// The least that would do: shown rounded up.
    Least,
    /// A number that is known exactly, or none.
    Exact,
}

/// The words of a code; none for a code that is not in the table.
pub fn words_of(code: &str) -> Option<&'static Words> {
    WORDS.iter().find(|words| words.code == code)
}

/// A finding's message in plain words.
pub fn message(finding: &Finding) -> String {
    let body = match words_of(finding.code) {
        Some(words) => words
            .messages
            .iter()
            .find_map(|template| filled(template, finding, words.limit))
            .unwrap_or_else(|| format!("{}.", words.title)),
        None => finding.code.replace('_', " "),
    };
    match &finding.run {
        Some(run) => format!("{run}: {body}"),
        None => capital(&body),
    }
}

/// What a severity means, in plain words.
pub fn severity_meaning(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => "Cannot be made, or must not be used as it is",
        Severity::Care => "Can be made; look before you pay for it",
        Severity::Note => "Good to know",
    }
}

/// A severity's name in the report.
pub fn severity_name(severity: Severity) -> &'static str {
    match severity {
        Severity::Stop => "stop",
        Severity::Care => "care",
        Severity::Note => "note",
    }
}

/// A length, angle or other number with its unit, for a finding's `words`: at most three decimals.
pub fn number(value: f64, unit: &str) -> String {
    joined(wording::shown(value), unit)
}

/// The most that would do, for a finding's `words`: rounded down.
pub fn at_most(value: f64, unit: &str) -> String {
    joined(wording::shown_down(value), unit)
}

/// The least that would do, for a finding's `words`: rounded up.
pub fn at_least(value: f64, unit: &str) -> String {
    joined(wording::shown_up(value), unit)
}

fn joined(number: String, unit: &str) -> String {
    match unit {
        "" => number,
        "°" => format!("{number}°"),
        unit => format!("{number} {unit}"),
    }
}

/// The template with its placeholders filled; none where one has no value.
fn filled(template: &str, finding: &Finding, limit: Limit) -> Option<String> {
    let mut text = String::with_capacity(template.len() + 40);
    let mut rest = template;
    while let Some((before, after)) = rest.split_once('{') {
        let (name, after) = after.split_once('}')?;
        text.push_str(before);
        text.push_str(&placeholder(name, finding, limit)?);
        rest = after;
    }
    text.push_str(rest);
    Some(text)
}

fn placeholder(name: &str, finding: &Finding, limit: Limit) -> Option<String> {
    match name {
        "value" => finding.value.map(|value| number(value, finding.unit)),
        "limit" => finding.limit.map(|value| match limit {
            Limit::Most => at_most(value, finding.unit),
            Limit::Least => at_least(value, finding.unit),
            Limit::Exact => number(value, finding.unit),
        }),
        name => finding.words.iter().find(|(key, _)| *key == name).map(|(_, words)| words.clone()),
    }
}

fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or(String::new(), |first| first.to_uppercase().chain(chars).collect())
}

/// The table, in the order of the work: radius, route, ends, wall, room, ports.
pub const WORDS: &[Words] = &[
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

#[cfg(test)]
mod tests {
    use super::*;

    fn finding(code: &'static str) -> Finding {
        Finding {
            code,
            severity: Severity::Stop,
            run: Some("pump to block".into()),
            place: "/runs/0/bend_radius".into(),
            at: None,
            value: Some(5.0),
            limit: Some(6.000_5),
            unit: "mm",
            source: "geometry",
            words: vec![("diameter", number(12.0, "mm")), ("usual", number(24.0, "mm"))],
            fix: None,
            ways: Vec::new(),
        }
    }

    #[test]
    fn a_message_reads_like_a_sentence() {
        assert_eq!(
            message(&finding("bend_radius")),
            "pump to block: a bend radius of 5 mm folds a tube of 12 mm into itself. Use at least 6.001 mm; 24 mm is \
             usual."
        );
    }

    #[test]
    fn the_first_message_whose_words_are_there_is_used() {
        let mut link = finding("link_too_tight");
        link.limit = Some(12.3459);
        assert!(message(&link).contains("12.345 mm or less fits"), "{}", message(&link));
        link.limit = None;
        assert!(message(&link).contains("no bend radius fits"), "{}", message(&link));
    }

    #[test]
    fn a_finding_without_a_run_begins_with_a_capital() {
        let mut unused = finding("fitting_unused");
        unused.run = None;
        unused.words = vec![("fitting", "“C12”".into())];
        assert_eq!(message(&unused), "No port carries “C12”.");
    }

    #[test]
    fn every_row_is_whole_and_there_once() {
        for (index, row) in WORDS.iter().enumerate() {
            assert!(WORDS[..index].iter().all(|earlier| earlier.code != row.code), "{} is there twice", row.code);
            assert!(!row.title.is_empty() && !row.title.ends_with('.'), "{}", row.code);
            assert!(row.meaning.ends_with('.'), "{}", row.code);
            assert!(!row.messages.is_empty(), "{}", row.code);
            for template in row.messages {
                assert!(template.ends_with('.') || template.ends_with('?'), "{}: {template}", row.code);
                assert_eq!(template.matches('{').count(), template.matches('}').count(), "{}", row.code);
                assert!(!template.contains("  ") && !template.contains("{run}"), "{}: {template}", row.code);
            }
        }
    }
}
